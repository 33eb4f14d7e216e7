// What the phone needs to find and trust its clinic's hub, as the QR and the typed code carry it.
#pragma once

#include <absl/status/statusor.h>

#include <string>

namespace newel {

// QR text: "newel:1:<host>:<port>:<base64url sha256 of the hub's certificate>:<code>", all ASCII.
struct PairingTicket {
  std::string host;
  int port = 0;
  std::string certificate_sha256;  // 32 bytes; empty when typed by hand: then trust on first use, and the
                                   // person compares the short fingerprint shown at the desk
  std::string code;                // one-time secret as the hub gave it
};

absl::StatusOr<PairingTicket> parseTicket(const std::string& qr_text);
std::string formatTicket(const PairingTicket& ticket);
// "abcd-ef1h" typed by a tired person: upper case, hyphens and spaces out, O to 0, I and L to 1 (Crockford).
// kInvalidArgument when it is not 8 characters of the alphabet.
absl::StatusOr<std::string> tidyTypedCode(const std::string& typed);

}  // namespace newel
