// Key poses of one exercise side by side, to be printed. For qml/print alone.
#pragma once

#include <memory>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/timeline.pb.h"
#include "qml/print/paper.h"

namespace newel::print {

// Three poses at most, drawn for `person` as `timeline` has it, in the order of reading and no higher than
// `highest_mm`. nullptr when the exercise has no drawing.
std::unique_ptr<PaperBlock> figureStrip(const v1::Timeline& timeline, const v1::Person& person,
                                        const Catalogue& catalogue, double highest_mm);

}  // namespace newel::print
