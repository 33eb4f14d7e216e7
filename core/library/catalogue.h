// The exercise catalogue: structure, words and word lists, compiled in and checked at build time.
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <string>
#include <vector>

#include "core/records/exercise.pb.h"

namespace newel {

// Immutable after load; safe to read from any thread. Order is the catalogue's own (by purpose, then by
// the list in core/library/exercises).
class Catalogue {
 public:
  // The catalogue compiled into the program. Always valid: the build fails otherwise.
  static const Catalogue& builtIn();

  // A catalogue from files, for tests and clinics: every "*.textproto" under `folder`/exercises and
  // `folder`/words/<language>. kInvalidArgument with file, line and reason.
  static absl::StatusOr<Catalogue> load(const std::string& folder);

  const std::vector<v1::Exercise>& exercises() const { return m_exercises; }
  // nullptr when there is none of that id (and revision; 0 means the newest).
  const v1::Exercise* find(const std::string& id, std::uint32_t revision = 0) const;
  // Words in exactly `language`; nullptr when missing. Callers fall back whole to "en", never mixed.
  const v1::ExerciseWords* words(const std::string& id, const std::string& language) const;
  // A short phrase such as "leg.left" or "support.one-hand"; empty when missing. Keys: core/library/words.
  std::string phrase(const std::string& key, const std::string& language) const;
  std::vector<std::string> languages() const;

 private:
  friend class CatalogueBuilder;
  std::vector<v1::Exercise> m_exercises;
  std::vector<v1::ExerciseWords> m_words;
  std::vector<v1::PhraseFile> m_phrases;
};

}  // namespace newel
