#include "platform/vibration.h"

#include <algorithm>

namespace newel::platform {
namespace {

constexpr int kFeltFromMs = 80;

}  // namespace

std::vector<Pulse> pulsesOf(Tone tone) {
  std::vector<Pulse> pulses;
  for (const Note& note : notesOf(tone)) {
    pulses.push_back({true, std::max(note.sound_ms, kFeltFromMs)});
    if (note.silence_ms > 0) pulses.push_back({false, std::max(note.silence_ms, kFeltFromMs)});
  }
  return pulses;
}

}  // namespace newel::platform
