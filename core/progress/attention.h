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
#include <set>
#include <string>
#include <vector>

#include "core/progress/adherence.h"
#include "core/progress/told_signs.h"
#include "core/progress/trend.h"

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
inline constexpr double kLittleDone = 0.5;  // capped share under this is less than agreed
inline constexpr int kNothingDoneDays = 7;  // nothing done for as long: the row is Today
inline constexpr int kPainIsNewsDays = 14;  // a rise whose last rating is older is no news
inline constexpr double kLeastRise = 1;     // points: under this a share of little is no rise
inline constexpr int kAttentionWeeks = 3;   // shares: this week and the two before it

struct OpenFlag {
  std::string rule_id;
  bool red_flag = true;  // false: a lesser stop (NOT_TODAY)
  absl::Time at;
};

// Messages that wait, those of one kind together.
struct WaitingMessage {
  absl::Time written_at;  // of the one that waits longest
  bool urgent = false;
  int count = 1;
  std::optional<absl::Time> last_at{};  // of the newest; nullopt: there is one
};

struct MeasureDue {
  std::string kind_id;
  absl::CivilDay due;
};

// A therapist's word that a row can wait. It covers what the row said then and nothing that is more urgent,
// of another kind, or newer.
struct Snooze {
  absl::Time at;
  absl::CivilDay until;  // the last day on which it counts
  Urgency urgency = Urgency::Soon;
  std::set<std::string> keys;  // of the reasons the row had
};

// Plain facts of one person; attention_digest.h gathers them.
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
  std::optional<ToldSign> fall;  // the last one that the clinic has not spoken after
  std::optional<ToldSign> skin;
  Share share;                              // of this week and the two before it, see adherence.h
  int no_data = 0;                          // due occasions of the same weeks that nobody has heard of
  std::vector<PainRating> pain_ratings;     // the last ones, oldest first, see trend.h
  std::optional<absl::CivilDay> last_done;  // when any dose was done last; nullopt: never
  int missed_since_done = 0;              // occasions of the same weeks that passed after that without a word
  std::vector<std::string> ready;         // ids of exercises whose rule says to look at the next step
  std::vector<std::string> too_hard;      // and of those whose rule says to step back
  std::optional<MeasureDue> measure_due;  // nullopt: none is, or nobody knows
  std::optional<Snooze> snooze;
};

struct AttentionReason {
  Urgency urgency = Urgency::None;
  std::string key;                          // text key, for example "attention.red-flag"
  std::map<std::string, std::string> args;  // version-neutral: digits, ids, dot decimals
  std::optional<absl::Duration> age;        // how long it has been so
  std::size_t rank = 0;                     // among those of one urgency: what to read first
  std::optional<absl::Time> last_at;  // when the latest thing it speaks of happened; nullopt: no one moment
};

struct AttentionRow {
  std::string person_id;
  Urgency urgency = Urgency::None;       // of the first reason
  std::vector<AttentionReason> reasons;  // most urgent first; never empty
  Figures figures = Figures::NeverHeard;
  std::optional<absl::Duration> figures_age;  // since the last contact; nullopt: never heard
  bool snoozed = false;                       // by facts.snooze, and nothing has ended it
};

// One row for every person, Now before Today before Soon before None, those that are snoozed behind all
// others; within one urgency by the order of reasons in attention.cpp, then the longest standing, then the
// id. `now` and `today` are the desk's; `silent_after_days` is the clinic's setting "silent-days": not heard
// for longer, the row is Today (phone). A person with nothing to say gets "attention.all-done",
// "attention.some-done", "attention.nothing-due" or "attention.no-data", never an empty row.
std::vector<AttentionRow> attentionList(const std::vector<AttentionFacts>& people, absl::Time now,
                                        absl::CivilDay today, int silent_after_days);

// The row of one person, and what stands first of two rows: for whoever keeps a list in order.
AttentionRow attentionRow(const AttentionFacts& facts, absl::Time now, absl::CivilDay today,
                          int silent_after_days);
bool comesBefore(const AttentionRow& left, const AttentionRow& right);
std::vector<AttentionRow> mostUrgentFirst(std::vector<AttentionRow> rows);

// Whether a person may say that this row can wait. What is Now may not, nor may a red flag or a fall: they go
// when the clinic has spoken to the person, by a message, a programme or a lifted hold, and by nothing else.
// A row without a need has nothing to wait for.
bool maySnooze(const AttentionRow& row);

}  // namespace newel
