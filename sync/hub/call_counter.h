// Counts every call to the two services, streams and refused ones too, and writes into the hub's log what has
// to stand there, from gRPC's own side, so that no call can be forgotten.
#pragma once

#include <grpcpp/support/server_interceptor.h>

#include <memory>
#include <vector>

#include "core/time/clock.h"
#include "sync/hub/hub_log.h"
#include "sync/hub/metrics.h"

namespace newel {

// To be handed to the server's builder. All outlive the server; `log` may be nullptr.
std::vector<std::unique_ptr<grpc::experimental::ServerInterceptorFactoryInterface>> callCounter(
    Metrics* metrics, HubLog* log, const Clock* clock);

}  // namespace newel
