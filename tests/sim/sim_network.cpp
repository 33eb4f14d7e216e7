#include "tests/sim/sim_network.h"

#include <algorithm>
#include <functional>
#include <utility>

#include "core/records/record_text.h"
#include "sync/common/pinned_channel.h"
#include "tests/sim/certificates.h"

namespace newel::sim {
namespace {

// What happens to one call. Rates in a thousand; ours, high on purpose.
struct Fate {
  bool request_lost = false;
  bool request_cut = false;
  bool reply_lost = false;
  bool doubled = false;
  bool again_later = false;
  bool slow = false;
};

Fate drawFate(Stage& stage) {
  Fate fate;
  fate.request_lost = stage.fault(50);
  fate.request_cut = stage.fault(20);
  fate.reply_lost = stage.fault(70);
  fate.doubled = stage.fault(40);
  fate.again_later = stage.fault(40);
  fate.slow = stage.fault(100);
  return fate;
}

template <typename Message>
absl::StatusOr<Message> readWhole(const std::string& bytes, std::size_t sent) {
  Message message;
  // A frame carries its length: what is cut is never taken for a shorter message.
  if (bytes.size() != sent || !message.ParseFromString(bytes))
    return absl::UnavailableError("cut on its way");
  return message;
}

// A stream and a call or two may meet it before the phone looks.
constexpr int kMostUnfollowed = 4;

absl::Status anotherCertificate() {
  return fromCall(grpc::Status(grpc::StatusCode::UNAVAILABLE, "certificate verify failed"));
}

}  // namespace

SimStream::SimStream(Stage* stage, SimHub* hub, Caller* caller, NudgeSink* sink)
    : m_stage(stage),
      m_hub(hub),
      m_caller(caller),
      m_sink(sink),
      m_epoch(hub->epoch()),
      m_last(stage->clock.elapsed()) {}

void SimStream::push(const v1::Nudge& nudge) {
  if (m_sink == nullptr || m_hub->disk().isDead()) return;
  m_last = std::max(m_last, m_stage->clock.elapsed() + absl::Milliseconds(m_stage->random.between(5, 3000)));
  m_way.push_back({m_last, toBytes(nudge)});
  m_stage->at(m_last, [weak = weak_from_this()] {
    if (const auto stream = weak.lock()) stream->deliver();
  });
}

void SimStream::close(const absl::Status& why) {
  m_stage->in(absl::Milliseconds(50), [weak = weak_from_this(), why] {
    if (const auto stream = weak.lock()) stream->breakOff(why);
  });
}

void SimStream::deliver() {
  while (m_sink != nullptr && !m_way.empty() && m_way.front().due <= m_stage->clock.elapsed()) {
    if (!m_caller->isReachable() || m_stage->fault(30)) {
      breakOff(absl::UnavailableError("the stream broke"));
      return;
    }
    const std::string bytes = std::move(m_way.front().bytes);
    m_way.pop_front();
    v1::Nudge nudge;
    nudge.ParseFromString(bytes);
    m_caller->beforeNudge(nudge);
    m_sink->nudge(nudge);
    m_caller->afterNudge(nudge);
  }
}

void SimStream::leaveBoard() {
  if (m_number != 0 && m_hub->isUp() && m_hub->epoch() == m_epoch) m_hub->hub().board().leave(m_number);
  m_number = 0;
}

void SimStream::breakOff(const absl::Status& why) {
  NudgeSink* sink = std::exchange(m_sink, nullptr);
  m_way.clear();
  leaveBoard();
  if (sink != nullptr) sink->listenEnded(why);
}

void SimStream::detach() {
  m_sink = nullptr;
  leaveBoard();
}

class SimLink : public HubLink {
 public:
  SimLink(SimNetwork* network, HubAddress address) : m_network(network), m_address(std::move(address)) {}
  ~SimLink() override {
    if (m_stream) m_stream->detach();
  }

  absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) override {
    auto reply = call<v1::OfferReply>("offer", request, [this](Hub& hub, const v1::OfferRequest& arrived) {
      return offerAt(*m_network, hub, m_address.token, arrived);
    });
    if (reply.ok()) m_network->m_caller->wasAnswered(request, *reply);
    return reply;
  }

  absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) override {
    return call<v1::FetchReply>("fetch", request, [this](Hub& hub, const v1::FetchRequest& arrived) {
      const auto who = hub.phones().authenticate(m_address.token, {});
      if (!who.ok()) return absl::StatusOr<v1::FetchReply>(who.status());
      checkRight(*m_network);
      return hub.phones().fetch(*who, arrived);
    });
  }

  absl::StatusOr<v1::MediaPart> fetchMedia(const v1::FetchMediaRequest& request) override {
    auto reply =
        call<v1::MediaPart>("fetchMedia", request, [this](Hub& hub, const v1::FetchMediaRequest& arrived) {
          const auto who = hub.phones().authenticate(m_address.token, {});
          if (!who.ok()) return absl::StatusOr<v1::MediaPart>(who.status());
          checkRight(*m_network);
          return hub.media().fetch(*who, arrived);
        });
    // As from a hub whose disk has rotted: nothing on the way does this under TLS. After the third time a
    // phone gives a photo up.
    if (reply.ok() && !reply->content().empty() && m_network->m_stage->fault(20) &&
        ++m_network->m_spoilt[request.sha256()] <= 2) {
      (*reply->mutable_content())[0] ^= 1;
      m_network->m_stage->say(m_network->m_caller->name(), "what comes is spoilt");
    }
    return reply;
  }

  void listen(const v1::ListenRequest& request, NudgeSink* sink) override {
    Stage& stage = *m_network->m_stage;
    SimHub& hub = *m_network->m_hub;
    if (m_stream) m_stream->detach();
    m_stream = std::make_shared<SimStream>(&stage, &hub, m_network->m_caller, sink);
    m_network->m_stream = m_stream;
    const absl::Status way = passable();
    if (!way.ok() || stage.fault(50)) {
      m_stream->close(way.ok() ? absl::UnavailableError("no stream") : way);
      return;
    }
    const auto who = hub.hub().phones().authenticate(m_address.token, saysOf(request));
    const auto number = who.ok() ? hub.hub().phones().listen(*who, m_stream) : who.status();
    if (!number.ok()) {
      m_stream->close(hub.isUp() ? number.status() : absl::UnavailableError("the hub went away"));
    } else {
      m_stream->setNumber(*number);
      hub.watch(m_stream);
    }
    hub.afterwards();
  }

  void cancel() override { m_cancelled = true; }

 private:
  static absl::StatusOr<v1::OfferReply> offerAt(SimNetwork& network, Hub& hub, const std::string& token,
                                                const v1::OfferRequest& request) {
    const auto who = hub.phones().recognise(token, saysOf(request));
    if (!who.ok()) return who.status();
    if (network.m_hub->isRevoked(token))
      network.m_stage->violated("hub: served a phone whose access was ended");
    auto reply = hub.phones().offer(*who, request);
    if (reply.ok() && network.m_hub->isUp()) noteAcknowledged(network, request, *reply);
    return reply;
  }

  // What the hub has said that it keeps, heard or not.
  static void noteAcknowledged(SimNetwork& network, const v1::OfferRequest& request,
                               const v1::OfferReply& reply) {
    Promises& hub = network.m_ledger->hub;
    for (int i = 0; i < reply.outcomes_size() && i < request.records_size(); ++i) {
      const auto& record = request.records(i);
      const auto outcome = reply.outcomes(i).outcome();
      if (outcome != v1::OUTCOME_KEPT && outcome != v1::OUTCOME_KNOWN) continue;
      if (record.kind() == v1::RECORD_KIND_PRACTICE)
        hub.practices[record.id()][record.revision()] = record.sha256();
      if (record.kind() == v1::RECORD_KIND_WEAR_BLOCK)
        hub.blocks[record.id()][record.revision()] = record.sha256();
      if (record.kind() == v1::RECORD_KIND_MESSAGE) hub.messages.insert(record.id());
    }
  }

  void checkRight(SimNetwork& network) const {
    if (network.m_hub->isRevoked(m_address.token)) {
      network.m_stage->violated("hub: served a phone whose access was ended");
    }
  }

  absl::Status passable() const {
    if (m_cancelled) return absl::CancelledError("cancelled");
    if (!m_network->m_caller->isReachable()) return absl::UnavailableError("no signal");
    if (!m_network->m_hub->isUp()) return absl::UnavailableError("nobody answers");
    const std::string& shown = m_network->m_hub->hub().clinic().certificate_sha256;
    if (m_address.certificate_sha256 == shown) return absl::OkStatus();
    const bool told = std::find(m_address.pins.begin(), m_address.pins.end(), shown) != m_address.pins.end();
    if (told && ++m_network->m_unfollowed > kMostUnfollowed) {
      m_network->m_stage->violated("phone: does not go after the certificate that it was told of");
    }
    return anotherCertificate();
  }

  void wait(const Fate& fate) {
    Stage& stage = *m_network->m_stage;
    stage.pass(
        absl::Milliseconds(fate.slow ? stage.random.between(1000, 20000) : stage.random.between(5, 400)));
    m_network->m_caller->whileWaiting();
  }

  // The same bytes come to the hub once more, long after anybody waits for an answer.
  void comeAgain(const v1::OfferRequest& request) {
    m_network->m_stage->in(m_network->m_stage->seconds(1, 7200),
                           [network = m_network, token = m_address.token, request] {
                             if (!network->m_hub->isUp()) return;
                             network->m_stage->say(network->m_caller->name(), "an old offer comes again");
                             offerAt(*network, network->m_hub->hub(), token, request).IgnoreError();
                             network->m_hub->afterwards();
                           });
  }
  void comeAgain(const v1::FetchRequest& /*request*/) {}
  void comeAgain(const v1::FetchMediaRequest& /*request*/) {}

  template <typename Reply, typename Request, typename Handler>
  absl::StatusOr<Reply> call(const char* what, const Request& request, Handler&& handle) {
    Stage& stage = *m_network->m_stage;
    auto reply = callQuietly<Reply>(request, std::forward<Handler>(handle));
    stage.say(m_network->m_caller->name(),
              std::string(what) + " " + (reply.ok() ? "ok" : reply.status().ToString()));
    return reply;
  }

  template <typename Reply, typename Request, typename Handler>
  absl::StatusOr<Reply> callQuietly(const Request& request, Handler&& handle) {
    Stage& stage = *m_network->m_stage;
    SimHub& hub = *m_network->m_hub;
    const Fate fate = drawFate(stage);
    wait(fate);
    absl::Status way = passable();
    if (!way.ok()) return way;
    if (fate.again_later) comeAgain(request);
    if (fate.request_lost) return absl::DeadlineExceededError("the request was lost");
    std::string bytes = toBytes(request);
    const std::size_t sent = bytes.size();
    if (fate.request_cut) bytes.resize(stage.random.between(0, static_cast<std::uint32_t>(sent) - 1));
    const auto arrived = readWhole<Request>(bytes, sent);
    if (!arrived.ok()) return arrived.status();
    if (fate.doubled) handle(hub.hub(), *arrived).IgnoreError();
    auto reply = hub.isUp() ? handle(hub.hub(), *arrived) : absl::UnavailableError("the hub went away");
    const bool hub_died = !hub.isUp();
    hub.afterwards();
    if (hub_died) return absl::UnavailableError("the hub went away");
    wait(Fate());
    if (fate.reply_lost) return absl::DeadlineExceededError("the reply was lost");
    if (!m_network->m_caller->isReachable()) return absl::UnavailableError("no signal");
    if (!reply.ok()) return reply.status();
    const std::string back = toBytes(*reply);
    checkMine(back);
    return readWhole<Reply>(back, back.size());
  }

  // No byte of one person reaches another.
  void checkMine(const std::string& bytes) {
    for (const auto& person : m_network->m_hub->people()) {
      if (person.id() == m_network->m_caller->personId()) continue;
      if (bytes.find(canaryOf(person.id())) != std::string::npos) {
        m_network->m_stage->violated("network: something of " + person.id() +
                                     " went to the phone of another");
      }
    }
  }

  SimNetwork* m_network;
  HubAddress m_address;
  bool m_cancelled = false;
  std::shared_ptr<SimStream> m_stream;
};

