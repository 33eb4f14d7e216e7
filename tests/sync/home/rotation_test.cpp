// Which certificates a phone believes: its clinic's, told at pairing and since, and nobody else's, however
// many authorities vouch for it.
#include <grpcpp/security/server_credentials.h>
#include <grpcpp/server.h>
#include <grpcpp/server_builder.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/pinned_channel.h"
#include "sync/home/device_store.h"
#include "sync/protocol/home_service.grpc.pb.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/made_certificate.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/home/lossy_network.h"

namespace newel {
namespace {

// Takes every call and keeps what it is given.
class Listener : public v1::HomeService::Service {
 public:
  grpc::Status Pair(grpc::ServerContext* /*context*/, const v1::PairRequest* /*request*/,
                    v1::PairReply* /*reply*/) override {
    ++calls;
    return grpc::Status::OK;
  }
  grpc::Status Offer(grpc::ServerContext* /*context*/, const v1::OfferRequest* /*request*/,
                     v1::OfferReply* /*reply*/) override {
    ++calls;
    return grpc::Status::OK;
  }
  grpc::Status Fetch(grpc::ServerContext* /*context*/, const v1::FetchRequest* /*request*/,
                     v1::FetchReply* /*reply*/) override {
    ++calls;
    return grpc::Status::OK;
  }
  std::atomic<int> calls{0};
};

class Impostor {
 public:
  explicit Impostor(const Certificate& certificate, int port = 0) {
    grpc::SslServerCredentialsOptions tls;
    tls.pem_key_cert_pairs.push_back({certificate.key_pem, certificate.certificate_pem});
    grpc::ServerBuilder builder;
    builder.AddListeningPort("127.0.0.1:" + std::to_string(port), grpc::SslServerCredentials(tls), &m_port);
    builder.RegisterService(&listener);
    m_server = builder.BuildAndStart();
    EXPECT_TRUE(m_server);
  }
  ~Impostor() { m_server->Shutdown(std::chrono::system_clock::now()); }
  Impostor(const Impostor&) = delete;
  Impostor& operator=(const Impostor&) = delete;
  int port() const { return m_port; }
  std::string address() const { return "127.0.0.1:" + std::to_string(m_port); }

  Listener listener;

