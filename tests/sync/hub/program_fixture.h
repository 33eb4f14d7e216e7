// A clinic that newel-hub itself made, on the store of the test, and ways to reach it.
#pragma once

#include <gtest/gtest.h>

#include <memory>
#include <string>

#include "sync/common/pairing_ticket.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/hub/hub_program.h"

namespace newel::test {

class ProgramClinic : public testing::Test {
 protected:
  void init() {
    const Ended made =
        runHub(place(), {"init"},
               {"--clinic-name", "Clinic (invented)", "--phone", "555 0101", "--emergency", "112"});
    ASSERT_EQ(made.code, 0) << made.err;
  }
  void addUser(const std::string& name, const std::string& role = "lead") {
    const Ended added =
        runHub(place(), {"user", "add"}, {"--name", name, "--role", role}, {{"NEWEL_PASSWORD", kPassword}});
    ASSERT_EQ(added.code, 0) << added.err;
  }
  std::string place() const { return m_place->address(); }
  std::string pin() const {
    const Ended printed = runHub(place(), {"fingerprint"});
    EXPECT_EQ(printed.code, 0) << printed.err;
    return parseFingerprint(printed.out).value_or("");
  }
  static std::unique_ptr<DeskClient> desk(const ServedHub& hub, const std::string& pin) {
    DeskClient::Options options;
    options.address = hub.address();
    options.certificate_sha256 = pin;
    auto desk = DeskClient::connect(options);
    EXPECT_TRUE(desk.ok()) << desk.status();
    return desk.ok() ? *std::move(desk) : nullptr;
  }
  std::unique_ptr<HomeEngine> phone(const std::string& name) {
    HomeEngine::Options options;
    options.folder = m_folder.path(name);
    options.clock = &m_clock;
    options.random = &m_random;
    options.app_version = "test 1";
    options.device_name = name;
    options.store_key = std::string(32, 'k');
    auto engine = HomeEngine::open(options);
    EXPECT_TRUE(engine.ok()) << engine.status();
    return *std::move(engine);
  }
  static std::string addPerson(DeskClient& desk, const v1::Person& person, const std::string& given_name) {
    v1::PutPersonRequest request;
    *request.mutable_person() = person;
    request.mutable_identity()->set_person_id(person.id());
    request.mutable_identity()->set_given_name(given_name);
    request.mutable_identity()->set_family_name("Invented");
    EXPECT_EQ(desk.putPerson(request).status(), absl::OkStatus());
    return person.id();
  }
  static PairingTicket ticket(DeskClient& desk, const std::string& person_id) {
    const auto reply = desk.createPairing(person_id);
    EXPECT_TRUE(reply.ok()) << reply.status();
    const auto ticket = parseTicket(reply->qr_text());
    EXPECT_TRUE(ticket.ok()) << ticket.status();
    return *ticket;
  }

  TempFolder m_folder;
  TestClock m_clock;
  RealRandom m_random;
  // SQLite's is in a folder that the hub makes for itself.
  std::unique_ptr<TestStore> m_place = testStoreMaker()(m_folder.path("hub"));
};

}  // namespace newel::test
