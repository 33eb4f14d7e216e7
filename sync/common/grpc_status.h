// Statuses across the wire: the codes are the same on both sides (Abseil took gRPC's).
#pragma once

#include <absl/status/status.h>
#include <grpcpp/support/status.h>

namespace newel {

absl::Status fromGrpc(const grpc::Status& status);
// The message is cut at 2000 bytes: it travels in a header.
grpc::Status toGrpc(const absl::Status& status);

}  // namespace newel
