#include "core/safety/rule_loading.h"

#include <google/protobuf/io/tokenizer.h>
#include <google/protobuf/text_format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <memory>
#include <set>
#include <sstream>
#include <vector>

#include "core/library/plain_words.h"
#include "core/records/check.h"
#include "core/safety/facts.h"

namespace newel {
namespace {

using google::protobuf::Message;
using google::protobuf::TextFormat;
using Tree = TextFormat::ParseInfoTree;

const std::string kCommonPractice = "common practice, no source";
// What a person must read on a bad day is kept at a reading grade that most adults manage (Flesch-Kincaid,
// see plain_words.h; the limit is ours). The formula fits English only.
constexpr double kHardestGrade = 6;

class FirstError : public google::protobuf::io::ErrorCollector {
 public:
  void AddError(int line, google::protobuf::io::ColumnNumber column, const std::string& message) override {
    // The parser counts from 0, people count from 1.
    if (m_text.empty()) m_text = std::to_string(line + 1) + ":" + std::to_string(column + 1) + ": " + message;
  }
  const std::string& text() const { return m_text; }

 private:
  std::string m_text;
};

// One file as parsed, with the line of everything in it.
template <typename File>
struct Parsed {
  std::string name;
  File content;
  Tree tree;
};

int lineOf(const Tree& tree, const Message& message, const std::string& field, int index = -1) {
  return tree.GetLocation(message.GetDescriptor()->FindFieldByName(field), index).line + 1;
}

Tree* below(const Tree& tree, const Message& message, const std::string& field, int index = -1) {
  return tree.GetTreeForNested(message.GetDescriptor()->FindFieldByName(field), index);
}

absl::Status fault(const std::string& file, int line, const std::string& reason) {
  return absl::InvalidArgumentError(file + ":" + std::to_string(line) + ": " + reason);
}

absl::StatusOr<std::vector<std::filesystem::path>> filesIn(const std::string& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    if (at->path().extension() == ".textproto") files.push_back(at->path());
  }
  if (error) return absl::NotFoundError(folder + ": cannot be read: " + error.message());
  if (files.empty()) return absl::NotFoundError(folder + ": holds no .textproto file");
  std::sort(files.begin(), files.end());
  return files;
}

template <typename File>
absl::Status parseFile(const std::filesystem::path& path, Parsed<File>& parsed) {
  parsed.name = path.string();
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  if (!stream) return absl::NotFoundError(parsed.name + ": cannot be read");
  FirstError error;
  TextFormat::Parser parser;
  parser.RecordErrorsTo(&error);
  parser.WriteLocationsTo(&parsed.tree);
  if (!parser.ParseFromString(text.str(), &parsed.content)) {
    return absl::InvalidArgumentError(parsed.name + ":" + error.text());
  }
  return absl::OkStatus();
}

// The choices of every question, by "answer.<question id>".
using Answers = std::map<std::string, std::set<std::string>>;

class TestCheck {
 public:
  TestCheck(std::string file, const Answers& answers) : m_file(std::move(file)), m_answers(answers) {}

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
        const std::string why = whyNotNumber(test.number().fact());
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
    if (fact.rfind("answer.", 0) != 0) return whyNotWord(fact, word);
    const auto found = m_answers.find(fact);
    if (found == m_answers.end()) return "no question gives \"" + fact + "\"";
    return found->second.contains(word) ? "" : "no choice of its question is \"" + word + "\"";
  }

  std::string m_file;
  const Answers& m_answers;
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

absl::Status checkGrade(const std::string& id, const std::string& text) {
  if (readingGrade(text) <= kHardestGrade) return absl::OkStatus();
  return absl::InvalidArgumentError(id + ": harder to read than grade 6: " + text);
}

absl::Status checkLeaveOutTags(const v1::Rule& rule) {
  for (const auto& tag : rule.leave_out_tags()) {
    if (tag != kProsthesisOnTag && !knownTags().contains(tag)) {
      return absl::InvalidArgumentError(rule.id() + ": leave_out_tags: there is no tag \"" + tag + "\"");
    }
  }
  return absl::OkStatus();
}

template <typename File>
absl::StatusOr<std::vector<std::unique_ptr<Parsed<File>>>> parseFolder(const std::string& folder) {
  const auto paths = filesIn(folder);
  if (!paths.ok()) return paths.status();
  std::vector<std::unique_ptr<Parsed<File>>> all;
  for (const auto& path : *paths) {
    all.push_back(std::make_unique<Parsed<File>>());
    absl::Status status = parseFile(path, *all.back());
    if (!status.ok()) return status;
  }
  return all;
}

absl::Status addQuestions(const Parsed<v1::QuestionFile>& file, std::set<std::string>& ids, RuleSet& set) {
  const Answers none;  // a question cannot hang on answers: all of them are chosen before the first is asked
  for (int i = 0; i < file.content.questions_size(); ++i) {
    const v1::ReadyQuestion& question = file.content.questions(i);
    const int line = lineOf(file.tree, file.content, "questions", i);
    absl::Status status = checkRecord(file.name, line, question, ids);
    if (!status.ok()) return status;
    const auto& words = question.words().at("en");
    for (const auto& text : {words.question(), words.help()}) {
      status = checkGrade(question.id(), text);
      if (!status.ok()) return fault(file.name, line, std::string(status.message()));
    }
    if (question.has_when()) {
      const Tree* tree = below(file.tree, file.content, "questions", i);
      status = TestCheck(file.name, none).run(question.when(), *below(*tree, question, "when"));
    }
    if (!status.ok()) return status;
    *set.questions.add_questions() = question;
  }
  return absl::OkStatus();
}

absl::Status addRules(const Parsed<v1::RuleFile>& file, const Answers& answers, std::set<std::string>& ids,
                      RuleSet& set) {
  for (int i = 0; i < file.content.rules_size(); ++i) {
    const v1::Rule& rule = file.content.rules(i);
    const int line = lineOf(file.tree, file.content, "rules", i);
    absl::Status status = checkRecord(file.name, line, rule, ids);
    if (!status.ok()) return status;
    status = checkLeaveOutTags(rule);
    if (status.ok()) status = checkGrade(rule.id(), rule.words().at("en").person());
    if (!status.ok()) return fault(file.name, line, std::string(status.message()));
    const Tree* tree = below(file.tree, file.content, "rules", i);
    status = TestCheck(file.name, answers).run(rule.when(), *below(*tree, rule, "when"));
    if (!status.ok()) return status;
    *set.rules.add_rules() = rule;
  }
  return absl::OkStatus();
}

}  // namespace

absl::StatusOr<RuleSet> loadRules(const std::string& folder) {
  const auto question_files = parseFolder<v1::QuestionFile>(folder + "/questions");
  if (!question_files.ok()) return question_files.status();
  const auto rule_files = parseFolder<v1::RuleFile>(folder + "/rules");
  if (!rule_files.ok()) return rule_files.status();
  RuleSet set;
  std::set<std::string> question_ids;
  for (const auto& file : *question_files) {
    absl::Status status = addQuestions(*file, question_ids, set);
    if (!status.ok()) return status;
  }
  Answers answers;
  for (const auto& question : set.questions.questions()) {
    for (const auto& choice : question.choices()) answers["answer." + question.id()].insert(choice.id());
  }
  std::set<std::string> rule_ids;
  for (const auto& file : *rule_files) {
    absl::Status status = addRules(*file, answers, rule_ids, set);
    if (!status.ok()) return status;
  }
  return set;
}

}  // namespace newel
