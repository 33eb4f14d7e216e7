// A phone's folder, paired with a real hub over TLS that stays there; for the phone's program as a process.
#pragma once

#include <stdlib.h>

#include <string>

#include "platform/clock.h"
#include "platform/fake/memory_secret_store.h"
#include "qml/home/store_key.h"
#include "tests/bench/phone_folder.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::bench {

class ListeningPhone {
 public:
  ListeningPhone() : m_folder("listening") {
    const v1::Person person = test::transfemoralLeft();
    const std::string id = m_clinic.addPerson(person);
    m_clinic.sign(person);
    platform::MemorySecretStore none;
    none.there = false;
    const auto key = home::storeKey(m_folder.path(), none, m_clinic.random(), [] { return true; });
    must(key.status());
    HomeEngine::Options options = m_clinic.phoneOptions("listening");
    options.folder = m_folder.path();
    options.store_key = *key;
    auto engine = HomeEngine::open(options);
    must(engine.status());
    must((*engine)->pair(m_clinic.ticketFor(id)));
    must((*engine)->syncOnce());
    // The program lives by the clinic's clock.
    const auto clock = platform::makeSystemClock();
    const absl::Duration ahead = m_clinic.clock().wall() - clock->wall();
    setenv("NEWEL_WALL_OFFSET_S", std::to_string(absl::ToInt64Seconds(ahead)).c_str(), 1);
  }
  ~ListeningPhone() { unsetenv("NEWEL_WALL_OFFSET_S"); }
  ListeningPhone(const ListeningPhone&) = delete;
  ListeningPhone& operator=(const ListeningPhone&) = delete;

  std::string path() const { return m_folder.path(); }

 private:
  BenchFolder m_folder;
  test::TestClinic m_clinic;
};

}  // namespace newel::bench
