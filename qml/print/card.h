// The card for the wallet: whose limb, what is worn, whom to call, when to stop. Both faces on one sheet, the
// size of a bank card (ISO/IEC 7810, ID-1: 85.60 mm x 53.98 mm), to be cut out and folded.
#pragma once

#include <absl/status/statusor.h>

#include <QtCore/QString>
#include <QtGui/QPageSize>
#include <string>

#include "core/records/identity.pb.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel::print {

struct CardInput {
  v1::Person person;
  QString name;  // empty: a line to write it on
  v1::ClinicCard clinic;
  v1::StopThresholds thresholds;  // of the programme that counts; absent numbers are left out
};

struct CardOptions {
  QPageSize::PageSizeId size = QPageSize::A4;
  std::string language;  // BCP 47; empty: the person's
};

// Returns the number of pages, which is one. kInvalidArgument naming the field, kUnavailable when the file
// cannot be written.
absl::StatusOr<int> writeCard(const CardInput& input, const CardOptions& options, const QString& file);

}  // namespace newel::print
