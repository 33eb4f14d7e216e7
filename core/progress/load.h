// How much a practice asked of a person, and how evenly a week spread it: effort x minutes.
// Not here: any verdict. Monotony and strain have no published limit for people with a prosthesis; they are
// compared with the same person's other weeks and nothing else.
//
// Sources: load is rating x minutes (Foster 2001, Journal of Strength and Conditioning Research 15:109);
// monotony is the daily mean over the SD of daily loads, strain is load x monotony (Foster 1998, Medicine &
// Science in Sports & Exercise 30:1164). The papers leave two things open, and the example printed in Foster
// 2001 does not follow from its own definition. Our rule, stated on every report: seven local days, Monday
// first, several practices of a day added up, a day of rest counts 0, SD of the population (divided by 7),
// and no number at all where all days are equal (SD 0).
#pragma once

#include <absl/time/civil_time.h>

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"

namespace newel {

// One effort, rated 0 to 10, over some minutes (0 and more). Arbitrary units (AU).
double sessionLoad(double effort_0_10, double minutes);

struct LoadSpread {
  double sum = 0;                  // AU
  double mean = 0;                 // AU a value
  double deviation = 0;            // SD of the population, AU
  std::optional<double> monotony;  // mean / deviation; nullopt when all values are equal
  std::optional<double> strain;    // sum x monotony
};
// Over any list of loads. For a week give seven daily sums; nothing gives zeros and no monotony.
LoadSpread loadSpread(const std::vector<double>& loads);

// Time between beats is work too, but a telephone call is not: an entry counts at most this many times its
// own work (moves, holds and returns). Source: common practice, no source.
inline constexpr double kLongestShare = 4;

struct PracticeLoad {
  double load = 0;          // AU, of the entries that were rated
  double minutes = 0;       // of the entries that were rated
  int rated_entries = 0;    // entries with an effort and some work done
  int unrated_entries = 0;  // some work done, no effort told: their load is not known, it is not 0
  int trimmed_entries = 0;  // rated ones cut to kLongestShare
};
// Each entry's effort over its minutes from first beat to end, rests included.
PracticeLoad practiceLoad(const v1::Practice& practice);

struct DayLoad {
  absl::CivilDay day;
  double load = 0;
};

struct WeekLoad {
  absl::CivilDay monday;
  std::array<double, 7> days{};  // AU, Monday first
  bool whole = false;            // all seven days lie in the range that was asked for
  // sum, mean and deviation of the days in the range; monotony and strain only of a whole week, since days
  // outside are not days of rest.
  LoadSpread spread;
  int unrated_entries = 0;
};

// Every week that touches [first, last], oldest first; days outside are left out. Several loads of one day
// add up. Empty when last lies before first.
std::vector<WeekLoad> weeklyLoads(const std::vector<DayLoad>& loads, absl::CivilDay first,
                                  absl::CivilDay last);

// The same from practices (each id once, with its last revision), by their local day. A day that cannot be
// read is left out, as check() would have refused it.
std::vector<WeekLoad> weeklyLoads(const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                  absl::CivilDay last);

}  // namespace newel
