// The phone's side of everything that is kept or crosses the network. Fully usable with no hub for weeks.
// Thread rule: every method may be called from any one thread at a time (the UI's); the engine's own thread
// syncs in the background and reports through Listener on that thread.
#pragma once

#include <absl/status/statusor.h>
#include <absl/types/span.h>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/records/identity.pb.h"
#include "core/records/measure.pb.h"
#include "core/records/message.pb.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/random.h"
#include "core/records/reminder.pb.h"
#include "core/records/wear.pb.h"
#include "core/time/clock.h"
#include "sync/common/limits.h"
#include "sync/common/pairing_ticket.h"
#include "sync/home/delivery.h"
#include "sync/home/hub_link.h"

namespace newel {

struct HomeState {
  bool paired = false;
  bool revoked = false;         // the clinic ended this phone's access; data stays readable
  std::uint64_t queued = 0;     // records not yet acknowledged
  std::uint64_t set_aside = 0;  // refused by the hub for good, kept and exportable
  std::optional<absl::Time> last_contact;
  std::optional<absl::Time> last_hub_time;  // what the hub's clock said then
  // Text key, empty when fine: sync.no-network, sync.wrong-date, sync.revoked, sync.disk-full,
  // sync.hub-refused (an answer that a person at the clinic has to look into, another hub's certificate too).
  std::string last_problem;
  bool contact_now = false;  // a sync is under way
};

struct UnfinishedPractice {
  std::string practice_id;
  std::vector<v1::JournalLine> lines;
};

class HomeEngine {
 public:
  struct Options {
    std::string folder;      // made with 0700 when missing
    Clock* clock = nullptr;  // outlives the engine
    Random* random = nullptr;
    std::string app_version{};
    std::string device_name{};
    HubNetwork* network = nullptr;  // outlives the engine; nullptr: gRPC over TLS
    std::string sqlite_vfs{};       // SQLite's file layer by name; empty: the system's
    // kStoreKeyBytes (seal.h): what is kept is sealed with it. Needed.
    std::string store_key{};
    // Of a photo or clip in one call; tests cut more often.
    std::uint32_t media_part_bytes = kMostMediaPartBytes;
  };
  // Called on threads of the engine, one call at a time, never while a method holds a lock.
  class Listener {
   public:
    virtual ~Listener() = default;
    virtual void stateChanged() = 0;
    virtual void programmeChanged() = 0;
    // Verified, and durable already unless the disk is full. Orders that lift another come here too.
    virtual void holdOrderArrived(const v1::HoldOrder& order) = 0;
    virtual void messageArrived(const v1::Message& message) = 0;
  };

  // Opens or makes the store. kFailedPrecondition "written by a newer version"; kDataLoss when it cannot be
  // read (it was set aside under a new name, never deleted, and the message names it); kPermissionDenied when
  // it was sealed with another key (left as it is).
  static absl::StatusOr<std::unique_ptr<HomeEngine>> open(Options options);
  ~HomeEngine();  // stops the thread, closes the store

  // Outlives the engine, or is set to nullptr first: that waits for a call under way.
  void setListener(Listener* listener);
  void start();     // background sync from here on; does nothing before pairing
  void syncSoon();  // now rather than at the next turn
  // One round of contact on the caller's thread: offer, fetch, listen. Blocks; what start() repeats. OK when
  // nothing is paired.
  absl::Status syncOnce();
  // How large text stands on this screen, in percent; brought inside 100 to 200. The therapist's desk shows
  // the phone so. Goes with what is said next, never on its own.
  void showsTextAt(int percent);
  // start() in single steps, for a simulation that has one thread and a clock of its own: how long until the
  // next round is due (zero or less: now), and that round.
  absl::Duration untilTurn() const;
  void takeTurn();

