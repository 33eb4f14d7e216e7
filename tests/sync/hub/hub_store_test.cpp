// Every promise of hub_store.h, kept by whichever store this program is linked with.
#include "sync/hub/hub_store.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <set>
#include <stdexcept>
#include <thread>

#include "core/time/local_day.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_store.h"

namespace newel {
namespace {

using test::idOf;

const std::string kBytes("\0\x01\xff\xfe'\"?$1\n", 10);  // what text cannot carry
const std::string kHash(32, '\xee');
const absl::Time kNow = absl::FromUnixMicros(1795600000123456);

v1::Envelope envelope(v1::RecordKind kind, const std::string& id, std::uint64_t sequence,
                      std::uint32_t revision = 1) {
  v1::Envelope made;
  made.set_kind(kind);
  made.set_id(id);
  made.set_revision(revision);
  made.set_content(kBytes + std::to_string(sequence));
  made.set_sha256(kHash);
  made.set_sequence(sequence);
  *made.mutable_received_at() = toTimestamp(kNow);
  return made;
}

class HubStorePromise : public testing::Test {
 protected:
  void SetUp() override {
    m_store = another();
    write([](HubTransaction& t) {
      t.putPerson(idOf(1), {1, kBytes});
      t.putPerson(idOf(2), {1, kBytes});
    });
  }
  // The same tables through connections of their own, as another process has them.
  std::unique_ptr<HubStore> another() {
    auto store = m_place->open();
    if (!store.ok()) throw std::runtime_error(std::string(store.status().message()));
    return *std::move(store);
  }
  template <typename Body>
  void write(Body body) {
    EXPECT_EQ(m_store->write([&](HubTransaction& t) {
      body(t);
      return absl::OkStatus();
    }),
              absl::OkStatus());
  }
  template <typename Body>
  void read(Body body) {
    EXPECT_EQ(m_store->read([&](HubTransaction& t) {
      body(t);
      return absl::OkStatus();
    }),
              absl::OkStatus());
  }
  std::string setting(const std::string& name) {
    std::string value;
    read([&](HubTransaction& t) { value = t.setting(name); });
    return value;
  }

