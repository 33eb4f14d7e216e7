// MP4 and QuickTime: ISO/IEC 14496-12 (boxes by section 6.2.3), 14496-14, 14496-15; Apple's QuickTime File
// Format for what its files have more. No byte moves, so that the tables of places in the file stay true.
#include <algorithm>
#include <cstring>
#include <span>

#include "sync/common/media_boxes.h"
#include "sync/common/media_formats.h"

namespace newel {
namespace {

using namespace std::string_view_literals;

enum class Do { Keep, Enter, Times, Handler, Track, Samples, Places };
struct Rule {
  std::string_view in;  // the box around; "": none
  std::string_view type;
  Do what;
};

// What is needed to play; whatever is not here is blanked.
constexpr Rule kRules[] = {
    {"", "ftyp", Do::Keep},        {"", "styp", Do::Keep},        {"", "sidx", Do::Keep},
    {"", "mdat", Do::Keep},        {"", "moov", Do::Enter},       {"", "moof", Do::Enter},
    {"moov", "mvhd", Do::Times},   {"moov", "trak", Do::Track},   {"moov", "mvex", Do::Enter},
    {"mvex", "mehd", Do::Keep},    {"mvex", "trex", Do::Keep},    {"trak", "tkhd", Do::Times},
    {"trak", "edts", Do::Enter},   {"trak", "mdia", Do::Enter},   {"edts", "elst", Do::Keep},
    {"mdia", "mdhd", Do::Times},   {"mdia", "hdlr", Do::Handler}, {"mdia", "minf", Do::Enter},
    {"minf", "vmhd", Do::Keep},    {"minf", "smhd", Do::Keep},    {"minf", "hdlr", Do::Handler},
    {"minf", "dinf", Do::Enter},   {"minf", "stbl", Do::Enter},   {"dinf", "dref", Do::Places},
    {"stbl", "stsd", Do::Samples}, {"stbl", "stts", Do::Keep},    {"stbl", "ctts", Do::Keep},
    {"stbl", "cslg", Do::Keep},    {"stbl", "stsc", Do::Keep},    {"stbl", "stsz", Do::Keep},
    {"stbl", "stz2", Do::Keep},    {"stbl", "stco", Do::Keep},    {"stbl", "co64", Do::Keep},
    {"stbl", "stss", Do::Keep},    {"stbl", "stps", Do::Keep},    {"stbl", "sdtp", Do::Keep},
    {"stbl", "sbgp", Do::Keep},    {"stbl", "sgpd", Do::Keep},    {"moof", "mfhd", Do::Keep},
    {"moof", "traf", Do::Enter},   {"traf", "tfhd", Do::Keep},    {"traf", "tfdt", Do::Keep},
    {"traf", "trun", Do::Keep},    {"traf", "sdtp", Do::Keep},    {"traf", "sbgp", Do::Keep},
    {"traf", "sgpd", Do::Keep},
};

// Of one sample's description: how the decoder is set up and how colours and pixels are meant.
constexpr std::string_view kDescribing[] = {"avcC"sv, "hvcC"sv, "av1C"sv, "vpcC"sv, "esds"sv,
                                            "dOps"sv, "pasp"sv, "colr"sv, "clap"sv, "btrt"sv,
                                            "fiel"sv, "chan"sv, "wave"sv};
constexpr std::string_view kPictureCodecs[] = {"avc1"sv, "avc3"sv, "hvc1"sv, "hev1"sv, "vp09"sv, "av01"sv};
constexpr std::string_view kSoundCodecs[] = {"mp4a"sv, "Opus"sv};

constexpr std::size_t kPictureEntry = 78;    // behind its header, section 12.1.3
constexpr std::size_t kSoundEntry = 28;      // section 12.2.3
constexpr std::size_t kSoundEntryQt1 = 16;   // more, QuickTime sound description version 1
constexpr std::size_t kSoundEntryQt2 = 36;   // and version 2
constexpr std::size_t kCompressorName = 42;  // of 32 bytes, in a picture's entry
constexpr std::size_t kHandlerName = 24;     // behind version, flags, types and what is reserved
constexpr std::size_t kHandlerType = 8;
constexpr int kMostTracks = 32;              // ours, no source: a telephone writes six
constexpr std::size_t kReferenceBytes = 12;  // of one that names the file itself

bool isAmong(std::string_view type, std::span<const std::string_view> list) {
  return std::find(list.begin(), list.end(), type) != list.end();
}

class Mp4 {
 public:
  explicit Mp4(std::string& bytes) : m_bytes(bytes) {}

  absl::Status clean() {
    Box first;
    if (!readBox(m_bytes, 0, m_bytes.size(), first) || first.type != "ftyp"sv) return cutShort();
    m_fragments = hasFragments();
    absl::Status done = walk("", 0, m_bytes.size());
    if (!done.ok()) return done;
    if (m_films != 1) return cutShort();
    if (m_pictures == 0) return absl::InvalidArgumentError("content: there is no picture in this clip");
    return absl::OkStatus();
  }

 private:
  bool hasFragments() const {
    Box box;
    for (std::size_t at = 0; readBox(m_bytes, at, m_bytes.size(), box); at = box.end) {
      if (box.type == "moof"sv) return true;
    }
    return false;
  }

