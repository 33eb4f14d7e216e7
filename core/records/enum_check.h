// Every enumeration of a record, by reflection, so that none can be forgotten. For core/records alone; others
// call check.h.
#pragma once

#include <google/protobuf/message.h>

#include <string>

namespace newel {

// Empty when every enumeration in `message` and below has a value that its .proto knows, other than
// UNSPECIFIED save where one table allows it; else "entries[2].support: SUPPORT_UNSPECIFIED is not a value",
// of the first one that has not.
std::string enumProblemIn(const google::protobuf::Message& message);

}  // namespace newel
