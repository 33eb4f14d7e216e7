#include "sync/home/home_engine.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/home/lossy_network.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

class Engine : public testing::Test {
 protected:
  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft(), "Tilda");
};

TEST_F(Engine, theJournalTakesOnlyTheNextLine) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const std::string id = phone->newId();
  EXPECT_EQ(phone->appendJournal({test::sampleLine(id, m_person, 1)}), absl::OkStatus());
  EXPECT_TRUE(absl::IsFailedPrecondition(phone->appendJournal({test::sampleLine(id, m_person, 1)})));
  EXPECT_TRUE(absl::IsFailedPrecondition(phone->appendJournal({test::sampleLine(id, m_person, 3)})));
  EXPECT_EQ(phone->appendJournal({test::sampleLine(id, m_person, 2)}), absl::OkStatus());
  v1::JournalLine bad = test::sampleLine(id, m_person, 3);
  bad.clear_kind();
  EXPECT_TRUE(absl::IsInvalidArgument(phone->appendJournal({bad})));
  // Together means all or none.
  EXPECT_TRUE(absl::IsFailedPrecondition(
      phone->appendJournal({test::sampleLine(id, m_person, 3), test::sampleLine(id, m_person, 5)})));
  EXPECT_EQ(phone->unfinished()->lines.size(), 2U);
  EXPECT_EQ(phone->appendJournal({test::sampleLine(id, m_person, 3), test::sampleLine(id, m_person, 4)}),
            absl::OkStatus());
  const auto unfinished = phone->unfinished();
  ASSERT_TRUE(unfinished.has_value());
  EXPECT_EQ(unfinished->practice_id, id);
  EXPECT_EQ(unfinished->lines.size(), 4U);
}

TEST_F(Engine, closingEndsTheJournalAndQueuesTheRecordTogether) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const std::string id = phone->newId();
  ASSERT_TRUE(phone->appendJournal({test::sampleLine(id, m_person, 1)}).ok());
  const auto practice = test::samplePractice(id, m_person);
  EXPECT_EQ(phone->closePractice(practice), absl::OkStatus());
  EXPECT_FALSE(phone->unfinished().has_value());
  EXPECT_EQ(phone->state().queued, 1U);
  EXPECT_EQ(phone->practices().size(), 1U);
  EXPECT_TRUE(absl::IsAlreadyExists(phone->closePractice(practice)));
  EXPECT_TRUE(absl::IsFailedPrecondition(phone->appendJournal({test::sampleLine(id, m_person, 2)})));
  EXPECT_EQ(phone->closePractice(test::samplePractice(id, m_person, 2)), absl::OkStatus());
  EXPECT_EQ(phone->practices().size(), 1U) << "a later revision is the same practice";
  EXPECT_EQ(phone->practices()[0].revision(), 2U);
}

// A page of a long history: by the time in the record's own id, without opening what lies before.
TEST_F(Engine, aPageOfTheHistoryIsReadAlone) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  std::vector<std::string> ids;
  std::vector<absl::Time> made;
  for (int week = 0; week < 6; ++week) {
    made.push_back(m_clinic.clock().wall());
    ids.push_back(phone->newId());
    ASSERT_TRUE(phone->closePractice(test::samplePractice(ids.back(), m_person)).ok());
    m_clinic.clock().advance(absl::Hours(24 * 7));
  }
  EXPECT_EQ(phone->practicesSince(absl::InfinitePast()).size(), 6U);
  EXPECT_EQ(phone->practicesSince(absl::InfiniteFuture()).size(), 0U);
  for (std::size_t i = 0; i < ids.size(); ++i) {
    const auto page = phone->practicesSince(made[i]);
    ASSERT_EQ(page.size(), ids.size() - i);
    EXPECT_EQ(page.front().id(), ids[i]);
    EXPECT_EQ(page.back().id(), ids.back());
    EXPECT_EQ(phone->practicesSince(made[i] + absl::Milliseconds(1)).size(), ids.size() - i - 1);
  }
  // A later revision is the same practice, in its old place.
  ASSERT_TRUE(phone->closePractice(test::samplePractice(ids[3], m_person, 2)).ok());
  EXPECT_EQ(phone->practicesSince(made[3]).size(), 3U);
  EXPECT_EQ(phone->practicesSince(made[3]).front().revision(), 2U);
}

