#include "sync/hub/caller_facts.h"

namespace newel {

std::string bearerOf(const grpc::ServerContextBase& context) {
  const std::string kScheme = "Bearer ";
  const auto& metadata = context.client_metadata();
  const auto found = metadata.find("authorization");
  if (found == metadata.end()) return "";
  const std::string value(found->second.data(), found->second.size());
  return value.rfind(kScheme, 0) == 0 ? value.substr(kScheme.size()) : "";
}

std::string peerOf(const grpc::ServerContextBase& context) {
  const std::string peer = context.peer();  // "ipv4:127.0.0.1:54321"
  return peer.substr(0, peer.rfind(':'));
}

}  // namespace newel
