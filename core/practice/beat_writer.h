// Writes beats one after another: lengths, sides and words of each. For core/practice/compile.cpp alone.
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <string>

#include "core/library/wording.h"
#include "core/records/exercise.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

class BeatWriter {
 public:
  // All arguments must outlive the writer. `context` needs no working side.
  BeatWriter(WordingContext context, const v1::Exercise& exercise, const v1::ExerciseWords& words,
             const Limbs& limbs);

  // Get-ready before the first set, and again where there is no rest between sets; otherwise the rest, whose
  // end is get-ready where it is long enough (core/library/rest_split.h).
  void beginSet(std::uint32_t set, v1::Side coming, std::uint32_t rest_s);
  void changeSide(v1::Side coming);
  void shortRest(v1::Side coming, std::uint32_t seconds);
  // Every phase of the exercise once, in order. `last`: say "last one" before it.
  void repetition(v1::Side working, std::uint32_t repetition, bool last);

  // A text that belongs to no beat.
  absl::StatusOr<std::string> plain(const std::string& text) const { return resolveWords(text, m_context); }

  int beatCount() const { return m_timeline.beats_size(); }
  bool movedAtAll() const { return m_moved; }
  const absl::Status& status() const { return m_status; }  // the first text that had no answer
  void moveTo(v1::Timeline& timeline);                     // beats and total_ms

 private:
  v1::Beat& add(v1::BeatKind kind, std::int64_t length_ms, v1::Side leg);
  void say(v1::Beat& beat, const std::string& key, v1::Side working);
  void phase(const v1::Part& part, const v1::Phase& phase, v1::Side working, std::uint32_t step);
  void bout(const v1::Part& part, const v1::Phase& phase, v1::Side working, std::int64_t length_ms);
  v1::Beat& phaseBeat(const v1::Part& part, const v1::Phase& phase, v1::Side working, std::int64_t length_ms);
  std::uint32_t phaseSeconds(const v1::Phase& phase) const;
  std::uint32_t stepCount() const;

  WordingContext m_context;
  const v1::Exercise& m_exercise;
  const v1::ExerciseWords& m_words;
  const Limbs& m_limbs;
  v1::Timeline m_timeline;
  absl::Status m_status;
  std::int64_t m_now_ms = 0;
  std::uint32_t m_set = 0;
  std::uint32_t m_repetition = 0;
  bool m_moved = false;
};

}  // namespace newel
