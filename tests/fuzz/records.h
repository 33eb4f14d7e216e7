// The records that meet the outside, by number: an input's first byte chooses one. Only add at the end, so
// that the kept corpus keeps its meaning.
#pragma once

#include <absl/status/status.h>
#include <google/protobuf/message.h>

#include <functional>
#include <memory>
#include <vector>

namespace newel::fuzz {

struct RecordType {
  std::function<std::unique_ptr<google::protobuf::Message>()> make;
  std::function<absl::Status(const google::protobuf::Message&)> check;
};

const std::vector<RecordType>& recordTypes();

}  // namespace newel::fuzz
