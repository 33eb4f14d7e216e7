// When a request is due, as far as our schedule can say the same.
#include <algorithm>
#include <array>
#include <set>
#include <string>

#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_import_parts.h"

namespace newel {
namespace {

constexpr std::array<const char*, 8> kDayCodes = {"", "mon", "tue", "wed", "thu", "fri", "sat", "sun"};

int dayOf(const std::string& code) {
  const auto* found = std::find(kDayCodes.begin() + 1, kDayCodes.end(), code);
  return found == kDayCodes.end() ? 0 : static_cast<int>(found - kDayCodes.begin());
}

// What a repeat says, when it says nothing beside this.
struct Repeat {
  std::int64_t frequency = 1;
  std::string unit;
  std::vector<int> days;
  std::size_t times = 0;  // of the day
};

bool knowsAllOf(const FhirNode& repeat) {
  static const std::set<std::string> kKnown = {"boundsPeriod", "frequency", "period",
                                               "periodUnit",   "dayOfWeek", "timeOfDay"};
  const auto keys = repeat.keys();
  return std::all_of(keys.begin(), keys.end(), [](const std::string& key) { return kKnown.contains(key); });
}

Repeat readRepeat(const FhirNode& repeat) {
  Repeat read;
  read.frequency = repeat.at("frequency").peekWhole().value_or(1);
  read.unit = repeat.at("periodUnit").peekText();
  for (const auto& day : repeat.list("dayOfWeek")) {
    const int number = dayOf(day.peekText());
    if (number == 0) day.refuse("is no day of the week");
    read.days.push_back(number);
  }
  read.times = repeat.list("timeOfDay").size();
  return read;
}

// False: our schedule cannot say the same.
bool setRhythm(const Repeat& repeat, v1::Schedule& schedule) {
  const auto once_or_by_time = static_cast<std::int64_t>(std::max<std::size_t>(repeat.times, 1));
  if (repeat.unit == "d" && repeat.frequency == once_or_by_time) {
    for (int day = 1; day <= 7; ++day) {
      const bool named = std::find(repeat.days.begin(), repeat.days.end(), day) != repeat.days.end();
      if (repeat.days.empty() || named) schedule.mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
    }
    return true;
  }
  if (repeat.unit != "wk" || repeat.times > 0) return false;
  if (repeat.days.empty() && repeat.frequency >= 1 && repeat.frequency <= 7) {
    schedule.set_times_per_week(static_cast<std::uint32_t>(repeat.frequency));
    return true;
  }
  // Each named day once: as often a week as there are days.
  if (repeat.frequency != static_cast<std::int64_t>(repeat.days.size())) return false;
  for (const int day : repeat.days) schedule.mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
  return true;
}

// Ours alone has them: a time of day says when something begins, and a window also when it is over.
void readWindows(const FhirNode& timing, v1::Schedule& schedule) {
  for (const auto& one : timing.list("extension")) {
    if (one.at("url").peekText() != extensionUrl("window")) continue;
    v1::Window& window = *schedule.add_windows();
    for (const auto& part : one.list("extension")) {
      const auto minute = part.at("valueInteger").peekWhole();
      if (!minute || *minute < 0 || *minute > 1440) return part.refuse("is no minute of a day");
      const std::string name = part.at("url").peekText();
      if (name == "from_min") window.set_from_min(static_cast<std::uint32_t>(*minute));
      if (name == "to_min") window.set_to_min(static_cast<std::uint32_t>(*minute));
    }
    if (window.from_min() >= window.to_min()) return one.refuse("ends before it begins");
  }
}

// Requests of one draft that say different days: the first day of all, and the last of all, are for a
// therapist.
void takeBounds(const FhirNode& period, v1::Programme& draft) {
  for (const bool first : {true, false}) {
    const FhirNode node = period.at(first ? "start" : "end");
    const std::string day = node.peekText();
    if (day.size() != 10) continue;
    if (!parseLocalDay(day).ok()) {
      node.refuse("is no day");
      continue;
    }
    const std::string& known = first ? draft.effective_day() : draft.end_day();
    if (!known.empty() && known != day) continue;
    if (first) draft.set_effective_day(day);
    if (!first) draft.set_end_day(day);
    node.take();
  }
}

void takeZone(const FhirNode& timing, v1::Programme& draft) {
  for (const auto& one : timing.list("extension")) {
    if (one.at("url").peekText() != extensionUrl("zone")) continue;
    const std::string zone = one.at("valueCode").peekText();
    if (!loadZone(zone).ok()) return one.at("valueCode").refuse("is no time zone that is known here");
    if (!draft.zone().empty() && draft.zone() != zone) return;
    draft.set_zone(zone);
    one.take();
  }
}

}  // namespace

void takeTiming(const FhirNode& request, v1::Entry& entry, v1::Programme& draft) {
  takeBounds(request.at("occurrencePeriod"), draft);
  const FhirNode timing = request.at("occurrenceTiming");
  const FhirNode repeat = timing.at("repeat");
  if (!repeat.there() || !knowsAllOf(repeat) || timing.has("event") || timing.has("code")) return;
  if (!repeat.has("periodUnit") || repeat.at("period").peekWhole() != 1) return;
  v1::Schedule schedule;
  v1::Schedule windows;
  readWindows(timing, windows);
  Repeat read = readRepeat(repeat);
  // Our own files count every window of a week: so many days, so often a day.
  const auto count = static_cast<std::int64_t>(windows.windows_size());
  if (count > 1 && read.unit == "wk" && read.frequency % count == 0) read.frequency /= count;
  if (!setRhythm(read, schedule)) return;
  *schedule.mutable_windows() = windows.windows();
  *entry.mutable_schedule() = schedule;
  for (const char* key : {"frequency", "period", "periodUnit", "dayOfWeek"}) repeat.at(key).take();
  // A time of day that a window says is taken with it; alone it is listed.
  if (!windows.windows().empty()) repeat.at("timeOfDay").take();
  for (const auto& one : timing.list("extension")) {
    const std::string url = one.at("url").peekText();
    if (url == extensionUrl("times-per-week") || url == extensionUrl("window")) one.take();
  }
  takeZone(timing, draft);
  takeBounds(repeat.at("boundsPeriod"), draft);
}

}  // namespace newel
