#include "core/schedule/wear_plan.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "core/records/check.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr std::uint32_t kMinutesOfADay = 1440;

std::string text(std::uint32_t number) { return std::to_string(number); }

// Last revision of each block of this plan's person, in the order they were put on.
std::vector<const v1::WearBlock*> currentBlocks(const v1::WearPlan& plan,
                                                const std::vector<v1::WearBlock>& blocks) {
  std::map<std::string, const v1::WearBlock*> by_id;
  for (const auto& block : blocks) {
    if (block.person_id() != plan.person_id() || block.local_day() < plan.effective_day()) continue;
    const v1::WearBlock*& kept = by_id[block.id()];
    if (kept == nullptr || kept->revision() < block.revision()) kept = &block;
  }
  std::vector<const v1::WearBlock*> current;
  current.reserve(by_id.size());
  for (const auto& [id, block] : by_id) current.push_back(block);
  std::sort(current.begin(), current.end(), [](const auto* a, const auto* b) {
    return std::pair(a->put_on_at().seconds(), a->id()) < std::pair(b->put_on_at().seconds(), b->id());
  });
  return current;
}

// One day's wearing held against a step.
class DayJudge {
 public:
  DayJudge(const v1::WearPlan& plan, const v1::WearStep& step, std::vector<const v1::WearBlock*> blocks,
           std::string day)
      : m_plan(plan), m_step(step), m_blocks(std::move(blocks)), m_day(std::move(day)) {}

  // With what speaks against the day in `reasons`.
  bool good(std::vector<EvidenceLine>& reasons) const {
    if (m_blocks.empty()) return say(reasons, "wear.not-worn", {});
    for (const auto* block : m_blocks) {
      if (!block->has_taken_off_at()) return say(reasons, "wear.still-on", {});
      const SkinVerdict verdict = skinVerdict(*block, m_plan);
      // Red and harm have their own line, which stands longer than a day.
      if (verdict == SkinVerdict::TooRed || verdict == SkinVerdict::Harm) return false;
      if (verdict != SkinVerdict::Clear) return say(reasons, "wear.not-looked", {});
    }
    return m_step.all_day() || (amount(reasons) && breaks(reasons));
  }

 private:
  bool say(std::vector<EvidenceLine>& reasons, const std::string& key,
           std::map<std::string, std::string> args) const {
    args["day"] = m_day;
    reasons.push_back({key, std::move(args), false});
    return false;
  }

  bool amount(std::vector<EvidenceLine>& reasons) const {
    std::uint32_t worn = 0;
    for (const auto* block : m_blocks) {
      worn += wornMinutes(*block);
      if (wornMinutes(*block) > m_step.block_min() + m_plan.grace_min()) {
        return say(reasons, "wear.block-too-long",
                   {{"worn", text(wornMinutes(*block))}, {"planned", text(m_step.block_min())}});
      }
    }
    const std::uint32_t planned = plannedMinutes(m_step);
    const std::uint32_t grace = m_step.blocks() * m_plan.grace_min();
    const std::map<std::string, std::string> args = {{"worn", text(worn)}, {"planned", text(planned)}};
    if (worn > planned + grace) return say(reasons, "wear.too-much", args);
    if (worn + grace < planned) return say(reasons, "wear.too-little", args);
    return true;
  }

  bool breaks(std::vector<EvidenceLine>& reasons) const {
    for (std::size_t i = 1; i < m_blocks.size(); ++i) {
      const std::int64_t off_s =
          m_blocks[i]->put_on_at().seconds() - m_blocks[i - 1]->taken_off_at().seconds();
      const std::int64_t off_min = std::max<std::int64_t>(off_s, 0) / 60;
      if (off_min + m_plan.grace_min() < m_plan.off_min()) {
        return say(reasons, "wear.short-break",
                   {{"off", std::to_string(off_min)}, {"planned", text(m_plan.off_min())}});
      }
    }
    return true;
  }

  const v1::WearPlan& m_plan;
  const v1::WearStep& m_step;
  std::vector<const v1::WearBlock*> m_blocks;
  std::string m_day;
};

class PlanRun {
 public:
  PlanRun(const v1::WearPlan& plan, std::vector<const v1::WearBlock*> blocks)
      : m_plan(plan), m_blocks(std::move(blocks)), m_step(plan.first_step()) {}

