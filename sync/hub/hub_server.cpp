#include "sync/hub/hub_server.h"

#include <grpc/support/time.h>
#include <grpcpp/health_check_service_interface.h>
#include <grpcpp/resource_quota.h>
#include <grpcpp/security/server_credentials.h>
#include <grpcpp/server.h>
#include <grpcpp/server_builder.h>

#include <condition_variable>
#include <mutex>
#include <thread>
#include <utility>

#include "sync/common/limits.h"
#include "sync/hub/call_counter.h"
#include "sync/hub/desk_grpc_service.h"
#include "sync/hub/digest_keeper.h"
#include "sync/hub/home_grpc_service.h"
#include "sync/hub/metrics_page.h"

namespace newel {
namespace {

constexpr int kMostThreads = 64;
// Longer than any call but a stream takes; ours, no source.
constexpr int kDrainMs = 5000;
// Phones ping every 20 s while a stream is open (pinned_channel.cpp); more often is refused.
constexpr int kLeastPingMs = 10000;
constexpr int kKeepaliveMs = 30000;
constexpr int kKeepaliveTimeoutMs = 10000;

std::string hostOf(const std::string& address) { return address.substr(0, address.rfind(':')); }

}  // namespace

class HubServer::Impl {
 public:
  explicit Impl(Hub* hub) : m_hub(hub), m_clock(hub->context().clock), m_phones(hub), m_desks(hub) {}
  ~Impl() { stop(); }

  absl::Status start(const Options& options) {
    const Certificate& certificate = m_hub->clinic().certificate;
    grpc::SslServerCredentialsOptions tls;
    tls.pem_key_cert_pairs.push_back({certificate.key_pem, certificate.certificate_pem});
    grpc::ResourceQuota quota("hub");
    quota.SetMaxThreads(kMostThreads);
    grpc::ServerBuilder builder;
    builder.SetResourceQuota(quota);
    builder.SetMaxReceiveMessageSize(static_cast<int>(kMostMessageBytes));
    builder.AddChannelArgument(GRPC_ARG_ALLOW_REUSEPORT, 0);
    builder.AddChannelArgument(GRPC_ARG_KEEPALIVE_TIME_MS, kKeepaliveMs);
    builder.AddChannelArgument(GRPC_ARG_KEEPALIVE_TIMEOUT_MS, kKeepaliveTimeoutMs);
    builder.AddChannelArgument(GRPC_ARG_HTTP2_MIN_RECV_PING_INTERVAL_WITHOUT_DATA_MS, kLeastPingMs);
    builder.AddListeningPort(options.listen, grpc::SslServerCredentials(tls), &m_port);
    grpc::EnableDefaultHealthCheckService(true);
    builder.experimental().SetInterceptorCreators(callCounter(&m_metrics, options.log, m_clock));
    builder.RegisterService(&m_phones);
    builder.RegisterService(&m_desks);
    m_server = builder.BuildAndStart();
    if (!m_server || m_port == 0) return absl::UnavailableError("cannot listen on " + options.listen);
    m_hub->pairings().setPhoneAddress(
        options.phone_host.empty() ? hostOf(options.listen) : options.phone_host, m_port);
    m_ticker = std::thread([this] { tick(); });
    if (options.keep_digests) m_digests = std::make_unique<DigestRounds>(&m_hub->digests(), m_clock);
    return options.metrics_port < 0 ? absl::OkStatus() : startMetrics(options.metrics_port);
  }

  void stop() {
    {
      const std::lock_guard lock(m_mutex);
      if (m_stop) return;
      m_stop = true;
    }
    m_condition.notify_all();
    if (m_ticker.joinable()) m_ticker.join();
    m_digests.reset();
    if (!m_server) return;
    if (auto* health = m_server->GetHealthCheckService(); health != nullptr) health->SetServingStatus(false);
    m_hub->board().closeAll(absl::UnavailableError("the hub is stopping"));
    m_server->Shutdown(gpr_time_from_millis(kDrainMs, GPR_TIMESPAN));
    m_phones.drain();
    m_server->Wait();
    m_page.reset();
  }

  int port() const { return m_port; }
  int metricsPort() const { return m_page ? m_page->port() : -1; }

 private:
  absl::Status startMetrics(int port) {
    auto page = MetricsPage::start(port, [this, begun = m_clock->elapsed()] {
      return m_metrics.text(m_hub->board().openStreams(), m_clock->elapsed() - begun);
    });
    if (!page.ok()) return page.status();
    m_page = *std::move(page);
    return absl::OkStatus();
  }
  void tick() {
    std::unique_lock lock(m_mutex);
    while (!m_condition.wait_for(lock, absl::ToChronoMilliseconds(kStillHere), [this] { return m_stop; })) {
      lock.unlock();
      m_hub->stillHere();
      lock.lock();
    }
  }

  Hub* m_hub;
  const Clock* m_clock;
  Metrics m_metrics;
  HomeGrpcService m_phones;
  DeskGrpcService m_desks;
  int m_port = 0;
  std::unique_ptr<grpc::Server> m_server;
  std::mutex m_mutex;
  std::condition_variable m_condition;
  bool m_stop = false;
  std::thread m_ticker;
  std::unique_ptr<DigestRounds> m_digests;
  std::unique_ptr<MetricsPage> m_page;
};

HubServer::HubServer(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
HubServer::~HubServer() = default;

absl::StatusOr<std::unique_ptr<HubServer>> HubServer::start(Hub* hub, const Options& options) {
  auto impl = std::make_unique<Impl>(hub);
  const absl::Status started = impl->start(options);
  if (!started.ok()) return started;
  return std::unique_ptr<HubServer>(new HubServer(std::move(impl)));
}

int HubServer::port() const { return m_impl->port(); }
int HubServer::metricsPort() const { return m_impl->metricsPort(); }
void HubServer::stop() { m_impl->stop(); }

}  // namespace newel
