// Any entry for any person: seeded, so that a failure names the seed that brings it back.
#include <gtest/gtest.h>

#include <map>

#include "core/library/plain_words.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "tests/core/people/sample_random.h"

namespace newel {
namespace {

// Counted apart from the compiler: what the dose says the whole should last.
std::int64_t statedSeconds(const v1::Entry& entry, const v1::Exercise& exercise) {
  const v1::Dose& dose = entry.dose();
  const bool two_sides = entry.side_policy() == v1::SIDE_POLICY_ALTERNATING ||
                         entry.side_policy() == v1::SIDE_POLICY_ONE_THEN_OTHER;
  const std::int64_t sides = two_sides ? 2 : 1;
  const std::int64_t ready = exercise.get_ready_s();
  std::int64_t fixed = 0, moves = 0, returns = 0, holds = 0, steps = 0;
  for (const v1::Part& part : exercise.parts()) {
    for (const v1::Phase& phase : part.phases()) {
      fixed += phase.fixed_s();
      moves += phase.length() == v1::PHASE_LENGTH_MOVE ? 1 : 0;
      returns += phase.length() == v1::PHASE_LENGTH_RETURN ? 1 : 0;
      holds += phase.length() == v1::PHASE_LENGTH_HOLD ? 1 : 0;
    }
    if (part.repeat() == v1::PART_REPEAT_PER_STEP) steps += part.one_phase_a_step() ? 1 : part.phases_size();
  }
  const auto between = [ready](std::int64_t times, std::int64_t rest) {
    return (times - 1) * (rest > 0 ? rest : ready);
  };
  if (dose.has_sets()) {
    const v1::SetsDose& sets = dose.sets();
    const std::int64_t each =
        fixed + moves * sets.move_s() + returns * sets.return_s() + holds * sets.hold_s();
    const std::int64_t turns = sides * sets.repetitions();
    const bool changes = entry.side_policy() == v1::SIDE_POLICY_ONE_THEN_OTHER;
    const std::int64_t short_rests = turns - 1 - (changes ? 1 : 0);
    const std::int64_t set =
        turns * each + short_rests * sets.repetition_rest_s() + (changes ? exercise.change_side_s() : 0);
    return ready + sets.sets() * set + between(sets.sets(), sets.rest_s());
  }
  if (dose.has_minutes()) {
    const v1::MinutesDose& minutes = dose.minutes();
    return ready + minutes.bouts() * sides * (minutes.minutes() * 60 + fixed) +
           between(minutes.bouts(), minutes.rest_s());
  }
  const v1::PassesDose& passes = dose.passes();
  const std::int64_t count =
      passes.has_step_count()
          ? passes.step_count()
          : (passes.distance_m() * 100 + exercise.step_length_cm() - 1) / exercise.step_length_cm();
  return ready + passes.passes() * sides * (fixed + count * steps * passes.step_s()) +
         between(passes.passes(), passes.rest_s());
}

void expectContiguous(const v1::Timeline& timeline) {
  std::int64_t at = 0;
  for (int i = 0; i < timeline.beats_size(); ++i) {
    const v1::Beat& beat = timeline.beats(i);
    ASSERT_EQ(beat.index(), static_cast<std::uint32_t>(i));
    ASSERT_EQ(beat.start_ms(), at);
    ASSERT_GT(beat.length_ms(), 0);
    ASSERT_FALSE(beat.screen().empty());
    ASSERT_EQ(beat.screen().find_first_of("{}"), std::string::npos);
    ASSERT_EQ(beat.spoken().find_first_of("{}"), std::string::npos);
    at += beat.length_ms();
  }
  ASSERT_EQ(timeline.total_ms(), at);
}

void expectSetsBeginWell(const v1::Timeline& timeline) {
  std::uint32_t set = 0;
  for (const v1::Beat& beat : timeline.beats()) {
    if (beat.set() == set) continue;
    ASSERT_EQ(beat.set(), set + 1);
    set = beat.set();
    ASSERT_TRUE(beat.kind() == v1::BEAT_KIND_GET_READY || (set > 1 && beat.kind() == v1::BEAT_KIND_REST));
  }
  ASSERT_EQ(set, timeline.sets());
}

void expectHoldsExact(const v1::Entry& entry, const v1::Timeline& timeline) {
  std::int64_t held = 0;
  std::int64_t holds = 0;
  for (const v1::Beat& beat : timeline.beats()) {
    if (beat.kind() != v1::BEAT_KIND_HOLD) continue;
    held += beat.length_ms();
    ++holds;
    if (entry.dose().has_sets()) {
      ASSERT_EQ(beat.length_ms(), entry.dose().sets().hold_s() * 1000);
    }
    if (entry.dose().has_minutes()) {
      ASSERT_LE(beat.length_ms(), 60000);
    }
  }
  if (entry.dose().has_minutes()) {
    ASSERT_EQ(held, std::int64_t{entry.dose().minutes().minutes()} * 60000 * timeline.asked().repetitions());
  }
  ASSERT_EQ(timeline.asked().hold_ms(), held);
}

// What is done on one side is done on the other, beat for beat.
void expectBalanced(const v1::Entry& entry, const v1::Timeline& timeline) {
  if (entry.side_policy() != v1::SIDE_POLICY_ALTERNATING &&
      entry.side_policy() != v1::SIDE_POLICY_ONE_THEN_OTHER)
    return;
  std::map<std::pair<std::string, v1::Side>, std::int64_t> ms;
  for (const v1::Beat& beat : timeline.beats()) {
    if (isWork(beat.kind())) ms[{beat.phase_id(), beat.side()}] += beat.length_ms();
  }
  for (const auto& [key, sum] : ms) {
    if (key.second != v1::SIDE_UNSPECIFIED) {
      ASSERT_EQ(sum, (ms[{key.first, otherSide(key.second)}])) << key.first;
    }
  }
}

// H01: the side that is shown, the side that is said, and the leg's role are one thing.
void expectOneSide(const v1::Person& person, const v1::Timeline& timeline) {
  for (const v1::Beat& beat : timeline.beats()) {
    if (beat.side() == v1::SIDE_UNSPECIFIED) {
      ASSERT_EQ(beat.role(), v1::LIMB_ROLE_BOTH);
      continue;
    }
    const bool lost = levelOf(person, beat.side()) != v1::LIMB_LOSS_LEVEL_UNSPECIFIED;
    ASSERT_EQ(beat.role(), lost ? v1::LIMB_ROLE_PROSTHETIC : v1::LIMB_ROLE_SOUND);
    // Where one leg is named, it is this beat's leg.
    const bool says_left = beat.screen().find("eft leg") != std::string::npos;
    const bool says_right = beat.screen().find("ight leg") != std::string::npos;
    if (isWork(beat.kind()) && says_left != says_right) {
      ASSERT_EQ(beat.side(), says_left ? v1::SIDE_LEFT : v1::SIDE_RIGHT) << beat.screen();
    }
  }
}

TEST(TimelineProperties, holdForAnyEntryAndAnyPerson) {
  int compiled = 0;
  int refused = 0;
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises()) {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
      SCOPED_TRACE(exercise.id() + " seed " + std::to_string(seed));
      test::SampleRandom random(seed);
      const v1::Person person = test::anyPerson(random);
      const v1::Entry entry = test::anyEntry(exercise, random);
      ASSERT_TRUE(check(person).ok()) << check(person);
      ASSERT_TRUE(check(entry).ok()) << check(entry);
      const auto timeline = compileTimeline(entry, person, Catalogue::builtIn(), "en");
      if (!timeline.ok()) {
        // The only reason not to compile what the exercise offers is that it has no meaning for this person.
        ASSERT_EQ(timeline.status().code(), absl::StatusCode::kFailedPrecondition) << timeline.status();
        ++refused;
        continue;
      }
      ++compiled;
      ASSERT_NO_FATAL_FAILURE(expectContiguous(*timeline));
      ASSERT_NO_FATAL_FAILURE(expectSetsBeginWell(*timeline));
      ASSERT_EQ(timeline->total_ms(), statedSeconds(entry, exercise) * 1000);
      ASSERT_NO_FATAL_FAILURE(expectHoldsExact(entry, *timeline));
      ASSERT_NO_FATAL_FAILURE(expectBalanced(entry, *timeline));
      ASSERT_NO_FATAL_FAILURE(expectOneSide(person, *timeline));
      const std::vector<bool> all(static_cast<std::size_t>(timeline->beats_size()), true);
      ASSERT_EQ(countDose(*timeline, all).SerializeAsString(), timeline->asked().SerializeAsString());
      std::uint32_t in_sets = 0;
      for (const v1::SetDone& set : countSets(*timeline, all)) in_sets += set.done().repetitions();
      ASSERT_EQ(in_sets, timeline->asked().repetitions());
    }
  }
  EXPECT_GT(compiled, 800);
  EXPECT_GT(refused, 50);
}

// A person's own doses (default and every rung) are said in time, for everybody.
TEST(TimelineProperties, everySpokenCueFitsItsBeatAtDefaultAndLadderDoses) {
  int cues = 0;
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises()) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
      test::SampleRandom random(seed);
      const v1::Person person = test::anyPerson(random);
      v1::Entry entry = test::anyEntry(exercise, random);
      const std::uint32_t rung = random.between(0, static_cast<std::uint32_t>(exercise.ladder_size()));
      *entry.mutable_dose() =
          rung == 0 ? exercise.default_dose() : exercise.ladder(static_cast<int>(rung) - 1).dose();
      const auto timeline = compileTimeline(entry, person, Catalogue::builtIn(), "en");
      if (!timeline.ok()) continue;
      for (const v1::Beat& beat : timeline->beats()) {
        EXPECT_LE(spokenSeconds(beat.spoken()) * 1000, static_cast<double>(beat.length_ms()))
            << exercise.id() << ": " << beat.spoken();
        ++cues;
      }
    }
  }
  EXPECT_GT(cues, 10000);
}

}  // namespace
}  // namespace newel
