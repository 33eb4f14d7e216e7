// newel-hub export, as its own process over either store.
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "sync/hub/demo_people.h"
#include "tests/sync/hub/program_fixture.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

class ExportProgram : public test::ProgramClinic {
 protected:
  void SetUp() override {
    const test::Ended made = test::runHub(place(), {"demo"});
    ASSERT_EQ(made.code, 0) << made.err;
  }
  test::Ended leave(const std::string& format, const std::string& out, std::vector<std::string> more = {}) {
    std::vector<std::string> options = {"--person", m_person, "--format",
                                        format,     "--out",  m_folder.path(out)};
    options.insert(options.end(), more.begin(), more.end());
    return test::runHub(place(), {"export"}, options);
  }
  const std::string m_person = demoPeople()[1].person.id();
};

TEST_F(ExportProgram, writesWhatWasAskedForWithoutAnybodysName) {
  const auto said = leave("fhir", "a.json", {"--with-words"});
  ASSERT_EQ(said.code, 0) << said.err;
  EXPECT_NE(said.out.find("Names may stand in what people wrote"), std::string::npos) << said.out;
  const std::string text = test::fileText(m_folder.path("a.json"));
  const auto bundle = nlohmann::json::parse(text, nullptr, false);
  ASSERT_TRUE(bundle.is_object());
  EXPECT_EQ(bundle["type"], "collection");
  EXPECT_GT(bundle["entry"].size(), 5U);
  const v1::Identity& identity = demoPeople()[1].identity;
  EXPECT_EQ(text.find(identity.family_name()), std::string::npos);
  EXPECT_EQ(text.find("\"" + identity.given_name()), std::string::npos);
  ASSERT_EQ(leave("ical", "a.ics", {"--language", "es"}).code, 0);
  EXPECT_NE(test::fileText(m_folder.path("a.ics")).find("SUMMARY:Práctica\r\n"), std::string::npos);
  const auto tables = leave("csv", "a");
  ASSERT_EQ(tables.code, 0) << tables.err;
  EXPECT_NE(tables.out.find("It holds no name"), std::string::npos) << tables.out;
  EXPECT_NE(test::fileText(m_folder.path("a/entries.csv")).find("weight-shift-side"), std::string::npos);
  EXPECT_EQ(test::runHub(place(), {"audit", "verify"}).code, 0);
}

TEST_F(ExportProgram, saysWhatIsWrongAndEndsWithOne) {
  EXPECT_EQ(leave("fhir", "a.json", {"--from", "yesterday"}).code, 1);
  const auto again = leave("pdf", "a.pdf");
  EXPECT_EQ(again.code, 1);
  EXPECT_NE(again.err.find("format: fhir, ical or csv"), std::string::npos) << again.err;
  EXPECT_EQ(leave("ical", "a.ics").code, 0);
  EXPECT_EQ(leave("ical", "a.ics").code, 1) << "it is there";
  EXPECT_FALSE(fs::exists(m_folder.path("a.json")));
}

// Ctrl-C before it is done: the signal waits for the program to ask.
TEST_F(ExportProgram, isLeftByASignal) {
  const std::string out = m_folder.path("left.json");
  const std::string program = std::string(NEWEL_BINARY_DIR) + "/bin/newel-hub";
  const bool postgres = place().rfind("postgres", 0) == 0;
  const std::string where = postgres ? "--store" : "--data";
  const std::string address = place();
  const std::string person = m_person;
  const pid_t child = fork();
  if (child == 0) {
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGINT);
    sigprocmask(SIG_BLOCK, &signals, nullptr);
    kill(getpid(), SIGINT);  // pending, and kept over exec
    execl(program.c_str(), "newel-hub", "export", where.c_str(), address.c_str(), "--person", person.c_str(),
          "--format", "fhir", "--out", out.c_str(), static_cast<char*>(nullptr));
    _exit(127);
  }
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 1) << status;
  EXPECT_FALSE(fs::exists(out));
  EXPECT_FALSE(fs::exists(out + ".part"));
}

}  // namespace
}  // namespace newel
