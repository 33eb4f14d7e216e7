// Up and down the ladders of the catalogue itself. No source: what a rung is made of is checked where the
// catalogue is; here it is that no step skips a rung, changes anything else, or passes a rule.
#include "core/review/ladder.h"

#include <gtest/gtest.h>

#include "core/library/default_entry.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using What = LadderStep::What;

v1::Entry onRung(const v1::Exercise& exercise, int rung, const v1::Person& person) {
  v1::Entry entry = defaultEntry(exercise, person);
  entry.set_note("As we did it at the clinic.");
  *entry.mutable_dose() = exercise.ladder(rung).dose();
  entry.set_support(exercise.ladder(rung).support());
  return entry;
}

std::vector<const v1::Exercise*> withLadder() {
  std::vector<const v1::Exercise*> found;
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises()) {
    if (exercise.ladder_size() > 1) found.push_back(&exercise);
  }
  return found;
}

LadderStep step(const v1::Entry& entry, bool up) {
  return stepOnLadder(entry, up, test::transfemoralLeft(), Catalogue::builtIn(), RuleBook::builtIn());
}

TEST(Ladder, eachStepIsTheNextRungAndNothingElse) {
  ASSERT_GE(withLadder().size(), 5U);
  int taken = 0;
  for (const v1::Exercise* const exercise : withLadder()) {
    for (int rung = 0; rung + 1 < exercise->ladder_size(); ++rung) {
      const v1::Entry entry = onRung(*exercise, rung, test::transfemoralLeft());
      const LadderStep up = step(entry, true);
      if (up.what == What::Blocked) continue;
      ASSERT_EQ(up.what, What::Taken) << exercise->id();
      EXPECT_EQ(rungAt(up.entry, *exercise), rung + 1) << exercise->id();
      ++taken;
      const LadderStep back = step(up.entry, false);
      if (back.what == What::Blocked) continue;
      v1::Entry same = back.entry;
      EXPECT_EQ(same.rung_id(), exercise->ladder(rung).id());
      same.clear_rung_id();
      EXPECT_EQ(same.SerializeAsString(), entry.SerializeAsString()) << exercise->id();
    }
  }
  EXPECT_GE(taken, 5);
}

TEST(Ladder, itsEndsAreEnds) {
  for (const v1::Exercise* const exercise : withLadder()) {
    const v1::Person person = test::transfemoralLeft();
    EXPECT_EQ(step(onRung(*exercise, 0, person), false).what, What::AtItsEnd) << exercise->id();
    EXPECT_EQ(step(onRung(*exercise, exercise->ladder_size() - 1, person), true).what, What::AtItsEnd)
        << exercise->id();
  }
}

TEST(Ladder, aDoseOfTheTherapistsOwnHasNoNextRung) {
  const v1::Exercise& exercise = *withLadder().front();
  v1::Entry entry = onRung(exercise, 0, test::transfemoralLeft());
  entry.set_rung_id(exercise.ladder(0).id());
  entry.mutable_dose()->mutable_sets()->set_repetitions(entry.dose().sets().repetitions() + 1);
  const LadderStep up = step(entry, true);
  EXPECT_EQ(up.what, What::OffLadder);
  EXPECT_EQ(up.entry.SerializeAsString(), entry.SerializeAsString());
}

TEST(Ladder, withoutOneNothingMoves) {
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises()) {
    if (!exercise.ladder().empty()) continue;
    EXPECT_EQ(step(defaultEntry(exercise, test::transfemoralLeft()), true).what, What::NoLadder);
  }
  v1::Entry unknown;
  unknown.set_exercise_id("no-such-exercise");
  EXPECT_EQ(step(unknown, true).what, What::NoLadder);
}

// Whatever a rule blocks at the next rung is not offered, with the rule's own words.
TEST(Ladder, noStepPassesARule) {
  int blocked = 0;
  for (const v1::Exercise* const exercise : withLadder()) {
    for (const v1::Person& person : {test::transfemoralLeft(), test::transtibialRight()}) {
      for (int rung = 0; rung + 1 < exercise->ladder_size(); ++rung) {
        const LadderStep up = stepOnLadder(onRung(*exercise, rung, person), true, person,
                                           Catalogue::builtIn(), RuleBook::builtIn());
        const v1::Entry next = onRung(*exercise, rung + 1, person);
        const auto findings = RuleBook::builtIn().check(next, person, Catalogue::builtIn());
        ASSERT_TRUE(findings.ok());
        const bool refused = !findings->empty() && findings->front().effect() == v1::EFFECT_BLOCK;
        EXPECT_EQ(up.what == What::Blocked, refused) << exercise->id();
        EXPECT_EQ(up.words.empty(), !refused);
        blocked += refused ? 1 : 0;
      }
    }
  }
  EXPECT_GT(blocked, 0) << "nobody here is refused a rung: this test looks at nothing";
}

}  // namespace
}  // namespace newel
