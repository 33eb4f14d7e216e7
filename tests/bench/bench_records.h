// Invented records for the benchmarks.
#pragma once

#include <string>

#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel::bench {

// Distinct for each `n`, valid as UUID version 7.
std::string benchId(std::uint64_t n);
v1::Person benchPerson();
// The exercise's defaults, Mondays, Wednesdays and Fridays in the morning.
v1::Entry benchEntry(const std::string& exercise_id, std::uint64_t n);
// `entries` of the catalogue's first exercises, over the year 2026.
v1::Programme benchProgramme(int entries);
// A closed practice of six entries, three sets each, about what a phone sends.
v1::Practice benchPractice(std::uint64_t n);

}  // namespace newel::bench
