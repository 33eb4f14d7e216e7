// The map of the house, kept by a test: who may include whom, and what must not be seen where.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

struct Include {
  std::string file;  // from the top, "core/time/clock.h"
  int line = 0;
  std::string target;  // as written
  bool system = false;
};

const fs::path kTop = NEWEL_SOURCE_DIR;

std::vector<fs::path> sourcesUnder(const std::string& folder) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::recursive_directory_iterator(kTop / folder)) {
    const std::string extension = entry.path().extension();
    if (entry.is_regular_file() && (extension == ".h" || extension == ".cpp" || extension == ".mm")) {
      files.push_back(entry.path());
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::vector<Include> includesUnder(const std::string& folder) {
  static const std::regex kInclude(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])");
  std::vector<Include> includes;
  for (const auto& path : sourcesUnder(folder)) {
    std::ifstream stream(path);
    std::string text;
    for (int line = 1; std::getline(stream, text); ++line) {
      std::smatch match;
      if (!std::regex_search(text, match, kInclude)) continue;
      includes.push_back({fs::relative(path, kTop).string(), line, match[2], match[1] == "<"});
    }
  }
  return includes;
}

// "core/time/clock.h" -> "core/time"; "platform/clock.h" -> "platform".
std::string folderOf(const std::string& path) {
  const std::size_t first = path.find('/');
  const std::size_t second = path.find('/', first + 1);
  return second == std::string::npos ? path.substr(0, first) : path.substr(0, second);
}

// For each folder, the folders it may include beside itself. What is not listed is forbidden.
const std::map<std::string, std::set<std::string>>& allowed() {
  static const std::map<std::string, std::set<std::string>> kAllowed = [] {
    std::map<std::string, std::set<std::string>> rule;
    rule["core/records"] = {};
    rule["core/time"] = {"core/records"};
    rule["core/library"] = {"core/records", "core/time"};
    const std::set<std::string> to_library = {"core/records", "core/time", "core/library"};
    rule["core/safety"] = rule["core/schedule"] = rule["core/figure"] = to_library;
    rule["core/practice"] = to_library;
    rule["core/practice"].insert("core/safety");
    std::set<std::string> to_practice = rule["core/practice"];
    to_practice.insert({"core/schedule", "core/practice"});
    rule["core/review"] = rule["core/progress"] = to_practice;
    std::set<std::string> core = to_practice;
    core.insert({"core/figure", "core/review", "core/progress"});
    rule["sync/protocol"] = {"core/records"};
    rule["sync/common"] = core;
    rule["sync/common"].insert("sync/protocol");
    const std::set<std::string> to_common = [&] {
      std::set<std::string> all = rule["sync/common"];
      all.insert("sync/common");
      return all;
    }();
    for (const char* folder : {"sync/home", "sync/hub", "sync/desk", "sync/export"}) rule[folder] = to_common;
    rule["sync/hub"].insert("sync/export");
    rule["sync/tool"] = to_common;
    rule["sync/tool"].insert("sync/export");
    rule["qml/paint"] = core;
    rule["qml/parts"] = rule["qml/print"] = core;
    rule["qml/parts"].insert("qml/paint");
    rule["qml/print"].insert("qml/paint");
    rule["qml/home"] = core;
    rule["qml/home"].insert({"qml/parts", "qml/print", "sync/home", "sync/common", "platform"});
    rule["qml/desk"] = core;
    rule["qml/desk"].insert(
        {"qml/paint", "qml/parts", "qml/print", "sync/desk", "sync/common", "sync/export", "sync/protocol"});
    rule["platform"] = {"core/time"};
    for (const char* folder : {"platform/linux", "platform/android", "platform/ios", "platform/fake"}) {
      rule[folder] = {"platform", "core/time"};
    }
    return rule;
  }();
  return kAllowed;
}

bool isOurs(const std::string& target) {
  static const std::set<std::string> kTops = {"core", "sync", "qml", "platform", "tests"};
  return kTops.contains(target.substr(0, target.find('/')));
}

// A program's main is where its parts are put together; it alone may also meet the platform.
bool isCompositionRoot(const std::string& file) { return fs::path(file).filename() == "main.cpp"; }

// The reason why one include breaks the rule, or nothing.
std::string breaks(const Include& include) {
  if (!isOurs(include.target)) return "";
  const std::string from = folderOf(include.file);
  const std::string to = folderOf(include.target);
  if (from == to) return "";
  const auto rule = allowed().find(from);
  if (rule == allowed().end()) return from + " is not on the map";
  if (rule->second.contains(to)) return "";
  if (isCompositionRoot(include.file) && to == "platform") return "";
  return from + " may not include " + to;
}

std::string where(const Include& include) { return include.file + ":" + std::to_string(include.line); }

TEST(IncludeRule, everyArrowIsOnTheMap) {
  int seen = 0;
  for (const char* top : {"core", "sync", "qml", "platform"}) {
    for (const auto& include : includesUnder(top)) {
      ++seen;
      EXPECT_EQ(breaks(include), "") << where(include) << " includes " << include.target;
    }
  }
  EXPECT_GT(seen, 100) << "the scan found almost nothing: is the source folder right?";
}

TEST(IncludeRule, coreAndSyncKnowNoQt) {
  static const std::regex kQt(R"(^(Q[A-Z]|Qt[A-Z0-9]|qt).*)");
  for (const char* top : {"core", "sync"}) {
    for (const auto& include : includesUnder(top)) {
      EXPECT_FALSE(std::regex_match(include.target, kQt)) << where(include) << " includes " << include.target;
    }
  }
}

TEST(IncludeRule, coreKnowsNoNetworkNoSqlNoThreadsNoClock) {
  static const std::regex kForbidden(
      R"(^(grpc|grpcpp|sqlite3|SQLiteCpp|thread|mutex|condition_variable|future|chrono|ctime|time\.h|sys/|unistd\.h|absl/time/clock\.h|absl/synchronization/).*)");
  for (const auto& include : includesUnder("core")) {
    EXPECT_FALSE(std::regex_search(include.target, kForbidden))
        << where(include) << " includes " << include.target;
  }
}

// Names that reach a clock or make a thread sleep without an include of their own.
TEST(IncludeRule, coreAndSyncCallNoClockAndCoreNeverSleeps) {
  static const std::regex kClock(
      R"((system_clock|steady_clock|high_resolution_clock|absl::Now\(|gettimeofday|clock_gettime|\btime\(nullptr\)|\btime\(NULL\)))");
  static const std::regex kSleep(R"((sleep_for|sleep_until|absl::SleepFor|usleep|nanosleep))");
  for (const char* top : {"core", "sync"}) {
    for (const auto& path : sourcesUnder(top)) {
      std::ifstream stream(path);
      std::string text;
      for (int line = 1; std::getline(stream, text); ++line) {
        const std::string at = fs::relative(path, kTop).string() + ":" + std::to_string(line);
        // gRPC takes its deadlines on the system clock; that one conversion is named so that it can be found.
        const bool deadline = text.find("grpc deadline") != std::string::npos && std::string(top) == "sync";
        EXPECT_TRUE(deadline || !std::regex_search(text, kClock)) << at << " reads a clock: " << text;
        const bool sleeps = std::string(top) == "core" && std::regex_search(text, kSleep);
        EXPECT_FALSE(sleeps) << at << " sleeps";
      }
    }
  }
}

TEST(IncludeRule, topLevelIsWhatTheDesignSays) {
  const std::set<std::string> expected = {
      "CMakeLists.txt", "CMakePresets.json", "DEVELOPERS.md", "LICENSE", "README.md",
      "core",           "platform",          "qml",           "sync",    "tests"};
  // Made by builds and runs, ignored by git.
  const std::set<std::string> made = {"build", "out"};
  for (const auto& entry : fs::directory_iterator(kTop)) {
    const std::string name = entry.path().filename();
    if (name[0] == '.' || made.contains(name)) continue;
    EXPECT_TRUE(expected.contains(name)) << name << " does not belong at the top";
  }
  for (const auto& name : expected) EXPECT_TRUE(fs::exists(kTop / name)) << name << " is missing";
}

// The checks above can fail: each kind of break is recognised.
TEST(IncludeRule, recognisesEachKindOfBreak) {
  EXPECT_NE(breaks({"core/time/x.cpp", 1, "core/library/catalogue.h", false}), "");
  EXPECT_NE(breaks({"core/safety/x.cpp", 1, "core/practice/player.h", false}), "");
  EXPECT_NE(breaks({"sync/hub/x.cpp", 1, "sync/home/home_engine.h", false}), "");
  EXPECT_NE(breaks({"core/records/x.cpp", 1, "tests/core/people.h", false}), "");
  EXPECT_NE(breaks({"qml/parts/x.cpp", 1, "sync/home/home_engine.h", false}), "");
  EXPECT_NE(breaks({"sync/hub/service.cpp", 1, "platform/clock.h", false}), "");
  EXPECT_EQ(breaks({"sync/hub/main.cpp", 1, "platform/clock.h", false}), "");
  EXPECT_EQ(breaks({"core/practice/x.cpp", 1, "core/safety/rule_book.h", false}), "");
}

}  // namespace
