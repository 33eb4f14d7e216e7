// One running copy of a program for one folder of data, which may stay when its window is closed, and come
// back after the next log-in. UI thread.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace newel::platform {

class Resident {
 public:
  virtual ~Resident() = default;
  // True: this is the one, or the system cannot tell. False: another one runs and has been asked to come to
  // the front; this one has nothing left to do.
  virtual bool takePlace() = 0;
  // Called when another copy was started.
  virtual void onCalled(std::function<void()> called) = 0;
  // Whether the system starts `command` (program, then arguments) after each log-in. Written anew each time,
  // since an update may have moved the program. False when it could not be written or taken away.
  virtual bool startAtLogin(bool on, const std::vector<std::string>& command) = 0;
};

// `program` is a lower-case word, `folder` the data that no two copies may have open.
// On Linux: a name on the session bus, and an entry in the desktop's autostart folder (freedesktop.org,
// Desktop Application Autostart Specification 0.5); without a bus nothing is exclusive. An entry stands for
// its folder.
std::unique_ptr<Resident> makeResident(const std::string& program, const std::string& folder);

}  // namespace newel::platform
