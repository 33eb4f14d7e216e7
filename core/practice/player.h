// Leads one entry: a state machine over (timeline, elapsed time, the person's taps). It owns no timer and
// reads no clock; ticks only repaint. Deadlines are end instants, so an hour drifts by nothing.
// Not here: the order of entries, questions and ratings (practice_run.h); where lines are kept (sync/home).
#pragma once

#include <absl/time/time.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

enum class PlayerState {
  Idle,        // not started
  Running,     // a beat is under way, or its lead-in after a resume
  WaitingTap,  // by_person: the move's shown time is over, a tap goes on
  Paused,      // by the person or the system; the beat under way is void when it was a hold or a move
  Ended,       // all beats done
  Stopped,     // by reason, skip or hold order; nothing follows
};

// What happened since the last call, oldest first; the caller appends each to the journal before showing it.
struct PlayerEvent {
  v1::JournalKind kind;
  std::uint32_t beat = 0;
  v1::StopReason reason = v1::STOP_REASON_UNSPECIFIED;
  absl::Duration at;  // elapsed instant at which it took effect (a beat's own end, not the tick's)
};

// A gap between two calls that no running program leaves: the phone slept or the program was frozen. While
// Running, call tick() at least once a second.
inline constexpr absl::Duration kSleptAfter = absl::Seconds(2);

// After a resume a hold, move or return begins only when the person had time to take up the position again:
// as long as the timeline's first get-ready, at most this (common practice, no source). A rest just goes on.
inline constexpr absl::Duration kLongestLeadIn = absl::Seconds(10);

// The person may take movements slower: each call takes a quarter of the planned time more, up to this.
// Holds, rests and what is counted stay as signed (common practice, no source).
inline constexpr int kPacePercentStep = 25;
inline constexpr int kSlowestPacePercent = 150;

// A value: copies are independent and share the (unchanging) timeline. Not thread-safe.
class Player {
 public:
  // `timeline` must come from compileTimeline(). `first_beat`: where to take up again (0 at the start); the
  // beats before it count as done.
  explicit Player(v1::Timeline timeline, std::uint32_t first_beat = 0);
  Player(std::shared_ptr<const v1::Timeline> timeline, std::uint32_t first_beat);

  // A player as it was before a kill: Paused before `next_beat`, `done` so far, waiting for resume().
  static Player takenUp(std::shared_ptr<const v1::Timeline> timeline, std::uint32_t next_beat,
                        std::vector<bool> done, std::uint32_t voided_holds, absl::Duration now);

  // Each takes the elapsed instant now (never less than in the last call; less counts as the last) and
  // returns the events. Each first does what tick() would have done by then. A call that makes no sense in
  // the present state does nothing more.
  std::vector<PlayerEvent> start(absl::Duration now);
  // Moves on over every beat whose end has passed. After a gap of kSleptAfter: a hold, move or return under
  // way is void and will be repeated; a rest, get-ready or change of side whose end passed is over; in every
  // case the player is Paused. No beat begins by itself after such a gap.
  std::vector<PlayerEvent> tick(absl::Duration now);
  // A hold, move or return under way is void (BEAT_VOIDED), other beats keep the time they had left.
  std::vector<PlayerEvent> pause(absl::Duration now);
  // A hold, move or return begins anew after its lead-in (BEAT_BEGUN comes then); other beats go on.
  std::vector<PlayerEvent> resume(absl::Duration now);
  std::vector<PlayerEvent> tapDone(absl::Duration now);     // by_person moves only: the move is done
  std::vector<PlayerEvent> repeatBeat(absl::Duration now);  // the present beat from its start
  std::vector<PlayerEvent> skipBeat(absl::Duration now);    // rest, get-ready and lead-in only: go now
  // Rest only, running or paused; `by` over 0. It leaves no event: the rest's end says how long it was.
  std::vector<PlayerEvent> lengthenRest(absl::Duration now, absl::Duration by);
  // From now on, the present movement too. No event: the beats' own instants say how long they took.
  std::vector<PlayerEvent> slower(absl::Duration now);
  // Ends this entry from any state but Ended. `reason` may be UNSPECIFIED when it will be asked for next.
  std::vector<PlayerEvent> stop(absl::Duration now, v1::StopReason reason);
  std::vector<PlayerEvent> hold(absl::Duration now);  // a hold order arrived: Stopped at once

  PlayerState state() const { return m_state; }
  const v1::Timeline& timeline() const { return *m_timeline; }
  // The present beat; after Ended the last one.
  std::uint32_t beat() const { return m_beat; }
  // Of the present beat: from 0 to its length; stands still while Paused and in the lead-in.
  absl::Duration intoBeat(absl::Duration now) const;
  absl::Duration leftInBeat(absl::Duration now) const;
  // Of the present beat at the present pace.
  absl::Duration beatLength() const { return lengthOf(present()); }
  // 100: as signed.
  int pacePercent() const { return m_pace_percent; }
  // leftInBeat() and the rest of the same phase after it: what is left of a bout of minutes.
  absl::Duration leftInPhase(absl::Duration now) const;
  // Until the present beat begins after a resume; zero when there is no lead-in.
  absl::Duration leadInLeft(absl::Duration now) const;
  // When tick() has something to do next; nullopt unless Running.
  std::optional<absl::Duration> nextDeadline() const;
  const std::vector<bool>& done() const { return m_done; }
  std::uint32_t voidedHolds() const { return m_voided_holds; }

 private:
  using Events = std::vector<PlayerEvent>;
  const v1::Beat& present() const { return m_timeline->beats(static_cast<int>(m_beat)); }
  absl::Duration lengthOf(const v1::Beat& beat) const;
  bool beatIsWork() const;
  // Returns the instant that counts as now, after catching up.
  absl::Duration catchUp(absl::Duration now, Events& events);
  void wake(absl::Duration now, Events& events);
  void advance(absl::Duration now, Events& events);
  void begin(absl::Duration at, Events& events);
  void finishBeat(absl::Duration at, Events& events);
  void voidBeat(absl::Duration at, Events& events);
  void pauseNow(absl::Duration at, Events& events);

  std::shared_ptr<const v1::Timeline> m_timeline;
  PlayerState m_state = PlayerState::Idle;
  std::uint32_t m_beat = 0;
  bool m_begun = false;         // the present beat has begun (false before its lead-in is over)
  absl::Duration m_beat_begin;  // instant, while Running: in the future during a lead-in
  absl::Duration m_beat_end;    // instant, while Running
  absl::Duration m_left;        // while Paused
  absl::Duration m_last_call;
  std::vector<bool> m_done;
  std::uint32_t m_voided_holds = 0;
  int m_pace_percent = 100;
};

}  // namespace newel
