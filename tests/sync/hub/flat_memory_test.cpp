// A hub that has taken a hundred thousand practices is no larger than one that has taken twenty thousand.
#include <gtest/gtest.h>
#include <unistd.h>

#include <fstream>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

constexpr int kPersons = 50;
constexpr int kBatch = 100;
constexpr int kFirst = 20000;
constexpr int kAll = 100000;
// Ours, no source: a tenth of a kilobyte for each of the eighty thousand. Keeping as little as their ids
// would be more.
constexpr std::int64_t kMostGrowth = std::int64_t{8} << 20U;

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr bool kSanitized = true;
#else
constexpr bool kSanitized = false;
#endif

// Bytes in memory of this process: proc(5), statm.
std::int64_t resident() {
  std::ifstream status("/proc/self/statm");
  std::int64_t all = 0;
  std::int64_t pages = 0;
  status >> all >> pages;
  return pages * sysconf(_SC_PAGESIZE);
}

TEST(FlatMemory, overAHundredThousandPractices) {
  if (kSanitized) GTEST_SKIP() << "skipped: a sanitizer keeps what is freed";
  test::TestClinic clinic;
  std::vector<PhoneCaller> phones;
  for (int i = 0; i < kPersons; ++i) {
    v1::Person person = test::transfemoralLeft();
    person.set_id(test::idOf(5000 + static_cast<std::uint64_t>(i)));
    phones.push_back({test::idOf(6000 + static_cast<std::uint64_t>(i)), clinic.addPerson(person)});
  }
  std::int64_t before = 0;
  for (int taken = 0; taken < kAll; taken += kBatch) {
    if (taken == kFirst) before = resident();
    const PhoneCaller& phone = phones[static_cast<std::size_t>(taken / kBatch % kPersons)];
    v1::OfferRequest request;
    for (int i = 0; i < kBatch; ++i) {
      const auto id = test::idOf(1000000 + static_cast<std::uint64_t>(taken + i));
      *request.add_records() =
          makeEnvelope(v1::RECORD_KIND_PRACTICE, id, 1, toBytes(test::samplePractice(id, phone.person_id)));
    }
    const auto reply = clinic.hub().phones().offer(phone, request);
    ASSERT_TRUE(reply.ok()) << reply.status();
    for (const auto& outcome : reply->outcomes()) ASSERT_EQ(outcome.outcome(), v1::OUTCOME_KEPT);
  }
  const std::int64_t growth = resident() - before;
  RecordProperty("growth_kib", static_cast<int>(growth / 1024));
  EXPECT_LT(growth, kMostGrowth);
}

}  // namespace
}  // namespace newel
