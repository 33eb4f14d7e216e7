#include "sync/hub/audit_view.h"

#include <gtest/gtest.h>

#include <set>

#include "core/time/local_day.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class AuditViewTest : public testing::Test {
 protected:
  AuditViewTest() {
    m_person = m_clinic.addPerson(test::transtibialRight(), "Ada");
    EXPECT_TRUE(
        m_clinic.hub().accounts().add("au", "Auri (invented)", v1::ROLE_AUDITOR, test::kPassword).ok());
    m_desk = m_clinic.newDesk();
    EXPECT_TRUE(m_desk->signIn("au", test::kPassword).ok());
  }

  // Every page of it.
  std::vector<v1::AuditLine> all(v1::ListAuditRequest request) {
    std::vector<v1::AuditLine> lines;
    request.set_limit(request.limit() == 0 ? 500 : request.limit());
    for (int page = 0; page < 1000; ++page) {
      const auto reply = m_desk->audit(request);
      EXPECT_TRUE(reply.ok()) << reply.status();
      if (!reply.ok()) return lines;
      lines.insert(lines.end(), reply->lines().begin(), reply->lines().end());
      if (reply->next_before_n() == 0) return lines;
      EXPECT_TRUE(request.before_n() == 0 || reply->next_before_n() < request.before_n());
      request.set_before_n(reply->next_before_n());
    }
    ADD_FAILURE() << "it never ends";
    return lines;
  }

  test::TestClinic m_clinic;
  std::string m_person;
  std::unique_ptr<DeskClient> m_desk;
};

TEST_F(AuditViewTest, theNewestFirstWithTheNamesOfNow) {
  ASSERT_TRUE(m_clinic.desk().person(m_person).ok());
  const auto lines = all({});
  ASSERT_GE(lines.size(), 4U);
  for (std::size_t i = 1; i < lines.size(); ++i) EXPECT_EQ(lines[i].n() + 1, lines[i - 1].n());
  EXPECT_EQ(lines.back().action(), "clinic.init");
  const auto seen = std::find_if(lines.begin(), lines.end(),
                                 [](const v1::AuditLine& line) { return line.action() == "person.see"; });
  ASSERT_NE(seen, lines.end());
  EXPECT_EQ(seen->who_name(), "Terry Sample (invented)");
  EXPECT_EQ(seen->person_name(), "Ada Invented");
  EXPECT_EQ(toTime(seen->at()), m_clinic.clock().wall());
  const auto added = std::find_if(lines.begin(), lines.end(), [](const v1::AuditLine& line) {
    return line.action() == "account.add" && line.record_name() == "Auri (invented)";
  });
  EXPECT_NE(added, lines.end());
}

TEST_F(AuditViewTest, byPersonByAccountAndByTime) {
  const std::string other = m_clinic.addPerson(test::transfemoralLeft(), "Bea");
  const std::string therapist = m_clinic.hub().accountBook().list()->accounts(1).therapist().id();
  const absl::Time noon = m_clinic.clock().wall() + absl::Minutes(10);
  m_clinic.clock().advance(absl::Minutes(20));
  ASSERT_TRUE(m_clinic.desk().person(other).ok());
  v1::ListAuditRequest request;
  request.set_person_id(other);
  for (const auto& line : all(request)) EXPECT_EQ(line.person_id(), other);
  EXPECT_EQ(all(request).size(), 2U) << "added and seen";
  *request.mutable_from() = toTimestamp(noon);
  ASSERT_EQ(all(request).size(), 1U);
  EXPECT_EQ(all(request).front().action(), "person.see");
  request.clear_from();
  *request.mutable_until() = toTimestamp(noon);
  ASSERT_EQ(all(request).size(), 1U);
  EXPECT_EQ(all(request).front().action(), "person.add");

  v1::ListAuditRequest by;
  by.set_account_id(therapist);
  std::set<std::string> actions;
  for (const auto& line : all(by)) {
    EXPECT_TRUE(line.who_id() == therapist || line.record_id() == therapist);
    actions.insert(line.action());
  }
  EXPECT_TRUE(actions.contains("account.add")) << "done to it";
  EXPECT_TRUE(actions.contains("person.add")) << "done by it";
}

TEST_F(AuditViewTest, everyPageSizeGivesTheSameLinesAndOneCallLooksAtABoundedNumber) {
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    for (int i = 0; i < 12000; ++i) {
      m_clinic.hub().audit().add(transaction, {.action = "test.line", .who = i % 4000 == 0 ? "x" : "y"});
    }
    return absl::OkStatus();
  }),
            absl::OkStatus());
  v1::ListAuditRequest rare;
  rare.set_account_id("x");
  rare.set_limit(500);
  const auto first = m_desk->audit(rare);
  ASSERT_TRUE(first.ok());
  EXPECT_LT(first->lines_size(), 3) << "the rest is further back than one call looks";
  EXPECT_GT(first->next_before_n(), 0U);
  EXPECT_EQ(all(rare).size(), 3U);
  rare.set_limit(1);
  EXPECT_EQ(all(rare).size(), 3U);
  v1::ListAuditRequest every;
  every.set_limit(499);
  const auto lines = all(every);
  EXPECT_EQ(lines.size(), lines.front().n()) << "each once";
}

TEST_F(AuditViewTest, refusesWhatIsWrong) {
  v1::ListAuditRequest request;
  EXPECT_TRUE(absl::IsInvalidArgument(m_desk->audit(request).status()));
  request.set_limit(501);
  EXPECT_TRUE(absl::IsInvalidArgument(m_desk->audit(request).status()));
  request.set_limit(5);
  request.mutable_from()->set_nanos(-5);
  EXPECT_TRUE(absl::IsInvalidArgument(m_desk->audit(request).status()));
}

TEST_F(AuditViewTest, theChainIsCheckedAndTheFirstWrongLineNamed) {
  const auto good = m_desk->checkAudit();
  ASSERT_TRUE(good.ok()) << good.status();
  EXPECT_EQ(good->problem(), "");
  EXPECT_EQ(good->lines(), m_clinic.auditActions().size());
  EXPECT_EQ(good->head_sha256().size(), 32U);
  // A line that claims to follow but does not chain: what an insertion looks like.
  const std::uint64_t n = good->lines() + 1;
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    transaction.addAudit(
        {n, auditEntry({.action = "forged"}, n, m_clinic.clock().wall()), std::string(32, 'x')});
    return absl::OkStatus();
  }),
            absl::OkStatus());
  const auto bad = m_desk->checkAudit();
  ASSERT_TRUE(bad.ok()) << bad.status();
  EXPECT_EQ(bad->problem(), "audit: line " + std::to_string(n) + " was changed");
  EXPECT_EQ(bad->lines(), n - 1);
}

TEST_F(AuditViewTest, aLineThatIsNoJsonOrHasOtherKindsOfValuesBreaksNothing) {
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    const std::uint64_t n = transaction.lastAudit()->n;
    transaction.addAudit({n + 1, "nonsense", std::string(32, 'x')});
    transaction.addAudit({n + 2, R"({"a":5,"n":"x","t":[],"w":{}})", std::string(32, 'x')});
    return absl::OkStatus();
  }),
            absl::OkStatus());
  EXPECT_FALSE(all({}).empty());
  EXPECT_NE(m_desk->checkAudit()->problem(), "");
}

}  // namespace
}  // namespace newel
