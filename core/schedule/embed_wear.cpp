// Build-time program: proves the wear schedules and writes them into one C++ file.
#include "core/records/embedding.h"
#include "core/records/record_text.h"
#include "core/schedule/wear_library.h"

int main(int argc, char** argv) {
  return newel::embedMain(argc, argv, "kWear", [](const std::string& folder) -> absl::StatusOr<std::string> {
    const auto library = newel::WearLibrary::load(folder);
    if (!library.ok()) return library.status();
    return newel::toBytes(library->asFile());
  });
}
