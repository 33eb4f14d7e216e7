// Short sounds that announce a change. They differ in rhythm as well as in pitch, and stay between 500 and
// 2,000 Hz, which older ears hear best (ISO 24500 family; values from memory).
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace newel::platform {

enum class Tone { Ready, Go, Count, HalfWay, HoldEnd, Rest, ChangeSide, LastOne, Stopped };
inline constexpr Tone kAllTones[] = {Tone::Ready,      Tone::Go,      Tone::Count,
                                     Tone::HalfWay,    Tone::HoldEnd, Tone::Rest,
                                     Tone::ChangeSide, Tone::LastOne, Tone::Stopped};

// One sounding piece and the silence after it.
struct Note {
  int hertz;
  int sound_ms;
  int silence_ms;
};
// What a tone consists of; shorter than 700 ms in all, so that it never covers the next cue.
const std::vector<Note>& notesOf(Tone tone);
// The same as samples: signed 16 bit, one channel, edges faded over 5 ms so that nothing clicks.
// `sample_rate` in hertz, 8,000 or more.
std::vector<std::int16_t> samplesOf(Tone tone, int sample_rate);

class Tones {
 public:
  virtual ~Tones() = default;
  // Why nothing can sound, as a text key ("sound.no-device"), or empty.
  virtual std::string whyNot() const = 0;
  // Opens the device ahead of the first tone, or gives it back: on while a practice runs, off otherwise, so
  // that an idle program wakes nothing up. play() needs no warm(true), it only comes later without.
  virtual void warm(bool on) = 0;
  // Starts at once and returns; a tone still sounding is cut. Does nothing when whyNot() has a reason.
  virtual void play(Tone tone) = 0;
};

}  // namespace newel::platform