TEST_F(Engine, whetherARecordHasArrivedIsKnownForEachOne) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const std::string first = phone->newId();
  ASSERT_TRUE(phone->closePractice(test::samplePractice(first, m_person)).ok());
  EXPECT_EQ(phone->deliveryOf(first), Delivery::Waiting);
  ASSERT_TRUE(phone->syncOnce().ok());
  EXPECT_EQ(phone->deliveryOf(first), Delivery::Arrived);
  const std::string second = phone->newId();
  ASSERT_TRUE(phone->closePractice(test::samplePractice(second, m_person)).ok());
  EXPECT_EQ(phone->deliveryOf(first), Delivery::Arrived);
  EXPECT_EQ(phone->deliveryOf(second), Delivery::Waiting);
}

TEST_F(Engine, whatDoesNotBelongHereIsRefused) {
  const auto phone = m_clinic.newPhone("phone");
  EXPECT_TRUE(
      absl::IsFailedPrecondition(phone->closePractice(test::samplePractice(phone->newId(), m_person))));
  ASSERT_TRUE(phone->pair(m_clinic.ticketFor(m_person)).ok());
  EXPECT_TRUE(
      absl::IsInvalidArgument(phone->closePractice(test::samplePractice(phone->newId(), test::idOf(44)))));
  auto practice = test::samplePractice(phone->newId(), m_person);
  EXPECT_TRUE(absl::IsInvalidArgument(phone->addToldLater(practice))) << "its origin is another";
  practice.set_origin(v1::ORIGIN_TOLD_LATER);
  EXPECT_EQ(phone->addToldLater(practice), absl::OkStatus());
  EXPECT_TRUE(absl::IsInvalidArgument(phone->writeMessage("")));
  EXPECT_TRUE(absl::IsInvalidArgument(phone->writeMessage(std::string(4001, 'x'))));
  EXPECT_TRUE(absl::IsNotFound(phone->markSeen(v1::RECEIPT_OF_PROGRAMME, test::idOf(45), 1)));
}

TEST_F(Engine, weeksWithNoHubAreNoLoss) {
  m_clinic.sign(test::transfemoralLeft());
  test::LossyNetwork network;
  auto options = m_clinic.phoneOptions("phone");
  options.network = &network;
  auto phone = *HomeEngine::open(options);
  ASSERT_TRUE(phone->pair(m_clinic.ticketFor(m_person)).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  network.losses.down = true;
  for (int day = 0; day < 21; ++day) {
    m_clinic.clock().advance(absl::Hours(24));
    EXPECT_TRUE(absl::IsUnavailable(phone->syncOnce()));
    EXPECT_EQ(phone->state().last_problem, "sync.no-network");
    EXPECT_TRUE(phone->programme().has_value());
    EXPECT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
    phone.reset();
    phone = *HomeEngine::open(options);
  }
  network.losses.down = false;
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->state().queued, 0U);
  EXPECT_EQ(phone->state().last_problem, "");
  ASSERT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok()) << "the desk's session is long over";
  EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), 21U);
}

TEST_F(Engine, anUrgentMessageWaitsToBeSeenAndTheDeskKnowsWhen) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  v1::SendMessageRequest message;
  message.set_id(test::idOf(50));
  message.set_person_id(m_person);
  message.set_text("Please leave the stairs out this week.");
  message.set_urgent(true);
  ASSERT_TRUE(m_clinic.desk().sendMessage(message).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->unseenUrgentMessageIds(), std::vector<std::string>{test::idOf(50)});
  EXPECT_EQ(m_clinic.desk().receipts(m_person)->size(), 1U) << "arrived";
  EXPECT_EQ(phone->markSeen(v1::RECEIPT_OF_MESSAGE, test::idOf(50), 0), absl::OkStatus());
  EXPECT_EQ(phone->markSeen(v1::RECEIPT_OF_MESSAGE, test::idOf(50), 0), absl::OkStatus());
  EXPECT_TRUE(phone->unseenUrgentMessageIds().empty());
  EXPECT_EQ(phone->state().queued, 1U) << "seen twice is one receipt";
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  const auto receipts = m_clinic.desk().receipts(m_person);
  ASSERT_EQ(receipts->size(), 2U);
  EXPECT_EQ(receipts->at(1).state(), v1::RECEIPT_STATE_SEEN);
}

TEST_F(Engine, wordsOfThePersonReachTheDesk) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->writeMessage("The liner pinches."), absl::OkStatus());
  EXPECT_EQ(phone->messages().size(), 1U);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_clinic.desk().messages(m_person, false)->at(0).text(), "The liner pinches.");
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->messages().size(), 1U) << "one's own words must not come back doubled";
}

