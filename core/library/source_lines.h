// Finds the line of a protobuf text file that an error is about. For core/library alone.
#pragma once

#include <google/protobuf/message.h>

#include <string>

namespace newel {

// The line (from 1) of the field that `path` names, for example "ladder[1].dose.sets.hold_s" or
// "cues[reach].spoken"; of the nearest field around it when that one is absent; 1 when nothing fits.
// `text` must parse as a message of the type of `prototype`.
int lineOfField(const std::string& text, const google::protobuf::Message& prototype, const std::string& path);

}  // namespace newel