absl::StatusOr<PairedHub> SimNetwork::pair(const PairingTicket& ticket, const v1::PairRequest& request) {
  m_stage->pass(absl::Milliseconds(m_stage->random.between(50, 2000)));
  if (!m_caller->isReachable() || m_stage->fault(50)) return absl::UnavailableError("no signal");
  if (!m_hub->isUp()) return absl::UnavailableError("nobody answers");
  const Clinic& clinic = m_hub->hub().clinic();
  const std::vector<std::string> pins = pinsOf(ticket);
  if (std::find(pins.begin(), pins.end(), clinic.certificate_sha256) == pins.end())
    return anotherCertificate();
  PairedHub paired;
  paired.hub.pins = pins;
  paired.hub.address = addressOf(ticket);
  paired.hub.certificate_pem = clinic.certificate.certificate_pem;
  paired.hub.certificate_sha256 = clinic.certificate_sha256;
  auto reply = m_hub->hub().phones().pair(request, m_caller->name());
  const bool hub_died = !m_hub->isUp();
  m_hub->afterwards();
  if (hub_died) return absl::UnavailableError("the hub went away");
  if (m_stage->fault(50)) return absl::DeadlineExceededError("the reply was lost");
  if (!reply.ok()) return reply.status();
  paired.reply = *std::move(reply);
  paired.hub.token = paired.reply.token();
  return paired;
}

std::unique_ptr<HubLink> SimNetwork::connect(const HubAddress& hub) {
  return std::make_unique<SimLink>(this, hub);
}

absl::StatusOr<HubAddress> SimNetwork::findAgain(const HubAddress& hub) {
  m_unfollowed = 0;
  m_stage->pass(absl::Milliseconds(m_stage->random.between(50, 2000)));
  if (!m_caller->isReachable() || m_stage->fault(50)) return absl::UnavailableError("no signal");
  if (!m_hub->isUp()) return absl::UnavailableError("nobody answers");
  const Clinic& clinic = m_hub->hub().clinic();
  if (std::find(hub.pins.begin(), hub.pins.end(), clinic.certificate_sha256) == hub.pins.end())
    return anotherCertificate();
  HubAddress found = hub;
  found.certificate_pem = clinic.certificate.certificate_pem;
  found.certificate_sha256 = clinic.certificate_sha256;
  m_stage->say(m_caller->name(), "finds the hub again by another pin");
  return found;
}

void SimNetwork::deliver() {
  if (const auto stream = m_stream.lock()) stream->deliver();
}

void SimNetwork::breakOff(const absl::Status& why) {
  if (const auto stream = m_stream.lock()) stream->breakOff(why);
}

}  // namespace newel::sim
