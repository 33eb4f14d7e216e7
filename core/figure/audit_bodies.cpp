#include <algorithm>

#include "core/figure/audit.h"

namespace newel {
namespace {

using Limbs = std::array<LimbState, 2>;

std::string nameOf(const Limbs& limbs, v1::Build build, v1::Support support) {
  std::string name = v1::Build_Name(build) + " " + v1::Support_Name(support);
  for (const LimbState& limb : limbs) {
    name += limb.lost() ? " " + v1::LimbLossLevel_Name(limb.level) + (limb.prosthesis_on ? " on" : " off")
                        : " sound";
  }
  return name;
}

void addTo(AuditReport& all, const AuditReport& one, const std::string& body) {
  all.frames += one.frames;
  for (const auto& [check, amount] : one.worst) {
    const auto [at, is_new] = all.worst.emplace(check, amount);
    if (!is_new) at->second = std::max(at->second, amount);
  }
  for (AuditFinding finding : one.findings) {
    finding.where += " [" + body + "]";
    all.findings.push_back(std::move(finding));
  }
}

}  // namespace

std::vector<Limbs> auditedLimbs(const v1::Exercise& exercise) {
  std::vector<Limbs> bodies = {Limbs{}};
  for (const bool on : {true, false}) {
    if (on && exercise.prosthesis() == v1::PROSTHESIS_USE_OFF) continue;
    if (!on && exercise.prosthesis() == v1::PROSTHESIS_USE_ON) continue;
    for (int level = v1::LimbLossLevel_MIN + 1; level <= v1::LimbLossLevel_MAX; ++level) {
      LimbState lost;
      lost.level = static_cast<v1::LimbLossLevel>(level);
      lost.prosthesis_on = on;
      lost.knee = v1::KNEE_KIND_MECHANICAL;
      bodies.push_back({lost, LimbState{}});
      bodies.push_back({LimbState{}, lost});
      bodies.push_back({lost, lost});
    }
  }
  return bodies;
}

AuditReport auditEveryBody(const v1::Clip& clip, const v1::Exercise& exercise) {
  AuditReport all;
  for (const v1::Build build : {v1::BUILD_LIGHT, v1::BUILD_MEDIUM, v1::BUILD_HEAVY}) {
    for (const int support : exercise.supports()) {
      for (const Limbs& limbs : auditedLimbs(exercise)) {
        const auto held = static_cast<v1::Support>(support);
        const Choreography keys = keysOf(clip, exercise, held, limbs);
        addTo(all, auditClip(keys, clip, exercise, bodyShape(build)), nameOf(limbs, build, held));
      }
    }
  }
  return all;
}

}  // namespace newel
