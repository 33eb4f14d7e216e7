#include "sync/hub/home_grpc_service.h"

#include <memory>
#include <mutex>
#include <string>
#include <utility>

#include "sync/common/grpc_status.h"
#include "sync/hub/caller_facts.h"
#include "sync/hub/stream_reactor.h"

namespace newel {
namespace {

// Ours, no source. As many bring at once as share a commit (group_commit.cpp); the requests of those that
// wait are in memory. Whoever finds no place tries again by the one retry rule.
constexpr CallPool::Limits kBringing = {32, 1024, std::size_t{64} << 20U};
constexpr CallPool::Limits kAsking = {16, 4096, std::size_t{16} << 20U};

absl::Status busy() { return absl::UnavailableError("the hub is busy; try again"); }

template <typename Reply>
grpc::Status answer(absl::StatusOr<Reply> result, Reply* reply) {
  if (!result.ok()) return toGrpc(result.status());
  *reply = *std::move(result);
  return grpc::Status::OK;
}

// Runs `work` on `pool` and finishes the call with its status. What `work` uses of the call lives until then.
template <typename Work>
grpc::ServerUnaryReactor* finishOn(CallPool& pool, grpc::CallbackServerContext* context, std::size_t bytes,
                                   Work work) {
  grpc::ServerUnaryReactor* reactor = context->DefaultReactor();
  const bool taken = pool.post(
      [reactor, context, work = std::move(work)] {
        // Who gave up while waiting sends it again: nobody is there for this answer.
        reactor->Finish(context->IsCancelled() ? grpc::Status::CANCELLED : work());
      },
      bytes);
  if (!taken) reactor->Finish(toGrpc(busy()));
  return reactor;
}

// A stream's number on the board, which may be given after the stream has ended.
class StreamPlace {
 public:
  explicit StreamPlace(NudgeBoard* board) : m_board(board) {}
  void joined(int number) {
    const std::lock_guard lock(m_mutex);
    m_number = number;
    if (m_ended) m_board->leave(number);
  }
  void ended() {
    const std::lock_guard lock(m_mutex);
    m_ended = true;
    m_board->leave(m_number);
  }

 private:
  NudgeBoard* m_board;
  std::mutex m_mutex;
  int m_number = 0;
  bool m_ended = false;
};

}  // namespace

HomeGrpcService::HomeGrpcService(Hub* hub) : m_hub(hub), m_bringing(kBringing), m_asking(kAsking) {}

void HomeGrpcService::drain() {
  m_bringing.drain();
  m_asking.drain();
}

grpc::ServerUnaryReactor* HomeGrpcService::Pair(grpc::CallbackServerContext* context,
                                                const v1::PairRequest* request, v1::PairReply* reply) {
  return finishOn(m_asking, context, request->ByteSizeLong(), [this, context, request, reply] {
    auto result = m_hub->phones().pair(*request, peerOf(*context));
    if (result.ok()) noteWho(*context, result->device_id());
    return answer(std::move(result), reply);
  });
}

grpc::ServerUnaryReactor* HomeGrpcService::Offer(grpc::CallbackServerContext* context,
                                                 const v1::OfferRequest* request, v1::OfferReply* reply) {
  return finishOn(m_bringing, context, request->ByteSizeLong(), [this, context, request, reply] {
    const auto caller = m_hub->phones().recognise(bearerOf(*context), saysOf(*request));
    noteWho(*context, caller.ok() ? caller->device_id : whoOf(caller.status()));
    if (!caller.ok()) return toGrpc(caller.status());
    return answer(m_hub->phones().offer(*caller, *request), reply);
  });
}

grpc::ServerUnaryReactor* HomeGrpcService::Fetch(grpc::CallbackServerContext* context,
                                                 const v1::FetchRequest* request, v1::FetchReply* reply) {
  return finishOn(m_asking, context, request->ByteSizeLong(), [this, context, request, reply] {
    const auto caller = m_hub->phones().authenticate(bearerOf(*context), {});
    noteWho(*context, caller.ok() ? caller->device_id : whoOf(caller.status()));
    if (!caller.ok()) return toGrpc(caller.status());
    return answer(m_hub->phones().fetch(*caller, *request), reply);
  });
}

grpc::ServerUnaryReactor* HomeGrpcService::FetchMedia(grpc::CallbackServerContext* context,
                                                      const v1::FetchMediaRequest* request,
                                                      v1::MediaPart* reply) {
  return finishOn(m_asking, context, request->ByteSizeLong(), [this, context, request, reply] {
    const auto caller = m_hub->phones().authenticate(bearerOf(*context), {});
    noteWho(*context, caller.ok() ? caller->device_id : whoOf(caller.status()));
    if (!caller.ok()) return toGrpc(caller.status());
    return answer(m_hub->media().fetch(*caller, *request), reply);
  });
}

grpc::ServerWriteReactor<v1::Nudge>* HomeGrpcService::Listen(grpc::CallbackServerContext* context,
                                                             const v1::ListenRequest* request) {
  const auto place = std::make_shared<StreamPlace>(&m_hub->board());
  const auto stream = StreamReactor<v1::Nudge>::make([place] { place->ended(); });
  // Copies: a phone that hangs up ends the call while this job may still wait.
  const bool taken = m_asking.post([this, context, place, stream, token = bearerOf(*context),
                                    says = saysOf(*request)] {
    const auto caller = m_hub->phones().authenticate(token, says);
    stream->whileOpen([&] { noteWho(*context, caller.ok() ? caller->device_id : whoOf(caller.status())); });
    const auto joined = caller.ok() ? m_hub->phones().listen(*caller, stream) : caller.status();
    if (joined.ok()) {
      place->joined(*joined);
    } else {
      stream->close(joined.status());
    }
  });
  if (!taken) stream->close(busy());
  return stream.get();
}

}  // namespace newel
