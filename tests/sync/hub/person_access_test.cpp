// Whose persons are whose, as desks see it, over TLS.
#include "sync/hub/person_access.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/time/local_day.h"
#include "sync/hub/hub_schema.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

constexpr char kReason[] = "Their therapist is ill and the socket rubs.";

class PersonAccessRule : public testing::Test {
 protected:
  PersonAccessRule() : m_person(m_clinic.addPerson(test::transfemoralLeft())) {
    m_other = signedIn("o.other", v1::ROLE_THERAPIST);
    m_lead = signedIn("l.lead", v1::ROLE_LEAD);
  }
  std::unique_ptr<DeskClient> signedIn(const std::string& name, v1::Role role) {
    const auto added = m_clinic.hub().accounts().add(name, name + " (invented)", role, test::kPassword);
    EXPECT_TRUE(added.ok()) << added.status();
    m_ids[name] = added->id();
    auto desk = m_clinic.newDesk();
    EXPECT_TRUE(desk->signIn(name, test::kPassword).ok());
    return desk;
  }
  bool audited(const std::string& part) {
    const auto lines = m_clinic.auditActions();
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.find(part) != std::string::npos; });
  }

  test::TestClinic m_clinic;
  std::string m_person;
  std::map<std::string, std::string> m_ids;
  std::unique_ptr<DeskClient> m_other;
  std::unique_ptr<DeskClient> m_lead;
};

TEST_F(PersonAccessRule, whoAddsAPersonHasThemAndNoOtherTherapist) {
  EXPECT_EQ(m_clinic.desk().caseload()->size(), 1U);
  EXPECT_EQ(m_other->caseload()->size(), 0U);
  ASSERT_EQ(m_lead->caseload()->size(), 1U);
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).mine());
  EXPECT_FALSE(m_lead->caseload()->at(0).mine()) << "seen, and not theirs";
  EXPECT_TRUE(absl::IsPermissionDenied(m_other->person(m_person).status()));
  EXPECT_TRUE(audited("\"f\":\"assigned\""));
  v1::PutPersonRequest again;
  *again.mutable_person() = test::transfemoralLeft();
  again.mutable_identity()->set_person_id(m_person);
  again.mutable_identity()->set_given_name("Taken");
  EXPECT_TRUE(absl::IsPermissionDenied(m_other->putPerson(again).status()))
      << "to add them again is no way in";
}

TEST_F(PersonAccessRule, leadsAssignAndTakeAway) {
  ASSERT_EQ(m_lead->assign(m_person, m_ids["o.other"], true), absl::OkStatus());
  EXPECT_TRUE(m_other->person(m_person).ok());
  EXPECT_TRUE(m_clinic.desk().person(m_person).ok()) << "a person may have several";
  const auto list = m_lead->assignments(m_person);
  ASSERT_TRUE(list.ok()) << list.status();
  ASSERT_EQ(list->size(), 2U) << "therapists; leads need none";
  EXPECT_TRUE(list->at(0).assigned() && list->at(1).assigned());
  ASSERT_EQ(m_lead->assign(m_person, m_ids["o.other"], false), absl::OkStatus());
  EXPECT_TRUE(absl::IsPermissionDenied(m_other->person(m_person).status()));
  EXPECT_TRUE(absl::IsNotFound(m_lead->assign(m_person, test::idOf(99), true)));
  EXPECT_TRUE(absl::IsNotFound(m_lead->assign(test::idOf(99), m_ids["o.other"], true)));
  EXPECT_TRUE(absl::IsPermissionDenied(m_other->assign(m_person, m_ids["o.other"], true)));
  EXPECT_TRUE(audited("person.assign") && audited("person.unassign"));
}

