// What the rules say at each point of a practice, from what the ledger knows. For core/practice alone.
#pragma once

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/practice/ledger.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

struct RunContext {
  v1::Programme programme;
  v1::Person person;
  std::string language;
  RuleFacts history;
  std::vector<v1::Entry> entries;  // as in the practice
};

class RunRules {
 public:
  RunRules(const RuleBook& rules, const Catalogue& catalogue) : m_rules(&rules), m_catalogue(&catalogue) {}

  // Chosen by person, the entries not left out, and history; the order they are asked in.
  std::vector<const v1::ReadyQuestion*> questions(const RunContext& run, const Ledger& ledger) const;

  // What the last input of the ledger means: of unfinished ready answers only what ends the practice.
  // `all_answered`: no question is left. Empty when nothing is to be said.
  std::vector<v1::Finding> findings(const RunContext& run, const Ledger& ledger, bool all_answered) const;

  // Adds the finding of a rule whose flag stands in the journal, unless it is there; of a rule that this
  // program does not know, one with no words.
  void addRecorded(std::vector<v1::Finding>& findings, const std::string& rule_id,
                   const std::string& language) const;

  // The first LEAVE_OUT among `findings` that leaves `entry` out; nullptr when none does.
  const v1::Finding* leavesOutEntry(const std::vector<v1::Finding>& findings, const v1::Entry& entry) const;

 private:
  RuleFacts base(const RunContext& run, const Ledger& ledger) const;

  const RuleBook* m_rules;
  const Catalogue* m_catalogue;
};

}  // namespace newel
