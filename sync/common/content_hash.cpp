#include "sync/common/content_hash.h"

#include <sodium.h>

namespace newel {

std::string sha256(const std::string& bytes) {
  std::string hash(crypto_hash_sha256_BYTES, '\0');
  crypto_hash_sha256(reinterpret_cast<unsigned char*>(hash.data()),
                     reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
  return hash;
}

v1::Envelope makeEnvelope(v1::RecordKind kind, const std::string& id, std::uint32_t revision,
                          const std::string& content) {
  v1::Envelope envelope;
  envelope.set_kind(kind);
  envelope.set_id(id);
  envelope.set_revision(revision);
  envelope.set_content(content);
  envelope.set_sha256(sha256(content));
  return envelope;
}

}  // namespace newel
