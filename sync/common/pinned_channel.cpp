#include "sync/common/pinned_channel.h"

#include <grpc/support/time.h>
#include <grpcpp/create_channel.h>
#include <grpcpp/security/credentials.h>
#include <grpcpp/support/channel_arguments.h>

#include <algorithm>
#include <cctype>

#include "sync/common/certificate.h"
#include "sync/common/grpc_status.h"
#include "sync/common/limits.h"

namespace newel {
namespace {

constexpr char kCertificateMark[] = "newel/certificate";
// Dead connections (a phone that left the Wi-Fi) are found within half a minute. Ours, no source; servers
// refuse pings more often than theirs allow, see sync/hub/hub_server.cpp.
constexpr int kKeepaliveMs = 20000;
constexpr int kKeepaliveTimeoutMs = 10000;
constexpr int kLongestReconnectMs = 5000;
constexpr absl::Duration kPiece = absl::Milliseconds(200);

}  // namespace

absl::Status certificateProblem(const std::string& where) {
  absl::Status status = absl::UnauthenticatedError("certificate: another hub answers at " + where);
  status.SetPayload(kCertificateMark, absl::Cord("pin"));
  return status;
}

std::shared_ptr<grpc::Channel> channelTo(const std::string& address, const std::string& certificate_pem) {
  grpc::SslCredentialsOptions options;
  options.pem_root_certs = certificate_pem;
  grpc::ChannelArguments arguments;
  // Every hub's certificate names localhost; which hub it is, the pin says.
  arguments.SetSslTargetNameOverride("localhost");
  arguments.SetInt(GRPC_ARG_KEEPALIVE_TIME_MS, kKeepaliveMs);
  arguments.SetInt(GRPC_ARG_KEEPALIVE_TIMEOUT_MS, kKeepaliveTimeoutMs);
  arguments.SetInt(GRPC_ARG_KEEPALIVE_PERMIT_WITHOUT_CALLS, 0);
  arguments.SetInt(GRPC_ARG_HTTP2_MAX_PINGS_WITHOUT_DATA, 0);
  // When to try again is decided in one place (backOff), not by the library's two minutes.
  arguments.SetInt(GRPC_ARG_INITIAL_RECONNECT_BACKOFF_MS, 100);
  arguments.SetInt(GRPC_ARG_MIN_RECONNECT_BACKOFF_MS, kLongestReconnectMs);
  arguments.SetInt(GRPC_ARG_MAX_RECONNECT_BACKOFF_MS, kLongestReconnectMs);
  arguments.SetInt(GRPC_ARG_USE_LOCAL_SUBCHANNEL_POOL, 1);
  arguments.SetMaxReceiveMessageSize(static_cast<int>(kMostMessageBytes));
  return grpc::CreateCustomChannel(address, grpc::SslCredentials(options), arguments);
}

bool awaitConnection(grpc::Channel& channel, absl::Duration most, const std::function<bool()>& stopped) {
  if (channel.GetState(true) == GRPC_CHANNEL_TRANSIENT_FAILURE) {
    grpc::experimental::ChannelResetConnectionBackoff(&channel);
  }
  bool tried = false;
  for (absl::Duration waited; waited < most; waited += kPiece) {
    const grpc_connectivity_state state = channel.GetState(true);
    if (state == GRPC_CHANNEL_READY) return true;
    if (stopped() || (tried && state == GRPC_CHANNEL_TRANSIENT_FAILURE)) return false;
    tried = tried || state == GRPC_CHANNEL_CONNECTING;
    channel.WaitForStateChange(state, gpr_time_from_millis(absl::ToInt64Milliseconds(kPiece), GPR_TIMESPAN));
  }
  return channel.GetState(false) == GRPC_CHANNEL_READY;
}

absl::StatusOr<PinnedChannel> connectPinned(const std::string& address, const std::vector<std::string>& pins,
                                            absl::Duration timeout) {
  auto pem = fetchCertificate(address, timeout);
  if (!pem.ok()) return pem.status();
  auto found = fingerprintOf(*pem);
  if (!found.ok()) return found.status();
  if (!pins.empty() && std::find(pins.begin(), pins.end(), *found) == pins.end())
    return certificateProblem(address);
  return PinnedChannel{channelTo(address, *pem), *pem, *found};
}

bool isCertificateProblem(const absl::Status& status) {
  return status.GetPayload(kCertificateMark).has_value();
}

absl::Status fromCall(const grpc::Status& status) {
  // gRPC has no code for it: OpenSSL's words are all there is.
  if (status.error_code() == grpc::StatusCode::UNAVAILABLE) {
    std::string words = status.error_message();
    for (char& c : words) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    if (words.find("certificate verify failed") != std::string::npos ||
        words.find("certificate_verify_failed") != std::string::npos) {
      return certificateProblem("the clinic's address");
    }
  }
  return fromGrpc(status);
}

void setDeadline(grpc::ClientContext& context, absl::Duration length) {
  // A length, not an instant: no clock of ours is read, and setting the date does not move it.
  context.set_deadline(gpr_time_from_millis(absl::ToInt64Milliseconds(length), GPR_TIMESPAN));
}

}  // namespace newel
