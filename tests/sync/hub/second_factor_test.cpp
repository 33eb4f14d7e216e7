#include "sync/hub/second_factor.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "sync/hub/hub_commands.h"
#include "sync/hub/totp.h"
#include "tests/sync/common/code_device.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

using test::CodeDevice;

class SecondFactor : public testing::Test {
 protected:
  // Enrols the therapist through the desk; a step later, so that the first code is not the used one.
  CodeDevice enrol() {
    const auto begun = m_clinic.desk().beginSecondFactor(test::kPassword);
    EXPECT_TRUE(begun.ok()) << begun.status();
    const CodeDevice device(begun->secret_text(), &m_clinic.clock());
    EXPECT_EQ(m_clinic.desk().confirmSecondFactor(device.code()), absl::OkStatus());
    m_clinic.clock().advance(kTotpStep);
    return device;
  }
  absl::StatusOr<v1::SignInReply> signIn(const std::string& code, const std::string& peer = "a") {
    v1::SignInRequest request;
    request.set_user_name(test::kUser);
    request.set_password(test::kPassword);
    request.set_code(code);
    return m_clinic.hub().accounts().signIn(request, peer);
  }
  bool audited(const std::string& part) {
    const auto lines = m_clinic.auditActions();
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.find(part) != std::string::npos; });
  }

  test::TestClinic m_clinic;
};

TEST_F(SecondFactor, fromShowingTheSecretToASignInThatNeedsIt) {
  const auto before = signIn("");
  ASSERT_TRUE(before.ok()) << "without one nothing changes";
  EXPECT_FALSE(before->second_factor());
  const auto begun = m_clinic.desk().beginSecondFactor(test::kPassword);
  ASSERT_TRUE(begun.ok()) << begun.status();
  EXPECT_EQ(begun->secret_text().size(), 32U + 7U) << "160 bits in groups of four";
  EXPECT_EQ(begun->uri().rfind("otpauth://totp/Test%20clinic%20%28invented%29:t.sample?secret=", 0), 0U);
  EXPECT_TRUE(signIn("").ok()) << "not confirmed: nobody may be locked out by a secret that was not kept";
  const CodeDevice device(begun->secret_text(), &m_clinic.clock());
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().confirmSecondFactor("")));
  EXPECT_EQ(m_clinic.desk().confirmSecondFactor(device.code()), absl::OkStatus());
  EXPECT_TRUE(m_clinic.desk().caseload().ok()) << "the session that confirmed goes on";
  EXPECT_TRUE(absl::IsUnauthenticated(
      m_clinic.hub().accounts().authenticate(before->session(), CallKind::Own).status()))
      << "other sessions of the account do not";

  const auto desk = m_clinic.newDesk();
  const absl::Status bare = desk->signIn(test::kUser, test::kPassword).status();
  EXPECT_TRUE(needsCode(bare)) << bare;
  EXPECT_FALSE(isWrongCode(bare));
  m_clinic.clock().advance(kTotpStep);
  const auto reply = desk->signIn(test::kUser, test::kPassword, device.code());
  ASSERT_TRUE(reply.ok()) << reply.status();
  EXPECT_TRUE(reply->second_factor());
  EXPECT_TRUE(desk->caseload().ok());
  EXPECT_TRUE(audited("account.factor_confirm"));
}

TEST_F(SecondFactor, aCodeCountsOnceAlsoTheOneThatConfirmed) {
  const auto begun = m_clinic.desk().beginSecondFactor(test::kPassword);
  ASSERT_TRUE(begun.ok());
  const CodeDevice device(begun->secret_text(), &m_clinic.clock());
  const std::string first = device.code();
  ASSERT_EQ(m_clinic.desk().confirmSecondFactor(first), absl::OkStatus());
  EXPECT_TRUE(isWrongCode(signIn(first).status()));
  m_clinic.clock().advance(kTotpStep);
  const std::string second = device.code();
  EXPECT_TRUE(signIn(second).ok());
  EXPECT_TRUE(isWrongCode(signIn(second).status()));
  EXPECT_TRUE(isWrongCode(signIn(first).status()));
}

TEST_F(SecondFactor, withAWrongPasswordNobodyLearnsThatThereIsOne) {
  const CodeDevice device = enrol();
  v1::SignInRequest request;
  request.set_user_name(test::kUser);
  request.set_password("wrong password");
  const absl::Status bare = m_clinic.hub().accounts().signIn(request, "a").status();
  request.set_code(device.code());
  EXPECT_EQ(m_clinic.hub().accounts().signIn(request, "b").status(), bare);
  EXPECT_TRUE(absl::IsUnauthenticated(bare));
  EXPECT_FALSE(isWrongCode(bare));
  EXPECT_TRUE(signIn(device.code()).ok()) << "and the code was not used up by it";
}

TEST_F(SecondFactor, guessingCodesIsSlowedAndAskingInBetweenForgivesNothing) {
  const CodeDevice device = enrol();
  const std::string wrong = device.code() == "000000" ? "000001" : "000000";
  for (int i = 0; i < 5; ++i) {
    EXPECT_TRUE(needsCode(signIn("", "far").status())) << i;
    EXPECT_TRUE(isWrongCode(signIn(wrong, "far").status())) << i;
  }
  EXPECT_TRUE(absl::IsResourceExhausted(signIn(device.code(), "far").status()));
  EXPECT_TRUE(signIn(device.code(), "near").ok()) << "the owner elsewhere is not shut out";
  EXPECT_TRUE(audited("\"f\":\"code\""));
}

TEST_F(SecondFactor, enrollingNeedsThePasswordAndIsNotDoneTwice) {
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.desk().beginSecondFactor("wrong password").status()));
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().confirmSecondFactor("123456")));
  const CodeDevice device = enrol();
  EXPECT_TRUE(absl::IsAlreadyExists(m_clinic.desk().beginSecondFactor(test::kPassword).status()));
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().confirmSecondFactor(device.code())));
}

TEST_F(SecondFactor, whoRunsTheHubTakesItAway) {
  enrol();
  const std::string data = m_clinic.place().address();
  std::ostringstream out;
  std::ostringstream err;
  const HubMachine machine{&m_clinic.clock(), &m_clinic.random(), &out, &err};
  EXPECT_EQ(resetFactorCommand(machine, data, "nobody"), 1);
  EXPECT_EQ(resetFactorCommand(machine, data, test::kUser), 0) << err.str();
  EXPECT_TRUE(signIn("").ok());
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.desk().caseload().status())) << "sessions ended with it";
  EXPECT_EQ(resetFactorCommand(machine, data, test::kUser), 1) << "there is none any more";
  EXPECT_TRUE(audited("account.factor_reset"));
}

TEST_F(SecondFactor, theSecretIsInNoAuditLine) {
  const auto begun = m_clinic.desk().beginSecondFactor(test::kPassword);
  ASSERT_TRUE(begun.ok());
  std::string secret = begun->secret_text();
  secret.erase(std::remove(secret.begin(), secret.end(), ' '), secret.end());
  EXPECT_FALSE(audited(secret));
  EXPECT_FALSE(audited(test::kUser));
}

}  // namespace
}  // namespace newel
