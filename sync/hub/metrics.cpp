#include "sync/hub/metrics.h"

#include <absl/status/status.h>

#include <cstdio>

namespace newel {
namespace {

// Seconds. Ours, no source: from a row read to an Argon2id sign-in on a busy machine.
constexpr std::array<double, 7> kBounds = {0.005, 0.01, 0.05, 0.1, 0.5, 1, 5};
// The same as OpenMetrics wants floats written, "Considerations: Canonical Numbers".
constexpr std::array<const char*, 7> kBoundWords = {"0.005", "0.01", "0.05", "0.1", "0.5", "1.0", "5.0"};

std::string number(double value) {
  char text[32] = {};
  std::snprintf(text, sizeof(text), "%.9g", value);
  return text;
}

std::string family(const std::string& name, const std::string& type, const std::string& unit,
                   const std::string& help) {
  return "# TYPE " + name + " " + type + "\n" + (unit.empty() ? "" : "# UNIT " + name + " " + unit + "\n") +
         "# HELP " + name + " " + help + "\n";
}

std::string codeName(int code) { return absl::StatusCodeToString(static_cast<absl::StatusCode>(code)); }

}  // namespace

const char* const kOpenMetricsType = "application/openmetrics-text; version=1.0.0; charset=utf-8";

void Metrics::called(const std::string& service, const std::string& method, int code) {
  const std::lock_guard lock(m_mutex);
  ++m_calls[{service, method, code}];
}

void Metrics::took(const std::string& service, absl::Duration duration) {
  const double seconds = absl::ToDoubleSeconds(duration);
  const std::lock_guard lock(m_mutex);
  Times& times = m_times[service];
  ++times.count;
  times.sum_s += seconds;
  for (std::size_t i = 0; i < kBuckets; ++i) {
    if (seconds > kBounds.at(i)) continue;
    ++times.at_most.at(i);
    break;
  }
}

std::string Metrics::text(std::size_t streams, absl::Duration uptime) const {
  const std::lock_guard lock(m_mutex);
  std::string text = family("newel_hub_calls", "counter", "", "Calls that have ended.");
  for (const auto& [key, count] : m_calls) {
    text += "newel_hub_calls_total{service=\"" + key.service + "\",method=\"" + key.method + "\",code=\"" +
            codeName(key.code) + "\"} " + std::to_string(count) + "\n";
  }
  text += family("newel_hub_call_seconds", "histogram", "seconds", "How long calls took, streams left out.");
  for (const auto& [service, times] : m_times) {
    std::uint64_t sum = 0;
    for (std::size_t i = 0; i < kBuckets; ++i) {
      sum += times.at_most.at(i);
      text += "newel_hub_call_seconds_bucket{service=\"" + service + "\",le=\"" +
              std::string(kBoundWords.at(i)) + "\"} " + std::to_string(sum) + "\n";
    }
    text += "newel_hub_call_seconds_bucket{service=\"" + service + "\",le=\"+Inf\"} " +
            std::to_string(times.count) + "\n";
    text += "newel_hub_call_seconds_count{service=\"" + service + "\"} " + std::to_string(times.count) + "\n";
    text += "newel_hub_call_seconds_sum{service=\"" + service + "\"} " + number(times.sum_s) + "\n";
  }
  text += family("newel_hub_open_streams", "gauge", "", "Phones and desks that are listening.");
  text += "newel_hub_open_streams " + std::to_string(streams) + "\n";
  text += family("newel_hub_uptime_seconds", "gauge", "seconds", "Since the hub began to serve.");
  text += "newel_hub_uptime_seconds " + number(absl::ToDoubleSeconds(uptime)) + "\n";
  return text + "# EOF\n";
}

}  // namespace newel