  WearDay until(absl::CivilDay first, absl::CivilDay day) {
    m_day.day = day;
    m_day.step = m_step;
    if (day < first) {
      m_day.reasons.push_back({"wear.not-begun", {{"day", m_plan.effective_day()}}, false});
      return std::move(m_day);
    }
    for (absl::CivilDay past = first; past < day; ++past) finishDay(past);
    const std::string today = formatLocalDay(day);
    watchForHarm(today);
    m_day.step = m_step;
    m_day.good_days = m_good_days;
    tellDay(today);
    tellGate(today);
    return std::move(m_day);
  }

 private:
  const v1::WearStep& step() const { return m_plan.steps(static_cast<int>(m_step)); }
  bool isLastStep() const { return static_cast<int>(m_step) + 1 == m_plan.steps_size(); }

  std::vector<const v1::WearBlock*> blocksOf(const std::string& day) const {
    std::vector<const v1::WearBlock*> of_day;
    std::copy_if(m_blocks.begin(), m_blocks.end(), std::back_inserter(of_day),
                 [&](const auto* block) { return block->local_day() == day; });
    return of_day;
  }

  // The worst that was seen stands; once it stands nothing grows.
  void watchForHarm(const std::string& day) {
    for (const auto* block : blocksOf(day)) {
      const SkinVerdict verdict = skinVerdict(*block, m_plan);
      if (verdict != SkinVerdict::TooRed && verdict != SkinVerdict::Harm) continue;
      const bool harm = verdict == SkinVerdict::Harm;
      if (m_sign && (!harm || m_sign->second == SkinVerdict::Harm)) continue;
      m_sign = std::pair(day, verdict);
    }
  }

  void finishDay(absl::CivilDay past) {
    const std::string day = formatLocalDay(past);
    watchForHarm(day);
    std::vector<EvidenceLine> against;
    const bool good = DayJudge(m_plan, step(), blocksOf(day), day).good(against);
    m_last_day = std::move(against);
    if (!good || m_sign) return;
    ++m_good_days;
    m_last_day = {{"wear.good-day", {{"day", day}}, true}};
    if (m_good_days < step().days() || isLastStep()) return;
    ++m_step;
    m_good_days = 0;
  }

  void tellDay(const std::string& today) {
    for (const auto* block : blocksOf(today)) {
      ++m_day.blocks_worn;
      if (block->has_taken_off_at()) m_day.worn_min += wornMinutes(*block);
    }
    m_day.wearing =
        !m_blocks.empty() && !m_blocks.back()->has_taken_off_at() && m_blocks.back()->local_day() == today;
    m_day.reasons.push_back({"wear.step",
                             {{"step", std::to_string(m_step + 1)},
                              {"of", std::to_string(m_plan.steps_size())},
                              {"good", text(m_good_days)},
                              {"needed", text(step().days())}},
                             true});
    std::move(m_last_day.begin(), m_last_day.end(), std::back_inserter(m_day.reasons));
  }

  void tellGate(const std::string& today) {
    m_day.gate = WearGate::Wear;
    if (m_sign) {
      const bool harm = m_sign->second == SkinVerdict::Harm;
      const bool same_step = !harm && m_plan.redness_action() == v1::REDNESS_ACTION_SAME_STEP;
      m_day.gate = same_step ? WearGate::NoIncrease : WearGate::StayOff;
      m_day.call_clinic = true;
      m_day.reasons.push_back({harm ? "wear.harm" : "wear.too-red",
                               {{"day", m_sign->first}, {"minutes", text(m_plan.redness_min())}},
                               false});
    }
    if (m_day.gate != WearGate::StayOff && !m_day.wearing && mustLook()) {
      m_day.gate = WearGate::LookFirst;
      const bool off = m_blocks.back()->has_taken_off_at();
      m_day.reasons.push_back(
          {off ? "wear.look-first" : "wear.still-on", {{"day", m_blocks.back()->local_day()}}, false});
    }
    if (m_day.gate == WearGate::StayOff || m_day.gate == WearGate::LookFirst) return;
    if (step().all_day()) {
      m_day.blocks_left = 1;
      return;
    }
    m_day.block_min = step().block_min();
    m_day.blocks_left = step().blocks() - std::min(m_day.blocks_worn, step().blocks());
    // What earlier blocks of today ran over is not worn twice.
    const std::uint32_t left = plannedMinutes(step()) - std::min(m_day.worn_min, plannedMinutes(step()));
    if (m_day.blocks_left > 0) m_day.block_min = std::min(m_day.block_min, left);
    if (m_day.block_min == 0) m_day.blocks_left = 0;
    if (m_day.blocks_left == 0) m_day.reasons.push_back({"wear.done-today", {{"day", today}}, true});
  }

