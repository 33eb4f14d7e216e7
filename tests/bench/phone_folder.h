// A phone's folder for the benches: paired with an invented clinic that is never reached again.
#pragma once

#include <stdlib.h>

#include <stdexcept>
#include <string>

#include "core/records/uuid7.h"
#include "core/time/local_day.h"
#include "platform/fake/memory_secret_store.h"
#include "qml/home/store_key.h"
#include "sync/common/real_random.h"
#include "tests/bench/bench_folder.h"
#include "tests/bench/bench_records.h"
#include "tests/qml/home/paper_clinic.h"

namespace newel::bench {

inline void must(const absl::Status& status) {
  if (!status.ok()) throw std::runtime_error(std::string(status.message()));
}

// A phone's folder: paired with an invented clinic, a programme of three, and `practices` behind it, one a
// day up to yesterday, all of them with the clinic already.
class PhoneFolder {
 public:
  explicit PhoneFolder(const std::string& name, int practices) : m_folder("home-" + name) {
    tests::PaperClinic clinic;
    RealRandom random;
    platform::MemorySecretStore none;
    none.there = false;
    const absl::Time now = absl::Now();
    SimulatedClock clock(now);
    const auto key = home::storeKey(m_folder.path(), none, random, [] { return true; });
    must(key.status());
    HomeEngine::Options options;
    options.folder = m_folder.path();
    options.store_key = *key;
    options.clock = &clock;
    options.random = &random;
    options.app_version = "bench";
    options.device_name = "bench";
    options.network = &clinic;
    auto engine = HomeEngine::open(options);
    must(engine.status());
    clinic.put(tests::inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time", "face-down-lying"}));
    must((*engine)->pair({"clinic.example", 7443, std::string(32, '\x5a'), tests::PaperClinic::kCode}));
    must((*engine)->syncOnce());
    const std::string person = (*engine)->person()->id();
    for (int i = practices; i > 0; --i) {
      v1::Practice practice = benchPractice(static_cast<std::uint64_t>(i));
      const absl::Time begun = now - absl::Hours(24) * i;
      const std::string day = formatLocalDay(absl::ToCivilDay(begun, absl::UTCTimeZone()));
      practice.set_id(makeUuid7(absl::ToUnixMillis(begun), {}));
      practice.set_person_id(person);
      practice.set_local_day(day);
      for (auto& done : *practice.mutable_entries()) done.mutable_occasion()->set_local_day(day);
      *practice.mutable_started_at() = toTimestamp(begun);
      *practice.mutable_ended_at() = toTimestamp(begun + absl::Minutes(20));
      must((*engine)->closePractice(practice));
    }
    while ((*engine)->state().queued > 0) must((*engine)->syncOnce());
  }
  std::string path() const { return m_folder.path(); }

 private:
  BenchFolder m_folder;
};

}  // namespace newel::bench
