// JPEG, ITU-T T.81 annex B; the JFIF segment ITU-T T.871, Adobe's ISO/IEC 10918-6 6.5.3.

#include "sync/common/media_formats.h"

namespace newel {
namespace {

using namespace std::string_view_literals;

constexpr unsigned kEnd = 0xD9;
constexpr unsigned kScan = 0xDA;
constexpr unsigned kJfif = 0xE0;
constexpr unsigned kAdobe = 0xEE;
constexpr std::size_t kJfifBytes = 12;   // name, version, unit, density
constexpr std::size_t kAdobeBytes = 12;  // name, version, flags, transform

bool isFrame(unsigned marker) { return marker >= 0xC0 && marker <= 0xC2; }
bool isTable(unsigned marker) { return marker == 0xC4 || marker == 0xDB || marker == 0xDD; }
bool isBeside(unsigned marker) { return (marker >= 0xE0 && marker <= 0xEF) || marker == 0xFE; }

class Jpeg {
 public:
  explicit Jpeg(std::string_view in) : m_in(in) {}

  absl::StatusOr<std::string> cleaned() {
    m_at = 2;
    m_out.append("\xFF\xD8"sv);
    while (true) {
      const unsigned marker = nextMarker();
      if (marker == 0) return cutShort();
      if (marker == kEnd) break;
      absl::Status taken = segment(marker);
      if (!taken.ok()) return taken;
    }
    if (!m_frame || !m_scan) return cutShort();
    m_out.append("\xFF\xD9"sv);
    return std::move(m_out);
  }

 private:
  unsigned byteAt(std::size_t at) const { return static_cast<unsigned char>(m_in[at]); }

  // 0 when there is none.
  unsigned nextMarker() {
    if (m_at >= m_in.size() || byteAt(m_at) != 0xFF) return 0;
    while (m_at < m_in.size() && byteAt(m_at) == 0xFF) ++m_at;  // any number of fill bytes
    return m_at < m_in.size() ? byteAt(m_at++) : 0;
  }

  absl::Status segment(unsigned marker) {
    if (m_at + 2 > m_in.size()) return cutShort();
    const std::size_t length = bigEndian(m_in, m_at, 2);
    if (length < 2 || m_at + length > m_in.size()) return cutShort();
    const std::string_view body = m_in.substr(m_at + 2, length - 2);
    m_at += length;
    if (isFrame(marker)) return frame(marker, body);
    if (isTable(marker)) return put(marker, body);
    if (isBeside(marker)) return beside(marker, body);
    if (marker != kScan) return absl::InvalidArgumentError("content: a rare kind of JPEG; save it again");
    if (!m_frame) return cutShort();
    m_scan = true;
    absl::Status headed = put(marker, body);
    copyScan();
    return headed;
  }

  absl::Status frame(unsigned marker, std::string_view body) {
    if (body.size() < 6 || m_frame) return cutShort();
    m_frame = true;
    const auto height = static_cast<std::uint32_t>(bigEndian(body, 1, 2));
    const auto width = static_cast<std::uint32_t>(bigEndian(body, 3, 2));
    absl::Status size = checkPhotoSize(width, height);
    return size.ok() ? put(marker, body) : size;
  }

  absl::Status beside(unsigned marker, std::string_view body) {
    if (marker == kJfif && body.starts_with("JFIF\0"sv) && body.size() >= kJfifBytes) {
      return put(marker, std::string(body.substr(0, kJfifBytes)) + std::string(2, '\0'));  // no small picture
    }
    if (marker == kAdobe && body.starts_with("Adobe"sv) && body.size() >= kAdobeBytes) {
      return put(marker, body.substr(0, kAdobeBytes));
    }
    return absl::OkStatus();
  }

  absl::Status put(unsigned marker, std::string_view body) {
    m_out += '\xFF';
    m_out += static_cast<char>(marker);
    m_out += static_cast<char>((body.size() + 2) >> 8U);
    m_out += static_cast<char>(body.size() + 2);
    m_out += body;
    return absl::OkStatus();
  }

  // Up to the next marker that is neither a stuffed byte nor a restart.
  void copyScan() {
    const std::size_t from = m_at;
    while (m_at + 1 < m_in.size()) {
      const unsigned next = byteAt(m_at + 1);
      const bool inside = byteAt(m_at) != 0xFF || next == 0 || (next >= 0xD0 && next <= 0xD7);
      if (!inside && next != 0xFF) break;
      m_at += inside && byteAt(m_at) == 0xFF ? 2 : 1;
    }
    m_out += m_in.substr(from, m_at - from);
  }

  const std::string_view m_in;
  std::size_t m_at = 0;
  std::string m_out;
  bool m_frame = false;
  bool m_scan = false;
};

}  // namespace

absl::StatusOr<std::string> cleanJpeg(std::string_view content) { return Jpeg(content).cleaned(); }

}  // namespace newel
