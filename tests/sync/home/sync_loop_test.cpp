// At least once on the wire, exactly once in effect: replies lost, deliveries doubled, records refused, a hub
// that went back to its backup.
#include "sync/home/sync_loop.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/hub/backup.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/home/lossy_network.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

class Contact : public testing::Test {
 protected:
  Contact() {
    auto options = m_clinic.phoneOptions("phone");
    options.network = &m_network;
    m_phone = *HomeEngine::open(options);
    EXPECT_EQ(m_phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  }
  std::string practise() {
    m_clinic.clock().advance(absl::Milliseconds(2));
    const std::string id = m_phone->newId();
    EXPECT_EQ(m_phone->closePractice(test::samplePractice(id, m_person)), absl::OkStatus());
    return id;
  }
  std::size_t atHub() { return m_clinic.desk().practices(m_person)->size(); }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  test::LossyNetwork m_network;
  std::unique_ptr<HomeEngine> m_phone;
};

TEST_F(Contact, aLostReplyDoublesNothing) {
  for (int i = 0; i < 3; ++i) practise();
  m_network.losses.lose_offer_replies = 2;
  EXPECT_TRUE(absl::IsDeadlineExceeded(m_phone->syncOnce()));
  EXPECT_EQ(m_phone->state().queued, 3U);
  EXPECT_EQ(atHub(), 3U) << "the hub has them, the phone does not know";
  EXPECT_FALSE(m_phone->syncOnce().ok());
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_EQ(atHub(), 3U);
}

TEST_F(Contact, doubledDeliveriesTakeEffectOnce) {
  m_network.losses.repeat_offers = 5;
  for (int i = 0; i < 5; ++i) {
    practise();
    EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  }
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_EQ(atHub(), 5U);
}

TEST_F(Contact, aLostFetchIsFetchedAgain) {
  m_clinic.sign(test::transfemoralLeft());
  m_network.losses.lose_fetch_replies = 1;
  EXPECT_FALSE(m_phone->syncOnce().ok());
  EXPECT_FALSE(m_phone->programme().has_value());
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->programme()->number(), 1U);
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).programme_arrived());
}

TEST_F(Contact, sentArrivedAndSeenComeInThatOrder) {
  const auto programme = m_clinic.sign(test::transfemoralLeft());
  EXPECT_FALSE(m_clinic.desk().caseload()->at(0).programme_arrived());
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).programme_arrived()) << "in the same round";
  EXPECT_FALSE(m_clinic.desk().caseload()->at(0).programme_seen());
  EXPECT_EQ(m_phone->markSeen(v1::RECEIPT_OF_PROGRAMME, programme.id(), 1), absl::OkStatus());
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).programme_seen());
}

TEST_F(Contact, anEditMadeDuringTheUploadGoesNext) {
  const std::string id = practise();
  bool edited = false;
  m_network.losses.spoil_offer = [&](v1::OfferReply&) {
    if (edited) return;
    edited = true;
    v1::Practice later = test::samplePractice(id, m_person, 2);
    later.set_note("the second thought");
    EXPECT_EQ(m_phone->closePractice(later), absl::OkStatus());
  };
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 0U);
  const auto practices = m_clinic.desk().practices(m_person);
  ASSERT_EQ(practices->size(), 1U);
  EXPECT_EQ(practices->at(0).note(), "the second thought");
}

TEST_F(Contact, aRefusedRecordIsSetAsideAndShownAndHoldsUpNothing) {
  const std::string bad = practise();
  {
    // As a bug of an older version might have left it.
    SQLite::Database raw(m_clinic.folder().path("phone/home.db"), SQLite::OPEN_READWRITE);
    raw.exec("UPDATE outbox SET content = x'00'");
  }
  for (int i = 0; i < 3; ++i) practise();
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_EQ(m_phone->state().set_aside, 1U);
  EXPECT_EQ(atHub(), 3U);
  EXPECT_NE(m_phone->exportAll().find("not_taken_by_the_clinic"), std::string::npos);
  EXPECT_NE(m_phone->exportAll().find(bad), std::string::npos) << "set aside is not thrown away";
  const int offers = m_network.losses.offers;
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_network.losses.offers, offers) << "what was refused for good is not offered again";
}

