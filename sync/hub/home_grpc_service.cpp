#include "sync/hub/home_grpc_service.h"

#include <atomic>
#include <utility>

#include "sync/common/grpc_status.h"
#include "sync/hub/caller_facts.h"
#include "sync/hub/stream_reactor.h"

namespace newel {
namespace {

template <typename Reply>
grpc::Status answer(absl::StatusOr<Reply> result, Reply* reply) {
  if (!result.ok()) return toGrpc(result.status());
  *reply = *std::move(result);
  return grpc::Status::OK;
}

}  // namespace

grpc::Status HomeGrpcService::Pair(grpc::ServerContext* context, const v1::PairRequest* request,
                                   v1::PairReply* reply) {
  return answer(m_hub->phones().pair(*request, peerOf(*context)), reply);
}

grpc::Status HomeGrpcService::Offer(grpc::ServerContext* context, const v1::OfferRequest* request,
                                    v1::OfferReply* reply) {
  const auto caller = m_hub->phones().authenticate(bearerOf(*context), request->app_version());
  if (!caller.ok()) return toGrpc(caller.status());
  return answer(m_hub->phones().offer(*caller, *request), reply);
}

grpc::Status HomeGrpcService::Fetch(grpc::ServerContext* context, const v1::FetchRequest* request,
                                    v1::FetchReply* reply) {
  const auto caller = m_hub->phones().authenticate(bearerOf(*context), "");
  if (!caller.ok()) return toGrpc(caller.status());
  return answer(m_hub->phones().fetch(*caller, *request), reply);
}

grpc::Status HomeGrpcService::FetchMedia(grpc::ServerContext* context, const v1::FetchMediaRequest* request,
                                         v1::MediaPart* reply) {
  const auto caller = m_hub->phones().authenticate(bearerOf(*context), "");
  if (!caller.ok()) return toGrpc(caller.status());
  return answer(m_hub->media().fetch(*caller, *request), reply);
}

grpc::ServerWriteReactor<v1::Nudge>* HomeGrpcService::Listen(grpc::CallbackServerContext* context,
                                                             const v1::ListenRequest* request) {
  // Shared with the end of the stream. gRPC ends none before this function has returned it.
  const auto number = std::make_shared<std::atomic<int>>(0);
  const auto stream =
      StreamReactor<v1::Nudge>::make([this, number] { m_hub->board().leave(number->load()); });
  const auto caller = m_hub->phones().authenticate(bearerOf(*context), request->app_version());
  if (!caller.ok()) {
    stream->close(caller.status());
    return stream.get();
  }
  const auto joined = m_hub->phones().listen(*caller, stream);
  if (joined.ok()) {
    number->store(*joined);
  } else {
    stream->close(joined.status());
  }
  return stream.get();
}

}  // namespace newel
