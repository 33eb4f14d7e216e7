#include "sync/common/text_codes.h"

#include <gtest/gtest.h>

#include "sync/common/content_hash.h"
#include "sync/common/real_random.h"

namespace newel {
namespace {

// RFC 4648 section 10, with the URL alphabet and no padding.
TEST(TextCodes, base64UrlGivesTheRfcsVectors) {
  EXPECT_EQ(toBase64Url(""), "");
  EXPECT_EQ(toBase64Url("f"), "Zg");
  EXPECT_EQ(toBase64Url("fo"), "Zm8");
  EXPECT_EQ(toBase64Url("foo"), "Zm9v");
  EXPECT_EQ(toBase64Url("foob"), "Zm9vYg");
  EXPECT_EQ(toBase64Url("fooba"), "Zm9vYmE");
  EXPECT_EQ(toBase64Url("foobar"), "Zm9vYmFy");
  EXPECT_EQ(toBase64Url("\xff\xfe\xfd"), "__79");
}

TEST(TextCodes, base64UrlReadsWhatItWrote) {
  RealRandom random;
  for (std::size_t size = 0; size < 70; ++size) {
    const std::string bytes = randomBytes(random, size);
    EXPECT_EQ(*fromBase64Url(toBase64Url(bytes)), bytes);
    EXPECT_EQ(*fromHex(toHex(bytes)), bytes);
  }
}

TEST(TextCodes, refusesOtherTexts) {
  EXPECT_FALSE(fromBase64Url("Zg==").ok());
  EXPECT_FALSE(fromBase64Url("Z").ok());
  EXPECT_FALSE(fromBase64Url("Zh").ok()) << "left-over bits would give one value two texts";
  EXPECT_FALSE(fromBase64Url("Zm9v+").ok());
  EXPECT_FALSE(fromHex("abc").ok());
  EXPECT_FALSE(fromHex("zz").ok());
}

// Crockford's alphabet leaves out I, L, O and U.
TEST(TextCodes, crockfordHasNoLettersThatAreMistaken) {
  RealRandom random;
  const std::string text = randomCrockford(random, 5000);
  EXPECT_EQ(text.size(), 5000U);
  EXPECT_EQ(text.find_first_of("ILOUilou"), std::string::npos);
  for (const char c : text) EXPECT_TRUE(isCrockford(c));
  EXPECT_FALSE(isCrockford('U'));
  EXPECT_FALSE(isCrockford('\0'));
}

// FIPS 180-4's example (NIST's published "abc" vector).
TEST(ContentHash, sha256GivesNistsExample) {
  EXPECT_EQ(toHex(sha256("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(ContentHash, envelopeCarriesTheHashOfItsContent) {
  const auto envelope = makeEnvelope(v1::RECORD_KIND_MESSAGE, "id", 3, "words");
  EXPECT_EQ(envelope.sha256(), sha256("words"));
  EXPECT_EQ(envelope.revision(), 3U);
}

// RFC 4648 section 10, without its padding.
TEST(TextCodes, base32GivesTheRfcsVectors) {
  EXPECT_EQ(toBase32(""), "");
  EXPECT_EQ(toBase32("f"), "MY");
  EXPECT_EQ(toBase32("fo"), "MZXQ");
  EXPECT_EQ(toBase32("foo"), "MZXW6");
  EXPECT_EQ(toBase32("foob"), "MZXW6YQ");
  EXPECT_EQ(toBase32("fooba"), "MZXW6YTB");
  EXPECT_EQ(toBase32("foobar"), "MZXW6YTBOI");
}

}  // namespace
}  // namespace newel
