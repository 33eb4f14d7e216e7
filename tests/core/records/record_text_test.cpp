#include "core/records/record_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel {
namespace {

std::string messageOf(const absl::Status& status) { return std::string(status.message()); }

TEST(RecordText, namesFileLineAndColumnOfTheFirstError) {
  v1::Person person;
  const auto status = parseText("id: \"a\"\nheight: 170\n", "lena.textproto", person);
  EXPECT_EQ(status.code(), absl::StatusCode::kInvalidArgument);
  EXPECT_THAT(messageOf(status), testing::StartsWith("lena.textproto:2:7: "));
}

TEST(RecordText, readsJsonWhereTheTextBeginsWithABrace) {
  v1::Window window;
  ASSERT_TRUE(parseTextOrJson("  \n{\"from_min\": 420, \"to_min\": 660}", "w.json", window).ok());
  EXPECT_EQ(window.from_min(), 420U);
  ASSERT_TRUE(parseTextOrJson("from_min: 421", "w.textproto", window).ok());
  EXPECT_EQ(window.from_min(), 421U);
  EXPECT_EQ(window.to_min(), 0U) << "the second parse must not keep what the first left";
}

TEST(RecordText, jsonErrorsNameTheFileOnOneLine) {
  v1::Window window;
  const auto status = parseTextOrJson("{\"from_min\": \"early\"}", "w.json", window);
  ASSERT_FALSE(status.ok());
  EXPECT_THAT(messageOf(status), testing::StartsWith("w.json: "));
  EXPECT_THAT(messageOf(status), testing::Not(testing::HasSubstr("\n")));
}

TEST(RecordText, jsonRoundTripKeepsTheRecord) {
  v1::Schedule schedule;
  ASSERT_TRUE(
      parseText("weekdays { days: WEEKDAY_MONDAY } windows { from_min: 420 to_min: 660 }", "s", schedule)
          .ok());
  v1::Schedule again;
  ASSERT_TRUE(parseTextOrJson(toJson(schedule), "again", again).ok());
  EXPECT_EQ(toBytes(schedule), toBytes(again));
  EXPECT_THAT(toJson(schedule), testing::HasSubstr("from_min"));
}

TEST(RecordText, unknownFieldsSurviveARoundTrip) {
  // Field 1000, a varint, as a newer program might have written it.
  const std::string newer = toBytes([] {
                              v1::Window window;
                              window.set_from_min(420);
                              return window;
                            }()) +
                            std::string("\xC0\x3E\x07", 3);
  v1::Window window;
  ASSERT_TRUE(window.ParseFromString(newer));
  window.set_to_min(660);
  EXPECT_THAT(toBytes(window), testing::HasSubstr(std::string("\xC0\x3E\x07", 3)));
}

}  // namespace
}  // namespace newel
