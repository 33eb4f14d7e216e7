#include "sync/hub/account_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>

#include "sync/hub/accounts.h"
#include "sync/hub/first_password.h"
#include "sync/hub/totp.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

TEST(FirstPassword, is80RandomBitsAndFitsHoweverItIsTyped) {
  RealRandom random;
  const std::string shown = newFirstPassword(random);
  ASSERT_EQ(shown.size(), 19U) << shown;
  for (const std::size_t at : {4U, 9U, 14U}) EXPECT_EQ(shown.at(at), '-') << shown;
  EXPECT_NE(newFirstPassword(random), shown);
  const std::string canonical = canonicalFirstPassword(shown);
  EXPECT_EQ(canonical.size(), 16U);
  std::string lower = shown;
  std::transform(lower.begin(), lower.end(), lower.begin(), [](unsigned char c) { return std::tolower(c); });
  EXPECT_EQ(canonicalFirstPassword(lower), canonical);
  EXPECT_EQ(canonicalFirstPassword(canonical), canonical);
  // Crockford's base 32, decoding: O is 0, I and L are 1.
  EXPECT_EQ(canonicalFirstPassword("oO-iIlL x"), "001111X");
}

class AccountBookTest : public testing::Test {
 protected:
  AccountBookTest() {
    EXPECT_TRUE(
        m_clinic.hub().accounts().add("l.lead", "Lee (invented)", v1::ROLE_LEAD, test::kPassword).ok());
    m_lead = m_clinic.newDesk();
    EXPECT_TRUE(m_lead->signIn("l.lead", test::kPassword).ok());
  }

  v1::AddAccountReply add(const std::string& name, v1::Role role) {
    v1::AddAccountRequest request;
    request.set_user_name(name);
    request.set_display_name("New One (invented)");
    request.set_role(role);
    auto reply = m_lead->addAccount(request);
    EXPECT_TRUE(reply.ok()) << reply.status();
    return reply.value_or(v1::AddAccountReply());
  }
  v1::Account account(const std::string& user_name) {
    const auto list = m_lead->accounts();
    EXPECT_TRUE(list.ok()) << list.status();
    for (const auto& one : *list) {
      if (one.therapist().user_name() == user_name) return one;
    }
    ADD_FAILURE() << "no account " << user_name;
    return {};
  }
  absl::StatusOr<v1::Account> change(const v1::Account& account, v1::Role role, bool disabled,
                                     DeskClient* by = nullptr) {
    v1::ChangeAccountRequest request;
    request.set_account_id(account.therapist().id());
    request.set_display_name(account.therapist().display_name());
    request.set_role(role);
    request.set_disabled(disabled);
    return (by == nullptr ? *m_lead : *by).changeAccount(request);
  }
  void require(std::uint32_t second_factor) {
    v1::PutSettingsRequest request;
    (*request.mutable_values())["second-factor-required"] = second_factor;
    request.set_base_revision(m_lead->clinic()->settings().revision());
    EXPECT_TRUE(m_lead->putSettings(request).ok());
  }
  // Of the device that was shown the secret.
  std::string codeFor(const std::string& account_id) {
    std::string secret;
    EXPECT_EQ(m_clinic.store().read([&](HubTransaction& transaction) {
      secret = transaction.secondFactor(account_id)->secret;
      return absl::OkStatus();
    }),
              absl::OkStatus());
    return hotpCode(secret, totpStepAt(m_clinic.clock().wall()), kTotpDigits);
  }
  bool audited(const std::string& part) {
    const auto lines = m_clinic.auditActions();
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.find(part) != std::string::npos; });
  }

  test::TestClinic m_clinic;
  std::unique_ptr<DeskClient> m_lead;
};

TEST_F(AccountBookTest, aNewAccountChoosesItsOwnPasswordBeforeAnythingElse) {
  const auto added = add("n.new", v1::ROLE_THERAPIST);
  EXPECT_EQ(added.account().therapist().role(), v1::ROLE_THERAPIST);
  EXPECT_TRUE(account("n.new").has_first_password_until());
  const auto desk = m_clinic.newDesk();
  std::string typed = added.first_password();
  typed.erase(std::remove(typed.begin(), typed.end(), '-'), typed.end());
  const auto reply = desk->signIn("n.new", typed);
  ASSERT_TRUE(reply.ok()) << reply.status();
  EXPECT_TRUE(reply->must_change_password());
  EXPECT_FALSE(reply->must_enrol());
  EXPECT_TRUE(absl::IsPermissionDenied(desk->caseload().status()));
  EXPECT_TRUE(absl::IsPermissionDenied(desk->findPersons("invented").status()));
  EXPECT_TRUE(desk->clinic().ok()) << "its own calls";
  EXPECT_TRUE(absl::IsInvalidArgument(desk->changePassword(typed, added.first_password())))
      << "the first one is not a password of their own";
  EXPECT_EQ(desk->changePassword(typed, "my own long phrase"), absl::OkStatus());
  EXPECT_TRUE(desk->caseload().ok());
  EXPECT_FALSE(account("n.new").has_first_password_until());
  const auto again = m_clinic.newDesk();
  EXPECT_TRUE(absl::IsUnauthenticated(again->signIn("n.new", added.first_password()).status()));
  EXPECT_FALSE(again->signIn("n.new", "my own long phrase")->must_change_password());
  EXPECT_TRUE(audited("account.add"));
  EXPECT_FALSE(audited(added.first_password())) << "no password in the trail";
}

