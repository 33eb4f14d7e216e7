// The words for a picture, from the same data.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/figure/figure.h"
#include "tests/core/figure/figure_people.h"

namespace newel {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string textAt(const std::string& id, const FigureBody& body, const std::string& phase, double fraction,
                   v1::Support support = v1::SUPPORT_UNSPECIFIED) {
  FigureOptions options;
  options.support = support;
  const auto figure = Figure::make(id, body, options);
  if (!figure.ok()) return std::string(figure.status().message());
  return figure->describe(*figure->momentOfPhase(phase, fraction), "en");
}

TEST(Describe, namesTheSideAndTheLevel) {
  const std::string left = textAt(
      "sit-to-stand", bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL, true), "stand-up", 0.5);
  EXPECT_THAT(left, HasSubstr("The left leg has a prosthesis, lost above the knee."));
  const std::string right = textAt(
      "bridge-over-roll", bodyWith(v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, false), "lift", 0.5);
  EXPECT_THAT(right, HasSubstr("The right leg has no prosthesis on, lost below the knee."));
}

TEST(Describe, namesTheLegThatMovesAndWhere) {
  const FigureBody body = bodyWith(v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true);
  const std::string up = textAt("stairs-one-at-a-time", body, "up-lead", 0.5);
  EXPECT_THAT(up, HasSubstr("the left leg, forward and up."));
  EXPECT_THAT(up, HasSubstr("It goes first."));
  EXPECT_THAT(textAt("stairs-one-at-a-time", body, "down-lead", 0.5),
              HasSubstr("the right leg, forward and down."));
  EXPECT_THAT(textAt("weight-shift-side", body, "shift-over", 0.5), HasSubstr("the hips, to the right."));
}

TEST(Describe, saysThatAHoldHolds) {
  const FigureBody body = bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true);
  EXPECT_THAT(textAt("weight-shift-side", body, "stay", 0.5),
              HasSubstr("Nothing moves: hold. The weight is on the left leg."));
}

TEST(Describe, namesWhatTheHandsHold) {
  const FigureBody body = bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true);
  EXPECT_THAT(textAt("even-weight-standing", body, "settle", 0.5, v1::SUPPORT_TWO_HANDS),
              HasSubstr("Both hands are on the chair."));
  EXPECT_THAT(textAt("even-weight-standing", body, "settle", 0.5, v1::SUPPORT_ONE_HAND),
              HasSubstr("The right hand is on the chair."));
  EXPECT_THAT(textAt("even-weight-standing", body, "settle", 0.5, v1::SUPPORT_FINGERTIPS),
              HasSubstr("fingertips only"));
  EXPECT_THAT(textAt("even-weight-standing", body, "settle", 0.5, v1::SUPPORT_NO_HANDS),
              HasSubstr("The hands hold nothing."));
}

TEST(Describe, saysWhatAPalmRestsOn) {
  const FigureBody body = bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true);
  EXPECT_THAT(textAt("side-lying-hip-abduction", body, "lift-leg", 0.5), HasSubstr("hand is on the bed."));
  EXPECT_THAT(textAt("opposite-arm-and-leg", body, "reach-out", 0.2), HasSubstr("on the floor"));
}

struct Opening {
  const char* language;
  const char* person;
  const char* comma;
};
constexpr Opening kOpenings[] = {{"en", "A person ", ","}, {"es", "Una persona ", ","}, {"ar", "شخص ", "،"}};

// No key is without its words, no mark is left unfilled, in any moment of any clip.
TEST(Describe, isCompleteForEveryMoment) {
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) {
    const v1::Exercise& exercise = *Catalogue::builtIn().find(clip.exercise_id());
    for (const int support : exercise.supports()) {
      FigureOptions options;
      options.support = static_cast<v1::Support>(support);
      const auto figure = Figure::make(
          clip.exercise_id(), bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true), options);
      ASSERT_TRUE(figure.ok());
      for (int i = 0; i <= 24; ++i) {
        for (const auto& [language, person, comma] : kOpenings) {
          const std::string text = figure->describe(figure->momentOfRun(i / 24.0), language);
          EXPECT_THAT(text, Not(HasSubstr("{"))) << text;
          EXPECT_THAT(text, Not(HasSubstr(std::string(comma) + " ."))) << text;
          EXPECT_THAT(text, Not(HasSubstr("  "))) << text;
          EXPECT_THAT(text, HasSubstr(person)) << text;
          EXPECT_EQ(text.find("The ") != std::string::npos, std::string(language) == "en") << text;
        }
      }
    }
  }
}

TEST(Describe, fallsBackToEnglish) {
  const auto figure = Figure::make("sit-to-stand", FigureBody{});
  ASSERT_TRUE(figure.ok());
  EXPECT_EQ(figure->describe(figure->momentOfRun(0.2), "xx"),
            figure->describe(figure->momentOfRun(0.2), "en"));
}

}  // namespace
}  // namespace newel
