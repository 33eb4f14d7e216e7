// What "How it goes" shows beside practice: wearing time day by day, and what the clinic measured. Numbers
// for RatingChart, and the same in words. Nothing here judges a value. Pure but for the translation that is
// installed; UI thread.
#pragma once

#include <absl/time/civil_time.h>

#include <QtCore/QString>
#include <QtCore/QVariantList>
#include <string>
#include <vector>

#include "core/progress/measure_table.h"
#include "core/progress/told_beside.h"
#include "core/records/measure.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/wear.pb.h"

namespace newel::home {

struct WornCourse {
  QVariantList points;  // hours a day; see RatingChart
  double most = 0;      // of the scale, whole hours, even
  QString words;        // empty: nothing was worn in these days
};
// Of the local days from `first` on, `days` of them. A block belongs to the day it was put on; one that is
// still on is left out.
WornCourse wornCourse(const std::vector<v1::WearBlock>& blocks, absl::CivilDay first, int days);

// One row a kind of measure that was taken or that the clinic asked for, by name: maps "title", "words",
// "ends" (the way the measure goes), "points", "least", "most".
QVariantList measureRows(const std::vector<v1::Measure>& measures, const std::vector<MeasureDue>& wanted,
                         const MeasureTable& table, const std::string& language, absl::CivilDay today);

// A value with its unit, as the place writes numbers: "12.5 seconds".
QString measuredWords(const v1::MeasureKind& kind, double value);

}  // namespace newel::home
