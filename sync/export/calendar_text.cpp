#include "sync/export/calendar_text.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/string_view.h>

namespace newel {
namespace {

constexpr std::size_t kLongestLine = 75;  // octets, RFC 5545 section 3.1

bool continuesACharacter(char c) { return (static_cast<unsigned char>(c) & 0xc0U) == 0x80U; }

bool isControl(char c) {
  const auto octet = static_cast<unsigned char>(c);
  return (octet < 0x20 && c != '\t') || octet == 0x7f;
}

// How much of `rest` fits into `room` octets without cutting a character. What is no UTF-8 is cut anywhere.
std::size_t fitting(absl::string_view rest, std::size_t room) {
  if (rest.size() <= room) return rest.size();
  std::size_t size = room;
  while (size > room - 3 && continuesACharacter(rest[size])) --size;
  return continuesACharacter(rest[size]) ? room : size;
}

}  // namespace

std::string calendarText(const std::string& words) {
  std::string text;
  text.reserve(words.size());
  for (std::size_t i = 0; i < words.size(); ++i) {
    const char c = words[i];
    if (c == '\r' || c == '\n') {
      if (c == '\r' && i + 1 < words.size() && words[i + 1] == '\n') ++i;
      text += "\\n";
    } else if (c == '\\' || c == ';' || c == ',') {
      text += '\\';
      text += c;
    } else if (!isControl(c)) {
      text += c;
    }
  }
  return text;
}

std::string calendarLine(const std::string& name, const std::string& value) {
  const std::string whole = absl::StrCat(name, ":", value);
  absl::string_view rest = whole;
  std::string folded;
  std::size_t room = kLongestLine;
  do {
    const std::size_t size = fitting(rest, room);
    absl::StrAppend(&folded, room == kLongestLine ? "" : " ", rest.substr(0, size), "\r\n");
    rest.remove_prefix(size);
    room = kLongestLine - 1;  // the space that marks the line as folded
  } while (!rest.empty());
  return folded;
}

}  // namespace newel
