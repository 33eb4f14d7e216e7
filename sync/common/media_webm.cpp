// WebM: EBML (RFC 8794), elements of Matroska (RFC 9559), the codecs of the WebM container guidelines.
#include <algorithm>
#include <cstring>

#include "sync/common/media_formats.h"

namespace newel {
namespace {

using namespace std::string_view_literals;

constexpr std::uint64_t kUnknown = ~std::uint64_t{0};
constexpr char kVoid = '\xEC';

struct Element {
  std::uint64_t id = 0;
  std::size_t at = 0;    // of its id
  std::size_t body = 0;  // of its content
  std::uint64_t size = 0;
  std::size_t end() const { return body + static_cast<std::size_t>(size); }
};

// What is done with an element, by its id; what no table names is blanked.
enum class Do { Keep, Enter, Info, Tracks, Track, Type, Codec, Video, Width, Height, Empty, Refuse };
struct Rule {
  std::uint64_t id;
  Do what;
};

constexpr Rule kSegment[] = {
    {0x114D9B74, Do::Keep},                                                     // SeekHead
    {0x1549A966, Do::Info},  {0x1654AE6B, Do::Tracks}, {0x1C53BB6B, Do::Keep},  // Cues
    {0x1F43B675, Do::Enter},                                                    // Cluster
    {0xE7, Do::Keep},                                                           // Timestamp
    {0xA7, Do::Keep},                                                           // Position
    {0xAB, Do::Keep},                                                           // PrevSize
    {0xA3, Do::Keep},                                                           // SimpleBlock
    {0xA0, Do::Enter},                                                          // BlockGroup
    {0xA1, Do::Keep},                                                           // Block
    {0x9B, Do::Keep},                                                           // BlockDuration
    {0xFB, Do::Keep},                                                           // ReferenceBlock
    {0x75A2, Do::Keep},                                                         // DiscardPadding
};
constexpr Rule kInfo[] = {
    {0x2AD7B1, Do::Keep},  // TimestampScale
    {0x4489, Do::Keep},    // Duration
    {0x4D80, Do::Empty},   // MuxingApp, must be there
    {0x5741, Do::Empty},   // WritingApp, must be there
};
constexpr Rule kTracks[] = {{0xAE, Do::Track}};
constexpr Rule kTrack[] = {
    {0xD7, Do::Keep},                          // TrackNumber
    {0x73C5, Do::Keep},                        // TrackUID
    {0x83, Do::Type},     {0xB9, Do::Keep},    // FlagEnabled
    {0x88, Do::Keep},                          // FlagDefault
    {0x55AA, Do::Keep},                        // FlagForced
    {0x9C, Do::Keep},                          // FlagLacing
    {0x23E383, Do::Keep},                      // DefaultDuration
    {0x22B59C, Do::Keep},                      // Language
    {0x86, Do::Codec},    {0x63A2, Do::Keep},  // CodecPrivate
    {0x56AA, Do::Keep},                        // CodecDelay
    {0x56BB, Do::Keep},                        // SeekPreRoll
    {0xE0, Do::Video},    {0xE1, Do::Keep},    // Audio
    {0x6D80, Do::Refuse},                      // ContentEncodings
};
constexpr Rule kVideo[] = {
    {0xB0, Do::Width},  {0xBA, Do::Height}, {0x9A, Do::Keep},  // FlagInterlaced
    {0x54AA, Do::Keep},                                        // PixelCropBottom
    {0x54BB, Do::Keep},                                        // PixelCropTop
    {0x54CC, Do::Keep},                                        // PixelCropLeft
    {0x54DD, Do::Keep},                                        // PixelCropRight
    {0x54B0, Do::Keep},                                        // DisplayWidth
    {0x54BA, Do::Keep},                                        // DisplayHeight
    {0x54B2, Do::Keep},                                        // DisplayUnit
    {0x55B0, Do::Keep},                                        // Colour
};
constexpr Rule kHead[] = {
    {0x4286, Do::Keep}, {0x42F7, Do::Keep}, {0x42F2, Do::Keep}, {0x42F3, Do::Keep},
    {0x4282, Do::Keep}, {0x4287, Do::Keep}, {0x4285, Do::Keep},
};

// By RFC 8794 section 4: the length is told by the first bit that is set; the id keeps it.
std::size_t lengthOf(char first) {
  std::size_t length = 1;
  for (unsigned bit = 0x80; bit != 0 && (static_cast<unsigned char>(first) & bit) == 0; bit >>= 1U) ++length;
  return length;
}

class Webm {
 public:
  explicit Webm(std::string& bytes) : m_bytes(bytes) {}

  absl::Status clean() {
    Element head;
    if (!read(0, m_bytes.size(), head) || head.size == kUnknown) return cutShort();
    absl::Status status = walk(head.body, head.end(), kHead, std::size(kHead));
    if (!status.ok()) return status;
    if (docType(head) != "webm"sv) return absl::InvalidArgumentError("content: Matroska, but not WebM");
    Element segment;
    if (!read(head.end(), m_bytes.size(), segment) || segment.id != 0x18538067) return cutShort();
    const std::size_t end = segment.size == kUnknown ? m_bytes.size() : segment.end();
    if (end != m_bytes.size()) return cutShort();
    status = walk(segment.body, end, kSegment, std::size(kSegment));
    if (status.ok() && !m_video)
      return absl::InvalidArgumentError("content: there is no picture in this clip");
    return status;
  }

