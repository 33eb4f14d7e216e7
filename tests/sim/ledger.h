// What was promised: the part of the simulation that remembers, outside every disk, what each end has said
// that it keeps. The checks compare the real stores with it.
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>

namespace newel::sim {

// What one end has acknowledged. A restored backup brings back the promises of its day.
struct Promises {
  std::map<std::string, std::map<std::uint32_t, std::string>> practices;  // id, revision, SHA-256
  std::map<std::string, std::map<std::uint32_t, std::string>> blocks;     // wearing time, in the same way
  std::set<std::string> messages;                                         // ids of the person's own
};

struct Ledger {
  Promises tried;                             // whatever was ever made, acknowledged or not
  std::map<std::string, std::string> person;  // of each practice and message tried
  Promises hub;
  std::set<std::string> sent;    // ids of all programmes, orders and messages that the clinic ever made
  std::set<std::string> lifted;  // ids of hold orders that the clinic ever tried to lift
};

// Text that nobody but this person may ever get: it is in all that the clinic writes to them and they write.
inline std::string canaryOf(const std::string& person_id) { return "canary " + person_id; }

}  // namespace newel::sim
