#include "sync/hub/call_counter.h"

#include <absl/status/status.h>

#include <algorithm>
#include <iterator>
#include <string>

#include "sync/hub/caller_facts.h"

namespace newel {
namespace {

using grpc::experimental::InterceptionHookPoints;
using grpc::experimental::InterceptorBatchMethods;
using grpc::experimental::ServerRpcInfo;

constexpr char kOurs[] = "/newel.v1.";

// Calls that stand in the log when they succeed; the others are only counted. OWASP ASVS 5.0 16.3.1: sign-ins
// and what changes who may do what.
constexpr const char* kNoted[] = {"DeskService/SignIn",
                                  "DeskService/SignOut",
                                  "DeskService/BeginSecondFactor",
                                  "DeskService/ConfirmSecondFactor",
                                  "DeskService/ChangePassword",
                                  "DeskService/PutAssignment",
                                  "DeskService/BreakGlass",
                                  "DeskService/CreatePairing",
                                  "DeskService/RevokeDevice",
                                  "DeskService/PutSettings",
                                  "HomeService/Pair"};

bool isNoted(const std::string& call) {
  return std::any_of(std::begin(kNoted), std::end(kNoted), [&](const char* one) { return call == one; });
}

// ASVS 16.3.2 to 16.3.4: refusals, what should never come in, what went wrong. Empty: nothing to say.
LogLine lineFor(const std::string& call, grpc::StatusCode code, bool stream) {
  switch (code) {
    case grpc::StatusCode::OK:
      return isNoted(call) ? LogLine{LogLevel::Info, "call.done"} : LogLine();
    case grpc::StatusCode::UNAUTHENTICATED:
    case grpc::StatusCode::PERMISSION_DENIED:
    case grpc::StatusCode::RESOURCE_EXHAUSTED:
      return {LogLevel::Warning, "call.refused"};
    case grpc::StatusCode::NOT_FOUND:
      // A wrong code looks like that.
      return call == "HomeService/Pair" ? LogLine{LogLevel::Warning, "call.refused"} : LogLine();
    case grpc::StatusCode::INVALID_ARGUMENT:
    case grpc::StatusCode::OUT_OF_RANGE:
      return {LogLevel::Warning, "call.invalid"};
    case grpc::StatusCode::UNKNOWN:
    case grpc::StatusCode::INTERNAL:
    case grpc::StatusCode::DATA_LOSS:
    case grpc::StatusCode::UNIMPLEMENTED:
      return {LogLevel::Error, "call.failed"};
    case grpc::StatusCode::UNAVAILABLE:
    case grpc::StatusCode::DEADLINE_EXCEEDED:
      // Every stream ends so when the hub stops.
      return stream ? LogLine() : LogLine{LogLevel::Error, "call.failed"};
    default:
      return {};
  }
}

class OneCall : public grpc::experimental::Interceptor {
 public:
  OneCall(ServerRpcInfo& info, Metrics* metrics, HubLog* log, const Clock* clock)
      : m_metrics(metrics), m_log(log), m_clock(clock), m_begun(clock->elapsed()), m_info(&info) {
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
      const grpc::StatusCode code = methods->GetSendStatus().error_code();
      auto* trailing = methods->GetSendTrailingMetadata();
      const std::string who = trailing == nullptr ? "" : takeWho(*trailing);
      m_metrics->called(m_service, m_method, code);
      if (!m_stream) m_metrics->took(m_service, m_clock->elapsed() - m_begun);
      if (m_log != nullptr) note(code, who);
    }
    methods->Proceed();
  }

 private:
  void note(grpc::StatusCode code, const std::string& who) {
    const std::string call = m_service + "/" + m_method;
    LogLine line = lineFor(call, code, m_stream);
    if (line.event.empty()) return;
    line.call = call;
    line.who = who;
    line.from = peerOf(*m_info->server_context());
    line.outcome = absl::StatusCodeToString(static_cast<absl::StatusCode>(code));
    m_log->write(line);
  }

  Metrics* m_metrics;
  HubLog* m_log;
  const Clock* m_clock;
  const absl::Duration m_begun;
  ServerRpcInfo* m_info;  // gRPC's, alive as long as this
  std::string m_service;
  std::string m_method;
  bool m_stream = false;
};

class Factory : public grpc::experimental::ServerInterceptorFactoryInterface {
 public:
  Factory(Metrics* metrics, HubLog* log, const Clock* clock)
      : m_metrics(metrics), m_log(log), m_clock(clock) {}
  grpc::experimental::Interceptor* CreateServerInterceptor(ServerRpcInfo* info) override {
    return new OneCall(*info, m_metrics, m_log, m_clock);  // gRPC's to delete
  }

 private:
  Metrics* m_metrics;
  HubLog* m_log;
  const Clock* m_clock;
};

}  // namespace

std::vector<std::unique_ptr<grpc::experimental::ServerInterceptorFactoryInterface>> callCounter(
    Metrics* metrics, HubLog* log, const Clock* clock) {
  std::vector<std::unique_ptr<grpc::experimental::ServerInterceptorFactoryInterface>> list;
  list.push_back(std::make_unique<Factory>(metrics, log, clock));
  return list;
}

}  // namespace newel
