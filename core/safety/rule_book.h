// The rules, and what they say. Rules are data (core/safety/rules); this only reads them.
// A rule may refuse, stop, lighten or ask; nothing here can add load.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/rule.pb.h"
#include "core/safety/facts.h"

namespace newel {

bool holds(const v1::RuleTest& test, const RuleFacts& facts);

class RuleBook {
 public:
  static const RuleBook& builtIn();  // compiled in; the build fails on a bad rule
  // Every "*.textproto" under `folder`. kInvalidArgument with file, line and reason.
  static absl::StatusOr<RuleBook> load(const std::string& folder);

  // Prescribing: what the rules say about one entry for one person, BLOCK first, then ASK, CAUTION, NOTE; an
  // ASK with an override in the entry carries its reason. kNotFound when the exercise is not in `catalogue`.
  absl::StatusOr<std::vector<v1::Finding>> check(const v1::Entry& entry, const v1::Person& person,
                                                 const Catalogue& catalogue) const;
  // Over a whole programme; `facts` carries programme.* (entries, minutes_per_day ...), see core/review.
  std::vector<v1::Finding> checkProgramme(const RuleFacts& facts) const;

  // At most five, lowest rank first, chosen by person, entries and history.
  std::vector<const v1::ReadyQuestion*> readyQuestions(const RuleFacts& facts) const;
  const v1::ReadyQuestion* question(const std::string& id) const;
  // What the answers so far mean; facts must include answer.<question id>. Highest effect first.
  std::vector<v1::Finding> readyFindings(const RuleFacts& facts) const;
  // What a stop or rating means; facts: stop.reason, rating.pain, rating.pain_before, threshold.pain_stop ...
  std::vector<v1::Finding> practiceFindings(const RuleFacts& facts) const;

  const std::vector<v1::Rule>& rules() const { return m_rules; }
  const std::vector<v1::ReadyQuestion>& questions() const { return m_questions; }

 private:
  friend class RuleBookBuilder;
  std::vector<v1::Rule> m_rules;
  std::vector<v1::ReadyQuestion> m_questions;
};

// True when nothing blocks and every ask has a written reason.
bool maySign(const std::vector<v1::Finding>& findings);

}  // namespace newel
