#include <gtest/gtest.h>

#include <chrono>
#include <thread>

#include "core/time/local_day.h"
#include "sync/common/certificate.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/home/lossy_network.h"

namespace newel {
namespace {

class PairPhone : public testing::Test {
 protected:
  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft(), "Tilda");
};

TEST_F(PairPhone, theRightCodeBringsThePersonAndTheClinic) {
  const auto phone = m_clinic.newPhone("phone");
  EXPECT_FALSE(phone->state().paired);
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus()) << "nothing to do, and no error";
  ASSERT_EQ(phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  EXPECT_TRUE(phone->state().paired);
  EXPECT_EQ(phone->person()->id(), m_person);
  EXPECT_EQ(phone->greetingName(), "Tilda");
  EXPECT_EQ(phone->clinic()->phone(), "555 0101");
  EXPECT_EQ(phone->hubFingerprint(), shortFingerprint(m_clinic.hub().clinic().certificate_sha256));
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).paired());
  EXPECT_TRUE(absl::IsFailedPrecondition(phone->pair(m_clinic.ticketFor(m_person))));
}

TEST_F(PairPhone, aTypedCodeWorksWithoutTheFingerprintAndShowsIt) {
  const auto reply = m_clinic.desk().createPairing(m_person);
  const auto ticket = typedTicket(reply->typed_address(), reply->typed_code());
  ASSERT_TRUE(ticket.ok());
  const auto phone = m_clinic.newPhone("phone");
  ASSERT_EQ(phone->pair(*ticket), absl::OkStatus());
  EXPECT_EQ(phone->hubFingerprint(), shortFingerprint(m_clinic.hub().clinic().certificate_sha256));
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus()) << "what was seen first is pinned";
}

TEST_F(PairPhone, wrongSpentAndExpiredLookTheSame) {
  const auto phone = m_clinic.newPhone("phone");
  auto ticket = m_clinic.ticketFor(m_person);
  auto wrong = ticket;
  wrong.code[0] = wrong.code[0] == 'A' ? 'B' : 'A';
  const absl::Status wrong_status = phone->pair(wrong);
  EXPECT_TRUE(absl::IsNotFound(wrong_status)) << wrong_status;
  ASSERT_EQ(phone->pair(ticket), absl::OkStatus());
  const absl::Status spent = m_clinic.newPhone("second")->pair(ticket);
  ticket = m_clinic.ticketFor(m_person);
  m_clinic.clock().advance(absl::Minutes(11));
  const absl::Status expired = m_clinic.newPhone("third")->pair(ticket);
  EXPECT_EQ(spent, wrong_status);
  EXPECT_EQ(expired, wrong_status);
}

TEST_F(PairPhone, fiveWrongTypedCodesAreTheLast) {
  const auto reply = m_clinic.desk().createPairing(m_person);
  const auto phone = m_clinic.newPhone("phone");
  for (int i = 0; i < 5; ++i) {
    EXPECT_TRUE(
        absl::IsNotFound(phone->pair(*typedTicket(reply->typed_address(), "0000-000" + std::to_string(i)))));
  }
  EXPECT_TRUE(
      absl::IsResourceExhausted(phone->pair(*typedTicket(reply->typed_address(), reply->typed_code()))));
  EXPECT_FALSE(phone->state().paired);
}

TEST_F(PairPhone, anotherHubsCertificateIsRefusedBeforeTheCodeIsSpoken) {
  const test::TestClinic stranger;
  auto ticket = m_clinic.ticketFor(m_person);
  const auto good = ticket;
  ticket.port = std::stoi(stranger.address().substr(stranger.address().rfind(':') + 1));
  const auto phone = m_clinic.newPhone("phone");
  EXPECT_TRUE(absl::IsUnauthenticated(phone->pair(ticket)));
  EXPECT_FALSE(phone->state().paired);
  EXPECT_EQ(phone->pair(good), absl::OkStatus()) << "the code is still unspent";
}

TEST_F(PairPhone, withNobodyThereItSaysSo) {
  auto ticket = m_clinic.ticketFor(m_person);
  ticket.port = 1;
  EXPECT_TRUE(absl::IsUnavailable(m_clinic.newPhone("phone")->pair(ticket)));
}

TEST_F(PairPhone, aHubUnderAnotherCertificateLaterIsNoContact) {
  auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  const int port = std::stoi(m_clinic.address().substr(m_clinic.address().rfind(':') + 1));
  m_clinic.stopHub();
  test::TestClinic stranger;
  stranger.stopHub();
  stranger.startHub(port);
  EXPECT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  phone.reset();
  phone = m_clinic.newPhone("phone");
  EXPECT_FALSE(phone->syncOnce().ok());
  EXPECT_EQ(phone->state().last_problem, "sync.hub-refused");
  EXPECT_FALSE(phone->state().revoked) << "a stranger must not be able to end the pairing";
  EXPECT_EQ(phone->state().queued, 1U) << "nothing went to the stranger";
}

