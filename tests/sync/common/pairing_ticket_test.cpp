#include "sync/common/pairing_ticket.h"

#include <gtest/gtest.h>

#include "sync/common/text_codes.h"

namespace newel {
namespace {

PairingTicket sample(const std::string& host = "hub.clinic.example") {
  return {host, 7443, std::string(32, '\x5a'), "0123456789ABCDEFGHJKMNPQRS"};
}

TEST(PairingTicket, readsWhatItWrote) {
  for (const char* host : {"hub.clinic.example", "127.0.0.1", "fe80::1", "[::1]"}) {
    const auto ticket = parseTicket(formatTicket(sample(host)));
    ASSERT_TRUE(ticket.ok()) << ticket.status();
    EXPECT_EQ(ticket->host, host);
    EXPECT_EQ(ticket->port, 7443);
    EXPECT_EQ(ticket->certificate_sha256, std::string(32, '\x5a'));
    EXPECT_EQ(ticket->code, sample().code);
  }
}

TEST(PairingTicket, carriesTheBackupPinWhenThereIsOne) {
  PairingTicket both = sample();
  both.backup_sha256 = std::string(32, '\xa5');
  const std::string text = formatTicket(both);
  const auto ticket = parseTicket(text);
  ASSERT_TRUE(ticket.ok()) << ticket.status();
  EXPECT_EQ(ticket->certificate_sha256, both.certificate_sha256);
  EXPECT_EQ(ticket->backup_sha256, both.backup_sha256);
  EXPECT_EQ(pinsOf(*ticket).size(), 2U);
  EXPECT_EQ(pinsOf(sample()).size(), 1U);
  const std::size_t dot = text.find('.', text.find(":7443:"));
  EXPECT_FALSE(parseTicket(text.substr(0, dot + 1) + text.substr(text.rfind(':'))).ok()) << "an empty backup";
  EXPECT_FALSE(parseTicket(text.substr(0, dot) + ".AAAA" + text.substr(dot)).ok()) << "three pins";
}

TEST(PairingTicket, everyCutOfItIsRefused) {
  const std::string whole = formatTicket(sample());
  for (std::size_t size = 0; size < whole.size(); ++size) {
    const auto ticket = parseTicket(whole.substr(0, size));
    // A shorter code is a code still; the hub refuses it. All else is not to be read.
    if (ticket.ok()) {
      EXPECT_LT(ticket->code.size(), sample().code.size());
      EXPECT_EQ(ticket->certificate_sha256.size(), 32U);
    }
  }
}

TEST(PairingTicket, refusesWhatItCannotHaveMade) {
  const std::string pin = toBase64Url(std::string(32, '\x5a'));
  EXPECT_FALSE(parseTicket("").ok());
  EXPECT_FALSE(parseTicket("https://example.org/").ok());
  EXPECT_FALSE(parseTicket("newel:2:h:1:" + pin + ":ABC").ok()) << "another version";
  EXPECT_FALSE(parseTicket("newel:1:h:0:" + pin + ":ABC").ok());
  EXPECT_FALSE(parseTicket("newel:1:h:65536:" + pin + ":ABC").ok());
  EXPECT_FALSE(parseTicket("newel:1:h:7x:" + pin + ":ABC").ok());
  EXPECT_FALSE(parseTicket("newel:1::7:" + pin + ":ABC").ok()) << "no host";
  EXPECT_FALSE(parseTicket("newel:1:a b:7:" + pin + ":ABC").ok());
  EXPECT_FALSE(parseTicket("newel:1:h:7:short:ABC").ok());
  EXPECT_FALSE(parseTicket("newel:1:h:7::ABC").ok()) << "a QR without a fingerprint trusts anybody";
  EXPECT_FALSE(parseTicket("newel:1:h:7:" + pin + ":").ok());
  EXPECT_FALSE(parseTicket("newel:1:h:7:" + pin + ":abc!").ok());
  EXPECT_FALSE(parseTicket("newel:1:" + std::string(700, 'h') + ":7:" + pin + ":ABC").ok());
}

TEST(PairingTicket, tiredFingersAreUnderstood) {
  EXPECT_EQ(*tidyTypedCode("abcd-ef1h"), "ABCDEF1H");
  EXPECT_EQ(*tidyTypedCode(" oil0 ooll "), "01100011");
  EXPECT_FALSE(tidyTypedCode("ABCDEF1").ok());
  EXPECT_FALSE(tidyTypedCode("ABCDEF1HH").ok());
  EXPECT_FALSE(tidyTypedCode("ABCDEFU1").ok()) << "U is in no code";
  EXPECT_FALSE(tidyTypedCode("ABCD_F12").ok());
}

TEST(PairingTicket, typedByHandHasNoFingerprint) {
  const auto ticket = typedTicket(" hub.clinic.example:7443 ", "abcd-ef1h");
  ASSERT_TRUE(ticket.ok()) << ticket.status();
  EXPECT_EQ(addressOf(*ticket), "hub.clinic.example:7443");
  EXPECT_EQ(ticket->code, "ABCDEF1H");
  EXPECT_TRUE(ticket->certificate_sha256.empty());
  EXPECT_FALSE(typedTicket("hub.clinic.example", "abcd-ef1h").ok()) << "no port";
  EXPECT_FALSE(typedTicket("hub.clinic.example:7443", "abcd").ok());
  EXPECT_EQ(addressOf(*typedTicket("fe80::1:7443", "abcdef1h")), "[fe80::1]:7443");
}

TEST(PairingTicket, fingerprintsAreReadInBothForms) {
  const std::string bytes(32, '\xa7');
  EXPECT_EQ(*parseFingerprint(toHex(bytes) + "\n"), bytes);
  EXPECT_EQ(*parseFingerprint(toBase64Url(bytes)), bytes);
  EXPECT_EQ(*parseFingerprint("A7:" + toHex(bytes.substr(1))), bytes);
  EXPECT_FALSE(parseFingerprint("").ok());
  EXPECT_FALSE(parseFingerprint("a7a7").ok());
  EXPECT_EQ(shortFingerprint(bytes), "A7A7 A7A7 A7A7 A7A7");
}

}  // namespace
}  // namespace newel
