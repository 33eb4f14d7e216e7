// A clinic with many people in it, for what has to work with ten thousand. Everybody here is invented.
#pragma once

#include <absl/status/status.h>

#include <algorithm>
#include <string>

#include "core/records/record_text.h"
#include "sync/hub/hub_store.h"
#include "tests/core/people/sample_people.h"

namespace newel::test {

// By turns "Sample N Evenly" and "Sample N Oddly"; every second one can be searched for.
inline absl::Status addPersons(HubStore& store, int count) {
  constexpr int kAtOnce = 1000;
  const v1::Person like = transfemoralLeft();
  const auto add = [&](HubTransaction& transaction, int n) {
    v1::Person person = like;
    person.set_id(idOf(static_cast<std::uint64_t>(1'000'000 + n)));
    v1::Identity identity;
    identity.set_person_id(person.id());
    identity.set_given_name("Sample " + std::to_string(n));
    identity.set_family_name(n % 2 == 0 ? "Evenly" : "Oddly");
    transaction.putPerson(person.id(), {1, toBytes(person)});
    transaction.putIdentity(person.id(), {1, toBytes(identity)});
  };
  for (int first = 0; first < count; first += kAtOnce) {
    const absl::Status added = store.write([&](HubTransaction& transaction) {
      for (int n = first; n < std::min(count, first + kAtOnce); ++n) add(transaction, n);
      return absl::OkStatus();
    });
    if (!added.ok()) return added;
  }
  return absl::OkStatus();
}

}  // namespace newel::test
