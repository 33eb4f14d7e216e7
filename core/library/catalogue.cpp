#include "core/library/catalogue.h"

#include <set>

#include "core/library/catalogue_builder.h"

namespace newel {

absl::StatusOr<Catalogue> Catalogue::load(const std::string& folder) {
  absl::StatusOr<std::vector<CatalogueFile>> files = readCatalogueFiles(folder);
  if (!files.ok()) return files.status();
  return CatalogueBuilder::build(*files);
}

const v1::Exercise* Catalogue::find(const std::string& id, std::uint32_t revision) const {
  const v1::Exercise* found = nullptr;
  for (const v1::Exercise& exercise : m_exercises) {
    if (exercise.id() != id) continue;
    if (exercise.revision() == revision) return &exercise;
    if (revision == 0 && (found == nullptr || exercise.revision() > found->revision())) found = &exercise;
  }
  return found;
}

const v1::ExerciseWords* Catalogue::words(const std::string& id, const std::string& language) const {
  for (const v1::ExerciseWords& words : m_words) {
    if (words.exercise_id() == id && words.language() == language) return &words;
  }
  return nullptr;
}

std::string Catalogue::phrase(const std::string& key, const std::string& language) const {
  for (const v1::PhraseFile& file : m_phrases) {
    if (file.language() != language) continue;
    const auto found = file.phrases().find(key);
    return found == file.phrases().end() ? std::string() : found->second;
  }
  return {};
}

std::vector<std::string> Catalogue::languages() const {
  std::set<std::string> languages;
  for (const v1::PhraseFile& file : m_phrases) languages.insert(file.language());
  return {languages.begin(), languages.end()};
}

}  // namespace newel
