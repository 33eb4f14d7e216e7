// Contact with the hub: offer what is queued, fetch what is new, keep the stream open, wait, again. One round
// is syncOnce(), which a simulation may call by itself; start() puts it on a thread of its own.
#pragma once

#include <absl/status/status.h>
#include <absl/time/time.h>

#include <atomic>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

#include "core/records/random.h"
#include "core/time/clock.h"
#include "sync/home/device_store.h"
#include "sync/home/hub_link.h"
#include "sync/home/inbox.h"
#include "sync/home/media_fetch.h"

namespace newel {

class SyncLoop : public NudgeSink {
 public:
  struct Parts {
    DeviceStore* store = nullptr;
    HubNetwork* network = nullptr;
    Clock* clock = nullptr;
    Random* random = nullptr;
    std::string app_version;
    std::function<std::string()> new_id;
    MediaFetch* media = nullptr;
    // Called with no lock held, one call at a time, on a thread of this loop.
    std::function<void(const InboxNews&)> news;
    std::function<void()> changed;
  };

  explicit SyncLoop(Parts parts);
  ~SyncLoop() override;  // ends the thread, the stream and what is under way

  void start();  // once
  void wake();   // a round as soon as possible
  // Ends stream and round, then runs `change` (another pairing, a wipe) while none can begin; the next round
  // connects anew.
  absl::Status betweenRounds(const std::function<absl::Status()>& change);

  // What the thread does, in single steps for who brings no thread (a simulation): how long until the next
  // round is due on the clock's elapsed(), zero or less when it is; and that round.
  absl::Duration untilTurn() const;
  void takeTurn();

  // One round. OK when all that could go has gone and all that is new is here, or nothing is paired.
  // The error of the first call that failed otherwise; what was done before it stays done.
  absl::Status syncOnce();

  struct Contact {
    bool now = false;
    std::string problem;               // HomeState::last_problem
    bool another_certificate = false;  // the last round found another hub's, or the clinic has a new one
  };
  Contact contact() const;
  // Of text on the screen, 100 to 200; said to the hub with whatever is said next.
  void showsTextAt(std::uint32_t percent) { m_text_percent = percent; }
  // Something outside a round found the disk full, or not any more.
  void noteLocal(const absl::Status& status);
  // Hold orders that arrived and could not be written (full disk). They count as much as the others.
  std::vector<v1::HoldOrder> unwrittenHolds() const;

  void nudge(const v1::Nudge& nudge) override;
  void listenEnded(const absl::Status& why) override;

 private:
  struct RoundState {
    bool later = false;       // the hub asked to be offered something again
    bool wrong_date = false;  // the hub's time is far from ours
    bool receipts = false;    // the inbox queued some
  };
  void run();
  absl::Status round(RoundState& state);
  absl::Status offerAll(HubLink& link, RoundState& state);
  absl::Status fetchAll(HubLink& link, RoundState& state);
  absl::Status noteHub(const std::string& generation, const google::protobuf::Timestamp& hub_time,
                       RoundState& state);
  absl::Status fetchMedia(HubLink& link);
  absl::Status takeFetched(const v1::FetchReply& reply, RoundState& state);
  std::shared_ptr<HubLink> linkFor(const DeviceSettings& settings);
  void listenIfNeeded(HubLink& link);
  bool follow();
  void finish(const absl::Status& status, const RoundState& state);
  void letGoAfter(const absl::Status& status);
  void endAccess();
  void dropForeignHolds();
  void tell(const InboxNews& news);
  void tellChanged();
  InboxNews unwritten(const v1::SignedHoldOrder& signed_order);
  void turnWithin(absl::Duration wait);

  const Parts m_parts;
  std::atomic<std::uint32_t> m_text_percent = 0;  // 0: not known
  std::mutex m_round;                             // one round at a time
  std::mutex m_telling;                           // one call of Parts::news or ::changed at a time

  mutable std::mutex m_mutex;  // guards all below
  std::condition_variable m_condition;
  bool m_stop = false;
  bool m_listening = false;
  bool m_woken = false;  // since the round began
  int m_failures = 0;
  int m_listen_failures = 0;
  absl::Duration m_next_turn = absl::ZeroDuration();  // on the clock's elapsed()
  Contact m_contact;
  std::vector<v1::HoldOrder> m_unwritten_holds;
  std::shared_ptr<HubLink> m_link;
  std::thread m_thread;
};

}  // namespace newel
