#include "core/progress/attention.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <unordered_map>
#include <utility>

namespace newel {
namespace {

// Within one urgency, what a therapist should read first.
constexpr std::array<const char*, 28> kOrder = {
    "attention.red-flag",          "attention.fall",         "attention.hold-not-arrived",
    "attention.urgent-unseen",     "attention.stopped",      "attention.message-unread",
    "attention.pain-rising",       "attention.skin",         "attention.silent",
    "attention.programme-waiting", "attention.nothing-done", "attention.programme-ended",
    "attention.too-hard",          "attention.little-done",  "attention.ready",
    "attention.programme-ending",  "attention.measure-due",  "attention.on-hold",
    "attention.message-unseen",    "attention.never-heard",  "attention.stale",
    "attention.never-done",        "attention.no-programme", "attention.not-paired",
    "attention.no-data",           "attention.some-done",    "attention.all-done",
    "attention.nothing-due",
};

// Asked several times a row; behind all others for a key that is none.
std::size_t rankOf(std::string_view key) {
  static const std::unordered_map<std::string_view, std::size_t> kRanks = [] {
    std::unordered_map<std::string_view, std::size_t> ranks;
    for (std::size_t i = 0; i < kOrder.size(); ++i) ranks.emplace(kOrder[i], i);
    return ranks;
  }();
  const auto found = kRanks.find(key);
  return found == kRanks.end() ? kOrder.size() : found->second;
}

bool before(const AttentionReason& left, const AttentionReason& right) {
  if (left.urgency != right.urgency) return left.urgency < right.urgency;
  if (left.rank != right.rank) return left.rank < right.rank;
  return left.age.value_or(absl::ZeroDuration()) > right.age.value_or(absl::ZeroDuration());
}

std::string oneDecimal(double value) {
  const long tenths = std::lround(std::abs(value) * 10);
  return (value < 0 && tenths > 0 ? "-" : "") + std::to_string(tenths / 10) + "." +
         std::to_string(tenths % 10);
}

std::string days(absl::Duration age) { return std::to_string(age / absl::Hours(24)); }

class Row {
 public:
  Row(const AttentionFacts& facts, absl::Time now, absl::CivilDay today, int silent_after_days)
      : m_facts(facts), m_now(now), m_today(today), m_silent_after_days(silent_after_days) {
    m_row.person_id = facts.person_id;
    if (facts.last_contact) m_row.figures_age = ago(*facts.last_contact);
    m_row.figures = !m_row.figures_age                                       ? Figures::NeverHeard
                    : *m_row.figures_age > absl::Hours(24 * kStaleAfterDays) ? Figures::Stale
                                                                             : Figures::Fresh;
  }

  AttentionRow make() {
    addStops();
    addMessages();
    addProgramme();
    addContact();
    addPractice();
    addNextSteps();
    if (m_row.reasons.empty()) addState();
    std::stable_sort(m_row.reasons.begin(), m_row.reasons.end(), before);
    m_row.urgency = m_row.reasons.front().urgency;
    m_row.snoozed = isSnoozed();
    return std::move(m_row);
  }

 private:
  // A clock that is behind must not make a thing younger than nothing.
  absl::Duration ago(absl::Time since) const { return std::max(absl::ZeroDuration(), m_now - since); }

  void add(Urgency urgency, const std::string& key, std::map<std::string, std::string> args = {},
           std::optional<absl::Duration> age = std::nullopt,
           std::optional<absl::Time> last_at = std::nullopt) {
    m_row.reasons.push_back({urgency, key, std::move(args), age, rankOf(key), last_at});
  }

  void addSince(Urgency urgency, const std::string& key, absl::Time since,
                std::map<std::string, std::string> args = {}) {
    add(urgency, key, std::move(args), ago(since), since);
  }

  bool isSnoozed() const {
    if (!m_facts.snooze || !maySnooze(m_row) || m_today > m_facts.snooze->until) return false;
    const Snooze& snooze = *m_facts.snooze;
    return std::all_of(m_row.reasons.begin(), m_row.reasons.end(), [&](const AttentionReason& reason) {
      return reason.urgency >= snooze.urgency && snooze.keys.contains(reason.key) &&
             (!reason.last_at || *reason.last_at <= snooze.at);
    });
  }

