// Small answers that several pages ask of the engine and the clock.
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <optional>
#include <string>

#include "qml/home/home_parts.h"

namespace newel::home {

inline constexpr char kAppVersion[] = "0.1.0";

// The local day where the phone is now; UTC when the system's zone has no IANA name that we know.
absl::CivilDay todayOf(const HomeParts& parts);
absl::TimeZone zoneOf(const HomeParts& parts);

// When the clinic last wrote or signed anything for this person; nullopt: never. What opens a stop that
// stands "until the clinic says".
std::optional<absl::Time> clinicSpokeAt(const HomeEngine& engine);

// The practices that say anything about today: those of the last sixty days, and since the clinic last spoke,
// so that a stop that stands "until the clinic says" is among them; all there are, when none of these was
// done. What a person did in years before is not read for it.
std::vector<v1::Practice> practicesThatCount(const HomeParts& parts);

// The wear plan that counts today: of the programme in force, or of one before where its own begins later. A
// plan that is still to come where there is no other; nullopt: none.
std::optional<v1::WearPlan> wearPlanOf(const HomeParts& parts);
// Whether the skin said that the prosthesis stays off until the clinic has spoken.
bool prosthesisStaysOff(const HomeParts& parts);

// The photo of a clinic's own exercise, as it came with a programme; empty: none.
std::string pictureOf(const HomeEngine& engine, const v1::Entry& entry);

// What this phone shows and speaks in: what was chosen on it, else the person's record, else the screens'.
std::string languageOf(const HomeParts& parts);

// How the person wants to be drawn.
v1::Appearance appearanceOf(const HomeParts& parts);

// Occasions that practices have already done, in full or in part.
std::vector<v1::OccasionRef> doneOccasions(const std::vector<v1::Practice>& practices);

}  // namespace newel::home
