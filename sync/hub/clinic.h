// What makes a hub this clinic's: its card, its signing key, its certificate, its generation. Kept in the
// store, so that a backup is complete and several hubs on one store are one clinic.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/records/identity.pb.h"
#include "core/records/random.h"
#include "core/time/clock.h"
#include "sync/common/certificate.h"
#include "sync/common/signing.h"
#include "sync/hub/hub_certificates.h"
#include "sync/hub/hub_store.h"

namespace newel {

struct Clinic {
  v1::ClinicCard card;
  ClinicKey key;
  Certificate certificate;
  std::string certificate_sha256;
  // Changes when the store came back from a backup: phones then offer everything again.
  std::string generation;
  bool demo = false;
};

// Makes key, certificate and its backup (for `hosts` besides localhost) and generation. `card` needs name,
// phone and emergency number; its clinic_id is made here. kAlreadyExists when there is a clinic, which stays
// as it is.
absl::Status initClinic(HubStore& store, v1::ClinicCard card, const std::vector<std::string>& hosts,
                        bool demo, const Clock& clock, Random& random);

// The same with certificates that are there already.
absl::Status initClinicWith(HubStore& store, v1::ClinicCard card, const Certificates& certificates, bool demo,
                            const Clock& clock, Random& random);

// kNotFound when initClinic() was never run. A store marked as a backup becomes a new generation here, in one
// transaction, before anybody is served from it.
absl::StatusOr<Clinic> loadClinic(HubStore& store, const Clock& clock, Random& random);

// Shows the backup certificate from the next start on, in one transaction with its line in the audit trail.
// Errors as rotateCertificates(), and kNotFound.
absl::Status rotateClinicCertificate(HubStore& store, const Rotation& rotation, const Clock& clock,
                                     Random& random);
// What a hub that runs for weeks does once a day.
absl::Status keepClinicCertificates(HubStore& store, const Clinic& clinic, const Clock& clock);

// The mark that backup() puts into the copy.
extern const char* const kBackupMark;

}  // namespace newel
