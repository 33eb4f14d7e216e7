#include "core/progress/progression.h"

#include <google/protobuf/util/message_differencer.h>

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>
#include <utility>

#include "core/progress/progression_judge.h"

namespace newel {
namespace {

using google::protobuf::util::MessageDifferencer;
using State = OccasionResult::State;

const v1::Entry* entryIn(const v1::Programme& programme, const std::string& entry_id) {
  for (const auto& entry : programme.entries()) {
    if (entry.id() == entry_id) return &entry;
  }
  return nullptr;
}

// The same work: what a practice under one says about the other.
bool sameWork(const v1::Entry& a, const v1::Entry& b) {
  return a.exercise_id() == b.exercise_id() && a.exercise_revision() == b.exercise_revision() &&
         a.side_policy() == b.side_policy() && a.support() == b.support() &&
         a.prosthesis() == b.prosthesis() && a.rung_id() == b.rung_id() &&
         MessageDifferencer::Equals(a.dose(), b.dose());
}

// Numbers of the programmes, last backwards, that ask for the work of `entry`, and the first day of the
// oldest.
struct Since {
  std::set<std::uint32_t> numbers;
  std::string day;
};

Since sinceWhen(const std::vector<const v1::Programme*>& newest_first, const v1::Entry& entry) {
  Since since;
  for (const auto* programme : newest_first) {
    const v1::Entry* then = entryIn(*programme, entry.id());
    if (then == nullptr || !sameWork(*then, entry)) break;
    since.numbers.insert(programme->number());
    since.day = programme->effective_day();
  }
  return since;
}

// A practice, or an occasion that was missed or not heard of, on its place in time.
struct Item {
  std::string day;
  std::uint32_t window = 0;
  std::int64_t started_s = 0;
  const v1::Practice* practice = nullptr;
  const v1::EntryDone* done = nullptr;
  State state = State::Done;
};

bool newer(const Item& a, const Item& b) {
  return std::tie(a.day, a.window, a.started_s) > std::tie(b.day, b.window, b.started_s);
}

std::vector<Item> itemsOf(const v1::Entry& entry, const Since& since,
                          const std::vector<v1::Practice>& practices,
                          const std::vector<OccasionResult>& occasions) {
  std::vector<Item> items;
  for (const auto& practice : practices) {
    if (!since.numbers.contains(practice.programme_number())) continue;
    for (const auto& done : practice.entries()) {
      if (done.occasion().entry_id() != entry.id()) continue;
      items.push_back({practice.local_day(), done.occasion().window(), practice.started_at().seconds(),
                       &practice, &done, State::Done});
    }
  }
  for (const auto& occasion : occasions) {
    if (occasion.ref.entry_id() != entry.id() || occasion.ref.local_day() < since.day) continue;
    if (occasion.state != State::NotDone && occasion.state != State::NoData) continue;
    items.push_back({occasion.ref.local_day(), occasion.ref.window(), 0, nullptr, nullptr, occasion.state});
  }
  std::stable_sort(items.begin(), items.end(), newer);
  return items;
}

struct Rows {
  int good = 0;
  int too_hard = 0;
  bool red_flag = false;
  std::vector<EvidenceLine> lines;
};

Rows rowsOf(const v1::Entry& entry, const std::vector<Item>& items) {
  const auto& rule = entry.progression();
  const int looks_at = static_cast<int>(std::max(rule.practices(), rule.step_back_practices()));
  Rows rows;
  bool good_goes_on = true;
  bool hard_goes_on = true;
  int seen = 0;
  for (const Item& item : items) {
    if (seen >= looks_at) break;
    if (item.practice == nullptr) {
      if (!rule.nothing_missed()) continue;
      const bool missed = item.state == State::NotDone;
      if (good_goes_on) {
        rows.lines.push_back({missed ? "progress.missed" : "progress.not-heard", {{"day", item.day}}, false});
      }
      good_goes_on = false;
      continue;
    }
    ++seen;
    JudgedPractice judged = judgePractice(entry, *item.practice, *item.done);
    good_goes_on = good_goes_on && judged.good;
    hard_goes_on = hard_goes_on && judged.too_hard;
    rows.good += good_goes_on ? 1 : 0;
    rows.too_hard += hard_goes_on ? 1 : 0;
    rows.red_flag = rows.red_flag || judged.red_flag;
    std::move(judged.lines.begin(), judged.lines.end(), std::back_inserter(rows.lines));
  }
  if (seen == 0) rows.lines.push_back({"progress.no-practice", {}, false});
  return rows;
}

Advice adviceFrom(const v1::ProgressionRule& rule, const Rows& rows) {
  if (rows.red_flag) return Advice::Hold;
  if (rule.step_back_practices() > 0 && rows.too_hard >= static_cast<int>(rule.step_back_practices()))
    return Advice::StepBack;
  return rows.good >= static_cast<int>(rule.practices()) ? Advice::Ready : Advice::Hold;
}

}  // namespace

absl::StatusOr<ProgressionAdvice> adviseProgression(const std::vector<v1::Programme>& programmes,
                                                    const std::string& entry_id,
                                                    const std::vector<v1::Practice>& practices,
                                                    const std::vector<OccasionResult>& occasions) {
  if (programmes.empty()) return absl::InvalidArgumentError("programmes: is missing");
  std::vector<const v1::Programme*> newest_first;
  newest_first.reserve(programmes.size());
  for (const auto& programme : programmes) newest_first.push_back(&programme);
  std::sort(newest_first.begin(), newest_first.end(),
            [](const auto* a, const auto* b) { return a->number() > b->number(); });
  const v1::Entry* entry = entryIn(*newest_first.front(), entry_id);
  if (entry == nullptr) {
    return absl::NotFoundError("entries: programme " + std::to_string(newest_first.front()->number()) +
                               " has no entry " + entry_id);
  }
  ProgressionAdvice advice;
  advice.entry_id = entry_id;
  if (!entry->has_progression()) return advice;
  const Since since = sinceWhen(newest_first, *entry);
  Rows rows = rowsOf(*entry, itemsOf(*entry, since, practices, occasions));
  advice.good_in_a_row = rows.good;
  advice.too_hard_in_a_row = rows.too_hard;
  advice.advice = adviceFrom(entry->progression(), rows);
  advice.evidence.push_back(
      {"progress.row",
       {{"good", std::to_string(rows.good)}, {"needed", std::to_string(entry->progression().practices())}},
       rows.good >= static_cast<int>(entry->progression().practices())});
  std::move(rows.lines.begin(), rows.lines.end(), std::back_inserter(advice.evidence));
  return advice;
}

const std::vector<std::string>& progressionKeys() {
  static const std::vector<std::string> kKeys = {
      "progress.row",
      "progress.no-practice",
      "progress.missed",
      "progress.not-heard",
      "progress.red-flag",
      "progress.told-later",
      "progress.stopped",
      "progress.sets-missing",
      "progress.last-set",
      "progress.goal-out-of-reach",
      "progress.dose-done",
      "progress.effort",
      "progress.effort-unknown",
      "progress.pain",
      "progress.pain-unknown",
      "progress.pain-too-much",
      "progress.little-done",
  };
  return kKeys;
}

}  // namespace newel
