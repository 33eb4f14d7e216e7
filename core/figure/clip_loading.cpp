// Reads and checks the clips' files: for the program that embeds them and for ClipBook::load().
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "core/figure/clip_book.h"
#include "core/library/source_lines.h"
#include "core/records/record_text.h"

namespace newel {
namespace {

struct TextFile {
  std::string name;
  std::string stem;
  std::string text;
};

absl::StatusOr<std::vector<TextFile>> filesIn(const std::string& folder) {
  std::vector<TextFile> files;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    if (at->path().extension() != ".textproto") continue;
    std::ifstream stream(at->path(), std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    if (!stream) return absl::NotFoundError(at->path().string() + ": cannot be read");
    files.push_back({at->path().string(), at->path().stem().string(), text.str()});
  }
  if (error) return absl::NotFoundError(folder + ": cannot be read: " + error.message());
  std::sort(files.begin(), files.end(), [](const TextFile& a, const TextFile& b) { return a.name < b.name; });
  return files;
}

void addLine(std::string& problems, const std::string& line) {
  problems += (problems.empty() ? "" : "\n") + line;
}

std::vector<ClipProblem> problemsOfFile(const TextFile& file, const v1::Clip& clip,
                                        const Catalogue& catalogue) {
  if (clip.exercise_id() != file.stem) return {{"exercise_id", "is not the name of the file"}};
  const v1::Exercise* exercise = catalogue.find(clip.exercise_id());
  if (exercise == nullptr) return {{"exercise_id", "there is no such exercise in the catalogue"}};
  return problemsOf(clip, *exercise);
}

}  // namespace

absl::StatusOr<ClipBook> ClipBook::load(const std::string& folder, const Catalogue& catalogue) {
  std::string problems;
  std::vector<v1::Clip> clips;
  std::vector<v1::PhraseFile> phrases;
  const auto clip_files = filesIn(folder + "/clips");
  if (!clip_files.ok()) return clip_files.status();
  for (const TextFile& file : *clip_files) {
    v1::Clip clip;
    const absl::Status parsed = parseText(file.text, file.name, clip);
    if (!parsed.ok()) {
      addLine(problems, std::string(parsed.message()));
      continue;
    }
    for (const ClipProblem& problem : problemsOfFile(file, clip, catalogue)) {
      const int line = lineOfField(file.text, clip, problem.path);
      const std::string path = problem.path.empty() ? "" : problem.path + ": ";
      addLine(problems, file.name + ":" + std::to_string(line) + ": " + path + problem.reason);
    }
    clips.push_back(std::move(clip));
  }
  const auto word_files = filesIn(folder + "/words");
  if (!word_files.ok()) return word_files.status();
  for (const TextFile& file : *word_files) {
    v1::PhraseFile words;
    const absl::Status parsed = parseText(file.text, file.name, words);
    if (!parsed.ok()) addLine(problems, std::string(parsed.message()));
    if (words.language() != file.stem)
      addLine(problems, file.name + ":1: language: is not the name of the file");
    phrases.push_back(std::move(words));
  }
  if (!problems.empty()) return absl::InvalidArgumentError(problems);
  return assemble(std::move(clips), std::move(phrases));
}

}  // namespace newel