  absl::Status walk(std::string_view around, std::size_t at, std::size_t end) {
    std::size_t last = at;
    absl::Status done = eachBox(m_bytes, at, end, [&](const Box& box) {
      last = box.end;
      const Rule* const rule = std::find_if(std::begin(kRules), std::end(kRules), [&](const Rule& r) {
        return r.in == around && r.type == box.type;
      });
      if (rule == std::end(kRules)) {
        blankBox(m_bytes, box);
        return absl::OkStatus();
      }
      return apply(*rule, box);
    });
    if (done.ok()) std::memset(m_bytes.data() + last, 0, end - last);
    return done;
  }

  absl::Status apply(const Rule& rule, const Box& box) {
    switch (rule.what) {
      case Do::Keep:
        return absl::OkStatus();
      case Do::Enter:
        if (rule.type == "moov"sv) ++m_films;
        return walk(rule.type, box.body, box.end);
      case Do::Times:
        return blankTimes(box);
      case Do::Handler:
        if (box.end - box.body < kHandlerName) return cutShort();
        std::memset(m_bytes.data() + box.body + kHandlerName, 0, box.end - box.body - kHandlerName);
        return absl::OkStatus();
      case Do::Track:
        return track(box);
      case Do::Samples:
        return descriptions(box);
      case Do::Places:
        return places(box);
    }
    return absl::OkStatus();
  }

  // Creation and modification, sections 8.2.2, 8.3.2 and 8.4.2: right behind version and flags.
  absl::Status blankTimes(const Box& box) {
    const std::size_t room = box.end - box.body;
    if (room < 4) return cutShort();
    const std::size_t both = m_bytes[box.body] == 1 ? 16 : 8;
    if (room < 4 + both) return cutShort();
    std::memset(m_bytes.data() + box.body + 4, 0, both);
    return absl::OkStatus();
  }

  absl::Status track(const Box& trak) {
    if (++m_tracks > kMostTracks) return cutShort();
    Box mdia;
    Box hdlr;
    if (!findBox(m_bytes, trak, "mdia"sv, mdia) || !findBox(m_bytes, mdia, "hdlr"sv, hdlr) ||
        hdlr.end - hdlr.body < kHandlerType + 4) {
      return cutShort();
    }
    const std::string_view kind = std::string_view(m_bytes).substr(hdlr.body + kHandlerType, 4);
    if (kind == "vide"sv || kind == "soun"sv) {
      m_in_picture = kind == "vide"sv;
      m_pictures += m_in_picture ? 1 : 0;
      return walk("trak"sv, trak.body, trak.end);
    }
    if (m_fragments) {
      return absl::InvalidArgumentError(
          "content: the clip has a track that is neither picture nor sound; save it again without");
    }
    absl::Status gone = blankSamples(m_bytes, trak);
    if (gone.ok()) blankBox(m_bytes, trak);
    return gone;
  }

  absl::Status descriptions(const Box& stsd) {
    if (stsd.end - stsd.body < 8) return cutShort();
    return eachBox(m_bytes, stsd.body + 8, stsd.end,
                   [&](const Box& entry) { return m_in_picture ? picture(entry) : sound(entry); });
  }

  absl::Status picture(const Box& entry) {
    if (!isAmong(entry.type, kPictureCodecs))
      return absl::InvalidArgumentError("content: the clip has to be H.264, H.265, VP9 or AV1");
    if (entry.end - entry.body < kPictureEntry) return cutShort();
    absl::Status size = checkClipSize(static_cast<std::uint32_t>(bigEndian(m_bytes, entry.body + 24, 2)),
                                      static_cast<std::uint32_t>(bigEndian(m_bytes, entry.body + 26, 2)));
    if (!size.ok()) return size;
    std::memset(m_bytes.data() + entry.body + kCompressorName, 0, 32);
    return describing(entry.body + kPictureEntry, entry.end);
  }

  absl::Status sound(const Box& entry) {
    if (!isAmong(entry.type, kSoundCodecs))
      return absl::InvalidArgumentError("content: the clip's sound has to be AAC or Opus");
    if (entry.end - entry.body < kSoundEntry) return cutShort();
    const std::uint64_t version = bigEndian(m_bytes, entry.body + 8, 2);
    const std::size_t more = version == 1 ? kSoundEntryQt1 : version == 2 ? kSoundEntryQt2 : 0;
    if (entry.end - entry.body < kSoundEntry + more) return cutShort();
    return describing(entry.body + kSoundEntry + more, entry.end);
  }

  absl::Status describing(std::size_t at, std::size_t end) {
    std::size_t last = at;
    absl::Status done = eachBox(m_bytes, at, end, [&](const Box& box) {
      last = box.end;
      if (!isAmong(box.type, kDescribing)) blankBox(m_bytes, box);
      return absl::OkStatus();
    });
    if (done.ok()) std::memset(m_bytes.data() + last, 0, end - last);
    return done;
  }

  // Where the samples are: in this very file, said by an entry that has no name in it (section 8.7.2).
  absl::Status places(const Box& dref) const {
    if (dref.end - dref.body < 8) return cutShort();
    return eachBox(m_bytes, dref.body + 8, dref.end, [&](const Box& entry) {
      const bool itself = entry.end - entry.at == kReferenceBytes && (m_bytes[entry.end - 1] & 1) != 0;
      return itself ? absl::OkStatus()
                    : absl::InvalidArgumentError("content: the clip names another file; save it as one");
    });
  }

  std::string& m_bytes;
  bool m_fragments = false;
  bool m_in_picture = false;
  int m_films = 0;
  int m_tracks = 0;
  int m_pictures = 0;
};

}  // namespace

absl::Status cleanMp4(std::string& content) { return Mp4(content).clean(); }

}  // namespace newel
