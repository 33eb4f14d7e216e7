#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

void checkPhase(const FieldCheck& check, const v1::Phase& phase, v1::DoseKind dose_kind) {
  check.key("id", phase.id());
  const bool fixed = phase.length() == v1::PHASE_LENGTH_FIXED;
  if (fixed) {
    check.range("fixed_s", phase.fixed_s(), 1, 120);
  } else {
    check.that(phase.fixed_s() == 0, "fixed_s", "goes with PHASE_LENGTH_FIXED only");
  }
  const bool sets = phase.length() == v1::PHASE_LENGTH_MOVE || phase.length() == v1::PHASE_LENGTH_HOLD ||
                    phase.length() == v1::PHASE_LENGTH_RETURN;
  check.that(!sets || dose_kind == v1::DOSE_KIND_SETS, "length", "needs a dose in sets");
  check.that(phase.length() != v1::PHASE_LENGTH_STEP || dose_kind == v1::DOSE_KIND_PASSES, "length",
             "needs a dose in passes");
  check.that(phase.length() != v1::PHASE_LENGTH_BOUT || dose_kind == v1::DOSE_KIND_MINUTES, "length",
             "needs a dose in minutes");
}

void checkParts(const FieldCheck& check, const v1::Exercise& exercise) {
  check.that(!exercise.parts().empty(), "parts", "is missing");
  std::set<std::string> ids;
  for (int p = 0; p < exercise.parts_size(); ++p) {
    FieldCheck part = check.at("parts", p);
    part.key("id", exercise.parts(p).id());
    part.that(!exercise.parts(p).phases().empty(), "phases", "is missing");
    for (int i = 0; i < exercise.parts(p).phases_size(); ++i) {
      checkPhase(part.at("phases", i), exercise.parts(p).phases(i), exercise.dose_kind());
      part.at("phases", i).that(ids.insert(exercise.parts(p).phases(i).id()).second, "id", "is given twice");
    }
  }
}

v1::DoseKind kindOf(const v1::Dose& dose) {
  switch (dose.kind_case()) {
    case v1::Dose::kSets:
      return v1::DOSE_KIND_SETS;
    case v1::Dose::kMinutes:
      return v1::DOSE_KIND_MINUTES;
    case v1::Dose::kPasses:
      return v1::DOSE_KIND_PASSES;
    case v1::Dose::KIND_NOT_SET:
      break;
  }
  return v1::DOSE_KIND_UNSPECIFIED;
}

void checkLadder(const FieldCheck& check, const v1::Exercise& exercise) {
  for (int i = 0; i < exercise.ladder_size(); ++i) {
    FieldCheck rung = check.at("ladder", i);
    rung.key("id", exercise.ladder(i).id());
    checkDose(rung.at("dose"), exercise.ladder(i).dose());
    rung.that(kindOf(exercise.ladder(i).dose()) == exercise.dose_kind(), "dose", "is not of dose_kind");
  }
}

}  // namespace

void checkDose(const FieldCheck& check, const v1::Dose& dose) {
  if (dose.has_sets()) {
    FieldCheck sets = check.at("sets");
    sets.range("sets", dose.sets().sets(), 1, 10);
    sets.range("repetitions", dose.sets().repetitions(), 1, 60);
    sets.range("hold_s", dose.sets().hold_s(), 0, 120);
    sets.range("move_s", dose.sets().move_s(), 1, 20);
    sets.range("return_s", dose.sets().return_s(), 1, 20);
    sets.range("repetition_rest_s", dose.sets().repetition_rest_s(), 0, 60);
    sets.range("rest_s", dose.sets().rest_s(), 0, 300);
  } else if (dose.has_minutes()) {
    FieldCheck minutes = check.at("minutes");
    minutes.range("minutes", dose.minutes().minutes(), 1, 60);
    minutes.range("bouts", dose.minutes().bouts(), 1, 6);
    minutes.range("rest_s", dose.minutes().rest_s(), 0, 600);
  } else if (dose.has_passes()) {
    FieldCheck passes = check.at("passes");
    passes.range("passes", dose.passes().passes(), 1, 30);
    if (dose.passes().has_distance_m()) {
      passes.range("distance_m", dose.passes().distance_m(), 1, 200);
    } else {
      passes.that(dose.passes().has_step_count(), "length", "needs distance_m or step_count");
      passes.range("step_count", dose.passes().step_count(), 1, 40);
    }
    passes.range("step_s", dose.passes().step_s(), 1, 10);
    passes.range("rest_s", dose.passes().rest_s(), 0, 300);
  } else {
    check.that(false, "kind", "is missing: sets, minutes or passes");
  }
}

