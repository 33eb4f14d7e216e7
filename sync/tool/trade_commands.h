// More commands of `newel`: measures, load, wear, progression, the reporting template, the catalogue and its
// sources. As in commands.h each is a function from options to text and an exit code.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "sync/tool/commands.h"

namespace newel::tool {

// Measures of the program, with those of `folder` (may be empty) beside them.
int runMeasureList(const std::string& folder, const std::string& language, Output output);
int runMeasureShow(const std::string& folder, const std::string& kind, const std::string& language,
                   Output output);
// Is the change beyond measurement error? `sure` is 90 or 95.
int runMeasureChange(const std::string& folder, const std::string& kind, double before, double after,
                     int sure, Output output);
// Measure records of one person: each checked, the last against the first of its kind and side. kSaysNo when
// one is refused.
int runMeasureRead(const std::string& folder, const std::vector<std::string>& files, Output output);
// `values`: pairs, first side and second side.
int runMeasureSymmetry(const std::vector<double>& values, Output output);
// Standard error and detectable change from a standard error (over 0), or from a deviation and a reliability.
int runMeasureError(double standard_error, double deviation, double reliability, Output output);

struct LoadOptions {
  std::vector<double> loads;           // daily loads as they are; or
  std::string file;                    // lines of day, effort and minutes; or
  std::vector<std::string> practices;  // practice records
  std::string from, to;                // with a file or practices; empty: first and last day in them
};
int runLoad(const LoadOptions& options, Output output);

int runWearExamples(const std::string& folder, const std::string& language, Output output);
// The steps of an example as the beginning of a wear plan, in protobuf text or JSON.
int runWearDraft(const std::string& folder, const std::string& example, Output output);
// What each day from `from` to `to` allows, by a plan and the blocks of wear logs. kSaysNo when the last day
// says stay off.
int runWearDays(const std::string& plan_file, const std::vector<std::string>& logs, const std::string& from,
                const std::string& to, Output output);

using ProgressOptions = DoneOptions;  // occasions decide what was missed; no days: nothing was
// For each entry of the last programme: ready, hold or step back, with the evidence, and the trend of pain.
int runProgress(const ProgressOptions& options, Output output);
int runProgressRules(const std::string& language, Output output);

struct CertOptions {
  std::string person, programme, statements;
  std::vector<std::string> practices;
  std::string from, to;  // with practices: the days over which adherence is counted
};
// kSaysNo when a line is missing.
int runCert(const CertOptions& options, Output output);

struct LibraryOptions : PersonOptions {
  std::string folder;    // a catalogue instead of the program's own
  std::string exercise;  // print this exercise or card; empty: list
  std::string purpose, position, equipment, support, tag, usual_for, mobility, words;
  bool cards = false;     // the cards of advice instead
  bool findings = false;  // what the safety rules say for the person
  bool allowed = false;   // leave out what they block
};
int runLibrary(const LibraryOptions& options, Output output);

// Every source of the program's content. `kind`: published, common-practice, from-memory or empty for all;
// `of`: exercises, cards, rules, questions, settings, measures, progression, wear, report or empty for all.
int runSources(const std::string& kind, const std::string& of, Output output);

}  // namespace newel::tool
