#include "sync/common/signing.h"

#include <gtest/gtest.h>
#include <sodium.h>

#include "core/records/record_text.h"
#include "sync/common/real_random.h"
#include "sync/common/text_codes.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

class Signing : public testing::Test {
 protected:
  RealRandom m_random;
  ClinicKey m_key = makeClinicKey(m_random);
  v1::Person m_person = test::transfemoralLeft();
  std::string m_content = toBytes(test::programmeOf(m_person, {test::entryOf("sit-to-stand", m_person)}));
  v1::HoldOrder hold() const {
    v1::HoldOrder order;
    order.set_id(test::idOf(5));
    order.set_number(1);
    order.set_person_id(m_person.id());
    order.set_clinic_id(test::idOf(6));
    order.set_signer_id(test::idOf(7));
    order.set_signer_name("Dr Sample (invented)");
    order.mutable_issued_at()->set_seconds(1);
    order.set_reason("Please stop and call us.");
    return order;
  }
};

TEST_F(Signing, itsOwnSignatureOpens) {
  const auto programme = openProgramme(signProgramme(m_content, m_key), m_key.public_key);
  ASSERT_TRUE(programme.ok()) << programme.status();
  EXPECT_EQ(programme->person_id(), m_person.id());
}

TEST_F(Signing, everyFlippedBitIsFound) {
  const auto good = signProgramme(m_content, m_key);
  for (std::size_t i = 0; i < m_content.size(); ++i) {
    auto bad = good;
    (*bad.mutable_content())[i] = static_cast<char>((*bad.mutable_content())[i] ^ 1);
    EXPECT_TRUE(absl::IsUnauthenticated(openProgramme(bad, m_key.public_key).status())) << "byte " << i;
  }
  for (std::size_t i = 0; i < good.signature().size(); ++i) {
    auto bad = good;
    (*bad.mutable_signature())[i] = static_cast<char>((*bad.mutable_signature())[i] ^ 0x20);
    EXPECT_TRUE(absl::IsUnauthenticated(openProgramme(bad, m_key.public_key).status())) << "byte " << i;
  }
}

TEST_F(Signing, anotherKeyIsRefusedEvenUnderOurName) {
  const ClinicKey other = makeClinicKey(m_random);
  auto forged = signProgramme(m_content, other);
  EXPECT_TRUE(absl::IsUnauthenticated(openProgramme(forged, m_key.public_key).status()));
  forged.set_key_id(m_key.id);
  EXPECT_TRUE(absl::IsUnauthenticated(openProgramme(forged, m_key.public_key).status()));
}

TEST_F(Signing, missingSignatureIsRefused) {
  v1::SignedProgramme bare;
  bare.set_content(m_content);
  bare.set_key_id(m_key.id);
  EXPECT_TRUE(absl::IsUnauthenticated(openProgramme(bare, m_key.public_key).status()));
  EXPECT_TRUE(absl::IsUnauthenticated(openProgramme(signProgramme(m_content, m_key), "").status()));
}

// A signature of one kind must not open the other: the domain strings of programme.proto.
TEST_F(Signing, aProgrammesSignatureIsNoHoldOrders) {
  const auto programme = signProgramme(m_content, m_key);
  v1::SignedHoldOrder crossed;
  crossed.set_content(programme.content());
  crossed.set_signature(programme.signature());
  crossed.set_key_id(programme.key_id());
  EXPECT_TRUE(absl::IsUnauthenticated(openHoldOrder(crossed, m_key.public_key).status()));
}

TEST_F(Signing, whatIsSignedIsStillChecked) {
  EXPECT_TRUE(
      absl::IsInvalidArgument(openProgramme(signProgramme("no record", m_key), m_key.public_key).status()));
  v1::HoldOrder nameless = hold();
  nameless.clear_reason();
  const auto status = openHoldOrder(signHoldOrder(toBytes(nameless), m_key), m_key.public_key).status();
  EXPECT_TRUE(absl::IsInvalidArgument(status));
  EXPECT_NE(std::string(status.message()).find("reason"), std::string::npos);
  EXPECT_TRUE(openHoldOrder(signHoldOrder(toBytes(hold()), m_key), m_key.public_key).ok());
}

// The domain string with its closing zero byte, checked with libsodium directly rather than with our own
// code.
TEST_F(Signing, theSignedBytesAreDomainThenContent) {
  const auto programme = signProgramme(m_content, m_key);
  const std::string message = std::string("newel.v1.programme\0", 19) + m_content;
  EXPECT_EQ(
      crypto_sign_verify_detached(reinterpret_cast<const unsigned char*>(programme.signature().data()),
                                  reinterpret_cast<const unsigned char*>(message.data()), message.size(),
                                  reinterpret_cast<const unsigned char*>(m_key.public_key.data())),
      0);
}

// RFC 8032 section 7.1, test 1: the library underneath is the Ed25519 of the RFC.
TEST_F(Signing, ed25519GivesTheRfcsFirstVector) {
  const std::string seed = *fromHex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60");
  std::string public_key(32, '\0');
  std::string secret_key(64, '\0');
  std::string signature(64, '\0');
  const auto raw = [](std::string& s) { return reinterpret_cast<unsigned char*>(s.data()); };
  crypto_sign_seed_keypair(raw(public_key), raw(secret_key),
                           reinterpret_cast<const unsigned char*>(seed.data()));
  crypto_sign_detached(raw(signature), nullptr, nullptr, 0, raw(secret_key));
  EXPECT_EQ(toHex(public_key), "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
  EXPECT_EQ(toHex(signature),
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
            "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b");
}

}  // namespace
}  // namespace newel
