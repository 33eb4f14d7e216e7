#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

constexpr int kMostSteps = 8;
constexpr int kFewestSteps = 2;

void checkDays(const FieldCheck& check, const v1::Weekdays& days) {
  const FieldCheck& at = check;
  at.that(!days.days().empty(), "days", "is missing");
  std::set<int> seen;
  for (int i = 0; i < days.days_size(); ++i) {
    const std::string field = "days[" + std::to_string(i) + "]";
    at.that(days.days(i) != v1::WEEKDAY_UNSPECIFIED && v1::Weekday_IsValid(days.days(i)), field, "is no day");
    at.that(seen.insert(days.days(i)).second, field, "is given twice");
  }
}

}  // namespace

void checkAdviceEntry(const FieldCheck& check, const v1::AdviceEntry& entry) {
  check.key("card_id", entry.card_id());
  check.range("card_revision", entry.card_revision(), 1, 1000000);
  checkDays(check.at("days"), entry.days());
  check.text("note", entry.note(), 0, 1000);
}

absl::Status check(const v1::AdviceCard& card) {
  FieldCheck check;
  check.key("id", card.id());
  check.range("revision", card.revision(), 1, 1000000);
  check.enums(card);
  checkDays(check.at("usual_days"), card.usual_days());
  checkStatedSources(check, card.sources());
  return check.status();
}

absl::Status check(const v1::AdviceWords& words) {
  FieldCheck check;
  check.key("card_id", words.card_id());
  check.language("language", words.language());
  check.text("title", words.title(), 1, 100);
  check.text("why", words.why(), 1, 400);
  check.that(words.steps_size() >= kFewestSteps && words.steps_size() <= kMostSteps, "steps",
             "needs two to eight lines");
  for (int i = 0; i < words.steps_size(); ++i)
    check.text("steps[" + std::to_string(i) + "]", words.steps(i), 1, 400);
  check.that(!words.call_if().empty(), "call_if", "is missing: when to phone, and whom");
  for (int i = 0; i < words.call_if_size(); ++i)
    check.text("call_if[" + std::to_string(i) + "]", words.call_if(i), 1, 400);
  check.text("log_question", words.log_question(), 0, 200);
  return check.status();
}

}  // namespace newel
