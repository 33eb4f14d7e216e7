// The inside of csv_tables.h: a table under way, and the tables of what was asked and what was done. For
// sync/export alone.
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <string>
#include <vector>

#include "sync/export/csv_text.h"
#include "sync/export/person_history.h"

namespace newel {

// Cells go to the row begun last; columns of words are left out unless they are wanted.
class CsvTable {
 public:
  explicit CsvTable(bool with_words) : m_with_words(with_words) {}
  void head(const std::vector<std::string>& columns, const std::vector<std::string>& words_columns);
  CsvTable& row();
  CsvTable& plain(const std::string& value);    // ids, days, our own words
  CsvTable& guarded(const std::string& words);  // somebody wrote it, and it is no free text
  CsvTable& words(const std::string& words);    // free text: only with words
  CsvTable& number(std::uint64_t value) { return plain(std::to_string(value)); }
  CsvTable& numberOr(std::uint64_t value, bool applies) {
    return plain(applies ? std::to_string(value) : "");
  }
  CsvTable& yes(bool value) { return plain(value ? "true" : "false"); }
  std::string text();

 private:
  bool m_with_words;
  std::vector<std::string> m_row;
  std::string m_text;
};

absl::StatusOr<std::string> csvEntries(const PersonHistory& history, bool words);
absl::StatusOr<std::string> csvPractices(const PersonHistory& history, bool words);
absl::StatusOr<std::string> csvReadyAnswers(const PersonHistory& history);
absl::StatusOr<std::string> csvDoses(const PersonHistory& history, bool words);
absl::StatusOr<std::string> csvSets(const PersonHistory& history);
// csv_beside.cpp
std::string csvWearPlans(const PersonHistory& history, bool words);
std::string csvProgressions(const PersonHistory& history);
std::string csvAskedMeasures(const PersonHistory& history);
std::string csvPhones(const PersonHistory& history, bool words);
std::string csvAudit(const PersonHistory& history);

}  // namespace newel
