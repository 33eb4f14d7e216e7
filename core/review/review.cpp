#include "core/review/review.h"

#include <optional>
#include <set>

#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/review/week.h"
#include "core/safety/facts.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr int kMostEntries = 20;

absl::Status under(const std::string& path, const absl::Status& status) {
  return absl::InvalidArgumentError(path + std::string(status.message()));
}

absl::Status checkDraft(const v1::Programme& draft) {
  if (draft.entries().empty()) return absl::InvalidArgumentError("entries: is missing");
  if (draft.entries_size() > kMostEntries) return absl::InvalidArgumentError("entries: more than 20");
  const auto first = parseLocalDay(draft.effective_day());
  if (!first.ok()) return under("effective_day: ", first.status());
  const auto last = parseLocalDay(draft.end_day());
  if (!last.ok()) return under("end_day: ", last.status());
  if (*last < *first) return absl::InvalidArgumentError("end_day: is before effective_day");
  std::set<std::string> ids;
  for (int i = 0; i < draft.entries_size(); ++i) {
    const std::string path = "entries[" + std::to_string(i) + "].";
    const absl::Status schedule = check(draft.entries(i).schedule());
    if (!schedule.ok()) return under(path + "schedule.", schedule);
    if (!ids.insert(draft.entries(i).id()).second) {
      return absl::InvalidArgumentError(path + "id: is given twice");
    }
  }
  return absl::OkStatus();
}

void answerAsks(const v1::Programme& draft, std::vector<v1::Finding>& findings) {
  for (auto& finding : findings) {
    if (finding.effect() != v1::EFFECT_ASK) continue;
    for (const auto& entry : draft.entries()) {
      for (const auto& answered : entry.overrides()) {
        if (answered.rule_id() == finding.rule_id()) finding.set_overridden_reason(answered.reason());
      }
    }
  }
}

// The one thing about a photo or clip that only the therapist can mend.
std::string mediaProblem(const v1::Entry& entry) {
  const auto wordless = [](const v1::MediaRef& media) {
    return media.words().find_first_not_of(" \t\r\n") == std::string::npos;
  };
  if (entry.has_photo() && wordless(entry.photo())) return "say in words what the photo shows";
  if (entry.has_clip() && wordless(entry.clip())) return "say in words what the clip shows";
  return "";
}

EntryReview reviewEntry(const v1::Entry& entry, const v1::Person& person, const Catalogue& catalogue,
                        const RuleBook& rules, const std::string& language) {
  EntryReview review;
  review.entry_id = entry.id();
  review.problem = mediaProblem(entry);
  auto findings = rules.check(entry, person, catalogue);
  if (findings.ok()) {
    review.findings = *std::move(findings);
  } else if (review.problem.empty()) {
    review.problem = std::string(findings.status().message());
  }
  const auto timeline = compileTimeline(entry, person, catalogue, language);
  if (timeline.ok()) {
    review.total_ms = timeline->total_ms();
    review.asked = timeline->asked();
  } else if (review.problem.empty()) {
    review.problem = std::string(timeline.status().message());
  }
  return review;
}

}  // namespace

absl::StatusOr<Review> reviewProgramme(const v1::Programme& draft, const v1::Person& person,
                                       const v1::Programme* last, const Catalogue& catalogue,
                                       const RuleBook& rules, const std::string& language) {
  const absl::Status person_status = check(person);
  if (!person_status.ok()) return under("person.", person_status);
  const absl::Status status = checkDraft(draft);
  if (!status.ok()) return status;
  Review review;
  Week week;
  review.may_sign = true;
  for (const auto& entry : draft.entries()) {
    review.entries.push_back(reviewEntry(entry, person, catalogue, rules, language));
    const EntryReview& one = review.entries.back();
    week.add(entry, one.total_ms, catalogue);
    review.may_sign = review.may_sign && one.problem.empty() && maySign(one.findings);
  }
  review.minutes_by_weekday = week.minutes;
  std::optional<Week> before;
  if (last != nullptr) {
    before = weekOf(*last, person, catalogue);
    review.changes = changesBetween(*last, draft, catalogue, language);
  }
  review.programme_findings =
      rules.checkProgramme(merged({factsOf(person), programmeFacts(draft, week, before)}), person.language());
  answerAsks(draft, review.programme_findings);
  review.may_sign = review.may_sign && maySign(review.programme_findings);
  return review;
}

}  // namespace newel
