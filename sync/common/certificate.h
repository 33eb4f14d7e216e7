// The hub's certificate: made once at its first start, pinned by fingerprint at the phone and the desk.
// Nobody signs it for us: trust comes from the fingerprint that the pairing code carries.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <string>
#include <vector>

namespace newel {

struct Certificate {
  std::string certificate_pem;
  std::string key_pem;
};

// EC P-256, signed by itself, named localhost, 127.0.0.1, ::1 and `hosts`. Valid from 2000 with no end
// (99991231235959Z, RFC 5280 section 4.1.2.5): it is trusted by pin, and a phone with a wrong date must be
// able to reach its clinic. kInternal when OpenSSL fails.
absl::StatusOr<Certificate> makeCertificate(const std::vector<std::string>& hosts);

// SHA-256 over the DER form of the first certificate in `pem`, 32 bytes. kInvalidArgument when there is none.
absl::StatusOr<std::string> fingerprintOf(const std::string& certificate_pem);

// The certificate that answers at `address` ("host:port"), with nothing about it believed yet.
// kUnavailable when nobody answers with TLS within about `timeout`, at once when the address refuses. Blocks.
absl::StatusOr<std::string> fetchCertificate(const std::string& address, absl::Duration timeout);

}  // namespace newel
