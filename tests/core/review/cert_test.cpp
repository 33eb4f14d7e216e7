// Which lines of the reporting template a programme states.
#include "core/review/cert.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>

#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

CertInput inputOf(const std::vector<std::string>& exercises) {
  CertInput input;
  input.person = test::transtibialRight();
  std::vector<v1::Entry> entries;
  for (const auto& exercise : exercises) {
    entries.push_back(test::entryOf(exercise, input.person, 100 + entries.size()));
  }
  input.programme = test::programmeOf(input.person, entries);
  return input;
}

std::vector<CertResult> read(const CertInput& input) {
  return certOf(input, Catalogue::builtIn(), certTable());
}

const CertResult& line(const std::vector<CertResult>& results, const std::string& id) {
  const auto found = std::find_if(results.begin(), results.end(),
                                  [&](const CertResult& result) { return result.line.id() == id; });
  EXPECT_NE(found, results.end()) << id;
  return *found;
}

std::vector<std::string> linesIn(const std::vector<CertResult>& results, CertState state) {
  std::vector<std::string> ids;
  for (const auto& result : results) {
    if (result.state == state) ids.push_back(result.line.id());
  }
  return ids;
}

TEST(CertTable, hasSixteenItemsInNineteenLines) {
  // Slade and others 2016, British Journal of Sports Medicine, table 1: items 7, 14 and 16 have two lines
  // each.
  EXPECT_EQ(certTable().lines_size(), 19);
  std::set<std::uint32_t> items;
  std::vector<std::string> ids;
  for (const auto& one : certTable().lines()) {
    items.insert(one.item());
    ids.push_back(one.id());
  }
  EXPECT_EQ(items.size(), 16U);
  EXPECT_THAT(ids, ElementsAre("1", "2", "3", "4", "5", "6", "7a", "7b", "8", "9", "10", "11", "12", "13",
                               "14a", "14b", "15", "16a", "16b"));
}

TEST(Cert, aPlainFirstProgrammeSaysWhatItCanAndNoMore) {
  const auto results = read(inputOf({"sit-to-stand", "weight-shift-side"}));
  EXPECT_THAT(linesIn(results, CertState::Stated),
              ElementsAre("1", "3", "4", "5", "8", "9", "12", "13", "14a", "14b", "16a"));
  // Only the clinic knows who instructs, how it motivates, and its rule for the starting level.
  EXPECT_THAT(linesIn(results, CertState::Missing), ElementsAre("2", "6", "7a", "10", "15"));
  EXPECT_THAT(linesIn(results, CertState::NotYet), ElementsAre("7b", "11", "16b"));
  const CertSummary summary = summaryOf(results);
  EXPECT_EQ(summary.stated + summary.missing + summary.not_yet, 19);
  EXPECT_EQ(summary.stated, 11);
}

TEST(Cert, whatTheClinicStatesIsStated) {
  auto input = inputOf({"sit-to-stand"});
  auto* statement = input.statements.add_statements();
  statement->set_line("2");
  statement->set_text("Physical therapists with ten years in limb clinics (invented).");
  const auto results = read(input);
  EXPECT_EQ(line(results, "2").state, CertState::Stated);
  EXPECT_THAT(line(results, "2").statement, HasSubstr("invented"));
  EXPECT_EQ(line(results, "6").state, CertState::Missing);
}

TEST(Cert, equipmentIsNamedEntryByEntry) {
  const auto results = read(inputOf({"sit-to-stand"}));
  const auto& found = line(results, "1").found;
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].key, "cert.equipment");
  EXPECT_EQ(found[0].args.at("equipment"), "chair");
}

TEST(Cert, anExerciseThatTheCatalogueDoesNotKnowStatesNothing) {
  auto input = inputOf({"sit-to-stand", "weight-shift-side"});
  input.programme.mutable_entries(1)->set_exercise_id("handstand");
  const auto results = read(input);
  EXPECT_EQ(line(results, "1").state, CertState::Missing);
  EXPECT_EQ(line(results, "8").state, CertState::Missing);
  EXPECT_EQ(line(results, "8").found.back().key, "cert.exercise-unknown");
}

TEST(Cert, progressionIsStatedOnlyWhenEveryEntryHasARule) {
  auto input = inputOf({"sit-to-stand", "weight-shift-side"});
  input.programme.mutable_entries(0)->mutable_progression()->set_practices(2);
  EXPECT_EQ(line(read(input), "7a").state, CertState::Missing);
  EXPECT_EQ(line(read(input), "7a").found.back().args.at("exercise"), "weight-shift-side");
  input.programme.mutable_entries(1)->mutable_progression()->set_practices(2);
  EXPECT_EQ(line(read(input), "7a").state, CertState::Stated);
}

