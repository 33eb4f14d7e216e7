// Wearing time as the person tells it, and the measures that the clinic took. Not here: what a plan allows
// (core/schedule/wear_plan.h), what a measure means (core/progress/measures.h).
// Functions run inside a transaction of DeviceStore and throw as Database does.
#pragma once

#include <absl/status/status.h>

#include <vector>

#include "core/records/measure.pb.h"
#include "core/records/wear.pb.h"
#include "sync/common/database.h"

namespace newel {

// Keeps the next revision of a block and queues it for the clinic. kInvalidArgument names the field;
// kAlreadyExists: this revision or a later one is kept.
absl::Status keepWearBlock(Database& database, const v1::WearBlock& block);
// One that came from the clinic, told on another phone or before this one; what is known already, or an
// earlier revision, changes nothing. True when it was new.
bool takeWearBlock(Database& database, const v1::WearBlock& block);
// True when it was new, or a later revision.
bool takeMeasure(Database& database, const v1::Measure& measure);

// The last revision of each, the earliest put on first.
std::vector<v1::WearBlock> keptWearBlocks(Database& database);
// Without those withdrawn, the earliest taken first.
std::vector<v1::Measure> keptMeasures(Database& database);

}  // namespace newel
