// Two parts of the progress report: outcome measures beside their error, and wearing time beside the skin.
// For report.h.
#pragma once

#include "core/progress/measures.h"
#include "qml/print/report.h"

namespace newel::print {

// Of each kind and side: the first value, the last one, and whether the change is beyond error (90 %), in
// words and with the study. All that were taken up to the period's end; withdrawn ones are left out.
QString measuresPart(const ReportInput& input, const std::string& language);

// Days and minutes worn in the period, and what the skin said wherever it was not clear.
QString wearPart(const ReportInput& input);

// "better, beyond error", and so on; the same words on paper and on the screen.
QString verdictWords(const MeasuredChange& change);
// "12.5 s"; "31 points" for a score.
QString measuredWords(const v1::MeasureKind& kind, double value);

}  // namespace newel::print
