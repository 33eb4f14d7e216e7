// Rows of a CSV file: RFC 4180 (every row ends with CRLF, quotes doubled), UTF-8.
//
// Words of people are guarded against spreadsheets that run what begins like a formula: such a cell gets one
// leading apostrophe (OWASP, "CSV Injection"). A text that begins with an apostrophe gets one too, so that
// taking one leading apostrophe away always gives the original words. Numbers of ours are never guarded: a
// minus stays a minus.
#pragma once

#include <string>
#include <vector>

namespace newel {

// One cell as it stands between commas.
std::string csvWords(const std::string& words);  // what anybody wrote: guarded and, where needed, quoted
std::string csvPlain(const std::string& value);  // ids, days, numbers, names of columns: quoted where needed

// Cells that csvWords or csvPlain made; no cell at all gives an empty row.
std::string csvRow(const std::vector<std::string>& cells);

}  // namespace newel