TEST_F(Engine, aNewerStoreIsRefusedAndADamagedOneSetAside) {
  m_clinic.pairedPhone("phone", m_person);
  const std::string path = m_clinic.folder().path("phone/home.db");
  {
    SQLite::Database raw(path, SQLite::OPEN_READWRITE);
    raw.exec("PRAGMA user_version = 99");
  }
  const auto newer = HomeEngine::open(m_clinic.phoneOptions("phone")).status();
  EXPECT_TRUE(absl::IsFailedPrecondition(newer));
  EXPECT_NE(std::string(newer.message()).find("newer version"), std::string::npos);
  { std::ofstream(path, std::ios::binary | std::ios::trunc) << "torn"; }
  fs::remove(path + "-wal");
  const auto torn = HomeEngine::open(m_clinic.phoneOptions("phone")).status();
  EXPECT_TRUE(absl::IsDataLoss(torn)) << torn;
  EXPECT_TRUE(fs::exists(path + ".set-aside-1"));
  const auto fresh = HomeEngine::open(m_clinic.phoneOptions("phone"));
  ASSERT_TRUE(fresh.ok()) << fresh.status();
  EXPECT_FALSE((*fresh)->state().paired);
}

// Whatever keeps a close from being written, the journal outlives it.
TEST_F(Engine, aCloseThatFailsLeavesTheJournal) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  SQLite::Database raw(m_clinic.folder().path("phone/home.db"), SQLite::OPEN_READWRITE);
  raw.exec("CREATE TRIGGER failing BEFORE INSERT ON outbox BEGIN SELECT RAISE(FAIL, 'no'); END");
  const std::string id = phone->newId();
  ASSERT_TRUE(phone->appendJournal({test::sampleLine(id, m_person, 1)}).ok());
  EXPECT_FALSE(phone->closePractice(test::samplePractice(id, m_person)).ok());
  EXPECT_TRUE(phone->unfinished().has_value());
  EXPECT_TRUE(phone->practices().empty());
  EXPECT_EQ(phone->state().queued, 0U);
  raw.exec("DROP TRIGGER failing");
  EXPECT_EQ(phone->closePractice(test::samplePractice(id, m_person)), absl::OkStatus());
  EXPECT_EQ(phone->state().queued, 1U);
}

TEST_F(Engine, wipingLeavesNoByteOfThePerson) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  m_clinic.sign(test::transfemoralLeft());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_TRUE(phone->writeMessage("CANARYWORDS").ok());
  const std::string practice = phone->newId();
  ASSERT_TRUE(phone->closePractice(test::samplePractice(practice, m_person)).ok());
  const auto found = [&](const std::string& canary) {
    for (const auto& file : fs::directory_iterator(m_clinic.folder().path("phone"))) {
      std::ifstream stream(file.path(), std::ios::binary);
      const std::string bytes((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
      if (bytes.find(canary) != std::string::npos) return true;
    }
    return false;
  };
  EXPECT_FALSE(found("CANARYWORDS")) << "sealed";
  EXPECT_TRUE(found(practice)) << "ids are open";
  ASSERT_EQ(phone->wipe(), absl::OkStatus());
  for (const std::string& canary : {std::string("CANARYWORDS"), m_person, practice, std::string("Tilda")}) {
    EXPECT_FALSE(found(canary)) << canary;
  }
  EXPECT_FALSE(phone->state().paired);
  EXPECT_FALSE(phone->programme().has_value());
  EXPECT_TRUE(phone->practices().empty());
  EXPECT_EQ(phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus()) << "and it can be paired again";
}

TEST_F(Engine, thePersonMayTakeEverythingAlongAndNoSecret) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  m_clinic.sign(test::transfemoralLeft());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), m_person)).ok());
  ASSERT_TRUE(phone->writeMessage("Hello \xe2\x9c\x93").ok());
  v1::ReminderBook book = phone->reminderBook();
  book.mutable_settings()->set_wanted(v1::REMINDERS_WANTED_YES);
  ASSERT_EQ(phone->keepReminderBook(book), absl::OkStatus());
  const auto all = nlohmann::json::parse(phone->exportAll(), nullptr, false);
  ASSERT_TRUE(all.is_object());
  EXPECT_EQ(all["name"], "Tilda");
  EXPECT_EQ(all["person"]["id"], m_person);
  EXPECT_EQ(all["programmes"].size(), 1U);
  EXPECT_EQ(all["practices"].size(), 1U);
  EXPECT_EQ(all["messages"][0]["text"], "Hello \xe2\x9c\x93");
  EXPECT_EQ(all["reminders"]["settings"]["wanted"], "REMINDERS_WANTED_YES");
  const std::string token = m_clinic.tokenOf("phone");
  ASSERT_EQ(token.size(), 43U);
  EXPECT_EQ(phone->exportAll().find(token), std::string::npos);
}

}  // namespace
}  // namespace newel
