// The catalogue: exercises, cards of advice, movements, settings and starting templates, with their words,
// compiled in and checked at build time.
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <string>
#include <vector>

#include "core/records/advice.pb.h"
#include "core/records/exercise.pb.h"
#include "core/records/own_exercise.pb.h"
#include "core/records/setting.pb.h"
#include "core/records/template.pb.h"

namespace newel {

// Immutable after load; safe to read from any thread. Order is the catalogue's own (by purpose, then by
// the list in core/library/exercises).
class Catalogue {
 public:
  // The catalogue compiled into the program. Always valid: the build fails otherwise.
  static const Catalogue& builtIn();

  // A catalogue from files, for tests and clinics: every "*.textproto" under `folder`/exercises, /cards,
  // /settings, /movements, /templates, /words/<language> and /words/<language>/cards. kInvalidArgument with
  // file, line and reason.
  static absl::StatusOr<Catalogue> load(const std::string& folder);

  // This catalogue and a clinic's own exercises, which must have passed checkOwn() (own_exercises.h). Several
  // revisions of one exercise may stand side by side.
  Catalogue with(const std::vector<v1::OwnExercise>& own) const;

  const std::vector<v1::Exercise>& exercises() const { return m_exercises; }
  // nullptr when there is none of that id (and revision; 0 means the newest).
  const v1::Exercise* find(const std::string& id, std::uint32_t revision = 0) const;
  // Words in exactly `language`, of that revision (0: the newest); nullptr when missing. Callers fall back
  // whole to another language (wording.h), never mixed.
  const v1::ExerciseWords* words(const std::string& id, const std::string& language,
                                 std::uint32_t revision = 0) const;
  // A short phrase such as "leg.left" or "support.one-hand"; empty when missing. Keys: core/library/words.
  std::string phrase(const std::string& key, const std::string& language) const;
  // Every phrase of `language` whose key begins with `prefix`, in the order of keys; for lists of choices.
  std::vector<std::string> keysOf(const std::string& prefix, const std::string& language) const;
  // nullptr when there is no such counted phrase in `language`.
  const v1::PluralPhrase* plural(const std::string& key, const std::string& language) const;
  std::vector<std::string> pluralKeys(const std::string& language) const;
  // Languages with phrases; those that say to be whole come first. What each claims was proved by the build.
  std::vector<std::string> languages() const;
  bool whole(const std::string& language) const;

  const std::vector<v1::AdviceCard>& cards() const { return m_cards; }
  const v1::AdviceCard* card(const std::string& id) const;  // nullptr: there is none
  const v1::AdviceWords* cardWords(const std::string& id, const std::string& language) const;

  const std::vector<v1::Movement>& movements() const { return m_movements; }
  const v1::Movement* movement(const std::string& id) const;  // nullptr: there is none

  const std::vector<v1::SettingKind>& settings() const { return m_settings; }
  const v1::SettingKind* setting(const std::string& id) const;  // nullptr: there is none

  // Where a programme may begin, by phase and then by name.
  const std::vector<v1::ProgrammeTemplate>& templates() const { return m_templates; }

 private:
  friend class CatalogueBuilder;
  std::vector<v1::Exercise> m_exercises;
  std::vector<v1::ExerciseWords> m_words;
  std::vector<v1::PhraseFile> m_phrases;
  std::vector<v1::AdviceCard> m_cards;
  std::vector<v1::AdviceWords> m_card_words;
  std::vector<v1::Movement> m_movements;
  std::vector<v1::SettingKind> m_settings;
  std::vector<v1::ProgrammeTemplate> m_templates;
};

}  // namespace newel
