#include "sync/hub/erasure.h"

#include <algorithm>
#include <cstdint>

#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr std::uint32_t kPage = 500;

// RFC 9562 section 5.7: the first 48 bits of a version 7 id are its milliseconds. The far future for another
// id, so that nobody is due by mistake.
absl::Time madeAt(const std::string& id) {
  if (id.size() != 36 || id[14] != '7') return absl::InfiniteFuture();
  const std::string hex = id.substr(0, 8) + id.substr(9, 4);
  if (hex.find_first_not_of("0123456789abcdef") != std::string::npos) return absl::InfiniteFuture();
  return absl::FromUnixMillis(static_cast<std::int64_t>(std::stoull(hex, nullptr, 16)));
}

absl::Time lastSignOf(const std::string& id, const CaseFacts& facts) {
  absl::Time last = madeAt(id);
  if (facts.last_contact.has_value()) last = std::max(last, *facts.last_contact);
  if (facts.last_practice.has_value()) last = std::max(last, *facts.last_practice);
  if (!facts.programme_end_day.empty()) {
    const auto day = parseLocalDay(facts.programme_end_day);
    last = std::max(last, day.ok() ? absl::FromCivil(*day, absl::UTCTimeZone()) : absl::InfiniteFuture());
  }
  return last;
}

}  // namespace

bool isErasureReason(const std::string& reason) {
  return reason == "wish" || reason == "term" || reason == "mistake";
}

absl::Status erasePerson(const HubContext& hub, const std::string& person_id, const std::string& reason) {
  if (!isErasureReason(reason)) return absl::InvalidArgumentError("reason: wish, term or mistake");
  std::vector<DeviceRow> devices;
  absl::Status erased = hub.store->write([&](HubTransaction& transaction) -> absl::Status {
    devices = transaction.devices(person_id);
    if (!transaction.erasePerson(person_id, hub.clock->wall())) {
      return absl::NotFoundError("person: nobody has this id");
    }
    hub.audit->add(transaction, {.action = "person.erase", .person = person_id, .field = reason});
    return absl::OkStatus();
  });
  if (!erased.ok()) return erased;
  for (const auto& device : devices) hub.board->closeDevice(device.id);
  hub.board->nudgeDesks("");
  return absl::OkStatus();
}

absl::StatusOr<std::vector<std::string>> personsDue(HubStore& store, absl::Time now, absl::Duration age) {
  std::vector<std::string> due;
  const absl::Status read = store.read([&](HubTransaction& transaction) {
    std::string last;
    for (auto ids = transaction.personIdsAfter(last, kPage); !ids.empty();
         ids = transaction.personIdsAfter(last, kPage)) {
      last = ids.back();
      for (const auto& id : ids) {
        if (lastSignOf(id, transaction.caseFacts(id)) < now - age) due.push_back(id);
      }
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return due;
}

}  // namespace newel
