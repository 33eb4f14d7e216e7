#include "sync/common/certificate.h"

#include <openssl/bio.h>
#include <openssl/ec.h>
#include <openssl/err.h>
#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/ssl.h>
#include <openssl/x509v3.h>

#include <memory>
#include <thread>

#include "sync/common/content_hash.h"

namespace newel {
namespace {

template <auto Free>
struct Freed {
  template <typename T>
  void operator()(T* pointer) const {
    Free(pointer);
  }
};
using BioPtr = std::unique_ptr<BIO, Freed<BIO_free_all>>;
using CertPtr = std::unique_ptr<X509, Freed<X509_free>>;
using KeyPtr = std::unique_ptr<EVP_PKEY, Freed<EVP_PKEY_free>>;
using ContextPtr = std::unique_ptr<SSL_CTX, Freed<SSL_CTX_free>>;
using ExtensionPtr = std::unique_ptr<X509_EXTENSION, Freed<X509_EXTENSION_free>>;

absl::Status failed(const std::string& what) {
  ERR_clear_error();
  return absl::InternalError("certificate: " + what);
}

// How often a connection under way is looked at.
constexpr absl::Duration kLook = absl::Milliseconds(2);

std::string textOf(BIO* bio) {
  char* data = nullptr;
  const long size = BIO_get_mem_data(bio, &data);
  return {data, static_cast<std::size_t>(size)};
}

absl::StatusOr<std::string> pemOf(X509* certificate) {
  const BioPtr bio(BIO_new(BIO_s_mem()));
  if (!bio || PEM_write_bio_X509(bio.get(), certificate) != 1) return failed("writing it");
  return textOf(bio.get());
}

bool addExtension(X509* certificate, int nid, const std::string& value) {
  X509V3_CTX context;
  X509V3_set_ctx_nodb(&context);
  X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
  const ExtensionPtr extension(X509V3_EXT_conf_nid(nullptr, &context, nid, value.c_str()));
  return extension && X509_add_ext(certificate, extension.get(), -1) == 1;
}

bool isAddress(const std::string& host) {
  return host.find_first_not_of("0123456789.") == std::string::npos || host.find(':') != std::string::npos;
}

std::string alternativeNames(const std::vector<std::string>& hosts) {
  std::string names = "DNS:localhost,IP:127.0.0.1,IP:::1";
  for (const auto& host : hosts) {
    if (host.empty() || host == "localhost" || host == "127.0.0.1" || host == "::1") continue;
    names += (isAddress(host) ? ",IP:" : ",DNS:") + host;
  }
  return names;
}

bool fill(X509* certificate, EVP_PKEY* key, const std::vector<std::string>& hosts) {
  X509_set_version(certificate, X509_VERSION_3);
  ASN1_INTEGER_set(X509_get_serialNumber(certificate), 1);
  if (ASN1_TIME_set_string_X509(X509_getm_notBefore(certificate), "20000101000000Z") != 1) return false;
  if (ASN1_TIME_set_string_X509(X509_getm_notAfter(certificate), "99991231235959Z") != 1) return false;
  X509_set_pubkey(certificate, key);
  X509_NAME* name = X509_get_subject_name(certificate);
  X509_NAME_add_entry_by_txt(name, "CN", MBSTRING_UTF8, reinterpret_cast<const unsigned char*>("Newel hub"),
                             -1, -1, 0);
  X509_set_issuer_name(certificate, name);
  return addExtension(certificate, NID_basic_constraints, "critical,CA:TRUE") &&
         addExtension(certificate, NID_subject_alt_name, alternativeNames(hosts)) &&
         X509_sign(certificate, key, EVP_sha256()) > 0;
}

}  // namespace

absl::StatusOr<Certificate> makeCertificate(const std::vector<std::string>& hosts) {
  const KeyPtr key(EVP_EC_gen("P-256"));
  const CertPtr certificate(X509_new());
  if (!key || !certificate || !fill(certificate.get(), key.get(), hosts)) return failed("making it");
  const BioPtr bio(BIO_new(BIO_s_mem()));
  if (!bio || PEM_write_bio_PrivateKey(bio.get(), key.get(), nullptr, nullptr, 0, nullptr, nullptr) != 1) {
    return failed("writing its key");
  }
  auto pem = pemOf(certificate.get());
  if (!pem.ok()) return pem.status();
  return Certificate{*pem, textOf(bio.get())};
}

absl::StatusOr<std::string> fingerprintOf(const std::string& certificate_pem) {
  const BioPtr bio(BIO_new_mem_buf(certificate_pem.data(), static_cast<int>(certificate_pem.size())));
  const CertPtr certificate(bio ? PEM_read_bio_X509(bio.get(), nullptr, nullptr, nullptr) : nullptr);
  ERR_clear_error();
  if (!certificate) return absl::InvalidArgumentError("certificate: not to be read");
  unsigned char* der = nullptr;
  const int size = i2d_X509(certificate.get(), &der);
  if (size <= 0) return failed("reading it");
  const std::string bytes(reinterpret_cast<char*>(der), static_cast<std::size_t>(size));
  OPENSSL_free(der);
  return sha256(bytes);
}

absl::StatusOr<std::string> fetchCertificate(const std::string& address, absl::Duration timeout) {
  const ContextPtr context(SSL_CTX_new(TLS_client_method()));
  if (!context) return failed("TLS");
  // Whose it is gets decided by the fingerprint, not by a chain.
  SSL_CTX_set_verify(context.get(), SSL_VERIFY_NONE, nullptr);
  SSL_CTX_set_min_proto_version(context.get(), TLS1_2_VERSION);
  const BioPtr bio(BIO_new_ssl_connect(context.get()));
  if (!bio) return failed("TLS");
  BIO_set_conn_hostname(bio.get(), address.c_str());
  BIO_set_nbio(bio.get(), 1);
  // Not BIO_do_connect_retry(): it goes on asking an address that refuses until its time is up.
  int connected = BIO_do_connect(bio.get());
  for (absl::Duration waited; connected != 1 && BIO_should_retry(bio.get()) && waited < timeout;
       waited += kLook) {
    std::this_thread::sleep_for(absl::ToChronoMilliseconds(kLook));
    connected = BIO_do_connect(bio.get());
  }
  SSL* ssl = nullptr;
  BIO_get_ssl(bio.get(), &ssl);
  if (connected != 1 || ssl == nullptr) {
    ERR_clear_error();
    return absl::UnavailableError("nobody answers at " + address);
  }
  const CertPtr certificate(SSL_get1_peer_certificate(ssl));
  if (!certificate) return absl::UnavailableError("no certificate at " + address);
  return pemOf(certificate.get());
}

}  // namespace newel
