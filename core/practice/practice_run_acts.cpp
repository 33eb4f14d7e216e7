#include <algorithm>
#include <utility>

#include "core/practice/practice_run_impl.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

// More than any clock's own drift in a practice, less than anybody sets a clock by.
constexpr absl::Duration kWallMoved = absl::Seconds(5);

v1::Finding holdFinding(const v1::HoldOrder& order) {
  v1::Finding finding;
  finding.set_rule_id(kHoldOrderRule);
  finding.set_effect(v1::EFFECT_NOT_TODAY);
  finding.set_person(order.reason());
  finding.set_therapist(order.reason());
  finding.set_until(v1::UNTIL_CLINIC_SAYS);
  return finding;
}

}  // namespace

v1::JournalLine PracticeRun::Impl::line(v1::JournalKind kind, std::size_t entry) const {
  v1::JournalLine line;
  line.set_practice_id(m_input.practice_id);
  line.set_kind(kind);
  line.set_entry(static_cast<std::uint32_t>(entry));
  line.set_elapsed_ms(absl::ToInt64Milliseconds(m_now - m_origin));
  *line.mutable_at() = toTimestamp(m_wall);
  return line;
}

PracticeRun::Impl::Lines PracticeRun::Impl::linesOf(const std::vector<PlayerEvent>& events,
                                                    std::size_t entry) const {
  Lines lines;
  for (const PlayerEvent& event : events) {
    v1::JournalLine next = line(event.kind, entry);
    next.set_beat(event.beat);
    next.set_reason(event.reason);
    next.set_elapsed_ms(absl::ToInt64Milliseconds(event.at - m_origin));
    *next.mutable_at() = toTimestamp(m_wall - (m_now - event.at));
    lines.push_back(std::move(next));
  }
  return lines;
}

v1::JournalLine PracticeRun::Impl::closeLine(v1::PracticeEnd end, v1::StopReason reason) const {
  v1::JournalLine close = line(v1::JOURNAL_KIND_CLOSED);
  close.set_end(end);
  close.set_reason(reason);
  return close;
}

absl::Status PracticeRun::Impl::flush() {
  if (!m_queue.empty() || m_then) {
    if (absl::Status status = drain(); !status.ok()) return status;
  }
  while (!m_insisted.empty()) {
    const std::function<absl::Status()> call = m_insisted.front();
    m_insisted.erase(m_insisted.begin());
    if (absl::Status status = call(); !status.ok()) return status;
  }
  return absl::OkStatus();
}

absl::Status PracticeRun::Impl::ready(bool choice, absl::Time wall, absl::Duration now) {
  m_now = std::max(now, m_now);
  m_wall = wall;
  if (!m_queue.empty() || m_then || !m_insisted.empty()) {
    if (absl::Status status = flush(); !status.ok()) return status;
    if (choice) return absl::AbortedError("step: an earlier choice was kept only now; look again");
  }
  if (m_ledger.closed()) return absl::OkStatus();
  const absl::Duration offset = (wall - absl::UnixEpoch()) - m_now;
  if (absl::AbsDuration(offset - m_wall_offset) < kWallMoved) return absl::OkStatus();
  v1::JournalLine doubt = line(v1::JOURNAL_KIND_DOUBT);
  doubt.set_doubt(v1::CLOCK_DOUBT_WALL_MOVED);
  return act({doubt}, [this, offset] { m_wall_offset = offset; });
}

absl::Status PracticeRun::Impl::insist(absl::Time wall, absl::Duration now,
                                       const std::function<absl::Status()>& call) {
  m_now = std::max(now, m_now);
  m_wall = wall;
  m_insisted.push_back(call);
  return flush();
}

absl::Status PracticeRun::Impl::expect(RunStep step) const {
  if (m_step == step) return absl::OkStatus();
  return absl::FailedPreconditionError("step: not what can be done now");
}

absl::Status PracticeRun::Impl::playerAct(bool choice, absl::Time wall, absl::Duration now,
                                          const std::function<std::vector<PlayerEvent>(Player&)>& call) {
  if (absl::Status status = ready(choice, wall, now); !status.ok()) return status;
  if (absl::Status status = expect(RunStep::Playing); !status.ok()) return status;
  auto next = std::make_shared<Player>(*m_player);
  const std::vector<PlayerEvent> events = call(*next);
  // Nothing to keep means nothing that a kill could lose.
  if (events.empty()) {
    *m_player = std::move(*next);
    return absl::OkStatus();
  }
  return act(linesOf(events, entryIndex()), [this, next] { m_player = *next; });
}

