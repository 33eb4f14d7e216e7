#include "core/review/review.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <numeric>
#include <optional>
#include <set>

#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/safety/facts.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr double kMsPerMinute = 60000;
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

// Days of the week on which the entry is done, Monday 0.
std::vector<std::size_t> daysOf(const v1::Schedule& schedule) {
  std::vector<std::size_t> days;
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    for (const auto day : spreadOverWeek(static_cast<int>(schedule.times_per_week()))) {
      days.push_back(static_cast<std::size_t>(day - v1::WEEKDAY_MONDAY));
    }
  } else {
    for (const int day : schedule.weekdays().days()) {
      days.push_back(static_cast<std::size_t>(day - v1::WEEKDAY_MONDAY));
    }
  }
  return days;
}

// Days from one strength day of a muscle to its next, over the week and into the next one.
int shortestGap(const std::set<std::size_t>& days) {
  constexpr int kWeek = 7;
  int shortest = kWeek;
  for (auto day = days.begin(); day != days.end(); ++day) {
    const auto next = std::next(day);
    const int to = static_cast<int>(next == days.end() ? *days.begin() + kWeek : *next);
    shortest = std::min(shortest, to - static_cast<int>(*day));
  }
  return shortest;
}

struct Week {
  std::array<double, 7> minutes{};
  std::array<int, 7> exercises{};
  std::map<std::string, std::set<std::size_t>> strength_days;  // by muscle

  void addStrength(const v1::Entry& entry, const Catalogue& catalogue) {
    const v1::Exercise* exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
    if (exercise == nullptr || exercise->purpose() != v1::PURPOSE_STRENGTH) return;
    for (const std::string& muscle : exercise->muscles()) {
      for (const std::size_t day : daysOf(entry.schedule())) strength_days[muscle].insert(day);
    }
  }
  // nullopt without strength work.
  std::optional<int> muscleGap() const {
    std::optional<int> gap;
    for (const auto& [muscle, days] : strength_days) gap = std::min(gap.value_or(7), shortestGap(days));
    return gap;
  }

  void add(const v1::Entry& entry, std::int64_t total_ms) {
    const double minutes_a_day =
        static_cast<double>(total_ms) * entry.schedule().windows_size() / kMsPerMinute;
    for (const std::size_t day : daysOf(entry.schedule())) {
      minutes[day] += minutes_a_day;
      ++exercises[day];
    }
  }
  double total() const { return std::accumulate(minutes.begin(), minutes.end(), 0.0); }
};

// nullopt when an entry of it cannot be compiled: a part of a week is not to be compared with a whole one.
std::optional<Week> weekOf(const v1::Programme& programme, const v1::Person& person,
                           const Catalogue& catalogue) {
  Week week;
  for (const auto& entry : programme.entries()) {
    const auto timeline = compileTimeline(entry, person, catalogue, "en");
    if (!timeline.ok() || !check(entry.schedule()).ok()) return std::nullopt;
    week.add(entry, timeline->total_ms());
  }
  return week;
}

Fact number(double value) { return {{}, value}; }

RuleFacts programmeFacts(const v1::Programme& draft, const Week& week, const std::optional<Week>& last) {
  RuleFacts facts;
  facts["programme.entries"] = number(draft.entries_size());
  facts["programme.exercises_per_day"] =
      number(*std::max_element(week.exercises.begin(), week.exercises.end()));
  facts["programme.minutes_per_day"] = number(*std::max_element(week.minutes.begin(), week.minutes.end()));
  facts["programme.days"] = number(
      static_cast<double>(*parseLocalDay(draft.end_day()) - *parseLocalDay(draft.effective_day()) + 1));
  if (const auto gap = week.muscleGap()) facts["programme.muscle_gap_days"] = number(*gap);
  if (draft.has_thresholds()) {
    facts["programme.pain_stop"] = number(draft.thresholds().pain_stop_0_10());
    facts["programme.pain_rise"] = number(draft.thresholds().pain_rise_0_10());
  }
  if (last && last->total() > 0) {
    facts["programme.minutes_rise_percent"] = number((week.total() - last->total()) / last->total() * 100);
  }
  return facts;
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
    week.add(entry, one.total_ms);
    week.addStrength(entry, catalogue);
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
