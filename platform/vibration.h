// The device shakes in the rhythm of a tone: for who cannot hear, for sound that is off, and for a phone in
// the pocket. Nothing is told by shaking alone: every cue is on the screen as well. UI thread.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "platform/tones.h"

namespace newel::platform {

// One stretch of shaking, or of stillness.
struct Pulse {
  bool shakes;
  int ms;
};
// The rhythm of notesOf(): never more than ten pieces, none that shakes shorter than 80 ms (a small motor
// needs as long to be felt; common practice, no source), under a second in all. Starts with a piece that
// shakes.
std::vector<Pulse> pulsesOf(Tone tone);

class Vibration {
 public:
  virtual ~Vibration() = default;
  // Asks the system, once, whether it can shake this device; `known` is called when it has answered, perhaps
  // at once, perhaps never. Costs nothing while nobody asks.
  virtual void ask(std::function<void()> known) = 0;
  virtual bool works() const = 0;  // false until the system has answered
  // Starts and returns; a rhythm still under way is cut. Does nothing where works() is false.
  virtual void play(Tone tone) = 0;
  virtual void stop() = 0;
};

// On Linux: feedbackd on the session bus, which phones' desktops bring (package feedbackd). `app`: the name
// of the program's desktop file, by which an owner silences it.
std::unique_ptr<Vibration> makeVibration(const std::string& app);

}  // namespace newel::platform
