// What a phone remembers about reminders: small changes to the book, each leaving it within its bounds. Pure.
// Not here: what follows from it (reminders.h).
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <string>

#include "core/records/reminder.pb.h"

namespace newel {

// Not asked yet, quiet from 21:00 to 08:00, "later" is half an hour (common practice, no source).
v1::ReminderSettings usualReminderSettings();

// The time for one window; one outside the window is brought into it.
void chooseTime(v1::ReminderSettings& settings, const v1::Window& window, int minute_of_day);

// It was shown, and waits for an answer; the same id once more is the last one shown again. The oldest beyond
// 60 go.
void noteShown(v1::ReminderBook& book, std::string id, absl::CivilDay day, absl::Time at);

// The one with that id was answered. False, and nothing changed, when it was not shown or has an answer: the
// first one counts.
bool noteAnswer(v1::ReminderBook& book, const std::string& id, v1::ReminderAnswer answer, absl::Time at);

// Newel is in front of the person: whatever waited for an answer has one. True when anything did.
bool noteOpened(v1::ReminderBook& book, absl::Time at);

// Shown, and no answer came, in a row up to the last one.
int unansweredInARow(const v1::ReminderBook& book);

}  // namespace newel
