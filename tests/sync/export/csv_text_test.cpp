#include "sync/export/csv_text.h"

#include <gtest/gtest.h>

namespace newel {
namespace {

// RFC 4180 section 2, rules 5 to 7.
TEST(CsvText, quotesAsTheRfcSays) {
  EXPECT_EQ(csvRow({csvPlain("aaa"), csvPlain("b\r\nbb"), csvPlain("ccc")}), "aaa,\"b\r\nbb\",ccc\r\n");
  EXPECT_EQ(csvRow({csvPlain("aaa"), csvPlain("b\"bb"), csvPlain("c,c")}), "aaa,\"b\"\"bb\",\"c,c\"\r\n");
}

// OWASP, "CSV Injection": what begins a formula in a spreadsheet.
TEST(CsvText, wordsThatBeginLikeAFormulaAreGuarded) {
  EXPECT_EQ(csvWords("=1+1"), "'=1+1");
  EXPECT_EQ(csvWords("-2+3"), "'-2+3");
  EXPECT_EQ(csvWords("@SUM(A1)"), "'@SUM(A1)");
  EXPECT_EQ(csvWords("\tx"), "'\tx");
  EXPECT_EQ(csvWords("＝1"), "'＝1");
  EXPECT_EQ(csvWords("=HYPERLINK(\"a\",\"b\")"), "\"'=HYPERLINK(\"\"a\"\",\"\"b\"\")\"");
}

TEST(CsvText, everyOneByteStartCanBeTakenBackAndNoneIsAFormula) {
  for (int octet = 1; octet < 128; ++octet) {
    const std::string words = std::string(1, static_cast<char>(octet)) + "x";
    std::string cell = csvWords(words);
    if (cell.front() == '"') {
      cell = cell.substr(1, cell.size() - 2);
      if (const auto at = cell.find("\"\""); at != std::string::npos) cell.erase(at, 1);
    }
    EXPECT_EQ(std::string("=+-@\t\r\n").find(cell.front()), std::string::npos) << octet;
    EXPECT_EQ(cell.front() == '\'' ? cell.substr(1) : cell, words) << octet;
  }
}

TEST(CsvText, numbersOfOursKeepTheirSign) { EXPECT_EQ(csvPlain("-3"), "-3"); }

}  // namespace
}  // namespace newel
