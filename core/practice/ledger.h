// What the journal's lines amount to so far: a fold over lines that are kept already. The run asks it what
// comes next, and the practice record is read off it, so a practice that was killed and one that was not are
// told by the same code. For core/practice alone.
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

using TimelinePtr = std::shared_ptr<const v1::Timeline>;

struct EntryProgress {
  bool begun = false;
  bool over = false;  // ended, stopped, skipped or held: no beat of it may follow
  bool held = false;
  bool left_out = false;          // skipped by a rule or a hold order, not by the person
  bool out_before_check = false;  // left out before the first question was answered
  bool rated = false;
  v1::StopReason reason = v1::STOP_REASON_UNSPECIFIED;
  std::string words;
  std::vector<bool> done;
  std::uint32_t next_beat = 0;
  bool under_way = false;  // next_beat has begun and not ended
  std::uint32_t voided_holds = 0;
  std::optional<std::uint32_t> pain_before, pain_after, effort;
  std::int64_t begun_ms = 0;  // of the practice's whole elapsed time
  std::int64_t ended_ms = 0;
};

// What the rules were last asked about.
enum class LastInput { None, Answer, PainBefore, Stop, Rating };

class Ledger {
 public:
  // From the PRACTICE_BEGUN line. `timelines`: one for each entry of its header, in order. kDataLoss when the
  // line is not one or the numbers differ.
  static absl::StatusOr<Ledger> begin(const v1::JournalLine& line, std::vector<TimelinePtr> timelines);
  static absl::StatusOr<Ledger> fold(const std::vector<v1::JournalLine>& lines,
                                     std::vector<TimelinePtr> timelines);

  // kDataLoss when `line` could not follow; the ledger is unchanged then.
  absl::Status apply(const v1::JournalLine& line);

  const v1::Practice& header() const { return m_header; }
  const std::vector<EntryProgress>& entries() const { return m_entries; }
  const TimelinePtr& timeline(std::size_t entry) const { return m_timelines[entry]; }
  std::uint32_t nextSequence() const { return m_sequence + 1; }
  std::int64_t lastElapsedMs() const { return m_last_ms; }
  // The entry that came to its end last was ended by a hold order.
  bool lastOverHeld() const { return m_last_over_held; }
  bool closed() const { return m_end != v1::PRACTICE_END_UNSPECIFIED; }
  bool askingWhy() const { return m_asking_why; }
  LastInput lastInput() const { return m_last_input; }
  // Grows with each input, so that each is judged once.
  std::uint32_t inputCount() const { return m_input_count; }
  v1::StopReason stopReason() const { return m_stop_reason; }
  std::uint32_t stopEntry() const { return m_stop_entry; }
  std::optional<std::uint32_t> painBefore() const { return m_pain_before; }
  const std::vector<std::string>& redFlags() const { return m_red_flags; }
  std::vector<v1::ReadyAnswer> answers() const;
  bool anyBegun() const;
  std::optional<std::size_t> open() const;  // begun and not over
  std::optional<std::size_t> next() const;  // the first one neither begun nor over
  std::optional<std::size_t> awaitsRating()
      const;  // begun, over, not held, not rated, and the last one begun
  // Nothing can follow but CLOSED.
  bool nothingLeft() const { return !open() && !next() && !awaitsRating() && !m_asking_why; }

  v1::Practice practice() const;

 private:
  absl::Status lost(const v1::JournalLine& line, const std::string& why) const;
  absl::Status checkOrder(const v1::JournalLine& line) const;
  absl::Status applyToEntry(const v1::JournalLine& line, EntryProgress& entry);
  absl::Status applyBeat(const v1::JournalLine& line, EntryProgress& entry);
  void applyStopped(const v1::JournalLine& line, EntryProgress& entry);
  void applySkippedByPerson(const v1::JournalLine& line);
  void applyRating(const v1::JournalLine& line, EntryProgress& entry);
  void applyTakenUp();
  void finish(EntryProgress& entry, v1::StopReason reason, std::int64_t total_ms);
  void input(LastInput kind);
  void addDoubt(v1::ClockDoubt doubt);
  v1::EntryDone entryDone(std::size_t index) const;

  v1::Practice m_header;
  std::vector<TimelinePtr> m_timelines;
  std::vector<EntryProgress> m_entries;
  std::uint32_t m_sequence = 0;
  std::int64_t m_base_ms = 0;  // elapsed before the last taking-up
  std::int64_t m_last_ms = 0;  // elapsed of the last line since then
  google::protobuf::Timestamp m_last_at;
  bool m_asking_why = false;
  bool m_last_over_held = false;
  LastInput m_last_input = LastInput::None;
  std::uint32_t m_input_count = 0;
  v1::StopReason m_stop_reason = v1::STOP_REASON_UNSPECIFIED;
  std::uint32_t m_stop_entry = 0;
  std::optional<std::uint32_t> m_pain_before;
  std::vector<std::string> m_red_flags;
  v1::PracticeEnd m_end = v1::PRACTICE_END_UNSPECIFIED;
};

}  // namespace newel
