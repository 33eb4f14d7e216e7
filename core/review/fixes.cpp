#include "core/review/fixes.h"

#include <utility>

#include "core/library/default_entry.h"
#include "core/practice/compile.h"
#include "core/review/standing.h"

namespace newel {
namespace {

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
  std::vector<Fix> fixes;
  for (Fix& fix : changesOf(entry, *exercise, person)) {
    if (fixes.size() == kMostFixes) break;
    const auto after = rules.check(fix.entry, person, catalogue);
    if (!after.ok() || !answers(rule_id, *before, *after)) continue;
    if (compileTimeline(fix.entry, person, catalogue, "en").ok()) fixes.push_back(std::move(fix));
  }
  return fixes;
}

}  // namespace newel