  void addStops() {
    for (const auto& flag : m_facts.flags) {
      addSince(flag.red_flag ? Urgency::Now : Urgency::Today,
               flag.red_flag ? "attention.red-flag" : "attention.stopped", flag.at, {{"rule", flag.rule_id}});
    }
    addSign("attention.fall", m_facts.fall);
    addSign("attention.skin", m_facts.skin);
    if (m_facts.hold_waiting_since) {
      addSince(Urgency::Now, "attention.hold-not-arrived", *m_facts.hold_waiting_since);
    }
    if (m_facts.on_hold_since) addSince(Urgency::Soon, "attention.on-hold", *m_facts.on_hold_since);
  }

  // What a stop of the same practice says already is not said twice.
  void addSign(const char* key, const std::optional<ToldSign>& sign) {
    if (!sign) return;
    const bool said = std::any_of(m_facts.flags.begin(), m_facts.flags.end(),
                                  [&](const OpenFlag& flag) { return flag.at == sign->at; });
    if (!said) addSince(Urgency::Today, key, sign->at, {{"what", sign->what}});
  }

  void addMessages() {
    for (const auto& message : m_facts.unseen_by_person) {
      const absl::Duration age = ago(message.written_at);
      if (message.urgent) {
        const bool late = age > absl::Hours(kUnseenAfterHours);
        addWaiting(late ? Urgency::Now : Urgency::Today, "attention.urgent-unseen", message);
      } else if (age > absl::Hours(kPlainUnseenAfterHours)) {
        addWaiting(Urgency::Soon, "attention.message-unseen", message);
      }
    }
    for (const auto& message : m_facts.unread_by_clinic) {
      addWaiting(message.urgent ? Urgency::Now : Urgency::Today, "attention.message-unread", message);
    }
  }

  void addWaiting(Urgency urgency, const char* key, const WaitingMessage& message) {
    add(urgency, key, {{"count", std::to_string(message.count)}}, ago(message.written_at),
        message.last_at.value_or(message.written_at));
  }

  void addProgramme() {
    if (!m_facts.programme_number) {
      add(Urgency::Soon, "attention.no-programme");
      return;
    }
    const std::map<std::string, std::string> number = {{"number", std::to_string(*m_facts.programme_number)}};
    if (m_facts.programme_waiting_since) {
      const absl::Duration age = ago(*m_facts.programme_waiting_since);
      if (age > absl::Hours(kNotArrivedAfterHours)) {
        add(Urgency::Today, "attention.programme-waiting", number, age);
      }
    }
    if (!m_facts.programme_end) return;
    const auto left = static_cast<int>(*m_facts.programme_end - m_today);
    if (left < 0) {
      add(Urgency::Today, "attention.programme-ended", {{"days", std::to_string(-left)}});
    } else if (left <= kEndsWithinDays) {
      add(Urgency::Soon, "attention.programme-ending", {{"days", std::to_string(left)}});
    }
  }

  void addContact() {
    if (!m_facts.paired) {
      add(Urgency::Soon, "attention.not-paired");
    } else if (!m_row.figures_age) {
      add(Urgency::Soon, "attention.never-heard");
    } else if (*m_row.figures_age > absl::Hours(24 * m_silent_after_days)) {
      add(Urgency::Today, "attention.silent", {{"days", days(*m_row.figures_age)}}, m_row.figures_age);
    } else if (m_row.figures == Figures::Stale) {
      add(Urgency::Soon, "attention.stale", {{"days", days(*m_row.figures_age)}}, m_row.figures_age);
    }
  }

  std::map<std::string, std::string> shareArgs() const {
    return {{"done", std::to_string(m_facts.share.counted)},
            {"due", std::to_string(m_facts.share.due)},
            {"no_data", std::to_string(m_facts.no_data)}};
  }

  void addPractice() {
    addPain();
    if (m_facts.missed_since_done >= kFewestDue) {
      std::map<std::string, std::string> args = shareArgs();
      args["missed"] = std::to_string(m_facts.missed_since_done);
      if (!m_facts.last_done) {
        add(Urgency::Soon, "attention.never-done", std::move(args));
        return;
      }
      const auto days_since = std::max<absl::civil_diff_t>(0, m_today - *m_facts.last_done);
      if (days_since >= kNothingDoneDays) {
        args["days"] = std::to_string(days_since);
        add(Urgency::Today, "attention.nothing-done", std::move(args));
        return;
      }
    }
    const auto capped = m_facts.share.capped();
    if (capped && m_facts.share.due >= kFewestDue && *capped < kLittleDone) {
      add(Urgency::Soon, "attention.little-done", shareArgs());
    }
  }

