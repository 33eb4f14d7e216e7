#include "sync/common/content_hash.h"

#include <openssl/evp.h>

#include <memory>
#include <stdexcept>

namespace newel {

namespace {

constexpr std::size_t kSha256Bytes = 32;

struct MdFree {
  void operator()(EVP_MD* md) const { EVP_MD_free(md); }
};

// OpenSSL's takes the processor's own instructions where it has them, libsodium's is plain C. Looked up once:
// each look-up costs as much as a kilobyte of hashing.
const EVP_MD* sha256Method() {
  static const std::unique_ptr<EVP_MD, MdFree> kMethod(EVP_MD_fetch(nullptr, "SHA256", nullptr));
  return kMethod.get();
}

}  // namespace

std::string sha256(const std::string& bytes) {
  std::string hash(kSha256Bytes, '\0');
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), reinterpret_cast<unsigned char*>(hash.data()), &size,
                 sha256Method(), nullptr) != 1 ||
      size != kSha256Bytes) {
    // No memory, or an OpenSSL without SHA-256: nothing here may go on without a hash.
    throw std::runtime_error("SHA-256 is not to be had from OpenSSL");
  }
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