  test::TempFolder m_folder;
  std::unique_ptr<test::TestStore> m_place = test::testStoreMaker()(m_folder.path());
  std::unique_ptr<HubStore> m_store;
};

TEST_F(HubStorePromise, bytesComeBackAsTheyWentIn) {
  write([](HubTransaction& t) {
    t.putSetting("one", "before");
    t.putSetting("one", kBytes);
    t.putPerson(idOf(1), {7, kBytes + "7"});
    t.putIdentity(idOf(1), {1, "first"});
    t.putIdentity(idOf(1), {2, kBytes});
  });
  read([](HubTransaction& t) {
    EXPECT_EQ(t.setting("one"), kBytes);
    EXPECT_EQ(t.setting("two"), "");
    ASSERT_TRUE(t.person(idOf(1)).has_value());
    EXPECT_EQ(t.person(idOf(1))->revision, 7U);
    EXPECT_EQ(t.person(idOf(1))->content, kBytes + "7");
    EXPECT_EQ(t.identity(idOf(1))->content, kBytes);
    EXPECT_FALSE(t.identity(idOf(2)).has_value());
    EXPECT_FALSE(t.person(idOf(3)).has_value());
  });
}

// In some languages' order "a" stands before "B"; by bytes it does not, and pages depend on it.
TEST_F(HubStorePromise, idsComeInTheOrderOfTheirBytes) {
  write([](HubTransaction& t) {
    for (const char* id : {"b", "B", "a", "A-", "Aa", "\xc3\xa4"}) t.putPerson(id, {1, ""});
  });
  read([](HubTransaction& t) {
    auto all = t.personIdsAfter("", 100);
    EXPECT_EQ(all.size(), 8U);
    EXPECT_TRUE(std::is_sorted(all.begin(), all.end()));
    EXPECT_EQ(t.personIdsAfter("B", 2), (std::vector<std::string>{"a", "b"}));
  });
}

TEST_F(HubStorePromise, theFeedGivesAPersonTheirsAndEverybodysInOrder) {
  write([](HubTransaction& t) {
    t.addToFeed(idOf(1), envelope(v1::RECORD_KIND_PERSON, idOf(1), t.takeSequence()), true);
    t.addToFeed(idOf(2), envelope(v1::RECORD_KIND_PERSON, idOf(2), t.takeSequence()), true);
    t.addToFeed("", envelope(v1::RECORD_KIND_CLINIC_CARD, idOf(9), t.takeSequence()), true);
    t.addToFeed(idOf(1), envelope(v1::RECORD_KIND_PERSON, idOf(1), t.takeSequence(), 2), true);
    t.addToFeed(idOf(1), envelope(v1::RECORD_KIND_MESSAGE, idOf(5), t.takeSequence()), false);
  });
  read([](HubTransaction& t) {
    const auto feed = t.feedAfter(idOf(1), 0, 100);
    ASSERT_EQ(feed.size(), 3U) << "the person's first revision went";
    EXPECT_EQ(feed[0].sequence(), 3U);
    EXPECT_EQ(feed[1].revision(), 2U);
    EXPECT_EQ(feed[2].content(), kBytes + "5");
    EXPECT_EQ(feed[2].sha256(), kHash);
    EXPECT_EQ(toTime(feed[2].received_at()), kNow);
    EXPECT_EQ(t.feedAfter(idOf(1), 3, 1).at(0).sequence(), 4U);
    EXPECT_TRUE(t.feedAfter(idOf(1), 5, 100).empty());
  });
}

TEST_F(HubStorePromise, whatIsSignedIsKeptByNumberAndForGood) {
  SignedRow first{idOf(1), 1, idOf(11), kBytes, kHash, "key", "", "2026-12-31"};
  SignedRow second{idOf(1), 3, idOf(12), kBytes, kHash, "key", "", "2027-01-31"};
  SignedRow hold{idOf(1), 1, idOf(21), kBytes, kHash, "key", "", ""};
  SignedRow lift{idOf(1), 2, idOf(22), kBytes, kHash, "key", idOf(21), ""};
  write([&](HubTransaction& t) {
    t.addProgramme(second, t.takeSequence());
    t.addProgramme(first, t.takeSequence());
    t.addHoldOrder(hold, t.takeSequence());
    t.addOwnExercise("own-a", {1, kBytes});
    t.addOwnExercise("own-a", {2, "two"});
  });
  read([&](HubTransaction& t) {
    ASSERT_EQ(t.programmes(idOf(1)).size(), 2U);
    EXPECT_EQ(t.programmes(idOf(1))[0].number, 1U);
    EXPECT_EQ(t.latestProgramme(idOf(1))->end_day, "2027-01-31");
    EXPECT_EQ(t.programmeById(idOf(11))->content, kBytes);
    EXPECT_EQ(t.programmeById(idOf(11))->signature, kHash);
    EXPECT_FALSE(t.latestProgramme(idOf(2)).has_value());
    EXPECT_EQ(t.holdOrderById(idOf(21))->person_id, idOf(1));
    EXPECT_TRUE(t.caseFacts(idOf(1)).hold_active);
    EXPECT_FALSE(t.caseFacts(idOf(1)).hold_arrived);
    EXPECT_EQ(t.caseFacts(idOf(1)).programme_number, 3U);
    EXPECT_EQ(t.ownExercises().size(), 2U);
    EXPECT_EQ(t.ownExercise("own-a", 1)->content, kBytes);
    EXPECT_EQ(t.latestOwnRevision("own-a"), 2U);
    EXPECT_EQ(t.latestOwnRevision("own-b"), 0U);
  });
  ReceiptRow receipt{idOf(31), idOf(1), v1::RECEIPT_OF_HOLD_ORDER, idOf(21), 8, 1, kBytes, kHash};
  write([&](HubTransaction& t) { t.addReceipt(receipt, t.takeSequence(), kNow); });
  read([&](HubTransaction& t) {
    EXPECT_TRUE(t.caseFacts(idOf(1)).hold_arrived);
    EXPECT_EQ(t.highestReceiptNumber(idOf(1), v1::RECEIPT_OF_HOLD_ORDER), 8U);
    EXPECT_EQ(t.highestReceiptNumber(idOf(1), v1::RECEIPT_OF_PROGRAMME), 0U);
    EXPECT_EQ(t.receipt(idOf(31))->sha256, kHash);
    EXPECT_EQ(t.receipts(idOf(1)).size(), 1U);
  });
  write([&](HubTransaction& t) { t.addHoldOrder(lift, t.takeSequence()); });
  read([&](HubTransaction& t) {
    EXPECT_FALSE(t.caseFacts(idOf(1)).hold_active);
    EXPECT_EQ(t.holdOrders(idOf(1)).back().lifts_id, idOf(21));
  });
}

TEST_F(HubStorePromise, practicesKeepEachRevisionAndShowTheLast) {
  const auto practice = [](std::uint64_t sequence, std::uint32_t revision, bool red) {
    return PracticeRow{idOf(1), idOf(90), envelope(v1::RECORD_KIND_PRACTICE, idOf(50), sequence, revision),
                       red};
  };
  write([&](HubTransaction& t) {
    const std::uint64_t first = t.takeSequence();
    t.addPractices({practice(first, 1, false), practice(t.takeSequence(), 3, true)});
    t.addPractices({});
  });
  read([&](HubTransaction& t) {
    const auto kept = t.practicesKept({{idOf(50), 2}, {idOf(51), 1}, {idOf(50), 1}, {idOf(50), 3}});
    ASSERT_EQ(kept.size(), 4U);
    for (const std::size_t i : {0U, 2U, 3U}) {
      EXPECT_EQ(kept[i].revision, 3U);
      EXPECT_EQ(kept[i].person_id, idOf(1));
      EXPECT_EQ(kept[i].sha256, i == 0 ? "" : kHash);
    }
    EXPECT_EQ(kept[1].person_id, "");
    EXPECT_TRUE(t.practicesKept({}).empty());
    ASSERT_EQ(t.practicesAfter(idOf(1), 0, 10).size(), 1U);
    EXPECT_EQ(t.practicesAfter(idOf(1), 0, 10)[0].revision(), 3U);
    EXPECT_TRUE(t.practicesAfter(idOf(1), 2, 10).empty());
    EXPECT_TRUE(t.caseFacts(idOf(1)).red_flag_open);
    EXPECT_EQ(t.caseFacts(idOf(1)).last_practice, kNow);
  });
  MessageRow answer{idOf(60), idOf(1), false, kBytes, kHash};
  MessageRow word{idOf(61), idOf(1), true, kBytes, kHash};
  write([&](HubTransaction& t) {
    t.addMessage(word, t.takeSequence(), kNow);
    t.addMessage(answer, t.takeSequence(), kNow);
  });
  read([&](HubTransaction& t) {
    EXPECT_FALSE(t.caseFacts(idOf(1)).red_flag_open) << "the clinic has spoken";
    EXPECT_EQ(t.caseFacts(idOf(1)).unread_messages, 1U);
    EXPECT_EQ(t.messages(idOf(1)).at(0).id, idOf(61));
    EXPECT_TRUE(t.message(idOf(61))->from_person);
  });
  write([&](HubTransaction& t) {
    EXPECT_EQ(t.markMessagesRead(idOf(1), kNow), 1);
    EXPECT_EQ(t.markMessagesRead(idOf(1), kNow), 0);
  });
}

TEST_F(HubStorePromise, recordsOfAnyKindKeepEachRevisionAndShowTheLast) {
  constexpr auto kBlock = v1::RECORD_KIND_WEAR_BLOCK;
  write([&](HubTransaction& t) {
    t.addRecord(idOf(1), envelope(kBlock, idOf(50), t.takeSequence(), 1));
    t.addRecord(idOf(1), envelope(kBlock, idOf(50), t.takeSequence(), 3));
    t.addRecord(idOf(1), envelope(v1::RECORD_KIND_MEASURE, idOf(50), t.takeSequence(), 1));
    t.addRecord(idOf(2), envelope(kBlock, idOf(51), t.takeSequence(), 1));
  });
  read([&](HubTransaction& t) {
    EXPECT_EQ(t.recordKept(kBlock, {idOf(50), 1}).sha256, kHash);
    EXPECT_EQ(t.recordKept(kBlock, {idOf(50), 2}).sha256, "");
    EXPECT_EQ(t.recordKept(kBlock, {idOf(50), 2}).revision, 3U);
    EXPECT_EQ(t.recordKept(kBlock, {idOf(51), 1}).person_id, idOf(2));
    EXPECT_EQ(t.recordKept(kBlock, {idOf(52), 1}).person_id, "");
    const auto blocks = t.recordsAfter(idOf(1), kBlock, 0, 10);
    ASSERT_EQ(blocks.size(), 1U) << "no other kind, and nobody else's";
    EXPECT_EQ(blocks[0].revision(), 3U);
    EXPECT_EQ(blocks[0].kind(), kBlock);
    EXPECT_EQ(blocks[0].content(), kBytes + "2");
    EXPECT_TRUE(t.recordsAfter(idOf(1), kBlock, blocks[0].sequence(), 10).empty());
  });
  write([&](HubTransaction& t) { EXPECT_TRUE(t.erasePerson(idOf(1), kNow)); });
  read([&](HubTransaction& t) {
    EXPECT_TRUE(t.recordsAfter(idOf(1), kBlock, 0, 10).empty());
    EXPECT_EQ(t.recordsAfter(idOf(2), kBlock, 0, 10).size(), 1U);
  });
}

TEST_F(HubStorePromise, devicesInvitationsAndAccountsKeepTheirRules) {
  DeviceRow device{idOf(90), idOf(1), "Ann's phone", "1.0", kHash, kNow, std::nullopt, false};
  InvitationRow invitation{idOf(70), idOf(1), "$hash", kHash, kNow + absl::Minutes(10), 2};
  write([&](HubTransaction& t) {
    t.addDevice(device);
    t.addInvitation(invitation);
    t.addAccount({idOf(80), "t.sample", "Terry", v1::ROLE_LEAD, "$password"});
    t.addSession(kHash, {idOf(80), kNow + absl::Hours(1), kNow, true});
  });
  read([&](HubTransaction& t) {
    EXPECT_EQ(t.deviceByToken(kHash)->name, "Ann's phone");
    EXPECT_EQ(t.device(idOf(90))->last_contact, kNow) << "pairing is a contact";
    EXPECT_EQ(t.invitationByQr(kHash, kNow)->tries_left, 2);
    EXPECT_FALSE(t.invitationByQr(kHash, kNow + absl::Minutes(10)).has_value());
    EXPECT_EQ(t.accountByName("t.sample")->role, v1::ROLE_LEAD);
    EXPECT_EQ(t.account(idOf(80))->password_hash, "$password");
    EXPECT_FALSE(t.account(idOf(80))->disabled);
    EXPECT_EQ(t.account(idOf(80))->first_until, std::nullopt);
    EXPECT_EQ(t.session(kHash)->ends_at, kNow + absl::Hours(1));
    EXPECT_EQ(t.session(kHash)->last_used, kNow);
    EXPECT_TRUE(t.session(kHash)->limited);
  });
  write([&](HubTransaction& t) {
    t.noteSessionUse(kHash, kNow + absl::Minutes(2));
    t.setSessionLimited(kHash, false);
    AccountRow row{idOf(80), "not.changed", "Terry S.",           v1::ROLE_AUDITOR,
                   "$other", true,          kNow + absl::Hours(3)};
    t.putAccount(row);
  });
  read([&](HubTransaction& t) {
    EXPECT_EQ(t.session(kHash)->last_used, kNow + absl::Minutes(2));
    EXPECT_FALSE(t.session(kHash)->limited);
    const auto row = t.accountByName("t.sample");
    ASSERT_TRUE(row.has_value()) << "a user name stays";
    EXPECT_EQ(row->display_name, "Terry S.");
    EXPECT_EQ(row->role, v1::ROLE_AUDITOR);
    EXPECT_EQ(row->password_hash, "$other");
    EXPECT_TRUE(row->disabled);
    EXPECT_EQ(row->first_until, kNow + absl::Hours(3));
    EXPECT_TRUE(t.accounts().at(0).disabled);
  });
  write([&](HubTransaction& t) {
    t.noteContact(idOf(90), kNow + absl::Hours(1), {});
    EXPECT_EQ(t.device(idOf(90))->app_version, "1.0") << "an empty version keeps the known one";
    t.noteContact(idOf(90), kNow + absl::Hours(2), {"2.0", 160});
    EXPECT_EQ(t.takeTries(kNow).at(0).tries_left, 2) << "as it was before";
    EXPECT_EQ(t.takeTries(kNow).size(), 1U);
    EXPECT_TRUE(t.takeTries(kNow).empty());
    t.giveBackTries({invitation});
    EXPECT_EQ(t.takeTries(kNow).size(), 1U);
    EXPECT_TRUE(t.spendInvitation(idOf(70), kNow));
    EXPECT_FALSE(t.spendInvitation(idOf(70), kNow));
    t.revokeDevice(idOf(90));
    t.endSession(kHash);
  });
  read([&](HubTransaction& t) {
    EXPECT_EQ(t.devices(idOf(1)).at(0).app_version, "2.0");
    EXPECT_EQ(t.devices(idOf(1)).at(0).text_percent, 160U);
    EXPECT_TRUE(t.devices(idOf(1)).at(0).revoked);
    EXPECT_FALSE(t.caseFacts(idOf(1)).paired);
    EXPECT_EQ(t.caseFacts(idOf(1)).last_contact, kNow + absl::Hours(2));
    EXPECT_FALSE(t.session(kHash).has_value());
  });
  write([&](HubTransaction& t) {
    t.addSession("a" + kHash.substr(1), {idOf(80), kNow, kNow});
    t.dropSessions(kNow);
    EXPECT_FALSE(t.session("a" + kHash.substr(1)).has_value());
    t.addInvitation({idOf(71), idOf(1), "$hash", kHash, kNow, 2});
    t.addInvitation({idOf(72), idOf(1), "$hash", "b" + kHash.substr(1), kNow, 2});
    EXPECT_FALSE(t.spendInvitation(idOf(71), kNow - absl::Hours(1))) << "a later one replaced it";
    t.dropInvitations(kNow);
    EXPECT_FALSE(t.spendInvitation(idOf(72), kNow - absl::Hours(1)));
  });
}

TEST_F(HubStorePromise, theTrailGrowsInOrder) {
  write([](HubTransaction& t) {
    EXPECT_FALSE(t.lastAudit().has_value());
    for (std::uint64_t n = 1; n <= 12; ++n) t.addAudit({n, R"({"a":"x"})", kHash});
  });
  read([](HubTransaction& t) {
    EXPECT_EQ(t.lastAudit()->n, 12U);
    EXPECT_EQ(t.lastAudit()->hash, kHash);
    ASSERT_EQ(t.auditAfter(9, UINT32_MAX).size(), 3U);
    EXPECT_EQ(t.auditAfter(9, 1).at(0).n, 10U);
    EXPECT_EQ(t.auditAfter(0, 1).at(0).entry, R"({"a":"x"})");
    ASSERT_EQ(t.auditBefore(4, 100).size(), 3U);
    EXPECT_EQ(t.auditBefore(4, 100).at(0).n, 3U) << "the latest first";
    EXPECT_EQ(t.auditBefore(INT64_MAX, 1).at(0).n, 12U);
    EXPECT_TRUE(t.auditBefore(1, 5).empty());
  });
}

TEST_F(HubStorePromise, aBodyThatFailsOrThrowsChangesNothing) {
  const absl::Status failed = m_store->write([](HubTransaction& t) {
    t.putSetting("a", "1");
    return absl::AbortedError("base_number: old");
  });
  EXPECT_TRUE(absl::IsAborted(failed));
  EXPECT_THROW(m_store
                   ->write([](HubTransaction& t) -> absl::Status {
                     t.putSetting("a", "2");
                     throw std::runtime_error("a fault of the program");
                   })
                   .IgnoreError(),
               std::runtime_error);
  // The store's own refusal: nobody has this id.
  EXPECT_TRUE(absl::IsAlreadyExists(m_store->write([](HubTransaction& t) {
    t.putSetting("a", "3");
    t.putIdentity(idOf(99), {1, ""});
    return absl::OkStatus();
  })));
  EXPECT_EQ(setting("a"), "");
  write([](HubTransaction& t) { t.putSetting("a", "4"); });
  EXPECT_EQ(setting("a"), "4") << "and the store goes on";
}

TEST_F(HubStorePromise, whatIsWrittenIsThereAfterARestartAndForOthers) {
  const auto other = another();
  write([](HubTransaction& t) { t.putSetting("a", "kept"); });
  std::string seen;
  EXPECT_TRUE(other
                  ->read([&](HubTransaction& t) {
                    seen = t.setting("a");
                    return absl::OkStatus();
                  })
                  .ok());
  EXPECT_EQ(seen, "kept");
  m_store.reset();
  m_store = another();
  EXPECT_EQ(setting("a"), "kept");
}

TEST_F(HubStorePromise, aReaderHasOneView) {
  write([](HubTransaction& t) { t.putSetting("a", "before"); });
  const auto other = another();
  read([&](HubTransaction& t) {
    EXPECT_EQ(t.setting("a"), "before");
    EXPECT_EQ(other->write([](HubTransaction& w) {
      w.putSetting("a", "after");
      return absl::OkStatus();
    }),
              absl::OkStatus())
        << "a reader holds up no writer";
    EXPECT_EQ(t.setting("a"), "before");
  });
  EXPECT_EQ(setting("a"), "after");
}

// Two processes, two writers each; a reader that remembers how far it read must never find something new
// below that.
TEST_F(HubStorePromise, whoReadsUpToNHasMissedNothingBelowN) {
  constexpr int kWriters = 4;
  constexpr int kEach = 40;
  const auto other = another();
  std::atomic<int> writing{kWriters};
  std::atomic<int> failed{0};
  std::vector<std::thread> writers;
  for (int w = 0; w < kWriters; ++w) {
    writers.emplace_back([&, w] {
      HubStore& store = w % 2 == 0 ? *m_store : *other;
      for (int i = 0; i < kEach; ++i) {
        const absl::Status kept = store.write([&](HubTransaction& t) {
          t.addToFeed(idOf(1), envelope(v1::RECORD_KIND_MESSAGE, idOf(1), t.takeSequence()), false);
          return absl::OkStatus();
        });
        if (!kept.ok()) ++failed;
      }
      --writing;
    });
  }
  std::set<std::uint64_t> seen;
  std::uint64_t cursor = 0;
  const auto look = [&] {
    read([&](HubTransaction& t) {
      for (const auto& e : t.feedAfter(idOf(1), cursor, 1000)) {
        seen.insert(e.sequence());
        cursor = std::max<std::uint64_t>(cursor, e.sequence());
      }
    });
  };
  while (writing > 0) look();
  look();
  for (auto& writer : writers) writer.join();
  EXPECT_EQ(failed, 0);
  EXPECT_EQ(seen.size(), static_cast<std::size_t>(kWriters * kEach)) << "the cursor jumped over some";
  EXPECT_EQ(cursor, static_cast<std::uint64_t>(kWriters * kEach)) << "no number is given twice or lost";
}

TEST_F(HubStorePromise, aHoldOrderIsCommittedBeforeTheUploadsThatWaited) {
  constexpr std::size_t kUploads = 40;
  std::atomic<bool> at_work{false};
  std::atomic<bool> go{false};
  std::atomic<int> failed{0};
  std::vector<std::thread> threads;
  const auto upload = [&](bool blocks) {
    const absl::Status kept = m_store->write([&](HubTransaction& t) {
      at_work = true;
      while (blocks && !go) std::this_thread::sleep_for(std::chrono::milliseconds(1));
      t.addToFeed(idOf(1), envelope(v1::RECORD_KIND_MESSAGE, idOf(1), t.takeSequence()), false);
      return absl::OkStatus();
    });
    if (!kept.ok()) ++failed;
  };
  threads.emplace_back([&] { upload(true); });
  while (!at_work) std::this_thread::yield();
  for (std::size_t i = 0; i < kUploads; ++i) threads.emplace_back([&] { upload(false); });
  while (m_store->writersWaiting() < kUploads) std::this_thread::yield();
  threads.emplace_back([&] {
    const absl::Status kept = m_store->writeFirst([](HubTransaction& t) {
      t.addToFeed(idOf(1), envelope(v1::RECORD_KIND_HOLD_ORDER, idOf(2), t.takeSequence()), false);
      return absl::OkStatus();
    });
    if (!kept.ok()) ++failed;
  });
  while (m_store->writersWaiting() < kUploads + 1) std::this_thread::yield();
  go = true;
  for (auto& thread : threads) thread.join();
  EXPECT_EQ(failed, 0);
  read([](HubTransaction& t) {
    const auto feed = t.feedAfter(idOf(1), 0, 1000);
    ASSERT_EQ(feed.size(), kUploads + 2);
    for (std::size_t i = 0; i < feed.size(); ++i) {
      EXPECT_EQ(feed[i].sequence(), i + 1) << "no number is given twice or lost";
      EXPECT_EQ(feed[i].kind() == v1::RECORD_KIND_HOLD_ORDER, i == 1) << i;
    }
  });
}

// While the first is at work the others wait and are then joined: each keeps its own verdict.
TEST_F(HubStorePromise, writersThatWaitTogetherEachGetTheirOwnVerdict) {
  std::atomic<bool> go{false};
  std::thread first([&] {
    m_store
        ->write([&](HubTransaction& t) {
          t.putSetting("first", "1");
          while (!go) std::this_thread::sleep_for(std::chrono::milliseconds(1));
          return absl::OkStatus();
        })
        .IgnoreError();
  });
  constexpr int kWaiting = 12;
  std::vector<absl::Status> verdicts(kWaiting);
  std::atomic<int> thrown{0};
  std::vector<std::thread> waiting;
  for (int i = 0; i < kWaiting; ++i) {
    waiting.emplace_back([&, i] {
      try {
        verdicts[static_cast<std::size_t>(i)] = m_store->write([&](HubTransaction& t) -> absl::Status {
          t.putSetting("w" + std::to_string(i), "kept");
          if (i % 4 == 1) return absl::AbortedError("mine");
          if (i % 4 == 2) t.putIdentity(idOf(99), {1, ""});  // nobody has this id
          if (i % 4 == 3) throw std::runtime_error("a fault of the program");
          return absl::OkStatus();
        });
      } catch (const std::runtime_error&) {
        ++thrown;
      }
    });
  }
  std::this_thread::sleep_for(std::chrono::milliseconds(200));
  go = true;
  first.join();
  for (auto& thread : waiting) thread.join();
  EXPECT_EQ(setting("first"), "1");
  EXPECT_EQ(thrown, kWaiting / 4);
  for (int i = 0; i < kWaiting; ++i) {
    const auto& verdict = verdicts[static_cast<std::size_t>(i)];
    EXPECT_EQ(setting("w" + std::to_string(i)), i % 4 == 0 ? "kept" : "") << i;
    const absl::StatusCode expected = i % 4 == 0   ? absl::StatusCode::kOk
                                      : i % 4 == 1 ? absl::StatusCode::kAborted
                                                   : absl::StatusCode::kAlreadyExists;
    if (i % 4 != 3) {
      EXPECT_EQ(verdict.code(), expected) << verdict;
    }
  }
}

}  // namespace
}  // namespace newel