absl::Status PracticeRun::Impl::stopPressed() {
  if (m_step == RunStep::WhatHappened) return absl::OkStatus();
  if (m_step == RunStep::Verdict || m_step == RunStep::Closed) return expect(RunStep::Playing);
  const std::size_t entry = entryIndex();
  Lines lines;
  auto next = m_player;
  if (m_step == RunStep::Playing) lines = linesOf(next->stop(m_now, v1::STOP_REASON_UNSPECIFIED), entry);
  // Outside an entry, and when its last beat ended before the tap.
  if (lines.empty() || lines.back().kind() != v1::JOURNAL_KIND_STOPPED)
    lines.push_back(line(v1::JOURNAL_KIND_STOPPED, entry));
  return act(
      std::move(lines), [this, next] { m_player = next; }, true);
}

absl::Status PracticeRun::Impl::stopReason(v1::StopReason reason) {
  v1::JournalLine stopped = line(v1::JOURNAL_KIND_STOPPED, m_ledger.stopEntry());
  stopped.set_reason(reason);
  return act({stopped}, nullptr);
}

absl::Status PracticeRun::Impl::skipEntry(v1::StopReason reason, const std::string& words) {
  const std::size_t entry = entryIndex();
  Lines lines;
  auto next = m_player;
  if (m_step == RunStep::Playing) {
    // What ended before the tap still counts; the stop itself is told by the line below.
    lines = linesOf(next->tick(m_now), entry);
    if (next->state() == PlayerState::Ended) return act(lines, [this, next] { m_player = next; });
    next->stop(m_now, reason);
  }
  v1::JournalLine skipped = line(v1::JOURNAL_KIND_ENTRY_SKIPPED, entry);
  skipped.set_reason(reason);
  skipped.set_words(words);
  lines.push_back(skipped);
  return act(lines, [this, next] { m_player = next; });
}

absl::Status PracticeRun::Impl::holdOrder(const v1::HoldOrder& order) {
  if (m_ledger.closed() || !order.lifts_id().empty()) return absl::OkStatus();
  const bool all = order.entry_ids().empty();
  const auto held = [&](std::size_t i) {
    const auto& ids = order.entry_ids();
    return all || std::find(ids.begin(), ids.end(), m_context.entries[i].id()) != ids.end();
  };
  Lines lines;
  auto next = m_player;
  const auto open = m_ledger.open();
  if (open && held(*open)) lines = linesOf(next->hold(m_now), *open);
  if (all && (lines.empty() || lines.back().kind() != v1::JOURNAL_KIND_HELD))
    lines.push_back(line(v1::JOURNAL_KIND_HELD, open.value_or(0)));
  for (std::size_t i = 0; !all && i < m_context.entries.size(); ++i) {
    if (!held(i) || m_ledger.entries()[i].over || m_ledger.entries()[i].begun) continue;
    v1::JournalLine skipped = line(v1::JOURNAL_KIND_ENTRY_SKIPPED, i);
    skipped.set_reason(v1::STOP_REASON_HOLD_ORDER);
    lines.push_back(skipped);
  }
  if (lines.empty()) return absl::OkStatus();
  for (v1::JournalLine& each : lines) {
    if (each.reason() == v1::STOP_REASON_HOLD_ORDER || each.kind() == v1::JOURNAL_KIND_HELD)
      each.set_detail_id(order.id());
  }
  if (all) lines.push_back(closeLine(v1::PRACTICE_END_HELD, v1::STOP_REASON_HOLD_ORDER));
  return act(
      std::move(lines),
      [this, next, order, all] {
        m_player = next;
        m_verdict = Verdict{{holdFinding(order)}, all};
        m_unread = true;
      },
      true);
}

absl::Status PracticeRun::Impl::close(bool interrupted) {
  if (m_ledger.closed()) {
    m_unread = false;
    m_step = derive();
    return absl::OkStatus();
  }
  const bool finished = !m_ledger.open() && !m_ledger.next() && !m_ledger.askingWhy();
  const v1::StopReason reason = interrupted ? v1::STOP_REASON_INTERRUPTED : v1::STOP_REASON_OTHER;
  Lines lines;
  auto next = m_player;
  if (m_ledger.open()) {
    lines = linesOf(next->stop(m_now, reason), *m_ledger.open());
  } else if (m_ledger.askingWhy()) {
    lines.push_back(line(v1::JOURNAL_KIND_STOPPED, m_ledger.stopEntry()));
    lines.back().set_reason(reason);
  }
  const v1::StopReason said = m_ledger.stopReason();
  const bool keep_said = !interrupted && lines.empty() && said != v1::STOP_REASON_UNSPECIFIED;
  const v1::PracticeEnd end = finished      ? v1::PRACTICE_END_FINISHED
                              : interrupted ? v1::PRACTICE_END_INTERRUPTED
                                            : v1::PRACTICE_END_STOPPED;
  lines.push_back(closeLine(end, keep_said ? said : reason));
  return act(
      std::move(lines),
      [this, next] {
        m_player = next;
        m_unread = false;
      },
      true);
}

}  // namespace newel