TEST_F(Contact, laterMeansAgainAndMissingOutcomesMeanLater) {
  practise();
  practise();
  m_network.losses.spoil_offer = [](v1::OfferReply& reply) {
    if (reply.outcomes_size() < 2) return;
    reply.mutable_outcomes(0)->set_outcome(v1::OUTCOME_LATER);
    reply.mutable_outcomes()->RemoveLast();
  };
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 2U);
  m_network.losses.spoil_offer = nullptr;
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_EQ(atHub(), 2U);
}

TEST_F(Contact, outcomesOfOtherRecordsAcknowledgeNothing) {
  practise();
  m_network.losses.spoil_offer = [](v1::OfferReply& reply) {
    for (auto& outcome : *reply.mutable_outcomes()) outcome.set_id(test::idOf(1));
  };
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 1U);
}

TEST_F(Contact, tenThousandInTheQueueGoInPages) {
  constexpr int kMany = 10000;
  for (int i = 0; i < kMany; ++i) practise();
  EXPECT_EQ(m_phone->state().queued, static_cast<std::uint64_t>(kMany));
  for (int round = 0; round < 10 && m_phone->state().queued > 0; ++round) {
    EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  }
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_GE(m_network.losses.offers, kMany / 100) << "at most 100 a call";
  EXPECT_EQ(atHub(), static_cast<std::size_t>(kMany));
}

TEST_F(Contact, manyProgrammesComeInPages) {
  for (std::uint32_t number = 0; number < 12; ++number) m_clinic.sign(test::transfemoralLeft(), number);
  m_network.losses.spoil_fetch = nullptr;
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->programmes().size(), 12U);
  EXPECT_EQ(m_phone->programme()->number(), 12U);
}

TEST_F(Contact, aHubThatNeverEndsItsPagesIsLeft) {
  m_network.losses.spoil_fetch = [](v1::FetchReply& reply) { reply.set_more(true); };
  EXPECT_TRUE(absl::IsInternal(m_phone->syncOnce()));
  EXPECT_EQ(m_phone->state().last_problem, "sync.hub-refused");
}

TEST_F(Contact, aDeliveryMeantForAnotherIsIgnoredAndTheRestTaken) {
  const std::string other = m_clinic.addPerson(test::transtibialRight());
  v1::SignedProgramme foreign;
  const auto theirs = m_clinic.sign(test::transtibialRight());
  const auto rows = m_clinic.hub().prescriptions().programmes(other);
  foreign = rows->programmes(0);
  m_clinic.sign(test::transfemoralLeft());
  m_network.losses.spoil_fetch = [&](v1::FetchReply& reply) {
    v1::Envelope crossed = makeEnvelope(v1::RECORD_KIND_PROGRAMME, theirs.id(), 1, toBytes(foreign));
    *reply.add_records() = crossed;
    std::swap(*reply.mutable_records(0), *reply.mutable_records(reply.records_size() - 1));
  };
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(m_phone->programmes().size(), 1U);
  EXPECT_EQ(m_phone->programme()->person_id(), m_person);
  EXPECT_NE(m_phone->exportAll().find("person_id: another person"), std::string::npos);
}

