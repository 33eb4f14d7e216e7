#include "sync/hub/password.h"

#include <sodium.h>

#include <semaphore>

namespace newel {
namespace {

constexpr unsigned long long kPasses = 2;
constexpr std::size_t kPasswordMemory = std::size_t{64} << 20U;
constexpr std::size_t kCodeMemory = std::size_t{19} << 20U;

// Two cores, and 128 MiB at most: a flood of sign-ins must not take the machine down.
std::counting_semaphore<2>& turns() {
  static std::counting_semaphore<2> turns(2);
  return turns;
}

class Turn {
 public:
  Turn() { turns().acquire(); }
  ~Turn() { turns().release(); }
  Turn(const Turn&) = delete;
  Turn& operator=(const Turn&) = delete;
};

absl::StatusOr<std::string> hash(const std::string& secret, std::size_t memory) {
  const Turn turn;
  char text[crypto_pwhash_STRBYTES] = {};
  if (crypto_pwhash_str_alg(text, secret.data(), secret.size(), kPasses, memory,
                            crypto_pwhash_ALG_ARGON2ID13) != 0) {
    return absl::ResourceExhaustedError("not enough memory");
  }
  return std::string(text);
}

}  // namespace

absl::Status checkPassword(const std::string& password, const std::string& user_name) {
  if (password.size() < 8) return absl::InvalidArgumentError("password: shorter than 8 characters");
  if (password.size() > 256) return absl::InvalidArgumentError("password: longer than 256 bytes");
  if (password == user_name) return absl::InvalidArgumentError("password: is the user name");
  if (password.find_first_not_of(password.front()) == std::string::npos) {
    return absl::InvalidArgumentError("password: one character repeated");
  }
  return absl::OkStatus();
}

absl::StatusOr<std::string> hashPassword(const std::string& password) {
  return hash(password, kPasswordMemory);
}
absl::StatusOr<std::string> hashCode(const std::string& code) { return hash(code, kCodeMemory); }

bool passwordFits(const std::string& hash, const std::string& password) {
  const Turn turn;
  return crypto_pwhash_str_verify(hash.c_str(), password.data(), password.size()) == 0;
}

const std::string& nobodysHash() {
  static const std::string kHash = [] {
    unsigned char random[32];
    randombytes_buf(random, sizeof(random));
    return hashPassword(std::string(reinterpret_cast<char*>(random), sizeof(random))).value_or("");
  }();
  return kHash;
}

}  // namespace newel
