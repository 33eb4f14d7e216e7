// Rotation of the certificate through newel-hub itself: command, restart, phones and desks.
#include <chrono>
#include <thread>

#include "sync/common/pinned_channel.h"
#include "sync/common/text_codes.h"
#include "tests/sync/hub/program_fixture.h"

namespace newel {
namespace {

class CertificateProgram : public test::ProgramClinic {
 protected:
  void SetUp() override {
    init();
    addUser("l.lead");
    m_hub = std::make_unique<test::ServedHub>(place(), m_folder.path());
    m_first = pin();
    m_desk = desk(*m_hub, m_first);
    ASSERT_TRUE(m_desk && m_desk->signIn("l.lead", test::kPassword).ok());
    m_person = addPerson(*m_desk, test::transfemoralLeft(), "Tilda");
  }
  std::unique_ptr<HomeEngine> pairedPhone(const std::string& name) {
    auto engine = phone(name);
    EXPECT_EQ(engine->pair(ticket(*m_desk, m_person)), absl::OkStatus());
    EXPECT_EQ(engine->syncOnce(), absl::OkStatus());
    return engine;
  }
  test::Ended rotate(const std::vector<std::string>& options = {}) {
    return test::runHub(place(), {"certificate", "rotate"}, options);
  }
  // The connection of before ends by itself a moment after the hub.
  static absl::Status synced(HomeEngine& phone) {
    absl::Status status;
    for (int i = 0; i < 30; ++i) {
      status = phone.syncOnce();
      if (status.ok()) return status;
      std::this_thread::sleep_for(std::chrono::milliseconds(200));
    }
    return status;
  }
  // On the same port, as its phones know it.
  void restart() {
    const int port = m_hub->port();
    EXPECT_EQ(m_hub->stop(), 0);
    m_hub = std::make_unique<test::ServedHub>(
        place(), m_folder.path(), std::vector<std::string>{"--listen", "127.0.0.1:" + std::to_string(port)});
  }

  std::unique_ptr<test::ServedHub> m_hub;
  std::string m_first;
  std::unique_ptr<DeskClient> m_desk;
  std::string m_person;
};

TEST_F(CertificateProgram, aRotationShutsOutNobodyWhoHeardOfTheBackup) {
  const auto heard = pairedPhone("heard");
  const auto away = pairedPhone("away");
  const std::vector<std::string> told = m_desk->pins();
  ASSERT_EQ(told.size(), 2U);
  ASSERT_EQ(rotate().code, 0) << rotate().err;
  EXPECT_NE(pin(), m_first);
  EXPECT_EQ(heard->syncOnce(), absl::OkStatus()) << "the old certificate still serves";
  EXPECT_EQ(heard->hubFingerprint(), shortFingerprint(m_first));
  restart();
  for (const auto& one : {heard.get(), away.get()}) {
    ASSERT_EQ(one->closePractice(test::samplePractice(one->newId(), m_person)), absl::OkStatus());
    EXPECT_EQ(synced(*one), absl::OkStatus());
    EXPECT_EQ(one->hubFingerprint(), shortFingerprint(pin()));
    EXPECT_EQ(one->state().queued, 0U);
  }
  // A desk from before knows the new one from its last sign-in, one that was told the old one only does not.
  EXPECT_EQ(told[1], pin());
  DeskClient::Options options{m_hub->address(), m_first};
  EXPECT_TRUE(absl::IsUnauthenticated(DeskClient::connect(options).status()));
  options.pins = told;
  auto again = DeskClient::connect(options);
  ASSERT_TRUE(again.ok()) << again.status();
  ASSERT_TRUE((*again)->signIn("l.lead", test::kPassword).ok());
  EXPECT_EQ((*again)->practices(m_person)->size(), 2U);
  EXPECT_EQ((*again)->pins().size(), 3U) << "in use, the next backup, and the former one in its overlap";
  // And once more: they heard of the second backup from the hub that showed the first.
  ASSERT_EQ(rotate({"--anyway"}).code, 0);
  restart();
  EXPECT_EQ(synced(*heard), absl::OkStatus());
  EXPECT_EQ(heard->hubFingerprint(), shortFingerprint(pin()));
}

TEST_F(CertificateProgram, twoRotationsWaitForPhonesThatHeardOfNone) {
  const auto away = pairedPhone("away");
  ASSERT_EQ(rotate().code, 0);
  const auto refused = rotate();
  EXPECT_EQ(refused.code, 1) << "the phone would know neither certificate";
  EXPECT_NE(refused.err.find("code: 1;"), std::string::npos) << refused.err;
  restart();
  EXPECT_EQ(synced(*away), absl::OkStatus());
}

TEST_F(CertificateProgram, afterARotationAtOnceTheFormerKeyIsBelievedNoLonger) {
  const auto one = pairedPhone("one");
  ASSERT_EQ(rotate({"--at-once"}).code, 0);
  EXPECT_EQ(one->syncOnce(), absl::OkStatus()) << "this is how it hears of it";
  const absl::Status refused = one->syncOnce();
  EXPECT_TRUE(isCertificateProblem(refused)) << refused;
  EXPECT_FALSE(one->state().revoked);
  restart();
  EXPECT_EQ(synced(*one), absl::OkStatus());
}

TEST_F(CertificateProgram, bothPinsArePrintedAndAgreeWithTheTicket) {
  const auto printed = test::runHub(place(), {"fingerprint"}, {"--with-backup"});
  const PairingTicket code = ticket(*m_desk, m_person);
  EXPECT_EQ(printed.out, toHex(code.certificate_sha256) + "\n" + toHex(code.backup_sha256) + "\n");
}

}  // namespace
}  // namespace newel
