#include "sync/hub/password.h"

#include <sodium.h>
#include <zxcvbn.h>

#include <algorithm>
#include <iterator>
#include <semaphore>

namespace newel {
namespace {

constexpr unsigned long long kPasses = 2;
constexpr std::size_t kPasswordMemory = std::size_t{64} << 20U;
constexpr std::size_t kCodeMemory = std::size_t{19} << 20U;

constexpr std::size_t kLeastCharacters = 8;
constexpr std::size_t kMostBytes = 256;
// 10^8 guesses: up to there zxcvbn calls a password "somewhat guessable" (its README, score 2).
constexpr double kLeastBits = 26.58;
// In Openwall's list of common passwords (public domain; tests/data/passwords) and strange to zxcvbn's own
// ten thousand and its English words.
constexpr const char* kCommonPasswords[] = {"mahalkita",  "teiubesc",  "estrellita",
                                            "jesucristo", "Bismillah", "chouette"};
constexpr std::size_t kCommonBesides = std::size(kCommonPasswords);

// Characters as people count them: NIST SP 800-63B counts each Unicode code point as one.
std::size_t charactersIn(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

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
  if (charactersIn(password) < kLeastCharacters) {
    return absl::InvalidArgumentError("password: shorter than 8 characters; 15 or more are better");
  }
  if (password.size() > kMostBytes) return absl::InvalidArgumentError("password: longer than 256 bytes");
  // A password must not become strong by a name that everybody at the clinic knows.
  const char* known[kCommonBesides + 3] = {user_name.c_str(), "newel"};
  std::copy(std::begin(kCommonPasswords), std::end(kCommonPasswords), known + 2);
  if (ZxcvbnMatch(password.c_str(), known, nullptr) < kLeastBits) {
    return absl::InvalidArgumentError(
        "password: too easy to guess, it is a common one or made of common parts; several words that do not "
        "belong together are good");
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
