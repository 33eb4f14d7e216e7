// A phone with no room left: it says so, loses nothing, and still stops when it is told to.
#include "tests/sync/home/full_disk.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <filesystem>
#include <thread>

#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class HoldEars : public HomeEngine::Listener {
 public:
  void stateChanged() override {}
  void programmeChanged() override {}
  void holdOrderArrived(const v1::HoldOrder&) override { ++holds; }
  void messageArrived(const v1::Message&) override {}
  std::atomic<int> holds{0};
};

class FullDisk : public testing::Test {
 protected:
  FullDisk() {
    auto options = m_clinic.phoneOptions("phone");
    options.sqlite_vfs = test::fullDiskVfs();
    std::filesystem::create_directories(options.folder);
    m_phone = *HomeEngine::open(options);
    EXPECT_EQ(m_phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  }
  ~FullDisk() override { test::setDiskFull(false); }
  template <typename Test>
  static bool soon(Test test) {
    for (int i = 0; i < 500 && !test(); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(10));
    return test();
  }
  // Writes until the log has to grow.
  absl::Status journalUntilFull(const std::string& id) {
    absl::Status status;
    for (std::uint32_t sequence = 1; status.ok() && sequence < 500; ++sequence) {
      status = m_phone->appendJournal({test::sampleLine(id, m_person, sequence)});
      if (status.ok()) m_kept = sequence;
    }
    return status;
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  std::unique_ptr<HomeEngine> m_phone;
  std::uint32_t m_kept = 0;
};

TEST_F(FullDisk, isSaidAndWhatWasKeptStaysKept) {
  const std::string id = m_phone->newId();
  ASSERT_TRUE(m_phone->appendJournal({test::sampleLine(id, m_person, 1)}).ok());
  test::setDiskFull(true);
  const std::string second = m_phone->newId();
  const absl::Status full = journalUntilFull(second);
  EXPECT_TRUE(absl::IsResourceExhausted(full)) << full;
  EXPECT_EQ(m_phone->state().last_problem, "sync.disk-full");
  EXPECT_TRUE(absl::IsResourceExhausted(m_phone->closePractice(test::samplePractice(id, m_person))));
  EXPECT_TRUE(m_phone->unfinished().has_value());
  EXPECT_TRUE(m_phone->practices().empty());
  test::setDiskFull(false);
  EXPECT_EQ(m_phone->appendJournal({test::sampleLine(second, m_person, m_kept + 1)}), absl::OkStatus())
      << "the very next line fits, as if nothing had been";
  EXPECT_EQ(m_phone->state().last_problem, "");
  EXPECT_EQ(m_phone->closePractice(test::samplePractice(id, m_person)), absl::OkStatus());
  EXPECT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), 1U);
}

TEST_F(FullDisk, doesNotKeepAHoldOrderFromStoppingSomebody) {
  HoldEars ears;
  m_phone->setListener(&ears);
  m_phone->start();
  ASSERT_TRUE(soon([&] { return m_clinic.hub().board().openStreams() == 1; }));
  ASSERT_TRUE(soon([&] { return !m_phone->state().contact_now; }));
  test::setDiskFull(true);
  journalUntilFull(m_phone->newId()).IgnoreError();
  v1::IssueHoldRequest request;
  request.set_person_id(m_person);
  request.set_reason("Please stop and call us.");
  ASSERT_TRUE(m_clinic.desk().issueHold(request).ok());
  EXPECT_TRUE(soon([&] { return ears.holds > 0; }));
  EXPECT_EQ(m_phone->activeHolds().size(), 1U);
  EXPECT_FALSE(m_clinic.desk().caseload()->at(0).hold_arrived()) << "it is not kept, so it is not said to be";
  test::setDiskFull(false);
  EXPECT_TRUE(soon([&] {
    m_phone->syncSoon();
    return m_clinic.desk().caseload()->at(0).hold_arrived();
  }));
  EXPECT_EQ(m_phone->activeHolds().size(), 1U);
  m_phone.reset();
}

}  // namespace
}  // namespace newel
