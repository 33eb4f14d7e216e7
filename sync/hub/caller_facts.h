// What a call says about who makes it.
#pragma once

#include <grpcpp/impl/codegen/server_context.h>

#include <string>

namespace newel {

// The token of "authorization: Bearer <token>"; empty when there is none.
std::string bearerOf(const grpc::ServerContextBase& context);
// The peer's address without its port, for throttling.
std::string peerOf(const grpc::ServerContextBase& context);

}  // namespace newel
