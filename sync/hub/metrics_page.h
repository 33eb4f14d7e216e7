// The page that a collector on the same machine reads: GET /metrics, plain HTTP, loopback only.
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <memory>
#include <string>

namespace newel {

class MetricsPage {
 public:
  // Serves `text` of the moment on 127.0.0.1, from a thread of its own. `port` 0: any free one. kUnavailable:
  // the port is taken.
  static absl::StatusOr<std::unique_ptr<MetricsPage>> start(int port, std::function<std::string()> text);
  ~MetricsPage();

  int port() const;

 private:
  class Impl;
  explicit MetricsPage(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> m_impl;
};

}  // namespace newel
