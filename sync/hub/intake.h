// Records from phones: each is checked, compared with what is there, and on the disk before it is
// acknowledged. The same record twice takes effect once.
#pragma once

#include <absl/status/statusor.h>

#include <vector>

#include "sync/hub/hub_context.h"
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
  v1::OutcomeOf take(HubTransaction& transaction, const PhoneCaller& caller, const v1::Envelope& envelope);
  absl::StatusOr<v1::Outcome> takeByKind(HubTransaction& transaction, const PhoneCaller& caller,
                                         const v1::Envelope& envelope);
  absl::StatusOr<v1::Outcome> takePractice(HubTransaction& transaction, const PhoneCaller& caller,
                                           const v1::Envelope& envelope);
  absl::StatusOr<v1::Outcome> takeReceipt(HubTransaction& transaction, const PhoneCaller& caller,
                                          const v1::Envelope& envelope);
  absl::StatusOr<v1::Outcome> takeMessage(HubTransaction& transaction, const PhoneCaller& caller,
                                          const v1::Envelope& envelope);
  absl::Status checkReference(HubTransaction& transaction, const v1::Receipt& receipt);
  absl::Status takeAll(const PhoneCaller& caller, const std::vector<const v1::Envelope*>& records,
                       std::vector<v1::OutcomeOf>& outcomes);

  const HubContext* m_hub;
};

}  // namespace newel
