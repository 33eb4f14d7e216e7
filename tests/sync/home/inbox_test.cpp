// What comes to the phone and must not count: each is noted, changes nothing, and blocks nothing behind it.
#include "sync/home/inbox.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/signing.h"
#include "sync/home/outbox.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class InboxRule : public testing::Test {
 protected:
  InboxRule() {
    m_store = *DeviceStore::open(m_folder.path("phone"), "", std::string(kStoreKeyBytes, 'k'), m_random);
    m_settings.paired = true;
    m_settings.person = toBytes(m_person);
    m_settings.clinic_key = m_key.public_key;
  }
  InboxNews take(const std::vector<v1::Envelope>& envelopes) {
    InboxNews news;
    EXPECT_EQ(m_store->write([&](Database& database) {
      Inbox inbox(database, m_settings, m_clock.wall(), [this] { return newRecordId(m_clock, m_random); });
      for (const auto& envelope : envelopes) inbox.take(envelope);
      news = inbox.news();
      return absl::OkStatus();
    }),
              absl::OkStatus());
    return news;
  }
  v1::Envelope programme(std::uint32_t number, const ClinicKey& key, const v1::Person& person) {
    v1::Programme record = test::programmeOf(person, {test::entryOf("sit-to-stand", person)});
    record.set_id(test::idOf(500 + number));
    record.set_number(number);
    return makeEnvelope(v1::RECORD_KIND_PROGRAMME, record.id(), 1,
                        toBytes(signProgramme(toBytes(record), key)));
  }
  v1::Envelope programme(std::uint32_t number) { return programme(number, m_key, m_person); }
  v1::HoldOrder order(std::uint64_t number, const std::string& lifts = "") {
    v1::HoldOrder record;
    record.set_id(test::idOf(600 + number));
    record.set_number(number);
    record.set_person_id(m_person.id());
    record.set_clinic_id(test::idOf(2000));
    record.set_signer_id(test::idOf(2001));
    record.set_signer_name("Dr Sample (invented)");
    record.mutable_issued_at()->set_seconds(1);
    record.set_reason("Please stop.");
    record.set_lifts_id(lifts);
    return record;
  }
  v1::Envelope hold(const v1::HoldOrder& record, const ClinicKey& key) {
    return makeEnvelope(v1::RECORD_KIND_HOLD_ORDER, record.id(), 1,
                        toBytes(signHoldOrder(toBytes(record), key)));
  }
  v1::Envelope hold(const v1::HoldOrder& record) { return hold(record, m_key); }
  template <typename Read>
  auto look(Read read) {
    using Value = decltype(read(std::declval<Database&>()));
    auto value = m_store->read([&](Database& database) -> absl::StatusOr<Value> { return read(database); });
    EXPECT_TRUE(value.ok());
    return *value;
  }
  std::vector<std::uint32_t> numbers() {
    std::vector<std::uint32_t> list;
    for (const auto& kept : look(keptProgrammes)) list.push_back(kept.number());
    return list;
  }
  std::size_t active() { return activeAmong(look(keptHoldOrders)).size(); }
  std::string lastRefusal() {
    const auto refused = look(refusedArrivals);
    return refused.empty() ? "" : refused.back().reason;
  }
  void nextMoment() { m_clock.advance(absl::Seconds(1)); }

  test::TempFolder m_folder;
  test::TestClock m_clock;
  RealRandom m_random;
  ClinicKey m_key = makeClinicKey(m_random);
  v1::Person m_person = test::transfemoralLeft();
  DeviceSettings m_settings;
  std::unique_ptr<DeviceStore> m_store;
};

TEST_F(InboxRule, numbersOnlyGrow) {
  EXPECT_TRUE(take({programme(2)}).programme);
  nextMoment();
  EXPECT_FALSE(take({programme(1)}).programme) << "a late one must not become the programme";
  EXPECT_EQ(lastRefusal().rfind("number", 0), 0U);
  EXPECT_TRUE(take({programme(3)}).programme);
  EXPECT_EQ(numbers(), (std::vector<std::uint32_t>{2, 3}));
}

