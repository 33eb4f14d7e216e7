// Reads the catalogue's files, checks all of them against each other, and makes the Catalogue. The program
// that embeds the catalogue at build time and Catalogue::load() both go through here.
// For core/library alone; others use catalogue.h.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/library/catalogue.h"

namespace newel {

enum class CatalogueFileKind { Exercise, Words, Phrases, Card, CardWords, Movements, Settings, Template };

struct CatalogueFile {
  CatalogueFileKind kind = CatalogueFileKind::Exercise;
  std::string name;      // path as it stands in errors
  std::string stem;      // file name without ".textproto"
  std::string language;  // of the folder; empty for what is in no language's folder
  std::string text;
};

// Every file that Catalogue::load() names, in a fixed order. kNotFound when the
// folder has no exercises, kInvalidArgument "<file>:1: ..." when a file cannot be read.
absl::StatusOr<std::vector<CatalogueFile>> readCatalogueFiles(const std::string& folder);

// All records of a catalogue, each kind in the order of its files.
struct CatalogueRecords {
  std::vector<v1::Exercise> exercises;
  std::vector<v1::ExerciseWords> words;
  std::vector<v1::PhraseFile> phrases;
  std::vector<v1::AdviceCard> cards;
  std::vector<v1::AdviceWords> card_words;
  std::vector<v1::Movement> movements;
  std::vector<v1::SettingKind> settings;
  std::vector<v1::ProgrammeTemplate> templates;
};

class CatalogueBuilder {
 public:
  // All checks. kInvalidArgument; the message holds one "<file>:<line>: <reason>" a line, all that were
  // found.
  static absl::StatusOr<Catalogue> build(const std::vector<CatalogueFile>& files);
  // From records that build() has passed before (the compiled-in catalogue): no checks.
  static Catalogue assemble(CatalogueRecords records);
  static CatalogueRecords recordsOf(const Catalogue& catalogue);
};

}  // namespace newel
