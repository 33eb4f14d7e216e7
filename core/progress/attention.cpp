#include "core/progress/attention.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/progress/pain_change.h"

namespace newel {
namespace {

// Within one urgency, what a therapist should read first.
constexpr std::array<const char*, 21> kOrder = {
    "attention.red-flag",          "attention.hold-not-arrived",
    "attention.urgent-unseen",     "attention.stopped",
    "attention.message-unread",    "attention.silent",
    "attention.programme-waiting", "attention.pain-rising",
    "attention.programme-ended",   "attention.programme-ending",
    "attention.on-hold",           "attention.message-unseen",
    "attention.never-heard",       "attention.stale",
    "attention.little-done",       "attention.no-programme",
    "attention.not-paired",        "attention.no-data",
    "attention.some-done",         "attention.all-done",
    "attention.nothing-due",
};

std::size_t orderOf(const AttentionReason& reason) {
  return static_cast<std::size_t>(std::find(kOrder.begin(), kOrder.end(), reason.key) - kOrder.begin());
}

bool before(const AttentionReason& left, const AttentionReason& right) {
  if (left.urgency != right.urgency) return left.urgency < right.urgency;
  if (left.key != right.key) return orderOf(left) < orderOf(right);
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
    if (m_row.reasons.empty()) addState();
    std::stable_sort(m_row.reasons.begin(), m_row.reasons.end(), before);
    m_row.urgency = m_row.reasons.front().urgency;
    return std::move(m_row);
  }

 private:
  // A clock that is behind must not make a thing younger than nothing.
  absl::Duration ago(absl::Time since) const { return std::max(absl::ZeroDuration(), m_now - since); }

  void add(Urgency urgency, const std::string& key, std::map<std::string, std::string> args = {},
           std::optional<absl::Duration> age = std::nullopt) {
    m_row.reasons.push_back({urgency, key, std::move(args), age});
  }

  void addStops() {
    for (const auto& flag : m_facts.flags) {
      add(flag.red_flag ? Urgency::Now : Urgency::Today,
          flag.red_flag ? "attention.red-flag" : "attention.stopped", {{"rule", flag.rule_id}}, ago(flag.at));
    }
    if (m_facts.hold_waiting_since) {
      add(Urgency::Now, "attention.hold-not-arrived", {}, ago(*m_facts.hold_waiting_since));
    }
    if (m_facts.on_hold_since) {
      add(Urgency::Soon, "attention.on-hold", {}, ago(*m_facts.on_hold_since));
    }
  }

  void addMessages() {
    for (const auto& message : m_facts.unseen_by_person) {
      const absl::Duration age = ago(message.written_at);
      if (message.urgent) {
        const bool late = age > absl::Hours(kUnseenAfterHours);
        add(late ? Urgency::Now : Urgency::Today, "attention.urgent-unseen", {}, age);
      } else if (age > absl::Hours(kPlainUnseenAfterHours)) {
        add(Urgency::Soon, "attention.message-unseen", {}, age);
      }
    }
    for (const auto& message : m_facts.unread_by_clinic) {
      add(message.urgent ? Urgency::Now : Urgency::Today, "attention.message-unread", {},
          ago(message.written_at));
    }
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
    const auto trend = painTrend(m_facts.pain_ratings);
    if (trend && trend->points > 0 && (trend->by_points || trend->by_percent)) {
      add(Urgency::Today, "attention.pain-rising", {{"points", oneDecimal(trend->points)}});
    }
    const auto capped = m_facts.share.capped();
    if (capped && m_facts.share.due >= kFewestDue && *capped < kLittleDone) {
      add(Urgency::Soon, "attention.little-done", shareArgs());
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

std::vector<AttentionRow> attentionList(const std::vector<AttentionFacts>& people, absl::Time now,
                                        absl::CivilDay today, int silent_after_days) {
  std::vector<AttentionRow> rows;
  rows.reserve(people.size());
  for (const auto& facts : people) rows.push_back(Row(facts, now, today, silent_after_days).make());
  std::stable_sort(rows.begin(), rows.end(), [](const AttentionRow& left, const AttentionRow& right) {
    if (before(left.reasons.front(), right.reasons.front())) return true;
    if (before(right.reasons.front(), left.reasons.front())) return false;
    return left.person_id < right.person_id;
  });
  return rows;
}

}  // namespace newel
