#include "core/safety/rule_book.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

#include "core/safety/rule_settings.h"

namespace newel {

// Written at build time by newel_embed_rules.
namespace embedded {
extern const unsigned char kRules[];
extern const std::size_t kRulesSize;
extern const unsigned char kQuestions[];
extern const std::size_t kQuestionsSize;
}  // namespace embedded

namespace {

template <typename Words>
const typename Words::mapped_type& wordsIn(const Words& words, const std::string& language) {
  auto found = words.find(language);
  if (found == words.end()) found = words.find(language.substr(0, language.find('-')));
  return found == words.end() ? words.at("en") : found->second;
}

v1::Finding findingOf(const v1::Rule& rule, const std::string& language, const std::string& therapist) {
  v1::Finding finding;
  finding.set_rule_id(rule.id());
  finding.set_effect(rule.effect());
  finding.set_therapist(wordsIn(rule.words(), therapist).therapist());
  finding.set_person(wordsIn(rule.words(), language).person());
  *finding.mutable_sources() = rule.sources();
  finding.set_emergency_first(rule.emergency_first());
  *finding.mutable_leave_out_tags() = rule.leave_out_tags();
  finding.set_until(rule.until());
  return finding;
}

bool before(const v1::Finding& left, const v1::Finding& right) {
  if (left.effect() != right.effect()) return left.effect() < right.effect();
  return left.emergency_first() && !right.emergency_first();
}

bool numberHolds(const v1::RuleNumber& test, double value) {
  switch (test.bound_case()) {
    case v1::RuleNumber::kAtLeast:
      return value >= test.at_least();
    case v1::RuleNumber::kOver:
      return value > test.over();
    case v1::RuleNumber::kAtMost:
      return value <= test.at_most();
    case v1::RuleNumber::kUnder:
      return value < test.under();
    default:  // none, or a setting that with() has not replaced
      break;
  }
  return false;
}

}  // namespace

bool holds(const v1::RuleTest& test, const RuleFacts& facts) {
  const auto each = [&facts](const v1::RuleTest& one) { return holds(one, facts); };
  switch (test.kind_case()) {
    case v1::RuleTest::kAll:
      return std::all_of(test.all().tests().begin(), test.all().tests().end(), each);
    case v1::RuleTest::kAny:
      return std::any_of(test.any().tests().begin(), test.any().tests().end(), each);
    case v1::RuleTest::kNot:
      return !holds(test.not_(), facts);
    case v1::RuleTest::kHas: {
      const auto fact = facts.find(test.has().fact());
      return fact != facts.end() &&
             std::any_of(test.has().values().begin(), test.has().values().end(),
                         [&fact](const std::string& value) { return fact->second.words.contains(value); });
    }
    case v1::RuleTest::kNumber: {
      const auto fact = facts.find(test.number().fact());
      return fact != facts.end() && fact->second.number.has_value() &&
             numberHolds(test.number(), *fact->second.number);
    }
    case v1::RuleTest::KIND_NOT_SET:
      break;
  }
  return false;
}

const RuleBook& RuleBook::builtIn() {
  static const RuleBook book = [] {
    v1::RuleFile rules;
    v1::QuestionFile questions;
    const bool parsed =
        rules.ParseFromArray(embedded::kRules, static_cast<int>(embedded::kRulesSize)) &&
        questions.ParseFromArray(embedded::kQuestions, static_cast<int>(embedded::kQuestionsSize));
    // A program without its rules must not go on: nothing would be refused.
    if (!parsed) std::abort();
    return made({std::move(rules), std::move(questions)}, usualSettings(Catalogue::builtIn()), "en");
  }();
  return book;
}

absl::StatusOr<RuleBook> RuleBook::load(const std::string& folder, const Catalogue& catalogue) {
  auto set = loadRules(folder, catalogue);
  if (!set.ok()) return set.status();
  return made(*std::move(set), usualSettings(catalogue), "en");
}

RuleBook RuleBook::with(const SettingValues& settings, const std::string& therapist_language) const {
  return made(m_written, settings, therapist_language);
}

RuleBook RuleBook::made(RuleSet set, const SettingValues& settings, const std::string& therapist_language) {
  RuleBook book;
  const RuleSet filled = withValues(set, settings);
  book.m_written = std::move(set);
  book.m_therapist_language = therapist_language;
  book.m_rules.assign(filled.rules.rules().begin(), filled.rules.rules().end());
  book.m_questions.assign(filled.questions.questions().begin(), filled.questions.questions().end());
  return book;
}

const v1::QuestionWords& wordsOf(const v1::ReadyQuestion& question, const std::string& language) {
  return wordsIn(question.words(), language);
}

const std::string& wordsOf(const v1::ReadyChoice& choice, const std::string& language) {
  return wordsIn(choice.words(), language);
}

std::vector<v1::Finding> RuleBook::findings(v1::Stage stage, const RuleFacts& facts,
                                            const std::string& language) const {
  std::vector<v1::Finding> found;
  for (const auto& rule : m_rules) {
    if (rule.stage() == stage && holds(rule.when(), facts))
      found.push_back(findingOf(rule, language, m_therapist_language));
  }
  std::stable_sort(found.begin(), found.end(), before);
  return found;
}

absl::StatusOr<std::vector<v1::Finding>> RuleBook::check(const v1::Entry& entry, const v1::Person& person,
                                                         const Catalogue& catalogue) const {
  const v1::Exercise* exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr) {
    return absl::NotFoundError("exercise_id: the catalogue has no \"" + entry.exercise_id() + "\" revision " +
                               std::to_string(entry.exercise_revision()));
  }
  const RuleFacts facts =
      merged({factsOf(person), factsOf(entry, *exercise), fitFacts(person, entry, *exercise)});
  std::vector<v1::Finding> found = findings(v1::STAGE_PRESCRIBE, facts, person.language());
  for (auto& finding : found) {
    finding.set_entry_id(entry.id());
    if (finding.effect() != v1::EFFECT_ASK) continue;
    for (const auto& answered : entry.overrides()) {
      if (answered.rule_id() == finding.rule_id()) finding.set_overridden_reason(answered.reason());
    }
  }
  return found;
}

