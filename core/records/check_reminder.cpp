#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

constexpr std::uint32_t kLastMinute = 1439;
constexpr int kMost = 60;

void checkTimes(const FieldCheck& check, const v1::ReminderSettings& settings) {
  check.that(settings.times_size() <= kMost, "times", "more than 60");
  std::set<std::pair<std::uint32_t, std::uint32_t>> seen;
  for (int i = 0; i < settings.times_size(); ++i) {
    const FieldCheck at = check.at("times", i);
    const v1::Window& window = settings.times(i).window();
    at.range("window.from_min", window.from_min(), 0, kLastMinute);
    at.range("window.to_min", window.to_min(), window.from_min() + 1, kLastMinute + 1);
    at.range("at_min", settings.times(i).at_min(), window.from_min(),
             std::max(window.from_min(), window.to_min() - std::min(window.to_min(), 1U)));
    at.that(seen.emplace(window.from_min(), window.to_min()).second, "window", "is given twice");
  }
}

}  // namespace

absl::Status check(const v1::ReminderBook& book) {
  FieldCheck check;
  check.enums(book);
  const FieldCheck settings = check.at("settings");
  check.that(book.has_settings(), "settings", "is missing");
  settings.range("quiet_from_min", book.settings().quiet_from_min(), 0, kLastMinute);
  settings.range("quiet_to_min", book.settings().quiet_to_min(), 0, kLastMinute);
  settings.range("snooze_min", book.settings().snooze_min(), 5, 180);
  checkTimes(settings, book.settings());
  check.that(book.shown_size() <= kMost, "shown", "more than 60");
  for (int i = 0; i < book.shown_size(); ++i) {
    const FieldCheck at = check.at("shown", i);
    const v1::ReminderShown& shown = book.shown(i);
    at.text("id", shown.id(), 1, 100);
    at.day("local_day", shown.local_day());
    at.that(shown.has_at(), "at", "is missing");
    at.that(shown.has_answered_at() == (shown.answer() != v1::REMINDER_ANSWER_UNSPECIFIED), "answered_at",
            "goes with an answer");
  }
  return check.status();
}

}  // namespace newel
