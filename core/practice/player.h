// Leads one entry: a state machine over (timeline, elapsed time, the person's taps). It owns no timer and
// reads no clock; ticks only repaint. Deadlines are end instants, so an hour drifts by nothing.
// Not here: the order of entries, questions and ratings (practice_run.h); where lines are kept (sync/home).
#pragma once

#include <absl/time/time.h>

#include <cstdint>
#include <optional>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

enum class PlayerState {
  Idle,        // not started
  Running,     // a beat is under way
  WaitingTap,  // by_person: the move's shown time is over, a tap goes on
  Paused,      // by the person or the system; the beat under way is void when it was a hold
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

// A gap between two calls that no running program leaves: the phone slept or the program was frozen.
inline constexpr absl::Duration kSleptAfter = absl::Seconds(2);

class Player {
 public:
  // `timeline` must come from compileTimeline(). `first_beat`: where to take up again (0 at the start).
  explicit Player(v1::Timeline timeline, std::uint32_t first_beat = 0);

  // Each takes the elapsed instant now (never less than in the last call) and returns the events.
  // A call that makes no sense in the present state does nothing and returns nothing.
  std::vector<PlayerEvent> start(absl::Duration now);
  // Moves on over every beat whose end has passed. After a gap of kSleptAfter: a hold or move under way is
  // void, will be repeated and the player is Paused; a rest, get-ready or change of side whose end passed is
  // over, and the player is Paused before the next beat. No beat begins by itself after such a gap.
  std::vector<PlayerEvent> tick(absl::Duration now);
  std::vector<PlayerEvent> pause(absl::Duration now);
  // A hold or move that was cut begins anew (its BEAT_VOIDED was written at the pause); other beats go on.
  std::vector<PlayerEvent> resume(absl::Duration now);
  std::vector<PlayerEvent> tapDone(absl::Duration now);     // by_person only
  std::vector<PlayerEvent> repeatBeat(absl::Duration now);  // the present beat from its start
  std::vector<PlayerEvent> skipBeat(absl::Duration now);    // rest and get-ready only: go now
  std::vector<PlayerEvent> lengthenRest(absl::Duration now, absl::Duration by);
  std::vector<PlayerEvent> stop(absl::Duration now, v1::StopReason reason);  // ends this entry
  std::vector<PlayerEvent> hold(absl::Duration now);  // a hold order arrived: Stopped at once

  PlayerState state() const { return m_state; }
  const v1::Timeline& timeline() const { return m_timeline; }
  std::uint32_t beat() const { return m_beat; }
  // Of the present beat: from 0 to its length; stands still while Paused.
  absl::Duration intoBeat(absl::Duration now) const;
  absl::Duration leftInBeat(absl::Duration now) const;
  // When tick() has something to do next; nullopt unless Running.
  std::optional<absl::Duration> nextDeadline() const;
  const std::vector<bool>& done() const { return m_done; }
  std::uint32_t voidedHolds() const { return m_voided_holds; }

 private:
  v1::Timeline m_timeline;
  PlayerState m_state = PlayerState::Idle;
  std::uint32_t m_beat = 0;
  absl::Duration m_beat_end;  // instant, while Running
  absl::Duration m_left;      // while Paused
  absl::Duration m_last_call;
  std::vector<bool> m_done;
  std::uint32_t m_voided_holds = 0;
};

}  // namespace newel
