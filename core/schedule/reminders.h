// Which reminders stand ready: from what is due, what was done, what the person wants and what became of the
// reminders before, to a list of instants. Pure; made anew whenever one of these changes, or the clock or the
// zone does. Not here: how a reminder is shown (platform/reminders.h), and what is due (occasions.h).
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/reminder.pb.h"

namespace newel {

// Sources of these numbers: common practice, no source, except where a line says otherwise.
inline constexpr int kMostReminders = 40;       // some systems keep 64 and drop the rest without a word
inline constexpr int kReminderDays = 7;         // and are armed no further ahead
inline constexpr int kMostRemindersADay = 6;    // those that the person asked for by "later" are beside them
inline constexpr int kUnansweredBecomeOne = 3;  // so that it does not nag
// What would come within this of another comes with it.
inline constexpr absl::Duration kRemindersTogether = absl::Minutes(30);

enum class ReminderKind {
  Window,  // something is due in a window of the day
  Daily,   // the one of its day, since those before it went unanswered
  Later    // the person asked to be reminded again
};

struct ArmedReminder {
  std::string
      id;         // "2026-11-30/0540-0720": the day and the window; again after "later": with a "+" each time
  absl::Time at;  // never before `now`
  absl::CivilDay day;  // the local day that its occasions are due on
  v1::Window window;   // the first one, where several come together
  ReminderKind kind = ReminderKind::Window;
};

struct ReminderInput {
  const v1::Programme* programme = nullptr;  // the one that counts on this phone; nullptr: none
  std::vector<v1::OccasionRef> done;         // in full or in part
  bool held_all = false;                     // a hold order on everything
  std::vector<std::string> held_entry_ids;
  bool stopped = false;                         // no practice until the clinic has spoken
  std::optional<absl::CivilDay> practice_from;  // a stop stands until this day
  v1::ReminderBook book;
  absl::TimeZone zone;  // where the person is now
  absl::Time now;
};

// In order of their instants. One for each window in which anything is due, however many entries it has; none
// for what is done, excused, on hold or under a stop, nor while reminders are not wanted, nor for a programme
// that does not pass check().
// When: at the time the person chose for that window, else at its beginning; a local time that the zone skips
// shows later on the clock, one that comes twice is its first pass (RFC 5545 section 3.3.5).
// Quiet hours: what would fall into them comes at their end where that still lies in its window. Otherwise it
// is dropped rather than shown outside its window: a reminder only reminds, and the day's page shows what is
// due in any case. Times-a-week entries: reminded on the days their week is spread over (spreadOverWeek()),
// and on every day once no spare day is left; not at all when the week's share is done. Unanswered: the list
// takes it that nobody answers. Once three in a row have gone unanswered, counting those in the book and
// those of the list before it, each further day has one alone, its first. Any answer, and opening Newel,
// begins the count anew (with the next list). Late: what should have come while the machine slept or was off
// comes now, if its window is still open and Newel was not opened since. What was shown already is never
// shown again, whatever zone or clock do, unless the clock it was shown by was over a day ahead.
std::vector<ArmedReminder> armedReminders(const ReminderInput& input);

// Ids of shown reminders that nobody answered and that have nothing to remind of any more: done meanwhile, on
// hold, of another day, or reminders are not wanted. To be taken off the screen.
std::vector<std::string> remindersToClear(const ReminderInput& input);

// Whether a minute of the local day lies in the quiet hours.
bool isQuiet(const v1::ReminderSettings& settings, int minute_of_day);

// The windows in which `programme` has entries, each once, in order. For the settings page.
std::vector<v1::Window> windowsOf(const v1::Programme& programme);
// Minute of the local day at which a reminder for `window` comes on an ordinary day; nullopt: never, the
// quiet hours cover it.
std::optional<int> reminderMinute(const v1::ReminderSettings& settings, const v1::Window& window);
// The time chosen for `window`, or its beginning, quiet or not.
int wantedMinute(const v1::ReminderSettings& settings, const v1::Window& window);

}  // namespace newel