TEST_F(AccountBookTest, aFirstPasswordIsGoodForThreeDays) {
  const auto added = add("n.new", v1::ROLE_THERAPIST);
  m_clinic.clock().advance(absl::Hours(72) - absl::Seconds(1));
  EXPECT_TRUE(m_clinic.newDesk()->signIn("n.new", added.first_password()).ok());
  m_clinic.clock().advance(absl::Seconds(1));
  EXPECT_TRUE(
      absl::IsFailedPrecondition(m_clinic.newDesk()->signIn("n.new", added.first_password()).status()));
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.newDesk()->signIn("n.new", "another").status()))
      << "who does not know it learns nothing";
  EXPECT_TRUE(m_lead->signIn("l.lead", test::kPassword).ok());  // three days idle
  const auto renewed = m_lead->newFirstPassword(added.account().therapist().id());
  ASSERT_TRUE(renewed.ok()) << renewed.status();
  EXPECT_TRUE(m_clinic.newDesk()->signIn("n.new", renewed->first_password()).ok());
  EXPECT_FALSE(m_clinic.newDesk()->signIn("n.new", added.first_password()).ok());
}

TEST_F(AccountBookTest, aNewFirstPasswordReplacesAForgottenOneAndEndsTheSessions) {
  const auto renewed = m_lead->newFirstPassword(account(test::kUser).therapist().id());
  ASSERT_TRUE(renewed.ok());
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.desk().caseload().status()));
  EXPECT_FALSE(m_clinic.newDesk()->signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(m_clinic.newDesk()->signIn(test::kUser, renewed->first_password())->must_change_password());
}

TEST_F(AccountBookTest, aSwitchedOffAccountIsOutAtOnceAndComesBackAsItWas) {
  const auto therapist = account(test::kUser);
  m_clinic.desk().watch([](const std::string&) {});
  ASSERT_TRUE(change(therapist, v1::ROLE_THERAPIST, true).ok());
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.desk().caseload().status()));
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.newDesk()->signIn(test::kUser, test::kPassword).status()));
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.newDesk()->signIn(test::kUser, "a wrong one").status()));
  EXPECT_TRUE(account(test::kUser).disabled());
  ASSERT_TRUE(change(therapist, v1::ROLE_THERAPIST, false).ok());
  EXPECT_TRUE(m_clinic.newDesk()->signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(audited("account.off"));
  m_clinic.desk().stopWatching();
}

TEST_F(AccountBookTest, anotherRoleEndsTheSessionsOfTheOld) {
  const std::string id = m_clinic.addPerson(test::transtibialRight());
  ASSERT_TRUE(change(account(test::kUser), v1::ROLE_ADMINISTRATOR, false).ok());
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.desk().person(id).status()));
  EXPECT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(absl::IsPermissionDenied(m_clinic.desk().person(id).status()));
  EXPECT_TRUE(m_clinic.desk().accounts().ok());
}

TEST_F(AccountBookTest, nobodyChangesTheirOwnAccountSoOneWhoMayIsAlwaysLeft) {
  const auto mine = account("l.lead");
  EXPECT_TRUE(absl::IsFailedPrecondition(change(mine, v1::ROLE_LEAD, true).status()));
  EXPECT_TRUE(absl::IsFailedPrecondition(change(mine, v1::ROLE_THERAPIST, false).status()));
  EXPECT_TRUE(absl::IsFailedPrecondition(m_lead->newFirstPassword(mine.therapist().id()).status()));
  EXPECT_TRUE(absl::IsFailedPrecondition(m_lead->takeSecondFactor(mine.therapist().id())));
  // Two who may switch each other off: whoever comes second is off already.
  const auto second = add("s.second", v1::ROLE_ADMINISTRATOR);
  DeskCaller caller;
  caller.therapist = second.account().therapist();
  ASSERT_TRUE(change(second.account(), v1::ROLE_ADMINISTRATOR, true).ok());
  v1::ChangeAccountRequest request;
  request.set_account_id(mine.therapist().id());
  request.set_display_name("Lee (invented)");
  request.set_role(v1::ROLE_LEAD);
  request.set_disabled(true);
  EXPECT_TRUE(absl::IsPermissionDenied(m_clinic.hub().accountBook().change(caller, request).status()))
      << "a call that was let in just before";
  EXPECT_FALSE(account("l.lead").disabled());
}

