// The hub's store file, damaged: opened, read and said to be bad, never anything worse. An input is a list of
// changes, four bytes each (offset in three, then the byte), to a good store; with 0xFF first it is the file.
#include <fstream>
#include <iterator>

#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/fuzz/fuzz_hub.h"
#include "tests/fuzz/target.h"

namespace newel::fuzz {
namespace {

std::string bytesOf(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

// A clinic with nobody in it, closed, so that all of it is in the one file.
std::string goodStore() {
  const FuzzFolder folder;
  const StillClock clock;
  RealRandom random;
  {
    const auto store = openSqliteHubStore(folder.file("good.db"));
    v1::ClinicCard card;
    card.set_name("Fuzz clinic (invented)");
    card.set_phone("555 0101");
    card.set_emergency_number("112");
    require(store.ok() && initClinic(**store, card, {}, false, clock, random).ok(), "a store");
  }
  return bytesOf(folder.file("good.db"));
}

std::string changed(std::string file, const std::string& edits) {
  for (std::size_t i = 0; i + 4 <= edits.size(); i += 4) {
    const auto at = [&](std::size_t k) {
      return static_cast<std::size_t>(static_cast<unsigned char>(edits[i + k]));
    };
    file[(at(0) << 16U | at(1) << 8U | at(2)) % file.size()] = edits[i + 3];
  }
  return file;
}

void readAll(HubTransaction& transaction) {
  transaction.setting("card");
  for (const auto& id : transaction.personIdsAfter("", 100)) {
    transaction.person(id);
    transaction.caseFacts(id);
  }
  transaction.accounts();
  transaction.auditAfter(0, 100);
  transaction.ownExercises();
  transaction.feedAfter("", 0, 100);
}

}  // namespace
}  // namespace newel::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel;
  static const std::string kGood = fuzz::goodStore();
  const fuzz::Input input = fuzz::split(data, size);
  const fuzz::FuzzFolder folder;
  const std::string path = folder.file("hub.db");
  std::ofstream(path, std::ios::binary)
      << (input.choice == 0xFF ? input.rest : fuzz::changed(kGood, input.rest));
  const auto store = openSqliteHubStore(path);
  if (!store.ok()) return 0;
  (void)(*store)->read([](HubTransaction& transaction) {
    fuzz::readAll(transaction);
    return absl::OkStatus();
  });
  return 0;
}
