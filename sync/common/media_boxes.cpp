#include "sync/common/media_boxes.h"

#include <algorithm>
#include <cstring>
#include <utility>
#include <vector>

#include "sync/common/media_formats.h"

namespace newel {
namespace {

using namespace std::string_view_literals;

constexpr std::size_t kHeader = 8;
constexpr std::size_t kMostLeftOver = 7;
// In a clip of 16 MiB there are fewer; whatever says more is made up.
constexpr std::uint64_t kMostSamples = 1'000'000;

// A table of full boxes: `entry` bytes each, behind `before` bytes of version, flags and more, ending with
// their count.
struct Table {
  std::size_t first = 0;
  std::uint64_t count = 0;
};

bool readTable(std::string_view bytes, const Box& box, std::size_t before, std::size_t entry, Table& table) {
  if (box.end - box.body < before) return false;
  table.first = box.body + before;
  table.count = bigEndian(bytes, table.first - 4, 4);
  return table.count <= kMostSamples && table.count * entry <= box.end - table.first;
}

// The length of each sample, in order.
bool readSizes(std::string_view bytes, const Box& stbl, std::vector<std::uint64_t>& sizes) {
  Box stsz;
  Table table;
  if (!findBox(bytes, stbl, "stsz"sv, stsz) || stsz.end - stsz.body < 12) return false;
  const std::uint64_t same = bigEndian(bytes, stsz.body + 4, 4);
  if (!readTable(bytes, stsz, 12, same == 0 ? 4 : 0, table)) return false;
  for (std::uint64_t i = 0; i < table.count; ++i)
    sizes.push_back(same != 0 ? same : bigEndian(bytes, table.first + 4 * i, 4));
  return true;
}

// Where each chunk begins.
bool readChunks(std::string_view bytes, const Box& stbl, std::vector<std::uint64_t>& chunks) {
  Box box;
  std::size_t width = 4;
  if (!findBox(bytes, stbl, "stco"sv, box)) {
    width = 8;
    if (!findBox(bytes, stbl, "co64"sv, box)) return false;
  }
  Table table;
  if (!readTable(bytes, box, 8, width, table)) return false;
  for (std::uint64_t i = 0; i < table.count; ++i)
    chunks.push_back(bigEndian(bytes, table.first + width * i, width));
  return true;
}

// How many samples each of `count` chunks has.
bool readRuns(std::string_view bytes, const Box& stbl, std::size_t count, std::vector<std::uint64_t>& runs) {
  Box stsc;
  Table table;
  constexpr std::size_t kEntry = 12;
  if (!findBox(bytes, stbl, "stsc"sv, stsc) || !readTable(bytes, stsc, 8, kEntry, table)) return false;
  std::uint64_t in_each = 0;
  std::uint64_t next = 0;
  for (std::size_t chunk = 1; chunk <= count; ++chunk) {
    while (next < table.count && bigEndian(bytes, table.first + kEntry * next, 4) <= chunk) {
      in_each = bigEndian(bytes, table.first + kEntry * next + 4, 4);
      ++next;
    }
    runs.push_back(in_each);
  }
  return true;
}

using Place = std::pair<std::uint64_t, std::uint64_t>;  // from, to

// Where samples may lie. More pieces than any camera writes are made up.
std::vector<Place> dataOf(std::string_view bytes) {
  constexpr std::size_t kMostPieces = 100;
  std::vector<Place> places;
  Box box;
  for (std::size_t at = 0; readBox(bytes, at, bytes.size(), box); at = box.end) {
    if (box.type == "mdat"sv) places.emplace_back(box.body, box.end);
    if (places.size() > kMostPieces) return {};
  }
  return places;
}

// What is zeroed elsewhere would break the file.
bool liesIn(const std::vector<Place>& places, std::uint64_t from, std::uint64_t length) {
  return std::any_of(places.begin(), places.end(), [&](const Place& place) {
    return from >= place.first && from <= place.second && length <= place.second - from;
  });
}

}  // namespace

bool readBox(std::string_view bytes, std::size_t at, std::size_t end, Box& box) {
  if (at > end || end - at < kHeader) return false;
  std::uint64_t length = bigEndian(bytes, at, 4);
  box.type = bytes.substr(at + 4, 4);
  box.at = at;
  box.body = at + kHeader;
  if (length == 1) {
    if (end - at < kHeader + 8) return false;
    length = bigEndian(bytes, at + kHeader, 8);
    box.body += 8;
  } else if (length == 0) {
    length = end - at;
  }
  if (length < box.body - at || length > end - at) return false;
  box.end = at + static_cast<std::size_t>(length);
  return true;
}

absl::Status eachBox(std::string_view bytes, std::size_t at, std::size_t end,
                     const std::function<absl::Status(const Box&)>& each) {
  while (end - at > kMostLeftOver) {
    Box box;
    if (!readBox(bytes, at, end, box)) return cutShort();
    absl::Status done = each(box);
    if (!done.ok()) return done;
    at = box.end;
  }
  return absl::OkStatus();
}

bool findBox(std::string_view bytes, const Box& parent, std::string_view type, Box& found) {
  for (std::size_t at = parent.body; readBox(bytes, at, parent.end, found); at = found.end) {
    if (found.type == type) return true;
  }
  return false;
}

void blankBox(std::string& bytes, const Box& box) {
  std::memcpy(bytes.data() + box.at + 4, "free", 4);
  std::memset(bytes.data() + box.body, 0, box.end - box.body);
}

absl::Status blankSamples(std::string& bytes, const Box& trak) {
  absl::Status unknown = absl::InvalidArgumentError(
      "content: the clip has a track that is neither picture nor sound; save it again without");
  Box mdia;
  Box minf;
  Box stbl;
  if (!findBox(bytes, trak, "mdia"sv, mdia) || !findBox(bytes, mdia, "minf"sv, minf) ||
      !findBox(bytes, minf, "stbl"sv, stbl)) {
    return unknown;
  }
  std::vector<std::uint64_t> sizes;
  std::vector<std::uint64_t> chunks;
  std::vector<std::uint64_t> runs;
  if (!readSizes(bytes, stbl, sizes) || !readChunks(bytes, stbl, chunks) ||
      !readRuns(bytes, stbl, chunks.size(), runs)) {
    return unknown;
  }
  const std::vector<Place> data = dataOf(bytes);
  std::size_t sample = 0;
  std::uint64_t together = 0;
  for (std::size_t chunk = 0; chunk < chunks.size(); ++chunk) {
    std::uint64_t length = 0;
    for (std::uint64_t i = 0; i < runs[chunk] && sample < sizes.size(); ++i) length += sizes[sample++];
    together += length;
    if (together > bytes.size() || !liesIn(data, chunks[chunk], length)) return unknown;
    std::memset(bytes.data() + chunks[chunk], 0, static_cast<std::size_t>(length));
  }
  return sample == sizes.size() ? absl::OkStatus() : unknown;
}

}  // namespace newel
