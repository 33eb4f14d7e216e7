// Records from phones: each is checked, compared with what is there, and on the disk before it is
// acknowledged. The same record twice takes effect once. What needs no store is done before the write begins
// (record_look.h).
#pragma once

#include <absl/status/statusor.h>

#include <vector>

#include "sync/hub/hub_context.h"
#include "sync/hub/practice_batch.h"
#include "sync/hub/record_look.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

// Thread-safe.
class Intake {
 public:
  explicit Intake(const HubContext* hub) : m_hub(hub) {}

  // One outcome for each record, in order. kInvalidArgument for a call with more than 100 records or 3 MiB;
  // nothing is kept then.
  absl::StatusOr<v1::OfferReply> offer(const PhoneCaller& caller, const v1::OfferRequest& request);

 private:
  // Inside a write transaction. Refusals are outcomes, never errors.
  v1::OutcomeOf judged(HubTransaction& transaction, const PhoneCaller& caller, const LookedAt& looked,
                       const absl::StatusOr<v1::Outcome>& outcome);
  absl::StatusOr<v1::Outcome> takeOne(HubTransaction& transaction, const PhoneCaller& caller,
                                      const LookedAt& looked, std::size_t place, PracticeBatch& batch);
  absl::StatusOr<v1::Outcome> takePractice(HubTransaction& transaction, const PhoneCaller& caller,
                                           const LookedAt& looked, std::size_t place, PracticeBatch& batch);
  absl::StatusOr<v1::Outcome> takeReceipt(HubTransaction& transaction, const ReceiptRow& row);
  absl::StatusOr<v1::Outcome> takeMessage(HubTransaction& transaction, const LookedAt& looked);
  absl::StatusOr<v1::Outcome> takeWearBlock(HubTransaction& transaction, const PhoneCaller& caller,
                                            const v1::Envelope& envelope);
  absl::Status checkReference(HubTransaction& transaction, const ReceiptRow& receipt);
  void takeEach(HubTransaction& transaction, const PhoneCaller& caller, const std::vector<LookedAt>& records,
                std::vector<v1::OutcomeOf>& outcomes);
  absl::Status takeAll(const PhoneCaller& caller, const std::vector<LookedAt>& records,
                       std::vector<v1::OutcomeOf>& outcomes);
  std::vector<v1::OutcomeOf> outcomesOf(const PhoneCaller& caller, const std::vector<LookedAt>& records);

  const HubContext* m_hub;
};

}  // namespace newel
