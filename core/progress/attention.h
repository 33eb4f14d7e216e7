// The attention list: a caseload, most urgent first, each row saying why and how old its figures are.
// Data in, data out; the desk feeds it. Not here: words (the text keys are translated where they are shown),
// and any score: a row has reasons, not points.
// Source of every limit below: common practice, no source. They decide the order of a list, nothing else.
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/progress/adherence.h"

namespace newel {

enum class Urgency { Now, Today, Soon, None };

// Where the figures of a row come from. Never and Stale say that nobody knows; they are not "not done".
enum class Figures { NeverHeard, Stale, Fresh };

inline constexpr int kStaleAfterDays = 3;     // heard longer ago: figures are stale, and the row is Soon
inline constexpr int kUnseenAfterHours = 24;  // an urgent message unseen for longer is Now (hazard H07)
inline constexpr int kPlainUnseenAfterHours = 72;
inline constexpr int kNotArrivedAfterHours = 48;  // a programme
inline constexpr int kEndsWithinDays = 7;
inline constexpr int kFewestDue = 4;        // under this many due occasions a share says nothing
inline constexpr double kLittleDone = 0.5;  // capped share under this is little

struct OpenFlag {
  std::string rule_id;
  bool red_flag = true;  // false: a lesser stop (NOT_TODAY)
  absl::Time at;
};

struct WaitingMessage {
  absl::Time written_at;
  bool urgent = false;
};

// Plain facts of one person, as the desk has them.
struct AttentionFacts {
  std::string person_id;
  std::optional<absl::Time> last_contact;  // of the phone with the hub; nullopt: never
  bool paired = false;
  std::optional<std::uint32_t> programme_number;      // the newest one signed; nullopt: none
  std::optional<absl::CivilDay> programme_end;        // of that one
  std::optional<absl::Time> programme_waiting_since;  // signed, and not arrived on the phone
  std::optional<absl::Time> hold_waiting_since;       // a hold order (or its lift) that has not arrived
  std::optional<absl::Time> on_hold_since;            // the oldest hold order not lifted yet
  std::vector<OpenFlag> flags;                        // stops that still stand
  std::vector<WaitingMessage> unseen_by_person;
  std::vector<WaitingMessage> unread_by_clinic;
  Share share;                       // of the last 14 days, see adherence.h
  int no_data = 0;                   // due occasions of the same days that nobody has heard of
  std::vector<double> pain_ratings;  // the highest of each practice, oldest first, 0 to 10
};

struct AttentionReason {
  Urgency urgency = Urgency::None;
  std::string key;                          // text key, for example "attention.red-flag"
  std::map<std::string, std::string> args;  // version-neutral: digits, ids, dot decimals
  std::optional<absl::Duration> age;        // how long it has been so
};

struct AttentionRow {
  std::string person_id;
  Urgency urgency = Urgency::None;       // of the first reason
  std::vector<AttentionReason> reasons;  // most urgent first; never empty
  Figures figures = Figures::NeverHeard;
  std::optional<absl::Duration> figures_age;  // since the last contact; nullopt: never heard
};

// One row for every person, Now before Today before Soon before None; within one urgency by the order of
// reasons in attention.cpp, then the longest standing, then the id. `now` and `today` are the desk's;
// `silent_after_days` is the clinic's setting "silent-days": not heard for longer, the row is Today (phone).
// A person with nothing to say gets "attention.all-done", "attention.some-done", "attention.nothing-due" or
// "attention.no-data", never an empty row.
std::vector<AttentionRow> attentionList(const std::vector<AttentionFacts>& people, absl::Time now,
                                        absl::CivilDay today, int silent_after_days);

}  // namespace newel
