// Build-time program: proves the rules and writes them into one C++ file. A bad rule fails the build with
// "<file>:<line>: <reason>".
#include <cstdio>
#include <fstream>
#include <iostream>
#include <string>

#include "core/records/record_text.h"
#include "core/safety/rule_loading.h"

namespace {

void writeBytes(std::ostream& out, const std::string& name, const std::string& bytes) {
  out << "const unsigned char " << name << "[] = {";
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    out << (i % 24 == 0 ? "\n" : "") << static_cast<unsigned>(static_cast<unsigned char>(bytes[i])) << ",";
  }
  out << "};\nconst std::size_t " << name << "Size = " << bytes.size() << ";\n";
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 4) {
    std::cerr << "usage: newel_embed_rules FOLDER CATALOGUE OUTPUT.cpp\n";
    return 2;
  }
  const auto catalogue = newel::Catalogue::load(argv[2]);
  if (!catalogue.ok()) {
    std::cerr << std::string(catalogue.status().message()) << "\n";
    return 1;
  }
  const auto set = newel::loadRules(argv[1], *catalogue);
  if (!set.ok()) {
    std::cerr << std::string(set.status().message()) << "\n";
    return 1;
  }
  std::ofstream out(argv[3], std::ios::binary | std::ios::trunc);
  out << "// Written by newel_embed_rules.\n#include <cstddef>\n\nnamespace newel::embedded {\n"
      << "extern const unsigned char kRules[];\nextern const std::size_t kRulesSize;\n"
      << "extern const unsigned char kQuestions[];\nextern const std::size_t kQuestionsSize;\n";
  writeBytes(out, "kRules", newel::toBytes(set->rules));
  writeBytes(out, "kQuestions", newel::toBytes(set->questions));
  out << "}  // namespace newel::embedded\n";
  out.flush();
  if (!out) {
    std::cerr << argv[3] << ": cannot be written\n";
    return 1;
  }
  return 0;
}
