// Lines of an iCalendar file: RFC 5545 sections 3.1 (content lines, folding) and 3.3.11 (TEXT).
#pragma once

#include <string>

namespace newel {

// A TEXT value: backslash, semicolon, comma and line breaks escaped. Other control characters, which the
// format has no way to say, are left out. UTF-8 in, UTF-8 out.
std::string calendarText(const std::string& words);

// `name` (with its parameters) and a value that is already escaped, folded so that no line is longer than 75
// octets without its CRLF and no character is cut in two. Ends with CRLF.
std::string calendarLine(const std::string& name, const std::string& value);

}  // namespace newel
