// A gRPC channel to the one hub whose certificate has the pinned fingerprint, and to no other.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>
#include <grpcpp/channel.h>
#include <grpcpp/client_context.h>

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace newel {

struct PinnedChannel {
  std::shared_ptr<grpc::Channel> channel;
  std::string certificate_pem;     // keep it: the next connection needs no look beforehand
  std::string certificate_sha256;  // 32 bytes
};

// Looks at the certificate, compares it with `pins` (fingerprints of 32 bytes, any of them will do) and
// builds a channel that accepts exactly it. With no pins (typed by hand) the certificate found is taken and
// its fingerprint returned to be pinned. kUnavailable nobody answers; kUnauthenticated (isCertificateProblem)
// it is another one. Blocks up to `timeout`.
absl::StatusOr<PinnedChannel> connectPinned(const std::string& address, const std::vector<std::string>& pins,
                                            absl::Duration timeout);

// The same from a certificate that was pinned before; connects at the first call, does not block.
std::shared_ptr<grpc::Channel> channelTo(const std::string& address, const std::string& certificate_pem);

// True when a status says that the hub's certificate is not the pinned one (rather than that our token is
// not good).
bool isCertificateProblem(const absl::Status& status);
// Such a status; `where`: who answers, for its words.
absl::Status certificateProblem(const std::string& where);

// A call's status in our codes; a refused certificate is told apart from a network that is not there.
absl::Status fromCall(const grpc::Status& status);

// `context` gives up after `length`.
void setDeadline(grpc::ClientContext& context, absl::Duration length);

// Brings an idle or failed channel to its hub, or finds that it cannot be reached, within about `most`. To be
// called before a call: gRPC 1.51 reads a handshake only while some call waits, and on a failed channel each
// call fails at once, so that after an outage nothing but a timer every five seconds would ever move it, too
// slow for a handshake. True when connected. `stopped` is asked several times a second.
bool awaitConnection(grpc::Channel& channel, absl::Duration most, const std::function<bool()>& stopped);

}  // namespace newel