 private:
  bool read(std::size_t at, std::size_t end, Element& element) const {
    if (at >= end) return false;
    const std::size_t id_length = lengthOf(m_bytes[at]);
    if (id_length > 4 || end - at <= id_length) return false;
    const std::size_t size_at = at + id_length;
    const std::size_t size_length = lengthOf(m_bytes[size_at]);
    if (size_length > 8 || end - size_at < size_length) return false;
    const std::uint64_t ones = (std::uint64_t{1} << (7 * size_length)) - 1;
    const std::uint64_t size = bigEndian(m_bytes, size_at, size_length) & ones;
    element = {bigEndian(m_bytes, at, id_length), at, size_at + size_length, size == ones ? kUnknown : size};
    return element.size == kUnknown || element.size <= end - element.body;
  }

  std::string_view docType(const Element& head) const {
    Element child;
    for (std::size_t at = head.body; read(at, head.end(), child) && child.size != kUnknown;
         at = child.end()) {
      if (child.id == 0x4282) return std::string_view(m_bytes).substr(child.body, child.size);
    }
    return {};
  }

  absl::Status walk(std::size_t at, std::size_t end, const Rule* rules, std::size_t count) {
    while (at < end) {
      Element element;
      if (!read(at, end, element)) return cutShort();
      const Rule* const rule =
          std::find_if(rules, rules + count, [&](const Rule& r) { return r.id == element.id; });
      // A cluster's content follows like the segment's own: their ids differ, and its length may be unknown.
      if (rule != rules + count && rule->what == Do::Enter) {
        at = element.body;
        continue;
      }
      if (element.size == kUnknown) return cutShort();
      absl::Status done = rule == rules + count ? blank(element) : apply(rule->what, element);
      if (!done.ok()) return done;
      at = element.end();
    }
    return absl::OkStatus();
  }

  absl::Status apply(Do what, const Element& element) {
    switch (what) {
      case Do::Info:
        return walk(element.body, element.end(), kInfo, std::size(kInfo));
      case Do::Tracks:
        return walk(element.body, element.end(), kTracks, std::size(kTracks));
      case Do::Track:
        return walk(element.body, element.end(), kTrack, std::size(kTrack));
      case Do::Video:
        m_video = true;
        m_width = m_height = 0;
        if (absl::Status inside = walk(element.body, element.end(), kVideo, std::size(kVideo)); !inside.ok())
          return inside;
        return checkClipSize(m_width, m_height);
      case Do::Width:
        return number(element, m_width);
      case Do::Height:
        return number(element, m_height);
      case Do::Type:
        return type(element);
      case Do::Codec:
        return codec(element);
      case Do::Empty:
        std::memset(m_bytes.data() + element.body, 0, element.size);
        return absl::OkStatus();
      case Do::Refuse:
        return absl::InvalidArgumentError("content: the clip is packed in a way that is not known here");
      case Do::Keep:
      case Do::Enter:
        break;
    }
    return absl::OkStatus();
  }

  absl::Status number(const Element& element, std::uint32_t& value) const {
    if (element.size == 0 || element.size > 8) return cutShort();
    value = static_cast<std::uint32_t>(
        std::min<std::uint64_t>(bigEndian(m_bytes, element.body, element.size), UINT32_MAX));
    return absl::OkStatus();
  }

  absl::Status type(const Element& element) const {
    std::uint32_t kind = 0;
    absl::Status read = number(element, kind);
    if (!read.ok()) return read;
    if (kind == 1 || kind == 2) return absl::OkStatus();  // picture, sound
    return absl::InvalidArgumentError(
        "content: the clip has a track that is neither picture nor sound; save it again without");
  }

  // Vorbis carries free text among its headers.
  absl::Status codec(const Element& element) const {
    const std::string_view name = std::string_view(m_bytes).substr(element.body, element.size);
    for (const std::string_view known : {"V_VP8"sv, "V_VP9"sv, "V_AV1"sv, "A_OPUS"sv}) {
      if (name == known) return absl::OkStatus();
    }
    return absl::InvalidArgumentError("content: the clip has to be VP8, VP9 or AV1, its sound Opus");
  }

  // The whole element becomes one Void of the same length, its content zero.
  absl::Status blank(const Element& element) {
    const std::size_t total = element.end() - element.at;
    std::memset(m_bytes.data() + element.at, 0, total);
    m_bytes[element.at] = kVoid;
    if (total < 9) {
      m_bytes[element.at + 1] = static_cast<char>(0x80U | (total - 2));
      return absl::OkStatus();
    }
    m_bytes[element.at + 1] = '\x01';  // seven bytes of length follow
    const std::uint64_t left = total - 9;
    for (std::size_t i = 0; i < 7; ++i) m_bytes[element.at + 8 - i] = static_cast<char>(left >> (8 * i));
    return absl::OkStatus();
  }

  std::string& m_bytes;
  bool m_video = false;
  std::uint32_t m_width = 0;
  std::uint32_t m_height = 0;
};

}  // namespace

absl::Status cleanWebm(std::string& content) { return Webm(content).clean(); }

}  // namespace newel
