// The voice. One sentence at a time: what is said last replaces what was being said before.
// Not here: when to say what (qml/home/cue_caller.h). Every sentence is on the screen as well.
#pragma once

#include <string>
#include <vector>

namespace newel::platform {

class Speech {
 public:
  virtual ~Speech() = default;
  // Languages with a voice on this machine, BCP 47 primary subtags such as "en"; empty when there is none.
  virtual std::vector<std::string> languages() const = 0;
  // Why `language` cannot be spoken, as a text key, or empty when it can: "speech.no-sound-device",
  // "speech.no-voice" (none for this language), "speech.broken" (the system's voice reported an error).
  virtual std::string whyNot(const std::string& language) const = 0;
  // Says `text`. Does nothing when whyNot() has a reason. Never blocks.
  virtual void say(const std::string& text, const std::string& language) = 0;
  virtual void stop() = 0;
};

}  // namespace newel::platform