// A hub that went back to a backup gave number 2 again: the phone keeps what it has, and says so once.
TEST_F(InboxRule, aNumberGivenTwiceIsToldToTheHub) {
  take({programme(2)});
  v1::Programme other = test::programmeOf(m_person, {test::entryOf("sit-to-stand", m_person)});
  other.set_id(test::idOf(590));
  other.set_number(2);
  const auto envelope =
      makeEnvelope(v1::RECORD_KIND_PROGRAMME, other.id(), 1, toBytes(signProgramme(toBytes(other), m_key)));
  EXPECT_TRUE(take({envelope}).receipts);
  nextMoment();
  EXPECT_FALSE(take({envelope}).receipts) << "once is enough";
  EXPECT_EQ(numbers(), (std::vector<std::uint32_t>{2}));
  std::vector<v1::Receipt> told;
  for (const auto& queued : look([](Database& database) { return nextPage(database, 0); })) {
    v1::Receipt receipt;
    ASSERT_TRUE(receipt.ParseFromString(queued.content()));
    if (receipt.of() == v1::RECEIPT_OF_OVERTAKEN_PROGRAMME) told.push_back(receipt);
  }
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0].ref_id(), other.id());
  EXPECT_EQ(told[0].ref_number(), 2U);
}

TEST_F(InboxRule, theSameAgainIsNoNewsAndNoFault) {
  EXPECT_TRUE(take({programme(1), hold(order(1))}).receipts);
  const auto again = take({programme(1), hold(order(1))});
  EXPECT_FALSE(again.programme);
  EXPECT_TRUE(again.hold_orders.empty());
  EXPECT_FALSE(again.receipts);
  EXPECT_EQ(lastRefusal(), "");
}

TEST_F(InboxRule, unsignedForeignAndChangedAreNoted) {
  const ClinicKey stranger = makeClinicKey(m_random);
  v1::SignedProgramme bare;
  bare.set_content(toBytes(test::programmeOf(m_person, {test::entryOf("sit-to-stand", m_person)})));
  auto changed = programme(1);
  v1::SignedProgramme inside;
  inside.ParseFromString(changed.content());
  inside.mutable_content()->back() = static_cast<char>(inside.content().back() ^ 1);
  changed = makeEnvelope(v1::RECORD_KIND_PROGRAMME, changed.id(), 1, toBytes(inside));
  auto wrong_hash = programme(1);
  wrong_hash.set_sha256("x");
  const std::vector<std::pair<v1::Envelope, std::string>> cases = {
      {makeEnvelope(v1::RECORD_KIND_PROGRAMME, test::idOf(1), 1, toBytes(bare)), "key_id"},
      {programme(1, stranger, m_person), "key_id"},
      {programme(1, m_key, test::transtibialRight()), "person_id"},
      {changed, "signature"},
      {wrong_hash, "sha256"},
      {makeEnvelope(v1::RECORD_KIND_PROGRAMME, test::idOf(2), 1, "no record"), "content"},
      {makeEnvelope(v1::RECORD_KIND_MEASURE, test::idOf(3), 1, ""), "id"},
      {makeEnvelope(v1::RECORD_KIND_MEASURE, test::idOf(3), 1,
                    toBytes(test::timedWalk(test::idOf(3), test::idOf(99), 12))),
       "person_id"},
      {makeEnvelope(v1::RECORD_KIND_WEAR_BLOCK, test::idOf(4), 1,
                    toBytes(test::sampleWearBlock(test::idOf(4), test::idOf(99)))),
       "person_id"},
      {makeEnvelope(v1::RECORD_KIND_RECEIPT, test::idOf(5), 1, ""), "kind"},
  };
  for (const auto& [envelope, field] : cases) {
    nextMoment();
    EXPECT_FALSE(take({envelope}).programme) << field;
    EXPECT_EQ(lastRefusal().rfind(field, 0), 0U) << lastRefusal();
    EXPECT_TRUE(numbers().empty());
  }
}

TEST_F(InboxRule, aBadOneDoesNotBlockThoseBehindIt) {
  const ClinicKey stranger = makeClinicKey(m_random);
  const auto news =
      take({programme(9, stranger, m_person), programme(1), hold(order(1), stranger), hold(order(2))});
  EXPECT_TRUE(news.programme);
  EXPECT_EQ(news.hold_orders.size(), 1U);
  EXPECT_EQ(numbers(), std::vector<std::uint32_t>{1});
}

