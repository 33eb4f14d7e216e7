// Stands in for sync/hub/password.cpp in the simulation: Argon2id is slow on purpose and salts by itself, and
// a replay has to be quick and exact. Nothing here is about passwords; phones pair by the picture code.
#include "sync/common/content_hash.h"
#include "sync/common/text_codes.h"
#include "sync/hub/password.h"

namespace newel {

absl::Status checkPassword(const std::string& /*password*/, const std::string& /*user_name*/) {
  return absl::OkStatus();
}
absl::StatusOr<std::string> hashPassword(const std::string& password) { return toHex(sha256(password)); }
absl::StatusOr<std::string> hashCode(const std::string& code) { return toHex(sha256(code)); }
bool passwordFits(const std::string& hash, const std::string& password) {
  return hash == toHex(sha256(password));
}
const std::string& nobodysHash() {
  static const std::string kHash = "nobody";
  return kHash;
}

}  // namespace newel
