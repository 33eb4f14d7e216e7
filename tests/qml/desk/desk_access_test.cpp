// Who may come in and what they see, through the real desk's window against a real hub over TLS: a second
// factor from its square to the next sign-in, a locked desk, somebody else's record by a written reason,
// assignments, accounts, a phone that loses its access. Everybody here is invented.
#include <absl/time/clock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "sync/hub/totp.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/desk/driven_desk.h"
#include "tests/sync/common/code_device.h"

namespace newel::test {
namespace {

bool soon(const std::function<bool()>& test) {
  for (int i = 0; i < 500 && !test(); ++i) absl::SleepFor(absl::Milliseconds(20));
  return test();
}

class DeskAccess : public testing::Test {
 protected:
  DeskAccess() {
    add("l.lead", "Lee Lead (invented)", v1::ROLE_LEAD);
    m_person = m_clinic.addPerson(transtibialRight(), "Ada");
  }

  void add(const std::string& name, const std::string& shown, v1::Role role) {
    EXPECT_TRUE(m_clinic.hub().accounts().add(name, shown, role, kPassword).ok());
  }
  std::string folder(const std::string& name) { return m_clinic.folder().path(name); }

  std::string codeOf(const std::string& secret_text) {
    return CodeDevice(secret_text, &m_clinic.clock()).code();
  }
  static std::string anotherThan(const std::string& code) { return code == "000000" ? "000001" : "000000"; }

  // Sets one up at a desk that is signed in; the key as text.
  std::string enrol(DrivenDesk& desk, const std::string& password) {
    desk.mustRun({"type \"Password for the second factor\" \"" + password + "\"",
                  "click \"Set up a second factor\"", "wait \"Key to type: *\" 10000"});
    const std::string secret = desk.state().value("secret").toString().toStdString();
    desk.mustRun({"type \"First code\" " + codeOf(secret), "click \"Use this second factor\""});
    m_clinic.clock().advance(kTotpStep);  // so that the next code is another one
    return secret;
  }
  bool audited(const std::string& part) {
    const auto lines = m_clinic.auditActions();
    return std::any_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return line.find(part) != std::string::npos; });
  }

  TestClinic m_clinic;
  std::string m_person;
};

TEST_F(DeskAccess, aSecondFactorIsSetUpAtTheDeskAndAskedForFromThenOn) {
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn(kUser, kPassword);
  desk.mustRun({"click \"My account\"", "until page OwnAccountPage",
                "type \"Password for the second factor\" \"not it\"", "click \"Set up a second factor\"",
                "wait \"That is not your password.\" 10000",
                std::string("type \"Password for the second factor\" \"") + kPassword + "\"",
                "click \"Set up a second factor\"", "wait \"Key to type: *\" 10000",
                "wait \"Square code to scan with your code app\""});
  desk.shot("factor-set-up");
  const std::string secret = desk.state().value("secret").toString().toStdString();
  const std::string right = codeOf(secret);
  desk.mustRun({"type \"First code\" " + anotherThan(right), "click \"Use this second factor\"",
                "wait \"This code is wrong or too late.*\" 10000", "type \"First code\" " + right,
                "click \"Use this second factor\"", "wait \"The second factor is in use*\" 10000",
                "wait \"In use. Each sign-in*\""});
  EXPECT_EQ(desk.state().value("secret").toString(), "") << "shown once";
  desk.mustRun({"click \"Sign out\"", "until page SignInPage",
                std::string("type Password \"") + kPassword + "\"", "click \"Sign in\"",
                "until asks_code true 15000", "wait \"Code of the second factor\""});
  desk.shot("sign-in-code");
  desk.mustRun({"click \"Sign in\"", "wait \"Type the six digits*\"",
                "type \"Code of the second factor\" " + right, "click \"Sign in\"",
                "wait \"This code is wrong, too late, or was used already.*\" 15000"});
  desk.shot("sign-in-wrong-code");
  m_clinic.clock().advance(kTotpStep);
  desk.mustRun({"type \"Code of the second factor\" " + codeOf(secret), "click \"Sign in\"",
                "until page CaseloadPage 15000"});
}

