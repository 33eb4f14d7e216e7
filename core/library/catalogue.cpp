#include "core/library/catalogue.h"

#include <algorithm>

#include "core/library/catalogue_builder.h"

namespace newel {
namespace {

template <typename Record>
const Record* byId(const std::vector<Record>& records, const std::string& id) {
  const auto found =
      std::find_if(records.begin(), records.end(), [&id](const Record& record) { return record.id() == id; });
  return found == records.end() ? nullptr : &*found;
}

const v1::PhraseFile* phrasesIn(const std::vector<v1::PhraseFile>& files, const std::string& language) {
  const auto found = std::find_if(files.begin(), files.end(),
                                  [&language](const auto& file) { return file.language() == language; });
  return found == files.end() ? nullptr : &*found;
}

}  // namespace

absl::StatusOr<Catalogue> Catalogue::load(const std::string& folder) {
  absl::StatusOr<std::vector<CatalogueFile>> files = readCatalogueFiles(folder);
  if (!files.ok()) return files.status();
  return CatalogueBuilder::build(*files);
}

Catalogue Catalogue::with(const std::vector<v1::OwnExercise>& own) const {
  Catalogue all = *this;
  for (const v1::OwnExercise& one : own) {
    if (all.find(one.exercise().id(), one.exercise().revision()) != nullptr) continue;
    all.m_exercises.push_back(one.exercise());
    all.m_words.insert(all.m_words.end(), one.words().begin(), one.words().end());
  }
  return all;
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

const v1::ExerciseWords* Catalogue::words(const std::string& id, const std::string& language,
                                          std::uint32_t revision) const {
  const v1::ExerciseWords* found = nullptr;
  for (const v1::ExerciseWords& words : m_words) {
    if (words.exercise_id() != id || words.language() != language) continue;
    if (words.exercise_revision() == 0 || words.exercise_revision() == revision) return &words;
    const bool newer = found == nullptr || words.exercise_revision() > found->exercise_revision();
    if (revision == 0 && newer) found = &words;
  }
  return found;
}

std::string Catalogue::phrase(const std::string& key, const std::string& language) const {
  const v1::PhraseFile* file = phrasesIn(m_phrases, language);
  if (file == nullptr) return {};
  const auto found = file->phrases().find(key);
  return found == file->phrases().end() ? std::string() : found->second;
}

std::vector<std::string> Catalogue::keysOf(const std::string& prefix, const std::string& language) const {
  std::vector<std::string> keys;
  const v1::PhraseFile* file = phrasesIn(m_phrases, language);
  if (file == nullptr) return keys;
  for (const auto& [key, text] : file->phrases()) {
    if (key.rfind(prefix, 0) == 0) keys.push_back(key);
  }
  std::sort(keys.begin(), keys.end());
  return keys;
}

const v1::PluralPhrase* Catalogue::plural(const std::string& key, const std::string& language) const {
  const v1::PhraseFile* file = phrasesIn(m_phrases, language);
  if (file == nullptr) return nullptr;
  const auto found = file->plurals().find(key);
  return found == file->plurals().end() ? nullptr : &found->second;
}

std::vector<std::string> Catalogue::pluralKeys(const std::string& language) const {
  std::vector<std::string> keys;
  const v1::PhraseFile* file = phrasesIn(m_phrases, language);
  if (file == nullptr) return keys;
  for (const auto& [key, plural] : file->plurals()) keys.push_back(key);
  std::sort(keys.begin(), keys.end());
  return keys;
}

std::vector<std::string> Catalogue::languages() const {
  std::vector<std::string> languages;
  for (const v1::PhraseFile& file : m_phrases) languages.push_back(file.language());
  std::sort(languages.begin(), languages.end(), [this](const std::string& left, const std::string& right) {
    return whole(left) != whole(right) ? whole(left) : left < right;
  });
  return languages;
}

bool Catalogue::whole(const std::string& language) const {
  const v1::PhraseFile* file = phrasesIn(m_phrases, language);
  return file != nullptr && file->claim().whole();
}

const v1::AdviceCard* Catalogue::card(const std::string& id) const { return byId(m_cards, id); }

const v1::AdviceWords* Catalogue::cardWords(const std::string& id, const std::string& language) const {
  const auto found = std::find_if(m_card_words.begin(), m_card_words.end(), [&](const auto& words) {
    return words.card_id() == id && words.language() == language;
  });
  return found == m_card_words.end() ? nullptr : &*found;
}

const v1::Movement* Catalogue::movement(const std::string& id) const { return byId(m_movements, id); }

const v1::SettingKind* Catalogue::setting(const std::string& id) const { return byId(m_settings, id); }

}  // namespace newel