  // A rise is one that matters (Farrar's measure) and goes the same way in most pairs of ratings, so that
  // three bad days among good ones are none.
  void addPain() {
    const auto& ratings = m_facts.pain_ratings;
    if (ratings.empty() || m_today - ratings.back().day > kPainIsNewsDays) return;
    const PainCourse course = painCourseOf(ratings);
    if (!course.change || !(course.change->by_points || course.change->by_percent)) return;
    if (course.change->points < kLeastRise || course.slope_per_week.value_or(1) <= 0) return;
    const auto days_old = std::max<absl::civil_diff_t>(0, m_today - ratings.back().day);
    add(Urgency::Today, "attention.pain-rising",
        {{"points", oneDecimal(course.change->points)},
         {"slope", course.slope_per_week ? oneDecimal(*course.slope_per_week) : ""},
         {"days", std::to_string(days_old)}});
  }

  void addNextSteps() {
    const auto count = [](const std::vector<std::string>& ids) {
      return std::map<std::string, std::string>{{"count", std::to_string(ids.size())},
                                                {"first", ids.front()}};
    };
    if (!m_facts.too_hard.empty()) add(Urgency::Soon, "attention.too-hard", count(m_facts.too_hard));
    if (!m_facts.ready.empty()) add(Urgency::Soon, "attention.ready", count(m_facts.ready));
    if (m_facts.measure_due && m_facts.measure_due->due <= m_today) {
      add(Urgency::Soon, "attention.measure-due",
          {{"kind", m_facts.measure_due->kind_id},
           {"days", std::to_string(m_today - m_facts.measure_due->due)}});
    }
  }

  void addState() {
    if (m_facts.no_data > 0) {
      add(Urgency::None, "attention.no-data", shareArgs());
    } else if (m_facts.share.due == 0) {
      add(Urgency::None, "attention.nothing-due", shareArgs());
    } else if (m_facts.share.counted < m_facts.share.due) {
      add(Urgency::None, "attention.some-done", shareArgs());
    } else {
      add(Urgency::None, "attention.all-done", shareArgs());
    }
  }

  const AttentionFacts& m_facts;
  absl::Time m_now;
  absl::CivilDay m_today;
  int m_silent_after_days;
  AttentionRow m_row;
};

}  // namespace

AttentionRow attentionRow(const AttentionFacts& facts, absl::Time now, absl::CivilDay today,
                          int silent_after_days) {
  return Row(facts, now, today, silent_after_days).make();
}

bool comesBefore(const AttentionRow& left, const AttentionRow& right) {
  if (left.snoozed != right.snoozed) return right.snoozed;
  if (before(left.reasons.front(), right.reasons.front())) return true;
  if (before(right.reasons.front(), left.reasons.front())) return false;
  return left.person_id < right.person_id;
}

bool maySnooze(const AttentionRow& row) {
  return row.urgency != Urgency::Now && row.urgency != Urgency::None &&
         std::none_of(row.reasons.begin(), row.reasons.end(), [](const AttentionReason& reason) {
           return reason.key == "attention.red-flag" || reason.key == "attention.fall";
         });
}

std::vector<AttentionRow> attentionList(const std::vector<AttentionFacts>& people, absl::Time now,
                                        absl::CivilDay today, int silent_after_days) {
  std::vector<AttentionRow> rows;
  rows.reserve(people.size());
  for (const auto& facts : people) rows.push_back(attentionRow(facts, now, today, silent_after_days));
  return mostUrgentFirst(std::move(rows));
}

std::vector<AttentionRow> mostUrgentFirst(std::vector<AttentionRow> rows) {
  // Places are sorted in place of rows, which are long.
  std::vector<const AttentionRow*> order;
  order.reserve(rows.size());
  for (const auto& row : rows) order.push_back(&row);
  std::sort(order.begin(), order.end(),
            [](const AttentionRow* left, const AttentionRow* right) { return comesBefore(*left, *right); });
  std::vector<AttentionRow> sorted;
  sorted.reserve(rows.size());
  for (const AttentionRow* row : order)
    sorted.push_back(std::move(rows[static_cast<std::size_t>(row - rows.data())]));
  return sorted;
}

}  // namespace newel
