#include "sync/hub/accounts.h"

#include <absl/time/clock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <ctime>

#include "sync/common/content_hash.h"
#include "sync/common/grpc_status.h"
#include "sync/hub/password.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

v1::SignInRequest request(const std::string& name, const std::string& password) {
  v1::SignInRequest request;
  request.set_user_name(name);
  request.set_password(password);
  return request;
}

// libsodium writes its parameters into the hash: m in KiB, t, p. OWASP's least is m=19456, t=2, p=1.
TEST(Password, isArgon2idAtOrOverOwaspsFigureWithItsOwnSalt) {
  const auto hash = hashPassword("a long enough phrase");
  ASSERT_TRUE(hash.ok());
  EXPECT_EQ(hash->rfind("$argon2id$v=19$m=65536,t=2,p=1$", 0), 0U) << *hash;
  EXPECT_EQ(hashCode("ABCDEFGH")->rfind("$argon2id$v=19$m=19456,t=2,p=1$", 0), 0U);
  EXPECT_NE(*hashPassword("a long enough phrase"), *hash);
  EXPECT_TRUE(passwordFits(*hash, "a long enough phrase"));
  EXPECT_FALSE(passwordFits(*hash, "a long enough phrasE"));
  EXPECT_FALSE(passwordFits(*hash, ""));
  EXPECT_FALSE(passwordFits("", "a long enough phrase"));
  EXPECT_FALSE(passwordFits(nobodysHash(), "a long enough phrase"));
}

TEST(Password, the73rdByteCounts) {
  const std::string long_one = std::string(90, 'p') + "a";
  const auto hash = hashPassword(long_one);
  EXPECT_FALSE(passwordFits(*hash, std::string(90, 'p') + "b"));
}

TEST(Accounts, wrongNameAndWrongPasswordCannotBeToldApart) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  const absl::Status name = accounts.signIn(request("nobody", test::kPassword), "a").status();
  const absl::Status password = accounts.signIn(request(test::kUser, "wrong password"), "b").status();
  // As it travels; inside the hub the log is told whose account was tried.
  EXPECT_EQ(toGrpc(name).error_code(), toGrpc(password).error_code());
  EXPECT_EQ(toGrpc(name).error_message(), toGrpc(password).error_message());
  EXPECT_EQ(toGrpc(name).error_details(), toGrpc(password).error_details());
  EXPECT_TRUE(absl::IsUnauthenticated(name));
  // Both pay for one Argon2id. In this thread's own processor time, and the best of three, so that a busy
  // machine does not decide.
  const auto processorTime = [] {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
  };
  const auto fastest = [&](const std::string& user, const std::string& from) {
    double best = 1e9;
    for (int i = 0; i < 3; ++i) {
      const double begun = processorTime();
      EXPECT_FALSE(accounts.signIn(request(user, "wrong password"), from).ok());
      best = std::min(best, processorTime() - begun);
    }
    return best;
  };
  const double unknown = fastest("nobody", "c");
  const double known = fastest(test::kUser, "d");
  EXPECT_LT(std::max(unknown, known) / std::min(unknown, known), 2.0);
  EXPECT_GT(unknown, 0.01) << "no password was hashed for an unknown name";
}

TEST(Accounts, guessingIsSlowedAndTheOwnerElsewhereIsNot) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  for (int i = 0; i < 5; ++i) {
    EXPECT_TRUE(absl::IsUnauthenticated(
        accounts.signIn(request(test::kUser, "guess " + std::to_string(i)), "far").status()));
  }
  EXPECT_TRUE(
      absl::IsResourceExhausted(accounts.signIn(request(test::kUser, test::kPassword), "far").status()));
  EXPECT_TRUE(accounts.signIn(request(test::kUser, test::kPassword), "near").ok());
  clinic.clock().advance(absl::Seconds(3));
  EXPECT_TRUE(accounts.signIn(request(test::kUser, test::kPassword), "far").ok());
}

TEST(Accounts, sessionsEndByTimeAndBySigningOut) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  const auto reply = accounts.signIn(request(test::kUser, test::kPassword), "a");
  ASSERT_TRUE(reply.ok());
  EXPECT_GE(reply->session().size(), 43U) << "256 bits";
  EXPECT_TRUE(accounts.authenticate(reply->session(), CallKind::Clinical).ok());
  EXPECT_EQ(reply->ends_at().seconds() - reply->hub_time().seconds(), 12 * 60 * 60);
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate("", CallKind::Own).status()));
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate(reply->session() + "x", CallKind::Own).status()));
  for (int i = 0; i < 36; ++i) {  // in use all the time
    EXPECT_TRUE(accounts.authenticate(reply->session(), CallKind::Own).ok()) << i;
    clinic.clock().advance(absl::Minutes(20));
  }
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate(reply->session(), CallKind::Own).status()));
  const auto again = accounts.signIn(request(test::kUser, test::kPassword), "a");
  const auto caller = accounts.authenticate(again->session(), CallKind::Own);
  EXPECT_EQ(accounts.signOut(*caller), absl::OkStatus());
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate(again->session(), CallKind::Own).status()));
}

