// Records in their binary form, as they come over the wire and out of a store, through the check at the door.
#include "core/records/record_text.h"
#include "tests/fuzz/records.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel;
  const fuzz::Input input = fuzz::split(data, size);
  const auto& type = fuzz::recordTypes().at(input.choice % fuzz::recordTypes().size());
  const auto record = type.make();
  if (!record->ParseFromString(input.rest) || !type.check(*record).ok()) return 0;
  const auto again = type.make();
  fuzz::require(again->ParseFromString(toBytes(*record)), "a good record's bytes are read again");
  fuzz::require(type.check(*again).ok(), "and are good again");
  return 0;
}
