#include <algorithm>

#include "core/practice/compile.h"

namespace newel {
namespace {

void addBeat(v1::DoseCount& count, const v1::Beat& beat) {
  if (beat.kind() == v1::BEAT_KIND_HOLD) count.set_hold_ms(count.hold_ms() + beat.length_ms());
  if (isWork(beat.kind())) count.set_active_ms(count.active_ms() + beat.length_ms());
  if (beat.ends_repetition()) count.set_repetitions(count.repetitions() + 1);
}

// A stretch of one set that belongs to one side, or to none.
struct Stretch {
  v1::SetDone count;
  bool any_work = false;
  bool one_side = true;
};

void finishStretch(Stretch& stretch, std::vector<v1::SetDone>& sets) {
  if (!stretch.one_side) stretch.count.clear_side();
  const v1::DoseCount& done = stretch.count.done();
  if (done.active_ms() > 0 || done.repetitions() > 0) sets.push_back(stretch.count);
  stretch = Stretch();
}

}  // namespace

v1::DoseCount countDose(const v1::Timeline& timeline, const std::vector<bool>& done) {
  v1::DoseCount count;
  const int size = std::min<int>(timeline.beats_size(), static_cast<int>(done.size()));
  for (int i = 0; i < size; ++i) {
    if (done[i]) addBeat(count, timeline.beats(i));
  }
  return count;
}

std::vector<v1::SetDone> countSets(const v1::Timeline& timeline, const std::vector<bool>& done) {
  std::vector<v1::SetDone> sets;
  Stretch stretch;
  const int size = std::min<int>(timeline.beats_size(), static_cast<int>(done.size()));
  for (int i = 0; i < size; ++i) {
    const v1::Beat& beat = timeline.beats(i);
    if (beat.set() != stretch.count.set() || beat.kind() == v1::BEAT_KIND_CHANGE_SIDE) {
      finishStretch(stretch, sets);
      stretch.count.set_set(beat.set());
    }
    if (!isWork(beat.kind())) continue;
    if (!stretch.any_work) stretch.count.set_side(beat.side());
    stretch.any_work = true;
    stretch.one_side = stretch.one_side && stretch.count.side() == beat.side();
    if (done[i]) addBeat(*stretch.count.mutable_done(), beat);
  }
  finishStretch(stretch, sets);
  return sets;
}

bool isWork(v1::BeatKind kind) {
  return kind == v1::BEAT_KIND_MOVE || kind == v1::BEAT_KIND_HOLD || kind == v1::BEAT_KIND_RETURN;
}

}  // namespace newel
