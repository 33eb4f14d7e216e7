// What the hub counts about itself, as OpenMetrics text. Numbers only: no id, no name, nothing about anybody.
#pragma once

#include <absl/time/time.h>

#include <array>
#include <cstdint>
#include <map>
#include <mutex>
#include <string>
#include <utility>

namespace newel {

// Thread-safe.
class Metrics {
 public:
  // A call has ended with `code` (absl::StatusCode). The names ("HomeService", "Offer") have to come from a
  // closed list, so that nobody from outside makes new rows.
  void called(const std::string& service, const std::string& method, int code);
  // How long a call took that is no stream.
  void took(const std::string& service, absl::Duration duration);

  // OpenMetrics 1.0.0, "application/openmetrics-text". `streams`: how many are open now; `uptime`: since the
  // hub was opened.
  std::string text(std::size_t streams, absl::Duration uptime) const;

 private:
  struct Key {
    std::string service;
    std::string method;
    int code = 0;
    // clang-tidy takes the compiler's own comparison for a null pointer.
    auto operator<=>(const Key&) const = default;  // NOLINT(modernize-use-nullptr)
  };
  static constexpr std::size_t kBuckets = 7;
  struct Times {
    std::array<std::uint64_t, kBuckets> at_most{};  // not yet summed up
    std::uint64_t count = 0;
    double sum_s = 0;
  };

  mutable std::mutex m_mutex;
  std::map<Key, std::uint64_t> m_calls;
  std::map<std::string, Times> m_times;  // by service
};

extern const char* const kOpenMetricsType;

}  // namespace newel
