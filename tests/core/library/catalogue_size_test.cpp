// What the catalogue as a whole must hold: every item of the trade's list, groups, ladders, sources, doses.
// The list is our own inventory of the exercises that the trade gives after leg amputation; where a source is
// named beside a value, the value is from there.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/library/catalogue.h"

namespace newel {
namespace {

const Catalogue& catalogue() { return Catalogue::builtIn(); }

const v1::Exercise& exerciseOf(const std::string& id) {
  const v1::Exercise* exercise = catalogue().find(id);
  if (exercise == nullptr) ADD_FAILURE() << "no exercise " << id;
  static const v1::Exercise kNone;
  return exercise == nullptr ? kNone : *exercise;
}

const v1::SetsDose& setsOf(const std::string& id) { return exerciseOf(id).default_dose().sets(); }
const v1::MinutesDose& minutesOf(const std::string& id) { return exerciseOf(id).default_dose().minutes(); }

template <typename List>
bool contains(const List& list, int value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

bool hasTag(const std::string& id, const std::string& tag) {
  const auto& tags = exerciseOf(id).tags();
  return std::find(tags.begin(), tags.end(), tag) != tags.end();
}

bool usualFor(const std::string& id, v1::LimbLossLevel level) {
  return contains(exerciseOf(id).fit().usual_levels(), level);
}

// The 56 items of the inventory and the exercises that answer them.
const std::vector<std::vector<std::string>>& inventory() {
  static const std::vector<std::vector<std::string>> items = {
      {"gluteal-set"},
      {"quad-set"},
      {"straight-leg-raise"},
      {"short-arc-knee-extension"},
      {"seated-knee-extension"},
      {"face-down-knee-bend"},
      {"hip-press-down"},
      {"face-down-hip-extension"},
      {"bridge-over-roll"},
      {"side-lying-hip-abduction"},
      {"banded-hip-abduction"},
      {"adduction-squeeze"},
      {"seated-hip-rotation"},
      {"curl-up-legs-lifted"},
      {"lower-trunk-rotation"},
      {"face-down-back-extension"},
      {"seated-push-up"},
      {"band-row", "band-overhead-press"},
      {"face-down-lying"},
      {"hip-flexor-stretch-bed-edge"},
      {"hamstring-stretch"},
      {"adductor-stretch"},
      {"knee-straight-on-board"},
      {"calf-stretch"},
      {"desensitising"},
      {"limb-massage"},
      {"limb-skin-check", "shrinker-and-wrap", "liner-and-sock-care"},
      {"mirror-therapy"},
      {"sit-to-stand"},
      {"even-weight-standing"},
      {"weight-shift-side", "weight-shift-forward", "weight-shift-diagonal"},
      {"pelvic-rotation"},
      {"single-leg-stance-prosthesis"},
      {"single-leg-stance-sound"},
      {"tandem-stance", "narrow-stance"},
      {"ball-catch"},
      {"obstacle-stepping"},
      {"balance-board"},
      {"side-stepping"},
      {"step-through", "step-forward-and-back"},
      {"step-forward-and-back"},
      {"heel-contact"},
      {"equal-step-walking"},
      {"walk-to-a-beat"},
      {"turn-both-ways", "figure-of-eight"},
      {"soft-ground-walking"},
      {"stairs-one-at-a-time"},
      {"stairs-step-over-step"},
      {"ramp-up-down", "kerb-up-down"},
      {"floor-get-down-and-up"},
      {"bed-chair-transfer"},
      {"seated-marching", "seated-arm-cycling"},
      {"walking-programme"},
      {"stationary-cycle"},
      {"pool-walking"},
      {"small-jumps", "easy-running"},
  };
  return items;
}

TEST(CatalogueSize, holdsEveryItemOfTheInventory) {
  ASSERT_EQ(inventory().size(), 56U);
  for (const auto& item : inventory()) {
    for (const std::string& id : item) EXPECT_NE(catalogue().find(id), nullptr) << id;
  }
}

TEST(CatalogueSize, holdsAtLeastFiftySix) {
  std::set<std::string> ids;
  for (const v1::Exercise& exercise : catalogue().exercises()) ids.insert(exercise.id());
  EXPECT_GE(ids.size(), 56U);
}

TEST(CatalogueSize, hasExercisesForEveryPurpose) {
  std::map<int, int> count;
  for (const v1::Exercise& exercise : catalogue().exercises()) ++count[exercise.purpose()];
  for (int purpose = v1::Purpose_MIN + 1; purpose <= v1::Purpose_MAX; ++purpose)
    EXPECT_GE(count[purpose], 3) << v1::Purpose_Name(static_cast<v1::Purpose>(purpose));
}

// Looking at skin, putting on a shrinker and washing a liner are done or not done: they have no harder form.
TEST(Ladders, haveThreeRungsOrMoreExceptWhereNoneExists) {
  const std::set<std::string> without = {"limb-skin-check", "shrinker-and-wrap", "liner-and-sock-care"};
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    if (without.count(exercise.id()) != 0) {
      EXPECT_EQ(exercise.ladder_size(), 0) << exercise.id();
    } else {
      EXPECT_GE(exercise.ladder_size(), 3) << exercise.id();
    }
  }
}

TEST(Ladders, noTwoRungsOfOneLadderAreTheSame) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    std::set<std::string> rungs;
    for (const v1::Rung& rung : exercise.ladder()) {
      const std::string what = std::to_string(rung.support()) + rung.dose().SerializeAsString();
      EXPECT_TRUE(rungs.insert(what).second) << exercise.id() << " " << rung.id();
    }
  }
}

