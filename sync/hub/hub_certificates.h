// Which certificate the hub shows, which one it will show next (the backup), and the signed set of pins by
// which phones and desks know both. To rotate is to show the backup from the next start on and to make a new
// backup, which everybody is told of over connections that the certificates known so far protect. Both keys
// lie in the store: a backup serves a hub whose certificate has to change, and who takes the store has more
// than keys.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <cstdint>
#include <string>

#include "sync/common/certificate.h"
#include "sync/common/signing.h"
#include "sync/hub/hub_store.h"

namespace newel {

struct Certificates {
  Certificate current;
  Certificate backup;
};

// How long a certificate is still believed after a rotation: hubs that share a database are restarted one
// after the other, and a phone must find each. Ours, no source.
inline constexpr absl::Duration kCertificateOverlap = absl::Hours(24 * 14);

// Inside a write transaction, all of them. `clinic_id` goes into the signed set.
absl::Status putCertificates(HubTransaction& transaction, const Certificates& certificates,
                             const ClinicKey& key, const std::string& clinic_id, absl::Time now);
// Makes what a store of an earlier version lacks, and lets go of a former certificate whose overlap is over.
absl::Status keepCertificates(HubTransaction& transaction, const ClinicKey& key, const std::string& clinic_id,
                              absl::Time now);

struct Rotation {
  bool at_once = false;  // the key got into other hands: the former certificate is believed no longer
  bool anyway = false;   // even if phones have not yet heard of the backup
};
// The backup becomes the certificate to show, `backup` the new one. kFailedPrecondition: phones that are
// paired have not been in contact since the present backup was made known; they would need a new code.
absl::Status rotateCertificates(HubTransaction& transaction, const Certificate& backup,
                                const Rotation& rotation, const ClinicKey& key, const std::string& clinic_id,
                                absl::Time now);
// Phones with access that cannot know the present backup.
int phonesWithoutBackup(HubTransaction& transaction, absl::Time since);

// The set as it goes to phones and desks.
v1::SignedHubPins signedPins(HubTransaction& transaction);
// The pin beside `shown` that comes first: the backup, or what is to be shown after the next start.
std::string otherPin(HubTransaction& transaction, const std::string& shown);

}  // namespace newel
