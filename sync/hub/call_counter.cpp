#include "sync/hub/call_counter.h"

#include <string>

namespace newel {
namespace {

using grpc::experimental::InterceptionHookPoints;
using grpc::experimental::InterceptorBatchMethods;
using grpc::experimental::ServerRpcInfo;

constexpr char kOurs[] = "/newel.v1.";

class OneCall : public grpc::experimental::Interceptor {
 public:
  OneCall(const ServerRpcInfo& info, Metrics* metrics, const Clock* clock)
      : m_metrics(metrics), m_clock(clock), m_begun(clock->elapsed()) {
    // "/newel.v1.HomeService/Offer"; gRPC has matched it with a method that is served.
    const std::string path = info.method();
    const std::size_t slash = path.rfind('/');
    if (path.rfind(kOurs, 0) != 0 || slash < sizeof(kOurs) - 1) return;
    m_service = path.substr(sizeof(kOurs) - 1, slash - (sizeof(kOurs) - 1));
    m_method = path.substr(slash + 1);
    m_stream = info.type() != ServerRpcInfo::Type::UNARY;
  }

  void Intercept(InterceptorBatchMethods* methods) override {
    if (!m_service.empty() && methods->QueryInterceptionHookPoint(InterceptionHookPoints::PRE_SEND_STATUS)) {
      m_metrics->called(m_service, m_method, methods->GetSendStatus().error_code());
      if (!m_stream) m_metrics->took(m_service, m_clock->elapsed() - m_begun);
    }
    methods->Proceed();
  }

 private:
  Metrics* m_metrics;
  const Clock* m_clock;
  const absl::Duration m_begun;
  std::string m_service;
  std::string m_method;
  bool m_stream = false;
};

class Factory : public grpc::experimental::ServerInterceptorFactoryInterface {
 public:
  Factory(Metrics* metrics, const Clock* clock) : m_metrics(metrics), m_clock(clock) {}
  grpc::experimental::Interceptor* CreateServerInterceptor(ServerRpcInfo* info) override {
    return new OneCall(*info, m_metrics, m_clock);  // gRPC's to delete
  }

 private:
  Metrics* m_metrics;
  const Clock* m_clock;
};

}  // namespace

std::vector<std::unique_ptr<grpc::experimental::ServerInterceptorFactoryInterface>> callCounter(
    Metrics* metrics, const Clock* clock) {
  std::vector<std::unique_ptr<grpc::experimental::ServerInterceptorFactoryInterface>> list;
  list.push_back(std::make_unique<Factory>(metrics, clock));
  return list;
}

}  // namespace newel
