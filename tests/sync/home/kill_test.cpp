// The phone's program is ended with SIGKILL at moments it does not choose; what it said was kept must be
// kept.
#include <SQLiteCpp/SQLiteCpp.h>
#include <fcntl.h>
#include <gtest/gtest.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <map>
#include <set>
#include <sstream>
#include <thread>

#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"
#include "tests/sync/common/test_clinic.h"

extern char** environ;

namespace newel {
namespace {

// Runs the phone until it has printed `lines` lines, waits `wait` more, ends it, and returns all it printed.
std::string runAndKill(const std::string& folder, const std::string& mode, int lines,
                       std::chrono::microseconds wait) {
  int ends[2] = {};
  EXPECT_EQ(pipe(ends), 0);
  const std::string program = std::string(NEWEL_BINARY_DIR) + "/tests/newel_test_phone";
  std::string folder_copy = folder;
  std::string mode_copy = mode;
  std::string program_copy = program;
  char* arguments[] = {program_copy.data(), folder_copy.data(), mode_copy.data(), nullptr};
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
  posix_spawn_file_actions_addclose(&actions, ends[0]);
  pid_t child = 0;
  EXPECT_EQ(posix_spawn(&child, program.c_str(), &actions, nullptr, arguments, environ), 0);
  posix_spawn_file_actions_destroy(&actions);
  close(ends[1]);
  std::string said;
  const auto take = [&] {
    char buffer[4096];
    const ssize_t size = read(ends[0], buffer, sizeof(buffer));
    if (size > 0) said.append(buffer, static_cast<std::size_t>(size));
    return size > 0;
  };
  while (std::count(said.begin(), said.end(), '\n') < lines && take()) {
  }
  std::this_thread::sleep_for(wait);
  kill(child, SIGKILL);
  int status = 0;
  waitpid(child, &status, 0);
  EXPECT_TRUE(WIFSIGNALED(status)) << "the phone ended by itself: " << said;
  while (take()) {
  }
  close(ends[0]);
  return said;
}

struct Said {
  std::set<std::string> closed;
  std::map<std::string, std::uint32_t> lines;  // last line of each practice
};

void addTo(Said& said, const std::string& output) {
  std::istringstream stream(output);
  for (std::string line; std::getline(stream, line) && !stream.eof();) {
    std::istringstream words(line);
    std::string what;
    std::string id;
    std::uint32_t sequence = 0;
    words >> what >> id >> sequence;
    if (what == "closed") said.closed.insert(id);
    if (what == "line") said.lines[id] = std::max(said.lines[id], sequence);
    EXPECT_TRUE(what == "closed" || what == "line" || what == "ready") << line;
  }
}

class Killed : public testing::Test {
 protected:
  Killed() {
    // The clinic's clock is the phone's, so that ids sort.
    m_clinic.pairedPhone("phone", m_person);
  }
  // Everything the phone said is there, whole, once; and at most one practice more, whose word was cut off.
  void expectKept(HomeEngine& phone) {
    std::multiset<std::string> kept;
    for (const auto& practice : phone.practices()) kept.insert(practice.id());
    for (const auto& id : m_said.closed) EXPECT_EQ(kept.count(id), 1U) << "lost: " << id;
    for (const auto& id : kept) EXPECT_EQ(kept.count(id), 1U) << "doubled: " << id;
    for (const auto& [id, last] : m_said.lines) {
      if (kept.contains(id)) continue;
      // Begun and not closed: its lines have no gap, and none that was said to be kept is missing.
      EXPECT_GE(journal(id), last);
    }
  }
  // How many lines of this practice the store has; each in its place.
  std::uint32_t journal(const std::string& id) {
    SQLite::Database raw(m_clinic.folder().path("phone/home.db"), SQLite::OPEN_READONLY);
    SQLite::Statement rows(raw,
                           "SELECT COUNT(*), COALESCE(MAX(sequence), 0) FROM journal WHERE practice_id = ?");
    rows.bind(1, id);
    rows.executeStep();
    EXPECT_EQ(rows.getColumn(0).getInt(), rows.getColumn(1).getInt()) << "a gap in " << id;
    return rows.getColumn(0).getUInt();
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  test::SampleRandom m_random{20261125};
  Said m_said;
};

TEST_F(Killed, anywhereInJournalAndCloseNothingIsLostOrDoubled) {
  for (int round = 0; round < 12; ++round) {
    const int lines = static_cast<int>(m_random.between(2, 40));
    addTo(m_said, runAndKill(m_clinic.folder().path("phone"), "alone", lines,
                             std::chrono::microseconds(m_random.between(0, 4000))));
    const auto phone = m_clinic.newPhone("phone");
    expectKept(*phone);
  }
  EXPECT_GT(m_said.closed.size(), 12U);
}

TEST_F(Killed, inTheMiddleOfAnOfferTheHubHasEachPracticeOnce) {
  for (int round = 0; round < 8; ++round) {
    const int lines = static_cast<int>(m_random.between(2, 40));
    addTo(m_said, runAndKill(m_clinic.folder().path("phone"), "hub", lines,
                             std::chrono::microseconds(m_random.between(0, 8000))));
  }
  const auto phone = m_clinic.newPhone("phone");
  expectKept(*phone);
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->state().queued, 0U);
  EXPECT_EQ(phone->state().set_aside, 0U);
  std::multiset<std::string> at_hub;
  const auto practices = m_clinic.desk().practices(m_person);
  ASSERT_TRUE(practices.ok()) << practices.status();
  for (const auto& practice : *practices) at_hub.insert(practice.id());
  std::multiset<std::string> here;
  for (const auto& practice : phone->practices()) here.insert(practice.id());
  EXPECT_EQ(at_hub, here);
  EXPECT_GT(at_hub.size(), 8U);
}

}  // namespace
}  // namespace newel
