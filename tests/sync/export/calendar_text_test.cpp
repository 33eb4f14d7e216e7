#include "sync/export/calendar_text.h"

#include <gtest/gtest.h>
#include <libical/ical.h>

#include <memory>
#include <random>
#include <string>

namespace newel {
namespace {

// What libical reads from a DESCRIPTION that we wrote.
std::string readBack(const std::string& words) {
  const std::string file =
      "BEGIN:VEVENT\r\n" + calendarLine("DESCRIPTION", calendarText(words)) + "END:VEVENT\r\n";
  const std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)> event(
      icalcomponent_new_from_string(file.c_str()), &icalcomponent_free);
  const char* read = event ? icalcomponent_get_description(event.get()) : nullptr;
  return read != nullptr ? read : "nothing was read";
}

// RFC 5545 section 3.3.11.
TEST(CalendarText, escapesTheRfcsExample) {
  EXPECT_EQ(calendarText("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."),
            "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
  EXPECT_EQ(calendarText("a\\b;c,d\r\ne\rf:\"g\""), "a\\\\b\\;c\\,d\\ne\\nf:\"g\"");
}

TEST(CalendarText, leavesOutWhatTheFormatCannotSay) {
  EXPECT_EQ(calendarText(std::string("a\0b\x7f\tc", 6)), "ab\tc");
}

TEST(CalendarText, aLineOf75OctetsIsNotFoldedAndOneOf76Is) {
  EXPECT_EQ(calendarLine("A", std::string(73, 'x')), "A:" + std::string(73, 'x') + "\r\n");
  EXPECT_EQ(calendarLine("A", std::string(74, 'x')), "A:" + std::string(73, 'x') + "\r\n x\r\n");
}

TEST(CalendarText, libicalReadsBackWhatWasWrittenWhateverTheWords) {
  const std::string letters[] = {"a", "é", "ن", "日", "🦿", ",", ";", "\\", "\n", ":", "\"", "x"};
  std::mt19937 random(5545);
  for (int round = 0; round < 1000; ++round) {
    std::string words = "w";
    for (auto left = random() % 200; left > 0; --left) words += letters[random() % std::size(letters)];
    const std::string line = calendarLine("DESCRIPTION", calendarText(words));
    for (std::size_t from = 0; from < line.size();) {
      const std::size_t to = line.find("\r\n", from);
      ASSERT_NE(to, std::string::npos);
      ASSERT_LE(to - from, 75U);
      ASSERT_NE(static_cast<unsigned char>(line[from]) & 0xc0U, 0x80U) << "a character was cut";
      if (from > 0) {
        ASSERT_EQ(line[from], ' ');
        ASSERT_NE(static_cast<unsigned char>(line[from + 1]) & 0xc0U, 0x80U) << "a character was cut";
      }
      from = to + 2;
    }
    ASSERT_EQ(readBack(words), words);
  }
}

}  // namespace
}  // namespace newel
