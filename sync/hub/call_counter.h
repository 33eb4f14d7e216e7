// Counts every call to the two services, streams and refused ones too, from gRPC's own side, so that no call
// can be forgotten.
#pragma once

#include <grpcpp/support/server_interceptor.h>

#include <memory>
#include <vector>

#include "core/time/clock.h"
#include "sync/hub/metrics.h"

namespace newel {

// To be handed to the server's builder. `metrics` and `clock` outlive the server.
std::vector<std::unique_ptr<grpc::experimental::ServerInterceptorFactoryInterface>> callCounter(
    Metrics* metrics, const Clock* clock);

}  // namespace newel
