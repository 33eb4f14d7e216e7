// How records are put into open formats: enumerations as words, instants and numbers as ISO 8601 has them,
// and ids for what has none of its own. Used by every writer, so that one thing has one name in all of them.
#pragma once

#include <absl/time/time.h>
#include <google/protobuf/descriptor.h>

#include <string>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

// "SIDE_LEFT" -> "left"; a value that this program does not know: "unknown"; UNSPECIFIED: empty.
std::string enumWord(const google::protobuf::EnumDescriptor* type, int value);

// "2026-11-30T08:00:00Z", whole seconds, rounded down.
std::string isoInstant(absl::Time at);
// The same instant with the zone's offset, "2026-11-30T09:00:00+01:00"; an unknown zone: UTC.
std::string isoInstantIn(absl::Time at, const std::string& zone);
// Minutes after midnight, 0 to 1440: "08:00", "24:00".
std::string clockMinute(std::uint32_t minute);
// As few digits as say it, with a point whatever the machine's locale: 3.6, 15, 0.05.
std::string plainNumber(double value);
// Whole milliseconds as seconds: 90500 -> "90.5".
std::string secondsText(std::int64_t ms);

// An id for a thing that is part of another: the same for the same `whole` (a UUID) and `part`, on every
// machine, so that a second export says the same of the same. UUID version 8 from SHA-256 (RFC 9562
// section 5.8 and appendix B.2).
std::string derivedId(const std::string& whole, const std::string& part);

// The exercise's title in `language`, or in English; the clinic's own ones are in `programme`, which may be
// nullptr. Its id where nothing is known of it.
std::string exerciseTitle(const std::string& exercise_id, std::uint32_t revision,
                          const v1::Programme* programme, const std::string& language);

// "left leg", "right leg", "both legs in turn", "both legs"; empty where this person has no such leg.
std::string sideWords(v1::SidePolicy policy, const v1::Person& person);

}  // namespace newel
