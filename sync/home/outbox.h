// The outbox: what the hub has not acknowledged yet. A record's id and bytes are fixed when it is queued; an
// acknowledgement is for one sequence number, so an edit that was queued meanwhile stays and goes next.
// Functions run inside a transaction of DeviceStore and throw as Database does.
#pragma once

#include <absl/time/time.h>

#include <string>
#include <vector>

#include "core/records/message.pb.h"
#include "sync/common/database.h"
#include "sync/home/delivery.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

void queueRecord(Database& database, const v1::Envelope& envelope);

// The next records after `after_sequence`, oldest first, as many as one call may carry. Those set aside are
// left out.
std::vector<v1::Envelope> nextPage(Database& database, std::uint64_t after_sequence);

struct PageResult {
  int gone = 0;       // acknowledged, or outdated
  int set_aside = 0;  // refused for good
  int later = 0;      // to be sent again
};
// What became of `sent`. An outcome that is missing, does not fit or is not known counts as "later".
PageResult applyOutcomes(Database& database, const std::vector<v1::Envelope>& sent,
                         const v1::OfferReply& reply);

std::uint64_t queuedCount(Database& database);
std::uint64_t setAsideCount(Database& database);

// Whether a record of this id is to be sent, was set aside, or is in the outbox no more.
Delivery deliveryOf(Database& database, const std::string& id);

struct SetAside {
  v1::RecordKind kind = v1::RECORD_KIND_UNSPECIFIED;
  std::string content;
  std::string reason;
};
std::vector<SetAside> setAsideRecords(Database& database);

// Queues again what the hub may have lost: the last revision of every practice and wear block, every receipt,
// every message the person wrote. What is queued or set aside already is not doubled.
void queueEverythingAgain(Database& database);

// Notes that `ref_id` reached `state` and queues the receipt; nothing when that is noted already.
// True when it was new.
bool addReceipt(Database& database, const v1::Receipt& receipt);
bool hasReceipt(Database& database, v1::ReceiptOf of, const std::string& ref_id, v1::ReceiptState state);

}  // namespace newel
