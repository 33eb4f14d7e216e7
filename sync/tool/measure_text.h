// How the command line says what a measure is and what a change of it means.
#pragma once

#include <iosfwd>
#include <string>

#include "core/progress/measures.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {

std::string bandText(const Band& band);  // "3.6", "0.91 to 2.2"
void printKind(const v1::MeasureKind& kind, const std::string& language, std::ostream& out);
void printCutoffs(const v1::MeasureKind& kind, double value, std::ostream& out);
void printChange(const v1::MeasureKind& kind, const MeasuredChange& change, Sureness sureness,
                 std::ostream& out);
Json jsonOfChange(const MeasuredChange& change, Sureness sureness);
Json jsonOfCutoffs(const v1::MeasureKind& kind, double value);

}  // namespace newel::tool
