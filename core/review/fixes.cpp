#include "core/review/fixes.h"

#include <algorithm>
#include <set>
#include <utility>

#include "core/library/default_entry.h"
#include "core/practice/compile.h"

namespace newel {
namespace {

// Of a finding: what has to be answered before signing.
std::set<std::string> standing(const std::vector<v1::Finding>& findings) {
  std::set<std::string> ids;
  for (const auto& finding : findings) {
    if (finding.effect() == v1::EFFECT_BLOCK || finding.effect() == v1::EFFECT_ASK)
      ids.insert(finding.rule_id());
  }
  return ids;
}

bool speaks(const std::vector<v1::Finding>& findings, const std::string& rule_id) {
  return std::any_of(findings.begin(), findings.end(),
                     [&](const v1::Finding& finding) { return finding.rule_id() == rule_id; });
}

// Every change of one thing that the exercise allows, in the order in which they are offered.
std::vector<Fix> changesOf(const v1::Entry& entry, const v1::Exercise& exercise, const v1::Person& person) {
  std::vector<Fix> all;
  const auto add = [&](Fix::Kind kind, const auto& change) {
    Fix fix{kind, entry};
    change(fix.entry);
    all.push_back(std::move(fix));
  };
  for (const int support : exercise.supports()) {
    if (support != entry.support())
      add(Fix::Kind::Support, [&](v1::Entry& one) { one.set_support(static_cast<v1::Support>(support)); });
  }
  for (const v1::Rung& rung : exercise.ladder()) {
    if (rung.id() == entry.rung_id()) continue;
    add(Fix::Kind::Rung, [&](v1::Entry& one) { standOn(one, rung); });
  }
  const bool either = exercise.prosthesis() == v1::PROSTHESIS_USE_EITHER;
  if (either && (entry.prosthesis() == v1::PROSTHESIS_USE_ON || ownsProsthesis(person))) {
    add(Fix::Kind::Prosthesis, [&](v1::Entry& one) {
      one.set_prosthesis(entry.prosthesis() == v1::PROSTHESIS_USE_ON ? v1::PROSTHESIS_USE_OFF
                                                                     : v1::PROSTHESIS_USE_ON);
    });
  }
  for (const int policy : exercise.side_policies()) {
    if (policy != entry.side_policy())
      add(Fix::Kind::Sides,
          [&](v1::Entry& one) { one.set_side_policy(static_cast<v1::SidePolicy>(policy)); });
  }
  return all;
}

}  // namespace

std::vector<Fix> fixesFor(const v1::Entry& entry, const std::string& rule_id, const v1::Person& person,
                          const Catalogue& catalogue, const RuleBook& rules) {
  const v1::Exercise* exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr) return {};
  const auto before = rules.check(entry, person, catalogue);
  if (!before.ok() || !speaks(*before, rule_id)) return {};
  const std::set<std::string> stood = standing(*before);
  std::vector<Fix> fixes;
  for (Fix& fix : changesOf(entry, *exercise, person)) {
    if (fixes.size() == kMostFixes) break;
    const auto after = rules.check(fix.entry, person, catalogue);
    if (!after.ok() || speaks(*after, rule_id)) continue;
    const std::set<std::string> stands = standing(*after);
    if (!std::includes(stood.begin(), stood.end(), stands.begin(), stands.end())) continue;
    if (compileTimeline(fix.entry, person, catalogue, "en").ok()) fixes.push_back(std::move(fix));
  }
  return fixes;
}

}  // namespace newel
