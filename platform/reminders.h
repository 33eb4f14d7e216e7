// Reminders of this machine: shown at their instants, whatever else happens meanwhile, and what the person
// answered. Which ones, and when: core/schedule/reminders.h. What stands on them is the same for all and
// neutral, since a lock screen is read by anybody. UI thread only; calls return at once and what happened
// comes back through the listener.
#pragma once

#include <absl/time/time.h>

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/time/clock.h"

namespace newel::platform {

enum class ReminderPermission {
  Asking,   // the system has not answered yet
  Granted,  // they are shown, as far as the system says
  Refused,  // the person, or the system for them, said no
  None      // this system has nothing that shows reminders
};

struct Reminder {
  std::string id;
  absl::Time at;  // wall time; one in the past is shown at once
};

struct ReminderWords {
  std::string title;
  std::string text;
  std::string open;   // on the button that opens Newel
  std::string later;  // on the one that asks to be reminded again
};

class ReminderListener {
 public:
  virtual ~ReminderListener() = default;
  virtual void reminderShown(const std::string& id, absl::Time at) = 0;
  virtual void reminderOpened(const std::string& id) = 0;
  virtual void reminderLater(const std::string& id) = 0;
  virtual void reminderDismissed(
      const std::string& id) = 0;  // by the person; one that just ran out is no answer
  virtual void reminderPermissionChanged() = 0;
  // Somebody set the clock, the zone is another, or the machine slept across an instant: the list has to be
  // made anew.
  virtual void clockOrZoneChanged() = 0;
};

class Reminders {
 public:
  virtual ~Reminders() = default;
  virtual void setListener(ReminderListener* listener) = 0;  // outlives this, or is set to nullptr
  virtual ReminderPermission permission() const = 0;
  // Asks the system for the permission, where it has such a question; else looks whether it shows reminders.
  virtual void ask() = 0;
  // These and no others, in the order of their instants. What is on the screen stays there.
  virtual void arm(const std::vector<Reminder>& reminders, const ReminderWords& words) = 0;
  // Taken off the screen, and no longer armed. Nothing happens where there is no such reminder.
  virtual void clear(const std::string& id) = 0;
  virtual void clearAll() = 0;
  // Whether the system shows them while the program is not running. Where not, it has to stay (resident.h).
  virtual bool comeWhenClosed() const = 0;
};

// The system's own. `clock` outlives it; `program` is the name shown to the system, "Newel".
// On Linux: the desktop's notification service (freedesktop.org, Desktop Notifications Specification 1.2) on
// the session bus. The timers are the program's, so nothing comes while it does not run; its actions are
// there where the service offers any. `zone_file` is what is watched for another zone.
std::unique_ptr<Reminders> makeReminders(const Clock& clock, const std::string& program,
                                         const std::string& zone_file = "/etc/localtime");

}  // namespace newel::platform
