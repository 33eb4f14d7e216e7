#include "core/practice/compile.h"

#include <algorithm>

#include "core/library/default_entry.h"
#include "core/library/wording.h"
#include "core/practice/beat_writer.h"
#include "core/records/check.h"

namespace newel {
namespace {

// A programme is led beat by beat; more than this is a typing error, not a dose.
constexpr int kMostBeats = 20000;

template <typename List>
bool contains(const List& list, int value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

absl::Status checkOffered(const v1::Entry& entry, const v1::Exercise& exercise) {
  if (!contains(exercise.side_policies(), entry.side_policy()))
    return absl::InvalidArgumentError("side_policy: " + exercise.id() + " is not done this way");
  if (!contains(exercise.supports(), entry.support()))
    return absl::InvalidArgumentError("support: " + exercise.id() + " is not done with this support");
  if (exercise.prosthesis() != v1::PROSTHESIS_USE_EITHER && exercise.prosthesis() != entry.prosthesis())
    return absl::InvalidArgumentError("prosthesis: " + exercise.id() + " is done the other way");
  const bool kind_fits = (exercise.dose_kind() == v1::DOSE_KIND_SETS && entry.dose().has_sets()) ||
                         (exercise.dose_kind() == v1::DOSE_KIND_MINUTES && entry.dose().has_minutes()) ||
                         (exercise.dose_kind() == v1::DOSE_KIND_PASSES && entry.dose().has_passes());
  if (!kind_fits) return absl::InvalidArgumentError("dose.kind: is not the kind of " + exercise.id());
  if (entry.dose().passes().has_distance_m() && exercise.step_length_cm() == 0)
    return absl::InvalidArgumentError("dose.passes.distance_m: " + exercise.id() + " counts steps");
  return absl::OkStatus();
}

bool needsStronger(const v1::Exercise& exercise) {
  for (const v1::Part& part : exercise.parts()) {
    for (const v1::Phase& phase : part.phases()) {
      if (phase.moves() == v1::LIMB_ROLE_STRONGER || phase.moves() == v1::LIMB_ROLE_WEAKER) return true;
    }
  }
  return false;
}

// As they are said to a person who lost both limbs.
bool namesStronger(const v1::Exercise& exercise, const v1::ExerciseWords& words) {
  const bool own_words = exercise.both_sides() == v1::BOTH_SIDES_OWN_WORDS;
  std::string said = words.title() + words.support();
  for (const auto& [key, cue] : words.cues()) {
    if (!own_words || key.find(".both") != std::string::npos) said += cue.screen() + cue.spoken();
  }
  for (const char* name : {"{stronger}", "{Stronger}", "{weaker}", "{Weaker}"}) {
    if (said.find(name) != std::string::npos) return true;
  }
  return false;
}

// Whether the exercise has a meaning for this body at all.
absl::Status checkMeaning(const v1::Entry& entry, const v1::Exercise& exercise,
                          const v1::ExerciseWords& words, const v1::Person& person) {
  const Limbs limbs = limbsOf(person);
  if (limbs.both_lost && exercise.both_sides() == v1::BOTH_SIDES_REFUSED)
    return absl::FailedPreconditionError("exercise_id: " + exercise.id() + " is not led for two lost limbs");
  if (limbs.both_lost &&
      (entry.side_policy() == v1::SIDE_POLICY_PROSTHETIC || entry.side_policy() == v1::SIDE_POLICY_SOUND))
    return absl::FailedPreconditionError("side_policy: with two lost limbs, say left, right or in turn");
  if (limbs.stronger == v1::SIDE_UNSPECIFIED && (needsStronger(exercise) || namesStronger(exercise, words)))
    return absl::FailedPreconditionError("strong_side: nobody has chosen the leg that leads");
  if (entry.prosthesis() == v1::PROSTHESIS_USE_ON && !ownsProsthesis(person))
    return absl::FailedPreconditionError("prosthesis: the person has none for a lost limb");
  return absl::OkStatus();
}

// How often what is repeated, in one shape for the three kinds of dose.
struct DoseShape {
  std::uint32_t sets = 1;  // sets, bouts or passes
  std::uint32_t repetitions = 1;
  std::uint32_t repetition_rest_s = 0;
  std::uint32_t rest_s = 0;
};

DoseShape shapeOf(const v1::Dose& dose) {
  if (dose.has_sets())
    return {dose.sets().sets(), dose.sets().repetitions(), dose.sets().repetition_rest_s(),
            dose.sets().rest_s()};
  if (dose.has_minutes()) return {dose.minutes().bouts(), 1, 0, dose.minutes().rest_s()};
  return {dose.passes().passes(), 1, 0, dose.passes().rest_s()};
}

// One repetition of one side.
struct Turn {
  v1::Side working = v1::SIDE_UNSPECIFIED;
  std::uint32_t repetition = 1;
  bool last = false;  // of the set, on this side where one side follows the other
  bool changes_side = false;
};

// The side that begins where both take turns: the stronger one, since a movement is learned there first
// (common practice, no source); the left one when nobody has said which is stronger.
v1::Side firstSide(const Limbs& limbs) {
  return limbs.stronger == v1::SIDE_UNSPECIFIED ? v1::SIDE_LEFT : limbs.stronger;
}

v1::Side onlySide(v1::SidePolicy policy, const Limbs& limbs) {
  switch (policy) {
    case v1::SIDE_POLICY_PROSTHETIC:
      return limbs.prosthetic;
    case v1::SIDE_POLICY_SOUND:
      return limbs.sound;
    case v1::SIDE_POLICY_LEFT:
      return v1::SIDE_LEFT;
    case v1::SIDE_POLICY_RIGHT:
      return v1::SIDE_RIGHT;
    default:
      return v1::SIDE_UNSPECIFIED;
  }
}

std::vector<Turn> turnsOfSet(v1::SidePolicy policy, std::uint32_t repetitions, const Limbs& limbs) {
  std::vector<Turn> turns;
  const v1::Side first = firstSide(limbs);
  if (policy == v1::SIDE_POLICY_ALTERNATING) {
    for (std::uint32_t r = 1; r <= repetitions; ++r) {
      turns.push_back({first, r, false, false});
      turns.push_back({otherSide(first), r, r == repetitions, false});
    }
  } else if (policy == v1::SIDE_POLICY_ONE_THEN_OTHER) {
    for (const v1::Side side : {first, otherSide(first)}) {
      for (std::uint32_t r = 1; r <= repetitions; ++r)
        turns.push_back({side, r, r == repetitions, r == 1 && side != first});
    }
  } else {
    for (std::uint32_t r = 1; r <= repetitions; ++r)
      turns.push_back({onlySide(policy, limbs), r, r == repetitions, false});
  }
  return turns;
}

absl::Status writeAll(BeatWriter& writer, const v1::Entry& entry, const v1::Exercise& exercise,
                      const Limbs& limbs) {
  const DoseShape shape = shapeOf(entry.dose());
  const std::vector<Turn> turns = turnsOfSet(entry.side_policy(), shape.repetitions, limbs);
  for (std::uint32_t set = 1; set <= shape.sets; ++set) {
    writer.beginSet(set, turns.front().working, shape.rest_s);
    for (std::size_t t = 0; t < turns.size(); ++t) {
      const Turn& turn = turns[t];
      if (turn.changes_side) {
        writer.changeSide(turn.working);
      } else if (t > 0 && shape.repetition_rest_s > 0) {
        writer.shortRest(turn.working, shape.repetition_rest_s);
      }
      // "Last one" says something only after one that was not.
      const bool last = turn.last && (shape.repetitions > 1 || (shape.sets > 1 && set == shape.sets));
      writer.repetition(turn.working, turn.repetition, last);
      if (!writer.status().ok()) return writer.status();
      if (writer.beatCount() > kMostBeats)
        return absl::InvalidArgumentError("dose: comes to more than " + std::to_string(kMostBeats) +
                                          " beats");
    }
  }
  if (writer.beatCount() == 0 || !writer.movedAtAll())
    return absl::InvalidArgumentError("dose: leaves nothing of " + exercise.id() + " to do");
  return absl::OkStatus();
}

absl::StatusOr<v1::Timeline> compileIn(const v1::Entry& entry, const v1::Exercise& exercise,
                                       const v1::ExerciseWords& words, const v1::Person& person,
                                       const Catalogue& catalogue) {
  v1::Timeline timeline;
  timeline.set_entry_id(entry.id());
  timeline.set_exercise_id(exercise.id());
  timeline.set_language(words.language());
  timeline.set_support(entry.support());
  timeline.set_prosthesis(entry.prosthesis());
  timeline.set_by_person(entry.pacing() == v1::PACING_BY_PERSON);
  timeline.set_sets(shapeOf(entry.dose()).sets);

  const Limbs limbs = limbsOf(person);
  BeatWriter writer({&catalogue, &person, &entry, words.language()}, exercise, words, limbs);
  const absl::Status written = writeAll(writer, entry, exercise, limbs);
  if (!written.ok()) return written;
  const absl::StatusOr<std::string> title = writer.plain(words.title());
  if (!title.ok()) return title.status();
  const absl::StatusOr<std::string> support = writer.plain(words.support());
  if (!support.ok()) return support.status();
  timeline.set_title(*title);
  timeline.set_support_words(*support);
  writer.moveTo(timeline);
  *timeline.mutable_asked() = countDose(timeline, std::vector<bool>(timeline.beats_size(), true));
  return timeline;
}

}  // namespace

absl::StatusOr<v1::Timeline> compileTimeline(const v1::Entry& entry, const v1::Person& person,
                                             const Catalogue& catalogue, const std::string& language) {
  if (const absl::Status status = check(entry); !status.ok()) return status;
  if (const absl::Status status = check(person); !status.ok()) return status;
  const v1::Exercise* exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr)
    return absl::NotFoundError("exercise_id: no " + entry.exercise_id() + " revision " +
                               std::to_string(entry.exercise_revision()));
  if (const absl::Status status = checkOffered(entry, *exercise); !status.ok()) return status;
  const v1::ExerciseWords* words = wordsOrEnglish(catalogue, exercise->id(), language, exercise->revision());
  if (words == nullptr) return absl::NotFoundError("exercise_id: no words for " + exercise->id());
  if (const absl::Status status = checkMeaning(entry, *exercise, *words, person); !status.ok()) return status;
  absl::StatusOr<v1::Timeline> timeline = compileIn(entry, *exercise, *words, person, catalogue);
  const v1::ExerciseWords* english = catalogue.words(exercise->id(), "en", exercise->revision());
  // A language that cannot say all of it says none of it.
  if (!timeline.ok() && english != nullptr && english != words) {
    words = english;
    timeline = compileIn(entry, *exercise, *words, person, catalogue);
  }
  if (!timeline.ok()) return timeline.status();
  timeline->set_fell_back(!servesLanguage(words->language(), language));
  return timeline;
}

}  // namespace newel
