#include "core/library/wording.h"

#include <gtest/gtest.h>

#include "core/library/default_entry.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

std::string said(const std::string& text, const v1::Person& person, v1::Side working = v1::SIDE_UNSPECIFIED) {
  const v1::Entry entry = test::entryOf("weight-shift-side", person);
  const auto resolved = resolveWords(text, {&Catalogue::builtIn(), &person, &entry, "en", working});
  return resolved.ok() ? *resolved
                       : "refused: " + std::string(resolved.status().message().data(),
                                                   resolved.status().message().size());
}

TEST(Wording, legsOfAPersonWhoLostTheLeftOne) {
  const v1::Person person = test::transfemoralLeft();
  EXPECT_EQ(said("{prosthetic}, {sound}, {stronger}, {weaker}", person),
            "left leg, right leg, right leg, left leg");
  EXPECT_EQ(said("{working}, {other}, {working_arm}, {opposite_arm}, {working_side}", person, v1::SIDE_RIGHT),
            "right leg, left leg, right arm, left arm, right");
}

TEST(Wording, mirroredForAPersonWhoLostTheRightOne) {
  const v1::Person person = test::transtibialRight();
  EXPECT_EQ(said("{prosthetic}, {sound}", person), "right leg, left leg");
}

TEST(Wording, withBothLostTheTherapistsChoiceIsTheStronger) {
  const v1::Person person = test::bothTranstibial();
  EXPECT_EQ(said("{stronger}, {weaker}", person), "right leg, left leg");
  EXPECT_EQ(said("Go, {sound}.", person), "refused: {sound}: has no answer here");
  v1::Person undecided = person;
  undecided.clear_strong_side();
  EXPECT_EQ(said("{stronger}", undecided), "refused: {stronger}: has no answer here");
}

TEST(Wording, capitalAtTheBeginningOfASentence) {
  EXPECT_EQ(said("{Working} up. {Support}.", test::transfemoralLeft(), v1::SIDE_LEFT),
            "Left leg up. Both hands hold on.");
}

TEST(Wording, refusesWhatHasNoAnswer) {
  const v1::Person person = test::transfemoralLeft();
  EXPECT_EQ(said("{working} up", person), "refused: {working}: has no answer here");
  EXPECT_EQ(said("{leg} up", person), "refused: {leg}: is not a placeholder");
  EXPECT_EQ(said("{} up", person), "refused: {}: is not a placeholder");
  EXPECT_EQ(said("{working up", person), "refused: \"{\" is never closed");
}

TEST(Wording, levelBySide) {
  const v1::Person person = test::transfemoralLeft();
  EXPECT_EQ(levelOf(person, v1::SIDE_LEFT), v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  EXPECT_EQ(levelOf(person, v1::SIDE_RIGHT), v1::LIMB_LOSS_LEVEL_UNSPECIFIED);
}

TEST(DefaultEntry, choosesAPolicyThatHasAMeaning) {
  const v1::Exercise& exercise = *Catalogue::builtIn().find("step-through");
  EXPECT_EQ(defaultEntry(exercise, test::transfemoralLeft()).side_policy(), v1::SIDE_POLICY_PROSTHETIC);
  EXPECT_EQ(defaultEntry(exercise, test::bothTranstibial()).side_policy(), v1::SIDE_POLICY_ALTERNATING);
}

// Common practice, no source: floor exercises without the prosthesis, standing ones with it.
TEST(DefaultEntry, prosthesisOffOnTheFloorAndOnInStanding) {
  const Catalogue& catalogue = Catalogue::builtIn();
  const v1::Person person = test::transfemoralLeft();
  EXPECT_EQ(defaultEntry(*catalogue.find("curl-up-legs-lifted"), person).prosthesis(),
            v1::PROSTHESIS_USE_OFF);
  EXPECT_EQ(defaultEntry(*catalogue.find("sit-to-stand"), person).prosthesis(), v1::PROSTHESIS_USE_ON);
}

}  // namespace
}  // namespace newel
