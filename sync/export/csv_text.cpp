#include "sync/export/csv_text.h"

#include <absl/strings/match.h>
#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>
#include <absl/strings/str_replace.h>
#include <absl/strings/string_view.h>

namespace newel {
namespace {

// Characters that begin a formula in some spreadsheet, the full-width ones in Japanese editions.
constexpr absl::string_view kFormulaStarts[] = {"=",  "+",  "-",  "@",  "\t", "\r",
                                                "\n", "＝", "＋", "－", "＠", "'"};

bool beginsLikeAFormula(const std::string& words) {
  for (const absl::string_view start : kFormulaStarts) {
    if (absl::StartsWith(words, start)) return true;
  }
  return false;
}

}  // namespace

std::string csvPlain(const std::string& value) {
  if (value.find_first_of(",\"\r\n") == std::string::npos) return value;
  return absl::StrCat("\"", absl::StrReplaceAll(value, {{"\"", "\"\""}}), "\"");
}

std::string csvWords(const std::string& words) {
  return beginsLikeAFormula(words) ? csvPlain(absl::StrCat("'", words)) : csvPlain(words);
}

std::string csvRow(const std::vector<std::string>& cells) {
  return absl::StrCat(absl::StrJoin(cells, ","), "\r\n");
}

}  // namespace newel
