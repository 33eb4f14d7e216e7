// The sheet a person takes home: every exercise in pictures and words, when to stop, whom to call, boxes to
// tick. The cues are those of the timeline, so paper, phone and voice say the same.
#pragma once

#include <absl/status/statusor.h>

#include <QtCore/QString>
#include <QtGui/QPageSize>

#include "core/library/catalogue.h"
#include "core/records/identity.pb.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/rule_book.h"

namespace newel::print {

inline constexpr double kBodyPt = 11;
inline constexpr double kLargePrintPt = 16;

struct HandoutInput {
  v1::Programme programme;  // passes check()
  v1::Person person;
  QString name;           // empty: no name on the sheet
  v1::ClinicCard clinic;  // with its settings: numbers in cards of advice are the clinic's
};

enum class HandoutLayout {
  Roomy,    // one or two exercises to a page, all that is said of each
  Compact,  // several to a page: how much, how, what to mind, when to stop
};

struct HandoutOptions {
  double body_pt = kBodyPt;  // kLargePrintPt for large print
  QPageSize::PageSizeId size = QPageSize::A4;
  int most_weeks = 6;  // of the tick-off grid
  HandoutLayout layout = HandoutLayout::Roomy;
  std::string language;  // BCP 47; empty: the person's
};

// Returns the number of pages. kInvalidArgument naming the field when the programme does not pass check(),
// kFailedPrecondition or kNotFound when an entry cannot be compiled for the person, kUnavailable when the
// file cannot be written. Needs a QGuiApplication; UI thread or any other.
absl::StatusOr<int> writeHandout(const HandoutInput& input, const HandoutOptions& options,
                                 const Catalogue& catalogue, const RuleBook& rules, const QString& file);

}  // namespace newel::print
