#include "sync/hub/hub_log.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <thread>
#include <vector>

#include "tests/sync/common/test_clinic.h"
#include "tests/sync/hub/hub_program.h"

namespace newel {
namespace {

TEST(LogText, isOneLineOfJsonInUtc) {
  const LogLine line{LogLevel::Warning, "call.refused",   "HomeService/Fetch", "id",
                     "ipv4:192.0.2.7",  "UNAUTHENTICATED"};
  EXPECT_EQ(logText(line, absl::FromUnixMillis(1793610000123)),
            R"({"call":"HomeService/Fetch","event":"call.refused","from":"ipv4:192.0.2.7","level":"warning",)"
            R"("outcome":"UNAUTHENTICATED","t":"2026-11-02T09:00:00.123Z","who":"id"})");
}

// OWASP ASVS 5.0 16.4.1: what comes from outside can make no line, no key and no colour of its own.
TEST(LogText, whateverIsInAPartStaysInThatPart) {
  std::string all;
  for (int c = 0; c < 256; ++c) all += static_cast<char>(c);
  for (const std::string& nasty : {std::string("a\nb"), std::string("\r\n{\"event\":\"forged\"}"),
                                   std::string("\x1b[31mred\x1b[0m"), std::string("\",\"level\":\"info"),
                                   std::string("\xc2\x9b"
                                               "31m"),
                                   std::string("\xe2\x80\xa8"), all}) {
    const std::string text = logText({.event = "call.done", .who = nasty}, absl::UnixEpoch());
    for (const char c : text) EXPECT_TRUE(c >= ' ' && c < 0x7f) << "a control or no ASCII in " << text;
    const auto line = nlohmann::json::parse(text);
    EXPECT_EQ(line.size(), 4U);
    EXPECT_EQ(line["event"], "call.done");
    EXPECT_EQ(line["level"], "info");
  }
}

TEST(HubLog, writesLinesWholeFromManyThreadsIntoAFileOfItsOwn) {
  const test::TempFolder folder;
  const test::TestClock clock;
  const std::string file = folder.path("log");
  {
    const auto log = HubLog::open(&clock, file);
    ASSERT_TRUE(log.ok()) << log.status();
    std::vector<std::thread> threads;
    for (int i = 0; i < 4; ++i) {
      threads.emplace_back([&] {
        for (int k = 0; k < 200; ++k) (*log)->write({.event = "call.done", .who = std::string(300, 'x')});
      });
    }
    for (auto& thread : threads) thread.join();
  }
  int lines = 0;
  std::istringstream stream(test::fileText(file));
  for (std::string line; std::getline(stream, line); ++lines) EXPECT_TRUE(nlohmann::json::accept(line));
  EXPECT_EQ(lines, 800);
  using std::filesystem::perms;
  EXPECT_EQ(std::filesystem::status(file).permissions() & perms::mask,
            perms::owner_read | perms::owner_write);
  EXPECT_TRUE(absl::IsPermissionDenied(HubLog::open(&clock, "/proc/nowhere/log").status()));
}

}  // namespace
}  // namespace newel
