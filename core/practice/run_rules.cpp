#include "core/practice/run_rules.h"

#include <algorithm>

namespace newel {

RuleFacts RunRules::base(const RunContext& run, const Ledger& ledger) const {
  std::vector<v1::Entry> today;
  for (std::size_t i = 0; i < run.entries.size(); ++i) {
    // What was left out before the ready check is no part of today. What the check itself leaves out is: else
    // the questions and their meaning would change by being answered.
    const EntryProgress& entry = ledger.entries()[i];
    if (!(entry.left_out && entry.out_before_check)) today.push_back(run.entries[i]);
  }
  return merged({factsOf(run.person), todayFacts(today, *m_catalogue), run.history});
}

std::vector<const v1::ReadyQuestion*> RunRules::questions(const RunContext& run, const Ledger& ledger) const {
  return m_rules->readyQuestions(base(run, ledger));
}

std::vector<v1::Finding> RunRules::findings(const RunContext& run, const Ledger& ledger,
                                            bool all_answered) const {
  const auto thresholds = [&run](std::size_t entry) -> const v1::StopThresholds& {
    return thresholdsOf(run.programme, run.entries[entry]);
  };
  switch (ledger.lastInput()) {
    case LastInput::None:
      return {};
    case LastInput::Answer: {
      const RuleFacts facts = merged({base(run, ledger), answerFacts(ledger.answers())});
      std::vector<v1::Finding> found = m_rules->readyFindings(facts, run.language);
      if (all_answered) return found;
      std::erase_if(found, [](const v1::Finding& finding) { return !endsPractice(finding); });
      return found;
    }
    case LastInput::PainBefore: {
      const auto pain = ledger.painBefore();
      const std::size_t entry = ledger.next().value_or(0);
      return m_rules->practiceFindings(
          merged({base(run, ledger), ratingFacts(pain, pain, std::nullopt, thresholds(entry))}),
          run.language);
    }
    case LastInput::Stop:
      return m_rules->practiceFindings(merged({base(run, ledger), stopFacts(ledger.stopReason())}),
                                       run.language);
    case LastInput::Rating: {
      const EntryProgress& rated = ledger.entries()[ledger.stopEntry()];
      return m_rules->practiceFindings(
          merged({base(run, ledger), ratingFacts(ledger.painBefore(), rated.pain_after, rated.effort,
                                                 thresholds(ledger.stopEntry()))}),
          run.language);
    }
  }
  return {};
}

void RunRules::addRecorded(std::vector<v1::Finding>& findings, const std::string& rule_id,
                           const std::string& language) const {
  for (const v1::Finding& finding : findings) {
    if (finding.rule_id() == rule_id) return;
  }
  v1::Finding finding;
  finding.set_rule_id(rule_id);
  finding.set_effect(v1::EFFECT_RED_FLAG);
  finding.set_until(v1::UNTIL_CLINIC_SAYS);
  if (const v1::Rule* rule = m_rules->rule(rule_id)) {
    const auto words = rule->words().find(language);
    const v1::RuleWords& found = words == rule->words().end() ? rule->words().at("en") : words->second;
    finding.set_effect(rule->effect());
    finding.set_therapist(found.therapist());
    finding.set_person(found.person());
    finding.set_emergency_first(rule->emergency_first());
    finding.set_until(rule->until());
  }
  findings.push_back(finding);
}

const v1::Finding* RunRules::leavesOutEntry(const std::vector<v1::Finding>& findings,
                                            const v1::Entry& entry) const {
  const v1::Exercise* exercise = m_catalogue->find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr) return nullptr;
  const auto found = std::find_if(findings.begin(), findings.end(), [&](const v1::Finding& finding) {
    return leavesOut(finding, entry, *exercise);
  });
  return found == findings.end() ? nullptr : &*found;
}

}  // namespace newel
