#include "sync/home/seal.h"

#include <sodium.h>

namespace newel {
namespace {

// What a sealed record begins with: the form's number and a mark of the key, then the nonce.
constexpr char kForm = 1;
constexpr std::size_t kMarkBytes = 8;
constexpr std::size_t kNonceBytes = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr std::size_t kHeadBytes = 1 + kMarkBytes;
constexpr std::size_t kTagBytes = crypto_aead_xchacha20poly1305_ietf_ABYTES;

const unsigned char* bytes(const std::string& text) {
  return reinterpret_cast<const unsigned char*>(text.data());
}
unsigned char* bytes(std::string& text) { return reinterpret_cast<unsigned char*>(text.data()); }

// Tells keys apart without telling anything about them.
std::string markOf(const std::string& key) {
  std::string mark(crypto_generichash_BYTES_MIN, '\0');
  constexpr char kWhat[] = "newel store key mark";
  crypto_generichash(bytes(mark), mark.size(), reinterpret_cast<const unsigned char*>(kWhat),
                     sizeof kWhat - 1, bytes(key), key.size());
  return mark.substr(0, kMarkBytes);
}

}  // namespace

Seal::~Seal() { sodium_memzero(m_key.data(), m_key.size()); }

std::string Seal::seal(const std::string& plain, const std::string& place) const {
  std::string nonce(kNonceBytes, '\0');
  m_random.fill(bytes(nonce), nonce.size());
  std::string sealed = kForm + markOf(m_key) + nonce;
  const std::size_t head = sealed.size();
  sealed.resize(head + plain.size() + kTagBytes);
  unsigned long long written = 0;
  crypto_aead_xchacha20poly1305_ietf_encrypt(bytes(sealed) + head, &written, bytes(plain), plain.size(),
                                             bytes(place), place.size(), nullptr, bytes(nonce), bytes(m_key));
  return sealed;
}

absl::StatusOr<std::string> Seal::open(const std::string& sealed, const std::string& place) const {
  const std::size_t head = kHeadBytes + kNonceBytes;
  if (sealed.size() < head + kTagBytes || sealed[0] != kForm)
    return absl::DataLossError("a record of this phone's store is damaged: " + place);
  if (sealed.compare(1, kMarkBytes, markOf(m_key)) != 0)
    return absl::PermissionDeniedError("this phone's store was sealed with another key");
  std::string plain(sealed.size() - head - kTagBytes, '\0');
  unsigned long long written = 0;
  const int result = crypto_aead_xchacha20poly1305_ietf_decrypt(
      bytes(plain), &written, nullptr, bytes(sealed) + head, sealed.size() - head, bytes(place), place.size(),
      bytes(sealed) + kHeadBytes, bytes(m_key));
  if (result != 0) return absl::DataLossError("a record of this phone's store is damaged: " + place);
  return plain;
}

std::string newStoreKey(Random& random) {
  std::string key(kStoreKeyBytes, '\0');
  random.fill(bytes(key), key.size());
  return key;
}

}  // namespace newel
