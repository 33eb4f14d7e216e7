// The phone's service over gRPC: who calls, then HomeCalls. Calls run on the server's threads; the stream on
// none.
#pragma once

#include "sync/hub/hub.h"
#include "sync/protocol/home_service.grpc.pb.h"

namespace newel {

class HomeGrpcService : public v1::HomeService::WithCallbackMethod_Listen<v1::HomeService::Service> {
 public:
  explicit HomeGrpcService(Hub* hub) : m_hub(hub) {}

  grpc::Status Pair(grpc::ServerContext* context, const v1::PairRequest* request,
                    v1::PairReply* reply) override;
  grpc::Status Offer(grpc::ServerContext* context, const v1::OfferRequest* request,
                     v1::OfferReply* reply) override;
  grpc::Status Fetch(grpc::ServerContext* context, const v1::FetchRequest* request,
                     v1::FetchReply* reply) override;
  grpc::Status FetchMedia(grpc::ServerContext* context, const v1::FetchMediaRequest* request,
                          v1::MediaPart* reply) override;
  grpc::ServerWriteReactor<v1::Nudge>* Listen(grpc::CallbackServerContext* context,
                                              const v1::ListenRequest* request) override;

 private:
  Hub* m_hub;
};

}  // namespace newel
