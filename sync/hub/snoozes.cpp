#include "sync/hub/snoozes.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/library/settings.h"
#include "core/progress/attention_digest.h"
#include "core/time/local_day.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/digest_keeper.h"

namespace newel {
namespace {

constexpr std::size_t kLeastReason = 3;  // bytes
constexpr std::size_t kMostReason = 300;

absl::Status checkReason(const std::string& reason) {
  if (reason.size() < kLeastReason || reason.size() > kMostReason ||
      reason.find_first_not_of(" \t\n") == std::string::npos) {
    return absl::InvalidArgumentError("reason: why it can wait, 3 to 300 bytes");
  }
  return absl::OkStatus();
}

absl::Status checkDay(const std::string& until_day, absl::CivilDay today) {
  const auto day = parseLocalDay(until_day);
  if (!day.ok()) return absl::InvalidArgumentError("until_day: " + std::string(day.status().message()));
  if (*day < today || *day > today + kMostSnoozeDays) {
    return absl::InvalidArgumentError("until_day: today to 60 days from now");
  }
  return absl::OkStatus();
}

std::optional<absl::Time> contactOf(const std::vector<DeviceRow>& devices) {
  std::optional<absl::Time> last;
  for (const auto& device : devices) {
    if (device.revoked || !device.last_contact.has_value()) continue;
    if (!last || *device.last_contact > *last) last = device.last_contact;
  }
  return last;
}

ContactFacts contactFacts(HubTransaction& transaction, const std::string& person_id) {
  const auto devices = transaction.devices(person_id);
  const bool paired =
      std::any_of(devices.begin(), devices.end(), [](const DeviceRow& device) { return !device.revoked; });
  return {person_id, contactOf(devices), paired};
}

}  // namespace

// As the record is in this very transaction: a red flag that came a moment ago is not overlooked.
absl::StatusOr<v1::Snooze> Snoozes::snoozeOf(HubTransaction& transaction, const DeskCaller& caller,
                                             const v1::PutSnoozeRequest& request) {
  const absl::Time now = m_hub->clock->wall();
  const auto row = digestRowOf(transaction, *m_hub->rules, request.person_id(), now);
  if (!row.ok()) return row.status();
  v1::CaseRow facts;
  v1::AttentionDigest digest;
  if (!facts.ParseFromString(row->content) || facts.digest().empty() ||
      !digest.ParseFromString(facts.digest())) {
    return absl::FailedPreconditionError("person_id: the record cannot be read as a whole");
  }
  const auto zone = loadZone(digest.zone());
  const absl::CivilDay today = localDayAt(now, zone.value_or(absl::UTCTimeZone()));
  if (absl::Status good = checkDay(request.until_day(), today); !good.ok()) return good;
  const auto card = clinicCard(transaction);
  if (!card.ok()) return card.status();
  const auto silent = settingValues(card->settings(), *m_hub->catalogue).at("silent-days");
  const AttentionRow said = attentionRow(factsAt(digest, contactFacts(transaction, request.person_id()), now),
                                         now, today, static_cast<int>(silent));
  if (!maySnooze(said)) {
    return absl::FailedPreconditionError("person_id: what the row says now may not wait");
  }
  v1::Snooze snooze;
  snooze.set_therapist_id(caller.therapist.id());
  snooze.set_display_name(caller.therapist.display_name());
  snooze.set_reason(request.reason());
  *snooze.mutable_at() = toTimestamp(now);
  snooze.set_until_day(request.until_day());
  snooze.set_urgency(static_cast<std::uint32_t>(said.urgency));
  for (const auto& reason : said.reasons) snooze.add_keys(reason.key);
  return snooze;
}

absl::StatusOr<v1::PutSnoozeReply> Snoozes::put(const DeskCaller& caller,
                                                const v1::PutSnoozeRequest& request) {
  const bool ends = request.until_day().empty();
  if (!ends) {
    if (absl::Status good = checkReason(request.reason()); !good.ok()) return good;
  }
  v1::PutSnoozeReply reply;
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    reply.Clear();
    if (!transaction.person(request.person_id()).has_value()) {
      return absl::NotFoundError("person_id: nobody has it");
    }
    if (ends) {
      if (!transaction.dropSnooze(request.person_id())) return absl::OkStatus();
    } else {
      auto snooze = snoozeOf(transaction, caller, request);
      if (!snooze.ok()) return snooze.status();
      transaction.putSnooze(request.person_id(), snooze->SerializeAsString());
      *reply.mutable_snooze() = *std::move(snooze);
    }
    m_hub->audit->add(transaction, {.action = ends ? "person.unsnooze" : "person.snooze",
                                    .who = caller.therapist.id(),
                                    .person = request.person_id()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks(request.person_id());
  return reply;
}

}  // namespace newel
