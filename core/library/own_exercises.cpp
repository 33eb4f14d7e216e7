#include "core/library/own_exercises.h"

#include <google/protobuf/util/message_differencer.h>

#include <algorithm>
#include <iterator>

#include "core/library/exercise_checks.h"
#include "core/records/check.h"

namespace newel {
namespace {

using google::protobuf::util::MessageDifferencer;

const v1::MovementWords& wordsIn(const v1::Movement& movement, const std::string& language) {
  const auto found = movement.words().find(language);
  return found == movement.words().end() ? movement.words().at("en") : found->second;
}

std::string languageOf(const Catalogue& catalogue, const v1::Movement& movement,
                       const std::string& language) {
  const bool known =
      movement.words().contains(language) && !catalogue.phrase("own.breathing", language).empty();
  return known ? language : "en";
}

v1::ExerciseWords firstWords(const v1::Movement& movement, const Catalogue& catalogue, const std::string& id,
                             const std::string& language) {
  const auto phrase = [&](const std::string& key) { return catalogue.phrase("own." + key, language); };
  v1::ExerciseWords words;
  words.set_exercise_id(id);
  words.set_exercise_revision(1);
  words.set_language(language);
  words.set_breathing(phrase("breathing"));
  words.set_support(phrase("support"));
  words.add_stop_if(phrase("stop-pain"));
  words.add_stop_if(phrase("stop-unwell"));
  *words.mutable_cues() = wordsIn(movement, language).cues();
  return words;
}

absl::Status under(const std::string& path, const CatalogueProblem& problem) {
  const std::string field = path + problem.path;
  return absl::InvalidArgumentError(field + (field.empty() ? "" : ": ") + problem.reason);
}

absl::Status checkMovement(const v1::OwnExercise& own, const Catalogue& catalogue) {
  const v1::Movement* movement = catalogue.movement(own.movement());
  if (movement == nullptr) return absl::InvalidArgumentError("movement: there is none of that id");
  const v1::Exercise& exercise = own.exercise();
  v1::Movement same = *movement;
  *same.mutable_parts() = exercise.parts();
  same.set_dose_kind(exercise.dose_kind());
  if (!MessageDifferencer::Equals(same, *movement))
    return absl::InvalidArgumentError("exercise.parts: are not the movement's");
  for (const int policy : exercise.side_policies()) {
    const auto& offered = movement->side_policies();
    if (std::find(offered.begin(), offered.end(), policy) == offered.end())
      return absl::InvalidArgumentError("exercise.side_policies: not with this movement");
  }
  return absl::OkStatus();
}

}  // namespace

v1::OwnExercise beginOwn(const v1::Movement& movement, const Catalogue& catalogue, const std::string& id,
                         const std::string& language) {
  v1::OwnExercise own;
  own.set_movement(movement.id());
  v1::Exercise& exercise = *own.mutable_exercise();
  exercise.set_id(id);
  exercise.set_revision(1);
  exercise.set_dose_kind(movement.dose_kind());
  *exercise.mutable_default_dose() = movement.usual_dose();
  *exercise.mutable_parts() = movement.parts();
  *exercise.mutable_side_policies() = movement.side_policies();
  exercise.set_get_ready_s(movement.get_ready_s());
  exercise.set_change_side_s(movement.change_side_s());
  if (movement.usual_dose().passes().has_distance_m()) exercise.set_step_length_cm(60);
  exercise.set_both_sides(v1::BOTH_SIDES_REFUSED);  // the cautious end, until the therapist says otherwise
  *own.add_words() = firstWords(movement, catalogue, id, languageOf(catalogue, movement, language));
  return own;
}

std::set<std::string> tagsOfPosition(const Catalogue& catalogue, v1::Position position) {
  std::set<std::string> common;
  bool first = true;
  for (const v1::Exercise& exercise : catalogue.exercises()) {
    if (exercise.position() != position || isOwnExerciseId(exercise.id())) continue;
    const std::set<std::string> tags(exercise.tags().begin(), exercise.tags().end());
    std::set<std::string> both;
    std::set_intersection(common.begin(), common.end(), tags.begin(), tags.end(),
                          std::inserter(both, both.end()));
    common = first ? tags : both;
    first = false;
  }
  return common;
}

absl::Status checkOwn(const v1::OwnExercise& own, const Catalogue& catalogue) {
  absl::Status status = check(own);
  if (status.ok()) status = checkMovement(own, catalogue);
  if (!status.ok()) return status;
  const v1::Exercise& exercise = own.exercise();
  for (const std::string& tag : tagsOfPosition(catalogue, exercise.position())) {
    if (std::find(exercise.tags().begin(), exercise.tags().end(), tag) == exercise.tags().end())
      return absl::InvalidArgumentError("exercise.tags: \"" + tag + "\" belongs to this position");
  }
  for (const CatalogueProblem& problem : problemsOf(exercise, catalogue)) return under("exercise.", problem);
  for (int i = 0; i < own.words_size(); ++i) {
    for (const CatalogueProblem& problem : problemsOf(own.words(i), exercise, catalogue))
      return under("words[" + std::to_string(i) + "].", problem);
  }
  return absl::OkStatus();
}

}  // namespace newel
