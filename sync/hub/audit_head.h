// The head of the audit trail, signed by the clinic's key, to be kept where who can change the store cannot
// reach it: against such a head a tail that was cut off, and a trail that was written anew, are found.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <string>

#include "sync/hub/audit_trail.h"
#include "sync/hub/clinic.h"

namespace newel {

struct SignedAuditHead {
  AuditHead head;
  absl::Time at;  // when it was signed, whole seconds
  std::string clinic_id;
  std::string public_key;  // whose signature it is
};

// One line of JSON with a newline:
// {"clinic":"<id>","hash":"<hex>","key":"<hex>","n":12,"signature":"<base64url>","t":"2026-11-29T21:00:00Z"}.
// The signature is over the same object without "signature", keys in order, no spaces.
std::string formatAuditHead(const AuditHead& head, const std::string& clinic_id, const ClinicKey& key,
                            absl::Time at);
// kInvalidArgument: no such line. kDataLoss: its signature is not that of the key in it.
absl::StatusOr<SignedAuditHead> parseAuditHead(const std::string& text);

// The head as it is now. kNotFound: no line has been written yet.
absl::StatusOr<AuditHead> readAuditHead(HubStore& store);

// Replaces the file `path` (0600) whole: written under another name, flushed, renamed.
absl::Status writeHeadFile(const std::string& path, const std::string& text);
// The file of the UTC day of `at` in `folder`, "audit-head-2026-11-29.json", unless it is there; its path, or
// empty when it was there. `folder` is made (0700) when missing.
absl::StatusOr<std::string> writeDailyHead(const std::string& folder, HubStore& store, const Clinic& clinic,
                                           absl::Time at);

}  // namespace newel
