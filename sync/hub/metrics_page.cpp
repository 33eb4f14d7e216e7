#include "sync/hub/metrics_page.h"

#include <httplib.h>

#include <chrono>
#include <thread>
#include <utility>

#include "sync/hub/metrics.h"

namespace newel {
namespace {

constexpr char kLoopback[] = "127.0.0.1";
// A collector comes a few times a minute; a request line and headers are all it may send.
constexpr std::size_t kThreads = 2;
constexpr std::size_t kMostBody = 1024;
constexpr time_t kPatienceS = 2;

}  // namespace

class MetricsPage::Impl {
 public:
  explicit Impl(std::function<std::string()> text) {
    m_server.new_task_queue = [] { return new httplib::ThreadPool(kThreads); };
    m_server.set_payload_max_length(kMostBody);
    m_server.set_read_timeout(kPatienceS);
    m_server.set_write_timeout(kPatienceS);
    m_server.set_keep_alive_timeout(kPatienceS);
    m_server.Get("/metrics",
                 [text = std::move(text)](const httplib::Request& /*request*/, httplib::Response& response) {
                   response.set_content(text(), kOpenMetricsType);
                 });
  }
  ~Impl() {
    m_server.stop();
    if (m_thread.joinable()) m_thread.join();
  }

  absl::Status start(int port) {
    // The library would share the port, and two hubs would answer by turns. An address just left may be taken
    // again.
    m_server.set_socket_options([](socket_t socket) {
      const int yes = 1;
      setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof(yes));
    });
    m_port = port == 0 ? m_server.bind_to_any_port(kLoopback)
                       : (m_server.bind_to_port(kLoopback, port) ? port : -1);
    if (m_port <= 0) return absl::UnavailableError("metrics: cannot listen on port " + std::to_string(port));
    m_thread = std::thread([this] { m_server.listen_after_bind(); });
    // Until then stop() would not reach it.
    while (!m_server.is_running()) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    return absl::OkStatus();
  }
  int port() const { return m_port; }

 private:
  httplib::Server m_server;
  int m_port = 0;
  std::thread m_thread;
};

MetricsPage::MetricsPage(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
MetricsPage::~MetricsPage() = default;

absl::StatusOr<std::unique_ptr<MetricsPage>> MetricsPage::start(int port, std::function<std::string()> text) {
  auto impl = std::make_unique<Impl>(std::move(text));
  const absl::Status started = impl->start(port);
  if (!started.ok()) return started;
  return std::unique_ptr<MetricsPage>(new MetricsPage(std::move(impl)));
}

int MetricsPage::port() const { return m_impl->port(); }

}  // namespace newel
