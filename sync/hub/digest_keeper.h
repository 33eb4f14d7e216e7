// What the attention list needs of each person, made from the whole record and kept beside it, so that a desk
// with thousands of persons does not read thousands of records. A record that changes makes its digest due in
// the same transaction (HubStore); here it is made anew, behind the calls that changed it. Whoever reads one
// that is due, or missing, or old, makes it on the spot: no answer is ever older than the record. Not here:
// what a digest says (core/progress/attention_digest.h).
#pragma once

#include <absl/status/statusor.h>

#include <condition_variable>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

#include "core/safety/rule_book.h"
#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Inside a transaction: the digest of this person as of `now`. Its content is a v1::CaseRow with all that
// changes with the record alone; without its `digest` where the record cannot be read as a whole. kNotFound:
// nobody has the id.
absl::StatusOr<DigestRow> digestRowOf(HubTransaction& transaction, const RuleBook& rules,
                                      const std::string& person_id, absl::Time now);
// Made by this program, and good at `now` and for days after it.
bool lasts(const DigestAge& age, absl::Time now);

// Thread-safe.
class DigestKeeper {
 public:
  explicit DigestKeeper(const HubContext* hub) : m_hub(hub) {}

  // Makes up to `most` of those that are due, and returns how many were. A store that fails is tried again at
  // the next time. Looks once a day for those that will not last.
  absl::StatusOr<int> refresh(int most);

 private:
  void markOld(absl::Time now);

  const HubContext* m_hub;
  std::mutex m_mutex;
  std::optional<absl::CivilDay> m_marked;  // the day of the last look for old ones
};

// Keeps the digests of a hub that serves, on a thread of its own that is idle half of the time at least.
class DigestRounds {
 public:
  DigestRounds(DigestKeeper* keeper, const Clock* clock);  // which outlive this
  ~DigestRounds();
  DigestRounds(const DigestRounds&) = delete;
  DigestRounds& operator=(const DigestRounds&) = delete;

 private:
  void run();

  DigestKeeper* m_keeper;
  const Clock* m_clock;
  std::mutex m_mutex;
  std::condition_variable m_condition;
  bool m_stop = false;
  std::thread m_thread;  // last: begins when all else is there
};

}  // namespace newel
