#include "core/practice/beat_writer.h"

#include <algorithm>
#include <utility>

#include "core/library/rest_split.h"

namespace newel {
namespace {

constexpr std::int64_t kMinuteMs = 60000;

v1::BeatKind kindOf(v1::PhaseKind kind) {
  switch (kind) {
    case v1::PHASE_KIND_HOLD:
      return v1::BEAT_KIND_HOLD;
    case v1::PHASE_KIND_RETURN:
      return v1::BEAT_KIND_RETURN;
    default:
      return v1::BEAT_KIND_MOVE;
  }
}

std::int64_t msOf(std::uint32_t seconds) { return std::int64_t{seconds} * 1000; }

}  // namespace

BeatWriter::BeatWriter(WordingContext context, const v1::Exercise& exercise, const v1::ExerciseWords& words,
                       const Limbs& limbs)
    : m_context(std::move(context)), m_exercise(exercise), m_words(words), m_limbs(limbs) {}

v1::Beat& BeatWriter::add(v1::BeatKind kind, std::int64_t length_ms, v1::Side leg) {
  v1::Beat& beat = *m_timeline.add_beats();
  beat.set_index(static_cast<std::uint32_t>(m_timeline.beats_size() - 1));
  beat.set_kind(kind);
  beat.set_start_ms(m_now_ms);
  beat.set_length_ms(length_ms);
  beat.set_set(m_set);
  beat.set_side(leg);
  if (leg == v1::SIDE_UNSPECIFIED) {
    beat.set_role(v1::LIMB_ROLE_BOTH);
  } else {
    beat.set_role(m_limbs.both_lost || leg == m_limbs.prosthetic ? v1::LIMB_ROLE_PROSTHETIC
                                                                 : v1::LIMB_ROLE_SOUND);
  }
  m_now_ms += length_ms;
  return beat;
}

void BeatWriter::say(v1::Beat& beat, const std::string& key, v1::Side working) {
  const bool own = m_limbs.both_lost && m_exercise.both_sides() == v1::BOTH_SIDES_OWN_WORDS;
  const auto cue = m_words.cues().find(own ? key + ".both" : key);
  if (cue == m_words.cues().end()) {
    if (m_status.ok()) m_status = absl::NotFoundError("no cue \"" + key + "\" for " + m_exercise.id());
    return;
  }
  WordingContext context = m_context;
  context.working = working;
  absl::StatusOr<std::string> screen = resolveWords(cue->second.screen(), context);
  absl::StatusOr<std::string> spoken = resolveWords(cue->second.spoken(), context);
  if (m_status.ok() && !screen.ok()) m_status = screen.status();
  if (m_status.ok() && !spoken.ok()) m_status = spoken.status();
  if (!m_status.ok()) return;
  beat.set_screen(*std::move(screen));
  beat.set_spoken(*std::move(spoken));
}

void BeatWriter::beginSet(std::uint32_t set, v1::Side coming, std::uint32_t rest_s) {
  m_set = set;
  m_repetition = 0;
  std::uint32_t ready_s = m_exercise.get_ready_s();
  if (set > 1 && rest_s > 0) {
    const std::uint32_t plain_s = plainRestSeconds(rest_s, ready_s);
    say(add(v1::BEAT_KIND_REST, msOf(plain_s), v1::SIDE_UNSPECIFIED), "rest", coming);
    ready_s = rest_s - plain_s;
  }
  if (ready_s > 0) say(add(v1::BEAT_KIND_GET_READY, msOf(ready_s), coming), "get_ready", coming);
}

void BeatWriter::changeSide(v1::Side coming) {
  say(add(v1::BEAT_KIND_CHANGE_SIDE, msOf(m_exercise.change_side_s()), coming), "change_side", coming);
}

void BeatWriter::shortRest(v1::Side coming, std::uint32_t seconds) {
  v1::Beat& beat = add(v1::BEAT_KIND_REST, msOf(seconds), v1::SIDE_UNSPECIFIED);
  if (m_words.cues().count("repetition_rest") != 0) return say(beat, "repetition_rest", coming);
  const std::string phrase = m_context.catalogue->phrase("beat.short-rest", m_context.language);
  if (phrase.empty() && m_status.ok()) m_status = absl::NotFoundError("no phrase \"beat.short-rest\"");
  beat.set_screen(phrase);
  beat.set_spoken(phrase);
}

std::uint32_t BeatWriter::phaseSeconds(const v1::Phase& phase) const {
  const v1::Dose& dose = m_context.entry->dose();
  switch (phase.length()) {
    case v1::PHASE_LENGTH_MOVE:
      return dose.sets().move_s();
    case v1::PHASE_LENGTH_HOLD:
      return dose.sets().hold_s();
    case v1::PHASE_LENGTH_RETURN:
      return dose.sets().return_s();
    case v1::PHASE_LENGTH_FIXED:
      return phase.fixed_s();
    case v1::PHASE_LENGTH_STEP:
      return dose.passes().step_s();
    case v1::PHASE_LENGTH_BOUT:
      return dose.minutes().minutes() * 60;
    default:
      return 0;
  }
}

std::uint32_t BeatWriter::stepCount() const {
  const v1::PassesDose& passes = m_context.entry->dose().passes();
  if (passes.has_step_count()) return passes.step_count();
  // The last step may be a short one; nobody stops in the middle.
  const std::uint32_t length = std::max<std::uint32_t>(m_exercise.step_length_cm(), 1);
  return (passes.distance_m() * 100 + length - 1) / length;
}

v1::Beat& BeatWriter::phaseBeat(const v1::Part& part, const v1::Phase& phase, v1::Side working,
                                std::int64_t length_ms) {
  m_moved = true;
  v1::Beat& beat = add(kindOf(phase.kind()), length_ms, sideOf(phase.moves(), m_limbs, working));
  beat.set_repetition(m_repetition);
  beat.set_part_id(part.id());
  beat.set_phase_id(phase.id());
  say(beat, phase.id(), working);
  return beat;
}

// Chunks of a minute from both ends, so that the middle of the bout lies between two beats.
void BeatWriter::bout(const v1::Part& part, const v1::Phase& phase, v1::Side working,
                      std::int64_t length_ms) {
  const std::int64_t half = length_ms / 2;
  std::vector<std::int64_t> first_half(static_cast<std::size_t>(half / kMinuteMs), kMinuteMs);
  if (half % kMinuteMs > 0) first_half.push_back(half % kMinuteMs);
  std::vector<std::int64_t> second_half(first_half.rbegin(), first_half.rend());
  const auto repeatCue = [this](v1::Beat& beat, const std::string& key) {
    if (key.empty()) {
      beat.clear_spoken();  // the same words stay on the screen
    } else {
      beat.set_spoken(m_context.catalogue->phrase(key, m_context.language));
    }
  };
  for (std::size_t i = 0; i < first_half.size(); ++i) {
    v1::Beat& beat = phaseBeat(part, phase, working, first_half[i]);
    if (i > 0) repeatCue(beat, "");
  }
  for (std::size_t i = 0; i < second_half.size(); ++i) {
    v1::Beat& beat = phaseBeat(part, phase, working, second_half[i]);
    const bool last_minute = i > 0 && i + 1 == second_half.size() && second_half[i] == kMinuteMs;
    repeatCue(beat, i == 0 ? "beat.half-way" : last_minute ? "beat.last-minute" : "");
  }
}

void BeatWriter::phase(const v1::Part& part, const v1::Phase& phase, v1::Side working, std::uint32_t step) {
  const std::int64_t length_ms = msOf(phaseSeconds(phase));
  if (length_ms == 0) return;
  if (phase.length() == v1::PHASE_LENGTH_BOUT) return bout(part, phase, working, length_ms);
  phaseBeat(part, phase, working, length_ms).set_step(step);
}

void BeatWriter::repetition(v1::Side working, std::uint32_t repetition, bool last) {
  m_repetition = repetition;
  const int first = m_timeline.beats_size();
  for (const v1::Part& part : m_exercise.parts()) {
    if (part.repeat() != v1::PART_REPEAT_PER_STEP) {
      for (const v1::Phase& each : part.phases()) phase(part, each, working, 0);
      continue;
    }
    const std::uint32_t steps = stepCount();
    for (std::uint32_t step = 1; step <= steps; ++step) {
      if (part.one_phase_a_step()) {
        phase(part, part.phases(static_cast<int>((step - 1) % part.phases_size())), working, step);
      } else {
        for (const v1::Phase& each : part.phases()) phase(part, each, working, step);
      }
    }
  }
  if (m_timeline.beats_size() == first) return;
  m_timeline.mutable_beats(first)->set_last_of_set(last);
  m_timeline.mutable_beats(m_timeline.beats_size() - 1)->set_ends_repetition(true);
}

void BeatWriter::moveTo(v1::Timeline& timeline) {
  timeline.mutable_beats()->Swap(m_timeline.mutable_beats());
  timeline.set_total_ms(m_now_ms);
}

}  // namespace newel
