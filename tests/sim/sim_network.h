// The way between one phone and the hub: every request and reply becomes bytes, which are lost, cut, delayed,
// doubled or come again later, as the seed says.
#pragma once

#include <deque>
#include <map>
#include <memory>
#include <string>

#include "sync/home/hub_link.h"
#include "tests/sim/ledger.h"
#include "tests/sim/sim_hub.h"
#include "tests/sim/stage.h"

namespace newel::sim {

// The phone, as its network sees it.
class Caller {
 public:
  virtual ~Caller() = default;
  virtual const std::string& name() const = 0;
  virtual const std::string& personId() const = 0;
  virtual bool isReachable() const = 0;  // awake, with a signal, and running
  // Time passes while a call is under way: the person goes on, and the stream may bring something.
  virtual void whileWaiting() = 0;
  virtual void wasAnswered(const v1::OfferRequest& request, const v1::OfferReply& reply) = 0;
  virtual void beforeNudge(const v1::Nudge& nudge) = 0;
  virtual void afterNudge(const v1::Nudge& nudge) = 0;
};

// One open Listen call. What was pushed arrives in order, later, or never.
class SimStream : public PhoneStream, public HubWatcher, public std::enable_shared_from_this<SimStream> {
 public:
  SimStream(Stage* stage, SimHub* hub, Caller* caller, NudgeSink* sink);

  void push(const v1::Nudge& nudge) override;
  void close(const absl::Status& why) override;
  void hubWentAway() override { breakOff(absl::UnavailableError("the hub went away")); }

  // Brings what is due by now.
  void deliver();
  // Nothing more comes; the sink is told now.
  void breakOff(const absl::Status& why);
  // The link goes: no sink is called any more.
  void detach();
  void setNumber(int number) { m_number = number; }
  bool isOpen() const { return m_sink != nullptr; }

 private:
  struct OnItsWay {
    absl::Duration due;
    std::string bytes;
  };
  void leaveBoard();

  Stage* m_stage;
  SimHub* m_hub;
  Caller* m_caller;
  NudgeSink* m_sink;
  std::uint64_t m_epoch;
  int m_number = 0;
  absl::Duration m_last;
  std::deque<OnItsWay> m_way;
};

class SimNetwork : public HubNetwork {
 public:
  SimNetwork(Stage* stage, SimHub* hub, Ledger* ledger, Caller* caller)
      : m_stage(stage), m_hub(hub), m_ledger(ledger), m_caller(caller) {}

  absl::StatusOr<PairedHub> pair(const PairingTicket& ticket, const v1::PairRequest& request) override;
  std::unique_ptr<HubLink> connect(const HubAddress& hub) override;
  absl::StatusOr<HubAddress> findAgain(const HubAddress& hub) override;

  void deliver();
  void breakOff(const absl::Status& why);

 private:
  friend class SimLink;
  Stage* m_stage;
  SimHub* m_hub;
  Ledger* m_ledger;
  Caller* m_caller;
  std::weak_ptr<SimStream> m_stream;
  int m_unfollowed = 0;  // calls in a row to a hub that shows what the phone was told of, without findAgain()
  std::map<std::string, int> m_spoilt;  // photos by their hash: how often
};

}  // namespace newel::sim
