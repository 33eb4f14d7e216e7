#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"
#include "core/records/uuid7.h"

namespace newel {
namespace {

constexpr int kMostEntries = 20;
constexpr int kMostCards = 10;
constexpr int kMostMeasures = 10;

void checkFit(const FieldCheck& check, const v1::TemplateFit& fit) {
  check.that(!fit.levels().empty(), "levels", "is missing");
  std::set<int> levels;
  for (int i = 0; i < fit.levels_size(); ++i) {
    check.that(levels.insert(fit.levels(i)).second, "levels[" + std::to_string(i) + "]", "is given twice");
  }
  check.that(fit.least_mobility() <= fit.most_mobility(), "most_mobility", "is under least_mobility");
}

// Whose left that is depends on the person.
bool namesASide(v1::SidePolicy policy) {
  return policy == v1::SIDE_POLICY_LEFT || policy == v1::SIDE_POLICY_RIGHT;
}

void checkTemplateEntry(const FieldCheck& check, const v1::TemplateEntry& entry) {
  check.key("exercise_id", entry.exercise_id());
  if (!entry.rung_id().empty()) check.key("rung_id", entry.rung_id());
  if (entry.has_dose()) checkDose(check.at("dose"), entry.dose());
  check.that(!namesASide(entry.side_policy()), "side_policy", "names the left or the right side");
  check.that(entry.prosthesis() != v1::PROSTHESIS_USE_EITHER, "prosthesis", "is on, off or absent");
  checkSchedule(check.at("schedule"), entry.schedule());
  check.that(entry.schedule().pauses().empty(), "schedule.pauses", "a template has no days of its own");
  if (entry.has_progression()) checkProgression(check.at("progression"), entry.progression());
}

void checkTemplateWords(const FieldCheck& check, const v1::ProgrammeTemplate& value, bool own) {
  check.that(own ? !value.words().empty() : value.words().contains("en"), own ? "words" : "words[en]",
             "is missing");
  for (const auto& [language, words] : value.words()) {
    check.language("words", language);
    FieldCheck at = check.at("words[" + language + "]");
    at.text("name", words.name(), 1, 120);
    at.text("for_whom", words.for_whom(), own ? 0 : 1, 400);
  }
}

void checkTemplateCards(const FieldCheck& check, const v1::ProgrammeTemplate& value) {
  check.that(value.cards_size() <= kMostCards, "cards", "more than 10");
  std::set<std::string> ids;
  for (int i = 0; i < value.cards_size(); ++i) {
    FieldCheck at = check.at("cards", i);
    checkAdviceEntry(at, value.cards(i));
    at.that(value.cards(i).note().empty(), "note", "is for a person, not for a template");
    at.that(ids.insert(value.cards(i).card_id()).second, "card_id", "is given twice");
  }
}

void checkTemplateMeasures(const FieldCheck& check, const v1::ProgrammeTemplate& value) {
  check.that(value.measures_size() <= kMostMeasures, "measures", "more than 10");
  std::set<std::string> kinds;
  for (int i = 0; i < value.measures_size(); ++i) {
    FieldCheck at = check.at("measures", i);
    at.key("kind", value.measures(i).kind());
    at.that(kinds.insert(value.measures(i).kind()).second, "kind", "is given twice");
    at.range("after_weeks", value.measures(i).after_weeks(), 1, 52);
  }
}

// A plan for anybody: nothing that was written to a person, no days, no signature.
void checkTemplateWear(const FieldCheck& check, const v1::WearPlan& plan) {
  checkWearSteps(check, plan);
  check.that(plan.first_step() == 0, "first_step", "a template begins at the first");
  const bool nobodys = plan.id().empty() && plan.number() == 0 && plan.person_id().empty() &&
                       plan.clinic_id().empty() && plan.signer_id().empty() && plan.signer_name().empty() &&
                       !plan.has_issued_at() && plan.effective_day().empty() && plan.zone().empty();
  check.that(nobodys, "id", "or a number, signature, person or days, which are one person's");
  check.that(plan.note().empty(), "note", "is for a person, not for a template");
}

}  // namespace

bool isOwnTemplate(const v1::ProgrammeTemplate& programme_template) {
  return isUuid7(programme_template.id());
}

absl::Status check(const v1::ProgrammeTemplate& programme_template) {
  const bool own = isOwnTemplate(programme_template);
  FieldCheck check;
  if (!own) check.key("id", programme_template.id());
  check.enums(programme_template);
  checkTemplateWords(check, programme_template, own);
  check.that(own || programme_template.has_fit(), "fit", "is missing");
  if (programme_template.has_fit()) checkFit(check.at("fit"), programme_template.fit());
  check.that(!programme_template.entries().empty(), "entries", "is missing");
  check.that(programme_template.entries_size() <= kMostEntries, "entries", "more than 20");
  std::set<std::string> ids;
  for (int i = 0; i < programme_template.entries_size(); ++i) {
    FieldCheck at = check.at("entries", i);
    checkTemplateEntry(at, programme_template.entries(i));
    at.that(ids.insert(programme_template.entries(i).exercise_id()).second, "exercise_id", "is given twice");
  }
  checkTemplateCards(check, programme_template);
  checkTemplateMeasures(check, programme_template);
  if (programme_template.has_wear_plan())
    checkTemplateWear(check.at("wear_plan"), programme_template.wear_plan());
  check.range("weeks", programme_template.weeks(), 1, 52);
  if (own) {
    check.range("revision", programme_template.revision(), 1, 1000000);
    check.uuid("author_id", programme_template.author_id());
    check.text("author_name", programme_template.author_name(), 1, 200);
    check.that(programme_template.has_written_at(), "written_at", "is missing");
  } else {
    checkStatedSources(check, programme_template.sources());
  }
  return check.status();
}

}  // namespace newel