TEST_F(PersonAccessRule, breakGlassOpensForAnHourIsAuditedAndShown) {
  const auto found = m_other->findPersons("INVENTED");
  ASSERT_TRUE(found.ok()) << found.status();
  ASSERT_EQ(found->size(), 1U);
  EXPECT_EQ(found->at(0).person_id(), m_person);
  EXPECT_FALSE(found->at(0).open());
  for (const char* bad : {"", "why not", "                  "}) {
    EXPECT_TRUE(absl::IsInvalidArgument(m_other->breakGlass(m_person, bad).status())) << bad;
  }
  ASSERT_TRUE(m_other->breakGlass(m_person, kReason).ok());
  EXPECT_TRUE(m_other->person(m_person).ok());
  EXPECT_EQ(m_other->caseload()->size(), 1U);
  EXPECT_TRUE(absl::IsFailedPrecondition(m_other->breakGlass(m_person, kReason).status()));
  // Shown to those who look after the person.
  const auto rows = m_clinic.desk().caseload();
  ASSERT_EQ(rows->at(0).openings_size(), 1);
  EXPECT_EQ(rows->at(0).openings(0).display_name(), "o.other (invented)");
  EXPECT_EQ(rows->at(0).openings(0).reason(), kReason);
  EXPECT_TRUE(audited("person.break_glass"));
  EXPECT_FALSE(audited("socket")) << "the trail names no content";
  // With the record itself too, for the bar of whoever opened it.
  const auto opened = m_other->person(m_person);
  ASSERT_TRUE(opened.ok());
  ASSERT_EQ(opened->openings_size(), 1);
  EXPECT_EQ(opened->openings(0).therapist_id(), m_ids["o.other"]);
  EXPECT_EQ(toTime(opened->openings(0).until()), m_clinic.clock().wall() + kOpeningLife);

  m_clinic.clock().advance(kOpeningLife);
  ASSERT_TRUE(m_other->signIn("o.other", test::kPassword).ok());  // an hour without use
  ASSERT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(absl::IsPermissionDenied(m_other->person(m_person).status()));
  EXPECT_EQ(m_other->caseload()->size(), 0U);
  EXPECT_EQ(m_clinic.desk().caseload()->at(0).openings_size(), 1) << "still shown when it is over";
  m_clinic.clock().advance(kOpeningShown);
  ASSERT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok());
  EXPECT_EQ(m_clinic.desk().caseload()->at(0).openings_size(), 0);
}

TEST_F(PersonAccessRule, findingNeedsTheWholeNameAndIsWrittenDown) {
  EXPECT_EQ(m_other->findPersons("Inv")->size(), 0U);
  EXPECT_EQ(m_other->findPersons("nvented")->size(), 0U);
  EXPECT_TRUE(absl::IsInvalidArgument(m_other->findPersons("I").status()));
  EXPECT_TRUE(audited("person.find"));
  EXPECT_FALSE(audited("nvented"));
}

// An update must shut nobody out: what every therapist saw before, they see after.
TEST_F(PersonAccessRule, theMigrationAssignsEverybodyToEveryTherapist) {
  const std::string path = m_clinic.folder().path("old.db");
  DatabaseOptions options;
  options.path = path;
  options.what = "an old store";
  {
    const auto& all = hubMigrations();
    const auto old = Database::open(options, {all.begin(), all.begin() + 3});
    ASSERT_TRUE(old.ok()) << old.status();
    (*old)->exec(
        "INSERT INTO account VALUES ('t1', 't1', 'T', 1, ''), ('t2', 't2', 'T', 1, ''), ('l', 'l', 'L', 2, "
        "'');"
        "INSERT INTO person VALUES ('p1', 1, ''), ('p2', 1, '')");
  }
  const auto store = openSqliteHubStore(path);
  ASSERT_TRUE(store.ok()) << store.status();
  EXPECT_EQ((*store)->read([&](HubTransaction& transaction) {
    for (const char* account : {"t1", "t2"}) {
      EXPECT_EQ(transaction.personIdsOf(account, absl::Now(), "", 10),
                (std::vector<std::string>{"p1", "p2"}));
    }
    EXPECT_FALSE(transaction.isAssigned("l", "p1"));
    return absl::OkStatus();
  }),
            absl::OkStatus());
}

}  // namespace
}  // namespace newel
