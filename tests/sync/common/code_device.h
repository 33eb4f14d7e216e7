#pragma once

#include <algorithm>
#include <cstdint>
#include <string>

#include "sync/hub/totp.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::test {

// An account's device with the codes: it knows only the key that was shown as text (RFC 4648 base 32), and
// gives what RFC 6238 says.
class CodeDevice {
 public:
  CodeDevice(const std::string& secret_text, const TestClock* clock) : m_clock(clock) {
    constexpr char kAlphabet[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    std::uint32_t buffer = 0;
    int bits = 0;
    for (const char c : secret_text) {
      if (c == ' ') continue;
      buffer =
          (buffer << 5U) | static_cast<std::uint32_t>(std::find(kAlphabet, kAlphabet + 32, c) - kAlphabet);
      bits += 5;
      if (bits < 8) continue;
      bits -= 8;
      m_secret += static_cast<char>((buffer >> static_cast<unsigned>(bits)) & 255U);
    }
  }
  std::string code() const { return hotpCode(m_secret, totpStepAt(m_clock->wall()), kTotpDigits); }

 private:
  std::string m_secret;
  const TestClock* m_clock;
};

}  // namespace newel::test
