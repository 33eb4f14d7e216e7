#include "core/review/start_from.h"

#include <algorithm>
#include <optional>

#include "core/library/default_entry.h"
#include "core/library/templates.h"
#include "core/practice/compile.h"

namespace newel {
namespace {

std::optional<LeftOut> leftOut(const v1::Entry& entry, const v1::Person& person, const Catalogue& catalogue,
                               const RuleBook& rules) {
  const auto findings = rules.check(entry, person, catalogue);
  if (!findings.ok()) return LeftOut{entry.exercise_id(), LeftOut::Why::NotThere, ""};
  // Blocks come first; and a rule's reason says more than that it cannot be put into beats.
  if (!findings->empty() && findings->front().effect() == v1::EFFECT_BLOCK) {
    return LeftOut{entry.exercise_id(), LeftOut::Why::Blocked, findings->front().therapist()};
  }
  // The compiler wants what the draft gives later.
  v1::Entry whole = entry;
  whole.set_id("00000000-0000-7000-8000-000000000000");
  whole.mutable_schedule()->set_times_per_week(1);
  if (whole.schedule().windows().empty()) whole.mutable_schedule()->add_windows()->set_to_min(1440);
  const auto timeline = compileTimeline(whole, person, catalogue, "en");
  if (timeline.ok()) return std::nullopt;
  const bool no_meaning = timeline.status().code() == absl::StatusCode::kFailedPrecondition;
  return LeftOut{entry.exercise_id(), no_meaning ? LeftOut::Why::NoMeaning : LeftOut::Why::NotThere, ""};
}

bool isUsualFor(const v1::Exercise& exercise, const v1::Person& person) {
  const auto& levels = exercise.fit().usual_levels();
  return person.mobility() >= exercise.fit().least_mobility() &&
         std::all_of(person.limbs().begin(), person.limbs().end(), [&levels](const v1::LimbLoss& limb) {
           return std::find(levels.begin(), levels.end(), limb.level()) != levels.end();
         });
}

bool nothingAgainst(const v1::Exercise& exercise, const v1::Person& person, const Catalogue& catalogue,
                    const RuleBook& rules) {
  const v1::Entry entry = defaultEntry(exercise, person);
  const auto findings = rules.check(entry, person, catalogue);
  if (!findings.ok()) return false;
  const bool spoken_against = std::any_of(findings->begin(), findings->end(), [](const v1::Finding& finding) {
    return finding.effect() == v1::EFFECT_BLOCK || finding.effect() == v1::EFFECT_ASK;
  });
  return !spoken_against && !leftOut(entry, person, catalogue, rules).has_value();
}

}  // namespace

Beginning beginFrom(const v1::ProgrammeTemplate& programme_template, const v1::Person& person,
                    const Catalogue& catalogue, const RuleBook& rules) {
  Beginning beginning;
  for (const v1::TemplateEntry& from : programme_template.entries()) {
    const v1::Exercise* exercise = catalogue.find(from.exercise_id());
    if (exercise == nullptr) {
      beginning.left_out.push_back({from.exercise_id(), LeftOut::Why::NotThere, ""});
      continue;
    }
    v1::Entry entry = entryFrom(from, *exercise, person);
    if (auto left = leftOut(entry, person, catalogue, rules)) {
      beginning.left_out.push_back(*std::move(left));
    } else {
      beginning.entries.push_back(std::move(entry));
    }
  }
  return beginning;
}

std::vector<const v1::Exercise*> suggestedFor(const v1::Person& person, const Catalogue& catalogue,
                                              const RuleBook& rules) {
  std::vector<const v1::Exercise*> suggested;
  for (const v1::Exercise& exercise : catalogue.exercises()) {
    const bool newest = catalogue.find(exercise.id()) == &exercise;
    if (newest && isUsualFor(exercise, person) && nothingAgainst(exercise, person, catalogue, rules))
      suggested.push_back(&exercise);
  }
  return suggested;
}

}  // namespace newel