// Easiest first: the hands never hold more on a later rung than on an earlier one.
TEST(Ladders, takeSupportAwayAndNeverGiveItBack) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    const auto& supports = exercise.supports();
    std::ptrdiff_t last = 0;
    for (const v1::Rung& rung : exercise.ladder()) {
      const auto at = std::find(supports.begin(), supports.end(), rung.support()) - supports.begin();
      EXPECT_GE(at, last) << exercise.id() << " " << rung.id();
      last = at;
    }
  }
}

// How much a rung asks for: minutes, metres or steps, or seconds under hold with one more for each
// repetition.
std::uint64_t workOf(const v1::Dose& dose) {
  if (dose.has_minutes()) return std::uint64_t{dose.minutes().minutes()} * dose.minutes().bouts();
  if (dose.has_passes()) {
    const v1::PassesDose& passes = dose.passes();
    return std::uint64_t{passes.passes()} *
           (passes.has_distance_m() ? passes.distance_m() : passes.step_count());
  }
  return std::uint64_t{dose.sets().sets()} * dose.sets().repetitions() * (dose.sets().hold_s() + 1);
}

// With the same support a later rung asks for no less (the same where only the pace is quicker).
TEST(Ladders, askForNoLessOnALaterRungWithTheSameSupport) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    for (int i = 1; i < exercise.ladder_size(); ++i) {
      const v1::Rung& before = exercise.ladder(i - 1);
      const v1::Rung& rung = exercise.ladder(i);
      if (before.support() != rung.support()) continue;
      EXPECT_GE(workOf(rung.dose()), workOf(before.dose())) << exercise.id() << " " << rung.id();
    }
  }
}

TEST(Sources, eachHasAStatusThatItsTextAgreesWith) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    EXPECT_FALSE(exercise.sources().empty()) << exercise.id();
    bool common_practice = false;
    for (const v1::Source& source : exercise.sources()) {
      EXPECT_NE(source.kind(), v1::SOURCE_KIND_UNSPECIFIED) << exercise.id();
      const bool says = source.text().rfind("common practice, no source", 0) == 0;
      EXPECT_EQ(says, source.kind() == v1::SOURCE_KIND_COMMON_PRACTICE) << exercise.id() << source.text();
      common_practice = common_practice || says;
    }
    // No published page gives the usual levels and cautions of any of them.
    EXPECT_TRUE(common_practice) << exercise.id();
  }
}

