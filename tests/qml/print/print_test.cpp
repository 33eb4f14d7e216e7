// Words that screens share with paper, and the program that all tests of paper are in.
#include <gtest/gtest.h>

#include <QtCore/QLocale>
#include <QtGui/QGuiApplication>

#include "qml/print/record_words.h"
#include "tests/core/people/sample_people.h"

namespace newel::print {
namespace {

// common practice, no source: an age is read at a glance, so it is one number with its unit.
TEST(RecordWords, agesAreOneNumberWithItsUnit) {
  EXPECT_EQ(ageWords(absl::Seconds(59)), QStringLiteral("just now"));
  EXPECT_EQ(ageWords(absl::Minutes(20)), QStringLiteral("20 min"));
  EXPECT_EQ(ageWords(absl::Hours(25)), QStringLiteral("1 day"));
  EXPECT_EQ(ageWords(absl::Hours(49)), QStringLiteral("2 days"));
}

TEST(RecordWords, holdingIsAsExactAsItIsUseful) {
  EXPECT_EQ(heldWords(48000), "48 s");
  EXPECT_EQ(heldWords(119999), "119 s");
  EXPECT_EQ(heldWords(120000), "2 min");
  EXPECT_EQ(heldWords(750000), "13 min") << "12.5, rounded up";
  EXPECT_EQ(heldWords(13980000), "3 h 53 min");
}

TEST(RecordWords, bothLimbsAreSaidWithTheirSides) {
  EXPECT_EQ(limbsWords(test::bothTranstibial()), QStringLiteral("left transtibial and right transtibial"));
  EXPECT_EQ(limbsWords(test::transfemoralLeft()), QStringLiteral("left, transfemoral"));
}

template <typename Value>
void everyValueHasWords(const google::protobuf::EnumDescriptor& type) {
  for (int i = 0; i < type.value_count(); ++i) {
    const auto value = static_cast<Value>(type.value(i)->number());
    if (type.value(i)->number() == 0) continue;
    EXPECT_NE(words(value), QStringLiteral("not given")) << type.value(i)->name();
  }
}

TEST(RecordWords, everyValueOfARecordHasWords) {
  everyValueHasWords<v1::Side>(*v1::Side_descriptor());
  everyValueHasWords<v1::LimbLossLevel>(*v1::LimbLossLevel_descriptor());
  everyValueHasWords<v1::KneeKind>(*v1::KneeKind_descriptor());
  everyValueHasWords<v1::FootKind>(*v1::FootKind_descriptor());
  everyValueHasWords<v1::MobilityLevel>(*v1::MobilityLevel_descriptor());
  everyValueHasWords<v1::Condition>(*v1::Condition_descriptor());
  everyValueHasWords<v1::WalkingAid>(*v1::WalkingAid_descriptor());
  everyValueHasWords<v1::Answer>(*v1::Answer_descriptor());
  everyValueHasWords<v1::Rails>(*v1::Rails_descriptor());
  everyValueHasWords<v1::Support>(*v1::Support_descriptor());
  everyValueHasWords<v1::SidePolicy>(*v1::SidePolicy_descriptor());
  everyValueHasWords<v1::Weekday>(*v1::Weekday_descriptor());
  everyValueHasWords<v1::StopReason>(*v1::StopReason_descriptor());
  everyValueHasWords<v1::PracticeEnd>(*v1::PracticeEnd_descriptor());
  everyValueHasWords<v1::ClockDoubt>(*v1::ClockDoubt_descriptor());
  everyValueHasWords<v1::Effect>(*v1::Effect_descriptor());
}

}  // namespace
}  // namespace newel::print

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  const QGuiApplication application(argc, argv);
  ::testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
