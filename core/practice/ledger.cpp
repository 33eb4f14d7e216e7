#include "core/practice/ledger.h"

#include <algorithm>
#include <utility>

#include "core/practice/compile.h"

namespace newel {
namespace {

// Kinds that may follow a red flag: no beat, no entry, no answer.
bool mayFollowRedFlag(v1::JournalKind kind) {
  return kind == v1::JOURNAL_KIND_RED_FLAG || kind == v1::JOURNAL_KIND_CLOSED ||
         kind == v1::JOURNAL_KIND_DOUBT || kind == v1::JOURNAL_KIND_TAKEN_UP_AGAIN ||
         kind == v1::JOURNAL_KIND_HELD || kind == v1::JOURNAL_KIND_ENTRY_SKIPPED;
}

bool isAboutOpenEntry(v1::JournalKind kind) {
  return kind == v1::JOURNAL_KIND_BEAT_BEGUN || kind == v1::JOURNAL_KIND_BEAT_ENDED ||
         kind == v1::JOURNAL_KIND_BEAT_VOIDED || kind == v1::JOURNAL_KIND_PAUSED ||
         kind == v1::JOURNAL_KIND_RESUMED || kind == v1::JOURNAL_KIND_ENTRY_ENDED;
}

}  // namespace

absl::Status Ledger::lost(const v1::JournalLine& line, const std::string& why) const {
  return absl::DataLossError("journal line " + std::to_string(line.sequence()) + ": " + why);
}

absl::StatusOr<Ledger> Ledger::begin(const v1::JournalLine& line, std::vector<TimelinePtr> timelines) {
  Ledger ledger;
  if (line.kind() != v1::JOURNAL_KIND_PRACTICE_BEGUN || line.sequence() != 1 || !line.has_header())
    return ledger.lost(line, "a practice does not begin like this");
  if (line.header().entries_size() != static_cast<int>(timelines.size()))
    return ledger.lost(line, "another number of entries");
  ledger.m_header = line.header();
  ledger.m_timelines = std::move(timelines);
  for (const TimelinePtr& timeline : ledger.m_timelines) {
    EntryProgress entry;
    entry.done.assign(static_cast<std::size_t>(timeline->beats_size()), false);
    ledger.m_entries.push_back(std::move(entry));
  }
  ledger.m_sequence = 1;
  ledger.m_last_ms = line.elapsed_ms();
  ledger.m_last_at = line.at();
  return ledger;
}

absl::StatusOr<Ledger> Ledger::fold(const std::vector<v1::JournalLine>& lines,
                                    std::vector<TimelinePtr> timelines) {
  if (lines.empty()) return absl::DataLossError("journal: is empty");
  absl::StatusOr<Ledger> ledger = begin(lines.front(), std::move(timelines));
  for (std::size_t i = 1; ledger.ok() && i < lines.size(); ++i) {
    if (absl::Status status = ledger->apply(lines[i]); !status.ok()) return status;
  }
  return ledger;
}

absl::Status Ledger::checkOrder(const v1::JournalLine& line) const {
  if (line.practice_id() != m_header.id()) return lost(line, "is of another practice");
  if (line.sequence() != m_sequence + 1) return lost(line, "is out of order");
  if (closed()) return lost(line, "comes after the close");
  if (!m_red_flags.empty() && !mayFollowRedFlag(line.kind())) return lost(line, "comes after a red flag");
  const bool new_clock = line.kind() == v1::JOURNAL_KIND_TAKEN_UP_AGAIN;
  if (!new_clock && line.elapsed_ms() < m_last_ms) return lost(line, "goes back in time");
  if (line.entry() >= m_entries.size()) return lost(line, "names an entry that is not there");
  return absl::OkStatus();
}

absl::Status Ledger::apply(const v1::JournalLine& line) {
  if (absl::Status status = checkOrder(line); !status.ok()) return status;
  switch (line.kind()) {
    case v1::JOURNAL_KIND_READY_ANSWER:
      *m_header.add_ready_answers() = line.answer();
      input(LastInput::Answer);
      break;
    case v1::JOURNAL_KIND_RED_FLAG:
      m_red_flags.push_back(line.detail_id());
      break;
    case v1::JOURNAL_KIND_DOUBT:
      addDoubt(line.doubt());
      break;
    case v1::JOURNAL_KIND_TAKEN_UP_AGAIN:
      applyTakenUp();
      break;
    case v1::JOURNAL_KIND_CLOSED:
      if (line.end() == v1::PRACTICE_END_UNSPECIFIED) return lost(line, "closes without saying how");
      m_end = line.end();
      m_stop_reason = line.end() == v1::PRACTICE_END_FINISHED ? v1::STOP_REASON_UNSPECIFIED : line.reason();
      break;
    default:
      if (absl::Status status = applyToEntry(line, m_entries[line.entry()]); !status.ok()) return status;
  }
  m_sequence = line.sequence();
  m_last_ms = line.elapsed_ms();
  m_last_at = line.at();
  return absl::OkStatus();
}

absl::Status Ledger::applyToEntry(const v1::JournalLine& line, EntryProgress& entry) {
  const bool is_open = entry.begun && !entry.over;
  if (isAboutOpenEntry(line.kind()) && !is_open) return lost(line, "is about an entry that is not under way");
  switch (line.kind()) {
    case v1::JOURNAL_KIND_ENTRY_BEGUN:
      if (entry.begun || entry.over || open()) return lost(line, "begins what cannot begin");
      entry.begun = true;
      entry.begun_ms = m_base_ms + line.elapsed_ms();
      m_last_input = LastInput::None;
      return absl::OkStatus();
    case v1::JOURNAL_KIND_BEAT_BEGUN:
    case v1::JOURNAL_KIND_BEAT_ENDED:
    case v1::JOURNAL_KIND_BEAT_VOIDED:
      return applyBeat(line, entry);
    case v1::JOURNAL_KIND_PAUSED:
    case v1::JOURNAL_KIND_RESUMED:
      return absl::OkStatus();
    case v1::JOURNAL_KIND_ENTRY_ENDED:
      if (entry.next_beat != entry.done.size()) return lost(line, "ends an entry that has beats left");
      finish(entry, v1::STOP_REASON_UNSPECIFIED, m_base_ms + line.elapsed_ms());
      return absl::OkStatus();
    case v1::JOURNAL_KIND_ENTRY_SKIPPED:
      if (entry.over) return lost(line, "skips what is over");
      entry.words = line.words();
      entry.left_out = !line.detail_id().empty();
      entry.held = line.reason() == v1::STOP_REASON_HOLD_ORDER;
      entry.out_before_check = m_header.ready_answers().empty();
      finish(entry, line.reason(), m_base_ms + line.elapsed_ms());
      if (!entry.left_out) applySkippedByPerson(line);
      return absl::OkStatus();
    case v1::JOURNAL_KIND_STOPPED:
      applyStopped(line, entry);
      return absl::OkStatus();
    case v1::JOURNAL_KIND_HELD:
      if (is_open) {
        entry.held = true;
        finish(entry, v1::STOP_REASON_HOLD_ORDER, m_base_ms + line.elapsed_ms());
      }
      m_asking_why = false;
      m_last_input = LastInput::None;
      return absl::OkStatus();
    case v1::JOURNAL_KIND_RATING:
      applyRating(line, entry);
      return absl::OkStatus();
    default:
      return lost(line, "is of a kind that cannot stand here");
  }
}

absl::Status Ledger::applyBeat(const v1::JournalLine& line, EntryProgress& entry) {
  if (line.beat() != entry.next_beat || entry.next_beat >= entry.done.size())
    return lost(line, "is not the beat that is due");
  if (entry.under_way == (line.kind() == v1::JOURNAL_KIND_BEAT_BEGUN))
    return lost(line, "does not fit the beat under way");
  if (line.kind() == v1::JOURNAL_KIND_BEAT_BEGUN) {
    entry.under_way = true;
    return absl::OkStatus();
  }
  entry.under_way = false;
  if (line.kind() == v1::JOURNAL_KIND_BEAT_ENDED) {
    entry.done[entry.next_beat] = true;
    ++entry.next_beat;
  } else if (m_timelines[line.entry()]->beats(static_cast<int>(line.beat())).kind() == v1::BEAT_KIND_HOLD) {
    ++entry.voided_holds;
  }
  return absl::OkStatus();
}

// Stop acts first and asks afterwards: a line without a reason, then one with it.
void Ledger::applyStopped(const v1::JournalLine& line, EntryProgress& entry) {
  m_asking_why = line.reason() == v1::STOP_REASON_UNSPECIFIED;
  m_stop_entry = line.entry();
  if (!m_asking_why) {
    m_stop_reason = line.reason();
    input(LastInput::Stop);
  }
  if (entry.begun && !entry.over) {
    finish(entry, line.reason(), m_base_ms + line.elapsed_ms());
  } else if (entry.begun && entry.over && entry.reason == v1::STOP_REASON_UNSPECIFIED &&
             entry.next_beat < entry.done.size()) {
    entry.reason = line.reason();
  }
}

// After a stop outside an entry the coming one is skipped for the same reason: that says nothing new.
void Ledger::applySkippedByPerson(const v1::JournalLine& line) {
  const bool said =
      m_last_input == LastInput::Stop && m_stop_entry == line.entry() && m_stop_reason == line.reason();
  m_stop_reason = line.reason();
  m_stop_entry = line.entry();
  if (!said) input(LastInput::Stop);
}

void Ledger::applyRating(const v1::JournalLine& line, EntryProgress& entry) {
  if (line.has_pain_before_0_10()) {
    entry.pain_before = line.pain_before_0_10();
    m_pain_before = line.pain_before_0_10();
    input(LastInput::PainBefore);
  }
  if (line.has_pain_after_0_10()) {
    entry.pain_after = line.pain_after_0_10();
    entry.rated = true;
    input(LastInput::Rating);
    m_stop_entry = line.entry();
  }
  if (line.has_effort_0_10()) entry.effort = line.effort_0_10();
}

void Ledger::applyTakenUp() {
  m_base_ms += m_last_ms;
  m_header.set_resumed(m_header.resumed() + 1);
  addDoubt(v1::CLOCK_DOUBT_RESTARTED);
  for (std::size_t i = 0; i < m_entries.size(); ++i) {
    EntryProgress& entry = m_entries[i];
    if (!entry.under_way || entry.over) continue;
    entry.under_way = false;
    if (m_timelines[i]->beats(static_cast<int>(entry.next_beat)).kind() == v1::BEAT_KIND_HOLD)
      ++entry.voided_holds;
  }
}

void Ledger::finish(EntryProgress& entry, v1::StopReason reason, std::int64_t total_ms) {
  entry.over = true;
  entry.under_way = false;
  entry.reason = reason;
  entry.ended_ms = total_ms;
  m_last_over_held = entry.held;
}

void Ledger::input(LastInput kind) {
  m_last_input = kind;
  ++m_input_count;
}

void Ledger::addDoubt(v1::ClockDoubt doubt) {
  const auto& doubts = m_header.doubts();
  if (std::find(doubts.begin(), doubts.end(), doubt) == doubts.end()) m_header.add_doubts(doubt);
}

std::vector<v1::ReadyAnswer> Ledger::answers() const {
  return {m_header.ready_answers().begin(), m_header.ready_answers().end()};
}

bool Ledger::anyBegun() const {
  return std::any_of(m_entries.begin(), m_entries.end(), [](const EntryProgress& e) { return e.begun; });
}

std::optional<std::size_t> Ledger::open() const {
  for (std::size_t i = 0; i < m_entries.size(); ++i) {
    if (m_entries[i].begun && !m_entries[i].over) return i;
  }
  return std::nullopt;
}

std::optional<std::size_t> Ledger::next() const {
  for (std::size_t i = 0; i < m_entries.size(); ++i) {
    if (!m_entries[i].begun && !m_entries[i].over) return i;
  }
  return std::nullopt;
}

std::optional<std::size_t> Ledger::awaitsRating() const {
  for (std::size_t i = m_entries.size(); i > 0; --i) {
    const EntryProgress& entry = m_entries[i - 1];
    if (!entry.begun) continue;
    if (entry.over && !entry.held && !entry.rated) return i - 1;
    return std::nullopt;
  }
  return std::nullopt;
}

v1::EntryDone Ledger::entryDone(std::size_t index) const {
  const EntryProgress& entry = m_entries[index];
  const v1::Timeline& timeline = *m_timelines[index];
  v1::EntryDone done = m_header.entries(static_cast<int>(index));
  *done.mutable_done() = countDose(timeline, entry.done);
  for (const v1::SetDone& set : countSets(timeline, entry.done)) *done.add_sets() = set;
  if (entry.pain_before) done.set_pain_before_0_10(*entry.pain_before);
  if (entry.pain_after) done.set_pain_after_0_10(*entry.pain_after);
  if (entry.effort) done.set_effort_0_10(*entry.effort);
  done.set_skipped(entry.reason);
  done.set_skipped_words(entry.words);
  done.set_voided_holds(entry.voided_holds);
  if (entry.begun)
    done.set_elapsed_ms((entry.over ? entry.ended_ms : m_base_ms + m_last_ms) - entry.begun_ms);
  return done;
}

v1::Practice Ledger::practice() const {
  v1::Practice practice = m_header;
  practice.clear_entries();
  for (std::size_t i = 0; i < m_entries.size(); ++i) *practice.add_entries() = entryDone(i);
  *practice.mutable_ended_at() = m_last_at;
  practice.set_elapsed_ms(m_base_ms + m_last_ms);
  practice.set_end(m_end);
  practice.set_stop_reason(m_stop_reason);
  for (const std::string& id : m_red_flags) practice.add_red_flag_rule_ids(id);
  return practice;
}

}  // namespace newel
