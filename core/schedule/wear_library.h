// Wear schedules to start writing from, and what is published about redness; read from data. What counts for
// a person is the plan that a therapist signed. Not here: what a day of a plan allows (wear_plan.h).
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <string>
#include <vector>

#include "core/records/wear.pb.h"

namespace newel {

// Immutable after load; safe to read from any thread. Examples in the order of their files' names.
class WearLibrary {
 public:
  static const WearLibrary& builtIn();  // compiled in; the build fails on a bad one
  // Every "*.textproto" (WearFile) directly in `folder`. kInvalidArgument with "<file>:<line>: <reason>"; an
  // id given twice, no redness setting or two of them; kNotFound when the folder is missing or empty.
  static absl::StatusOr<WearLibrary> load(const std::string& folder);

  const std::vector<v1::WearExample>& examples() const { return m_examples; }
  const v1::WearExample* find(const std::string& id) const;  // nullptr: there is none
  const v1::RednessSetting& redness() const { return m_redness; }

  // As one record, and back without checks, for the compiled-in library.
  v1::WearFile asFile() const;
  static WearLibrary fromFile(const v1::WearFile& file);

 private:
  std::vector<v1::WearExample> m_examples;
  v1::RednessSetting m_redness;
};

// A plan's steps, breaks, grace and redness from an example; `redness_min` is the clinic's setting
// "redness-minutes". Person, clinic, days and signature are for the therapist to add.
v1::WearPlan draftPlan(const v1::WearExample& example, const v1::RednessSetting& redness,
                       std::uint32_t redness_min);

}  // namespace newel
