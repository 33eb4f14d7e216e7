// Words of a record that stand in it by language, "en" always among them.
#pragma once

#include <google/protobuf/map.h>

#include <string>

namespace newel::desk {

template <typename Words>
const Words& inLanguage(const google::protobuf::Map<std::string, Words>& words, const std::string& language) {
  const auto found = words.find(language);
  return found == words.end() ? words.at("en") : found->second;
}

}  // namespace newel::desk
