// Metrics, health and the end of serving, from outside: an HTTP client, a plain gRPC client, a real call
// under way.
#include "sync/hub/metrics.h"

#include <grpcpp/client_context.h>
#include <grpcpp/generic/generic_stub.h>
#include <gtest/gtest.h>
#include <httplib.h>

#include <chrono>
#include <future>
#include <regex>
#include <sstream>
#include <thread>

#include "sync/common/pinned_channel.h"
#include "sync/hub/metrics_page.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

// OpenMetrics 1.0.0, "Text Format": names, labels, a number; each sample after its TYPE; EOF at the end.
void expectOpenMetrics(const std::string& text) {
  static const std::regex kSample(
      R"re(([a-z_]+)(\{[a-z]+="[^"\\\n]*"(,[a-z]+="[^"\\\n]*")*\})? [0-9.e+-]+)re");
  static const std::regex kTypeLine(R"(# TYPE ([a-z_]+) (counter|gauge|histogram))");
  std::istringstream lines(text);
  std::string family;
  std::string last;
  for (std::string line; std::getline(lines, line); last = line) {
    std::smatch match;
    if (std::regex_match(line, match, kTypeLine)) {
      family = match[1];
    } else if (line.rfind("# ", 0) != 0) {
      ASSERT_TRUE(std::regex_match(line, match, kSample)) << line;
      EXPECT_EQ(match[1].str().rfind(family, 0), 0U) << line << " under " << family;
    }
  }
  EXPECT_EQ(last, "# EOF");
  EXPECT_EQ(text.back(), '\n');
}

TEST(MetricsText, countsCallsByMethodAndCode) {
  Metrics metrics;
  metrics.called("HomeService", "Offer", 0);
  metrics.called("HomeService", "Offer", 0);
  metrics.called("HomeService", "Offer", 16);
  metrics.took("HomeService", absl::Milliseconds(7));
  metrics.took("HomeService", absl::Seconds(60));
  const std::string text = metrics.text(3, absl::Seconds(90));
  expectOpenMetrics(text);
  for (const char* line :
       {"newel_hub_calls_total{service=\"HomeService\",method=\"Offer\",code=\"OK\"} 2\n",
        "newel_hub_calls_total{service=\"HomeService\",method=\"Offer\",code=\"UNAUTHENTICATED\"} 1\n",
        "newel_hub_call_seconds_bucket{service=\"HomeService\",le=\"0.005\"} 0\n",
        "newel_hub_call_seconds_bucket{service=\"HomeService\",le=\"0.01\"} 1\n",
        "newel_hub_call_seconds_bucket{service=\"HomeService\",le=\"5.0\"} 1\n",
        "newel_hub_call_seconds_bucket{service=\"HomeService\",le=\"+Inf\"} 2\n",
        "newel_hub_call_seconds_count{service=\"HomeService\"} 2\n", "newel_hub_open_streams 3\n",
        "newel_hub_uptime_seconds 90\n"}) {
    EXPECT_NE(text.find(line), std::string::npos) << line << "is not in\n" << text;
  }
}

class ServedHub : public testing::Test {
 protected:
  // A second server over the same hub, with metrics.
  ServedHub() {
    auto server = HubServer::start(&m_clinic.hub(), {"127.0.0.1:0", "127.0.0.1", 0});
    EXPECT_TRUE(server.ok()) << server.status();
    m_server = *std::move(server);
    m_desk = connected();
  }
  std::string address() const { return "127.0.0.1:" + std::to_string(m_server->port()); }
  std::unique_ptr<DeskClient> connected() {
    DeskClient::Options options;
    options.address = address();
    options.certificate_sha256 = m_clinic.hub().clinic().certificate_sha256;
    auto desk = DeskClient::connect(options);
    EXPECT_TRUE(desk.ok()) << desk.status();
    return *std::move(desk);
  }
  std::string page() {
    httplib::Client client("127.0.0.1", m_server->metricsPort());
    const auto answer = client.Get("/metrics");
    EXPECT_TRUE(answer && answer->status == 200);
    if (!answer) return "";
    EXPECT_EQ(answer->get_header_value("Content-Type"), kOpenMetricsType);
    return answer->body;
  }

  test::TestClinic m_clinic;
  std::unique_ptr<HubServer> m_server;
  std::unique_ptr<DeskClient> m_desk;
};

TEST_F(ServedHub, countsWhatHappenedAndNamesNobody) {
  ASSERT_TRUE(m_desk->signIn(test::kUser, test::kPassword).ok());
  const std::string person = m_clinic.addPerson(test::transfemoralLeft(), "Ottilie");
  EXPECT_TRUE(m_desk->person(person).ok());
  EXPECT_TRUE(absl::IsNotFound(m_desk->person(test::idOf(99)).status()));
  EXPECT_TRUE(absl::IsUnauthenticated(connected()->caseload().status()));
  const std::string text = page();
  expectOpenMetrics(text);
  for (const char* line : {"method=\"SignIn\",code=\"OK\"} 1\n", "method=\"GetPerson\",code=\"OK\"} 1\n",
                           "method=\"GetPerson\",code=\"NOT_FOUND\"} 1\n",
                           "method=\"ListCaseload\",code=\"UNAUTHENTICATED\"} 1\n"}) {
    EXPECT_NE(text.find(line), std::string::npos) << line << "is not in\n" << text;
  }
  for (const std::string& secret : {person, std::string(test::kUser), std::string("Ottilie")}) {
    EXPECT_EQ(text.find(secret), std::string::npos) << secret;
  }
}

TEST_F(ServedHub, streamsAreCountedWhileTheyAreOpen) {
  ASSERT_TRUE(m_desk->signIn(test::kUser, test::kPassword).ok());
  EXPECT_NE(page().find("newel_hub_open_streams 0\n"), std::string::npos);
  std::promise<void> heard;
  bool once = false;
  m_desk->watch([&](const std::string&) {
    if (!once) heard.set_value();
    once = true;
  });
  ASSERT_EQ(heard.get_future().wait_for(std::chrono::seconds(10)), std::future_status::ready);
  EXPECT_NE(page().find("newel_hub_open_streams 1\n"), std::string::npos);
  m_desk->stopWatching();
}

TEST_F(ServedHub, metricsAreOffUnlessAskedForAndOnlyGivenByTheirName) {
  EXPECT_EQ(HubServer::Options().metrics_port, -1);
  httplib::Client client("127.0.0.1", m_server->metricsPort());
  const auto other = client.Get("/");
  EXPECT_TRUE(other && other->status == 404);
  const auto taken = HubServer::start(&m_clinic.hub(), {"127.0.0.1:0", "127.0.0.1", m_server->metricsPort()});
  EXPECT_TRUE(absl::IsUnavailable(taken.status())) << taken.status();
}

// grpc.health.v1.Health/Check with an empty request: the whole server. The answer is one field, 1: SERVING.
TEST_F(ServedHub, answersTheHealthCheckWithoutASession) {
  const auto pinned =
      connectPinned(address(), {m_clinic.hub().clinic().certificate_sha256}, absl::Seconds(10));
  ASSERT_TRUE(pinned.ok()) << pinned.status();
  grpc::GenericStub stub(pinned->channel);
  grpc::ClientContext context;
  setDeadline(context, absl::Seconds(20));
  grpc::CompletionQueue queue;
  const grpc::Slice nothing;
  const grpc::ByteBuffer request(&nothing, 1);
  const auto call = stub.PrepareUnaryCall(&context, "/grpc.health.v1.Health/Check", request, &queue);
  call->StartCall();
  grpc::ByteBuffer reply;
  grpc::Status status;
  call->Finish(&reply, &status, nullptr);
  void* tag = nullptr;
  bool ok = false;
  ASSERT_TRUE(queue.Next(&tag, &ok));
  ASSERT_TRUE(status.ok()) << status.error_message();
  std::vector<grpc::Slice> slices;
  ASSERT_TRUE(reply.Dump(&slices).ok());
  std::string bytes;
  for (const auto& slice : slices) bytes.append(reinterpret_cast<const char*>(slice.begin()), slice.size());
  EXPECT_EQ(bytes, std::string("\x08\x01", 2));
}

TEST_F(ServedHub, aCallUnderWayIsFinishedAndAnOpenStreamDoesNotHoldItUp) {
  ASSERT_TRUE(m_desk->signIn(test::kUser, test::kPassword).ok());
  m_desk->watch([](const std::string&) {});
  const auto other = connected();
  // The store's one writer is kept busy, so that the sign-in is surely in the middle of it.
  std::promise<void> busy;
  std::promise<void> let_go;
  auto writer = std::async(std::launch::async, [&] {
    return m_clinic.store().write([&](HubTransaction&) {
      busy.set_value();
      let_go.get_future().wait();
      return absl::OkStatus();
    });
  });
  busy.get_future().wait();
  auto answer = std::async(std::launch::async, [&] { return other->signIn(test::kUser, test::kPassword); });
  std::this_thread::sleep_for(std::chrono::seconds(2));
  const bool under_way = answer.wait_for(std::chrono::seconds(0)) != std::future_status::ready;
  auto stopped = std::async(std::launch::async, [&] { m_server->stop(); });
  EXPECT_EQ(stopped.wait_for(std::chrono::milliseconds(500)), std::future_status::timeout)
      << "it did not wait for the call";
  const auto begun = std::chrono::steady_clock::now();
  let_go.set_value();
  const auto reply = answer.get();
  EXPECT_TRUE(under_way);
  EXPECT_TRUE(reply.ok()) << reply.status();
  stopped.get();
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(3)) << "the stream held it up";
  EXPECT_EQ(writer.get(), absl::OkStatus());
  m_desk->stopWatching();
  m_server->stop();
}

}  // namespace
}  // namespace newel
