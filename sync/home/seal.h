// Seals what the phone keeps, record by record: XChaCha20-Poly1305 (libsodium), a random nonce each, bound to
// the place of the record, so that nothing can be read, changed, or moved to another place unnoticed.
// Not here: where the key is kept (platform/secret_store.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/random.h"

namespace newel {

inline constexpr std::size_t kStoreKeyBytes = 32;

class Seal {
 public:
  // `key` has kStoreKeyBytes. `random` outlives this.
  Seal(std::string key, Random& random) : m_key(std::move(key)), m_random(random) {}
  ~Seal();
  Seal(const Seal&) = delete;
  Seal& operator=(const Seal&) = delete;

  // `place`: table and row.
  std::string seal(const std::string& plain, const std::string& place) const;
  // kPermissionDenied sealed with another key; kDataLoss changed, cut, or of another place.
  absl::StatusOr<std::string> open(const std::string& sealed, const std::string& place) const;

 private:
  std::string m_key;
  Random& m_random;
};

std::string newStoreKey(Random& random);

}  // namespace newel
