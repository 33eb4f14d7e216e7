#include "sync/hub/caller_facts.h"

namespace newel {
namespace {

constexpr char kWho[] = "newel-who";
constexpr char kWhoMark[] = "newel/who";

}  // namespace

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

void noteWho(grpc::ServerContextBase& context, const std::string& id) {
  if (!id.empty()) context.AddTrailingMetadata(kWho, id);
}

std::string takeWho(std::multimap<std::string, std::string>& trailing_metadata) {
  const auto found = trailing_metadata.find(kWho);
  if (found == trailing_metadata.end()) return "";
  std::string who = found->second;
  trailing_metadata.erase(kWho);
  return who;
}

absl::Status refusedFor(const std::string& id, absl::Status status) {
  if (!id.empty()) status.SetPayload(kWhoMark, absl::Cord(id));
  return status;
}

std::string whoOf(const absl::Status& status) {
  const auto who = status.GetPayload(kWhoMark);
  return who.has_value() ? std::string(*who) : "";
}

}  // namespace newel