TEST(Cert, aLaterProgrammeSaysWhatChanged) {
  auto input = inputOf({"sit-to-stand"});
  input.programme.set_number(2);
  EXPECT_EQ(line(read(input), "7b").state, CertState::Missing);
  input.programme.set_changes("Two repetitions more.");
  EXPECT_EQ(line(read(input), "7b").state, CertState::Stated);
}

TEST(Cert, adviceIsAPartThatIsNotExercise) {
  auto input = inputOf({"sit-to-stand"});
  input.programme.set_advice("Look at your skin every evening.");
  EXPECT_EQ(line(read(input), "10").state, CertState::Stated);
}

TEST(Cert, aDraftWithoutDoseOrSideLacksThem) {
  auto input = inputOf({"sit-to-stand"});
  input.programme.mutable_entries(0)->clear_dose();
  input.programme.mutable_entries(0)->set_side_policy(v1::SIDE_POLICY_UNSPECIFIED);
  EXPECT_EQ(line(read(input), "13").state, CertState::Missing);
  EXPECT_EQ(line(read(input), "14b").state, CertState::Missing);
  input.programme.clear_entries();
  EXPECT_EQ(line(read(input), "13").state, CertState::Missing) << "nothing prescribed states no dose";
}

TEST(Cert, noEventIsAResultOnceThereWerePractices) {
  auto input = inputOf({"sit-to-stand"});
  input.counts = CertCounts();
  EXPECT_EQ(line(read(input), "11").state, CertState::NotYet);
  input.counts->practices = 5;
  EXPECT_EQ(line(read(input), "11").state, CertState::Stated);
  EXPECT_EQ(line(read(input), "11").found[0].args.at("falls"), "0");
  EXPECT_EQ(line(read(input), "16b").state, CertState::NotYet) << "nothing was due yet";
  input.counts->due = 6;
  input.counts->done = 5;
  EXPECT_EQ(line(read(input), "16b").state, CertState::Stated);
}

TEST(Cert, eventsAreCountedOnceAPractice) {
  v1::Practice fell;
  fell.set_end(v1::PRACTICE_END_RED_FLAG);
  fell.set_stop_reason(v1::STOP_REASON_FALL);
  fell.add_entries()->set_skipped(v1::STOP_REASON_FALL);
  v1::Practice sore;
  sore.set_end(v1::PRACTICE_END_FINISHED);
  sore.add_entries()->set_skipped(v1::STOP_REASON_PAIN);
  sore.add_entries()->set_skipped(v1::STOP_REASON_DIZZY);
  v1::Practice busy;
  busy.set_stop_reason(v1::STOP_REASON_NO_TIME);
  const CertCounts counts = countEvents({fell, sore, busy, v1::Practice()});
  EXPECT_EQ(counts.practices, 4);
  EXPECT_EQ(counts.red_flags, 1);
  EXPECT_EQ(counts.falls, 1);
  EXPECT_EQ(counts.stops_for_pain, 1);
  EXPECT_EQ(counts.other_stops, 1);
  EXPECT_EQ(counts.stops_for_skin, 0);
}

TEST(Cert, everyKeyItSaysIsListed) {
  const std::set<std::string> keys(certKeys().begin(), certKeys().end());
  EXPECT_EQ(keys.size(), certKeys().size());
  auto empty = inputOf({"sit-to-stand"});
  empty.programme.set_number(2);
  empty.programme.mutable_entries(0)->clear_dose();
  empty.person.clear_home();
  for (const auto& input : {inputOf({"sit-to-stand"}), empty}) {
    for (const auto& result : read(input)) {
      for (const auto& found : result.found) EXPECT_TRUE(keys.contains(found.key)) << found.key;
    }
  }
}

TEST(CertTable, aTableWithAnItemMissingIsRefusedWithFileAndLine) {
  const auto folder = std::filesystem::temp_directory_path() / "newel-cert-table";
  std::filesystem::create_directories(folder);
  std::ofstream(folder / "lines.textproto")
      << "lines { id: \"1\" item: 1 asks: \"Equipment\" from: CERT_FROM_EQUIPMENT }\n"
         "sources { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common practice, no source\" }\n";
  EXPECT_THAT(std::string(loadCertTable(folder.string()).status().message()),
              HasSubstr("lines.textproto:1: lines: item 2 is missing"));
  std::ofstream(folder / "lines.textproto")
      << "lines { id: \"1\" item: 1 asks: \"Equipment\" from: CERT_FROM_EQUIPMENT }\n"
         "lines { id: \"3\" item: 4 asks: \"Alone\" from: CERT_FROM_CLINIC }\n"
         "sources { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common practice, no source\" }\n";
  EXPECT_THAT(std::string(loadCertTable(folder.string()).status().message()),
              HasSubstr("lines.textproto:2: lines[1].item: is not the number in id"));
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace newel
