// Slows down whoever guesses, without shutting out the rightful owner: it counts per key, and a key is who
// tries together with where from.
#pragma once

#include <absl/time/time.h>

#include <cstddef>
#include <map>
#include <mutex>
#include <string>

#include "core/time/clock.h"

namespace newel {

// Thread-safe. Kept in memory: a restart forgives.
class Throttle {
 public:
  struct Limits {
    int free_failures = 5;                         // before any waiting
    absl::Duration first_wait = absl::Seconds(2);  // doubles with each further failure
    absl::Duration longest_wait = absl::Minutes(5);
    absl::Duration forget_after = absl::Minutes(15);  // without a failure
    std::size_t most_keys = 10000;                    // the oldest go first
  };
  // Source of the defaults: ours, from memory of common practice; ASVS 5.0 6.3.1 asks only that it be written
  // down. `clock` outlives this.
  explicit Throttle(const Clock* clock) : Throttle(clock, Limits()) {}
  Throttle(const Clock* clock, Limits limits) : m_clock(clock), m_limits(limits) {}

  // Zero: go on. Otherwise how long `key` has to wait; the try must not be looked at.
  absl::Duration waitFor(const std::string& key);
  void failed(const std::string& key);
  void succeeded(const std::string& key);

 private:
  struct Record {
    int failures = 0;
    absl::Duration last;  // on the clock's elapsed()
    absl::Duration until;
  };
  void makeRoom();

  const Clock* m_clock;
  const Limits m_limits;
  std::mutex m_mutex;
  std::map<std::string, Record> m_records;
};

}  // namespace newel