// NIST SP 800-63B 4.2.3: 30 minutes without use, or longer, end a session.
TEST(Accounts, aSessionThatNobodyUsesEndsAfterHalfAnHour) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  const auto reply = accounts.signIn(request(test::kUser, test::kPassword), "a");
  ASSERT_TRUE(reply.ok());
  clinic.clock().advance(absl::Minutes(30) - absl::Seconds(1));
  EXPECT_TRUE(accounts.authenticate(reply->session(), CallKind::Read).ok());
  clinic.clock().advance(absl::Minutes(30) - absl::Seconds(1));
  EXPECT_TRUE(accounts.authenticate(reply->session(), CallKind::Read).ok()) << "the use before counted";
  clinic.clock().advance(absl::Minutes(30));
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate(reply->session(), CallKind::Read).status()));
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate(reply->session(), CallKind::Read).status()))
      << "a refused call is no use";
}

// To be told less exactly than to the minute is what it costs to write only once a minute.
TEST(Accounts, useIsWrittenDownOnceAMinute) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  const auto reply = accounts.signIn(request(test::kUser, test::kPassword), "a");
  ASSERT_TRUE(reply.ok());
  const auto lastUse = [&] {
    absl::Time at;
    EXPECT_EQ(clinic.store().read([&](HubTransaction& transaction) {
      at = transaction.session(sha256(reply->session()))->last_used;
      return absl::OkStatus();
    }),
              absl::OkStatus());
    return at;
  };
  const absl::Time begun = clinic.clock().wall();
  clinic.clock().advance(absl::Seconds(59));
  EXPECT_TRUE(accounts.authenticate(reply->session(), CallKind::Read).ok());
  EXPECT_EQ(lastUse(), begun);
  clinic.clock().advance(absl::Seconds(1));
  EXPECT_TRUE(accounts.authenticate(reply->session(), CallKind::Read).ok());
  EXPECT_EQ(lastUse(), begun + absl::Minutes(1));
}

TEST(Accounts, anOpenStreamAloneKeepsNoSessionAndEndsWithIt) {
  test::TestClinic clinic;
  clinic.desk().watch([](const std::string&) {});
  for (int i = 0; i < 200 && clinic.hub().board().openStreams() == 0; ++i)
    absl::SleepFor(absl::Milliseconds(20));
  ASSERT_EQ(clinic.hub().board().openStreams(), 1U);
  clinic.clock().advance(absl::Minutes(31));
  clinic.hub().stillHere();
  for (int i = 0; i < 200 && clinic.hub().board().openStreams() > 0; ++i)
    absl::SleepFor(absl::Milliseconds(20));
  EXPECT_EQ(clinic.hub().board().openStreams(), 0U);
  clinic.desk().stopWatching();
}

TEST(Accounts, onesOwnPasswordIsChangedWithTheOldOneAndEndsTheOtherSessions) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  const auto other = accounts.signIn(request(test::kUser, test::kPassword), "a");
  ASSERT_TRUE(other.ok());
  EXPECT_TRUE(absl::IsUnauthenticated(clinic.desk().changePassword("wrong password", "a new long phrase")));
  EXPECT_TRUE(absl::IsInvalidArgument(clinic.desk().changePassword(test::kPassword, "short")));
  EXPECT_TRUE(absl::IsInvalidArgument(clinic.desk().changePassword(test::kPassword, test::kPassword)));
  EXPECT_EQ(clinic.desk().changePassword(test::kPassword, "a new long phrase"), absl::OkStatus());
  EXPECT_TRUE(clinic.desk().caseload().ok()) << "this one goes on";
  EXPECT_TRUE(absl::IsUnauthenticated(accounts.authenticate(other->session(), CallKind::Own).status()));
  EXPECT_FALSE(accounts.signIn(request(test::kUser, test::kPassword), "a").ok());
  EXPECT_TRUE(accounts.signIn(request(test::kUser, "a new long phrase"), "a").ok());
}

TEST(Accounts, guessingTheOldPasswordAtAnOpenDeskIsSlowedToo) {
  test::TestClinic clinic;
  for (int i = 0; i < 5; ++i) {
    EXPECT_TRUE(absl::IsUnauthenticated(clinic.desk().changePassword("guess", "a new long phrase")));
  }
  const absl::Status slowed = clinic.desk().changePassword(test::kPassword, "a new long phrase");
  EXPECT_TRUE(absl::IsResourceExhausted(slowed)) << slowed;
  EXPECT_GE(waitAsked(slowed), absl::Seconds(1));
  EXPECT_LE(waitAsked(slowed), absl::Minutes(5));
  EXPECT_EQ(waitAsked(absl::UnauthenticatedError("wait 5 seconds")), absl::ZeroDuration());
  EXPECT_EQ(waitAsked(absl::ResourceExhaustedError("the disk is full")), absl::ZeroDuration());
}

