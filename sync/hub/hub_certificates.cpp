#include "sync/hub/hub_certificates.h"

#include <algorithm>
#include <vector>

#include "core/records/record_text.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr std::uint32_t kPersonsAtOnce = 500;

// A set made in a store that went back to a backup must be over one that phones have from before.
std::uint64_t nextNumber(HubTransaction& transaction, absl::Time now) {
  v1::HubPins last;
  last.ParseFromString(signedPins(transaction).content());
  const std::int64_t micros = std::max<std::int64_t>(0, absl::ToUnixMicros(now));
  return std::max<std::uint64_t>(last.number() + 1, static_cast<std::uint64_t>(micros));
}

absl::Status putPins(HubTransaction& transaction, const ClinicKey& key, const std::string& clinic_id,
                     absl::Time now) {
  v1::HubPins pins;
  pins.set_clinic_id(clinic_id);
  pins.set_number(nextNumber(transaction, now));
  *pins.mutable_issued_at() = toTimestamp(now);
  for (const char* name : {"certificate", "backup_certificate"}) {
    const auto pin = fingerprintOf(transaction.setting(name));
    if (!pin.ok()) return pin.status();
    pins.add_certificate_sha256(*pin);
  }
  const std::string former = transaction.setting("former_pin");
  if (!former.empty()) pins.add_certificate_sha256(former);
  transaction.putSetting("pins", toBytes(signPins(toBytes(pins), key)));
  return absl::OkStatus();
}

bool overlapIsOver(HubTransaction& transaction, absl::Time now) {
  const std::string until = transaction.setting("former_until");
  return !until.empty() && now > absl::FromUnixMicros(std::stoll(until));
}

absl::Time knownSince(HubTransaction& transaction) {
  v1::HubPins pins;
  pins.ParseFromString(signedPins(transaction).content());
  return toTime(pins.issued_at());
}

// Whether the set begins with the certificate that is shown: somebody may have put another into the store.
absl::StatusOr<bool> toldOfShown(HubTransaction& transaction) {
  const auto shown = fingerprintOf(transaction.setting("certificate"));
  if (!shown.ok()) return shown.status();
  v1::HubPins pins;
  pins.ParseFromString(signedPins(transaction).content());
  return pins.certificate_sha256_size() > 0 && pins.certificate_sha256(0) == *shown;
}

absl::Status checkEverybodyKnows(HubTransaction& transaction) {
  const int unaware = phonesWithoutBackup(transaction, knownSince(transaction));
  if (unaware == 0) return absl::OkStatus();
  return absl::FailedPreconditionError(
      "phones that were not in contact since the backup certificate was made and would need a new pairing "
      "code: " +
      std::to_string(unaware) + "; wait for them, or say --anyway");
}

}  // namespace

absl::Status putCertificates(HubTransaction& transaction, const Certificates& certificates,
                             const ClinicKey& key, const std::string& clinic_id, absl::Time now) {
  transaction.putSetting("certificate", certificates.current.certificate_pem);
  transaction.putSetting("certificate_key", certificates.current.key_pem);
  transaction.putSetting("backup_certificate", certificates.backup.certificate_pem);
  transaction.putSetting("backup_certificate_key", certificates.backup.key_pem);
  return putPins(transaction, key, clinic_id, now);
}

absl::Status keepCertificates(HubTransaction& transaction, const ClinicKey& key, const std::string& clinic_id,
                              absl::Time now) {
  const bool over = overlapIsOver(transaction, now);
  if (over) {
    transaction.putSetting("former_pin", "");
    transaction.putSetting("former_until", "");
  }
  const bool lacking = transaction.setting("backup_certificate").empty();
  if (lacking) {
    const auto backup = makeCertificate({});
    if (!backup.ok()) return backup.status();
    transaction.putSetting("backup_certificate", backup->certificate_pem);
    transaction.putSetting("backup_certificate_key", backup->key_pem);
  }
  const auto told = toldOfShown(transaction);
  if (!told.ok()) return told.status();
  return over || lacking || !*told ? putPins(transaction, key, clinic_id, now) : absl::OkStatus();
}

absl::Status rotateCertificates(HubTransaction& transaction, const Certificate& backup,
                                const Rotation& rotation, const ClinicKey& key, const std::string& clinic_id,
                                absl::Time now) {
  absl::Status good = rotation.anyway ? absl::OkStatus() : checkEverybodyKnows(transaction);
  if (!good.ok()) return good;
  const auto former = fingerprintOf(transaction.setting("certificate"));
  if (!former.ok()) return former.status();
  const absl::Time until = now + kCertificateOverlap;
  transaction.putSetting("former_pin", rotation.at_once ? "" : *former);
  transaction.putSetting("former_until", rotation.at_once ? "" : std::to_string(absl::ToUnixMicros(until)));
  const Certificate next = {transaction.setting("backup_certificate"),
                            transaction.setting("backup_certificate_key")};
  return putCertificates(transaction, {next, backup}, key, clinic_id, now);
}

int phonesWithoutBackup(HubTransaction& transaction, absl::Time since) {
  int count = 0;
  std::string after;
  while (true) {
    const std::vector<std::string> ids = transaction.personIdsAfter(after, kPersonsAtOnce);
    if (ids.empty()) return count;
    after = ids.back();
    for (const auto& id : ids) {
      for (const auto& device : transaction.devices(id)) {
        const absl::Time heard = std::max(device.paired_at, device.last_contact.value_or(device.paired_at));
        if (!device.revoked && heard < since) ++count;
      }
    }
  }
}

v1::SignedHubPins signedPins(HubTransaction& transaction) {
  v1::SignedHubPins pins;
  if (!pins.ParseFromString(transaction.setting("pins"))) pins.Clear();
  return pins;
}

std::string otherPin(HubTransaction& transaction, const std::string& shown) {
  v1::HubPins pins;
  if (!pins.ParseFromString(signedPins(transaction).content())) return "";
  for (const auto& pin : pins.certificate_sha256()) {
    if (pin != shown) return pin;
  }
  return "";
}

}  // namespace newel
