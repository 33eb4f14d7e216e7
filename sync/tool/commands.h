// The commands of `newel`, each a function from options to text and an exit code (tool_io.h), so that tests
// call what the program calls. No command reads a clock: days are given.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <cstdint>
#include <functional>
#include <iosfwd>
#include <string>
#include <vector>

#include "core/progress/adherence.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel::tool {

// Whoever works for long asks whether to go on, and says on `err` how far it is. What is empty: nobody can
// stop it, nothing is said.
struct LongWork {
  std::function<bool()> asked_to_stop{};
  std::function<absl::Duration()> elapsed{};  // a clock that nobody can set
};

struct Output {
  std::ostream& out;
  std::ostream& err;
  bool json = false;
  const LongWork* long_work = nullptr;  // outlives the command; nullptr: as an empty one
};

// Findings for one entry or a whole programme, with a clinic's settings (a file, or empty: the usual ones)
// and the therapist's words in `language`. kSaysNo when it may not be signed.
struct CheckOptions {
  std::string person, file, last, settings;
  std::string language = "en";
};
int runCheck(const CheckOptions& options, Output output);

// Every exercise against every kind of person (everyone.h). kSaysNo when anything is wrong.
int runCheckEveryone(Output output);

// Occasions of a programme on the local days [from, to].
int runOccasions(const std::string& programme_file, const std::string& from, const std::string& to,
                 Output output);

struct PersonOptions {
  std::string person_file;  // instead of side and level
  std::string side = "left";
  std::string level = "transtibial";
  std::string knee;   // default: own-knee below the knee, yielding above
  bool both = false;  // both limbs lost, both at `level`; side is then the strong side
  std::string language = "en";
};

struct TimelineOptions : PersonOptions {
  std::string exercise;  // id in the catalogue; or entry_file
  std::string entry_file;
  std::string support, policy, prosthesis, rung;
  std::int64_t sets = -1, repetitions = -1, hold_s = -1, move_s = -1, return_s = -1, rest_s = -1;
  std::int64_t repetition_rest_s = -1, minutes = -1, bouts = -1, passes = -1, distance_m = -1,
               step_count = -1, step_s = -1;
};
// Exactly what the phone will do, beat by beat.
int runTimeline(const TimelineOptions& options, Output output);

struct FigureOptions : PersonOptions {
  std::string exercise;  // id in the catalogue; may be empty with `sheet` and `audit`
  bool sheet = false;    // three key poses of the exercise, or of every one that has a clip
  bool audit = false;    // no picture: where a drawn body could not be a body
  std::string folder;    // clips and words instead of the program's own (core/figure)
  std::string support;   // what the hands hold; empty: the exercise's first
  double at = 0;         // 0 to 1 of one whole run through the exercise
  std::string prosthesis = "on";
  std::string out;  // file; empty: standard output
  bool dark = false;
};
// The drawn body as SVG; with `audit` kSaysNo when anything is found.
int runFigure(const FigureOptions& options, Output output);

// What one person was asked to do and did: files, and days as YYYY-MM-DD.
struct DoneOptions {
  std::vector<std::string> programmes, practices;
  std::vector<std::string> holds;  // hold orders, lifts included: days on which nothing was due
  std::string from, to;            // both ends included
  std::string today;               // later days are still to come; empty: `to`
  std::string heard_until;         // last day the phone was heard from; empty: `today`
  std::string zone = "Etc/UTC";    // the person's; tells the day of a hold order
};
// Adherence over [from, to]. Errors name the option or the file.
absl::StatusOr<Adherence> adherenceFrom(const DoneOptions& options,
                                        const std::vector<v1::Programme>& programmes,
                                        const std::vector<v1::Practice>& practices);
int runAdherence(const DoneOptions& options, Output output);

// `kind`: person, entry, programme, practice, hold-order, message, receipt, measure, exercise, words, rule,
// dose, schedule, measure-kind, progression, wear-plan, wear-log, cert-statements, advice-card,
// clinic-settings, own-exercise. kSaysNo with the field's path when the record is refused.
int runValidate(const std::string& kind, const std::string& file, Output output);

}  // namespace newel::tool
