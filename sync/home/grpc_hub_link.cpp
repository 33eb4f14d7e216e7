#include "sync/home/grpc_hub_link.h"

#include <grpcpp/client_context.h>

#include <mutex>
#include <set>
#include <thread>

#include "sync/common/grpc_status.h"
#include "sync/common/limits.h"
#include "sync/common/pinned_channel.h"
#include "sync/protocol/home_service.grpc.pb.h"

namespace newel {
namespace {

// Long enough for a handshake over a bad mobile network.
constexpr absl::Duration kConnectWait = absl::Seconds(8);

class GrpcHubLink : public HubLink {
 public:
  explicit GrpcHubLink(const HubAddress& hub)
      : m_authorization("Bearer " + hub.token),
        m_channel(channelTo(hub.address, hub.certificate_pem)),
        m_stub(v1::HomeService::NewStub(m_channel)) {}

  ~GrpcHubLink() override {
    cancel();
    if (m_listener.joinable()) m_listener.join();
  }

  absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) override {
    v1::OfferReply reply;
    return call(reply,
                [&](grpc::ClientContext& context) { return m_stub->Offer(&context, request, &reply); });
  }

  absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) override {
    v1::FetchReply reply;
    return call(reply,
                [&](grpc::ClientContext& context) { return m_stub->Fetch(&context, request, &reply); });
  }

  absl::StatusOr<v1::MediaPart> fetchMedia(const v1::FetchMediaRequest& request) override {
    v1::MediaPart reply;
    return call(reply,
                [&](grpc::ClientContext& context) { return m_stub->FetchMedia(&context, request, &reply); });
  }

  void listen(const v1::ListenRequest& request, NudgeSink* sink) override {
    if (m_listener.joinable()) {
      {
        const std::lock_guard lock(m_mutex);
        if (m_stream != nullptr) m_stream->TryCancel();
      }
      m_listener.join();
    }
    m_listener = std::thread([this, request, sink] { listenUntilEnd(request, sink); });
  }

  void cancel() override {
    const std::lock_guard lock(m_mutex);
    m_cancelled = true;
    for (grpc::ClientContext* context : m_under_way) context->TryCancel();
    if (m_stream != nullptr) m_stream->TryCancel();
  }

 private:
  template <typename Reply, typename Call>
  absl::StatusOr<Reply> call(Reply& reply, Call&& make) {
    awaitConnection(*m_channel, kConnectWait, [this] { return cancelled(); });
    grpc::ClientContext context;
    context.AddMetadata("authorization", m_authorization);
    setDeadline(context, kCallDeadline);
    if (!begin(context)) return absl::CancelledError("stopping");
    const absl::Status status = fromCall(make(context));
    end(context);
    if (!status.ok()) return status;
    return std::move(reply);
  }

  bool begin(grpc::ClientContext& context) {
    const std::lock_guard lock(m_mutex);
    if (!m_cancelled) m_under_way.insert(&context);
    return !m_cancelled;
  }
  void end(grpc::ClientContext& context) {
    const std::lock_guard lock(m_mutex);
    m_under_way.erase(&context);
  }

  bool cancelled() {
    const std::lock_guard lock(m_mutex);
    return m_cancelled;
  }

  void listenUntilEnd(const v1::ListenRequest& request, NudgeSink* sink) {
    awaitConnection(*m_channel, kConnectWait, [this] { return cancelled(); });
    grpc::ClientContext context;
    context.AddMetadata("authorization", m_authorization);
    {
      const std::lock_guard lock(m_mutex);
      if (m_cancelled) return;
      m_stream = &context;
    }
    const auto stream = m_stub->Listen(&context, request);
    v1::Nudge nudge;
    while (stream->Read(&nudge)) sink->nudge(nudge);
    const absl::Status why = fromCall(stream->Finish());
    {
      const std::lock_guard lock(m_mutex);
      m_stream = nullptr;
      if (m_cancelled) return;
    }
    sink->listenEnded(why);
  }

  const std::string m_authorization;
  const std::shared_ptr<grpc::Channel> m_channel;
  const std::unique_ptr<v1::HomeService::Stub> m_stub;
  std::mutex m_mutex;
  bool m_cancelled = false;
  std::set<grpc::ClientContext*> m_under_way;
  grpc::ClientContext* m_stream = nullptr;
  std::thread m_listener;
};

class GrpcHubNetwork : public HubNetwork {
 public:
  absl::StatusOr<PairedHub> pair(const PairingTicket& ticket, const v1::PairRequest& request) override {
    const std::string address = addressOf(ticket);
    auto pinned = connectPinned(address, pinsOf(ticket), kCallDeadline / 2);
    if (!pinned.ok()) return pinned.status();
    grpc::ClientContext context;
    setDeadline(context, kCallDeadline / 2);
    PairedHub result;
    const absl::Status paired =
        fromCall(v1::HomeService::NewStub(pinned->channel)->Pair(&context, request, &result.reply));
    if (!paired.ok()) return paired;
    result.hub = {address, pinned->certificate_pem, pinned->certificate_sha256, result.reply.token(),
                  pinsOf(ticket)};
    return result;
  }

  absl::StatusOr<HubAddress> findAgain(const HubAddress& hub) override {
    const auto pinned = connectPinned(hub.address, hub.pins, kCallDeadline / 2);
    if (!pinned.ok()) return pinned.status();
    HubAddress found = hub;
    found.certificate_pem = pinned->certificate_pem;
    found.certificate_sha256 = pinned->certificate_sha256;
    return found;
  }

  std::unique_ptr<HubLink> connect(const HubAddress& hub) override {
    return std::make_unique<GrpcHubLink>(hub);
  }
};

}  // namespace

std::unique_ptr<HubNetwork> makeGrpcHubNetwork() { return std::make_unique<GrpcHubNetwork>(); }

}  // namespace newel