TEST_F(DeskAccess, whoTriesTooOftenIsToldForHowLong) {
  DrivenDesk desk(m_clinic, folder("a"));
  desk.mustRun({"wait \"User name\"", std::string("type \"User name\" ") + kUser});
  for (int i = 0; i < 5; ++i) {
    desk.mustRun({"type Password wrong", "click \"Sign in\"", "until idle true 15000",
                  "wait \"Name or password is wrong. Type both again.\" 15000"});
  }
  desk.mustRun({"type Password wrong", "click \"Sign in\"", "wait \"Too many tries. Wait *\" 15000"});
  desk.shot("sign-in-wait");
  m_clinic.clock().advance(absl::Minutes(1));
  desk.mustRun({"gone \"Too many tries.*\" 20000"});  // its own countdown
  desk.signIn(kUser, kPassword);
}

TEST_F(DeskAccess, aNewAccountIsMadeAtTheDeskAndDoesFirstWhatTheClinicAsksFor) {
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn("l.lead", kPassword);
  desk.mustRun({"click \"Clinic settings\"", "click \"Every account needs a second factor: yes\"",
                "click \"Save for the clinic\"", "wait \"Settings saved.*\" 10000",
                "click \"Back to Caseload\"", "click Accounts", "until page AccountsPage",
                "wait \"Account of Terry Sample (invented)\" 10000", "click \"New account\"",
                "type \"User name of the account\" \"Not Good\"",
                "type \"Name that colleagues see\" \"Nia New\"", "click \"Make the account\"",
                "wait \"2 to 60 small letters*\" 10000", "type \"User name of the account\" n.new",
                "click \"Role: Therapist\"", "click \"Make the account\"", "wait \"First password: *\" 10000",
                "wait \"Account of Nia New\" 10000"});
  desk.shot("accounts-first-password");
  const std::string first = desk.state().value("first_password").toString().toStdString();
  ASSERT_EQ(first.size(), 19U);
  desk.mustRun({"click \"Sign out\"", "until page SignInPage"});
  desk.signIn("n.new", first, "OwnAccountPage");
  EXPECT_EQ(desk.run("click \"Back to *\""), "error nothing visible is named Back to *");
  desk.shot("first-password");
  desk.mustRun({"wait \"First choose a password of your own\"", "type \"Old password\" \"" + first + "\"",
                "type \"New password\" \"a phrase of my own\"",
                "type \"New password once more\" \"a phrase of my on\"", "click \"Change the password\"",
                "wait \"The new password was typed in two ways.*\"",
                "type \"New password once more\" \"a phrase of my own\"", "click \"Change the password\"",
                "wait \"First set up a second factor\" 10000"});
  enrol(desk, "a phrase of my own");
  desk.mustRun({"until page CaseloadPage 15000", "until idle true 15000"});
  EXPECT_EQ(desk.state().value("people").toInt(), 0) << "nobody is assigned";

  // The lead helps who has lost the device, and switches the account off.
  desk.mustRun({"click \"Sign out\"", "until page SignInPage"});
  desk.signIn("l.lead", kPassword, "OwnAccountPage");  // the lead's turn to set one up
  enrol(desk, kPassword);
  desk.mustRun({"until page CaseloadPage 15000", "click Accounts", "wait \"Account of Nia New\" 10000",
                "click \"Account of Nia New\"", "click \"Take the second factor away\"",
                "wait \"Take the second factor away?\"", "click \"Yes, take it away\"",
                "wait \"The second factor is taken away.\" 10000", "until idle true 10000",
                "click \"Switch the account off\"", "wait \"Switch this account off?\""});
  desk.shot("accounts-switch-off");
  desk.mustRun({"click \"Yes, switch it off\"", "wait \"Account switched off.\" 10000"});
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.newDesk()->signIn("n.new", "a phrase of my own").status()));
  EXPECT_TRUE(audited("account.factor_reset"));
  EXPECT_TRUE(audited("account.off"));
}

