#include <algorithm>
#include <utility>

#include "core/practice/practice_run_impl.h"

namespace newel {
namespace {

void placeInOrder(std::vector<v1::JournalLine>& lines, const Ledger& after) {
  auto sequence = after.nextSequence();
  auto elapsed_ms = after.lastElapsedMs();
  for (v1::JournalLine& line : lines) {
    line.set_sequence(sequence++);
    // A doubt noted first, or a line that had to wait, may stand at a later instant than a beat's own end.
    elapsed_ms = std::max(line.elapsed_ms(), elapsed_ms);
    line.set_elapsed_ms(elapsed_ms);
  }
}

}  // namespace

absl::Status PracticeRun::Impl::act(Lines lines, std::function<void()> then, bool must) {
  m_queue = std::move(lines);
  m_then = std::move(then);
  m_droppable = !must;
  return drain();
}

absl::Status PracticeRun::Impl::drain() {
  for (;;) {
    if (!m_queue.empty()) {
      placeInOrder(m_queue, m_ledger);
      if (absl::Status status = m_keep(m_queue); !status.ok()) {
        if (m_droppable) {
          m_queue.clear();
          m_then = nullptr;
        }
        return status;
      }
      m_droppable = false;
      for (const v1::JournalLine& line : std::exchange(m_queue, {})) {
        if (absl::Status status = m_ledger.apply(line); !status.ok()) return status;
      }
    }
    if (m_then) std::exchange(m_then, nullptr)();
    const Lines due = dueLines();
    if (due.empty()) break;
    m_queue = due;
  }
  m_step = derive();
  return absl::OkStatus();
}

// The one place that says what must be written without anybody asking, in order of urgency.
PracticeRun::Impl::Lines PracticeRun::Impl::dueLines() {
  if (m_ledger.closed()) return {};
  for (Lines (Impl::*due)() :
       {&Impl::dueHolds, &Impl::dueBlocked, &Impl::dueJudgement, &Impl::dueAfterStop, &Impl::dueEnd}) {
    Lines lines = (this->*due)();
    if (!lines.empty()) return lines;
  }
  return {};
}

// Hold orders that stood when the practice began or was taken up again.
PracticeRun::Impl::Lines PracticeRun::Impl::dueHolds() {
  Lines lines;
  if (m_input.held_all) {
    m_input.held_all = false;
    v1::JournalLine held = line(v1::JOURNAL_KIND_HELD, m_ledger.open().value_or(0));
    held.set_detail_id(kHoldOrderRule);
    lines.push_back(held);
    lines.push_back(closeLine(v1::PRACTICE_END_HELD, v1::STOP_REASON_HOLD_ORDER));
    return lines;
  }
  for (std::size_t i = 0; i < m_context.entries.size(); ++i) {
    const auto& ids = m_input.held_entry_ids;
    const EntryProgress& entry = m_ledger.entries()[i];
    if (entry.over || std::find(ids.begin(), ids.end(), m_context.entries[i].id()) == ids.end()) continue;
    v1::JournalLine held = line(entry.begun ? v1::JOURNAL_KIND_HELD : v1::JOURNAL_KIND_ENTRY_SKIPPED, i);
    held.set_reason(v1::STOP_REASON_HOLD_ORDER);
    held.set_detail_id(kHoldOrderRule);
    lines.push_back(held);
  }
  return lines;
}

PracticeRun::Impl::Lines PracticeRun::Impl::dueBlocked() {
  Lines lines;
  for (std::size_t i = 0; i < m_blocked.size(); ++i) {
    if (!m_blocked[i] || m_ledger.entries()[i].over || m_ledger.entries()[i].begun) continue;
    lines.push_back(leftOutLine(i, *m_blocked[i]));
  }
  return lines;
}

// What the rules say about the last thing the person told us; recorded before it is shown.
PracticeRun::Impl::Lines PracticeRun::Impl::dueJudgement() {
  if (m_judged == m_ledger.inputCount()) return {};
  m_judged = m_ledger.inputCount();
  std::vector<v1::Finding> findings = m_rules.findings(m_context, m_ledger, nextQuestion() == nullptr);
  // Flags that stand in the journal stand, whatever the rules would say by now.
  for (const std::string& id : m_ledger.redFlags()) m_rules.addRecorded(findings, id, m_input.language);
  if (findings.empty()) return {};
  const bool ends = std::any_of(findings.begin(), findings.end(), endsPractice);
  m_verdict = Verdict{findings, ends};
  m_unread = true;
  return ends ? endingLines(findings) : leavingOutLines(findings);
}

PracticeRun::Impl::Lines PracticeRun::Impl::endingLines(const std::vector<v1::Finding>& findings) const {
  Lines lines;
  bool red_flag = false;
  const auto& recorded = m_ledger.redFlags();
  for (const v1::Finding& finding : findings) {
    red_flag = red_flag || finding.effect() == v1::EFFECT_RED_FLAG;
    const bool known = std::find(recorded.begin(), recorded.end(), finding.rule_id()) != recorded.end();
    if (known || !endsPractice(finding)) continue;
    v1::JournalLine flag = line(v1::JOURNAL_KIND_RED_FLAG, entryIndex());
    flag.set_detail_id(finding.rule_id());
    lines.push_back(flag);
  }
  const bool refused = !red_flag && !m_ledger.anyBegun();
  lines.push_back(
      closeLine(refused ? v1::PRACTICE_END_REFUSED : v1::PRACTICE_END_RED_FLAG, m_ledger.stopReason()));
  return lines;
}

PracticeRun::Impl::Lines PracticeRun::Impl::leavingOutLines(const std::vector<v1::Finding>& findings) const {
  Lines lines;
  for (std::size_t i = 0; i < m_context.entries.size(); ++i) {
    if (m_ledger.entries()[i].over || m_ledger.entries()[i].begun) continue;
    const v1::Finding* why = m_rules.leavesOutEntry(findings, m_context.entries[i]);
    if (why != nullptr) lines.push_back(leftOutLine(i, *why));
  }
  return lines;
}

v1::JournalLine PracticeRun::Impl::leftOutLine(std::size_t entry, const v1::Finding& why) const {
  v1::JournalLine skipped = line(v1::JOURNAL_KIND_ENTRY_SKIPPED, entry);
  skipped.set_reason(v1::STOP_REASON_OTHER);
  skipped.set_detail_id(why.rule_id());
  skipped.set_words(why.therapist());
  return skipped;
}

// A stop outside an entry: before anything was done it ends the practice, later it skips what was coming.
PracticeRun::Impl::Lines PracticeRun::Impl::dueAfterStop() {
  if (m_ledger.lastInput() != LastInput::Stop || m_ledger.askingWhy()) return {};
  if (m_ledger.entries()[m_ledger.stopEntry()].over) return {};
  if (!m_ledger.painBefore() && !m_ledger.anyBegun())
    return {closeLine(v1::PRACTICE_END_STOPPED, m_ledger.stopReason())};
  v1::JournalLine skipped = line(v1::JOURNAL_KIND_ENTRY_SKIPPED, m_ledger.stopEntry());
  skipped.set_reason(m_ledger.stopReason());
  return {skipped};
}

PracticeRun::Impl::Lines PracticeRun::Impl::dueEnd() {
  // An entry whose last beat ended just before the program did.
  if (const auto open = m_ledger.open()) {
    const EntryProgress& entry = m_ledger.entries()[*open];
    if (entry.next_beat == entry.done.size()) return {line(v1::JOURNAL_KIND_ENTRY_ENDED, *open)};
  }
  if (!m_ledger.nothingLeft()) return {};
  const auto& entries = m_ledger.entries();
  const bool any_own = std::any_of(entries.begin(), entries.end(), [](const auto& e) { return !e.left_out; });
  if (!m_ledger.lastOverHeld() && (m_ledger.anyBegun() || any_own))
    return {closeLine(v1::PRACTICE_END_FINISHED, v1::STOP_REASON_UNSPECIFIED)};
  if (m_verdict && m_unread) m_verdict->ends_practice = true;
  return {m_ledger.lastOverHeld() ? closeLine(v1::PRACTICE_END_HELD, v1::STOP_REASON_HOLD_ORDER)
                                  : closeLine(v1::PRACTICE_END_REFUSED, v1::STOP_REASON_UNSPECIFIED)};
}

RunStep PracticeRun::Impl::derive() const {
  if (m_unread) return RunStep::Verdict;
  if (m_ledger.closed()) return RunStep::Closed;
  if (m_ledger.askingWhy()) return RunStep::WhatHappened;
  if (nextQuestion() != nullptr) return RunStep::Question;
  if (!m_ledger.painBefore() && !m_ledger.anyBegun()) return RunStep::PainBefore;
  if (m_ledger.open()) return RunStep::Playing;
  if (m_ledger.awaitsRating()) return RunStep::Rating;
  const std::size_t next = m_ledger.next().value_or(0);
  return needsSupport(next) && m_confirmed != next ? RunStep::Support : RunStep::Ready;
}

const v1::ReadyQuestion* PracticeRun::Impl::nextQuestion() const {
  // Whoever has begun has answered; rules that changed with an update ask next time.
  if (m_ledger.painBefore() || m_ledger.anyBegun()) return nullptr;
  const std::vector<v1::ReadyAnswer> answers = m_ledger.answers();
  for (const v1::ReadyQuestion* question : m_questions) {
    const bool answered = std::any_of(answers.begin(), answers.end(), [&](const v1::ReadyAnswer& answer) {
      return answer.question_id() == question->id();
    });
    if (!answered) return question;
  }
  return nullptr;
}

int PracticeRun::Impl::answeredCount() const { return m_ledger.header().ready_answers_size(); }

std::size_t PracticeRun::Impl::entryIndex() const {
  if (m_ledger.askingWhy()) return m_ledger.stopEntry();
  if (const auto open = m_ledger.open()) return *open;
  if (const auto rated = m_ledger.awaitsRating()) return *rated;
  return m_ledger.next().value_or(m_context.entries.size() - 1);
}

bool PracticeRun::Impl::needsSupport(std::size_t entry) const {
  const v1::Support support = m_context.entries[entry].support();
  return support != v1::SUPPORT_LYING && support != v1::SUPPORT_SEATED;
}

}  // namespace newel
