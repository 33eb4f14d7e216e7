#include "sync/export/fhir_reader.h"

#include <absl/strings/str_cat.h>

#include <utility>

namespace newel {
namespace {

std::string under(const std::string& path, const std::string& key) {
  return path.empty() ? key : absl::StrCat(path, ".", key);
}

bool isUnder(const std::string& path, const std::string& top) {
  if (top.empty()) return true;
  return path.rfind(top, 0) == 0 &&
         (path.size() == top.size() || path[top.size()] == '.' || path[top.size()] == '[');
}

}  // namespace

FhirNode FhirNode::at(const std::string& key) const {
  if (m_json == nullptr) return {nullptr, under(m_path, key), m_file};
  if (!m_json->is_object()) {
    refuse("is no object");
    return {nullptr, under(m_path, key), m_file};
  }
  const auto found = m_json->find(key);
  return {found == m_json->end() ? nullptr : &*found, under(m_path, key), m_file};
}

std::vector<FhirNode> FhirNode::list(const std::string& key) const {
  const FhirNode node = at(key);
  std::vector<FhirNode> nodes;
  if (!node.there()) return nodes;
  if (!node.m_json->is_array()) {
    node.refuse("is no list");
    return nodes;
  }
  for (std::size_t i = 0; i < node.m_json->size(); ++i)
    nodes.emplace_back(&(*node.m_json)[i], absl::StrCat(node.m_path, "[", i, "]"), m_file);
  return nodes;
}

std::vector<std::string> FhirNode::keys() const {
  std::vector<std::string> keys;
  if (m_json == nullptr || !m_json->is_object()) return keys;
  for (const auto& [key, value] : m_json->items()) keys.push_back(key);
  return keys;
}

std::string FhirNode::peekText() const {
  if (m_json == nullptr) return "";
  if (m_json->is_string()) return m_json->get<std::string>();
  refuse("is no string");
  return "";
}

std::string FhirNode::text() const {
  std::string value = peekText();
  if (!value.empty()) take();
  return value;
}

std::optional<std::int64_t> FhirNode::peekWhole() const {
  if (m_json == nullptr) return std::nullopt;
  if (m_json->is_number_integer()) return m_json->get<std::int64_t>();
  refuse("is no whole number");
  return std::nullopt;
}

std::optional<std::int64_t> FhirNode::whole() const {
  const auto value = peekWhole();
  if (value.has_value()) take();
  return value;
}

std::optional<bool> FhirNode::peekYes() const {
  if (m_json == nullptr) return std::nullopt;
  if (m_json->is_boolean()) return m_json->get<bool>();
  refuse("is neither true nor false");
  return std::nullopt;
}

std::optional<bool> FhirNode::yes() const {
  const auto value = peekYes();
  if (value.has_value()) take();
  return value;
}

void FhirNode::take() const {
  if (m_json != nullptr) m_file->read.insert(m_path);
}

void FhirNode::refuse(const std::string& reason) const {
  if (!m_file->status.ok()) return;
  m_file->status =
      absl::InvalidArgumentError(absl::StrCat(m_path.empty() ? "the file" : m_path, ": ", reason));
}

void FhirNode::listNotTaken(std::vector<std::string>& paths) const {
  if (m_json == nullptr || m_file->read.contains(m_path)) return;
  const auto next = m_file->read.lower_bound(m_path);
  bool some_below = false;
  for (auto at = next; at != m_file->read.end() && at->rfind(m_path, 0) == 0; ++at)
    some_below = some_below || isUnder(*at, m_path);
  if (!some_below) {
    paths.push_back(m_path);
    return;
  }
  if (m_json->is_object()) {
    for (const auto& key : keys()) at(key).listNotTaken(paths);
  } else if (m_json->is_array()) {
    for (std::size_t i = 0; i < m_json->size(); ++i)
      FhirNode(&(*m_json)[i], absl::StrCat(m_path, "[", i, "]"), m_file).listNotTaken(paths);
  }
}

}  // namespace newel