TEST_F(InboxRule, aHoldStandsUntilALaterOrderLiftsIt) {
  take({hold(order(1))});
  EXPECT_EQ(active(), 1U);
  take({programme(1)});
  EXPECT_EQ(active(), 1U) << "no programme ends a hold";
  take({hold(order(2, order(1).id()))});
  EXPECT_EQ(active(), 0U);
  take({hold(order(3))});
  EXPECT_EQ(active(), 1U);
}

TEST_F(InboxRule, everyOrderOfArrivalEndsAtTheSameHolds) {
  std::vector<v1::HoldOrder> orders = {order(1), order(2), order(3, order(1).id()), order(4)};
  std::vector<int> places = {0, 1, 2, 3};
  do {
    const auto folder = "order" + std::to_string(places[0]) + std::to_string(places[1]) +
                        std::to_string(places[2]) + std::to_string(places[3]);
    m_store = *DeviceStore::open(m_folder.path(folder), "", std::string(kStoreKeyBytes, 'k'), m_random);
    for (const int place : places) take({hold(orders[static_cast<std::size_t>(place)])});
    std::vector<std::uint64_t> standing;
    for (const auto& kept : activeAmong(look(keptHoldOrders))) standing.push_back(kept.number());
    EXPECT_EQ(standing, (std::vector<std::uint64_t>{2, 4}));
  } while (std::next_permutation(places.begin(), places.end()));
}

TEST_F(InboxRule, whatIsNotTheClinicsLiftsNothing) {
  const ClinicKey stranger = makeClinicKey(m_random);
  take({hold(order(5))});
  take({hold(order(6, order(5).id()), stranger)});
  auto foreign = order(7, order(5).id());
  foreign.set_person_id(test::idOf(2));
  take({hold(foreign)});
  take({hold(order(4, order(5).id()))});
  EXPECT_EQ(active(), 1U) << "by a stranger, for another person, and by an order from before it";
}

// A hub that went back to a backup gives a number again that this phone has: the hold counts all the same.
TEST_F(InboxRule, aNumberGivenTwiceKeepsNoHoldFromCounting) {
  take({hold(order(1))});
  auto other = order(1);
  other.set_id(test::idOf(700));
  EXPECT_EQ(take({hold(other)}).hold_orders.size(), 1U);
  EXPECT_EQ(active(), 2U);
  take({hold(order(2, other.id()))});
  EXPECT_EQ(active(), 1U) << "a lift ends the one that it names";
}

TEST_F(InboxRule, oneIdIsOneOrder) {
  take({hold(order(1))});
  auto other = order(1);
  other.set_reason("Another reason.");
  nextMoment();
  EXPECT_TRUE(take({hold(other)}).hold_orders.empty());
  EXPECT_EQ(lastRefusal().rfind("id", 0), 0U);
}

TEST_F(InboxRule, messagesForAnotherPersonAreNotShown) {
  v1::Message message;
  message.set_id(test::idOf(800));
  message.set_person_id(test::idOf(2));
  message.set_sender(v1::SENDER_CLINIC);
  message.mutable_written_at()->set_seconds(1);
  message.set_text("Not for you.");
  EXPECT_TRUE(
      take({makeEnvelope(v1::RECORD_KIND_MESSAGE, message.id(), 1, toBytes(message))}).messages.empty());
  EXPECT_TRUE(look(keptMessages).empty());
  EXPECT_EQ(lastRefusal().rfind("person_id", 0), 0U);
}

TEST_F(InboxRule, anOlderPersonRecordDoesNotReplaceANewerOne) {
  v1::Person newer = m_person;
  newer.set_revision(3);
  newer.set_height_cm(150);
  v1::Person older = m_person;
  older.set_revision(2);
  EXPECT_TRUE(take({makeEnvelope(v1::RECORD_KIND_PERSON, newer.id(), 3, toBytes(newer))}).person);
  m_settings.person = toBytes(newer);
  EXPECT_FALSE(take({makeEnvelope(v1::RECORD_KIND_PERSON, older.id(), 2, toBytes(older))}).person);
}

}  // namespace
}  // namespace newel
