// What DEVELOPERS.md and README.md claim: tests they name exist, files they name exist.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <string>

namespace {

namespace fs = std::filesystem;

const fs::path kTop = NEWEL_SOURCE_DIR;

std::string textOf(const fs::path& path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), {}};
}

// "Suite.rule" of every test in the tree.
std::set<std::string> allTests() {
  static const std::regex kTest(R"(TEST(?:_F|_P)?\(\s*(\w+),\s*(\w+)\s*\))");
  std::set<std::string> tests;
  for (const auto& entry : fs::recursive_directory_iterator(kTop / "tests")) {
    if (entry.path().extension() != ".cpp") continue;
    const std::string text = textOf(entry.path());
    for (std::sregex_iterator at(text.begin(), text.end(), kTest), end; at != end; ++at) {
      tests.insert((*at)[1].str() + "." + (*at)[2].str());
    }
  }
  return tests;
}

TEST(Docs, everyTestNamedInTheHazardLogExists) {
  static const std::regex kNamed(R"(`([A-Z]\w+\.[a-z]\w+)`)");
  const std::set<std::string> tests = allTests();
  const std::string text = textOf(kTop / "DEVELOPERS.md");
  int named = 0;
  for (std::sregex_iterator at(text.begin(), text.end(), kNamed), end; at != end; ++at) {
    const std::string name = (*at)[1];
    if (name.ends_with(".md") || name.ends_with(".txt") || name.ends_with(".json")) continue;
    ++named;
    EXPECT_TRUE(tests.contains(name)) << name;
  }
  EXPECT_GT(named, 30);
}

TEST(Docs, everyFileLinkedOrNamedExists) {
  static const std::regex kLink(R"(\]\(([^)#:]+)\)|`((?:core|sync|qml|platform|tests)/[\w./-]+)`)");
  for (const char* name : {"README.md", "DEVELOPERS.md"}) {
    const std::string text = textOf(kTop / name);
    for (std::sregex_iterator at(text.begin(), text.end(), kLink), end; at != end; ++at) {
      const std::string path = (*at)[1].matched ? (*at)[1].str() : (*at)[2].str();
      EXPECT_TRUE(fs::exists(kTop / path)) << name << " names " << path;
    }
  }
}

}  // namespace