// University hospital above-knee programme (scribd 669980575): 10 repetitions, holds of 5 to 10 s.
TEST(CatalogueValues, firstSetsAreTenWithHoldsOfFiveToTenSeconds) {
  for (const char* id : {"gluteal-set", "quad-set", "hip-press-down"}) {
    EXPECT_EQ(setsOf(id).repetitions(), 10U) << id;
    EXPECT_GE(setsOf(id).hold_s(), 5U) << id;
    EXPECT_LE(setsOf(id).hold_s(), 10U) << id;
  }
}

// ozgurprotez.com, exercises for people with a prosthesis.
TEST(CatalogueValues, holdsOfTheProsthesisUsersHandout) {
  for (const char* id : {"face-down-knee-bend", "face-down-hip-extension", "adduction-squeeze"})
    EXPECT_EQ(setsOf(id).hold_s(), 10U) << id;
  EXPECT_EQ(setsOf("banded-hip-abduction").hold_s(), 5U);
}

// Handouts hold stretches for 15 to 20 s (momentum.nu, info.5y1.org); 60 s in all for each (Garber 2011).
TEST(CatalogueValues, stretchesAreHeldFor15To20SecondsAndComeTo60) {
  for (const char* id : {"hip-flexor-stretch-bed-edge", "hamstring-stretch", "adductor-stretch",
                         "lower-trunk-rotation", "calf-stretch"}) {
    EXPECT_GE(setsOf(id).hold_s(), 15U) << id;
    EXPECT_LE(setsOf(id).hold_s(), 20U) << id;
    EXPECT_GE(setsOf(id).hold_s() * setsOf(id).repetitions() * setsOf(id).sets(), 60U) << id;
  }
}

// Chan 2007, as two later pages quote it: 15 minutes a day.
TEST(CatalogueValues, mirrorTherapyIsFifteenMinutesAndNeedsASoundLeg) {
  EXPECT_EQ(minutesOf("mirror-therapy").minutes() * minutesOf("mirror-therapy").bouts(), 15U);
  EXPECT_EQ(exerciseOf("mirror-therapy").both_sides(), v1::BOTH_SIDES_REFUSED);
}

// common practice, no source
TEST(CatalogueValues, limbCareTakesMinutesAndIsDoneWithTheProsthesisOff) {
  EXPECT_GE(minutesOf("desensitising").minutes(), 5U);
  EXPECT_LE(minutesOf("desensitising").minutes(), 10U);
  EXPECT_EQ(minutesOf("limb-massage").minutes(), 5U);
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    if (exercise.purpose() != v1::PURPOSE_LIMB_CARE) continue;
    EXPECT_EQ(exercise.dose_kind(), v1::DOSE_KIND_MINUTES) << exercise.id();
    EXPECT_EQ(exercise.prosthesis(), v1::PROSTHESIS_USE_OFF) << exercise.id();
  }
}

// American College of Sports Medicine 2009: 8 to 12 repetitions; rest of 1 to 2 minutes for older adults.
TEST(CatalogueValues, bandWorkIsEightToTwelveWithOneToTwoMinutesOfRest) {
  for (const char* id : {"band-row", "band-overhead-press", "seated-push-up"}) {
    EXPECT_GE(setsOf(id).repetitions(), 8U) << id;
    EXPECT_LE(setsOf(id).repetitions(), 12U) << id;
    EXPECT_GE(setsOf(id).rest_s(), 60U) << id;
    EXPECT_LE(setsOf(id).rest_s(), 120U) << id;
  }
}

// A kerb is one stair (common practice, no source): up with the sound leg, down with the prosthesis
// (amputee.co.nz).
TEST(CatalogueValues, kerbIsOneStairInTheSafeOrder) {
  const v1::Exercise& exercise = exerciseOf("kerb-up-down");
  ASSERT_EQ(exercise.parts_size(), 4);
  EXPECT_EQ(exercise.default_dose().passes().step_count(), 1U);
  EXPECT_EQ(exercise.parts(0).phases(0).moves(), v1::LIMB_ROLE_STRONGER);
  EXPECT_EQ(exercise.parts(2).phases(0).moves(), v1::LIMB_ROLE_WEAKER);
}

