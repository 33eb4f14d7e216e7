#include "core/safety/rule_loading.h"

#include <map>
#include <set>
#include <vector>

#include "core/records/check.h"
#include "core/safety/facts.h"
#include "core/safety/rule_files.h"
#include "core/safety/rule_settings.h"
#include "core/safety/rule_words.h"

namespace newel {
namespace {

using rule_files::below;
using rule_files::fault;
using rule_files::lineOf;
using rule_files::Parsed;
using rule_files::parseFolder;
using rule_files::Tree;

const std::string kCommonPractice = "common practice, no source";
// The choices of every question, by "answer.<question id>".
using Answers = std::map<std::string, std::set<std::string>>;

class TestCheck {
 public:
  TestCheck(std::string file, const Answers& answers, const Catalogue& catalogue)
      : m_file(std::move(file)), m_answers(answers), m_catalogue(catalogue) {}

  // `tree` is where `test` was parsed; every fact and word in it must exist.
  absl::Status run(const v1::RuleTest& test, const Tree& tree) const {
    switch (test.kind_case()) {
      case v1::RuleTest::kAll:
        return runEach(test.all(), *below(tree, test, "all"));
      case v1::RuleTest::kAny:
        return runEach(test.any(), *below(tree, test, "any"));
      case v1::RuleTest::kNot:
        return run(test.not_(), *below(tree, test, "not"));
      case v1::RuleTest::kHas:
        return runHas(test.has(), *below(tree, test, "has"));
      case v1::RuleTest::kNumber: {
        std::string why = whyNotNumber(test.number().fact());
        if (why.empty()) why = whyNotSetting(test.number());
        if (why.empty()) return absl::OkStatus();
        return fault(m_file, lineOf(*below(tree, test, "number"), test.number(), "fact"), why);
      }
      case v1::RuleTest::KIND_NOT_SET:
        break;
    }
    return absl::OkStatus();  // check() has refused it already
  }

 private:
  template <typename List>
  absl::Status runEach(const List& list, const Tree& tree) const {
    for (int i = 0; i < list.tests_size(); ++i) {
      absl::Status status = run(list.tests(i), *below(tree, list, "tests", i));
      if (!status.ok()) return status;
    }
    return absl::OkStatus();
  }

  absl::Status runHas(const v1::RuleHas& has, const Tree& tree) const {
    for (int i = 0; i < has.values_size(); ++i) {
      const std::string why = whyNot(has.fact(), has.values(i));
      if (!why.empty()) return fault(m_file, lineOf(tree, has, "values", i), why);
    }
    return absl::OkStatus();
  }

  std::string whyNot(const std::string& fact, const std::string& word) const {
    if (fact.rfind("answer.", 0) != 0) return whyNotWord(fact, word, m_catalogue);
    const auto found = m_answers.find(fact);
    if (found == m_answers.end()) return "no question gives \"" + fact + "\"";
    return found->second.contains(word) ? "" : "no choice of its question is \"" + word + "\"";
  }

  std::string whyNotSetting(const v1::RuleNumber& number) const {
    const std::string id = settingOf(number);
    return id.empty() || m_catalogue.setting(id) != nullptr ? "" : "there is no setting \"" + id + "\"";
  }

