#include "core/schedule/reminder_book.h"

#include <algorithm>
#include <utility>

#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr int kMostShown = 60;  // reminder.proto

int placeOf(const v1::ReminderBook& book, const std::string& id) {
  for (int i = book.shown_size() - 1; i >= 0; --i) {
    if (book.shown(i).id() == id) return i;
  }
  return -1;
}

}  // namespace

v1::ReminderSettings usualReminderSettings() {
  v1::ReminderSettings settings;
  settings.set_quiet_from_min(21 * 60);
  settings.set_quiet_to_min(8 * 60);
  settings.set_snooze_min(30);
  return settings;
}

void chooseTime(v1::ReminderSettings& settings, const v1::Window& window, int minute_of_day) {
  const int from = static_cast<int>(window.from_min());
  const int last = static_cast<int>(window.to_min()) - 1;
  const auto minute = static_cast<std::uint32_t>(std::clamp(minute_of_day, from, std::max(from, last)));
  for (v1::ReminderTime& time : *settings.mutable_times()) {
    if (time.window().from_min() != window.from_min() || time.window().to_min() != window.to_min()) continue;
    time.set_at_min(minute);
    return;
  }
  // Of programmes long gone; the newest stay.
  if (settings.times_size() >= kMostShown) settings.mutable_times()->DeleteSubrange(0, 1);
  v1::ReminderTime& time = *settings.add_times();
  *time.mutable_window() = window;
  time.set_at_min(minute);
}

// The id may be one of the book's own.
void noteShown(v1::ReminderBook& book, std::string id, absl::CivilDay day, absl::Time at) {
  const int before = placeOf(book, id);
  if (before >= 0) book.mutable_shown()->DeleteSubrange(before, 1);
  const int too_many = book.shown_size() - kMostShown + 1;
  if (too_many > 0) book.mutable_shown()->DeleteSubrange(0, too_many);
  v1::ReminderShown& shown = *book.add_shown();
  shown.set_id(std::move(id));
  shown.set_local_day(formatLocalDay(day));
  *shown.mutable_at() = toTimestamp(at);
}

bool noteAnswer(v1::ReminderBook& book, const std::string& id, v1::ReminderAnswer answer, absl::Time at) {
  const int place = placeOf(book, id);
  if (place < 0) return false;
  v1::ReminderShown& shown = *book.mutable_shown(place);
  if (shown.answer() != v1::REMINDER_ANSWER_UNSPECIFIED) return false;
  shown.set_answer(answer);
  *shown.mutable_answered_at() = toTimestamp(at);
  return true;
}

bool noteOpened(v1::ReminderBook& book, absl::Time at) {
  bool any = false;
  for (v1::ReminderShown& shown : *book.mutable_shown()) {
    if (shown.answer() != v1::REMINDER_ANSWER_UNSPECIFIED) continue;
    shown.set_answer(v1::REMINDER_ANSWER_CAME);
    *shown.mutable_answered_at() = toTimestamp(at);
    any = true;
  }
  *book.mutable_opened_at() = toTimestamp(at);
  return any;
}

int unansweredInARow(const v1::ReminderBook& book) {
  int count = 0;
  for (auto shown = book.shown().rbegin(); shown != book.shown().rend(); ++shown) {
    if (shown->answer() != v1::REMINDER_ANSWER_UNSPECIFIED) break;
    ++count;
  }
  return count;
}

}  // namespace newel