// Every role by every kind of call.
TEST(Accounts, rolesMayDoWhatTheTableSays) {
  struct Cell {
    v1::Role role;
    bool own, read, clinical, access, settings, find, open, assign, phones, staff, accounts, audit;
  };
  const std::vector<Cell> table = {
      {v1::ROLE_THERAPIST, true, true, true, true, false, true, true, false, true, false, false, false},
      {v1::ROLE_LEAD, true, true, true, true, true, true, true, true, true, true, true, true},
      {v1::ROLE_ADMINISTRATOR, true, false, false, true, true, true, false, true, true, true, true, false},
      {v1::ROLE_AUDITOR, true, true, false, false, false, false, false, false, true, true, false, true},
      {v1::ROLE_UNSPECIFIED, false, false, false, false, false, false, false, false, false, false, false,
       false}};
  for (const auto& cell : table) {
    EXPECT_EQ(roleMay(cell.role, CallKind::Own), cell.own) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Read), cell.read) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Clinical), cell.clinical) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Access), cell.access) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Settings), cell.settings) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Find), cell.find) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Open), cell.open) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Assign), cell.assign) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Phones), cell.phones) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Staff), cell.staff) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Accounts), cell.accounts) << cell.role;
    EXPECT_EQ(roleMay(cell.role, CallKind::Audit), cell.audit) << cell.role;
  }
}

TEST(Accounts, anAuditorReadsAndChangesNothing) {
  test::TestClinic clinic;
  ASSERT_TRUE(
      clinic.hub().accounts().add("au", "Auditor (invented)", v1::ROLE_AUDITOR, test::kPassword).ok());
  const auto desk = clinic.newDesk();
  ASSERT_TRUE(desk->signIn("au", test::kPassword).ok());
  EXPECT_TRUE(desk->caseload().ok());
  v1::SendMessageRequest message;
  EXPECT_TRUE(absl::IsPermissionDenied(desk->sendMessage(message).status()));
  EXPECT_TRUE(absl::IsPermissionDenied(desk->createPairing("x").status()));
}

TEST(Accounts, namesAreUniqueAndPlain) {
  test::TestClinic clinic;
  auto& accounts = clinic.hub().accounts();
  EXPECT_TRUE(absl::IsAlreadyExists(accounts.add(test::kUser, "X", v1::ROLE_LEAD, test::kPassword).status()));
  EXPECT_TRUE(absl::IsInvalidArgument(accounts.add("a b", "X", v1::ROLE_LEAD, test::kPassword).status()));
  EXPECT_TRUE(absl::IsInvalidArgument(accounts.add("ok", "", v1::ROLE_LEAD, test::kPassword).status()));
  EXPECT_TRUE(
      absl::IsInvalidArgument(accounts.add("ok", "X", v1::ROLE_UNSPECIFIED, test::kPassword).status()));
  EXPECT_TRUE(absl::IsInvalidArgument(accounts.add("ok", "X", v1::ROLE_LEAD, "short").status()));
}

// OWASP ASVS 5.0 6.2.2, 6.2.3, 7.4.3.
TEST(OwnPassword, isChangedWithThePresentOneAndEndsOtherSessions) {
  test::TestClinic clinic;
  const std::string other = "quiet blue stairs 47";
  const auto second = clinic.newDesk();
  ASSERT_TRUE(second->signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(absl::IsUnauthenticated(clinic.desk().changePassword("wrong", other)));
  EXPECT_TRUE(absl::IsInvalidArgument(clinic.desk().changePassword(test::kPassword, "password1")));
  EXPECT_TRUE(second->caseload().ok()) << "nothing has changed yet";
  ASSERT_EQ(clinic.desk().changePassword(test::kPassword, other), absl::OkStatus());
  EXPECT_TRUE(clinic.desk().caseload().ok()) << "whoever changed it goes on";
  EXPECT_TRUE(absl::IsUnauthenticated(second->caseload().status()));
  EXPECT_TRUE(absl::IsUnauthenticated(second->signIn(test::kUser, test::kPassword).status()));
  EXPECT_TRUE(second->signIn(test::kUser, other).ok());
  EXPECT_EQ(clinic.hub().accounts().setPassword(test::kUser, test::kPassword), absl::OkStatus());
  EXPECT_TRUE(absl::IsUnauthenticated(second->caseload().status())) << "set by whoever runs the hub";
  EXPECT_TRUE(second->signIn(test::kUser, test::kPassword).ok());
  EXPECT_TRUE(absl::IsNotFound(clinic.hub().accounts().setPassword("nobody", other)));
}

}  // namespace
}  // namespace newel
