#include "qml/home/cue_caller.h"

#include <algorithm>

namespace newel::home {
namespace {

using platform::Tone;

constexpr std::int64_t kSecond = 1000;
constexpr std::int64_t kNextWordsBefore = 6 * kSecond;
constexpr std::int64_t kNextWordsFrom = 12 * kSecond;
constexpr std::int64_t kRestCountsFrom = 5 * kSecond;
constexpr std::int64_t kHoldCountsFrom = 6 * kSecond;
constexpr std::int64_t kHalfWayFrom = 10 * kSecond;

bool isWork(v1::BeatKind kind) {
  return kind == v1::BEAT_KIND_MOVE || kind == v1::BEAT_KIND_HOLD || kind == v1::BEAT_KIND_RETURN;
}

bool sameHold(const v1::Beat& a, const v1::Beat& b) {
  return a.kind() == v1::BEAT_KIND_HOLD && b.kind() == v1::BEAT_KIND_HOLD && a.set() == b.set() &&
         a.repetition() == b.repetition() && a.phase_id() == b.phase_id() && a.part_id() == b.part_id() &&
         a.side() == b.side();
}

// True where a repetition begins: the last call belongs to its first beat only.
bool beginsRepetition(const v1::Timeline& timeline, std::uint32_t index) {
  if (index == 0) return true;
  const v1::Beat& before = timeline.beats(static_cast<int>(index) - 1);
  const v1::Beat& beat = timeline.beats(static_cast<int>(index));
  return before.repetition() != beat.repetition() || before.set() != beat.set() || before.ends_repetition();
}

Tone toneOfWork(const v1::Timeline& timeline, std::uint32_t index, bool last_call) {
  const v1::Beat& beat = timeline.beats(static_cast<int>(index));
  if (last_call) return Tone::LastOne;
  if (index == 0 || !isWork(timeline.beats(static_cast<int>(index) - 1).kind())) return Tone::Go;
  const v1::Beat& before = timeline.beats(static_cast<int>(index) - 1);
  if (sameHold(before, beat)) return Tone::HalfWay;
  return before.kind() == v1::BEAT_KIND_HOLD ? Tone::HoldEnd : Tone::Count;
}

Tone toneOfRest(v1::BeatKind kind) {
  if (kind == v1::BEAT_KIND_REST) return Tone::Rest;
  return kind == v1::BEAT_KIND_CHANGE_SIDE ? Tone::ChangeSide : Tone::Ready;
}

void countDown(std::vector<Cue>& cues) {
  for (const std::int64_t before : {3 * kSecond, 2 * kSecond, kSecond}) {
    cues.push_back({true, before, true, Tone::Count, ""});
  }
}

std::vector<Cue> cuesOfRest(const v1::Timeline& timeline, std::uint32_t index, const CallWords& words) {
  const v1::Beat& beat = timeline.beats(static_cast<int>(index));
  std::vector<Cue> cues = {{false, 0, true, toneOfRest(beat.kind()), beat.spoken()}};
  const bool more = static_cast<int>(index) + 1 < timeline.beats_size();
  if (more && beat.length_ms() >= kNextWordsFrom) {
    const std::string& next = timeline.beats(static_cast<int>(index) + 1).spoken();
    if (!next.empty()) cues.push_back({true, kNextWordsBefore, false, Tone::Count, words.next + " " + next});
  }
  if (more && beat.length_ms() >= kRestCountsFrom) countDown(cues);
  return cues;
}

std::int64_t lengthOf(const v1::Timeline& timeline, const HoldSpan& span) {
  std::int64_t length = 0;
  for (std::uint32_t i = span.first; i <= span.last; ++i)
    length += timeline.beats(static_cast<int>(i)).length_ms();
  return length;
}

}  // namespace

HoldSpan holdSpanAt(const v1::Timeline& timeline, std::uint32_t index) {
  HoldSpan span{index, index};
  if (timeline.beats(static_cast<int>(index)).kind() != v1::BEAT_KIND_HOLD) return span;
  const auto beatAt = [&timeline](std::uint32_t i) -> const v1::Beat& {
    return timeline.beats(static_cast<int>(i));
  };
  while (span.first > 0 && sameHold(beatAt(span.first - 1), beatAt(span.first))) --span.first;
  const auto count = static_cast<std::uint32_t>(timeline.beats_size());
  while (span.last + 1 < count && sameHold(beatAt(span.last), beatAt(span.last + 1))) ++span.last;
  return span;
}

std::vector<Cue> leadInCues(std::int64_t length_ms, const CallWords& words) {
  std::vector<Cue> cues = {{false, 0, true, Tone::Ready, words.get_ready}};
  if (length_ms >= kRestCountsFrom) countDown(cues);
  return cues;
}

std::vector<Cue> cuesOf(const v1::Timeline& timeline, std::uint32_t index, const CallWords& words) {
  const v1::Beat& beat = timeline.beats(static_cast<int>(index));
  if (!isWork(beat.kind())) return cuesOfRest(timeline, index, words);

  const HoldSpan span = holdSpanAt(timeline, index);
  const std::int64_t whole = lengthOf(timeline, span);
  const bool last_call = beat.last_of_set() && beat.repetition() > 1 && beginsRepetition(timeline, index);
  std::vector<Cue> cues;
  Cue first{false, 0, true, toneOfWork(timeline, index, last_call), beat.spoken()};
  if (last_call) first.words = first.words.empty() ? words.last_one : words.last_one + " " + first.words;
  if (index > span.first) {
    // Within a bout only its middle is called; its minutes pass in silence.
    const bool middle = lengthOf(timeline, {span.first, index - 1}) * 2 == whole;
    first.sounds = middle;
  }
  cues.push_back(std::move(first));
  if (beat.kind() != v1::BEAT_KIND_HOLD) return cues;
  if (span.first == span.last && whole >= kHalfWayFrom) {
    cues.push_back({false, whole / 2, true, Tone::HalfWay, words.half_way});
  }
  if (index == span.last && beat.length_ms() >= kHoldCountsFrom) countDown(cues);
  return cues;
}

}  // namespace newel::home