// A backup that is a day old is put back: what it lacks comes again from the phone, and numbers go on.
TEST_F(Contact, afterARestoreThePhoneOffersAgainWhatTheHubHasLost) {
  m_clinic.sign(test::transfemoralLeft(), 0);
  const std::string before = practise();
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(backupStore(m_clinic.storePath(), m_clinic.folder().path("backup.db")), absl::OkStatus());
  m_clinic.sign(test::transfemoralLeft(), 1);
  const std::string after = practise();
  ASSERT_TRUE(m_phone->writeMessage("after the backup").ok());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(m_phone->programme()->number(), 2U);
  ASSERT_EQ(m_phone->state().queued, 0U);

  const int port = std::stoi(m_clinic.address().substr(m_clinic.address().rfind(':') + 1));
  m_clinic.stopHub();
  for (const char* suffix : {"", "-wal", "-shm"}) fs::remove(m_clinic.storePath() + suffix);
  fs::copy_file(m_clinic.folder().path("backup.db"), m_clinic.storePath());
  m_clinic.startHub(port);
  ASSERT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok());
  ASSERT_EQ(atHub(), 1U);

  absl::Status synced;
  for (int i = 0; i < 20; ++i) {
    synced = m_phone->syncOnce();
    if (synced.ok()) break;
    std::this_thread::sleep_for(std::chrono::milliseconds(200));  // the old connection ends by itself
  }
  ASSERT_EQ(synced, absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_EQ(atHub(), 2U);
  EXPECT_EQ(m_clinic.desk().messages(m_person, false)->size(), 1U);
  EXPECT_EQ(m_phone->programme()->number(), 2U) << "an older hub takes nothing away";
  const auto next = m_clinic.sign(test::transfemoralLeft(), 1);
  EXPECT_EQ(next.number(), 3U) << "2 is on the phone with other content";
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->programme()->number(), 3U);
}

TEST_F(Contact, twoPhonesOfOnePersonDoNotDisturbEachOther) {
  const auto second = m_clinic.pairedPhone("second", m_person);
  practise();
  ASSERT_EQ(second->closePractice(test::samplePractice(second->newId(), m_person)), absl::OkStatus());
  ASSERT_TRUE(second->writeMessage("from the second").ok());
  ASSERT_EQ(second->syncOnce(), absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(atHub(), 2U);
  EXPECT_EQ(m_phone->messages().size(), 1U);
  EXPECT_EQ(m_clinic.desk().devices(m_person)->size(), 2U);
}

// Any mixture of losses: once they stop, every practice is there once and the outbox is empty.
TEST_F(Contact, anyMixtureOfLossesEndsWithEachPracticeOnce) {
  test::SampleRandom random(7);
  std::size_t practised = 0;
  for (int round = 0; round < 40; ++round) {
    for (std::uint32_t i = random.between(0, 3); i > 0; --i, ++practised) practise();
    m_network.losses.down = random.chance(20);
    m_network.losses.lose_offer_replies = random.chance(40) ? 1 : 0;
    m_network.losses.repeat_offers = random.chance(30) ? 1 : 0;
    m_network.losses.lose_fetch_replies = random.chance(20) ? 1 : 0;
    m_phone->syncOnce().IgnoreError();
  }
  m_network.losses.down = false;
  m_network.losses.lose_offer_replies = m_network.losses.lose_fetch_replies = 0;
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_phone->state().queued, 0U);
  EXPECT_EQ(atHub(), practised);
  EXPECT_EQ(m_phone->practices().size(), practised);
}

TEST_F(Contact, aNewVersionLooksAgainAtWhatTheOldOneRefused) {
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  const int fetches = m_network.losses.fetches;
  m_clinic.sign(test::transfemoralLeft());
  // As if the programme used a word that this version did not know.
  m_network.losses.spoil_fetch = [](v1::FetchReply& reply) {
    for (auto& record : *reply.mutable_records()) record.set_content("from the future");
  };
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_GT(m_network.losses.fetches, fetches);
  EXPECT_FALSE(m_phone->programme().has_value());
  m_network.losses.spoil_fetch = nullptr;
  m_phone.reset();
  auto options = m_clinic.phoneOptions("phone");
  options.network = &m_network;
  options.app_version = "test 2";
  m_phone = *HomeEngine::open(options);
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(m_phone->programme().has_value());
}

}  // namespace
}  // namespace newel
