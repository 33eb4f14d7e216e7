// The hub on the network: gRPC over TLS with the clinic's certificate, both services on one port.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>

#include "sync/hub/hub.h"
#include "sync/hub/hub_log.h"

namespace newel {

class HubServer {
 public:
  struct Options {
    std::string listen = "127.0.0.1:0";  // host:port; port 0: any free one
    std::string phone_host;              // what pairing codes say; empty: the listening host
    int metrics_port = -1;               // on 127.0.0.1; 0: any free one; -1: no metrics
    HubLog* log = nullptr;               // outlives the server; nullptr: nothing is logged
    bool keep_digests = true;            // makes what is due of the attention list (digest_keeper.h)
  };
  // Serves `hub` (which outlives this) from threads of its own, with gRPC's health service
  // (grpc.health.v1.Health) beside it. kUnavailable: the address is taken or not ours.
  static absl::StatusOr<std::unique_ptr<HubServer>> start(Hub* hub, const Options& options);
  ~HubServer();  // stop()

  int port() const;
  int metricsPort() const;  // -1: none
  // Drains: says that it is not serving any more, closes every stream, takes no new call, lets calls under
  // way finish for up to five seconds, and returns as soon as they have. Again does nothing.
  void stop();

 private:
  class Impl;
  explicit HubServer(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> m_impl;
};

}  // namespace newel
