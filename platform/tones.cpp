#include "platform/tones.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace newel::platform {

const std::vector<Note>& notesOf(Tone tone) {
  // Pitches are steps of one chord (E5 659, A5 880, E6 1319), so that together they sound of a piece.
  static const std::vector<Note> kReady = {{659, 140, 60}, {659, 140, 0}};
  static const std::vector<Note> kGo = {{1319, 400, 0}};
  static const std::vector<Note> kCount = {{880, 80, 0}};
  static const std::vector<Note> kHalfWay = {{880, 70, 50}, {880, 70, 50}, {880, 70, 0}};
  static const std::vector<Note> kHoldEnd = {{1319, 120, 40}, {880, 300, 0}};
  static const std::vector<Note> kRest = {{880, 250, 60}, {659, 330, 0}};
  static const std::vector<Note> kChangeSide = {{659, 90, 40}, {1319, 90, 40}, {659, 90, 40}, {1319, 90, 0}};
  static const std::vector<Note> kLastOne = {{1319, 60, 40}, {1319, 60, 120}, {1319, 200, 0}};
  static const std::vector<Note> kStopped = {{523, 550, 0}};
  switch (tone) {
    case Tone::Ready:
      return kReady;
    case Tone::Go:
      return kGo;
    case Tone::Count:
      return kCount;
    case Tone::HalfWay:
      return kHalfWay;
    case Tone::HoldEnd:
      return kHoldEnd;
    case Tone::Rest:
      return kRest;
    case Tone::ChangeSide:
      return kChangeSide;
    case Tone::LastOne:
      return kLastOne;
    case Tone::Stopped:
      break;
  }
  return kStopped;
}

std::vector<std::int16_t> samplesOf(Tone tone, int sample_rate) {
  constexpr double kLoudness = 0.6 * 32767;
  const int fade = sample_rate * 5 / 1000;
  std::vector<std::int16_t> samples;
  for (const Note& note : notesOf(tone)) {
    const int sounding = sample_rate * note.sound_ms / 1000;
    for (int i = 0; i < sounding; ++i) {
      const double edge =
          std::min({1.0, static_cast<double>(i) / fade, static_cast<double>(sounding - 1 - i) / fade});
      const double phase = 2 * std::numbers::pi * note.hertz * i / sample_rate;
      samples.push_back(static_cast<std::int16_t>(std::lround(kLoudness * edge * std::sin(phase))));
    }
    samples.insert(samples.end(), static_cast<std::size_t>(sample_rate) * note.silence_ms / 1000, 0);
  }
  return samples;
}

}  // namespace newel::platform
