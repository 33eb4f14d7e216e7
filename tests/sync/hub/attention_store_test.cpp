// The attention list at the hub: digests that are never older than the record, rows that wait, whose rows
// they are; on either store.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "core/progress/attention_digest.h"
#include "core/time/local_day.h"
#include "sync/hub/digest_keeper.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class AttentionStore : public testing::Test {
 protected:
  v1::CaseRow rowOf(const std::string& person_id) {
    const auto row = m_clinic.desk().caseRow(person_id);
    EXPECT_TRUE(row.ok()) << row.status();
    return row.ok() ? *row : v1::CaseRow();
  }
  static v1::AttentionDigest digestOf(const v1::CaseRow& row) {
    v1::AttentionDigest digest;
    EXPECT_TRUE(digest.ParseFromString(row.digest()));
    return digest;
  }
  // As if nothing were kept.
  std::string madeNow(const std::string& person_id) {
    std::string content;
    EXPECT_EQ(m_clinic.store().read([&](HubTransaction& transaction) -> absl::Status {
      const auto row = digestRowOf(transaction, RuleBook::builtIn(), person_id, m_clinic.clock().wall());
      if (!row.ok()) return row.status();
      content = row->content;
      return absl::OkStatus();
    }),
              absl::OkStatus());
    return content;
  }
  std::map<std::string, CaseloadRow> kept() {
    std::map<std::string, CaseloadRow> rows;
    EXPECT_EQ(m_clinic.store().read([&](HubTransaction& transaction) {
      CaseloadQuery query;
      query.now = m_clinic.clock().wall();
      query.limit = 500;
      m_pages.push_back(transaction.caseload(query));
      for (const auto& row : m_pages.back().rows) rows[std::string(row.person_id)] = row;
      return absl::OkStatus();
    }),
              absl::OkStatus());
    return rows;
  }
  int refresh() {
    const auto made = m_clinic.hub().digests().refresh(500);
    EXPECT_TRUE(made.ok()) << made.status();
    return made.value_or(-1);
  }
  void send(const std::string& person_id, int number) {
    // Not over the network: the desk's session would end with the hours that pass here.
    DeskCaller caller;
    caller.therapist.set_id(test::idOf(2001));
    caller.therapist.set_display_name("Dr Sample (invented)");
    const auto sent = m_clinic.hub().files().sendMessage(caller, messageTo(person_id, number));
    EXPECT_TRUE(sent.ok()) << sent.status();
  }
  static v1::SendMessageRequest messageTo(const std::string& person_id, int number) {
    v1::SendMessageRequest request;
    request.set_id(test::idOf(static_cast<std::uint64_t>(7000 + number)));
    request.set_person_id(person_id);
    request.set_text("See you on Monday.");
    return request;
  }
  bool inTheTrail(const std::string& words) {
    const auto lines = m_clinic.auditActions();
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.find(words) != std::string::npos; });
  }
  std::string day(int from_now) {
    return formatLocalDay(localDayAt(m_clinic.clock().wall(), absl::UTCTimeZone()) + from_now);
  }

  test::TestClinic m_clinic;
  std::vector<CaseloadPage> m_pages;  // what rows of kept() point into
  const v1::Person m_person = test::transfemoralLeft();
};

