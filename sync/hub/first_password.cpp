#include "sync/hub/first_password.h"

#include "sync/common/text_codes.h"

namespace newel {
namespace {

constexpr std::size_t kLength = 16;
constexpr std::size_t kGroup = 4;

}  // namespace

std::string newFirstPassword(Random& random) {
  std::string password = randomCrockford(random, kLength);
  for (std::size_t i = kLength - kGroup; i > 0; i -= kGroup) password.insert(i, "-");
  return password;
}

std::string canonicalFirstPassword(const std::string& typed) {
  std::string canonical;
  for (const char c : typed) {
    if (c == '-' || c == ' ') continue;
    const char upper = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    canonical += upper == 'O' ? '0' : upper == 'I' || upper == 'L' ? '1' : upper;
  }
  return canonical;
}

}  // namespace newel
