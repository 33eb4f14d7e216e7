// A network that loses what it is told to lose, in front of the real one.
#pragma once

#include <atomic>
#include <functional>
#include <memory>

#include "sync/home/grpc_hub_link.h"
#include "sync/home/hub_link.h"

namespace newel::test {

struct Losses {
  std::atomic<bool> down{false};           // nothing gets through
  std::atomic<int> lose_offer_replies{0};  // this many offers reach the hub, and their replies are lost
  std::atomic<int> repeat_offers{0};       // this many offers reach the hub twice
  std::atomic<int> lose_fetch_replies{0};
  std::atomic<int> offers{0};  // calls made so far
  std::atomic<int> fetches{0};
  // Changes a reply on its way; not set: as it came. Set before use.
  std::function<void(v1::FetchReply&)> spoil_fetch;
  std::function<void(v1::OfferReply&)> spoil_offer;
  std::function<void(v1::MediaPart&)> spoil_media;
  std::atomic<int> media_parts{0};        // calls made so far
  std::atomic<int> media_until_down{-1};  // so many get through, then nothing does; -1: all
  std::atomic<int> lose_media_replies{0};
};

class LossyNetwork : public HubNetwork {
 public:
  absl::StatusOr<PairedHub> pair(const PairingTicket& ticket, const v1::PairRequest& request) override {
    if (losses.down) return absl::UnavailableError("down");
    return m_real->pair(ticket, request);
  }
  std::unique_ptr<HubLink> connect(const HubAddress& hub) override {
    return std::make_unique<Link>(&losses, m_real->connect(hub));
  }

  absl::StatusOr<HubAddress> findAgain(const HubAddress& hub) override {
    if (losses.down) return absl::UnavailableError("down");
    return m_real->findAgain(hub);
  }

  Losses losses;

 private:
  class Link : public HubLink {
   public:
    Link(Losses* losses, std::unique_ptr<HubLink> real) : m_losses(losses), m_real(std::move(real)) {}
    absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) override {
      ++m_losses->offers;
      if (m_losses->down) return absl::UnavailableError("down");
      if (m_losses->repeat_offers > 0) {
        --m_losses->repeat_offers;
        m_real->offer(request).IgnoreError();
      }
      auto reply = m_real->offer(request);
      if (m_losses->lose_offer_replies > 0) {
        --m_losses->lose_offer_replies;
        return absl::DeadlineExceededError("the reply was lost");
      }
      if (reply.ok() && m_losses->spoil_offer) m_losses->spoil_offer(*reply);
      return reply;
    }
    absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) override {
      ++m_losses->fetches;
      if (m_losses->down) return absl::UnavailableError("down");
      auto reply = m_real->fetch(request);
      if (m_losses->lose_fetch_replies > 0) {
        --m_losses->lose_fetch_replies;
        return absl::UnavailableError("the reply was lost");
      }
      if (reply.ok() && m_losses->spoil_fetch) m_losses->spoil_fetch(*reply);
      return reply;
    }
    absl::StatusOr<v1::MediaPart> fetchMedia(const v1::FetchMediaRequest& request) override {
      ++m_losses->media_parts;
      if (m_losses->media_until_down == 0) m_losses->down = true;
      if (m_losses->down) return absl::UnavailableError("down");
      if (m_losses->media_until_down > 0) --m_losses->media_until_down;
      auto reply = m_real->fetchMedia(request);
      if (m_losses->lose_media_replies > 0) {
        --m_losses->lose_media_replies;
        return absl::DeadlineExceededError("the reply was lost");
      }
      if (reply.ok() && m_losses->spoil_media) m_losses->spoil_media(*reply);
      return reply;
    }
    void listen(const v1::ListenRequest& request, NudgeSink* sink) override {
      if (!m_losses->down) m_real->listen(request, sink);
    }
    void cancel() override { m_real->cancel(); }

   private:
    Losses* m_losses;
    std::unique_ptr<HubLink> m_real;
  };

  std::unique_ptr<HubNetwork> m_real = makeGrpcHubNetwork();
};

}  // namespace newel::test