TEST_F(AttentionStore, everyChangeOfARecordMakesItsDigestDueAndTheAnswerIsNeverOlder) {
  const std::string id = m_clinic.addPerson(m_person);
  const auto phone = m_clinic.pairedPhone("phone", id);
  const auto becomesDue = [&](const char* what, const std::function<void()>& change) {
    refresh();
    ASSERT_FALSE(kept().at(id).due) << what;
    change();
    EXPECT_TRUE(kept().at(id).due) << what;
    const v1::CaseRow row = rowOf(id);
    v1::CaseRow anew;
    ASSERT_TRUE(anew.ParseFromString(madeNow(id)));
    EXPECT_EQ(row.digest(), anew.digest()) << what;
    EXPECT_FALSE(row.digest().empty()) << what;
  };
  becomesDue("programme", [&] { m_clinic.sign(m_person); });
  becomesDue("message", [&] { send(id, 1); });
  becomesDue("practice", [&] {
    ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), id)).ok());
    ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  });
  send(id, 2);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus())
      << "brings the message; that it arrived is told the next time";
  becomesDue("receipt", [&] {
    ASSERT_EQ(phone->markSeen(v1::RECEIPT_OF_MESSAGE, messageTo(id, 2).id(), 0), absl::OkStatus());
    ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  });
  becomesDue("word from the person", [&] {
    ASSERT_EQ(phone->writeMessage("The liner pinches."), absl::OkStatus());
    ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  });
  EXPECT_EQ(digestOf(rowOf(id)).unread_by_clinic_size(), 1);
  becomesDue("reading it", [&] { ASSERT_TRUE(m_clinic.desk().messages(id, true).ok()); });
  EXPECT_EQ(digestOf(rowOf(id)).unread_by_clinic_size(), 0);
  v1::IssueHoldRequest hold;
  hold.set_person_id(id);
  hold.set_reason("Please rest today.");
  becomesDue("hold order", [&] { ASSERT_TRUE(m_clinic.desk().issueHold(hold).ok()); });
  EXPECT_TRUE(digestOf(rowOf(id)).has_hold_waiting_since());
  becomesDue("wearing time", [&] {
    EXPECT_EQ(phone->keepWearBlock(test::sampleWearBlock(phone->newId(), id)), absl::OkStatus());
    EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  });
  becomesDue("a measure", [&] {
    v1::PutMeasureRequest put;
    *put.mutable_measure() = test::timedWalk(test::idOf(7900), id, 14);
    EXPECT_TRUE(m_clinic.desk().putMeasure(put).ok());
  });
}

TEST_F(AttentionStore, aHurtWhenTheProsthesisCameOffAndAMeasureThatIsWantedStandInTheRow) {
  const std::string id = m_clinic.addPerson(m_person);
  const auto phone = m_clinic.pairedPhone("phone", id);
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = m_clinic.draft(m_person);
  *request.mutable_draft()->mutable_wear_plan() = test::sampleWearPlan(id);
  v1::AskedMeasure& asked = *request.mutable_draft()->add_measures();
  asked.set_kind("timed-up-and-go");
  asked.set_by_day("2026-11-25");
  ASSERT_TRUE(m_clinic.desk().signProgramme(request).ok());
  m_clinic.clock().advance(absl::Minutes(5));
  v1::WearBlock harmed = test::sampleWearBlock(phone->newId(), id);
  harmed.mutable_check()->set_signs(0, v1::SKIN_SIGN_BLISTER);
  const std::int64_t now = absl::ToUnixSeconds(m_clinic.clock().wall());
  harmed.mutable_put_on_at()->set_seconds(now - 60);
  harmed.mutable_taken_off_at()->set_seconds(now);
  ASSERT_EQ(phone->keepWearBlock(harmed), absl::OkStatus());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  const auto facts = [&] {
    return factsAt(digestOf(rowOf(id)), {id, m_clinic.clock().wall(), true}, m_clinic.clock().wall());
  };
  ASSERT_TRUE(facts().skin.has_value());
  EXPECT_EQ(facts().skin->what, "wear-harm");
  ASSERT_TRUE(facts().measure_due.has_value());
  EXPECT_EQ(facts().measure_due->kind_id, "timed-up-and-go");
  v1::PutMeasureRequest put;
  *put.mutable_measure() = test::timedWalk(test::idOf(7901), id, 14);
  ASSERT_TRUE(m_clinic.desk().putMeasure(put).ok());
  EXPECT_FALSE(facts().measure_due.has_value()) << "it was taken";
}