 private:
  int m_port = 0;
  std::unique_ptr<grpc::Server> m_server;
};

int portOf(const test::TestClinic& clinic) {
  const std::string address = clinic.address();
  return std::stoi(address.substr(address.rfind(':') + 1));
}

class CertificateRotation : public testing::Test {
 protected:
  void rotate(bool at_once = false, bool anyway = true) {
    EXPECT_EQ(
        rotateClinicCertificate(m_clinic.store(), {at_once, anyway}, m_clinic.clock(), m_clinic.random()),
        absl::OkStatus());
  }
  void restart() {
    const int port = portOf(m_clinic);
    m_clinic.stopHub();
    m_clinic.startHub(port);
  }
  // The connection of before ends by itself a moment after the hub.
  static absl::Status synced(HomeEngine& phone) {
    absl::Status status;
    for (int i = 0; i < 30; ++i) {
      status = phone.syncOnce();
      if (status.ok() || (isCertificateProblem(status) && i > 5)) return status;
      std::this_thread::sleep_for(std::chrono::milliseconds(200));
    }
    return status;
  }
  DeviceSettings kept(const std::string& name) {
    const auto options = m_clinic.phoneOptions(name);
    const auto store = DeviceStore::open(options.folder, "", options.store_key, m_clinic.random());
    EXPECT_TRUE(store.ok()) << store.status();
    return *(*store)->read(
        [](Database& database) -> absl::StatusOr<DeviceSettings> { return loadSettings(database); });
  }
  v1::SignedHubPins setOf(std::vector<std::string> hashes, std::uint64_t number, const ClinicKey& key) {
    v1::HubPins pins;
    pins.set_clinic_id(m_clinic.hub().clinic().card.clinic_id());
    pins.set_number(number);
    for (auto& hash : hashes) pins.add_certificate_sha256(std::move(hash));
    return signPins(toBytes(pins), key);
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft(), "Tilda");
};

TEST_F(CertificateRotation, theTicketCarriesBothPinsAndATypedCodeLearnsThem) {
  const PairingTicket ticket = m_clinic.ticketFor(m_person);
  EXPECT_EQ(ticket.certificate_sha256, m_clinic.hub().clinic().certificate_sha256);
  EXPECT_EQ(ticket.backup_sha256.size(), 32U);
  EXPECT_NE(ticket.backup_sha256, ticket.certificate_sha256);
  const auto reply = m_clinic.desk().createPairing(m_person);
  auto phone = m_clinic.newPhone("typed");
  ASSERT_EQ(phone->pair(*typedTicket(reply->typed_address(), reply->typed_code())), absl::OkStatus());
  phone.reset();
  EXPECT_EQ(kept("typed").hub.pins, pinsOf(ticket));
}

TEST_F(CertificateRotation, aPhoneThatWasAwayComesBackByTheBackupPin) {
  auto phone = m_clinic.pairedPhone("phone", m_person);
  rotate();
  restart();
  ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  EXPECT_EQ(synced(*phone), absl::OkStatus());
  EXPECT_EQ(phone->state().queued, 0U);
  EXPECT_EQ(phone->hubFingerprint(), shortFingerprint(m_clinic.hub().clinic().certificate_sha256));
  phone.reset();
  EXPECT_EQ(kept("phone").hub.pins.size(), 3U) << "and it was told of the next backup";
  EXPECT_EQ(synced(*m_clinic.newPhone("phone")), absl::OkStatus()) << "also after a start";
}

// Hubs that share a database are restarted one after the other: both certificates are met meanwhile.
TEST_F(CertificateRotation, theFormerCertificateIsGoodDuringTheOverlapAndNotAfterIt) {
  const Certificates before = {m_clinic.hub().clinic().certificate, {}};
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  rotate();
  restart();
  EXPECT_EQ(synced(*phone), absl::OkStatus());
  // A hub that was not restarted yet.
  const int port = portOf(m_clinic);
  m_clinic.stopHub();
  {
    const Impostor late(before.current, port);
    synced(*phone).IgnoreError();  // what it answers is no hub's; that it was spoken to is what counts
    EXPECT_GT(late.listener.calls, 0);
  }
  m_clinic.startHub(port);
  EXPECT_EQ(synced(*phone), absl::OkStatus());
  m_clinic.clock().advance(kCertificateOverlap + absl::Hours(1));
  restart();
  EXPECT_EQ(synced(*phone), absl::OkStatus());
  m_clinic.stopHub();
  const Impostor stale(before.current, port);
  EXPECT_TRUE(isCertificateProblem(synced(*phone)));
  EXPECT_EQ(stale.listener.calls, 0);
}

// A man in the middle whose certificate an authority signed that this machine trusts.
TEST_F(CertificateRotation, noAuthorityMakesAnotherCertificateOurs) {
  const Certificate authority = test::madeCertificate(-1, 365);
  const Certificate signed_by_it = test::madeCertificate(-1, 365, &authority);
  auto phone = m_clinic.pairedPhone("phone", m_person);
  PairingTicket ticket = m_clinic.ticketFor(m_person);
  ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
  phone.reset();
  const int port = portOf(m_clinic);
  m_clinic.stopHub();
  Impostor impostor(signed_by_it, port);
  // Who trusts the authority is taken in; so the certificate is as good as such certificates get.
  grpc::ClientContext context;
  setDeadline(context, absl::Seconds(10));
  v1::FetchReply reply;
  ASSERT_TRUE(v1::HomeService::NewStub(channelTo(impostor.address(), authority.certificate_pem))
                  ->Fetch(&context, v1::FetchRequest(), &reply)
                  .ok());
  impostor.listener.calls = 0;
  phone = m_clinic.newPhone("phone");
  EXPECT_TRUE(isCertificateProblem(phone->syncOnce()));
  EXPECT_EQ(phone->state().queued, 1U);
  EXPECT_TRUE(isCertificateProblem(m_clinic.newPhone("new")->pair(ticket)));
  DeskClient::Options desk{impostor.address(), ticket.certificate_sha256};
  EXPECT_TRUE(absl::IsUnauthenticated(DeskClient::connect(desk).status()));
  desk.pins = pinsOf(ticket);
  EXPECT_TRUE(absl::IsUnauthenticated(DeskClient::connect(desk).status()));
  EXPECT_EQ(impostor.listener.calls, 0) << "neither token nor code was spoken";
}

// Ours never expires (certificate.h); one that a clinic put in its place may.
TEST_F(CertificateRotation, anExpiredCertificateIsRefusedAlsoWhenItIsPinned) {
  for (const auto& [from, to] : {std::pair(-30, -1), std::pair(1, 30)}) {
    const Certificate certificate = test::madeCertificate(from, to);
    const Impostor hub(certificate);
    const auto pinned =
        connectPinned(hub.address(), {*fingerprintOf(certificate.certificate_pem)}, absl::Seconds(10));
    ASSERT_TRUE(pinned.ok()) << pinned.status();
    grpc::ClientContext context;
    setDeadline(context, absl::Seconds(10));
    v1::FetchReply reply;
    const absl::Status status =
        fromCall(v1::HomeService::NewStub(pinned->channel)->Fetch(&context, v1::FetchRequest(), &reply));
    EXPECT_TRUE(isCertificateProblem(status)) << status;
    const auto desk =
        DeskClient::connect({hub.address(), *fingerprintOf(certificate.certificate_pem), nullptr});
    ASSERT_TRUE(desk.ok()) << desk.status();
    EXPECT_TRUE(isCertificateProblem((*desk)->signIn(test::kUser, test::kPassword).status()));
    EXPECT_EQ(hub.listener.calls, 0);
  }
}

// Who has the key of the certificate can stand in the middle until it is changed, but cannot stay there.
TEST_F(CertificateRotation, onlyTheClinicsKeyNamesCertificates) {
  const auto options = m_clinic.phoneOptions("phone");
  test::LossyNetwork network;
  auto mine = options;
  mine.network = &network;
  const ClinicKey& ours = m_clinic.hub().clinic().key;
  const ClinicKey other = makeClinicKey(m_clinic.random());
  const std::string shown = m_clinic.hub().clinic().certificate_sha256;
  const std::string planted(32, 'p');
  auto phone = *HomeEngine::open(mine);
  ASSERT_EQ(phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
  phone.reset();
  const DeviceSettings before = kept("phone");
  const std::uint64_t next = before.pins_number + 1;
  v1::SignedHubPins changed = setOf({shown, planted}, next, ours);
  changed.mutable_content()->back() ^= 1;
  v1::SignedHubPins renamed = setOf({shown, planted}, next, other);
  renamed.set_key_id(ours.id);
  for (const auto& bad : {setOf({shown, planted}, next, other), renamed, changed, v1::SignedHubPins(),
                          setOf({shown, planted}, before.pins_number, ours), setOf({}, next, ours),
                          setOf({shown, "short"}, next, ours),
                          setOf({shown, planted, planted, planted, planted}, next, ours)}) {
    network.losses.spoil_fetch = [&](v1::FetchReply& reply) { *reply.mutable_pins() = bad; };
    EXPECT_EQ((*HomeEngine::open(mine))->syncOnce(), absl::OkStatus());
    EXPECT_EQ(kept("phone").hub.pins, before.hub.pins);
  }
  network.losses.spoil_fetch = [&](v1::FetchReply& reply) {
    *reply.mutable_pins() = setOf({shown, planted}, next, ours);
  };
  EXPECT_EQ((*HomeEngine::open(mine))->syncOnce(), absl::OkStatus());
  EXPECT_EQ(kept("phone").hub.pins, (std::vector<std::string>{shown, planted}));
}

// Stores of before the backup: the phone has the certificate alone, the hub makes a backup when it is opened.
TEST_F(CertificateRotation, storesOfTheVersionBeforeGetTheirBackup) {
  auto phone = m_clinic.pairedPhone("phone", m_person);
  phone.reset();
  {
    const auto options = m_clinic.phoneOptions("phone");
    const auto store = *DeviceStore::open(options.folder, "", options.store_key, m_clinic.random());
    ASSERT_EQ(store->write([](Database& database) {
      database.exec("DELETE FROM setting WHERE name IN ('pins', 'pins_number')");
      return absl::OkStatus();
    }),
              absl::OkStatus());
  }
  ASSERT_EQ(m_clinic.store().write([](HubTransaction& transaction) {
    for (const char* name : {"backup_certificate", "backup_certificate_key", "pins"})
      transaction.putSetting(name, "");
    return absl::OkStatus();
  }),
            absl::OkStatus());
  restart();
  EXPECT_EQ(synced(*m_clinic.newPhone("phone")), absl::OkStatus());
  EXPECT_EQ(kept("phone").hub.pins.size(), 2U);
  rotate(false, false);
  restart();
  EXPECT_EQ(synced(*m_clinic.newPhone("phone")), absl::OkStatus());
}

}  // namespace
}  // namespace newel
