#include "sync/common/pairing_ticket.h"

#include <cctype>

#include "sync/common/text_codes.h"

namespace newel {
namespace {

constexpr char kPrefix[] = "newel:1:";
constexpr std::size_t kTypedLength = 8;
constexpr std::size_t kHashBytes = 32;

absl::Status malformed(const std::string& why) { return absl::InvalidArgumentError("ticket: " + why); }

// Cuts the part after the last colon off `text`.
std::string takeLast(std::string& text) {
  const std::size_t colon = text.rfind(':');
  if (colon == std::string::npos) return "";
  std::string last = text.substr(colon + 1);
  text.resize(colon);
  return last;
}

bool isHost(const std::string& host) {
  if (host.empty() || host.size() > 253) return false;
  for (const char c : host) {
    const bool good = (std::isalnum(static_cast<unsigned char>(c)) != 0) || c == '.' || c == '-' ||
                      c == ':' || c == '[' || c == ']';
    if (!good) return false;
  }
  return true;
}

absl::StatusOr<int> parsePort(const std::string& text) {
  if (text.empty() || text.size() > 5) return malformed("port");
  int port = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return malformed("port");
    port = port * 10 + (c - '0');
  }
  if (port < 1 || port > 65535) return malformed("port");
  return port;
}

bool isCode(const std::string& code) {
  if (code.empty() || code.size() > 64) return false;
  for (const char c : code) {
    if (!isCrockford(c)) return false;
  }
  return true;
}

absl::StatusOr<std::string> parsePin(const std::string& text) {
  auto pin = fromBase64Url(text);
  if (!pin.ok() || pin->size() != kHashBytes) return malformed("fingerprint");
  return pin;
}

}  // namespace

absl::StatusOr<PairingTicket> parseTicket(const std::string& qr_text) {
  const std::string prefix = kPrefix;
  if (qr_text.size() > 600 || qr_text.compare(0, prefix.size(), prefix) != 0) {
    return malformed("this is no pairing code of Newel");
  }
  std::string rest = qr_text.substr(prefix.size());
  PairingTicket ticket;
  ticket.code = takeLast(rest);
  const std::string hash = takeLast(rest);
  auto port = parsePort(takeLast(rest));
  if (!port.ok()) return port.status();
  ticket.port = *port;
  ticket.host = rest;
  if (!isHost(ticket.host)) return malformed("host");
  if (!isCode(ticket.code)) return malformed("code");
  const std::size_t dot = hash.find('.');
  auto fingerprint = parsePin(hash.substr(0, dot));
  if (!fingerprint.ok()) return fingerprint.status();
  ticket.certificate_sha256 = *fingerprint;
  if (dot == std::string::npos) return ticket;
  auto backup = parsePin(hash.substr(dot + 1));
  if (!backup.ok()) return backup.status();
  ticket.backup_sha256 = *backup;
  return ticket;
}

std::string formatTicket(const PairingTicket& ticket) {
  const std::string backup = ticket.backup_sha256.empty() ? "" : "." + toBase64Url(ticket.backup_sha256);
  return kPrefix + ticket.host + ":" + std::to_string(ticket.port) + ":" +
         toBase64Url(ticket.certificate_sha256) + backup + ":" + ticket.code;
}

std::vector<std::string> pinsOf(const PairingTicket& ticket) {
  std::vector<std::string> pins;
  if (!ticket.certificate_sha256.empty()) pins.push_back(ticket.certificate_sha256);
  if (!ticket.backup_sha256.empty()) pins.push_back(ticket.backup_sha256);
  return pins;
}

absl::StatusOr<std::string> tidyTypedCode(const std::string& typed) {
  std::string code;
  for (char c : typed) {
    if (c == '-' || c == ' ' || c == '\t') continue;
    c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    if (c == 'O') c = '0';
    if (c == 'I' || c == 'L') c = '1';
    if (!isCrockford(c)) return absl::InvalidArgumentError("code: a character that is in no code");
    code += c;
  }
  if (code.size() != kTypedLength) return absl::InvalidArgumentError("code: it has 8 characters");
  return code;
}

absl::StatusOr<PairingTicket> typedTicket(const std::string& address, const std::string& typed_code) {
  std::string host = address;
  while (!host.empty() && host.front() == ' ') host.erase(host.begin());
  while (!host.empty() && host.back() == ' ') host.pop_back();
  auto code = tidyTypedCode(typed_code);
  if (!code.ok()) return code.status();
  auto port = parsePort(takeLast(host));
  if (!port.ok() || !isHost(host)) return absl::InvalidArgumentError("address: it reads name:number");
  PairingTicket ticket;
  ticket.host = host;
  ticket.port = *port;
  ticket.code = *code;
  return ticket;
}

std::string addressOf(const PairingTicket& ticket) {
  const bool bare_ipv6 = ticket.host.find(':') != std::string::npos && ticket.host.front() != '[';
  return (bare_ipv6 ? "[" + ticket.host + "]" : ticket.host) + ":" + std::to_string(ticket.port);
}

std::string shortFingerprint(const std::string& certificate_sha256) {
  std::string hex = toHex(certificate_sha256.substr(0, 8));
  std::string text;
  for (std::size_t i = 0; i < hex.size(); ++i) {
    if (i > 0 && i % 4 == 0) text += ' ';
    text += static_cast<char>(std::toupper(static_cast<unsigned char>(hex[i])));
  }
  return text;
}

absl::StatusOr<std::string> parseFingerprint(const std::string& text) {
  std::string bare;
  for (const char c : text) {
    if (c != ' ' && c != ':' && c != '\n' && c != '\r') bare += c;
  }
  auto bytes = bare.size() == 2 * kHashBytes ? fromHex(bare) : fromBase64Url(bare);
  if (!bytes.ok() || bytes->size() != kHashBytes) {
    return absl::InvalidArgumentError("fingerprint: 64 hex digits are expected");
  }
  return *bytes;
}

}  // namespace newel
