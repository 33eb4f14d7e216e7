// Wearing time as the therapist reads it, one line a block.
#pragma once

#include <absl/time/time.h>

#include <QtCore/QString>

#include "core/schedule/wear_plan.h"

namespace newel::print {

// "10:05 to 11:10, 65 min. Red, gone after 8 min: clear. Told later." in the person's zone.
QString wearWords(const v1::WearBlock& block, SkinVerdict verdict, absl::TimeZone zone);

}  // namespace newel::print
