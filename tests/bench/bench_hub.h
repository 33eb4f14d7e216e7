// A hub with many phones for the benchmarks, on either store, and beside it the bare engine: the floor that
// the hub is measured against.
#pragma once

#include <atomic>
#include <memory>
#include <string>
#include <vector>

#include "platform/clock.h"
#include "sync/common/real_random.h"
#include "sync/hub/hub.h"
#include "sync/hub/postgres_session.h"
#include "tests/bench/bench_folder.h"
#include "tests/sync/common/test_postgres.h"

namespace newel::bench {

// The engine with nothing of ours around it: the columns of the hub's practice table, its key and its index,
// no foreign key; the bytes of the records as they are, none of them looked at; one durable transaction a
// call.
class Bare {
 public:
  virtual ~Bare() = default;
  // One prepared insert for each record.
  virtual void keep(const v1::OfferRequest& request) = 0;
  // One prepared insert for all of them, where the engine has such a thing; else the same.
  virtual void keepAtOnce(const v1::OfferRequest& request) { keep(request); }
};

// Where hub and bare engine keep theirs, on one disk, gone at the end.
class Place {
 public:
  virtual ~Place() = default;
  virtual absl::StatusOr<std::unique_ptr<HubStore>> store() = 0;
  virtual std::unique_ptr<Bare> bare() = 0;
};

class SqlitePlace : public Place {
 public:
  absl::StatusOr<std::unique_ptr<HubStore>> store() override;
  std::unique_ptr<Bare> bare() override;

 private:
  BenchFolder m_folder{"hub"};
};

class PostgresPlace : public Place {
 public:
  PostgresPlace() : m_database(test::TestPostgres::server().newDatabase()) {}
  ~PostgresPlace() override { test::TestPostgres::server().dropDatabase(m_database); }
  PostgresPlace(const PostgresPlace&) = delete;
  PostgresPlace& operator=(const PostgresPlace&) = delete;
  absl::StatusOr<std::unique_ptr<HubStore>> store() override;
  std::unique_ptr<Bare> bare() override;

 private:
  std::string address() const { return test::TestPostgres::server().address(m_database); }
  const std::string m_database;
};

// A clinic, its hub, and phones with tokens. Throws when anything fails.
class BenchHub {
 public:
  BenchHub(Place& place, int phones);

  // The whole way of a call behind the network: who calls, the checks, the store. False when anything was not
  // kept.
  bool take(std::size_t phone, const v1::OfferRequest& request);
  // `batch` practices of that phone's person that nobody has seen.
  v1::OfferRequest offerOf(std::size_t phone, std::int64_t batch);
  // A hold order of the therapist's. False when it was not kept.
  bool hold(const std::string& person_id);
  const std::string& personOf(std::size_t phone) const { return m_phones[phone].person_id; }
  Hub& hub() { return *m_hub; }

 private:
  struct Phone {
    std::string person_id;
    std::string token;
  };
  const std::unique_ptr<Clock> m_clock = platform::makeSystemClock();
  RealRandom m_random;
  std::unique_ptr<HubStore> m_store;
  std::unique_ptr<Hub> m_hub;
  std::vector<Phone> m_phones;
  std::atomic<std::uint64_t> m_numbers{0};
};

// Practices of `person_id` as a phone offers them, numbered from `numbers`.
v1::OfferRequest offerOf(std::atomic<std::uint64_t>& numbers, std::int64_t batch,
                         const std::string& person_id);
bool allKept(const absl::StatusOr<v1::OfferReply>& reply);

}  // namespace newel::bench