absl::Status check(const v1::Dose& dose) {
  FieldCheck check;
  checkDose(check, dose);
  return check.status();
}

void checkSources(const FieldCheck& check, const google::protobuf::RepeatedPtrField<v1::Source>& sources) {
  check.that(!sources.empty(), "sources", "is missing");
  for (int i = 0; i < sources.size(); ++i) check.at("sources", i).text("text", sources[i].text(), 1, 500);
}

absl::Status check(const v1::Exercise& exercise) {
  FieldCheck check;
  check.key("id", exercise.id());
  check.range("revision", exercise.revision(), 1, 1000000);
  check.enums(exercise);
  check.that(!exercise.muscles().empty(), "muscles", "is missing");
  check.that(!exercise.supports().empty(), "supports", "is missing");
  check.that(!exercise.side_policies().empty(), "side_policies", "is missing");
  checkDose(check.at("default_dose"), exercise.default_dose());
  check.that(kindOf(exercise.default_dose()) == exercise.dose_kind(), "default_dose", "is not of dose_kind");
  checkParts(check, exercise);
  check.that(exercise.has_fit() && !exercise.fit().usual_levels().empty(), "fit.usual_levels", "is missing");
  check.that(exercise.fit().least_mobility() != v1::MOBILITY_LEVEL_UNSPECIFIED, "fit.least_mobility",
             "MOBILITY_LEVEL_UNSPECIFIED is not a value");
  checkLadder(check, exercise);
  for (int i = 0; i < exercise.tags_size(); ++i)
    check.key("tags[" + std::to_string(i) + "]", exercise.tags(i));
  checkSources(check, exercise.sources());
  check.range("get_ready_s", exercise.get_ready_s(), 3, 60);
  check.range("change_side_s", exercise.change_side_s(), 0, 60);
  if (exercise.default_dose().passes().has_distance_m()) {
    check.range("step_length_cm", exercise.step_length_cm(), 10, 120);
  }
  return check.status();
}

absl::Status check(const v1::ExerciseWords& words) {
  FieldCheck check;
  check.key("exercise_id", words.exercise_id());
  check.language("language", words.language());
  check.text("title", words.title(), 1, 80);
  check.text("purpose", words.purpose(), 1, 300);
  check.text("start", words.start(), 1, 600);
  check.that(!words.cues().empty(), "cues", "is missing");
  for (const auto& [key, cue] : words.cues()) {
    FieldCheck at = check.at("cues[" + key + "]");
    at.text("screen", cue.screen(), 1, 300);
    at.text("spoken", cue.spoken(), 1, 300);
  }
  check.that(words.good_size() >= 2 && words.good_size() <= 4, "good", "needs two to four lines");
  for (int i = 0; i < words.faults_size(); ++i) {
    check.at("faults", i).text("seen", words.faults(i).seen(), 1, 300);
    check.at("faults", i).text("mend", words.faults(i).mend(), 1, 300);
  }
  check.that(!words.faults().empty(), "faults", "is missing");
  check.text("breathing", words.breathing(), 1, 300);
  check.that(!words.stop_if().empty(), "stop_if", "is missing");
  check.that(!words.cautions().empty(), "cautions", "is missing");
  check.text("support", words.support(), 1, 300);
  return check.status();
}

}  // namespace newel
