// What the phone needs to find and trust its clinic's hub, as the QR and the typed code carry it.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

namespace newel {

// QR text: "newel:1:<host>:<port>:<pin>.<backup pin>:<code>", all ASCII. A pin is the base64url SHA-256 of a
// certificate: of the one the hub shows, and of the one it will show next. ".<backup pin>" may be missing.
struct PairingTicket {
  std::string host;
  int port = 0;
  std::string certificate_sha256;  // 32 bytes; empty when typed by hand: then trust on first use, and the
                                   // person compares the short fingerprint shown at the desk
  std::string code;                // one-time secret as the hub gave it
  std::string backup_sha256{};     // 32 bytes or empty
};

// Every certificate that the ticket trusts; empty when it was typed.
std::vector<std::string> pinsOf(const PairingTicket& ticket);

// kInvalidArgument "ticket: <part>" for any text that formatTicket cannot have made.
absl::StatusOr<PairingTicket> parseTicket(const std::string& qr_text);
std::string formatTicket(const PairingTicket& ticket);
// "abcd-ef1h" typed by a tired person: upper case, hyphens and spaces out, O to 0, I and L to 1 (Crockford).
// kInvalidArgument when it is not 8 characters of the alphabet.
absl::StatusOr<std::string> tidyTypedCode(const std::string& typed);

// The ticket of a person who types "hub.clinic.example:7443" and "abcd-ef1h" instead of showing the QR to the
// camera; it has no fingerprint. kInvalidArgument names "address" or "code".
absl::StatusOr<PairingTicket> typedTicket(const std::string& address, const std::string& typed_code);

// "host:port" for a connection; a bare IPv6 host gets its brackets.
std::string addressOf(const PairingTicket& ticket);

// The first 64 bits of a fingerprint for two people to compare by eye: "AB12 CD34 EF56 0718".
std::string shortFingerprint(const std::string& certificate_sha256);

// 32 bytes from 64 hex digits (spaces and colons allowed) or base64url, as `newel-hub fingerprint` prints
// them. kInvalidArgument otherwise.
absl::StatusOr<std::string> parseFingerprint(const std::string& text);

}  // namespace newel