std::vector<v1::Finding> RuleBook::checkProgramme(const RuleFacts& facts, const std::string& language) const {
  return findings(v1::STAGE_PROGRAMME, facts, language);
}

std::vector<const v1::ReadyQuestion*> RuleBook::readyQuestions(const RuleFacts& facts) const {
  std::vector<const v1::ReadyQuestion*> asked;
  for (const auto& question : m_questions) {
    if (!question.has_when() || holds(question.when(), facts)) asked.push_back(&question);
  }
  std::stable_sort(asked.begin(), asked.end(),
                   [](const auto* left, const auto* right) { return left->rank() < right->rank(); });
  if (asked.size() > kMostQuestions) asked.resize(kMostQuestions);
  return asked;
}

const v1::ReadyQuestion* RuleBook::question(const std::string& id) const {
  const auto found = std::find_if(m_questions.begin(), m_questions.end(),
                                  [&id](const auto& question) { return question.id() == id; });
  return found == m_questions.end() ? nullptr : &*found;
}

std::vector<v1::Finding> RuleBook::readyFindings(const RuleFacts& facts, const std::string& language) const {
  return findings(v1::STAGE_READY_CHECK, facts, language);
}

std::vector<v1::Finding> RuleBook::practiceFindings(const RuleFacts& facts,
                                                    const std::string& language) const {
  return findings(v1::STAGE_PRACTICE, facts, language);
}

std::string RuleBook::therapistWords(const std::string& rule_id) const {
  const v1::Rule* found = rule(rule_id);
  return found == nullptr ? "" : wordsIn(found->words(), m_therapist_language).therapist();
}

const v1::Rule* RuleBook::rule(const std::string& id) const {
  const auto found =
      std::find_if(m_rules.begin(), m_rules.end(), [&id](const auto& rule) { return rule.id() == id; });
  return found == m_rules.end() ? nullptr : &*found;
}

bool maySign(const std::vector<v1::Finding>& findings) {
  return std::none_of(findings.begin(), findings.end(), [](const v1::Finding& finding) {
    return finding.effect() == v1::EFFECT_BLOCK ||
           (finding.effect() == v1::EFFECT_ASK && finding.overridden_reason().empty());
  });
}

std::optional<v1::Finding> shownCaution(const std::vector<v1::Finding>& findings) {
  const auto found = std::find_if(findings.begin(), findings.end(), [](const v1::Finding& finding) {
    return finding.effect() == v1::EFFECT_CAUTION;
  });
  if (found == findings.end()) return std::nullopt;
  return *found;
}

bool leavesOut(const v1::Finding& finding, const v1::Entry& entry, const v1::Exercise& exercise) {
  if (finding.effect() != v1::EFFECT_LEAVE_OUT) return false;
  return std::any_of(finding.leave_out_tags().begin(), finding.leave_out_tags().end(),
                     [&entry, &exercise](const std::string& tag) {
                       if (tag == kProsthesisOnTag) return entry.prosthesis() == v1::PROSTHESIS_USE_ON;
                       return std::find(exercise.tags().begin(), exercise.tags().end(), tag) !=
                              exercise.tags().end();
                     });
}

bool endsPractice(const v1::Finding& finding) {
  return finding.effect() == v1::EFFECT_RED_FLAG || finding.effect() == v1::EFFECT_NOT_TODAY;
}

}  // namespace newel
