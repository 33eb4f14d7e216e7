// platform/linux/newel-hub.service as systemd itself reads it.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

#include "tests/sync/common/test_clinic.h"
#include "tests/sync/hub/hub_program.h"

namespace newel {
namespace {

const std::string kUnit = std::string(NEWEL_SOURCE_DIR) + "/platform/linux/newel-hub.service";

class ServiceUnit : public testing::Test {
 protected:
  void SetUp() override {
    if (std::system("command -v systemd-analyze >/dev/null 2>&1") != 0)
      GTEST_SKIP() << "systemd-analyze is not here (platform/linux/packages.txt has systemd)";
    // The program that was just built stands in for the one that will be installed.
    std::string text = test::fileText(kUnit);
    const std::string installed = "/usr/bin/newel-hub";
    const std::size_t at = text.find("ExecStart=" + installed);
    ASSERT_NE(at, std::string::npos);
    text.replace(at + 10, installed.size(), NEWEL_BINARY_DIR "/bin/newel-hub");
    std::ofstream(m_unit) << text;
  }
  int analyze(const std::string& words) {
    const int status =
        std::system(("systemd-analyze --no-pager " + words + " " + m_unit + " >" + m_said + " 2>&1").c_str());
    return WEXITSTATUS(status);
  }
  test::TempFolder m_folder;
  const std::string m_unit = m_folder.path("newel-hub.service");
  const std::string m_said = m_folder.path("said");
};

TEST_F(ServiceUnit, isFreeOfMistakes) {
  EXPECT_EQ(analyze("verify"), 0) << test::fileText(m_said);
  EXPECT_EQ(test::fileText(m_said), "") << "and of warnings";
}

// systemd's own scale: 0 is closed, 10 is open; under 2 it calls "OK" at best.
TEST_F(ServiceUnit, isExposedToLittle) {
  EXPECT_EQ(analyze("security --offline=true --threshold=15"), 0) << test::fileText(m_said);
  EXPECT_NE(analyze("security --offline=true --threshold=1"), 0) << "the threshold is one that bites";
}

TEST_F(ServiceUnit, runsAsAUserOfItsOwnThatOwnsOneFolder) {
  const std::string unit = test::fileText(kUnit);
  for (const char* line :
       {"\nUser=newel\n", "\nUMask=0077\n", "\nStateDirectory=newel\n", "\nStateDirectoryMode=0700\n",
        "\nNoNewPrivileges=yes\n", "\nProtectSystem=strict\n"}) {
    EXPECT_NE(unit.find(line), std::string::npos) << line;
  }
  EXPECT_NE(test::fileText(std::string(NEWEL_SOURCE_DIR) + "/platform/linux/newel-hub.sysusers.conf")
                .find("\nu newel - "),
            std::string::npos);
}

}  // namespace
}  // namespace newel