// Whatever order writes and refreshes come in, what is kept in the end is what is made from scratch.
TEST_F(AttentionStore, afterAnyOrderOfWritesAndRefreshesTheKeptIsTheOneFromScratch) {
  std::mt19937 random(7);
  std::vector<v1::Person> people;
  std::vector<std::shared_ptr<HomeEngine>> phones;
  for (int i = 0; i < 3; ++i) {
    v1::Person person = test::transfemoralLeft();
    person.set_id(test::idOf(static_cast<std::uint64_t>(300 + i)));
    m_clinic.addPerson(person);
    m_clinic.sign(person);
    people.push_back(person);
    phones.push_back(m_clinic.pairedPhone("phone " + std::to_string(i), person.id()));
  }
  for (int step = 0; step < 120; ++step) {
    const std::size_t who = random() % people.size();
    const std::string& id = people[who].id();
    switch (random() % 5) {
      case 0:
        send(id, step);
        break;
      case 1:
        ASSERT_TRUE(phones[who]->closePractice(test::samplePractice(phones[who]->newId(), id)).ok());
        break;
      case 2:
        ASSERT_EQ(phones[who]->syncOnce(), absl::OkStatus());
        break;
      case 3:
        m_clinic.clock().advance(absl::Hours(static_cast<double>(random() % 30)));
        break;
      default:
        ASSERT_TRUE(m_clinic.hub().digests().refresh(1 + static_cast<int>(random() % 2)).ok());
    }
  }
  while (refresh() > 0) {
  }
  for (const auto& [id, row] : kept()) {
    EXPECT_FALSE(row.due);
    ASSERT_TRUE(row.has_digest);
    v1::CaseRow then;
    v1::CaseRow anew;
    ASSERT_TRUE(then.ParseFromString(std::string(row.digest)) && anew.ParseFromString(madeNow(id)));
    const absl::Time now = m_clinic.clock().wall();
    const auto said = [&](const v1::CaseRow& of) {
      std::string keys;
      const ContactFacts contact{id, row.last_contact, row.paired};
      for (const auto& reason :
           attentionRow(factsAt(digestOf(of), contact, now), now, localDayAt(now, absl::UTCTimeZone()), 7)
               .reasons) {
        keys += reason.key + " ";
        for (const auto& [name, value] : reason.args) keys += name + "=" + value + " ";
      }
      return keys;
    };
    EXPECT_EQ(said(then), said(anew));
  }
}

// A refresh that read before a change came must not call the change made.
TEST_F(AttentionStore, whatChangedMeanwhileStaysDue) {
  const std::string id = m_clinic.addPerson(m_person);
  std::vector<DueDigest> due;
  const auto read = [&](HubTransaction& transaction) {
    due = transaction.dueDigests(10);
    return absl::OkStatus();
  };
  ASSERT_EQ(m_clinic.store().read(read), absl::OkStatus());
  ASSERT_EQ(due.size(), 1U);
  send(id, 1);
  bool put = true;
  const auto write = [&](HubTransaction& transaction) {
    put = transaction.putDigest({id, {kDigestVersion, 30000}, "old"}, due[0].mark);
    return absl::OkStatus();
  };
  ASSERT_EQ(m_clinic.store().write(write), absl::OkStatus());
  EXPECT_FALSE(put);
  EXPECT_TRUE(kept().at(id).due);
  refresh();
  EXPECT_FALSE(kept().at(id).due);
}

TEST_F(AttentionStore, digestsOfAnotherVersionOrThatWillNotLastAreMadeAnew) {
  const std::string id = m_clinic.addPerson(m_person);
  refresh();
  const auto last_day = kept().at(id).digest_age.last_day;
  m_clinic.clock().advance(absl::Hours(24 * 90));
  EXPECT_EQ(refresh(), 1);
  EXPECT_GT(kept().at(id).digest_age.last_day, last_day + 80);
  EXPECT_EQ(refresh(), 0) << "once a day";
  EXPECT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    transaction.markOldDigests(kDigestVersion + 1, 0);
    return absl::OkStatus();
  }),
            absl::OkStatus());
  EXPECT_EQ(refresh(), 1);
}

TEST_F(AttentionStore, aRowThatWaitsIsSeenByColleaguesWithItsReasonAndInTheTrail) {
  const std::string id = m_clinic.addPerson(m_person);
  const auto snoozed = m_clinic.desk().snooze(id, "Their first visit is on Monday.", day(3));
  ASSERT_TRUE(snoozed.ok()) << snoozed.status();
  ASSERT_TRUE(
      m_clinic.hub().accounts().add("l.lead", "Lead (invented)", v1::ROLE_LEAD, test::kPassword).ok());
  const auto lead = m_clinic.newDesk();
  ASSERT_TRUE(lead->signIn("l.lead", test::kPassword).ok());
  const auto rows = lead->caseload();
  ASSERT_TRUE(rows.ok()) << rows.status();
  ASSERT_EQ(rows->size(), 1U);
  EXPECT_EQ(rows->at(0).snooze().reason(), "Their first visit is on Monday.");
  EXPECT_FALSE(rows->at(0).snooze().display_name().empty());
  EXPECT_GT(rows->at(0).snooze().keys_size(), 0);
  EXPECT_TRUE(inTheTrail("\"person.snooze\""));
  EXPECT_FALSE(inTheTrail("Monday")) << "the reason stays with the person";
  EXPECT_FALSE(inTheTrail("\"person.unsnooze\""));
  ASSERT_TRUE(lead->snooze(id, "", "").ok());
  EXPECT_FALSE(rowOf(id).has_snooze());
  EXPECT_TRUE(inTheTrail("\"person.unsnooze\""));
  EXPECT_TRUE(lead->snooze(id, "", "").ok()) << "again is no error";
}

