#include "sync/hub/home_calls.h"

#include <set>
#include <utility>

#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/hub/caller_facts.h"

namespace newel {
namespace {

// The desk shows minutes; noting each call would only write more.
constexpr absl::Duration kContactGrain = absl::Seconds(20);

v1::SignedHoldOrder signedHold(const SignedRow& row) {
  v1::SignedHoldOrder order;
  order.set_content(row.content);
  order.set_signature(row.signature);
  order.set_key_id(row.key_id);
  return order;
}

}  // namespace

absl::StatusOr<PhoneCaller> HomeCalls::authenticate(const std::string& token, const PhoneSays& says) {
  auto caller = recognise(token, says);
  if (!caller.ok() || !caller->contact.has_value()) return caller;
  const absl::Status noted = m_hub->store->write([&](HubTransaction& transaction) {
    transaction.noteContact(caller->device_id, caller->contact->at, caller->contact->says);
    return absl::OkStatus();
  });
  // With a full disk the phone may still fetch, above all a hold order.
  if (!noted.ok() && !absl::IsResourceExhausted(noted)) return noted;
  caller->contact.reset();
  return caller;
}

absl::StatusOr<PhoneCaller> HomeCalls::recognise(const std::string& token, const PhoneSays& says) {
  if (token.empty() || token.size() > 200) return absl::UnauthenticatedError("authorization: no token");
  if (says.app_version.size() > 60) return absl::InvalidArgumentError("app_version: over 60 bytes");
  if (says.text_percent != 0 && (says.text_percent < 100 || says.text_percent > 200))
    return absl::InvalidArgumentError("text_percent: is not 100 to 200");
  const std::string token_sha256 = sha256(token);
  std::optional<DeviceRow> device;
  bool erased = false;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    device = transaction.deviceByToken(token_sha256);
    erased = !device.has_value() && transaction.tokenWasErased(token_sha256);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!device.has_value() && erased) {
    m_hub->audit->refusal(*m_hub->store, {.action = "phone.refused", .field = "erased"});
    return absl::PermissionDeniedError("person: the clinic has erased these records");
  }
  if (!device.has_value()) {
    m_hub->audit->refusal(*m_hub->store, {.action = "phone.refused", .field = "token"});
    return absl::UnauthenticatedError("token: no device has it");
  }
  if (device->revoked && !isBroken(Broken::ServeRevoked)) {
    m_hub->audit->refusal(
        *m_hub->store,
        {.action = "phone.refused", .who = device->id, .person = device->person_id, .field = "revoked"});
    return refusedFor(device->id, absl::PermissionDeniedError("device: its access was ended"));
  }
  const absl::Time now = m_hub->clock->wall();
  const absl::Time last = device->last_contact.value_or(absl::InfinitePast());
  const bool stale = now - last >= kContactGrain || last > now;
  PhoneCaller caller{device->id, device->person_id};
  const bool another = (!says.app_version.empty() && says.app_version != device->app_version) ||
                       (says.text_percent != 0 && says.text_percent != device->text_percent);
  if (stale || another) {
    caller.contact = {now, says};
  }
  return caller;
}

absl::StatusOr<v1::FetchReply> HomeCalls::fetch(const PhoneCaller& caller, const v1::FetchRequest& request) {
  if (request.limit() < 1 || request.limit() > kMostFetched) {
    return absl::InvalidArgumentError("limit: 1 to 200");
  }
  const std::string& generation = m_hub->clinic->generation;
  std::uint64_t cursor = request.generation() == generation ? request.cursor() : 0;
  v1::FetchReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    // One more than asked for, to know whether there is more. What one message cannot carry waits as well.
    auto records = transaction.feedAfter(caller.person_id, cursor, request.limit() + 1);
    std::size_t bytes = 0;
    for (auto& envelope : records) {
      bytes += envelope.content().size();
      const bool full = reply.records_size() > 0 && bytes > kMostOfferBytes;
      if (full || static_cast<std::uint32_t>(reply.records_size()) == request.limit()) {
        reply.set_more(true);
        break;
      }
      cursor = envelope.sequence();
      *reply.add_records() = std::move(envelope);
    }
    *reply.mutable_pins() = signedPins(transaction);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  reply.set_cursor(cursor);
  reply.set_generation(generation);
  *reply.mutable_hub_time() = toTimestamp(m_hub->clock->wall());
  return reply;
}

absl::StatusOr<int> HomeCalls::listen(const PhoneCaller& caller, const std::shared_ptr<PhoneStream>& stream) {
  // On the board first: an order given from here on is pushed, one given before is read below.
  const int number = m_hub->board->joinPhone(caller.device_id, caller.person_id, stream);
  std::vector<SignedRow> orders;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    orders = transaction.holdOrders(caller.person_id);
    return absl::OkStatus();
  });
  if (!read.ok()) {
    m_hub->board->leave(number);
    return read;
  }
  std::set<std::string> lifted;
  for (const auto& order : orders) lifted.insert(order.lifts_id);
  for (const auto& order : orders) {
    if (!order.lifts_id.empty() || lifted.contains(order.id)) continue;
    v1::Nudge nudge;
    *nudge.mutable_hold_order() = signedHold(order);
    stream->push(nudge);
  }
  v1::Nudge fetch;
  fetch.set_fetch(true);
  stream->push(fetch);
  return number;
}

void HomeCalls::passOnHold(const std::string& order_id) {
  std::optional<SignedRow> order;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    order = transaction.holdOrderById(order_id);
    return absl::OkStatus();
  });
  if (read.ok() && order.has_value()) {
    m_hub->board->pushHold(order->person_id, signedHold(*order));
  } else {
    // Not to be read just now: the phones ask for themselves.
    m_hub->board->nudgePerson("");
  }
}

bool HomeCalls::deviceIsGood(const std::string& device_id) {
  bool good = false;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    const auto device = transaction.device(device_id);
    good = device.has_value() && !device->revoked;
    return absl::OkStatus();
  });
  // A store that cannot be read now is no reason to close streams that may carry a hold order.
  return good || !read.ok();
}

}  // namespace newel
