// What a call says about who makes it.
#pragma once

#include <absl/status/status.h>
#include <grpcpp/impl/codegen/server_context.h>

#include <map>
#include <string>

namespace newel {

// The token of "authorization: Bearer <token>"; empty when there is none.
std::string bearerOf(const grpc::ServerContextBase& context);
// The peer's address without its port, for throttling.
std::string peerOf(const grpc::ServerContextBase& context);

// Notes on the call, for the hub's log, whose account or device makes it; takeWho() takes the note off again
// before anything is sent. Empty: nobody known.
void noteWho(grpc::ServerContextBase& context, const std::string& id);
std::string takeWho(std::multimap<std::string, std::string>& trailing_metadata);

// A refusal that knows whom it refused. It never travels: toGrpc() leaves it behind.
absl::Status refusedFor(const std::string& id, absl::Status status);
std::string whoOf(const absl::Status& status);

}  // namespace newel
