// The inbox: what comes from the hub, checked before it is kept. A programme or hold order counts only when
// the clinic's key signed it for this very person; programme numbers only grow. What fails is noted and
// changes nothing, and never blocks what comes behind it.
#pragma once

#include <absl/time/time.h>

#include <functional>
#include <string>
#include <vector>

#include "core/records/message.pb.h"
#include "core/records/programme.pb.h"
#include "sync/common/database.h"
#include "sync/home/device_store.h"
#include "sync/protocol/wire.pb.h"

namespace newel {

// What the person should be shown, told once the transaction is committed.
struct InboxNews {
  bool programme = false;
  bool person = false;  // person, clinic card
  std::vector<v1::HoldOrder> hold_orders;
  std::vector<v1::Message> messages;
  bool receipts = false;  // queued for the hub
  bool wear = false;      // wearing time or a measure
};

// Works inside one transaction of DeviceStore; throws as Database does.
class Inbox {
 public:
  // `new_id` makes ids for receipts; `now` is the wall clock.
  Inbox(Database& database, DeviceSettings settings, absl::Time now, std::function<std::string()> new_id);

  void take(const v1::Envelope& envelope);
  // The same from the open stream, which has no envelope.
  void takeHoldOrder(const v1::SignedHoldOrder& signed_order);

  const InboxNews& news() const { return m_news; }

 private:
  void takeProgramme(const v1::Envelope& envelope);
  void takeMessage(const v1::Envelope& envelope);
  void takePerson(const v1::Envelope& envelope);
  void takeClinicCard(const v1::Envelope& envelope);
  void takeWear(const v1::Envelope& envelope);
  void takeMeasured(const v1::Envelope& envelope);
  void refuse(v1::RecordKind kind, const std::string& id, const std::string& reason);
  void noteArrived(v1::ReceiptOf of, const std::string& ref_id, std::uint64_t ref_number);

  Database& m_database;
  DeviceSettings m_settings;
  std::string m_person_id;
  absl::Time m_now;
  std::function<std::string()> m_new_id;
  InboxNews m_news;
};

// Reading what was kept. All oldest first.
std::vector<v1::Programme> keptProgrammes(Database& database);
// The newest first, `most` at most.
std::vector<v1::Programme> newestProgrammes(Database& database, int most);
std::vector<v1::HoldOrder> keptHoldOrders(Database& database);
std::vector<v1::Message> keptMessages(Database& database);
// Orders that no later order lifts.
std::vector<v1::HoldOrder> activeAmong(const std::vector<v1::HoldOrder>& orders);

struct RefusedArrival {
  v1::RecordKind kind = v1::RECORD_KIND_UNSPECIFIED;
  std::string id;
  std::string reason;
};
std::vector<RefusedArrival> refusedArrivals(Database& database);

// The receipt of `state` for a record of the clinic.
v1::Receipt makeReceipt(const std::string& id, const std::string& person_id, v1::ReceiptOf of,
                        const std::string& ref_id, std::uint64_t ref_number, v1::ReceiptState state,
                        absl::Time at);

}  // namespace newel
