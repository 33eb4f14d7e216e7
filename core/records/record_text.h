// Records as text: protobuf text or JSON in, JSON out, with errors that say where.
// For the command line, the catalogue and the tests; the wire uses the binary form.
#pragma once

#include <absl/status/status.h>
#include <google/protobuf/message.h>

#include <string>

namespace newel {

// Parses protobuf text ("field: value") into an empty `message`. kInvalidArgument with
// "<name>:<line>:<column>: <reason>" on the first error, all lines and columns from 1.
absl::Status parseText(const std::string& text, const std::string& name, google::protobuf::Message& message);

// Parses proto3 JSON (a leading "{" after white space) or protobuf text, whichever it is.
absl::Status parseTextOrJson(const std::string& text, const std::string& name,
                             google::protobuf::Message& message);

// proto3 JSON with field names as in the .proto, two-space indent; fields that are not set are left out.
std::string toJson(const google::protobuf::Message& message);

// The same bytes for the same content on one build; not promised across library versions, so hashes and
// signatures are made over bytes once written and kept, never over a second serialisation.
std::string toBytes(const google::protobuf::Message& message);

}  // namespace newel