// Booklet of the Red Cross 2008, 3.7 and 3.8: jumps for transtibial only. The clinic decides: common
// practice, no source.
TEST(CatalogueValues, jumpsAndRunningAreForK4WhenTheClinicSaysSo) {
  EXPECT_TRUE(usualFor("small-jumps", v1::LIMB_LOSS_LEVEL_TRANSTIBIAL));
  EXPECT_FALSE(usualFor("small-jumps", v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
  for (const char* id : {"small-jumps", "easy-running"}) {
    EXPECT_EQ(exerciseOf(id).fit().least_mobility(), v1::MOBILITY_LEVEL_K4) << id;
    EXPECT_TRUE(hasTag(id, "clinic-only")) << id;
    EXPECT_TRUE(hasTag(id, "high-impact")) << id;
  }
  // Booklet 1.17; in the clinic unless cleared: common practice, no source.
  EXPECT_TRUE(hasTag("balance-board", "clinic-only"));
}

// Exercises of the knee are usual where there is one: common practice, no source.
TEST(CatalogueValues, kneeExercisesAreNotUsualAboveTheKnee) {
  for (const char* id : {"quad-set", "short-arc-knee-extension", "seated-knee-extension",
                         "face-down-knee-bend", "knee-straight-on-board"}) {
    EXPECT_TRUE(usualFor(id, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL)) << id;
    EXPECT_FALSE(usualFor(id, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL)) << id;
  }
}

// A short thigh lets the band slip: common practice, no source.
TEST(CatalogueValues, theBandIsNotUsualOnAShortThigh) {
  EXPECT_FALSE(usualFor("banded-hip-abduction", v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
  EXPECT_TRUE(hasTag("banded-hip-abduction", "band-on-limb"));
}

// nhsinform, hartlepoolnow: hands and knees, crawl to a firm chair, the stronger foot flat, push up, sit.
TEST(CatalogueValues, gettingUpFromTheFloorFollowsThePublishedOrder) {
  const v1::Exercise& exercise = exerciseOf("floor-get-down-and-up");
  const v1::Part& up = exercise.parts(exercise.parts_size() - 1);
  ASSERT_EQ(up.phases_size(), 4);
  EXPECT_EQ(up.phases(0).id(), "all-fours");
  EXPECT_EQ(up.phases(1).id(), "to-chair");
  EXPECT_EQ(up.phases(2).id(), "plant-foot");
  EXPECT_EQ(up.phases(2).moves(), v1::LIMB_ROLE_SOUND);
  EXPECT_EQ(up.phases(3).id(), "push-up");
  EXPECT_TRUE(hasTag("floor-get-down-and-up", "floor"));
  // Other ways for two lost limbs are taught in person: common practice, no source.
  EXPECT_EQ(exercise.both_sides(), v1::BOTH_SIDES_REFUSED);
}

// Whatever is led on the feet with weight on the prosthesis is known as such to the rules.
TEST(CatalogueTags, saySoWhereAPersonStands) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    const bool on_feet =
        exercise.position() == v1::POSITION_STANDING || exercise.position() == v1::POSITION_WALKING ||
        exercise.position() == v1::POSITION_STAIRS || exercise.position() == v1::POSITION_RAMP;
    if (!on_feet) continue;
    EXPECT_TRUE(hasTag(exercise.id(), "standing")) << exercise.id();
    if (exercise.prosthesis() == v1::PROSTHESIS_USE_ON) {
      EXPECT_TRUE(hasTag(exercise.id(), "prosthesis-load")) << exercise.id();
    }
  }
}

TEST(CatalogueTags, saySoWhereAPersonLiesFaceDownOrOnTheSide) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    EXPECT_EQ(hasTag(exercise.id(), "face-down"), exercise.position() == v1::POSITION_LYING_FACE_DOWN)
        << exercise.id();
    EXPECT_EQ(hasTag(exercise.id(), "lying-on-side"), exercise.position() == v1::POSITION_LYING_ON_SIDE)
        << exercise.id();
  }
}

}  // namespace
}  // namespace newel
