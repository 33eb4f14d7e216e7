// Run by the build: checks the clips and writes them as one source file.
// newel_embed_clips <figure folder> <library folder> <output.cpp>; exit code 1 with "<file>:<line>:
// <reason>".
#include <fstream>
#include <iostream>

#include "core/figure/clip_book.h"
#include "core/records/record_text.h"

namespace {

void writePart(std::ostream& out, bool words, const google::protobuf::Message& record) {
  static const char kDigits[] = "01234567";
  const std::string bytes = newel::toBytes(record);
  out << "    {" << (words ? "true" : "false") << ",\n    \"";
  std::size_t column = 0;
  for (const char c : bytes) {
    const auto u = static_cast<unsigned char>(c);
    // Three octal digits never run into the next character, as hexadecimal ones would.
    out << '\\' << kDigits[u >> 6] << kDigits[(u >> 3) & 7] << kDigits[u & 7];
    if (++column % 25 == 0) out << "\"\n    \"";
  }
  out << "\", " << bytes.size() << "},\n";
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 4) {
    std::cerr << "usage: newel_embed_clips <figure folder> <library folder> <output.cpp>\n";
    return 1;
  }
  const auto catalogue = newel::Catalogue::load(argv[2]);
  if (!catalogue.ok()) {
    std::cerr << std::string(catalogue.status().message()) << "\n";
    return 1;
  }
  const auto book = newel::ClipBook::load(argv[1], *catalogue);
  if (!book.ok()) {
    std::cerr << std::string(book.status().message()) << "\n";
    return 1;
  }
  std::ofstream out(argv[3]);
  out << "#include \"core/figure/embedded_clips.h\"\n\nnamespace {\nconst newel::EmbeddedClip kClips[] = {\n";
  for (const auto& clip : book->clips()) writePart(out, false, clip);
  for (const auto& phrases : book->phrases()) writePart(out, true, phrases);
  out << "};\n}  // namespace\n\nnamespace newel {\n"
      << "const EmbeddedClip* embeddedClips() { return kClips; }\n"
      << "std::size_t embeddedClipCount() { return sizeof(kClips) / sizeof(kClips[0]); }\n"
      << "}  // namespace newel\n";
  out.close();
  if (!out.good()) {
    std::cerr << argv[3] << ":1: cannot be written\n";
    return 1;
  }
  return 0;
}
