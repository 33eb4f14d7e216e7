// Run by the build: checks the catalogue's files and writes them as one source file.
// newel_embed_catalogue <folder> <output.cpp>; exit code 1 with "<file>:<line>: <reason>" on any error.
#include <fstream>
#include <iostream>
#include <string>
#include <vector>

#include "core/library/catalogue_builder.h"
#include "core/records/record_text.h"

namespace {

void writeBytes(std::ostream& out, const std::string& bytes) {
  static const char kDigits[] = "01234567";
  std::size_t column = 0;
  out << "\"";
  for (const char c : bytes) {
    const auto u = static_cast<unsigned char>(c);
    // Three octal digits never run into the next character, as hexadecimal ones would.
    out << '\\' << kDigits[u >> 6] << kDigits[(u >> 3) & 7] << kDigits[u & 7];
    if (++column % 25 == 0) out << "\"\n    \"";
  }
  out << "\"";
}

void writePart(std::ostream& out, const char* kind, const google::protobuf::Message& record) {
  const std::string bytes = newel::toBytes(record);
  out << "    {newel::CatalogueFileKind::" << kind << ",\n    ";
  writeBytes(out, bytes);
  out << ", " << bytes.size() << "},\n";
}

template <typename Record>
void writeParts(std::ostream& out, const char* kind, const std::vector<Record>& records) {
  for (const Record& record : records) writePart(out, kind, record);
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) {
    std::cerr << "usage: newel_embed_catalogue <folder> <output.cpp>\n";
    return 1;
  }
  const absl::StatusOr<newel::Catalogue> catalogue = newel::Catalogue::load(argv[1]);
  if (!catalogue.ok()) {
    std::cerr << catalogue.status().message() << "\n";
    return 1;
  }
  std::ofstream out(argv[2]);
  out << "#include \"core/library/embedded_parts.h\"\n\nnamespace {\n"
      << "const newel::EmbeddedPart kParts[] = {\n";
  const newel::CatalogueRecords all = newel::CatalogueBuilder::recordsOf(*catalogue);
  writeParts(out, "Exercise", all.exercises);
  writeParts(out, "Words", all.words);
  writeParts(out, "Phrases", all.phrases);
  writeParts(out, "Card", all.cards);
  writeParts(out, "CardWords", all.card_words);
  writeParts(out, "Movements", all.movements);
  writeParts(out, "Settings", all.settings);
  writeParts(out, "Template", all.templates);
  out << "};\n}  // namespace\n\nnamespace newel {\n"
      << "const EmbeddedPart* embeddedParts() { return kParts; }\n"
      << "std::size_t embeddedPartCount() { return sizeof(kParts) / sizeof(kParts[0]); }\n"
      << "}  // namespace newel\n";
  out.close();
  if (!out.good()) {
    std::cerr << argv[2] << ":1: cannot be written\n";
    return 1;
  }
  return 0;
}
