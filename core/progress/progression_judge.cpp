#include "core/progress/progression_judge.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string>

#include "core/progress/trend.h"

namespace newel {
namespace {

// What stopped it lies in the body and in this exercise.
bool isTooHard(v1::StopReason reason) {
  return reason == v1::STOP_REASON_PAIN || reason == v1::STOP_REASON_DIZZY ||
         reason == v1::STOP_REASON_UNSTEADY;
}

// Doing less says something about the dose only when nothing else came between.
bool isOfTheDose(v1::StopReason reason) {
  return reason == v1::STOP_REASON_UNSPECIFIED || reason == v1::STOP_REASON_TIRED || isTooHard(reason);
}

std::string wordOfReason(v1::StopReason reason) {
  std::string name = v1::StopReason_Name(reason).substr(std::string("STOP_REASON_").size());
  std::transform(name.begin(), name.end(), name.begin(),
                 [](char c) { return c == '_' ? '-' : static_cast<char>(c - 'A' + 'a'); });
  return name;
}

class Judge {
 public:
  Judge(const v1::Entry& entry, const v1::Practice& practice, const v1::EntryDone& done)
      : m_entry(entry), m_rule(entry.progression()), m_practice(practice), m_done(done) {}

  JudgedPractice run() {
    if (m_practice.end() == v1::PRACTICE_END_RED_FLAG) {
      m_judged.red_flag = true;
      say("progress.red-flag", {}, false);
    }
    if (m_practice.origin() == v1::ORIGIN_TOLD_LATER) say("progress.told-later", {}, false);
    // Not short-circuited: the therapist sees every reason, not the first.
    const bool whole = notStopped();
    const bool dose = m_entry.dose().has_sets() ? setsDone() : allDone();
    const bool effort = effortWithin();
    const bool pain = painWithin();
    m_judged.good = whole && dose && effort && pain && !m_judged.red_flag;
    m_judged.too_hard = m_rule.step_back_practices() > 0 && tooHard();
    return std::move(m_judged);
  }

 private:
  void say(const std::string& key, std::map<std::string, std::string> args, bool good) {
    args["day"] = m_practice.local_day();
    m_judged.lines.push_back({key, std::move(args), good});
  }

  bool notStopped() {
    if (m_done.skipped() == v1::STOP_REASON_UNSPECIFIED) return true;
    say("progress.stopped", {{"reason", wordOfReason(m_done.skipped())}}, false);
    return false;
  }

  // Repetitions of the last set by side; a set without a side counts both together.
  bool setsDone() {
    const std::uint32_t sets = m_entry.dose().sets().sets();
    std::uint32_t last = 0;
    for (const auto& set : m_done.sets()) last = std::max(last, set.set());
    if (last < sets) {
      say("progress.sets-missing", {{"done", std::to_string(last)}, {"asked", std::to_string(sets)}}, false);
      return false;
    }
    const std::uint32_t asked =
        m_rule.goal_repetitions() > 0 ? m_rule.goal_repetitions() : m_entry.dose().sets().repetitions();
    const std::uint32_t goal = asked + m_rule.repetitions_over_goal();
    const std::uint32_t least = leastInSet(last);
    const bool good = least >= goal;
    say("progress.last-set",
        {{"done", std::to_string(least)},
         {"goal", std::to_string(asked)},
         {"over", std::to_string(m_rule.repetitions_over_goal())}},
        good);
    // The phone leads through the dose and no further: such a rule can only be met by what is told later.
    if (!good && goal > m_entry.dose().sets().repetitions()) {
      say("progress.goal-out-of-reach",
          {{"goal", std::to_string(goal)}, {"asked", std::to_string(m_entry.dose().sets().repetitions())}},
          false);
    }
    return good;
  }

