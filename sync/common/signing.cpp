#include "sync/common/signing.h"

#include <sodium.h>

#include "core/records/check.h"
#include "sync/common/content_hash.h"
#include "sync/common/text_codes.h"

namespace newel {
namespace {

// With the closing zero byte, as programme.proto says: no content of one kind is a signature of the other.
const std::string kProgrammeDomain = std::string("newel.v1.programme") + '\0';
const std::string kHoldDomain = std::string("newel.v1.hold") + '\0';
const std::string kPinsDomain = std::string("newel.v1.hub_pins") + '\0';
const std::string kHeadDomain = std::string("newel.v1.audit_head") + '\0';
constexpr std::size_t kPinBytes = 32;

const unsigned char* raw(const std::string& text) {
  return reinterpret_cast<const unsigned char*>(text.data());
}

std::string signatureOf(const std::string& domain, const std::string& content, const ClinicKey& key) {
  const std::string message = domain + content;
  std::string signature(crypto_sign_BYTES, '\0');
  crypto_sign_detached(reinterpret_cast<unsigned char*>(signature.data()), nullptr, raw(message),
                       message.size(), raw(key.secret_key));
  return signature;
}

absl::Status verify(const std::string& domain, const std::string& content, const std::string& signature,
                    const std::string& key_id, const std::string& public_key) {
  if (public_key.size() != crypto_sign_PUBLICKEYBYTES)
    return absl::UnauthenticatedError("key: none to check with");
  if (key_id != keyIdOf(public_key)) return absl::UnauthenticatedError("key_id: another key");
  if (signature.size() != crypto_sign_BYTES) return absl::UnauthenticatedError("signature: is missing");
  const std::string message = domain + content;
  if (crypto_sign_verify_detached(raw(signature), raw(message), message.size(), raw(public_key)) != 0) {
    return absl::UnauthenticatedError("signature: does not fit the content");
  }
  return absl::OkStatus();
}

template <typename Record>
absl::StatusOr<Record> parsed(const std::string& content) {
  Record record;
  if (!record.ParseFromString(content)) return absl::InvalidArgumentError("content: not to be read");
  const absl::Status good = check(record);
  if (!good.ok()) return good;
  return record;
}

}  // namespace

std::string keyIdOf(const std::string& public_key) { return toHex(sha256(public_key)).substr(0, 16); }

ClinicKey makeClinicKey(Random& random) {
  const std::string seed = randomBytes(random, crypto_sign_SEEDBYTES);
  ClinicKey key;
  key.public_key.resize(crypto_sign_PUBLICKEYBYTES);
  key.secret_key.resize(crypto_sign_SECRETKEYBYTES);
  crypto_sign_seed_keypair(reinterpret_cast<unsigned char*>(key.public_key.data()),
                           reinterpret_cast<unsigned char*>(key.secret_key.data()), raw(seed));
  key.id = keyIdOf(key.public_key);
  return key;
}

v1::SignedProgramme signProgramme(const std::string& content, const ClinicKey& key) {
  v1::SignedProgramme result;
  result.set_content(content);
  result.set_signature(signatureOf(kProgrammeDomain, content, key));
  result.set_key_id(key.id);
  return result;
}

v1::SignedHoldOrder signHoldOrder(const std::string& content, const ClinicKey& key) {
  v1::SignedHoldOrder result;
  result.set_content(content);
  result.set_signature(signatureOf(kHoldDomain, content, key));
  result.set_key_id(key.id);
  return result;
}

absl::StatusOr<v1::Programme> openProgramme(const v1::SignedProgramme& signed_programme,
                                            const std::string& public_key) {
  const absl::Status good = verify(kProgrammeDomain, signed_programme.content(), signed_programme.signature(),
                                   signed_programme.key_id(), public_key);
  if (!good.ok()) return good;
  return parsed<v1::Programme>(signed_programme.content());
}

absl::StatusOr<v1::HoldOrder> openHoldOrder(const v1::SignedHoldOrder& signed_order,
                                            const std::string& public_key) {
  const absl::Status good = verify(kHoldDomain, signed_order.content(), signed_order.signature(),
                                   signed_order.key_id(), public_key);
  if (!good.ok()) return good;
  return parsed<v1::HoldOrder>(signed_order.content());
}

v1::SignedHubPins signPins(const std::string& content, const ClinicKey& key) {
  v1::SignedHubPins result;
  result.set_content(content);
  result.set_signature(signatureOf(kPinsDomain, content, key));
  result.set_key_id(key.id);
  return result;
}

absl::StatusOr<v1::HubPins> openPins(const v1::SignedHubPins& pins, const std::string& public_key) {
  const absl::Status good = verify(kPinsDomain, pins.content(), pins.signature(), pins.key_id(), public_key);
  if (!good.ok()) return good;
  v1::HubPins opened;
  if (!opened.ParseFromString(pins.content())) {
    return absl::InvalidArgumentError("content: not to be read");
  }
  bool sound = opened.certificate_sha256_size() >= 1 && opened.certificate_sha256_size() <= kMostPins;
  for (const auto& pin : opened.certificate_sha256()) sound = sound && pin.size() == kPinBytes;
  if (!sound) return absl::InvalidArgumentError("certificate_sha256: 1 to 4 hashes of 32 bytes");
  return opened;
}

std::string signAuditHead(const std::string& text, const ClinicKey& key) {
  return signatureOf(kHeadDomain, text, key);
}

absl::Status verifyAuditHead(const std::string& text, const std::string& signature,
                             const std::string& public_key) {
  return verify(kHeadDomain, text, signature, keyIdOf(public_key), public_key);
}

}  // namespace newel
