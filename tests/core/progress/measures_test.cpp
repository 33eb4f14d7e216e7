// Outcome measures: the formulas of error, the values stored, and what a change says.
#include "core/progress/measures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>

#include "core/progress/measure_table.h"

namespace newel {
namespace {

using testing::HasSubstr;

const v1::MeasureKind& kind(const std::string& id) {
  const v1::MeasureKind* found = MeasureTable::builtIn().find(id);
  EXPECT_NE(found, nullptr) << id;
  static const v1::MeasureKind kNone;
  return found == nullptr ? kNone : *found;
}

TEST(MeasurementError, formulasMatchThePrintedNumbers) {
  // Sawers and others 2020, Physical Therapy (abstract): SEM 0.39 s, 0.96 s, 0.07 -> MDC90 0.91 s, 2.2 s,
  // 0.16.
  EXPECT_NEAR(detectable90(0.39), 0.91, 0.005);
  EXPECT_NEAR(detectable90(0.96), 2.2, 0.05);
  EXPECT_NEAR(detectable90(0.07), 0.16, 0.005);
}

TEST(MeasurementError, formulasAreTheStandardOnes) {
  // 1.645 x sqrt(2) = 2.3264 and 1.96 x sqrt(2) = 2.7719, to four decimals.
  EXPECT_NEAR(detectable90(1), 2.3264, 0.00005);
  EXPECT_NEAR(detectable95(1), 2.7719, 0.00005);
  EXPECT_NEAR(standardErrorFrom90(detectable90(1.5)), 1.5, 1e-12);
  EXPECT_NEAR(standardErrorFrom95(detectable95(1.5)), 1.5, 1e-12);
  // SD 10 and ICC 0.84: 10 x sqrt(0.16).
  EXPECT_NEAR(standardError(10, 0.84), 4, 1e-12);
}

TEST(MeasureTable, hasEveryMeasureOfTheTrade) {
  for (const char* id : {"timed-up-and-go", "l-test", "two-minute-walk", "six-minute-walk", "ten-metre-walk",
                         "ten-metre-walk-fast", "five-times-sit-to-stand", "single-limb-stance",
                         "four-square-step", "mobility-predictor-with-prosthesis",
                         "mobility-predictor-without-prosthesis", "step-length-symmetry"}) {
    EXPECT_NE(MeasureTable::builtIn().find(id), nullptr) << id;
  }
}

struct Stored {
  const char* id;
  const char* unit;  // UCUM
  bool lower;
  double least, most;
};

TEST(MeasureTable, unitsDirectionsAndEndsOfScale) {
  // Units: UCUM. Ends of the mobility predictor: Shirley Ryan AbilityLab, 0 to 47 and 0 to 43.
  for (const Stored& row : {Stored{"timed-up-and-go", "s", true, 3, 300},
                            {"l-test", "s", true, 8, 600},
                            {"two-minute-walk", "m", false, 0, 400},
                            {"six-minute-walk", "m", false, 0, 1000},
                            {"ten-metre-walk", "m/s", false, 0.05, 3},
                            {"five-times-sit-to-stand", "s", true, 3, 180},
                            {"single-limb-stance", "s", false, 0, 60},
                            {"four-square-step", "s", true, 3, 180},
                            {"mobility-predictor-with-prosthesis", "{score}", false, 0, 47},
                            {"mobility-predictor-without-prosthesis", "{score}", false, 0, 43},
                            {"step-length-symmetry", "%", true, 0, 200}}) {
    const auto& stored = kind(row.id);
    EXPECT_EQ(stored.unit(), row.unit) << row.id;
    EXPECT_EQ(stored.better() == v1::MEASURE_DIRECTION_LOWER_IS_BETTER, row.lower) << row.id;
    EXPECT_EQ(stored.least(), row.least) << row.id;
    EXPECT_EQ(stored.most(), row.most) << row.id;
  }
}

TEST(MeasureTable, derivedErrorsMatchThoseWorkedOutByHand) {
  // From memory: Resnik and Borgia 2011, MDC90; SEM and MDC95 by the formulas.
  struct Row {
    const char* id;
    double mdc90, sem, mdc95;
  };
  for (const Row& row : {Row{"timed-up-and-go", 3.6, 1.55, 4.3},
                         {"two-minute-walk", 34.3, 14.7, 40.9},
                         {"six-minute-walk", 45.0, 19.3, 53.6},
                         {"mobility-predictor-with-prosthesis", 3.4, 1.46, 4.1}}) {
    const auto errors = knownErrors(kind(row.id));
    ASSERT_FALSE(errors.empty()) << row.id;
    EXPECT_EQ(errors[0].detectable_90.low, row.mdc90) << row.id;
    EXPECT_TRUE(errors[0].printed_90);
    EXPECT_FALSE(errors[0].printed_95);
    EXPECT_NEAR(errors[0].standard_error.low, row.sem, 0.05) << row.id;
    EXPECT_NEAR(errors[0].detectable_95.low, row.mdc95, 0.05) << row.id;
    EXPECT_EQ(errors[0].stated->source().kind(), v1::SOURCE_KIND_FROM_MEMORY) << row.id;
  }
}

TEST(MeasureTable, valuesRecalledSaySo) {
  // Marked as not seen in the publications: bands of the mobility predictor, walking distances by level, the
  // minutes and ages of single-limb stance.
  for (const char* id : {"mobility-predictor-with-prosthesis", "mobility-predictor-without-prosthesis"}) {
    for (const auto& band : kind(id).references())
      EXPECT_EQ(band.source().kind(), v1::SOURCE_KIND_FROM_MEMORY) << id;
  }
  for (const auto& cutoff : kind("single-limb-stance").cutoffs())
    EXPECT_EQ(cutoff.source().kind(), v1::SOURCE_KIND_FROM_MEMORY);
  // And seen: Dite 2007, the cutoff of 19 s.
  EXPECT_EQ(kind("timed-up-and-go").cutoffs(0).source().kind(), v1::SOURCE_KIND_PUBLISHED);
}

TEST(MeasureTable, cutoffsAreStoredWithTheirPopulations) {
  // Timed Up and Go: 19 s (Dite 2007, transtibial at discharge) and 8.17 s (Sawers and Hafner 2020,
  // established users). Four-square step: 24, 8.49 and 15 s. The same value means different things.
  const auto at_ten = judgeCutoffs(kind("timed-up-and-go"), 10);
  ASSERT_EQ(at_ten.size(), 2U);
  EXPECT_EQ(at_ten[0].stated->at_least(), 19);
  EXPECT_THAT(at_ten[0].stated->population(), HasSubstr("discharge"));
  EXPECT_EQ(at_ten[0].stated->sensitivity_percent(), 85);
  EXPECT_EQ(at_ten[0].stated->specificity_percent(), 74);
  EXPECT_FALSE(at_ten[0].met);
  EXPECT_EQ(at_ten[1].stated->at_least(), 8.17);
  EXPECT_TRUE(at_ten[1].met);
  std::set<double> seconds;
  for (const auto& cutoff : kind("four-square-step").cutoffs())
    seconds.insert(cutoff.has_over() ? cutoff.over() : cutoff.at_least());
  EXPECT_EQ(seconds, (std::set<double>{8.49, 15, 24}));
}

TEST(MeasureTable, edgesOfCutoffs) {
  EXPECT_TRUE(judgeCutoffs(kind("timed-up-and-go"), 19)[0].met) << "at least 19";
  EXPECT_FALSE(judgeCutoffs(kind("timed-up-and-go"), 18.9)[0].met);
  const auto at_fifteen = judgeCutoffs(kind("four-square-step"), 15);
  EXPECT_FALSE(at_fifteen[2].met) << "over 15";
  EXPECT_TRUE(judgeCutoffs(kind("four-square-step"), 15.01)[2].met);
  EXPECT_FALSE(judgeCutoffs(kind("ten-metre-walk"), 0.4)[0].met) << "under 0.4";
}

TEST(Change, overEveryKnownErrorIsYes) {
  // 12.0 -> 8.0 s: 4.0 is over 3.6 (Resnik, from memory) and over 2.2 (Sawers).
  const auto change = changedBeyondError(kind("timed-up-and-go"), 12.0, 8.0);
  EXPECT_EQ(change.answer, Beyond::Yes);
  EXPECT_TRUE(change.better);
  EXPECT_EQ(change.difference, -4.0);
  EXPECT_TRUE(change.from_memory);
  EXPECT_EQ(change.known.size(), 2U) << "the study without an error in seconds is not asked";
}

TEST(Change, underEveryKnownErrorIsNo) {
  // 0.8 s is within 0.91 s, the least of both studies.
  EXPECT_EQ(changedBeyondError(kind("timed-up-and-go"), 12.0, 11.2).answer, Beyond::No);
  EXPECT_EQ(changedBeyondError(kind("timed-up-and-go"), 12.0, 12.0).answer, Beyond::No);
  // A group's gain of 8.4 m (Abou 2022) is far within one person's 34.3 m.
  EXPECT_EQ(changedBeyondError(kind("two-minute-walk"), 100, 108.4).answer, Beyond::No);
}

TEST(Change, thatTheStudiesJudgeDifferentlyCannotBeTold) {
  // 3.0 s is over 2.2 (Sawers) and within 3.6 (Resnik).
  const auto differ = changedBeyondError(kind("timed-up-and-go"), 12.0, 9.0);
  EXPECT_EQ(differ.answer, Beyond::CannotTell);
  EXPECT_EQ(differ.doubt, Doubt::SourcesDiffer);
  // 1.5 s lies inside what the abstract leaves open (0.91 to 2.2).
  const auto open = changedBeyondError(kind("four-square-step"), 12.0, 10.5);
  EXPECT_EQ(open.answer, Beyond::CannotTell);
  EXPECT_EQ(open.doubt, Doubt::WithinBand);
}

TEST(Change, withNoErrorKnownCannotBeTold) {
  for (const char* id : {"l-test", "five-times-sit-to-stand", "single-limb-stance",
                         "mobility-predictor-without-prosthesis", "step-length-symmetry"}) {
    const auto change = changedBeyondError(kind(id), 20, 10);
    EXPECT_EQ(change.answer, Beyond::CannotTell) << id;
    EXPECT_EQ(change.doubt, Doubt::NoErrorKnown) << id;
  }
}

TEST(Change, anErrorInAnotherUnitJudgesNothing) {
  // The 10-metre walk's error is printed in seconds, the measure is a speed.
  EXPECT_EQ(changedBeyondError(kind("ten-metre-walk"), 0.8, 1.4).doubt, Doubt::NoErrorKnown);
}

TEST(Change, equalToTheDetectableChangeIsNotOverIt) {
  // 3.4 points (Resnik, from memory). 12.3 - 8.9 differs from 3.4 in the last binary digit.
  EXPECT_EQ(changedBeyondError(kind("mobility-predictor-with-prosthesis"), 8.9, 12.3).answer, Beyond::No);
  EXPECT_EQ(changedBeyondError(kind("mobility-predictor-with-prosthesis"), 30, 34).answer, Beyond::Yes);
  EXPECT_EQ(changedBeyondError(kind("mobility-predictor-with-prosthesis"), 30, 33).answer, Beyond::No);
}

TEST(Change, ninetyFivePercentAsksForMore) {
  // 36 m is over 34.3 (90 %) and within 40.9 (95 %).
  const auto& walk = kind("two-minute-walk");
  EXPECT_EQ(changedBeyondError(walk, 100, 136).answer, Beyond::Yes);
  EXPECT_EQ(changedBeyondError(walk, 100, 136, Sureness::NinetyFive).answer, Beyond::No);
}

TEST(Change, forTheWorseIsBeyondErrorToo) {
  const auto change = changedBeyondError(kind("two-minute-walk"), 140, 100);
  EXPECT_EQ(change.answer, Beyond::Yes);
  EXPECT_FALSE(change.better);
}

TEST(Change, thatMattersIsToldApartFromChangeBeyondError) {
  // L-Test: 4.5 s mattered (Rushton 2015); no error in seconds is known.
  const auto change = changedBeyondError(kind("l-test"), 30, 25.5);
  ASSERT_EQ(change.important.size(), 1U);
  EXPECT_TRUE(change.important[0].reached);
  EXPECT_EQ(change.answer, Beyond::CannotTell);
  EXPECT_FALSE(changedBeyondError(kind("l-test"), 25.5, 30).important[0].reached) << "slower";
  // 2-minute walk: 36 m is beyond 34.3 and short of 37.2 (Carse 2021).
  EXPECT_FALSE(changedBeyondError(kind("two-minute-walk"), 100, 136).important[0].reached);
  EXPECT_TRUE(changedBeyondError(kind("two-minute-walk"), 100, 137.2).important[0].reached);
}

TEST(Change, errorFromDeviationAndReliability) {
  v1::MeasureKind made;
  made.set_better(v1::MEASURE_DIRECTION_HIGHER_IS_BETTER);
  auto* error = made.add_errors();
  error->set_deviation(10);
  error->mutable_reliability()->set_low(0.75);
  error->mutable_reliability()->set_high(0.84);
  // SEM 10 x sqrt(1 - .84) = 4 to 10 x sqrt(1 - .75) = 5; MDC90 9.31 to 11.63.
  const auto known = knownErrors(made);
  ASSERT_EQ(known.size(), 1U);
  EXPECT_NEAR(known[0].standard_error.low, 4, 1e-9);
  EXPECT_NEAR(known[0].standard_error.high, 5, 1e-9);
  EXPECT_EQ(changedBeyondError(made, 0, 9.3).answer, Beyond::No);
  EXPECT_EQ(changedBeyondError(made, 0, 10).answer, Beyond::CannotTell);
  EXPECT_EQ(changedBeyondError(made, 0, 11.7).answer, Beyond::Yes);
}

v1::Measure measure(const std::string& kind_id, double value, const std::string& unit) {
  v1::Measure taken;
  taken.set_kind(kind_id);
  taken.set_value(value);
  taken.set_unit(unit);
  return taken;
}

std::string reason(const v1::Measure& taken) {
  return std::string(checkMeasure(taken, MeasureTable::builtIn()).message());
}

TEST(MeasureAtTheDoor, unitBoundsAndSide) {
  EXPECT_EQ(reason(measure("timed-up-and-go", 12.3, "s")), "");
  EXPECT_EQ(reason(measure("timed-up-and-go", 12.3, "min")), "unit: \"min\" is not \"s\"");
  EXPECT_EQ(reason(measure("timed-up-and-go", 1, "s")), "value: 1 is not between 3 and 300");
  EXPECT_EQ(reason(measure("mobility-predictor-with-prosthesis", 48, "{score}")),
            "value: 48 is not between 0 and 47");
  EXPECT_EQ(reason(measure("single-limb-stance", 10, "s")), "side: is missing");
  auto sided = measure("timed-up-and-go", 12.3, "s");
  sided.set_side(v1::SIDE_LEFT);
  EXPECT_EQ(reason(sided), "side: this measure has none");
  EXPECT_TRUE(absl::IsNotFound(checkMeasure(measure("headstand", 1, "s"), MeasureTable::builtIn())));
}

TEST(MeasureWords, areThereInEnglishAndSpanishAndFallBackWhole) {
  for (const auto& stored : MeasureTable::builtIn().kinds()) {
    EXPECT_TRUE(stored.words().contains("es")) << stored.id();
    EXPECT_EQ(&measureWords(stored, "es-MX"), &stored.words().at("es"));
    EXPECT_EQ(&measureWords(stored, "fi"), &stored.words().at("en"));
  }
}

class MeasureFolder : public testing::Test {
 protected:
  void SetUp() override {
    m_folder =
        std::filesystem::temp_directory_path() /
        ("newel-measures-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
    std::filesystem::create_directories(m_folder);
  }
  void TearDown() override { std::filesystem::remove_all(m_folder); }
  void write(const std::string& name, const std::string& text) { std::ofstream(m_folder / name) << text; }
  std::string path(const std::string& name) const { return (m_folder / name).string(); }

  std::filesystem::path m_folder;
};

constexpr char kStairs[] = R"(id: "stair-climb"
revision: 1
words { key: "en" value { name: "Stair climb" protocol: "Up and down one flight as fast as is safe." } }
unit: "s"
better: MEASURE_DIRECTION_LOWER_IS_BETTER
least: 1
most: 600
decimals: 1
errors {
  population: "made up for this test"
  standard_error { low: 2 }
  source { kind: SOURCE_KIND_COMMON_PRACTICE text: "common practice, no source" }
}
sources { kind: SOURCE_KIND_COMMON_PRACTICE text: "common practice, no source" }
)";

TEST_F(MeasureFolder, aNewMeasureIsAFileAndNothingElse) {
  write("stair-climb.textproto", kStairs);
  const auto table = MeasureTable::load(m_folder.string());
  ASSERT_TRUE(table.ok()) << table.status();
  const auto both = MeasureTable::builtIn().with(*table);
  ASSERT_NE(both.find("stair-climb"), nullptr);
  ASSERT_NE(both.find("timed-up-and-go"), nullptr);
  // 2.3264 x 2 = 4.65.
  EXPECT_EQ(changedBeyondError(*both.find("stair-climb"), 30, 25.2).answer, Beyond::Yes);
  EXPECT_EQ(changedBeyondError(*both.find("stair-climb"), 30, 25.5).answer, Beyond::No);
}

TEST_F(MeasureFolder, aClinicsLaterRevisionTakesThePlaceOfOurs) {
  std::string text = kStairs;
  text.replace(text.find("stair-climb"), 11, "l-test");
  text.replace(text.find("revision: 1"), 11, "revision: 2");
  write("l-test.textproto", text);
  const auto table = MeasureTable::load(m_folder.string());
  ASSERT_TRUE(table.ok()) << table.status();
  EXPECT_EQ(MeasureTable::builtIn().with(*table).find("l-test")->revision(), 2U);
  EXPECT_EQ(table->with(MeasureTable::builtIn()).find("l-test")->revision(), 2U) << "ours is the older";
  EXPECT_EQ(table->with(MeasureTable::builtIn()).kinds().size(), MeasureTable::builtIn().kinds().size());
}

TEST_F(MeasureFolder, faultsNameFileLineAndReason) {
  std::string text = kStairs;
  text.replace(text.find("low: 2"), 6, "low: -2");
  write("stair-climb.textproto", text);
  EXPECT_EQ(std::string(MeasureTable::load(m_folder.string()).status().message()),
            path("stair-climb.textproto") + ":11: errors[0].standard_error.low: is out of its bounds");
}

TEST_F(MeasureFolder, aFaultInWordsNamesTheirLine) {
  std::string text = kStairs;
  text.replace(text.find("Up and down one flight as fast as is safe."), 42, "Up.");
  write("stair-climb.textproto", text);
  EXPECT_EQ(std::string(MeasureTable::load(m_folder.string()).status().message()),
            path("stair-climb.textproto") + ":3: words[en].protocol: is too short");
}

TEST_F(MeasureFolder, whatDoesNotParseNamesItsLine) {
  write("stair-climb.textproto", std::string(kStairs) + "colour: \"red\"\n");
  const auto status = MeasureTable::load(m_folder.string()).status();
  EXPECT_THAT(std::string(status.message()), HasSubstr("stair-climb.textproto:15:"));
}

TEST_F(MeasureFolder, aNumberWithoutASourceIsRefused) {
  std::string text = kStairs;
  const std::string source =
      "  source { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common practice, no source\" }\n";
  text.erase(text.find(source), source.size());
  write("stair-climb.textproto", text);
  EXPECT_THAT(std::string(MeasureTable::load(m_folder.string()).status().message()),
              HasSubstr(":9: errors[0].source: is missing"));
}

TEST_F(MeasureFolder, aFileNotNamedAfterItsIdIsRefused) {
  write("other.textproto", kStairs);
  EXPECT_THAT(std::string(MeasureTable::load(m_folder.string()).status().message()),
              HasSubstr("other.textproto:1: id: is not the file's name"));
}

TEST_F(MeasureFolder, anEmptyOrMissingFolderIsNotFound) {
  EXPECT_TRUE(absl::IsNotFound(MeasureTable::load(m_folder.string()).status()));
  EXPECT_TRUE(absl::IsNotFound(MeasureTable::load(path("nowhere")).status()));
}

// The program that the build runs on the measures: bad content ends it, with file, line and reason.
TEST_F(MeasureFolder, badContentFailsTheBuild) {
  std::string text = kStairs;
  text.replace(text.find("most: 600"), 9, "most: 0");
  write("stair-climb.textproto", text);
  const std::string program = std::string(NEWEL_BINARY_DIR) + "/tools/newel_embed_measures ";
  const std::string said = path("said.txt");
  const int status =
      std::system((program + m_folder.string() + " " + path("out.cpp") + " 2>" + said).c_str());
  EXPECT_NE(status, 0);
  std::ifstream stream(said);
  const std::string words((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  EXPECT_EQ(words, path("stair-climb.textproto") + ":7: most: is not over least\n");
}

}  // namespace
}  // namespace newel
