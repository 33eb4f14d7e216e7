// The clinic's signature under programmes, hold orders, pins and heads of the audit trail: Ed25519 (RFC 8032,
// libsodium) over a domain string and the exact bytes. Not here: who may sign (sync/hub), which number may
// follow which (sync/home, sync/hub).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/programme.pb.h"
#include "core/records/random.h"
#include "sync/protocol/wire.pb.h"

namespace newel {

struct ClinicKey {
  std::string id;          // the first 16 hex digits of the public key's SHA-256
  std::string public_key;  // 32 bytes
  std::string secret_key;  // 64 bytes; empty where only verifying is meant
};

ClinicKey makeClinicKey(Random& random);
std::string keyIdOf(const std::string& public_key);

// `content` is a serialised Programme or HoldOrder and is passed on as it is.
v1::SignedProgramme signProgramme(const std::string& content, const ClinicKey& key);
v1::SignedHoldOrder signHoldOrder(const std::string& content, const ClinicKey& key);

// The record, when the signature is that key's. kUnauthenticated: another key, no signature, or bytes that
// were changed. kInvalidArgument: rightly signed but not to be read, or a check of core/records fails.
absl::StatusOr<v1::Programme> openProgramme(const v1::SignedProgramme& signed_programme,
                                            const std::string& public_key);
absl::StatusOr<v1::HoldOrder> openHoldOrder(const v1::SignedHoldOrder& signed_order,
                                            const std::string& public_key);

// `content` is a serialised HubPins. openPins() also wants 1 to kMostPins hashes of 32 bytes.
inline constexpr int kMostPins = 4;
v1::SignedHubPins signPins(const std::string& content, const ClinicKey& key);
absl::StatusOr<v1::HubPins> openPins(const v1::SignedHubPins& pins, const std::string& public_key);

// The head of an audit trail as text (sync/hub/audit_head.h): its signature, 64 bytes, and whether one fits.
std::string signAuditHead(const std::string& text, const ClinicKey& key);
absl::Status verifyAuditHead(const std::string& text, const std::string& signature,
                             const std::string& public_key);

}  // namespace newel
