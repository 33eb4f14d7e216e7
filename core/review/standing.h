// Findings compared, for what tries a change against the rules (fixes.cpp, programme_fixes.cpp).
#pragma once

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "core/records/rule.pb.h"

namespace newel {

inline bool speaks(const std::vector<v1::Finding>& findings, const std::string& rule_id) {
  return std::any_of(findings.begin(), findings.end(),
                     [&](const v1::Finding& finding) { return finding.rule_id() == rule_id; });
}

// By rule: what has to be answered before signing.
inline std::set<std::string> standing(const std::vector<v1::Finding>& findings) {
  std::set<std::string> ids;
  for (const auto& finding : findings) {
    if (finding.effect() == v1::EFFECT_BLOCK || finding.effect() == v1::EFFECT_ASK)
      ids.insert(finding.rule_id());
  }
  return ids;
}

// The rule is silent after the change, and nothing has to be answered that had not to be before.
inline bool answers(const std::string& rule_id, const std::vector<v1::Finding>& before,
                    const std::vector<v1::Finding>& after) {
  if (speaks(after, rule_id)) return false;
  const std::set<std::string> stood = standing(before);
  const std::set<std::string> stands = standing(after);
  return std::includes(stood.begin(), stood.end(), stands.begin(), stands.end());
}

}  // namespace newel
