#include "core/records/embedding.h"

#include <fstream>
#include <iostream>

namespace newel {

int embedMain(int argc, char** argv, const std::string& symbol,
              const std::function<absl::StatusOr<std::string>(const std::string& folder)>& load) {
  if (argc != 3) {
    std::cerr << "usage: " << argv[0] << " FOLDER OUTPUT.cpp\n";
    return 2;
  }
  const auto bytes = load(argv[1]);
  if (!bytes.ok()) {
    std::cerr << std::string(bytes.status().message()) << '\n';
    return 1;
  }
  std::ofstream out(argv[2], std::ios::binary | std::ios::trunc);
  out << "#include <cstddef>\n\nnamespace newel::embedded {\n"
      << "extern const unsigned char " << symbol << "[];\nextern const std::size_t " << symbol << "Size;\n"
      << "const unsigned char " << symbol << "[] = {";
  for (std::size_t i = 0; i < bytes->size(); ++i) {
    out << (i % 24 == 0 ? "\n" : "") << static_cast<unsigned>(static_cast<unsigned char>((*bytes)[i])) << ',';
  }
  out << "};\nconst std::size_t " << symbol << "Size = " << bytes->size() << ";\n"
      << "}  // namespace newel::embedded\n";
  out.flush();
  if (!out) {
    std::cerr << argv[2] << ": cannot be written\n";
    return 1;
  }
  return 0;
}

}  // namespace newel