TEST_F(DeskAccess, aLockedDeskShowsNothingAndKeepsWhatWasWritten) {
  DrivenDesk desk(m_clinic, folder("a"), {"--lock-after", "15"});
  desk.signIn(kUser, kPassword);
  desk.mustRun({"wait \"Open Ada Invented\" 10000", "click \"Open Ada Invented\"",
                "wait \"Write the first programme\" 10000", "click \"Write the first programme\"",
                "until page ProgrammePage", "click \"Add exercise\"",
                "type \"Find an exercise\" \"sit to stand\"", "click \"Add Sit to stand\"", "until entries 1",
                "until locked true 40000"});
  desk.shot("locked");
  const std::string seen = desk.run("list");
  EXPECT_EQ(seen.find("Invented"), std::string::npos) << seen;
  EXPECT_EQ(seen.find("Sit to stand"), std::string::npos) << seen;
  EXPECT_NE(seen.find("This desk is locked"), std::string::npos) << seen;
  EXPECT_TRUE(soon([&] { return m_clinic.hub().board().openStreams() == 0; })) << "the session is over";
  EXPECT_TRUE(audited("account.sign_out"));
  desk.mustRun(
      {"type Password wrong", "click Unlock", "wait \"This is not the password. Type it again.\" 15000",
       std::string("type Password \"") + kPassword + "\"", "click Unlock", "until locked false 15000"});
  EXPECT_EQ(desk.state().value("page").toString(), "ProgrammePage");
  EXPECT_EQ(desk.state().value("entries").toInt(), 1);
  EXPECT_EQ(desk.state().value("person").toString(), "Ada Invented");
  desk.mustRun({"wait \"Remove, Sit to stand\" 10000", "until idle true 10000"});
  // And what was not: somebody else closes it; the draft stays on the disk for who opens the person again.
  desk.mustRun({"until locked true 40000", "click \"Somebody else signs in\"", "click \"Yes, close it\"",
                "until page SignInPage"});
  EXPECT_EQ(desk.state().value("person").toString(), "");
  EXPECT_FALSE(desk.state().value("locked").toBool());
  add("o.other", "Olu Other (invented)", v1::ROLE_THERAPIST);
  desk.signIn("o.other", kPassword);
  EXPECT_EQ(desk.state().value("people").toInt(), 0);
  desk.mustRun({"click \"Sign out\"", "until page SignInPage"});
  desk.signIn(kUser, kPassword);
  desk.mustRun({"wait \"Open Ada Invented\" 10000", "click \"Open Ada Invented\"",
                "wait \"Write the first programme\" 10000", "click \"Write the first programme\"",
                "wait \"Remove, Sit to stand\" 10000"});
}

TEST_F(DeskAccess, aLockedDeskAsksForTheSecondFactorToo) {
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn(kUser, kPassword);
  desk.mustRun({"click \"My account\"", "until page OwnAccountPage"});
  const std::string secret = enrol(desk, kPassword);
  desk.mustRun({"wait \"The second factor is in use*\" 10000", "click \"Lock this desk\"",
                "until locked true", std::string("type Password \"") + kPassword + "\"", "click Unlock",
                "until asks_code true 15000"});
  desk.shot("locked-code");
  desk.mustRun(
      {"type \"Code of the second factor\" " + codeOf(secret), "click Unlock", "until locked false 15000"});
  EXPECT_EQ(desk.state().value("page").toString(), "OwnAccountPage");
}

TEST_F(DeskAccess, aSessionThatEndedAtTheHubCoversTheDeskAndLosesNothing) {
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn(kUser, kPassword);
  desk.mustRun({"wait \"Open Ada Invented\" 10000", "click \"Open Ada Invented\"",
                "wait \"Write the first programme\" 10000", "until idle true 10000"});
  m_clinic.clock().advance(absl::Minutes(31));
  desk.mustRun({"click \"Who has access: phones\"", "until locked true 15000",
                "wait \"Terry Sample (invented) is at work here. Your sign-in has ended*\"",
                std::string("type Password \"") + kPassword + "\"", "click Unlock",
                "until locked false 15000"});
  EXPECT_EQ(desk.state().value("person").toString(), "Ada Invented");
}

