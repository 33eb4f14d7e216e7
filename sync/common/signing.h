// The clinic's signature under programmes and hold orders: Ed25519 (RFC 8032, libsodium) over a domain string
// and the exact bytes. Not here: who may sign (sync/hub), which number may follow which (sync/home,
// sync/hub).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/programme.pb.h"
#include "core/records/random.h"

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

}  // namespace newel
