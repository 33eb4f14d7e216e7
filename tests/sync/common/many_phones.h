// Many phones of many persons at one hub, over its network as real phones come: TLS, the pinned certificate,
// a token each. They are paired behind the hub's back, because two hundred codes would be two hundred Argon2.
#pragma once

#include <grpcpp/channel.h>

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "sync/hub/hub.h"
#include "sync/protocol/home_service.grpc.pb.h"

namespace newel::test {

struct NetPhone {
  std::string device_id;
  std::string person_id;
  std::string token;
  std::shared_ptr<grpc::Channel> channel;
  std::unique_ptr<v1::HomeService::Stub> stub;

  // Brings the channel up: the handshake, nothing else.
  bool connect() const;
  absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) const;
  absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) const;
  // As every call of a phone begins.
  void prepare(grpc::ClientContext& context) const;
};

// `count` phones with a person each, known to `hub` and not connected yet. Throws when the store refuses.
std::vector<NetPhone> manyPhones(Hub& hub, const std::string& address, int count);

}  // namespace newel::test