  // Of the side that did less.
  std::uint32_t leastInSet(std::uint32_t number) const {
    std::map<v1::Side, std::uint32_t> by_side;
    for (const auto& set : m_done.sets()) {
      if (set.set() == number) by_side[set.side()] += set.done().repetitions();
    }
    const bool both_sides = m_entry.side_policy() == v1::SIDE_POLICY_ALTERNATING ||
                            m_entry.side_policy() == v1::SIDE_POLICY_ONE_THEN_OTHER;
    if (both_sides && by_side.size() == 1) {
      // One side alone is named: the other did nothing. None is named: both together, in halves.
      const bool named = by_side.begin()->first != v1::SIDE_UNSPECIFIED;
      return named ? 0 : by_side.begin()->second / 2;
    }
    std::uint32_t least = by_side.begin()->second;
    for (const auto& [side, repetitions] : by_side) least = std::min(least, repetitions);
    return least;
  }

  bool allDone() {
    const bool good =
        m_done.asked().repetitions() > 0 && m_done.done().repetitions() >= m_done.asked().repetitions();
    say("progress.dose-done",
        {{"done", std::to_string(m_done.done().repetitions())},
         {"asked", std::to_string(m_done.asked().repetitions())}},
        good);
    return good;
  }

  bool effortWithin() {
    if (!m_done.has_effort_0_10()) {
      say("progress.effort-unknown", {}, false);
      return false;
    }
    const bool good = m_done.effort_0_10() <= m_rule.effort_at_most_0_10();
    say("progress.effort",
        {{"effort", std::to_string(m_done.effort_0_10())},
         {"limit", std::to_string(m_rule.effort_at_most_0_10())}},
        good);
    return good;
  }

  std::optional<int> painRise() const {
    const auto before = painBefore(m_practice, m_done);
    if (!before || !m_done.has_pain_after_0_10()) return std::nullopt;
    return static_cast<int>(m_done.pain_after_0_10()) - static_cast<int>(*before);
  }

  std::map<std::string, std::string> painArgs(std::uint32_t limit) const {
    return {{"before", std::to_string(painBefore(m_practice, m_done).value_or(0))},
            {"after", std::to_string(m_done.pain_after_0_10())},
            {"limit", std::to_string(limit)}};
  }

  bool painWithin() {
    const auto rise = painRise();
    if (!rise) {
      say("progress.pain-unknown", {}, false);
      return false;
    }
    const bool good = *rise <= static_cast<int>(m_rule.pain_rise_at_most_0_10());
    say("progress.pain", painArgs(m_rule.pain_rise_at_most_0_10()), good);
    return good;
  }

  bool tooHard() {
    bool hard = isTooHard(m_done.skipped());
    const auto rise = painRise();
    if (m_rule.step_back_pain_rise_0_10() > 0 && rise &&
        *rise >= static_cast<int>(m_rule.step_back_pain_rise_0_10())) {
      say("progress.pain-too-much", painArgs(m_rule.step_back_pain_rise_0_10()), false);
      hard = true;
    }
    const auto percent = donePercent();
    if (m_rule.step_back_done_percent() > 0 && percent && isOfTheDose(m_done.skipped()) &&
        *percent < m_rule.step_back_done_percent()) {
      say("progress.little-done",
          {{"percent", std::to_string(static_cast<int>(std::floor(*percent)))},
           {"limit", std::to_string(m_rule.step_back_done_percent())}},
          false);
      hard = true;
    }
    return hard;
  }

  // As adherence counts it: by repetitions or by time, whichever says more.
  std::optional<double> donePercent() const {
    std::optional<double> percent;
    if (m_done.asked().repetitions() > 0)
      percent = 100.0 * m_done.done().repetitions() / m_done.asked().repetitions();
    if (m_done.asked().active_ms() > 0) {
      const double by_time = 100.0 * static_cast<double>(m_done.done().active_ms()) /
                             static_cast<double>(m_done.asked().active_ms());
      percent = std::max(percent.value_or(0), by_time);
    }
    return percent;
  }

  const v1::Entry& m_entry;
  const v1::ProgressionRule& m_rule;
  const v1::Practice& m_practice;
  const v1::EntryDone& m_done;
  JudgedPractice m_judged;
};

}  // namespace

JudgedPractice judgePractice(const v1::Entry& entry, const v1::Practice& practice,
                             const v1::EntryDone& done) {
  return Judge(entry, practice, done).run();
}

}  // namespace newel
