// Keeps the screen on while a practice runs, and only then.
#pragma once

namespace newel::platform {

class StayAwake {
 public:
  virtual ~StayAwake() = default;
  // Idempotent. Where the system offers no such thing it does nothing: cues are spoken and sounded anyway.
  virtual void keepOn(bool on) = 0;
};

}  // namespace newel::platform
