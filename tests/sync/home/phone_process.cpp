// A phone that practises without end: journal, close, offer, again. Each id is printed once the engine said
// that it is kept; whoever started this ends it at any moment.
#include <iostream>
#include <string>

#include "core/time/clock.h"
#include "sync/home/seal.h"
#include "tests/sync/common/test_clinic.h"

int main(int argc, char** argv) {
  if (argc < 3) return 2;
  newel::test::TestClock clock;
  newel::RealRandom random;
  newel::HomeEngine::Options options;
  options.folder = argv[1];
  options.store_key = std::string(newel::kStoreKeyBytes, 'k');
  options.clock = &clock;
  options.random = &random;
  options.app_version = "test 1";
  options.device_name = "phone";
  const bool with_hub = std::string(argv[2]) == "hub";
  auto opened = newel::HomeEngine::open(options);
  if (!opened.ok()) {
    std::cout << "open " << opened.status() << std::endl;
    return 1;
  }
  newel::HomeEngine& phone = **opened;
  const std::string person = phone.person()->id();
  std::cout << "ready" << std::endl;
  while (true) {
    clock.advance(absl::Milliseconds(5));
    const std::string id = phone.newId();
    for (std::uint32_t sequence = 1; sequence <= 4; ++sequence) {
      const absl::Status kept = phone.appendJournal({newel::test::sampleLine(id, person, sequence)});
      if (!kept.ok()) {
        std::cout << "journal " << kept << std::endl;
        return 1;
      }
      std::cout << "line " << id << " " << sequence << std::endl;
    }
    const absl::Status closed = phone.closePractice(newel::test::samplePractice(id, person));
    if (!closed.ok()) {
      std::cout << "close " << closed << std::endl;
      return 1;
    }
    std::cout << "closed " << id << std::endl;
    if (with_hub) phone.syncOnce().IgnoreError();
  }
}
