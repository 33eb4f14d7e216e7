// How the phone reaches its hub, as an interface: the engine does not know what is behind it, so tests and
// the simulation put a lossy one there. The real one is in grpc_hub_link.h.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>
#include <vector>

#include "sync/common/pairing_ticket.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

// What is kept after pairing in order to come back.
struct HubAddress {
  std::string address;             // host:port
  std::string certificate_pem;     // the pinned certificate
  std::string certificate_sha256;  // its fingerprint, 32 bytes
  std::string token;
  // Every certificate that the clinic said its hubs may show, the present one among them.
  std::vector<std::string> pins{};
};

class NudgeSink {
 public:
  virtual ~NudgeSink() = default;
  // On the link's thread, one call at a time.
  virtual void nudge(const v1::Nudge& nudge) = 0;
  virtual void listenEnded(const absl::Status& why) = 0;
};

class HubLink {
 public:
  virtual ~HubLink() = default;  // ends the listening; no sink is called any more when it returns
  // Block until answered or their deadline. Errors are the hub's or kUnavailable, kDeadlineExceeded,
  // kCancelled; kUnauthenticated with isCertificateProblem() when another hub answers.
  virtual absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) = 0;
  virtual absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) = 0;
  virtual absl::StatusOr<v1::MediaPart> fetchMedia(const v1::FetchMediaRequest& request) = 0;
  // Opens the stream (ending an earlier one) and returns at once. `sink` outlives this link.
  virtual void listen(const v1::ListenRequest& request, NudgeSink* sink) = 0;
  // Ends what is under way, from another thread; later calls fail with kCancelled.
  virtual void cancel() = 0;
};

struct PairedHub {
  v1::PairReply reply;
  HubAddress hub;
};

class HubNetwork {
 public:
  virtual ~HubNetwork() = default;
  // Spends the ticket's code. Blocks up to 20 s. Errors as HubLink's, and the hub's kNotFound,
  // kResourceExhausted, kInvalidArgument.
  virtual absl::StatusOr<PairedHub> pair(const PairingTicket& ticket, const v1::PairRequest& request) = 0;
  // Does not block and does not fail: the first call does.
  virtual std::unique_ptr<HubLink> connect(const HubAddress& hub) = 0;
  // After isCertificateProblem(): looks whether the hub shows another of `hub.pins` now, and returns `hub`
  // with it. Blocks up to 10 s. Another one is kUnauthenticated, nobody there kUnavailable.
  virtual absl::StatusOr<HubAddress> findAgain(const HubAddress& hub) = 0;
};

}  // namespace newel
