// What the phone's service does, without gRPC around it.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>

#include "sync/hub/intake.h"
#include "sync/hub/pairings.h"

namespace newel {

// Of an Offer or a Listen.
template <typename Request>
PhoneSays saysOf(const Request& request) {
  return {request.app_version(), request.text_percent()};
}

// Thread-safe.
class HomeCalls {
 public:
  HomeCalls(const HubContext* hub, Pairings* pairings) : m_hub(hub), m_pairings(pairings), m_intake(hub) {}

  absl::StatusOr<v1::PairReply> pair(const v1::PairRequest& request, const std::string& peer) {
    return m_pairings->pair(request, peer);
  }
  // Every call but pair() begins here. kUnauthenticated: no device has this token. kPermissionDenied: its
  // access was ended, or the clinic has erased the person. Notes the contact.
  absl::StatusOr<PhoneCaller> authenticate(const std::string& token, const PhoneSays& says);
  // As authenticate(), but leaves the contact to offer(), which notes it in the transaction of the records:
  // one wait for the disk, not two.
  absl::StatusOr<PhoneCaller> recognise(const std::string& token, const PhoneSays& says);

  absl::StatusOr<v1::OfferReply> offer(const PhoneCaller& caller, const v1::OfferRequest& request) {
    return m_intake.offer(caller, request);
  }
  // kInvalidArgument: limit.
  absl::StatusOr<v1::FetchReply> fetch(const PhoneCaller& caller, const v1::FetchRequest& request);

  // Puts the stream on the board, then sends it every hold that stands and a nudge to fetch, so that nothing
  // falls between. Returns the number for NudgeBoard::leave().
  absl::StatusOr<int> listen(const PhoneCaller& caller, const std::shared_ptr<PhoneStream>& stream);
  // Another hub process gave it: to the open streams of its person.
  void passOnHold(const std::string& order_id);
  // For streams that are open already.
  bool deviceIsGood(const std::string& device_id);

 private:
  const HubContext* m_hub;
  Pairings* m_pairings;
  Intake m_intake;
};

}  // namespace newel