  // Only the newest block can still be looked at. One that was never taken off in the log needs its end
  // first.
  bool mustLook() const {
    if (m_blocks.empty()) return false;
    const SkinVerdict verdict = skinVerdict(*m_blocks.back(), m_plan);
    return verdict == SkinVerdict::NotLooked || verdict == SkinVerdict::Watching;
  }

  const v1::WearPlan& m_plan;
  std::vector<const v1::WearBlock*> m_blocks;
  std::size_t m_step;
  std::uint32_t m_good_days = 0;
  std::optional<std::pair<std::string, SkinVerdict>> m_sign;  // day, TooRed or Harm
  std::vector<EvidenceLine> m_last_day;                       // of the day before
  WearDay m_day;
};

}  // namespace

std::uint32_t wornMinutes(const v1::WearBlock& block) {
  return static_cast<std::uint32_t>((block.taken_off_at().seconds() - block.put_on_at().seconds()) / 60);
}

bool isSignOfHarm(int sign) { return sign != v1::SKIN_SIGN_CLEAR && sign != v1::SKIN_SIGN_RED; }

SkinVerdict skinVerdict(const v1::WearBlock& block, const v1::WearPlan& plan) {
  if (!block.has_check() || block.check().signs().empty()) return SkinVerdict::NotLooked;
  const auto& signs = block.check().signs();
  if (std::any_of(signs.begin(), signs.end(), isSignOfHarm)) return SkinVerdict::Harm;
  if (std::find(signs.begin(), signs.end(), v1::SKIN_SIGN_RED) == signs.end()) return SkinVerdict::Clear;
  if (!block.check().has_redness()) return SkinVerdict::Watching;
  const auto& redness = block.check().redness();
  if (redness.gone()) {
    return redness.watched_min() <= plan.redness_min() ? SkinVerdict::Clear : SkinVerdict::TooRed;
  }
  return redness.watched_min() >= plan.redness_min() ? SkinVerdict::TooRed : SkinVerdict::Watching;
}

absl::StatusOr<WearDay> wearDay(const v1::WearPlan& plan, const std::vector<v1::WearBlock>& blocks,
                                absl::CivilDay day) {
  if (absl::Status status = check(plan); !status.ok()) return status;
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    const absl::Status status = check(blocks[i]);
    if (status.ok()) continue;
    return absl::InvalidArgumentError("blocks[" + std::to_string(i) + "]: " + std::string(status.message()));
  }
  const auto first = parseLocalDay(plan.effective_day());
  if (!first.ok()) return first.status();
  auto current = currentBlocks(plan, blocks);
  // What happens after `day` cannot be known on it.
  const std::string last = formatLocalDay(day);
  current.erase(std::remove_if(current.begin(), current.end(),
                               [&](const auto* block) { return block->local_day() > last; }),
                current.end());
  return PlanRun(plan, std::move(current)).until(*first, day);
}

const v1::WearPlan* planInForce(const std::vector<v1::WearPlan>& plans, absl::CivilDay day) {
  const std::string today = formatLocalDay(day);
  const v1::WearPlan* found = nullptr;
  for (const auto& plan : plans) {
    if (plan.effective_day() > today) continue;
    if (found == nullptr || plan.number() > found->number()) found = &plan;
  }
  return found;
}

std::uint32_t plannedMinutes(const v1::WearStep& step) {
  return step.all_day() ? kMinutesOfADay : step.blocks() * step.block_min();
}

const std::vector<std::string>& wearKeys() {
  static const std::vector<std::string> kKeys = {
      "wear.not-begun",  "wear.step",           "wear.good-day",   "wear.not-worn",   "wear.still-on",
      "wear.not-looked", "wear.block-too-long", "wear.too-much",   "wear.too-little", "wear.short-break",
      "wear.too-red",    "wear.harm",           "wear.look-first", "wear.done-today",
  };
  return kKeys;
}

}  // namespace newel