  std::string m_file;
  const Answers& m_answers;
  const Catalogue& m_catalogue;
};

template <typename Record>
std::string sourceFault(const Record& record) {
  for (const auto& source : record.sources()) {
    if (source.kind() == v1::SOURCE_KIND_COMMON_PRACTICE && source.text().rfind(kCommonPractice, 0) != 0) {
      return "sources: a common practice begins with \"" + kCommonPractice + "\"";
    }
  }
  return "";
}

// What every record of both kinds must pass: check(), one id once, sources that say what they are.
template <typename Record>
absl::Status checkRecord(const std::string& file, int line, const Record& record,
                         std::set<std::string>& ids) {
  const absl::Status status = check(record);
  if (!status.ok()) return fault(file, line, record.id() + ": " + std::string(status.message()));
  if (!ids.insert(record.id()).second) return fault(file, line, record.id() + ": is given twice");
  const std::string why = sourceFault(record);
  return why.empty() ? absl::OkStatus() : fault(file, line, record.id() + ": " + why);
}

absl::Status checkLeaveOutTags(const v1::Rule& rule, const Catalogue& catalogue) {
  for (const auto& tag : rule.leave_out_tags()) {
    if (tag != kProsthesisOnTag && !isTag(tag, catalogue)) {
      return absl::InvalidArgumentError(rule.id() + ": leave_out_tags: there is no tag \"" + tag + "\"");
    }
  }
  return absl::OkStatus();
}

absl::Status addQuestions(const Parsed<v1::QuestionFile>& file, const Catalogue& catalogue,
                          std::set<std::string>& ids, RuleSet& set) {
  const Answers none;  // a question cannot hang on answers: all of them are chosen before the first is asked
  for (int i = 0; i < file.content.questions_size(); ++i) {
    const v1::ReadyQuestion& question = file.content.questions(i);
    const int line = lineOf(file.tree, file.content, "questions", i);
    absl::Status status = checkRecord(file.name, line, question, ids);
    if (!status.ok()) return status;
    const auto& words = question.words().at("en");
    for (const auto& text : {words.question(), words.help()}) {
      status = checkText(question.id(), text, "en", catalogue);
      if (!status.ok()) return fault(file.name, line, std::string(status.message()));
    }
    if (question.has_when()) {
      const Tree* tree = below(file.tree, file.content, "questions", i);
      status = TestCheck(file.name, none, catalogue).run(question.when(), *below(*tree, question, "when"));
    }
    if (!status.ok()) return status;
    *set.questions.add_questions() = question;
  }
  return absl::OkStatus();
}

absl::Status addRules(const Parsed<v1::RuleFile>& file, const Answers& answers, const Catalogue& catalogue,
                      std::set<std::string>& ids, RuleSet& set) {
  for (int i = 0; i < file.content.rules_size(); ++i) {
    const v1::Rule& rule = file.content.rules(i);
    const int line = lineOf(file.tree, file.content, "rules", i);
    absl::Status status = checkRecord(file.name, line, rule, ids);
    if (!status.ok()) return status;
    const auto& words = rule.words().at("en");
    status = checkLeaveOutTags(rule, catalogue);
    if (status.ok()) status = checkText(rule.id(), words.person(), "en", catalogue);
    if (status.ok()) status = checkPlaceholders(rule.id(), words.therapist(), catalogue);
    if (!status.ok()) return fault(file.name, line, std::string(status.message()));
    const Tree* tree = below(file.tree, file.content, "rules", i);
    status = TestCheck(file.name, answers, catalogue).run(rule.when(), *below(*tree, rule, "when"));
    if (!status.ok()) return status;
    *set.rules.add_rules() = rule;
  }
  return absl::OkStatus();
}

}  // namespace

absl::StatusOr<RuleSet> loadRules(const std::string& folder, const Catalogue& catalogue) {
  const auto question_files = parseFolder<v1::QuestionFile>(folder + "/questions");
  if (!question_files.ok()) return question_files.status();
  const auto rule_files = parseFolder<v1::RuleFile>(folder + "/rules");
  if (!rule_files.ok()) return rule_files.status();
  RuleSet set;
  std::set<std::string> question_ids;
  for (const auto& file : *question_files) {
    absl::Status status = addQuestions(*file, catalogue, question_ids, set);
    if (!status.ok()) return status;
  }
  Answers answers;
  for (const auto& question : set.questions.questions()) {
    for (const auto& choice : question.choices()) answers["answer." + question.id()].insert(choice.id());
  }
  std::set<std::string> rule_ids;
  for (const auto& file : *rule_files) {
    absl::Status status = addRules(*file, answers, catalogue, rule_ids, set);
    if (!status.ok()) return status;
  }
  const absl::Status words = addSafetyWords(folder + "/words", catalogue, set);
  if (!words.ok()) return words;
  return set;
}

}  // namespace newel
