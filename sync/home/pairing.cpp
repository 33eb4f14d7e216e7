#include "sync/home/pairing.h"

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/signing.h"
#include "sync/home/hub_pins.h"
#include "sync/home/outbox.h"

namespace newel {
namespace {

constexpr std::size_t kKeyBytes = 32;

std::string personIdIn(const std::string& bytes) {
  v1::Person person;
  return person.ParseFromString(bytes) ? person.id() : "";
}

}  // namespace

absl::Status checkPairReply(const v1::PairReply& reply) {
  if (reply.token().empty()) return absl::InvalidArgumentError("token: is missing");
  if (reply.device_id().empty()) return absl::InvalidArgumentError("device_id: is missing");
  if (reply.generation().empty()) return absl::InvalidArgumentError("generation: is missing");
  if (reply.clinic_key().size() != kKeyBytes || keyIdOf(reply.clinic_key()) != reply.clinic_key_id()) {
    return absl::InvalidArgumentError("clinic_key: is no key");
  }
  if (reply.has_pins()) {
    const auto pins = openPins(reply.pins(), reply.clinic_key());
    if (!pins.ok()) return absl::InvalidArgumentError("pins: " + std::string(pins.status().message()));
  }
  const absl::Status person = check(reply.person());
  return person.ok() ? check(reply.clinic()) : person;
}

void keepPairing(Database& database, const PairedHub& paired, const std::string& app_version,
                 absl::Time now) {
  const v1::PairReply& reply = paired.reply;
  const DeviceSettings before = loadSettings(database);
  const bool same_person = before.paired && personIdIn(before.person) == reply.person().id();
  if (before.paired && !same_person) deleteEverything(database);
  DeviceSettings settings;
  settings.paired = true;
  settings.hub = paired.hub;
  settings.device_id = reply.device_id();
  settings.clinic_key = reply.clinic_key();
  settings.generation = reply.generation();
  settings.greeting_name = reply.greeting_name();
  settings.person = toBytes(reply.person());
  settings.clinic = toBytes(reply.clinic());
  settings.app_version = app_version;
  settings.last_contact = now;
  if (reply.has_hub_time()) settings.last_hub_time = toTime(reply.hub_time());
  saveSettings(database, settings);
  const auto pins = openPins(reply.pins(), reply.clinic_key());
  if (pins.ok()) savePins(database, *pins);
  if (same_person) queueEverythingAgain(database);
}

}  // namespace newel
