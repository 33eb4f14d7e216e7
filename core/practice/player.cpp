#include "core/practice/player.h"

#include <algorithm>
#include <utility>

#include "core/practice/compile.h"

namespace newel {

Player::Player(v1::Timeline timeline, std::uint32_t first_beat)
    : Player(std::make_shared<const v1::Timeline>(std::move(timeline)), first_beat) {}

Player::Player(std::shared_ptr<const v1::Timeline> timeline, std::uint32_t first_beat)
    : m_timeline(std::move(timeline)), m_beat(first_beat), m_done(m_timeline->beats_size(), false) {
  std::fill_n(m_done.begin(), std::min<std::size_t>(first_beat, m_done.size()), true);
}

Player Player::takenUp(std::shared_ptr<const v1::Timeline> timeline, std::uint32_t next_beat,
                       std::vector<bool> done, std::uint32_t voided_holds, absl::Duration now) {
  Player player(std::move(timeline), next_beat);
  player.m_done = std::move(done);
  player.m_voided_holds = voided_holds;
  player.m_state = PlayerState::Paused;
  player.m_left = player.lengthOf(player.present());
  player.m_last_call = now;
  return player;
}

absl::Duration Player::lengthOf(const v1::Beat& beat) const {
  const bool moves = beat.kind() == v1::BEAT_KIND_MOVE || beat.kind() == v1::BEAT_KIND_RETURN;
  return absl::Milliseconds(beat.length_ms() * (moves ? m_pace_percent : 100) / 100);
}

bool Player::beatIsWork() const { return isWork(present().kind()); }

absl::Duration Player::catchUp(absl::Duration now, Events& events) {
  now = std::max(now, m_last_call);
  if (m_state == PlayerState::Running) {
    if (now - m_last_call >= kSleptAfter) {
      wake(now, events);
    } else {
      advance(now, events);
    }
  }
  m_last_call = now;
  return now;
}

// Nobody can say what the person did meanwhile: work does not count, time for rest does.
void Player::wake(absl::Duration now, Events& events) {
  if (beatIsWork()) {
    voidBeat(now, events);
  } else if (m_beat_end <= now) {
    finishBeat(m_beat_end, events);
    if (m_state == PlayerState::Ended) return;
  }
  pauseNow(now, events);
}

void Player::advance(absl::Duration now, Events& events) {
  while (m_state == PlayerState::Running) {
    if (!m_begun) {
      if (now < m_beat_begin) return;
      begin(m_beat_begin, events);
    }
    if (now < m_beat_end) return;
    if (m_timeline->by_person() && present().kind() == v1::BEAT_KIND_MOVE) {
      m_state = PlayerState::WaitingTap;
      return;
    }
    const absl::Duration end = m_beat_end;
    finishBeat(end, events);
    if (m_state == PlayerState::Running) begin(end, events);
  }
}

void Player::begin(absl::Duration at, Events& events) {
  m_begun = true;
  m_beat_begin = at;
  m_beat_end = at + lengthOf(present());
  events.push_back({v1::JOURNAL_KIND_BEAT_BEGUN, m_beat, v1::STOP_REASON_UNSPECIFIED, at});
}

// The present beat is done; the next one becomes present but has not begun.
void Player::finishBeat(absl::Duration at, Events& events) {
  m_done[m_beat] = true;
  events.push_back({v1::JOURNAL_KIND_BEAT_ENDED, m_beat, v1::STOP_REASON_UNSPECIFIED, at});
  if (m_beat + 1 == m_done.size()) {
    m_state = PlayerState::Ended;
    events.push_back({v1::JOURNAL_KIND_ENTRY_ENDED, m_beat, v1::STOP_REASON_UNSPECIFIED, at});
    return;
  }
  ++m_beat;
  m_begun = false;
  m_beat_begin = at;
  m_beat_end = at + lengthOf(present());
}

void Player::voidBeat(absl::Duration at, Events& events) {
  if (m_begun) {
    if (present().kind() == v1::BEAT_KIND_HOLD) ++m_voided_holds;
    events.push_back({v1::JOURNAL_KIND_BEAT_VOIDED, m_beat, v1::STOP_REASON_UNSPECIFIED, at});
  }
  m_begun = false;
}

void Player::pauseNow(absl::Duration at, Events& events) {
  m_left = m_begun ? std::max(m_beat_end - at, absl::ZeroDuration()) : lengthOf(present());
  m_state = PlayerState::Paused;
  events.push_back({v1::JOURNAL_KIND_PAUSED, m_beat, v1::STOP_REASON_UNSPECIFIED, at});
}

std::vector<PlayerEvent> Player::start(absl::Duration now) {
  Events events;
  if (m_state != PlayerState::Idle || m_beat >= m_done.size()) return events;
  m_last_call = std::max(now, m_last_call);
  m_state = PlayerState::Running;
  begin(m_last_call, events);
  return events;
}

std::vector<PlayerEvent> Player::tick(absl::Duration now) {
  Events events;
  catchUp(now, events);
  return events;
}

std::vector<PlayerEvent> Player::pause(absl::Duration now) {
  Events events;
  now = catchUp(now, events);
  if (m_state != PlayerState::Running && m_state != PlayerState::WaitingTap) return events;
  if (beatIsWork()) voidBeat(now, events);
  pauseNow(now, events);
  return events;
}

std::vector<PlayerEvent> Player::resume(absl::Duration now) {
  Events events;
  now = catchUp(now, events);
  if (m_state != PlayerState::Paused) return events;
  m_state = PlayerState::Running;
  events.push_back({v1::JOURNAL_KIND_RESUMED, m_beat, v1::STOP_REASON_UNSPECIFIED, now});
  if (m_begun) {
    m_beat_end = now + m_left;
    m_beat_begin = m_beat_end - lengthOf(present());
    return events;
  }
  const v1::Beat& first = m_timeline->beats(0);
  const absl::Duration ready =
      first.kind() == v1::BEAT_KIND_GET_READY ? lengthOf(first) : absl::ZeroDuration();
  m_beat_begin = now + (beatIsWork() ? std::min(ready, kLongestLeadIn) : absl::ZeroDuration());
  m_beat_end = m_beat_begin + lengthOf(present());
  advance(now, events);
  return events;
}

std::vector<PlayerEvent> Player::tapDone(absl::Duration now) {
  Events events;
  now = catchUp(now, events);
  const bool moving = m_begun && m_timeline->by_person() && present().kind() == v1::BEAT_KIND_MOVE &&
                      (m_state == PlayerState::Running || m_state == PlayerState::WaitingTap);
  if (!moving) return events;
  m_state = PlayerState::Running;
  finishBeat(now, events);
  if (m_state == PlayerState::Running) begin(now, events);
  return events;
}

std::vector<PlayerEvent> Player::repeatBeat(absl::Duration now) {
  Events events;
  now = catchUp(now, events);
  const bool under_way = m_begun && (m_state == PlayerState::Running || m_state == PlayerState::WaitingTap);
  if (!under_way) return events;
  m_state = PlayerState::Running;
  voidBeat(now, events);
  begin(now, events);
  return events;
}

std::vector<PlayerEvent> Player::skipBeat(absl::Duration now) {
  Events events;
  now = catchUp(now, events);
  if (m_state != PlayerState::Running) return events;
  if (!m_begun) {
    begin(now, events);
  } else if (present().kind() == v1::BEAT_KIND_REST || present().kind() == v1::BEAT_KIND_GET_READY) {
    finishBeat(now, events);
    if (m_state == PlayerState::Running) begin(now, events);
  }
  return events;
}

std::vector<PlayerEvent> Player::lengthenRest(absl::Duration now, absl::Duration by) {
  Events events;
  catchUp(now, events);
  if (present().kind() != v1::BEAT_KIND_REST || by <= absl::ZeroDuration()) return events;
  if (m_state == PlayerState::Running) m_beat_end += by;
  if (m_state == PlayerState::Paused && m_begun) m_left += by;
  return events;
}

std::vector<PlayerEvent> Player::slower(absl::Duration now) {
  Events events;
  catchUp(now, events);
  // The present beat gets its quarter at once, so that what is left and how long it is always fit together.
  const absl::Duration before = lengthOf(present());
  m_pace_percent = std::min(m_pace_percent + kPacePercentStep, kSlowestPacePercent);
  const absl::Duration more = lengthOf(present()) - before;
  if (m_state == PlayerState::Running) m_beat_end += more;
  if (m_state == PlayerState::Paused) m_left += more;
  return events;
}

std::vector<PlayerEvent> Player::stop(absl::Duration now, v1::StopReason reason) {
  Events events;
  now = catchUp(now, events);
  if (m_state == PlayerState::Ended || m_state == PlayerState::Stopped) return events;
  m_state = PlayerState::Stopped;
  events.push_back({v1::JOURNAL_KIND_STOPPED, m_beat, reason, now});
  return events;
}

std::vector<PlayerEvent> Player::hold(absl::Duration now) {
  Events events;
  now = catchUp(now, events);
  if (m_state == PlayerState::Ended || m_state == PlayerState::Stopped) return events;
  m_state = PlayerState::Stopped;
  events.push_back({v1::JOURNAL_KIND_HELD, m_beat, v1::STOP_REASON_HOLD_ORDER, now});
  return events;
}

absl::Duration Player::leadInLeft(absl::Duration now) const {
  if (m_state != PlayerState::Running || m_begun) return absl::ZeroDuration();
  return std::max(m_beat_begin - now, absl::ZeroDuration());
}

absl::Duration Player::leftInBeat(absl::Duration now) const {
  switch (m_state) {
    case PlayerState::Idle:
      return lengthOf(present());
    case PlayerState::Running:
      if (!m_begun) return lengthOf(present());
      return std::max(m_beat_end - std::max(now, m_last_call), absl::ZeroDuration());
    case PlayerState::Paused:
      return m_left;
    default:
      return absl::ZeroDuration();
  }
}

absl::Duration Player::intoBeat(absl::Duration now) const {
  // A lengthened rest has more left than its length.
  return std::max(lengthOf(present()) - leftInBeat(now), absl::ZeroDuration());
}

absl::Duration Player::leftInPhase(absl::Duration now) const {
  absl::Duration left = leftInBeat(now);
  if (present().phase_id().empty()) return left;
  for (int i = static_cast<int>(m_beat) + 1; i < m_timeline->beats_size(); ++i) {
    const v1::Beat& next = m_timeline->beats(i);
    const bool same = next.phase_id() == present().phase_id() && next.set() == present().set() &&
                      next.repetition() == present().repetition() && next.side() == present().side() &&
                      next.step() == present().step();
    if (!same) break;
    left += lengthOf(next);
  }
  return left;
}

std::optional<absl::Duration> Player::nextDeadline() const {
  if (m_state != PlayerState::Running) return std::nullopt;
  return m_begun ? m_beat_end : m_beat_begin;
}

}  // namespace newel
