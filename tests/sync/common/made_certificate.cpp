#include "tests/sync/common/made_certificate.h"

#include <gtest/gtest.h>
#include <openssl/ec.h>
#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

#include <memory>

namespace newel::test {
namespace {

constexpr long kDay = 86400;

template <typename Write>
std::string pem(Write&& write) {
  const std::unique_ptr<BIO, int (*)(BIO*)> bio(BIO_new(BIO_s_mem()), BIO_free);
  EXPECT_EQ(write(bio.get()), 1);
  char* data = nullptr;
  const long size = BIO_get_mem_data(bio.get(), &data);
  return {data, static_cast<std::size_t>(size)};
}

std::unique_ptr<BIO, int (*)(BIO*)> reading(const std::string& text) {
  return {BIO_new_mem_buf(text.data(), static_cast<int>(text.size())), BIO_free};
}

void extend(X509* certificate, X509* issuer, int nid, const char* value) {
  X509V3_CTX context;
  X509V3_set_ctx_nodb(&context);
  X509V3_set_ctx(&context, issuer, certificate, nullptr, nullptr, 0);
  X509_EXTENSION* extension = X509V3_EXT_conf_nid(nullptr, &context, nid, value);
  EXPECT_EQ(X509_add_ext(certificate, extension, -1), 1);
  X509_EXTENSION_free(extension);
}

}  // namespace

Certificate madeCertificate(int from_days, int to_days, const Certificate* issuer) {
  const std::unique_ptr<EVP_PKEY, void (*)(EVP_PKEY*)> key(EVP_EC_gen("P-256"), EVP_PKEY_free);
  const std::unique_ptr<X509, void (*)(X509*)> made(X509_new(), X509_free);
  std::unique_ptr<X509, void (*)(X509*)> above(nullptr, X509_free);
  std::unique_ptr<EVP_PKEY, void (*)(EVP_PKEY*)> above_key(nullptr, EVP_PKEY_free);
  if (issuer != nullptr) {
    above.reset(PEM_read_bio_X509(reading(issuer->certificate_pem).get(), nullptr, nullptr, nullptr));
    above_key.reset(PEM_read_bio_PrivateKey(reading(issuer->key_pem).get(), nullptr, nullptr, nullptr));
  }
  X509_set_version(made.get(), X509_VERSION_3);
  ASN1_INTEGER_set(X509_get_serialNumber(made.get()), issuer == nullptr ? 1 : 2);
  X509_gmtime_adj(X509_getm_notBefore(made.get()), from_days * kDay);
  X509_gmtime_adj(X509_getm_notAfter(made.get()), to_days * kDay);
  X509_set_pubkey(made.get(), key.get());
  const char* name = issuer == nullptr ? "Authority (invented)" : "Newel hub";
  X509_NAME_add_entry_by_txt(X509_get_subject_name(made.get()), "CN", MBSTRING_UTF8,
                             reinterpret_cast<const unsigned char*>(name), -1, -1, 0);
  X509_set_issuer_name(made.get(), X509_get_subject_name(issuer == nullptr ? made.get() : above.get()));
  X509* signer = issuer == nullptr ? made.get() : above.get();
  extend(made.get(), signer, NID_basic_constraints, issuer == nullptr ? "critical,CA:TRUE" : "CA:FALSE");
  extend(made.get(), signer, NID_subject_alt_name, "DNS:localhost,IP:127.0.0.1");
  EXPECT_GT(X509_sign(made.get(), issuer == nullptr ? key.get() : above_key.get(), EVP_sha256()), 0);
  return {pem([&](BIO* bio) { return PEM_write_bio_X509(bio, made.get()); }), pem([&](BIO* bio) {
            return PEM_write_bio_PrivateKey(bio, key.get(), nullptr, nullptr, 0, nullptr, nullptr);
          })};
}

}  // namespace newel::test
