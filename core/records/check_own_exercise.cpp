#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"
#include "core/records/media_type.h"

namespace newel {
namespace {

constexpr char kOwnPrefix[] = "own-";
constexpr std::size_t kMostPictureBytes = 48UL * 1024;

// The status of a part's own check(): its message begins with the field's path.
void checkNested(const FieldCheck& check, const absl::Status& status) {
  if (status.ok()) return;
  const std::string message(status.message());
  const std::size_t colon = message.find(": ");
  check.that(false, message.substr(0, colon), message.substr(colon + 2));
}

void checkOwnWords(const FieldCheck& check, const v1::OwnExercise& own) {
  const FieldCheck& top = check;
  top.that(!own.words().empty(), "words", "is missing");
  std::set<std::string> languages;
  for (int i = 0; i < own.words_size(); ++i) {
    const v1::ExerciseWords& words = own.words(i);
    FieldCheck at = check.at("words", i);
    checkNested(at, newel::check(words));
    at.that(words.exercise_id() == own.exercise().id(), "exercise_id", "is not the exercise's");
    at.that(words.exercise_revision() == own.exercise().revision(), "exercise_revision",
            "is not the exercise's");
    at.that(languages.insert(words.language()).second, "language", "is given twice");
  }
}

}  // namespace

bool isOwnExerciseId(const std::string& id) { return id.rfind(kOwnPrefix, 0) == 0; }

void checkOwnExercise(const FieldCheck& check, const v1::OwnExercise& own) {
  check.uuid("clinic_id", own.clinic_id());
  check.uuid("author_id", own.author_id());
  check.text("author_name", own.author_name(), 1, 200);
  check.that(own.has_written_at(), "written_at", "is missing");
  check.key("movement", own.movement());
  checkNested(check.at("exercise"), newel::check(own.exercise()));
  check.that(isOwnExerciseId(own.exercise().id()), "exercise.id",
             std::string("must begin with \"") + kOwnPrefix + "\"");
  checkOwnWords(check, own);
  check.that(own.picture().size() <= kMostPictureBytes, "picture", "is larger than 48 KiB");
  check.that(own.picture().empty() || isPhoto(sniffMedia(own.picture())), "picture",
             "is neither JPEG nor PNG");
}

absl::Status check(const v1::OwnExercise& own) {
  FieldCheck check;
  checkOwnExercise(check, own);
  return check.status();
}

absl::Status check(const v1::Movement& movement) {
  FieldCheck check;
  check.key("id", movement.id());
  check.enums(movement);
  checkDose(check.at("usual_dose"), movement.usual_dose());
  check.that(!movement.parts().empty(), "parts", "is missing");
  check.that(!movement.side_policies().empty(), "side_policies", "is missing");
  check.range("get_ready_s", movement.get_ready_s(), 3, 60);
  check.range("change_side_s", movement.change_side_s(), 0, 60);
  check.that(movement.words().contains("en"), "words[en]", "is missing");
  for (const auto& [language, words] : movement.words()) {
    FieldCheck at = check.at("words[" + language + "]");
    at.text("title", words.title(), 1, 120);
    for (const auto& part : movement.parts()) {
      for (const auto& phase : part.phases())
        at.that(words.phases().contains(phase.id()), "phases[" + phase.id() + "]", "is missing");
    }
    at.that(words.cues().contains("get_ready"), "cues[get_ready]", "is missing");
    at.that(words.cues().contains("rest"), "cues[rest]", "is missing");
    at.that(movement.change_side_s() == 0 || words.cues().contains("change_side"), "cues[change_side]",
            "is missing");
  }
  return check.status();
}

}  // namespace newel
