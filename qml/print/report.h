// The progress report for the record: what was asked, what was done, what happened, what was changed.
// Every share stands beside its definition and beside how many days anybody has data for.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <QtCore/QString>
#include <QtGui/QPageSize>
#include <optional>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/identity.pb.h"
#include "core/records/measure.pb.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/wear.pb.h"
#include "core/safety/rule_book.h"

namespace newel::print {

struct ReportInput {
  v1::Person person;
  v1::Identity identity;
  v1::ClinicCard clinic;
  QString made_by;                         // the therapist
  std::vector<v1::Programme> programmes;   // all numbers, oldest first
  std::vector<v1::Practice> practices;     // all, each id once
  std::vector<v1::HoldOrder> holds;        // all, oldest first
  std::vector<v1::Measure> measures;       // last revisions
  std::vector<v1::WearBlock> wear_blocks;  // last revisions
  std::string language = "en";             // of the record: the clinic's, not the person's
  std::uint32_t redness_min = 0;           // the clinic's setting, where no plan says otherwise
  absl::CivilDay first;                    // the period, both ends included
  absl::CivilDay last;
  absl::CivilDay today;                       // the person's
  std::optional<absl::CivilDay> heard_from;   // nullopt: from the beginning
  std::optional<absl::CivilDay> heard_until;  // nullopt: the phone was never heard from
  absl::TimeZone zone;                        // the person's
};

struct ReportOptions {
  double body_pt = 10;
  QPageSize::PageSizeId size = QPageSize::A4;
};

// The report's body as HTML, for the PDF and for tests. kInvalidArgument as adherenceOf().
absl::StatusOr<QString> reportHtml(const ReportInput& input, const Catalogue& catalogue,
                                   const RuleBook& rules);

// Returns the number of pages. Errors as reportHtml(), and kUnavailable when the file cannot be written.
absl::StatusOr<int> writeReport(const ReportInput& input, const ReportOptions& options,
                                const Catalogue& catalogue, const RuleBook& rules, const QString& file);

}  // namespace newel::print
