#include "sync/hub/clinic.h"

#include <utility>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/hub/audit_trail.h"

namespace newel {
namespace {

constexpr std::size_t kGenerationBytes = 16;

std::string newGeneration(Random& random) { return toBase64Url(randomBytes(random, kGenerationBytes)); }

}  // namespace

const char* const kBackupMark = "is_backup";

absl::Status initClinic(HubStore& store, v1::ClinicCard card, const std::vector<std::string>& hosts,
                        bool demo, const Clock& clock, Random& random) {
  const auto certificate = makeCertificate(hosts);
  if (!certificate.ok()) return certificate.status();
  const auto backup = makeCertificate(hosts);
  if (!backup.ok()) return backup.status();
  return initClinicWith(store, std::move(card), {*certificate, *backup}, demo, clock, random);
}

absl::Status initClinicWith(HubStore& store, v1::ClinicCard card, const Certificates& certificates, bool demo,
                            const Clock& clock, Random& random) {
  card.set_clinic_id(newRecordId(clock, random));
  absl::Status good = check(card);
  if (!good.ok()) return good;
  const ClinicKey key = makeClinicKey(random);
  const AuditTrail audit(&clock);
  return store.write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.setting("card").empty())
      return absl::AlreadyExistsError("there is a clinic here already");
    const std::string bytes = toBytes(card);
    transaction.putSetting("card", bytes);
    transaction.putSetting("public_key", key.public_key);
    transaction.putSetting("secret_key", key.secret_key);
    absl::Status put = putCertificates(transaction, certificates, key, card.clinic_id(), clock.wall());
    if (!put.ok()) return put;
    transaction.putSetting("generation", newGeneration(random));
    transaction.putSetting("demo", demo ? "1" : "");
    v1::Envelope envelope = makeEnvelope(v1::RECORD_KIND_CLINIC_CARD, card.clinic_id(), 1, bytes);
    envelope.set_sequence(transaction.takeSequence());
    *envelope.mutable_received_at() = toTimestamp(clock.wall());
    transaction.addToFeed("", envelope, /*replace=*/true);
    audit.add(transaction, {.action = "clinic.init", .record = card.clinic_id()});
    return absl::OkStatus();
  });
}

absl::StatusOr<Clinic> loadClinic(HubStore& store, const Clock& clock, Random& random) {
  const AuditTrail audit(&clock);
  Clinic clinic;
  const absl::Status loaded = store.write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.setting(kBackupMark).empty() && !isBroken(Broken::MissTheRestore)) {
      transaction.putSetting("generation", newGeneration(random));
      transaction.putSetting(kBackupMark, "");
      audit.add(transaction, {.action = "store.restored"});
    }
    if (!clinic.card.ParseFromString(transaction.setting("card")) || clinic.card.clinic_id().empty()) {
      return absl::NotFoundError("there is no clinic here yet: run newel-hub init first");
    }
    clinic.key.public_key = transaction.setting("public_key");
    clinic.key.secret_key = transaction.setting("secret_key");
    clinic.key.id = keyIdOf(clinic.key.public_key);
    absl::Status kept = keepCertificates(transaction, clinic.key, clinic.card.clinic_id(), clock.wall());
    if (!kept.ok()) return kept;
    clinic.certificate = {transaction.setting("certificate"), transaction.setting("certificate_key")};
    clinic.generation = transaction.setting("generation");
    clinic.demo = !transaction.setting("demo").empty();
    return absl::OkStatus();
  });
  if (!loaded.ok()) return loaded;
  const auto fingerprint = fingerprintOf(clinic.certificate.certificate_pem);
  if (!fingerprint.ok()) return fingerprint.status();
  clinic.certificate_sha256 = *fingerprint;
  return clinic;
}

absl::Status rotateClinicCertificate(HubStore& store, const Rotation& rotation, const Clock& clock,
                                     Random& random) {
  const auto clinic = loadClinic(store, clock, random);
  if (!clinic.ok()) return clinic.status();
  const auto backup = makeCertificate({});
  if (!backup.ok()) return backup.status();
  const AuditTrail audit(&clock);
  return store.write([&](HubTransaction& transaction) -> absl::Status {
    absl::Status rotated = rotateCertificates(transaction, *backup, rotation, clinic->key,
                                              clinic->card.clinic_id(), clock.wall());
    if (!rotated.ok()) return rotated;
    audit.add(transaction, {.action = "certificate.rotate", .record = clinic->card.clinic_id()});
    return absl::OkStatus();
  });
}

absl::Status keepClinicCertificates(HubStore& store, const Clinic& clinic, const Clock& clock) {
  return store.write([&](HubTransaction& transaction) {
    return keepCertificates(transaction, clinic.key, clinic.card.clinic_id(), clock.wall());
  });
}

}  // namespace newel
