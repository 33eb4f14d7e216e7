#include "sync/hub/pairings.h"

#include <gtest/gtest.h>

#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class PairingRule : public testing::Test {
 protected:
  absl::Status tryCode(const std::string& code, const std::string& peer = "ipv4:192.0.2.1") {
    v1::PairRequest request;
    request.set_code(code);
    request.set_device_name("phone");
    return m_clinic.hub().pairings().pair(request, peer).status();
  }
  v1::CreatePairingReply invite() { return *m_clinic.desk().createPairing(m_person); }
  static std::string codeOf(const v1::CreatePairingReply& reply) {
    return parseTicket(reply.qr_text())->code;
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
};

TEST_F(PairingRule, codesAreAsLongAsPromised) {
  const auto reply = invite();
  EXPECT_EQ(reply.typed_code().size(), 9U) << "XXXX-XXXX, 40 bits";
  EXPECT_EQ(codeOf(reply).size(), 26U) << "130 bits";
  EXPECT_EQ(parseTicket(reply.qr_text())->certificate_sha256, m_clinic.hub().clinic().certificate_sha256);
  EXPECT_EQ(reply.typed_address(), m_clinic.address());
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().createPairing(test::idOf(99)).status()));
}

TEST_F(PairingRule, eitherCodeSpendsTheInvitationOnce) {
  const auto first = invite();
  EXPECT_EQ(tryCode(first.typed_code()), absl::OkStatus());
  EXPECT_TRUE(absl::IsNotFound(tryCode(first.typed_code())));
  EXPECT_TRUE(absl::IsNotFound(tryCode(codeOf(first))));
  const auto second = invite();
  EXPECT_EQ(tryCode(codeOf(second)), absl::OkStatus());
  EXPECT_TRUE(absl::IsNotFound(tryCode(second.typed_code())));
}

TEST_F(PairingRule, aNewInvitationEndsTheFormerOne) {
  const auto first = invite();
  const auto second = invite();
  EXPECT_TRUE(absl::IsNotFound(tryCode(codeOf(first))));
  EXPECT_EQ(tryCode(codeOf(second)), absl::OkStatus());
}

TEST_F(PairingRule, afterTenMinutesItIsTooLate) {
  const auto reply = invite();
  m_clinic.clock().advance(absl::Minutes(10) - absl::Seconds(1));
  EXPECT_TRUE(absl::IsNotFound(tryCode("00000000")));
  m_clinic.clock().advance(absl::Seconds(1));
  EXPECT_TRUE(absl::IsNotFound(tryCode(reply.typed_code())));
  EXPECT_TRUE(absl::IsNotFound(tryCode(codeOf(reply))));
}

TEST_F(PairingRule, fiveWrongCodesFromOnePlaceAreTheLast) {
  const auto reply = invite();
  for (int i = 0; i < 5; ++i) EXPECT_TRUE(absl::IsNotFound(tryCode("0000000" + std::to_string(i))));
  EXPECT_TRUE(absl::IsResourceExhausted(tryCode(reply.typed_code()))) << "the right code, too late";
  EXPECT_EQ(tryCode(codeOf(reply)), absl::OkStatus()) << "the code in the picture needs no counting";
}

TEST_F(PairingRule, fiveWrongCodesFromManyPlacesAreTheLastToo) {
  const auto reply = invite();
  for (int i = 0; i < 5; ++i) {
    EXPECT_TRUE(
        absl::IsNotFound(tryCode("0000000" + std::to_string(i), "ipv4:192.0.2." + std::to_string(i))));
  }
  EXPECT_TRUE(absl::IsNotFound(tryCode(reply.typed_code(), "ipv4:198.51.100.1")));
}

TEST_F(PairingRule, aRightCodeTakesNoTryFromOthers) {
  const std::string other = m_clinic.addPerson(test::transtibialRight());
  const auto mine = invite();
  for (int i = 0; i < 5; ++i) {
    const auto theirs = m_clinic.desk().createPairing(other);
    EXPECT_EQ(tryCode(theirs->typed_code()), absl::OkStatus());
  }
  EXPECT_EQ(tryCode(mine.typed_code()), absl::OkStatus());
}

TEST_F(PairingRule, nothingSecretLiesInTheStore) {
  const auto reply = invite();
  v1::PairRequest request;
  request.set_code(codeOf(reply));
  const std::string typed = reply.typed_code().substr(0, 4) + reply.typed_code().substr(5);
  std::string all;
  const auto paired = m_clinic.hub().pairings().pair(request, "a");
  ASSERT_TRUE(paired.ok());
  const auto tables = m_clinic.place().dump();
  for (const char* table : {"invitation", "device", "session", "account", "audit"}) all += tables.at(table);
  ASSERT_NE(all.find(test::kUser), std::string::npos) << "it looks at what is there";
  for (const std::string& secret : {typed, codeOf(reply), paired->token(), std::string(test::kPassword)}) {
    EXPECT_EQ(all.find(secret), std::string::npos);
  }
}

TEST_F(PairingRule, malformedRequestsAreRefusedByField) {
  EXPECT_TRUE(absl::IsInvalidArgument(tryCode("")));
  EXPECT_TRUE(absl::IsInvalidArgument(tryCode(std::string(65, 'A'))));
  v1::PairRequest request;
  request.set_code("ABCDEFGH");
  request.set_device_name(std::string(201, 'x'));
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.hub().pairings().pair(request, "a").status()));
}

}  // namespace
}  // namespace newel
