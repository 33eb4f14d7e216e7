#include "core/library/catalogue_builder.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <utility>

#include "core/library/exercise_checks.h"
#include "core/library/source_lines.h"
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

void checkExercises(const std::vector<Parsed<v1::Exercise>>& files, const v1::PhraseFile& english,
                    Problems& problems) {
  for (const auto& exercise : files) {
    const absl::Status status = check(exercise.record);
    if (!status.ok()) problems.add(*exercise.file, exercise.record, status);
    if (exercise.record.id() != exercise.file->stem)
      problems.add(*exercise.file, exercise.record, "id", "is not the file's name");
    addAll(problems, *exercise.file, exercise.record, problemsOf(exercise.record, english));
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

template <typename Record>
std::vector<Record> recordsOf(const std::vector<Parsed<Record>>& files) {
  std::vector<Record> records;
  records.reserve(files.size());
  for (const auto& file : files) records.push_back(file.record);
  return records;
}

}  // namespace

absl::StatusOr<std::vector<CatalogueFile>> readCatalogueFiles(const std::string& folder) {
  std::vector<CatalogueFile> files;
  const fs::path root(folder);
  for (const fs::path& path : textFilesIn(root / "exercises")) {
    const absl::Status status = readInto(files, path, CatalogueFileKind::Exercise, "");
    if (!status.ok()) return status;
  }
  if (files.empty()) return absl::NotFoundError(folder + ": no exercises");
  std::set<fs::path> languages;
  std::error_code ignored;
  for (const auto& item : fs::directory_iterator(root / "words", ignored)) {
    if (item.is_directory()) languages.insert(item.path());
  }
  for (const fs::path& language : languages) {
    for (const fs::path& path : textFilesIn(language)) {
      const bool phrases = path.stem() == kPhrasesStem;
      const absl::Status status =
          readInto(files, path, phrases ? CatalogueFileKind::Phrases : CatalogueFileKind::Words,
                   language.filename().string());
      if (!status.ok()) return status;
    }
  }
  return files;
}

absl::StatusOr<Catalogue> CatalogueBuilder::build(const std::vector<CatalogueFile>& files) {
  Problems problems;
  const auto exercises = parseAll<v1::Exercise>(files, CatalogueFileKind::Exercise, problems);
  const auto words = parseAll<v1::ExerciseWords>(files, CatalogueFileKind::Words, problems);
  const auto phrases = parseAll<v1::PhraseFile>(files, CatalogueFileKind::Phrases, problems);
  // What does not parse has no content to judge, and would only make false followers.
  if (problems.any()) return problems.status();

  v1::PhraseFile english;
  for (const auto& file : phrases) {
    if (file.record.language() == "en") english = file.record;
  }
  checkPhrases(phrases, problems);
  checkExercises(exercises, english, problems);
  Catalogue catalogue = assemble(recordsOf(exercises), recordsOf(words), recordsOf(phrases));
  checkWords(words, catalogue, problems);
  for (const auto& exercise : exercises) {
    if (catalogue.words(exercise.record.id(), "en") == nullptr)
      problems.add(*exercise.file, 1,
                   "has no English words (words/en/" + exercise.record.id() + kExtension + ")");
  }
  if (problems.any()) return problems.status();
  return catalogue;
}

Catalogue CatalogueBuilder::assemble(std::vector<v1::Exercise> exercises,
                                     std::vector<v1::ExerciseWords> words,
                                     std::vector<v1::PhraseFile> phrases) {
  Catalogue catalogue;
  std::stable_sort(exercises.begin(), exercises.end(),
                   [](const v1::Exercise& a, const v1::Exercise& b) { return a.purpose() < b.purpose(); });
  catalogue.m_exercises = std::move(exercises);
  catalogue.m_words = std::move(words);
  catalogue.m_phrases = std::move(phrases);
  return catalogue;
}

}  // namespace newel
