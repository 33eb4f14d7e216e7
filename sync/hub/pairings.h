// Invitations: one-time codes by which a phone becomes one person's. Typed: 8 characters, 40 bits, 5 tries;
// in the QR: 26 characters, 130 bits, which nobody guesses. Ten minutes, once, hashed.
#pragma once

#include <absl/status/statusor.h>

#include <mutex>
#include <string>

#include "sync/hub/hub_context.h"
#include "sync/hub/throttle.h"
#include "sync/protocol/desk_service.pb.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

// Source: standards in DEVELOPERS.md (OWASP ASVS 5.0 6.5, NIST SP 800-63B out-of-band secrets).
inline constexpr absl::Duration kInvitationLife = absl::Minutes(10);
inline constexpr int kInvitationTries = 5;

// Thread-safe.
class Pairings {
 public:
  explicit Pairings(const HubContext* hub);

  // Where phones find this hub; known once it is listening.
  void setPhoneAddress(const std::string& host, int port);

  // Replaces an earlier invitation of the person. kNotFound: no such person.
  absl::StatusOr<v1::CreatePairingReply> invite(const DeskCaller& caller, const std::string& person_id);

  // Spends a code. kNotFound: wrong, spent or expired, all alike. kResourceExhausted: too many wrong typed
  // codes from `peer` (an address without its port). kInvalidArgument names the field.
  absl::StatusOr<v1::PairReply> pair(const v1::PairRequest& request, const std::string& peer);

 private:
  absl::StatusOr<InvitationRow> byTypedCode(const std::string& code, const std::string& peer);
  absl::StatusOr<InvitationRow> byQrCode(const std::string& code);
  absl::StatusOr<v1::PairReply> admit(const InvitationRow& invitation, const v1::PairRequest& request);
  absl::Status refuse();

  const HubContext* m_hub;
  Throttle m_throttle;
  std::mutex m_mutex;
  std::string m_host;
  int m_port = 0;
};

}  // namespace newel
