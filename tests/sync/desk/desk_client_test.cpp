#include "sync/desk/desk_client.h"

#include <gtest/gtest.h>

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <set>
#include <vector>

#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

// Collects what watch() says.
class Words {
 public:
  void add(const std::string& word) {
    const std::lock_guard lock(m_mutex);
    m_words.push_back(word);
    m_changed.notify_all();
  }
  // True when `word` comes (again) after the first `skip` words, within five seconds.
  bool hears(const std::string& word, std::size_t skip = 0) {
    std::unique_lock lock(m_mutex);
    return m_changed.wait_for(lock, std::chrono::seconds(5), [&] {
      for (std::size_t i = skip; i < m_words.size(); ++i) {
        if (m_words[i] == word) return true;
      }
      return false;
    });
  }
  std::size_t count() {
    const std::lock_guard lock(m_mutex);
    return m_words.size();
  }

 private:
  std::mutex m_mutex;
  std::condition_variable m_changed;
  std::vector<std::string> m_words;
};

TEST(DeskClient, needsThePinAndTheRightHub) {
  test::TestClinic clinic;
  DeskClient::Options options;
  options.address = clinic.address();
  EXPECT_TRUE(absl::IsInvalidArgument(DeskClient::connect(options).status()));
  options.certificate_sha256 = std::string(32, 'x');
  EXPECT_TRUE(absl::IsUnauthenticated(DeskClient::connect(options).status()));
  options.address = "127.0.0.1:1";
  EXPECT_TRUE(absl::IsUnavailable(DeskClient::connect(options).status()));
}

TEST(DeskClient, everyCallButSignInNeedsASession) {
  test::TestClinic clinic;
  const auto desk = clinic.newDesk();
  EXPECT_TRUE(absl::IsUnauthenticated(desk->signIn(test::kUser, "wrong password").status()));
  const std::vector<absl::Status> answers = {desk->signOut(),
                                             desk->caseload().status(),
                                             desk->person("x").status(),
                                             desk->putPerson({}).status(),
                                             desk->signProgramme({}).status(),
                                             desk->programmes("x").status(),
                                             desk->issueHold({}).status(),
                                             desk->holds("x").status(),
                                             desk->sendMessage({}).status(),
                                             desk->messages("x", false).status(),
                                             desk->practices("x").status(),
                                             desk->receipts("x").status(),
                                             desk->createPairing("x").status(),
                                             desk->devices("x").status(),
                                             desk->revokeDevice("x")};
  for (const auto& answer : answers) EXPECT_TRUE(absl::IsUnauthenticated(answer)) << answer;
  ASSERT_TRUE(desk->signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(desk->caseload().ok());
  EXPECT_EQ(desk->signOut(), absl::OkStatus());
  EXPECT_TRUE(absl::IsUnauthenticated(desk->caseload().status()));
}

TEST(DeskClient, unknownPersonsAreNotFoundEverywhere) {
  test::TestClinic clinic;
  DeskClient& desk = clinic.desk();
  const std::string nobody = test::idOf(99);
  for (const auto& answer :
       {desk.person(nobody).status(), desk.programmes(nobody).status(), desk.holds(nobody).status(),
        desk.messages(nobody, true).status(), desk.practices(nobody).status(), desk.receipts(nobody).status(),
        desk.createPairing(nobody).status(), desk.devices(nobody).status(), desk.revokeDevice(nobody)}) {
    EXPECT_TRUE(absl::IsNotFound(answer)) << answer;
  }
}

TEST(DeskClient, watchSaysWhoseRecordChanged) {
  test::TestClinic clinic;
  const std::string person = clinic.addPerson(test::transfemoralLeft());
  Words words;
  clinic.desk().watch([&](const std::string& id) { words.add(id); });
  ASSERT_TRUE(words.hears("")) << "at first everything may have changed";
  std::size_t before = words.count();
  const auto phone = clinic.pairedPhone("phone", person);
  EXPECT_TRUE(words.hears(person, before)) << "paired";
  before = words.count();
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), person)).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(words.hears(person, before)) << "practised";
  before = words.count();
  clinic.sign(test::transfemoralLeft());
  EXPECT_TRUE(words.hears(person, before)) << "signed, at another desk perhaps";
  clinic.desk().stopWatching();
  before = words.count();
  clinic.sign(test::transfemoralLeft(), 1);
  EXPECT_EQ(words.count(), before);
}

TEST(DeskClient, watchComesBackAfterTheHubWasAway) {
  test::TestClinic clinic;
  Words words;
  clinic.desk().watch([&](const std::string& id) { words.add(id); });
  ASSERT_TRUE(words.hears(""));
  const int port = std::stoi(clinic.address().substr(clinic.address().rfind(':') + 1));
  clinic.stopHub();
  const std::size_t before = words.count();
  clinic.startHub(port);
  EXPECT_TRUE(words.hears("", before)) << "and everything may have changed meanwhile";
}

TEST(DeskClient, practicesOfManyPagesAreOneList) {
  test::TestClinic clinic;
  const std::string person = clinic.addPerson(test::transfemoralLeft());
  const auto phone = clinic.pairedPhone("phone", person);
  std::set<std::string> ids;
  for (int i = 0; i < 620; ++i) {
    clinic.clock().advance(absl::Milliseconds(2));
    const std::string id = phone->newId();
    ids.insert(id);
    ASSERT_TRUE(phone->closePractice(test::samplePractice(id, person)).ok());
  }
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  const auto practices = clinic.desk().practices(person);
  ASSERT_TRUE(practices.ok()) << practices.status();
  std::set<std::string> got;
  for (const auto& practice : *practices) got.insert(practice.id());
  EXPECT_EQ(got, ids);
  EXPECT_EQ(practices->size(), ids.size());
}

}  // namespace
}  // namespace newel
