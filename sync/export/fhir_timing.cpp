// When an entry is due, as Timing: a repeat where it can be said as one, else every occasion as an event.
#include <absl/strings/str_cat.h>

#include <utility>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// mon to sun
const char* dayCode(int day) {
  static constexpr const char* kCodes[] = {"", "mon", "tue", "wed", "thu", "fri", "sat", "sun"};
  return kCodes[day];
}

Json timesOfDay(const v1::Schedule& schedule) {
  Json times = Json::array();
  for (const auto& window : schedule.windows()) times.push_back(clockMinute(window.from_min()) + ":00");
  return times;
}

// `bounds`: the repeat with its bounds.
Json repeatOf(Json bounds, const v1::Schedule& schedule) {
  Json repeat = std::move(bounds);
  const int windows = schedule.windows_size();
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    // Days are the person's choice, so no day is named; and no time, which FHIR would read as each day's.
    repeat["frequency"] = static_cast<int>(schedule.times_per_week()) * windows;
    repeat["period"] = 1;
    repeat["periodUnit"] = "wk";
    return repeat;
  }
  repeat["frequency"] = windows;
  repeat["period"] = 1;
  repeat["periodUnit"] = "d";
  Json days = Json::array();
  for (const int day : schedule.weekdays().days()) days.push_back(dayCode(day));
  repeat["dayOfWeek"] = std::move(days);
  // A window of the whole day names no time, which would be midnight.
  const bool any_time =
      windows == 1 && schedule.windows(0).from_min() == 0 && schedule.windows(0).to_min() == 1440;
  if (!any_time) repeat["timeOfDay"] = timesOfDay(schedule);
  return repeat;
}

// A repeat knows no day left out, so with pauses each time is named, at its instant.
Json eventsOf(const v1::Programme& programme, const v1::Entry& entry) {
  v1::Programme alone = programme;
  alone.clear_entries();
  *alone.add_entries() = entry;
  // Their own exercises and media belong to the other entries; the days alone matter here.
  alone.clear_own_exercises();
  alone.mutable_entries(0)->set_exercise_id("any");
  Json events = Json::array();
  const auto zone = loadZone(programme.zone());
  const auto occasions =
      occasionsOf(alone, *parseLocalDay(programme.effective_day()), *parseLocalDay(programme.end_day()));
  if (!zone.ok() || !occasions.ok()) return events;
  for (const auto& occasion : *occasions) {
    if (occasion.state != OccasionState::Due) continue;
    events.push_back(isoInstantIn(reminderInstant(occasion, *zone), programme.zone()));
  }
  return events;
}

Json boundsOf(const v1::Programme& programme) {
  return {{"boundsPeriod", {{"start", programme.effective_day()}, {"end", programme.end_day()}}}};
}

Json windowsExtension(const v1::Schedule& schedule, const std::string& zone) {
  Json list = Json::array();
  if (!zone.empty()) list.push_back(extension("zone", "valueCode", zone));
  for (const auto& window : schedule.windows()) {
    list.push_back(partsExtension("window", Json::array({part("from_min", "valueInteger", window.from_min()),
                                                         part("to_min", "valueInteger", window.to_min())})));
  }
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek)
    list.push_back(extension("times-per-week", "valueInteger", schedule.times_per_week()));
  for (const auto& pause : schedule.pauses()) {
    list.push_back(
        extension("pause", "valuePeriod", {{"start", pause.first_day()}, {"end", pause.last_day()}}));
  }
  return list;
}

}  // namespace

Json timingOf(const v1::Programme& programme, const v1::Entry& entry) {
  const v1::Schedule& schedule = entry.schedule();
  Json timing = {{"extension", windowsExtension(schedule, programme.zone())}};
  if (schedule.pauses().empty()) {
    timing["repeat"] = repeatOf(boundsOf(programme), schedule);
    return timing;
  }
  Json events = eventsOf(programme, entry);
  // All of it is a pause: nothing is due, and the bounds say when that is.
  if (events.empty()) {
    timing["repeat"] = boundsOf(programme);
  } else {
    timing["event"] = std::move(events);
  }
  return timing;
}

Json templateTimingOf(const v1::Schedule& schedule, std::uint32_t weeks) {
  Json bounds = {{"boundsDuration", {{"value", weeks}, {"unit", "wk"}, {"system", kUcum}, {"code", "wk"}}}};
  return {{"extension", windowsExtension(schedule, "")}, {"repeat", repeatOf(std::move(bounds), schedule)}};
}

}  // namespace newel
