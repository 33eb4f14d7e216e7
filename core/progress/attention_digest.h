// The facts of the attention list in two steps: what the whole record of a person comes to, made once
// whenever the record changes, and what that means at one moment, made for thousands of persons at a time.
// The promise: for any later moment t, factsAt(digestOf(record), ..., t) is what the record says at t,
// although days have passed, occasions went by and stops ended. Outside [first_day, last_day] of the digest
// nothing is promised; whoever keeps it makes it anew before that (digestLasts()). Not here: where a digest
// is kept (sync/hub), and what is urgent (attention.h).
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/progress/attention.h"
#include "core/records/attention.pb.h"
#include "core/records/message.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

// Goes up whenever digestOf() makes something else of the same record: kept digests of another number are
// old.
inline constexpr int kDigestVersion = 2;

// All of one person. What is referred to outlives it.
struct WholeRecord {
  std::string zone;                              // the person's; an unknown one is read as UTC
  const std::vector<v1::Programme>& programmes;  // by number
  const std::vector<v1::HoldOrder>& holds;       // by number, lifts included
  const std::vector<v1::Message>& messages;      // as they came
  const std::vector<v1::Receipt>& receipts;      // any order
  const std::vector<v1::Practice>& practices;    // each id once with its last revision, any order
  const std::set<std::string>& unread_ids;       // messages of the person that nobody opened at the desk
  std::vector<ToldSign> skin_told_elsewhere{};   // outside practices
  std::vector<ToldSign> falls_told_elsewhere{};
  std::vector<MeasureDue> measures_wanted{};  // see told_beside.h
};

// kInvalidArgument: a programme or practice in it cannot be read as adherenceOf() wants them.
absl::StatusOr<v1::AttentionDigest> digestOf(const WholeRecord& record, const RuleBook& rules,
                                             absl::Time now);

// Still good at `now` and for a week after it.
bool digestLasts(const v1::AttentionDigest& digest, absl::Time now);

// What changes without the record.
struct ContactFacts {
  std::string person_id;
  std::optional<absl::Time> last_contact;  // of a phone that is not revoked
  bool paired = false;
};
AttentionFacts factsAt(const v1::AttentionDigest& digest, const ContactFacts& contact, absl::Time now);

// One share a week, oldest first, the last one this week's; nullopt: no data, or nothing was due.
std::vector<std::optional<double>> weekSharesAt(const v1::AttentionDigest& digest,
                                                const ContactFacts& contact, absl::Time now, int weeks);

// When the clinic last wrote, signed or lifted; see core/safety/practice_history.h.
std::optional<absl::Time> clinicSpokeAt(const std::vector<v1::Programme>& programmes,
                                        const std::vector<v1::HoldOrder>& holds,
                                        const std::vector<v1::Message>& messages);

}  // namespace newel