// The clinic had to make a new certificate: what is queued must not have to be wiped to reach it again.
TEST_F(PairPhone, underANewCertificateACodeForItsOwnPersonIsEnough) {
  const std::string other = m_clinic.addPerson(test::transtibialRight());
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  const auto certificate = makeCertificate({});
  ASSERT_TRUE(certificate.ok());
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    transaction.putSetting("certificate", certificate->certificate_pem);
    transaction.putSetting("certificate_key", certificate->key_pem);
    return absl::OkStatus();
  }),
            absl::OkStatus());
  const int port = std::stoi(m_clinic.address().substr(m_clinic.address().rfind(':') + 1));
  m_clinic.stopHub();
  m_clinic.startHub(port);
  const auto ticket = [&](const std::string& person) {
    return *parseTicket(m_clinic.hub().pairings().invite(DeskCaller(), person)->qr_text());
  };
  for (int i = 0; i < 20 && phone->state().last_problem != "sync.hub-refused"; ++i) {
    EXPECT_FALSE(phone->syncOnce().ok());
    std::this_thread::sleep_for(std::chrono::milliseconds(200));  // the old connection ends by itself
  }
  ASSERT_EQ(phone->state().last_problem, "sync.hub-refused");
  EXPECT_TRUE(absl::IsFailedPrecondition(phone->pair(ticket(other)))) << "not for somebody else";
  EXPECT_EQ(phone->state().queued, 1U);
  EXPECT_FALSE(phone->syncOnce().ok());
  ASSERT_EQ(phone->pair(ticket(m_person)), absl::OkStatus());
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->state().queued, 0U);
  EXPECT_EQ(phone->practices().size(), 1U);
}

TEST_F(PairPhone, aRevokedPhoneKeepsItsRecordsAndMaySendThemWhenPairedAgain) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const auto devices = m_clinic.desk().devices(m_person);
  ASSERT_EQ(devices->size(), 1U);
  ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  ASSERT_EQ(m_clinic.desk().revokeDevice(devices->at(0).id()), absl::OkStatus());
  EXPECT_TRUE(absl::IsPermissionDenied(phone->syncOnce()));
  EXPECT_TRUE(phone->state().revoked);
  EXPECT_EQ(phone->state().last_problem, "sync.revoked");
  EXPECT_EQ(phone->state().queued, 1U);
  EXPECT_EQ(phone->practices().size(), 1U) << "still readable";
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus()) << "it does not go on knocking";
  ASSERT_EQ(phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), 1U);
  EXPECT_FALSE(phone->state().revoked);
}

TEST_F(PairPhone, forAnotherPersonEveryByteOfTheFormerGoes) {
  const std::string other = m_clinic.addPerson(test::transtibialRight(), "Olaf");
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  ASSERT_TRUE(phone->writeMessage("mine").ok());
  ASSERT_EQ(m_clinic.desk().revokeDevice(m_clinic.desk().devices(m_person)->at(0).id()), absl::OkStatus());
  EXPECT_FALSE(phone->syncOnce().ok());
  ASSERT_EQ(phone->pair(m_clinic.ticketFor(other)), absl::OkStatus());
  EXPECT_EQ(phone->greetingName(), "Olaf");
  EXPECT_TRUE(phone->practices().empty());
  EXPECT_TRUE(phone->messages().empty());
  EXPECT_EQ(phone->state().queued, 0U);
  EXPECT_EQ(phone->exportAll().find(m_person), std::string::npos);
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(m_clinic.desk().practices(other)->empty());
}

TEST_F(PairPhone, aWrongDateIsSaidInThoseWordsAndStopsNothing) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  test::TestClock wrong;
  auto options = m_clinic.phoneOptions("phone2");
  options.clock = &wrong;
  const auto second = *HomeEngine::open(options);
  ASSERT_EQ(second->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  for (const int years : {-10, 10}) {
    wrong.setWall(m_clinic.clock().wall() + absl::Hours(24 * 365) * years);
    EXPECT_EQ(second->closePractice(test::samplePractice(second->newId(), m_person)), absl::OkStatus());
    EXPECT_EQ(second->syncOnce(), absl::OkStatus());
    EXPECT_EQ(second->state().last_problem, "sync.wrong-date");
    EXPECT_EQ(second->state().queued, 0U);
    EXPECT_EQ(second->state().last_hub_time, m_clinic.clock().wall());
  }
  wrong.setWall(m_clinic.clock().wall() + absl::Minutes(20));
  EXPECT_EQ(second->syncOnce(), absl::OkStatus());
  EXPECT_EQ(second->state().last_problem, "");
  EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), 2U);
}

}  // namespace
}  // namespace newel
