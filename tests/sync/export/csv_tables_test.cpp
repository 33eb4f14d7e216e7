// The CSV tables, read back by Python's csv module, and against what csv_tables.h says of them.
#include "sync/export/csv_tables.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>

#include "core/time/local_day.h"
#include "tests/sync/export/history_maker.h"
#include "tests/sync/export/outside_checks.h"

namespace newel {
namespace {

using nlohmann::json;
using Row = std::map<std::string, std::string>;

// One table of the files, its rows by the names of their columns.
struct Read {
  std::vector<std::string> head;
  std::vector<Row> rows;
};

std::map<std::string, Read> read(const std::vector<CsvFile>& files) {
  std::vector<std::string> lines;
  for (const auto& file : files) lines.push_back(json(file.text).dump());
  const auto parsed = test::outsideCheck("read_csv.py", lines);
  std::map<std::string, Read> tables;
  for (std::size_t i = 0; i < files.size(); ++i) {
    Read& table = tables[files[i].name];
    for (const auto& row : parsed[i]) {
      const auto cells = row.get<std::vector<std::string>>();
      if (table.head.empty()) {
        table.head = cells;
        continue;
      }
      EXPECT_EQ(cells.size(), table.head.size()) << files[i].name << ": " << row;
      Row& named = table.rows.emplace_back();
      for (std::size_t c = 0; c < std::min(cells.size(), table.head.size()); ++c)
        named[table.head[c]] = cells[c];
    }
  }
  return tables;
}

std::vector<CsvFile> tablesOf(const PersonHistory& history, bool words = false) {
  ExportOptions options;
  options.with_words = words;
  auto files = csvTables(history, options);
  EXPECT_TRUE(files.ok()) << files.status();
  return files.ok() ? *std::move(files) : std::vector<CsvFile>();
}

// "programmes     number, ... [, signer_name]" of the header's comment.
std::map<std::string, std::pair<std::string, std::string>> documented() {
  std::ifstream stream(std::string(NEWEL_SOURCE_DIR) + "/sync/export/csv_tables.h");
  std::string text{std::istreambuf_iterator<char>(stream), {}};
  text = text.substr(text.find("alone.\n//\n"));
  text = text.substr(0, text.find("#pragma"));
  text = std::regex_replace(text, std::regex("\n//  +"), " ");
  // What a value can be, and remarks.
  text = std::regex_replace(text, std::regex(R"(\s*\([^)]*\))"), "");
  text = std::regex_replace(text, std::regex(R"(\. "no-data"[^\n]*)"), "");
  std::map<std::string, std::pair<std::string, std::string>> tables;
  static const std::regex kTable(R"(\n// (\w+) +([^\n\[]*)(?:\[, ([^\]]*)\])?)");
  for (std::sregex_iterator at(text.begin(), text.end(), kTable), end; at != end; ++at)
    tables[(*at)[1]] = {std::regex_replace((*at)[2].str(), std::regex("[ .]"), ""),
                        std::regex_replace((*at)[3].str(), std::regex(" "), "")};
  return tables;
}

TEST(CsvTables, headRowsAreAsTheHeaderSays) {
  const auto says = documented();
  ASSERT_EQ(says.size(), 17U);
  for (const bool words : {false, true}) {
    const auto files = tablesOf(test::yearOfHistory(1), words);
    ASSERT_EQ(files.size(), 17U);
    for (const auto& file : files) {
      const auto& [plain, more] = says.at(file.name.substr(0, file.name.size() - 4));
      EXPECT_EQ(file.text.substr(0, file.text.find("\r\n")),
                plain + (words && !more.empty() ? "," + more : ""))
          << file.name;
    }
  }
}

void checkPlans(const PersonHistory& history, std::map<std::string, Read>& tables) {
  std::size_t plans = 0;
  std::size_t steps = 0;
  std::size_t rules = 0;
  std::size_t asked = 0;
  for (const auto& kept : history.programmes) {
    asked += static_cast<std::size_t>(kept.programme.measures_size());
    for (const auto& entry : kept.programme.entries()) rules += entry.has_progression() ? 1 : 0;
    if (!kept.programme.has_wear_plan()) continue;
    const v1::WearPlan& plan = kept.programme.wear_plan();
    steps += static_cast<std::size_t>(plan.steps_size());
    const Row& row = tables["wear_plans.csv"].rows.at(plans++);
    EXPECT_EQ(row.at("plan_id"), plan.id());
    EXPECT_EQ(row.at("redness_min"), std::to_string(plan.redness_min()));
    EXPECT_EQ(row.at("first_step"), std::to_string(plan.first_step() + 1));
  }
  EXPECT_EQ(tables["wear_plans.csv"].rows.size(), plans);
  EXPECT_EQ(tables["wear_steps.csv"].rows.size(), steps);
  EXPECT_EQ(tables["progressions.csv"].rows.size(), rules);
  EXPECT_EQ(tables["asked_measures.csv"].rows.size(), asked);
}

// As many rows as there are records, and each occasion in the state that core/progress gives it.
TEST(CsvTables, pythonReadsBackWhateverTheHistory) {
  std::map<std::string, int> states;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const PersonHistory history = test::anyHistory(seed);
    auto tables = read(tablesOf(history, seed % 2 == 0));
    EXPECT_EQ(tables["programmes.csv"].rows.size(), history.programmes.size());
    EXPECT_EQ(tables["practices.csv"].rows.size(), history.practices.size());
    EXPECT_EQ(tables["wear_blocks.csv"].rows.size(), history.wear_blocks.size());
    EXPECT_EQ(tables["measures.csv"].rows.size(), history.measures.size());
    EXPECT_EQ(tables["messages.csv"].rows.size(), history.messages.size());
    EXPECT_EQ(tables["holds.csv"].rows.size(), history.holds.size());
    EXPECT_EQ(tables["phones.csv"].rows.size(), history.phones.size());
    EXPECT_EQ(tables["audit.csv"].rows.size(), history.audit.size());
    checkPlans(history, tables);
    std::size_t doses = 0;
    std::size_t sets = 0;
    for (const auto& practice : history.practices) {
      doses += static_cast<std::size_t>(practice.entries_size());
      for (const auto& done : practice.entries()) sets += static_cast<std::size_t>(done.sets_size());
    }
    EXPECT_EQ(tables["doses.csv"].rows.size(), doses);
    EXPECT_EQ(tables["sets.csv"].rows.size(), sets);
    const auto adherence = adherenceIn(history);
    ASSERT_TRUE(adherence.ok());
    ASSERT_EQ(tables["occasions.csv"].rows.size(), adherence->occasions.size());
    for (std::size_t i = 0; i < adherence->occasions.size(); ++i) {
      const Row& row = tables["occasions.csv"].rows[i];
      EXPECT_EQ(row.at("state"), occasionStateWord(adherence->occasions[i].state));
      EXPECT_EQ(row.at("local_day"), adherence->occasions[i].ref.local_day());
      EXPECT_EQ(row.at("practice_id"), adherence->occasions[i].practice_id);
      ++states[row.at("state")];
    }
  }
  for (const char* state : {"done", "part", "not-done", "excused", "coming", "no-data"})
    EXPECT_GT(states[state], 5) << state;
}

TEST(CsvTables, wordsComeBackAsTheyWereWrittenAndOnlyWhenAskedFor) {
  PersonHistory history = test::yearOfHistory(1);
  for (const std::string words :
       {"=HYPERLINK(\"x\")", "a,b;\"c\"\r\nd", "'quoted", "مرحبا 🦿", "-1"}) {
    history.practices[0].set_note(words);
    auto tables = read(tablesOf(history, true));
    std::string cell = tables["practices.csv"].rows[0].at("note");
    EXPECT_EQ(std::string("=+-@\t\r").find(cell[0]), std::string::npos) << "a spreadsheet would run it";
    if (cell[0] == '\'') cell.erase(0, 1);
    EXPECT_EQ(cell, words);
    if (words == "-1") continue;  // stands in many an id
    for (const auto& file : tablesOf(history)) EXPECT_EQ(file.text.find(words), std::string::npos);
  }
}

TEST(CsvTables, aFullYearIsDoneThroughout) {
  auto tables = read(tablesOf(test::yearOfHistory(2)));
  const auto& occasions = tables["occasions.csv"].rows;
  EXPECT_EQ(occasions.size(), 312U);  // 52 weeks of three days and two entries
  EXPECT_TRUE(std::all_of(occasions.begin(), occasions.end(), [](const Row& row) {
    return row.at("state") == "done" && row.at("dose_share") == "1" && row.at("window_from") == "08:00" &&
           row.at("window_to") == "12:00" && row.at("programme_number") == "1" &&
           row.at("told_later") == "false";
  }));
}

TEST(CsvTables, onlyTheDaysAskedForAreToldOf) {
  PersonHistory history = test::yearOfHistory(2);
  history.first_day = "2026-03-02";
  history.last_day = "2026-03-08";
  auto tables = read(tablesOf(history));
  EXPECT_EQ(tables["occasions.csv"].rows.size(), 6U);
  EXPECT_EQ(tables["practices.csv"].rows.size(), 3U);
  EXPECT_EQ(tables["doses.csv"].rows.size(), 6U);
  EXPECT_EQ(tables["programmes.csv"].rows.size(), 1U);
}

TEST(CsvTables, longWorkCanBeLeft) {
  EXPECT_TRUE(absl::IsCancelled(
      csvTables(test::yearOfHistory(1), {}, [](int percent) { return percent < 50; }).status()));
}

}  // namespace
}  // namespace newel
