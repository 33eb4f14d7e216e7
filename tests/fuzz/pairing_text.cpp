// What a person types or a camera reads while pairing: ticket, code, address, fingerprint.
#include "sync/common/pairing_ticket.h"
#include "sync/common/text_codes.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel;
  const std::string text(reinterpret_cast<const char*>(data), size);
  const auto ticket = parseTicket(text);
  if (ticket.ok()) {
    const auto again = parseTicket(formatTicket(*ticket));
    fuzz::require(again.ok(), "a good ticket is read again");
    fuzz::require(again->host == ticket->host && again->port == ticket->port && again->code == ticket->code &&
                      again->certificate_sha256 == ticket->certificate_sha256 &&
                      again->backup_sha256 == ticket->backup_sha256,
                  "and says the same");
  }
  const auto code = tidyTypedCode(text);
  if (code.ok()) {
    fuzz::require(code->size() == 8, "a typed code has eight characters");
    fuzz::require(tidyTypedCode(*code).value_or("") == *code, "tidying twice changes nothing");
  }
  const std::size_t line = text.find('\n');
  if (line != std::string::npos) (void)typedTicket(text.substr(0, line), text.substr(line + 1));
  const auto pin = parseFingerprint(text);
  if (pin.ok()) fuzz::require(pin->size() == 32, "a fingerprint has 32 bytes");
  const auto hex = fromHex(text);
  if (hex.ok()) fuzz::require(fromHex(toHex(*hex)).value_or("?") == *hex, "hex comes back");
  const auto base64 = fromBase64Url(text);
  if (base64.ok()) fuzz::require(toBase64Url(*base64) == text, "base64url has one text for each value");
  return 0;
}
