// A test that no CMakeLists.txt names is never built and never fails.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace newel {
namespace {

namespace fs = std::filesystem;

std::string textOf(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  return text.str();
}

TEST(EverythingBuilt, everyTestIsNamedWhereTestsAreBuilt) {
  const fs::path tests = fs::path(NEWEL_SOURCE_DIR) / "tests";
  std::string named;
  for (const auto& entry : fs::recursive_directory_iterator(tests)) {
    if (entry.path().filename() == "CMakeLists.txt") named += textOf(entry.path());
  }
  int seen = 0;
  for (const auto& entry : fs::recursive_directory_iterator(tests)) {
    const std::string name = entry.path().filename().string();
    if (name.size() < 9 || name.compare(name.size() - 9, 9, "_test.cpp") != 0) continue;
    ++seen;
    EXPECT_NE(named.find(name), std::string::npos) << entry.path();
  }
  EXPECT_GT(seen, 100);
}

}  // namespace
}  // namespace newel