TEST_F(DeskAccess, somebodyElsesPersonIsFoundAndOpenedByAReasonThatIsSeen) {
  add("o.other", "Olu Other (invented)", v1::ROLE_THERAPIST);
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn("o.other", kPassword);
  desk.mustRun({"click \"Find a person who is not in this list\"", "until page FindPage",
                "type \"Whole family name\" nobodyhere", "click Find",
                "wait \"Nobody here has exactly this family name.\" 10000",
                "type \"Whole family name\" invented", "click Find",
                "wait \"Open by a written reason: Ada Invented*\" 10000"});
  desk.shot("find");
  desk.mustRun({"click \"Open by a written reason: Ada Invented*\"",
                "wait \"Ada Invented is not assigned to you\"", "type \"Why it cannot wait\" ill",
                "click \"Open the record and write it down\"",
                "wait \"Write in some words why it cannot wait.\"",
                "type \"Why it cannot wait\" \"Their therapist is ill and they phoned about a fall.\""});
  desk.shot("break-glass");
  desk.mustRun({"click \"Open the record and write it down\"", "until page PersonPage 10000",
                "wait \"Opened by your written reason until *\" 10000"});
  desk.shot("break-glass-open");
  EXPECT_TRUE(audited("person.break_glass"));
  // Who looks after the person reads it.
  DrivenDesk own(m_clinic, folder("b"));
  own.signIn(kUser, kPassword);
  own.mustRun({"wait \"Open Ada Invented\" 10000", "click \"Open Ada Invented\"",
               "wait \"Olu Other (invented) opened this record *\" 10000"});
  // The time is over: what is still on the screen goes.
  m_clinic.clock().advance(absl::Minutes(29));
  desk.mustRun({"click \"Who has access: phones\"", "until page AccessPage", "until idle true 10000"});
  m_clinic.clock().advance(absl::Minutes(29));
  desk.mustRun({"click \"Back to Person\"", "until page PersonPage", "click \"Who has access: phones\"",
                "until idle true 10000", "click \"Back to Person\""});
  m_clinic.clock().advance(absl::Minutes(3));
  m_clinic.hub().board().nudgeDesks("");
  desk.mustRun({"until page CaseloadPage 15000", "wait \"That record is not open to you any more.*\""});
  EXPECT_EQ(desk.state().value("person").toString(), "");
}

TEST_F(DeskAccess, anAssignmentShowsAPersonAndItsEndHidesThem) {
  add("o.other", "Olu Other (invented)", v1::ROLE_THERAPIST);
  DrivenDesk other(m_clinic, folder("a"));
  other.signIn("o.other", kPassword);
  EXPECT_EQ(other.state().value("people").toInt(), 0);
  DrivenDesk lead(m_clinic, folder("b"));
  lead.signIn("l.lead", kPassword);
  lead.mustRun({"wait \"Open Ada Invented\" 10000", "click \"Whose people: Mine\"",
                "wait \"Nobody is assigned to you.\"", "click \"Whose people: Everybody's\"",
                "click \"Open Ada Invented\"", "wait \"Who has access: phones and therapists\" 10000",
                "click \"Who has access: phones and therapists\"", "until page AccessPage",
                "wait \"Looks after Ada Invented: Olu Other (invented)\" 10000"});
  lead.shot("access");
  lead.mustRun({"click \"Looks after Ada Invented: Olu Other (invented)\"", "until idle true 10000"});
  other.mustRun({"until people 1 15000", "wait \"Open Ada Invented\" 10000"});
  lead.mustRun({"click \"Looks after Ada Invented: Olu Other (invented)\"", "until idle true 10000",
                "click \"Looks after Ada Invented: Terry Sample (invented)\"",
                "wait \"Nobody is assigned: only leads see what this person sends.\" 10000"});
  other.mustRun({"until people 0 15000"});
  EXPECT_TRUE(absl::IsPermissionDenied(m_clinic.desk().person(m_person).status()));
  EXPECT_TRUE(audited("person.unassign"));
}