TEST_F(AccountBookTest, refusesWhatIsWrongAndNamesTheField) {
  v1::AddAccountRequest request;
  request.set_user_name(test::kUser);
  request.set_display_name("X");
  request.set_role(v1::ROLE_THERAPIST);
  EXPECT_TRUE(absl::IsAlreadyExists(m_lead->addAccount(request).status()));
  request.set_user_name("Not Good");
  EXPECT_EQ(m_lead->addAccount(request).status().message().substr(0, 9), "user_name");
  request.set_user_name("good");
  request.clear_display_name();
  EXPECT_EQ(m_lead->addAccount(request).status().message().substr(0, 12), "display_name");
  request.set_display_name("X");
  request.clear_role();
  EXPECT_EQ(m_lead->addAccount(request).status().message().substr(0, 4), "role");
  v1::Account nobody;
  nobody.mutable_therapist()->set_id(test::idOf(77));
  nobody.mutable_therapist()->set_display_name("X");
  EXPECT_TRUE(absl::IsNotFound(change(nobody, v1::ROLE_LEAD, false).status()));
  EXPECT_TRUE(absl::IsInvalidArgument(change(account(test::kUser), v1::ROLE_UNSPECIFIED, false).status()));
}

TEST_F(AccountBookTest, whereTheClinicAsksForASecondFactorItComesBeforeAnythingElse) {
  require(1);
  EXPECT_TRUE(m_clinic.desk().caseload().ok()) << "who is signed in goes on until the next sign-in";
  const auto reply = m_clinic.desk().signIn(test::kUser, test::kPassword);
  ASSERT_TRUE(reply.ok());
  EXPECT_TRUE(reply->must_enrol());
  EXPECT_TRUE(absl::IsPermissionDenied(m_clinic.desk().caseload().status()));
  ASSERT_TRUE(m_clinic.desk().beginSecondFactor(test::kPassword).ok());
  EXPECT_TRUE(absl::IsPermissionDenied(m_clinic.desk().caseload().status())) << "begun is not in use";
  const std::string id = reply->therapist().id();
  ASSERT_EQ(m_clinic.desk().confirmSecondFactor(codeFor(id)), absl::OkStatus());
  EXPECT_TRUE(m_clinic.desk().caseload().ok());
  EXPECT_TRUE(account(test::kUser).second_factor());
  m_clinic.clock().advance(kTotpStep);
  EXPECT_FALSE(m_clinic.desk().signIn(test::kUser, test::kPassword, codeFor(id))->must_enrol());

  ASSERT_EQ(m_lead->takeSecondFactor(id), absl::OkStatus());
  EXPECT_TRUE(absl::IsUnauthenticated(m_clinic.desk().caseload().status())) << "sessions ended with it";
  EXPECT_TRUE(m_clinic.desk().signIn(test::kUser, test::kPassword)->must_enrol());
  EXPECT_TRUE(absl::IsFailedPrecondition(m_lead->takeSecondFactor(account("l.lead").therapist().id())));
  require(0);
  EXPECT_FALSE(m_clinic.desk().signIn(test::kUser, test::kPassword)->must_enrol());
}

TEST_F(AccountBookTest, bothDutiesHaveToBeDone) {
  require(1);
  const auto added = add("n.new", v1::ROLE_THERAPIST);
  const auto desk = m_clinic.newDesk();
  const auto reply = desk->signIn("n.new", added.first_password());
  ASSERT_TRUE(reply.ok());
  EXPECT_TRUE(reply->must_change_password());
  EXPECT_TRUE(reply->must_enrol());
  ASSERT_EQ(desk->changePassword(added.first_password(), "my own long phrase"), absl::OkStatus());
  EXPECT_TRUE(absl::IsPermissionDenied(desk->caseload().status()));
  ASSERT_TRUE(desk->beginSecondFactor("my own long phrase").ok());
  ASSERT_EQ(desk->confirmSecondFactor(codeFor(reply->therapist().id())), absl::OkStatus());
  EXPECT_TRUE(desk->caseload().ok());
}

}  // namespace
}  // namespace newel
