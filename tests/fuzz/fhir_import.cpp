// A FHIR file from anybody: taken as a beginning, or refused with the path of what is wrong.
#include "sync/export/fhir_import.h"

#include "core/records/check.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel;
  const auto import = importFhir(std::string(reinterpret_cast<const char*>(data), size));
  if (!import.ok()) {
    fuzz::require(import.status().message().find(": ") != std::string::npos, "a refusal says where and why");
    return 0;
  }
  for (const auto& entry : import->draft.entries()) {
    fuzz::require(!entry.has_dose() || check(entry.dose()).ok(), "a dose that is taken is a good one");
  }
  for (const auto& request : import->requests)
    fuzz::require(request.entry < import->draft.entries_size(), "a request names an entry that is there");
  return 0;
}