  // Blocks up to 20 s: call it off the UI thread. kNotFound wrong or spent code, kResourceExhausted too many
  // tries, kUnavailable no network, kUnauthenticated the certificate is not the ticket's, kFailedPrecondition
  // already paired (wipe first). A phone whose access was revoked may pair again: for the same person it
  // keeps everything and offers it again, for another one every byte goes first. So may, for its own person
  // only, one that found another certificate than the pinned one: the clinic may have a new one, and what is
  // queued must not have to be wiped to reach it.
  absl::Status pair(const PairingTicket& ticket);
  // From now on the store opens with `key` alone.
  absl::Status changeStoreKey(const std::string& key);
  // Since when the store has the key it has; nullopt: it was never changed, or the store was wiped since.
  std::optional<absl::Time> storeKeySince() const;
  absl::Status wipe();  // every byte of this person; afterwards unpaired

  HomeState state() const;
  std::optional<v1::Person> person() const;
  std::string greetingName() const;
  std::optional<v1::ClinicCard> clinic() const;
  // For comparing by eye with the desk after a typed code: "AB12 CD34 EF56 0718"; empty before pairing.
  std::string hubFingerprint() const;
  std::optional<v1::Programme> programme() const;  // the highest verified number
  std::vector<v1::Programme> programmes() const;   // all numbers, oldest first
  // The whole content of a photo or clip, its hash checked just now; nullopt: it has not come (yet). Up to 16
  // MiB.
  std::optional<std::string> media(const v1::MediaRef& ref) const;
  // Whether it has come, without reading it.
  bool hasMedia(const v1::MediaRef& ref) const;
  std::vector<v1::HoldOrder> activeHolds() const;           // not lifted
  std::vector<v1::Message> messages() const;                // oldest first
  std::vector<std::string> unseenUrgentMessageIds() const;  // must be seen before a practice starts
  std::vector<v1::Practice> practices() const;              // closed ones, oldest first
  // Of those, the ones whose record was made at `since` or later: a page of years of history, read alone.
  std::vector<v1::Practice> practicesSince(absl::Time since) const;
  std::optional<absl::Time> firstPracticeAt() const;  // when the oldest kept one began; nullopt: none is kept
  std::vector<v1::HoldOrder> holdOrders() const;      // all that ever came, lifts included
  // Where a practice or message that was queued is by now.
  Delivery deliveryOf(const std::string& record_id) const;

  // Each returns only when durable. kResourceExhausted: the disk is full, nothing was changed.
  // kInvalidArgument names the field.
  // All of them, or none. Each sequence must be the next one of its practice.
  absl::Status appendJournal(absl::Span<const v1::JournalLine> lines);
  std::optional<UnfinishedPractice> unfinished() const;
  // Closes the journal and queues the record in one transaction; id and revision must be new.
  absl::Status closePractice(const v1::Practice& practice);
  absl::Status addToldLater(const v1::Practice& practice);  // origin TOLD_LATER
  absl::Status markSeen(v1::ReceiptOf of, const std::string& ref_id, std::uint64_t ref_number);
  absl::Status writeMessage(const std::string& text);

  // Wearing time, the last revision of each block, the earliest first; told on this phone or another of
  // theirs. And what the clinic measured.
  std::vector<v1::WearBlock> wearBlocks() const;
  std::vector<v1::Measure> measures() const;
  // A new block, or the next revision of one; on its way to the clinic.
  absl::Status keepWearBlock(const v1::WearBlock& block);

  // How the person wants to be reminded, and what became of the reminders; stays on this phone. The usual
  // settings, not asked yet, where nothing was kept. Goes with wipe().
  v1::ReminderBook reminderBook() const;
  absl::Status keepReminderBook(const v1::ReminderBook& book);

  std::string newId();  // UUIDv7 from the engine's clock and random
  // Everything about the person as JSON text, for the person.
  std::string exportAll() const;

 private:
  class Impl;
  explicit HomeEngine(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> m_impl;
};

}  // namespace newel
