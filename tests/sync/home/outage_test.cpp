// A hub that was away long enough for the connection to have failed for good: the first call after it is back
// must get through, from the phone and from the desk. gRPC alone would not manage (see awaitConnection()).
#include <gtest/gtest.h>

#include <chrono>
#include <string>
#include <thread>

#include "core/time/local_day.h"
#include "sync/home/grpc_hub_link.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class Outage : public testing::Test {
 protected:
  // Away until every call failed at once for some seconds, then back under the same address.
  template <typename Call>
  void beAway(Call&& call) {
    const std::string address = m_clinic.address();
    const int port = std::stoi(address.substr(address.rfind(':') + 1));
    m_clinic.stopHub();
    const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(7);
    while (std::chrono::steady_clock::now() < until) {
      EXPECT_FALSE(call());
      std::this_thread::sleep_for(std::chrono::milliseconds(500));
    }
    m_clinic.startHub(port);
  }

  test::TestClinic m_clinic;
};

TEST_F(Outage, thePhonesFirstCallAfterItGetsThrough) {
  const std::string person = m_clinic.addPerson(test::transfemoralLeft());
  const auto network = makeGrpcHubNetwork();
  const PairingTicket ticket = m_clinic.ticketFor(person);
  v1::PairRequest request;
  request.set_code(ticket.code);
  request.set_device_name("phone");
  request.set_app_version("0.1.0");
  *request.mutable_device_time() = toTimestamp(m_clinic.clock().wall());
  const auto paired = network->pair(ticket, request);
  ASSERT_TRUE(paired.ok()) << paired.status();
  const auto link = network->connect(paired->hub);
  v1::FetchRequest fetch;
  fetch.set_limit(10);
  ASSERT_TRUE(link->fetch(fetch).ok());
  beAway([&] { return link->fetch(fetch).ok(); });
  const auto reply = link->fetch(fetch);
  EXPECT_TRUE(reply.ok()) << reply.status();
}

TEST_F(Outage, theDesksFirstCallAfterItGetsThrough) {
  m_clinic.addPerson(test::transfemoralLeft());
  const auto desk = m_clinic.newDesk();
  ASSERT_TRUE(desk->signIn(test::kUser, test::kPassword).ok());
  ASSERT_TRUE(desk->caseload().ok());
  beAway([&] { return desk->caseload().ok(); });
  const auto rows = desk->caseload();
  EXPECT_TRUE(rows.ok()) << rows.status();
}

}  // namespace
}  // namespace newel
