// Build-time program: proves the lines of the reporting template and writes them into one C++ file.
#include "core/records/embedding.h"
#include "core/records/record_text.h"
#include "core/review/cert.h"

int main(int argc, char** argv) {
  return newel::embedMain(argc, argv, "kCert", [](const std::string& folder) -> absl::StatusOr<std::string> {
    const auto table = newel::loadCertTable(folder);
    if (!table.ok()) return table.status();
    return newel::toBytes(*table);
  });
}
