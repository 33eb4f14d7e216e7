#include "core/safety/rule_words.h"

#include <set>

#include "core/library/plain_words.h"
#include "core/records/check.h"
#include "core/safety/rule_files.h"
#include "core/safety/rule_settings.h"

namespace newel {
namespace {

namespace fs = std::filesystem;
using rule_files::fault;
using rule_files::Parsed;
using rule_files::parseFolder;

// What a person must read on a bad day.
absl::Status checkPlain(const std::string& id, const std::string& text, const std::string& language) {
  const bool hard = language == "en"   ? readingGrade(text) > kHardestEnglishGrade
                    : language == "es" ? !text.empty() && spanishReadingEase(text) < kLeastSpanishEase
                                       : false;  // no formula of our own for the others
  if (!hard) return absl::OkStatus();
  return absl::InvalidArgumentError(id + ": too hard to read: " + text);
}

// Adds the words of one file and says what they name that is not there, or was there before.
class Adding {
 public:
  Adding(const Parsed<v1::SafetyWordFile>& file, const Catalogue& catalogue, RuleSet& set)
      : m_file(file), m_language(file.content.language()), m_catalogue(catalogue), m_set(set) {}

  absl::Status run(const std::string& folder_language) {
    const absl::Status status = check(m_file.content);
    if (!status.ok()) return at(std::string(status.message()));
    if (m_language != folder_language) return at("language: is not the folder's name");
    for (const auto& [id, words] : m_file.content.rules()) {
      absl::Status added = addRule(id, words);
      if (!added.ok()) return added;
    }
    for (const auto& [id, words] : m_file.content.questions()) {
      absl::Status added = addQuestion(id, words);
      if (!added.ok()) return added;
    }
    return absl::OkStatus();
  }

 private:
  absl::Status at(const std::string& reason) const { return fault(m_file.name, 1, reason); }

  absl::Status addRule(const std::string& id, const v1::RuleWords& words) {
    for (auto& rule : *m_set.rules.mutable_rules()) {
      if (rule.id() != id) continue;
      absl::Status status = checkText(id, words.person(), m_language, m_catalogue);
      if (status.ok()) status = checkPlaceholders(id, words.therapist(), m_catalogue);
      if (!status.ok()) return at(std::string(status.message()));
      if (!rule.mutable_words()->insert({m_language, words}).second) return at(id + ": is given twice");
      return absl::OkStatus();
    }
    return at(id + ": there is no such rule");
  }

  absl::Status addQuestion(const std::string& id, const v1::QuestionTranslation& words) {
    for (auto& question : *m_set.questions.mutable_questions()) {
      if (question.id() != id) continue;
      for (const std::string& text : {words.question(), words.help()}) {
        const absl::Status status = checkText(id, text, m_language, m_catalogue);
        if (!status.ok()) return at(std::string(status.message()));
      }
      v1::QuestionWords made;
      made.set_question(words.question());
      made.set_help(words.help());
      if (!question.mutable_words()->insert({m_language, made}).second) return at(id + ": is given twice");
      return addChoices(question, words);
    }
    return at(id + ": there is no such question");
  }

  absl::Status addChoices(v1::ReadyQuestion& question, const v1::QuestionTranslation& words) {
    std::set<std::string> offered;
    for (auto& choice : *question.mutable_choices()) {
      offered.insert(choice.id());
      const auto found = words.choices().find(choice.id());
      if (found == words.choices().end()) return at(question.id() + ": no words for \"" + choice.id() + "\"");
      const absl::Status status = checkPlaceholders(question.id(), found->second, m_catalogue);
      if (!status.ok()) return at(std::string(status.message()));
      (*choice.mutable_words())[m_language] = found->second;
    }
    for (const auto& [id, text] : words.choices()) {
      if (!offered.contains(id)) return at(question.id() + ": there is no choice \"" + id + "\"");
    }
    return absl::OkStatus();
  }

  const Parsed<v1::SafetyWordFile>& m_file;
  const std::string m_language;
  const Catalogue& m_catalogue;
  RuleSet& m_set;
};

// A language that speaks up at one rule and is silent at the next would be mixed on one screen.
absl::Status checkWhole(const std::string& folder, const std::string& language, const RuleSet& set) {
  for (const auto& rule : set.rules.rules()) {
    if (!rule.words().contains(language)) return fault(folder, 1, "no words for the rule " + rule.id());
  }
  for (const auto& question : set.questions.questions()) {
    if (!question.words().contains(language))
      return fault(folder, 1, "no words for the question " + question.id());
    const bool helps = !question.words().at("en").help().empty();
    if (helps == question.words().at(language).help().empty())
      return fault(folder, 1, "the question " + question.id() + " has help in one language only");
  }
  return absl::OkStatus();
}

absl::Status noSetting(const std::string& id, const std::string& name) {
  return absl::InvalidArgumentError(id + ": words: there is no setting \"" + name + "\"");
}

}  // namespace

absl::Status checkPlaceholders(const std::string& id, const std::string& text, const Catalogue& catalogue) {
  for (const std::string& name : settingsNamedIn(text)) {
    if (catalogue.setting(name) == nullptr) return noSetting(id, name);
  }
  return absl::OkStatus();
}

absl::Status checkText(const std::string& id, const std::string& text, const std::string& language,
                       const Catalogue& catalogue) {
  absl::Status status = checkPlain(id, withSettings(text, usualSettings(catalogue)), language);
  return status.ok() ? checkPlaceholders(id, text, catalogue) : status;
}

absl::Status addSafetyWords(const std::string& folder, const Catalogue& catalogue, RuleSet& set) {
  std::set<fs::path> languages;
  std::error_code none;
  for (const auto& item : fs::directory_iterator(folder, none)) {
    if (item.is_directory()) languages.insert(item.path());
  }
  for (const fs::path& language : languages) {
    const auto files = parseFolder<v1::SafetyWordFile>(language.string());
    if (!files.ok()) return files.status();
    for (const auto& file : *files) {
      absl::Status status = Adding(*file, catalogue, set).run(language.filename().string());
      if (!status.ok()) return status;
    }
    absl::Status whole = checkWhole(language.string(), language.filename().string(), set);
    if (!whole.ok()) return whole;
  }
  return absl::OkStatus();
}

}  // namespace newel
