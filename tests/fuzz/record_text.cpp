// Records as text and JSON, through parsing and the check at the door.
#include "core/records/record_text.h"

#include "tests/fuzz/records.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel;
  const fuzz::Input input = fuzz::split(data, size);
  const auto& type = fuzz::recordTypes().at(input.choice % fuzz::recordTypes().size());
  const auto record = type.make();
  if (!parseTextOrJson(input.rest, "input", *record).ok() || !type.check(*record).ok()) return 0;
  // What passed the door can be shown and read again.
  const auto again = type.make();
  fuzz::require(parseTextOrJson(toJson(*record), "json", *again).ok(), "a good record's JSON is read again");
  fuzz::require(toBytes(*again) == toBytes(*record), "and says the same");
  return 0;
}
