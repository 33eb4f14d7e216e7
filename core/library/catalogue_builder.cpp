#include "core/library/catalogue_builder.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <utility>

#include "core/library/card_checks.h"
#include "core/library/exercise_checks.h"
#include "core/library/language_checks.h"
#include "core/library/source_lines.h"
#include "core/library/templates.h"
#include "core/records/check.h"
#include "core/records/record_text.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

const char kExtension[] = ".textproto";
const char kPhrasesStem[] = "phrases";

std::vector<fs::path> textFilesIn(const fs::path& folder) {
  std::vector<fs::path> files;
  std::error_code ignored;
  for (const auto& item : fs::directory_iterator(folder, ignored)) {
    if (item.path().extension() == kExtension) files.push_back(item.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

absl::Status readInto(std::vector<CatalogueFile>& files, const fs::path& path, CatalogueFileKind kind,
                      const std::string& language) {
  std::ifstream in(path, std::ios::binary);
  if (!in) return absl::InvalidArgumentError(path.string() + ":1: cannot be read");
  CatalogueFile file;
  file.kind = kind;
  file.name = path.string();
  file.stem = path.stem().string();
  file.language = language;
  file.text.assign(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
  files.push_back(std::move(file));
  return absl::OkStatus();
}

// Collects "<file>:<line>: <reason>".
class Problems {
 public:
  void add(const CatalogueFile& file, int line, const std::string& reason) {
    m_text += (m_text.empty() ? "" : "\n") + file.name + ":" + std::to_string(line) + ": " + reason;
  }
  void add(const CatalogueFile& file, const google::protobuf::Message& record, const std::string& path,
           const std::string& reason) {
    add(file, lineOfField(file.text, record, path), path.empty() ? reason : path + ": " + reason);
  }
  // `status` is of a record's check(): its message begins with the field's path.
  void add(const CatalogueFile& file, const google::protobuf::Message& record, const absl::Status& status) {
    const std::string message(status.message().data(), status.message().size());
    add(file, lineOfField(file.text, record, message.substr(0, message.find(':'))), message);
  }
  bool any() const { return !m_text.empty(); }
  absl::Status status() const { return absl::InvalidArgumentError(m_text); }

 private:
  std::string m_text;
};

template <typename Record>
struct Parsed {
  const CatalogueFile* file = nullptr;
  Record record;
};

template <typename Record>
std::vector<Parsed<Record>> parseAll(const std::vector<CatalogueFile>& files, CatalogueFileKind kind,
                                     Problems& problems) {
  std::vector<Parsed<Record>> all;
  for (const CatalogueFile& file : files) {
    if (file.kind != kind) continue;
    Parsed<Record> parsed;
    parsed.file = &file;
    const absl::Status status = parseText(file.text, file.name, parsed.record);
    if (!status.ok()) {
      // parseText gives file:line:column; the line is in its place already.
      const std::string message(status.message().data(), status.message().size());
      const std::string place = message.substr(file.name.size() + 1);
      problems.add(file, std::max(1, std::atoi(place.c_str())), place.substr(place.find(": ") + 2));
      continue;
    }
    all.push_back(std::move(parsed));
  }
  return all;
}

void addAll(Problems& problems, const CatalogueFile& file, const google::protobuf::Message& record,
            const std::vector<CatalogueProblem>& found) {
  for (const CatalogueProblem& problem : found) problems.add(file, record, problem.path, problem.reason);
}

void checkPhrases(const std::vector<Parsed<v1::PhraseFile>>& files, Problems& problems) {
  for (const auto& phrases : files) {
    if (phrases.record.language() != phrases.file->language)
      problems.add(*phrases.file, phrases.record, "language", "is not the folder's name");
    addAll(problems, *phrases.file, phrases.record, problemsOf(phrases.record));
  }
}

void checkExercises(const std::vector<Parsed<v1::Exercise>>& files, const Catalogue& catalogue,
                    Problems& problems) {
  for (const auto& exercise : files) {
    const absl::Status status = check(exercise.record);
    if (!status.ok()) problems.add(*exercise.file, exercise.record, status);
    if (exercise.record.id() != exercise.file->stem)
      problems.add(*exercise.file, exercise.record, "id", "is not the file's name");
    if (isOwnExerciseId(exercise.record.id()))
      problems.add(*exercise.file, exercise.record, "id", "\"own-\" is kept for what a clinic writes itself");
    addAll(problems, *exercise.file, exercise.record, problemsOf(exercise.record, catalogue));
  }
}

void checkWords(const std::vector<Parsed<v1::ExerciseWords>>& files, const Catalogue& catalogue,
                Problems& problems) {
  for (const auto& words : files) {
    const absl::Status status = check(words.record);
    if (!status.ok()) problems.add(*words.file, words.record, status);
    if (words.record.exercise_id() != words.file->stem)
      problems.add(*words.file, words.record, "exercise_id", "is not the file's name");
    if (words.record.language() != words.file->language)
      problems.add(*words.file, words.record, "language", "is not the folder's name");
    const v1::Exercise* exercise = catalogue.find(words.record.exercise_id());
    if (exercise == nullptr) {
      problems.add(*words.file, words.record, "exercise_id", "there is no such exercise");
    } else {
      addAll(problems, *words.file, words.record, problemsOf(words.record, *exercise, catalogue));
    }
  }
}

// Kinds whose records need nothing but themselves and the phrases: check(), and what `more` finds.
template <typename Record, typename More>
void checkEach(const std::vector<Parsed<Record>>& files, Problems& problems, const More& more) {
  for (const auto& file : files) {
    const absl::Status status = check(file.record);
    if (!status.ok()) problems.add(*file.file, file.record, status);
    addAll(problems, *file.file, file.record, more(file.record));
  }
}

// Cards and their words stand one to a file, named after them.
template <typename Record>
void checkNames(const std::vector<Parsed<Record>>& files, Problems& problems, const std::string& field,
                const std::string& (Record::*id)() const) {
  for (const auto& file : files) {
    if ((file.record.*id)() != file.file->stem)
      problems.add(*file.file, file.record, field, "is not the file's name");
  }
}

// One record out of a file that holds several; its errors are told at its own line.
template <typename File, typename Record>
std::vector<Record> checkedList(const std::vector<Parsed<File>>& files, Problems& problems,
                                const std::string& list,
                                const google::protobuf::RepeatedPtrField<Record>& (File::*records)() const,
                                std::vector<CatalogueProblem> (*more)(const Record&)) {
  std::vector<Record> all;
  std::set<std::string> ids;
  for (const auto& file : files) {
    for (int i = 0; i < (file.record.*records)().size(); ++i) {
      const Record& record = (file.record.*records)()[i];
      const std::string path = list + "[" + std::to_string(i) + "]";
      const absl::Status status = check(record);
      if (!status.ok()) problems.add(*file.file, file.record, path, std::string(status.message()));
      if (!ids.insert(record.id()).second)
        problems.add(*file.file, file.record, path + ".id", "is given twice");
      for (const CatalogueProblem& problem : more(record))
        problems.add(*file.file, file.record, path, problem.path + ": " + problem.reason);
      all.push_back(record);
    }
  }
  return all;
}

void checkLanguages(const std::vector<Parsed<v1::PhraseFile>>& files, const Catalogue& catalogue,
                    Problems& problems) {
  for (const auto& phrases : files)
    addAll(problems, *phrases.file, phrases.record, problemsOfLanguage(phrases.record, catalogue));
}

template <typename Record>
std::vector<Record> recordsIn(const std::vector<Parsed<Record>>& files) {
  std::vector<Record> records;
  records.reserve(files.size());
  for (const auto& file : files) records.push_back(file.record);
  return records;
}

}  // namespace

absl::StatusOr<std::vector<CatalogueFile>> readCatalogueFiles(const std::string& folder) {
  std::vector<CatalogueFile> files;
  const fs::path root(folder);
  absl::Status status = absl::OkStatus();
  const auto readAll = [&](const fs::path& from, CatalogueFileKind kind, const std::string& language) {
    for (const fs::path& path : textFilesIn(from)) {
      const bool phrases = kind == CatalogueFileKind::Words && path.stem() == kPhrasesStem;
      if (status.ok()) status = readInto(files, path, phrases ? CatalogueFileKind::Phrases : kind, language);
    }
  };
  readAll(root / "exercises", CatalogueFileKind::Exercise, "");
  if (status.ok() && files.empty()) return absl::NotFoundError(folder + ": no exercises");
  readAll(root / "cards", CatalogueFileKind::Card, "");
  readAll(root / "movements", CatalogueFileKind::Movements, "");
  readAll(root / "settings", CatalogueFileKind::Settings, "");
  readAll(root / "templates", CatalogueFileKind::Template, "");
  std::set<fs::path> languages;
  std::error_code ignored;
  for (const auto& item : fs::directory_iterator(root / "words", ignored)) {
    if (item.is_directory()) languages.insert(item.path());
  }
  for (const fs::path& language : languages) {
    readAll(language, CatalogueFileKind::Words, language.filename().string());
    readAll(language / "cards", CatalogueFileKind::CardWords, language.filename().string());
  }
  if (!status.ok()) return status;
  return files;
}

absl::StatusOr<Catalogue> CatalogueBuilder::build(const std::vector<CatalogueFile>& files) {
  Problems problems;
  const auto exercises = parseAll<v1::Exercise>(files, CatalogueFileKind::Exercise, problems);
  const auto words = parseAll<v1::ExerciseWords>(files, CatalogueFileKind::Words, problems);
  const auto phrases = parseAll<v1::PhraseFile>(files, CatalogueFileKind::Phrases, problems);
  const auto cards = parseAll<v1::AdviceCard>(files, CatalogueFileKind::Card, problems);
  const auto card_words = parseAll<v1::AdviceWords>(files, CatalogueFileKind::CardWords, problems);
  const auto movements = parseAll<v1::MovementFile>(files, CatalogueFileKind::Movements, problems);
  const auto settings = parseAll<v1::SettingFile>(files, CatalogueFileKind::Settings, problems);
  const auto templates = parseAll<v1::ProgrammeTemplate>(files, CatalogueFileKind::Template, problems);
  // What does not parse has no content to judge, and would only make false followers.
  if (problems.any()) return problems.status();

  checkPhrases(phrases, problems);
  checkNames(cards, problems, "id", &v1::AdviceCard::id);
  checkNames(card_words, problems, "card_id", &v1::AdviceWords::card_id);
  checkNames(templates, problems, "id", &v1::ProgrammeTemplate::id);
  checkEach(cards, problems, [](const v1::AdviceCard&) { return std::vector<CatalogueProblem>(); });
  CatalogueRecords records;
  records.exercises = recordsIn(exercises);
  records.words = recordsIn(words);
  records.phrases = recordsIn(phrases);
  records.cards = recordsIn(cards);
  records.card_words = recordsIn(card_words);
  records.templates = recordsIn(templates);
  records.movements =
      checkedList(movements, problems, "movements", &v1::MovementFile::movements, &problemsOfMovement);
  records.settings =
      checkedList(settings, problems, "settings", &v1::SettingFile::settings, &problemsOfSetting);
  Catalogue catalogue = assemble(std::move(records));
  checkExercises(exercises, catalogue, problems);
  checkWords(words, catalogue, problems);
  checkEach(card_words, problems,
            [&catalogue](const v1::AdviceWords& one) { return problemsOfCard(one, catalogue); });
  checkEach(templates, problems,
            [&catalogue](const v1::ProgrammeTemplate& one) { return problemsOfTemplate(one, catalogue); });
  checkLanguages(phrases, catalogue, problems);
  for (const auto& exercise : exercises) {
    if (catalogue.words(exercise.record.id(), "en") == nullptr)
      problems.add(*exercise.file, 1,
                   "has no English words (words/en/" + exercise.record.id() + kExtension + ")");
  }
  if (problems.any()) return problems.status();
  return catalogue;
}

Catalogue CatalogueBuilder::assemble(CatalogueRecords records) {
  std::stable_sort(records.exercises.begin(), records.exercises.end(),
                   [](const v1::Exercise& a, const v1::Exercise& b) { return a.purpose() < b.purpose(); });
  std::stable_sort(records.templates.begin(), records.templates.end(),
                   [](const v1::ProgrammeTemplate& a, const v1::ProgrammeTemplate& b) {
                     return a.fit().phase() < b.fit().phase();
                   });
  Catalogue catalogue;
  catalogue.m_exercises = std::move(records.exercises);
  catalogue.m_words = std::move(records.words);
  catalogue.m_phrases = std::move(records.phrases);
  catalogue.m_cards = std::move(records.cards);
  catalogue.m_card_words = std::move(records.card_words);
  catalogue.m_movements = std::move(records.movements);
  catalogue.m_settings = std::move(records.settings);
  catalogue.m_templates = std::move(records.templates);
  return catalogue;
}

CatalogueRecords CatalogueBuilder::recordsOf(const Catalogue& catalogue) {
  return {catalogue.m_exercises,  catalogue.m_words,     catalogue.m_phrases,  catalogue.m_cards,
          catalogue.m_card_words, catalogue.m_movements, catalogue.m_settings, catalogue.m_templates};
}

}  // namespace newel
