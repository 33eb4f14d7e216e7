// The phone's service over gRPC: who calls, then HomeCalls. Calls wait on threads of this service's own, so
// that however many phones upload, a desk's call and its hold order find a thread of the server free; a
// stream waits on none.
#pragma once

#include "sync/hub/call_pool.h"
#include "sync/hub/hub.h"
#include "sync/protocol/home_service.grpc.pb.h"

namespace newel {

class HomeGrpcService : public v1::HomeService::CallbackService {
 public:
  explicit HomeGrpcService(Hub* hub);

  grpc::ServerUnaryReactor* Pair(grpc::CallbackServerContext* context, const v1::PairRequest* request,
                                 v1::PairReply* reply) override;
  grpc::ServerUnaryReactor* Offer(grpc::CallbackServerContext* context, const v1::OfferRequest* request,
                                  v1::OfferReply* reply) override;
  grpc::ServerUnaryReactor* Fetch(grpc::CallbackServerContext* context, const v1::FetchRequest* request,
                                  v1::FetchReply* reply) override;
  grpc::ServerUnaryReactor* FetchMedia(grpc::CallbackServerContext* context,
                                       const v1::FetchMediaRequest* request, v1::MediaPart* reply) override;
  grpc::ServerWriteReactor<v1::Nudge>* Listen(grpc::CallbackServerContext* context,
                                              const v1::ListenRequest* request) override;

  // Returns when every call that has begun is answered.
  void drain();

 private:
  Hub* m_hub;
  // What a phone asks for never stands behind what others bring: a hold order comes that way.
  CallPool m_bringing;
  CallPool m_asking;
};

}  // namespace newel