TEST_F(AttentionStore, whatMayNotWaitIsRefusedAndSaysWhy) {
  const std::string id = m_clinic.addPerson(m_person);
  const auto codeOf = [&](const std::string& reason, const std::string& until) {
    return m_clinic.desk().snooze(id, reason, until).status().code();
  };
  EXPECT_EQ(codeOf("no", day(1)), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(codeOf("   ", day(1)), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(codeOf("A good reason.", day(-1)), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(codeOf("A good reason.", day(61)), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(codeOf("A good reason.", "2026-02-30"), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(codeOf("A good reason.", day(0)), absl::StatusCode::kOk);
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().snooze(test::idOf(99), "A good reason.", day(1)).status()));
  // A red flag comes: the row is Now, at once and without a refresh.
  const auto phone = m_clinic.pairedPhone("phone", id);
  v1::Practice practice = test::samplePractice(phone->newId(), id);
  practice.add_red_flag_rule_ids("stop-chest-pain");
  practice.set_end(v1::PRACTICE_END_RED_FLAG);
  practice.set_stop_reason(v1::STOP_REASON_CHEST_PAIN);
  ASSERT_TRUE(phone->closePractice(practice).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(codeOf("A good reason.", day(1)), absl::StatusCode::kFailedPrecondition);
}

TEST_F(AttentionStore, pagesAndOneRowAndOnlyOnesOwn) {
  std::vector<std::string> ids;
  for (int i = 0; i < 7; ++i) {
    v1::Person person = test::transfemoralLeft();
    person.set_id(test::idOf(static_cast<std::uint64_t>(400 + i)));
    ids.push_back(m_clinic.addPerson(person));
  }
  std::sort(ids.begin(), ids.end());
  DeskCaller caller;
  caller.therapist.set_role(v1::ROLE_LEAD);
  v1::ListCaseloadRequest request;
  request.set_limit(3);
  std::vector<std::string> seen;
  for (bool more = true; more;) {
    const auto page = m_clinic.hub().files().caseload(caller, request);
    ASSERT_TRUE(page.ok()) << page.status();
    for (const auto& row : page->rows()) seen.push_back(row.person().id());
    more = page->more();
    request.set_after_person_id(seen.back());
  }
  EXPECT_EQ(seen, ids);
  EXPECT_EQ(rowOf(ids[4]).person().id(), ids[4]);
  caller.therapist.set_role(v1::ROLE_THERAPIST);
  caller.therapist.set_id(test::idOf(77));
  request.clear_after_person_id();
  EXPECT_EQ(m_clinic.hub().files().caseload(caller, request)->rows_size(), 0);
  EXPECT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    transaction.setAssigned(test::idOf(77), ids[5], true);
    transaction.addOpening({test::idOf(901), ids[2], test::idOf(77), "It cannot wait.",
                            m_clinic.clock().wall(), m_clinic.clock().wall() + absl::Hours(1)});
    return absl::OkStatus();
  }),
            absl::OkStatus());
  const auto own = m_clinic.hub().files().caseload(caller, request);
  ASSERT_EQ(own->rows_size(), 2);
  EXPECT_EQ(own->rows(0).person().id(), ids[2]);
  EXPECT_EQ(own->rows(0).openings_size(), 1);
  EXPECT_FALSE(own->rows(0).mine());
  EXPECT_TRUE(own->rows(1).mine());
  m_clinic.clock().advance(absl::Hours(2));
  EXPECT_EQ(m_clinic.hub().files().caseload(caller, request)->rows_size(), 1) << "the hour is over";
}

}  // namespace
}  // namespace newel