TEST_F(DeskAccess, aPhoneThatLosesItsAccessIsCutOffAtOnce) {
  const auto phone = m_clinic.pairedPhone("Adas phone", m_person);
  phone->start();
  ASSERT_TRUE(soon([&] { return m_clinic.hub().board().openStreams() == 1; }));
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn(kUser, kPassword);
  desk.mustRun({"wait \"Open Ada Invented\" 10000", "click \"Open Ada Invented\"",
                "wait \"Who has access: phones\" 10000", "click \"Who has access: phones\"",
                "wait \"Take access away from Adas phone\" 10000",
                "click \"Take access away from Adas phone\"", "wait \"Take access away from Adas phone?\""});
  desk.shot("revoke");
  EXPECT_FALSE(phone->state().revoked);
  desk.mustRun({"click \"No, leave it\"", "click \"Take access away from Adas phone\"",
                "click \"Yes, this phone is out\"", "wait \"Adas phone has no access any more.\" 10000",
                "wait \"Adas phone, access taken away\" 10000"});
  EXPECT_TRUE(soon([&] { return phone->state().revoked; }));
  EXPECT_TRUE(soon([&] { return m_clinic.hub().board().openStreams() == 1; })) << "the desk's alone";
  EXPECT_TRUE(audited("device.revoke"));
}

TEST_F(DeskAccess, anAuditorReadsTheTrailAndTheRecordAndCannotWrite) {
  add("a.audit", "Auri Audit (invented)", v1::ROLE_AUDITOR);
  ASSERT_TRUE(m_clinic.desk().person(m_person).ok());
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn("a.audit", kPassword);
  EXPECT_EQ(desk.run("click \"New person\""), "error nothing visible is named New person");
  desk.mustRun({"click \"Audit trail\"", "until page AuditPage", "until idle true 10000",
                "click \"Check the chain\"", "wait \"Nothing was changed\" 10000"});
  EXPECT_NE(desk.run("list").find("Terry Sample (invented): looked at the record · Ada Invented"),
            std::string::npos);
  desk.shot("audit");
  desk.mustRun({"type \"By or about which account\" nobody", "click \"Look at these lines\"",
                "wait \"No account has this name.\"", "type \"By or about which account\" auri",
                "type \"From day\" 2026-13-01", "click \"Look at these lines\"",
                "wait \"Type a day like 2026-11-25.\"", "type \"From day\" 2026-01-01",
                "click \"Look at these lines\"", "until idle true 10000"});
  const std::string mine = desk.run("list");
  EXPECT_EQ(mine.find("Terry Sample (invented):"), std::string::npos) << mine;
  EXPECT_NE(mine.find("signed in"), std::string::npos) << mine;
  desk.mustRun({"click \"Back to Caseload\"", "wait \"Open Ada Invented\" 10000",
                "click \"Open Ada Invented\"", "wait \"Who saw this record\" 10000"});
  EXPECT_EQ(desk.run("click \"Hold order\""), "error nothing visible is named Hold order");
  desk.mustRun({"click \"Who saw this record\"", "wait \"Audit trail: Ada Invented\" 10000",
                "until idle true 10000", "click \"Back to Person\"", "until page PersonPage"});
}

TEST_F(DeskAccess, anAdministratorFindsAccountsFirstAndNoRecords) {
  add("m.admin", "Mo Admin (invented)", v1::ROLE_ADMINISTRATOR);
  DrivenDesk desk(m_clinic, folder("a"));
  desk.signIn("m.admin", kPassword, "AccountsPage");
  desk.mustRun({"wait \"Account of Lee Lead (invented)\" 10000", "click \"Account of Mo Admin (invented)\"",
                "wait \"This is your own account.*\"", "click \"Close the account\"",
                "click \"Find a person\"", "until page FindPage", "type \"Whole family name\" invented",
                "click Find", "wait \"Phones and therapists: Ada Invented*\" 10000",
                "click \"Phones and therapists: Ada Invented*\"", "until page AccessPage 10000",
                "wait \"Looks after Ada Invented: Terry Sample (invented)\" 10000",
                "click \"Back to Find a person\"", "click \"Back to Accounts\"", "until page AccountsPage"});
}

}  // namespace
}  // namespace newel::test
