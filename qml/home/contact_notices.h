// What is wrong between phone and clinic, as notices for Today: what happened, what it means for the person,
// what to do. Pure but for the translation that is installed. Not here: the one line that is always there
// (contactWords in phrasing.h).
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <QtCore/QVariantList>

#include "sync/home/home_engine.h"

namespace newel::home {

// A network that is away for a day or two is no news. Ours, no source.
inline constexpr int kQuietDays = 3;

// Maps as TodayModel::notices, and "newCode" where the phone may be connected anew. Empty when all is well.
QVariantList contactNotices(const HomeState& state, absl::TimeZone zone, absl::CivilDay today);

}  // namespace newel::home
