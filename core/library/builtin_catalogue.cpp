#include <cstdlib>
#include <utility>

#include "core/library/catalogue_builder.h"
#include "core/library/embedded_parts.h"

namespace newel {
namespace {

template <typename Record>
std::vector<Record> recordsOf(CatalogueFileKind kind) {
  std::vector<Record> records;
  for (std::size_t i = 0; i < embeddedPartCount(); ++i) {
    const EmbeddedPart& part = embeddedParts()[i];
    if (part.kind != kind) continue;
    Record record;
    // The bytes were written by this very build; anything else is a broken program.
    if (!record.ParseFromArray(part.bytes, static_cast<int>(part.size))) std::abort();
    records.push_back(std::move(record));
  }
  return records;
}

}  // namespace

const Catalogue& Catalogue::builtIn() {
  static const Catalogue catalogue = CatalogueBuilder::assemble({
      recordsOf<v1::Exercise>(CatalogueFileKind::Exercise),
      recordsOf<v1::ExerciseWords>(CatalogueFileKind::Words),
      recordsOf<v1::PhraseFile>(CatalogueFileKind::Phrases),
      recordsOf<v1::AdviceCard>(CatalogueFileKind::Card),
      recordsOf<v1::AdviceWords>(CatalogueFileKind::CardWords),
      recordsOf<v1::Movement>(CatalogueFileKind::Movements),
      recordsOf<v1::SettingKind>(CatalogueFileKind::Settings),
      recordsOf<v1::ProgrammeTemplate>(CatalogueFileKind::Template),
  });
  return catalogue;
}

}  // namespace newel
