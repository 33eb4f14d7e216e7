// The hub over gRPC and TLS, pinned to its certificate.
#pragma once

#include <memory>

#include "sync/home/hub_link.h"

namespace newel {

std::unique_ptr<HubNetwork> makeGrpcHubNetwork();

}  // namespace newel
