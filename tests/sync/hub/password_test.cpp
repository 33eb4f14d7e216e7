// OWASP ASVS 5.0 6.2.1, 6.2.4, 6.2.5, 6.2.8, 6.2.9 as a table, and a list of common passwords that we did not
// make.
#include "sync/hub/password.h"

#include <gtest/gtest.h>

#include <fstream>
#include <string>

namespace newel {
namespace {

constexpr char kUser[] = "t.sample";

struct Row {
  std::string password;
  bool accepted;
  const char* why;
};

std::vector<Row> table() {
  std::string long_one;
  for (int i = 0; long_one.size() < 240; ++i) long_one += "kettle " + std::to_string(i * 7919) + " ";
  return {
      {"", false, "nothing"},
      {"xq9Zk2m", false, "seven characters"},
      {"xq9Zk2mP", true, "eight (6.2.1)"},
      {"мяу9щъы", false, "seven characters, though more bytes"},
      {"мяу9щъыЭж", true, "letters of any script"},
      {"qvzkwhdnrtlbmx", true, "small letters only: no rule about kinds (6.2.5)"},
      {"83 7206 9915 4428", true, "digits and spaces only"},
      {"tractor liner blue otter", true, "several words with spaces"},
      {"quiet-blue-stairs-47", true, "words"},
      {long_one, true, "240 characters (6.2.9)"},
      {long_one + std::string(40, 'z'), false, "over 256 bytes, said and not cut"},
      {"password", false, "the most common one"},
      {"Passw0rd!", false, "what is usually done to it"},
      {"P@ssword123", false, "the same with a number"},
      {"iloveyou", false, "common"},
      {"12345678", false, "a row"},
      {"qwertyuiop", false, "a keyboard"},
      {"aaaaaaaaaaaaaaaaaaaa", false, "one character repeated"},
      {"abcabcabcabc", false, "a repeat"},
      {"t.sample", false, "the user's own name"},
      {"t.sample1", false, "the user's own name and a digit"},
      {"newelnewel", false, "the program's"},
      {"19761123", false, "a birthday"},
  };
}

TEST(Password, theTableOfAcceptedAndRefused) {
  for (const Row& row : table()) {
    const absl::Status status = checkPassword(row.password, kUser);
    EXPECT_EQ(status.ok(), row.accepted) << row.password << " (" << row.why << "): " << status;
    if (!status.ok()) {
      EXPECT_EQ(status.message().substr(0, 9), "password:");
    }
  }
}

// tests/data/passwords/openwall.txt says where it is from.
TEST(Password, everyCommonPasswordOfAListThatIsNotOursIsRefused) {
  std::ifstream list(NEWEL_SOURCE_DIR "/tests/data/passwords/openwall.txt");
  int count = 0;
  for (std::string line; std::getline(list, line);) {
    if (line.rfind("# ", 0) == 0) continue;
    ++count;
    EXPECT_FALSE(checkPassword(line, kUser).ok()) << line;
  }
  EXPECT_GT(count, 600);
}

// 6.2.8: exactly as it was typed, to its last character.
TEST(Password, nothingIsCutOffOrChanged) {
  const std::string one = "a very long one " + std::string(230, 'q') + "1";
  const std::string two = one.substr(0, one.size() - 1) + "2";
  const auto hash = hashPassword(one);
  ASSERT_TRUE(hash.ok());
  EXPECT_TRUE(passwordFits(*hash, one));
  EXPECT_FALSE(passwordFits(*hash, two));
  EXPECT_FALSE(passwordFits(*hash, one.substr(0, 72)));
  const auto spaced = hashPassword(" Blue Otter 47 ");
  EXPECT_FALSE(passwordFits(*spaced, "Blue Otter 47"));
  EXPECT_FALSE(passwordFits(*spaced, " blue otter 47 "));
}

}  // namespace
}  // namespace newel
