// A reason of the attention list reads as a sentence whatever its age.
#include "qml/desk/attention_words.h"

#include <gtest/gtest.h>

#include "qml/print/wear_lines.h"

namespace newel::tests {
namespace {

TEST(AttentionWords, anAgeOfSecondsIsSaidAsASpan) {
  for (const char* key : {"attention.hold-not-arrived", "attention.on-hold", "attention.urgent-unseen",
                          "attention.message-unread", "attention.message-unseen", "attention.fall",
                          "attention.skin", "attention.programme-waiting"}) {
    AttentionReason reason;
    reason.key = key;
    reason.args = {{"count", "1"}, {"number", "3"}, {"what", "wear-harm"}};
    for (const absl::Duration age :
         {absl::ZeroDuration(), absl::Seconds(59), absl::Minutes(20), absl::Hours(50)}) {
      reason.age = age;
      const std::string words = desk::reasonWords(reason, RuleBook::builtIn()).toStdString();
      EXPECT_FALSE(words.empty()) << key;
      EXPECT_EQ(words.find("just now"), std::string::npos) << words;
      EXPECT_EQ(words.find("%1"), std::string::npos) << words;
    }
  }
}

TEST(AttentionWords, wearingTimeSaysWhatTheSkinWasAndHowItIsKnown) {
  v1::WearBlock block;
  block.mutable_put_on_at()->set_seconds(1795590000);
  block.mutable_taken_off_at()->set_seconds(1795593900);
  block.set_origin(v1::ORIGIN_TOLD_LATER);
  block.mutable_check()->add_signs(v1::SKIN_SIGN_RED);
  block.mutable_check()->mutable_redness()->set_watched_min(8);
  block.mutable_check()->mutable_redness()->set_gone(true);
  const std::string words = print::wearWords(block, SkinVerdict::Clear, absl::UTCTimeZone()).toStdString();
  EXPECT_NE(words.find("65 min"), std::string::npos) << words;
  EXPECT_NE(words.find("red, gone after 8 min: clear"), std::string::npos) << words;
  EXPECT_NE(words.find("Told later, not timed"), std::string::npos) << words;
  block.clear_taken_off_at();
  block.clear_check();
  EXPECT_NE(print::wearWords(block, SkinVerdict::NotLooked, absl::UTCTimeZone())
                .toStdString()
                .find("not taken off yet"),
            std::string::npos);
}

}  // namespace
}  // namespace newel::tests
