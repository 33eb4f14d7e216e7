// Tables kept as files: the line that an error names, and the doors of the new records.
#include "core/records/record_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace newel {
namespace {

using testing::HasSubstr;

constexpr char kKind[] = R"(id: "x"
words {
  key: "es"
  value {
    name: "Equis"
    protocol: "Algo que se mide."
  }
}
words {
  key: "en"
  value {
    name: "X"
    protocol: "Something that is measured."
  }
}
errors { population: "first" }
errors {
  population: "second"
  standard_error { low: 1 }
}
)";

TEST(LineOfPath, findsFieldsByIndexKeyAndNesting) {
  const v1::MeasureKind kind;
  EXPECT_EQ(lineOfPath(kKind, kind, "id"), 1);
  EXPECT_EQ(lineOfPath(kKind, kind, "errors[0].population"), 16);
  EXPECT_EQ(lineOfPath(kKind, kind, "errors[1].standard_error.low"), 19);
  EXPECT_EQ(lineOfPath(kKind, kind, "words[en].protocol"), 13);
  EXPECT_EQ(lineOfPath(kKind, kind, "words[es].name"), 5);
}

TEST(LineOfPath, ofWhatIsAbsentIsTheNearestAround) {
  const v1::MeasureKind kind;
  EXPECT_EQ(lineOfPath(kKind, kind, "errors[1].source"), 17);
  EXPECT_EQ(lineOfPath(kKind, kind, "errors[7].source"), 1);
  EXPECT_EQ(lineOfPath(kKind, kind, "unit"), 1);
  EXPECT_EQ(lineOfPath(kKind, kind, "no such field"), 1);
  EXPECT_EQ(lineOfPath(kKind, kind, "errors[1"), 1);
  EXPECT_EQ(lineOfPath("does { not parse", kind, "id"), 1);
}

TEST(RecordFolder, readsFilesByNameAndNamesTheFirstFault) {
  const auto folder = std::filesystem::temp_directory_path() / "newel-record-folder";
  std::filesystem::remove_all(folder);
  std::filesystem::create_directories(folder);
  EXPECT_TRUE(absl::IsNotFound(recordFilesIn(folder.string()).status()));
  std::ofstream(folder / "b.textproto") << "statements { line: \"2\" text: \"Someone.\" }\n";
  std::ofstream(folder / "a.textproto") << "statements { line: \"6\" text: \"A call.\" }\n";
  std::ofstream(folder / "notes.txt") << "no record\n";
  const auto read = readRecordFolder<v1::CertStatements>(folder.string());
  ASSERT_TRUE(read.ok()) << read.status();
  ASSERT_EQ(read->size(), 2U);
  EXPECT_EQ(read->at(0).record.statements(0).line(), "6");
  std::ofstream(folder / "c.textproto") << "statements { line: \"2\" text: \"Someone.\" }\n"
                                           "statements { line: \"2\" text: \"Another.\" }\n";
  EXPECT_EQ(std::string(readRecordFolder<v1::CertStatements>(folder.string()).status().message()),
            (folder / "c.textproto").string() + ":2: statements[1].line: is given twice");
  std::filesystem::remove_all(folder);
}

v1::MeasureKind goodKind() {
  v1::MeasureKind kind;
  kind.set_id("x");
  kind.set_revision(1);
  (*kind.mutable_words())["en"].set_name("X");
  (*kind.mutable_words())["en"].set_protocol("Something that is measured.");
  kind.set_unit("s");
  kind.set_better(v1::MEASURE_DIRECTION_LOWER_IS_BETTER);
  kind.set_most(10);
  auto* source = kind.add_sources();
  source->set_kind(v1::SOURCE_KIND_COMMON_PRACTICE);
  source->set_text("common practice, no source");
  return kind;
}

std::string reason(const v1::MeasureKind& kind) { return std::string(check(kind).message()); }

TEST(MeasureKindCheck, refusesWhatIsMissingOrMakesNoSense) {
  EXPECT_EQ(reason(goodKind()), "");
  auto kind = goodKind();
  kind.clear_better();
  EXPECT_EQ(reason(kind), "better: MEASURE_DIRECTION_UNSPECIFIED is not a value");
  kind = goodKind();
  kind.mutable_words()->clear();
  EXPECT_EQ(reason(kind), "words: English is missing");
  kind = goodKind();
  kind.clear_sources();
  EXPECT_EQ(reason(kind), "sources: is missing");
  kind = goodKind();
  kind.mutable_sources(0)->set_text("everybody knows");
  EXPECT_EQ(reason(kind), "sources[0].text: a common practice begins with \"common practice, no source\"");
  kind = goodKind();
  kind.add_cutoffs()->set_meaning("falls");
  EXPECT_EQ(reason(kind), "cutoffs[0].bound: is missing: at_least, over, at_most or under");
  kind = goodKind();
  kind.add_errors()->set_population("everybody");
  EXPECT_THAT(reason(kind), HasSubstr("errors[0].reliability: is missing"));
  kind = goodKind();
  auto* band = kind.add_errors();
  band->set_population("everybody");
  band->mutable_detectable_90()->set_low(2);
  band->mutable_detectable_90()->set_high(1);
  EXPECT_THAT(reason(kind), HasSubstr("errors[0].detectable_90.high: is not over low"));
  kind = goodKind();
  kind.add_important_changes();
  EXPECT_THAT(reason(kind), HasSubstr("important_changes[0].change: is not over 0"));
}

TEST(MeasureKindCheck, aCutoffWithoutItsPopulationIsRefused) {
  auto kind = goodKind();
  auto* cutoff = kind.add_cutoffs();
  cutoff->set_at_least(19);
  cutoff->set_meaning("falls");
  EXPECT_EQ(reason(kind), "cutoffs[0].population: is missing");
  cutoff->set_population("somebody");
  EXPECT_EQ(reason(kind), "cutoffs[0].source: is missing");
}

TEST(CertCheck, linesAreNamedAsInTheTemplate) {
  v1::CertStatements statements;
  statements.add_statements()->set_text("Something.");
  for (const char* line : {"", "a", "16c", "1234", "b7"}) {
    statements.mutable_statements(0)->set_line(line);
    EXPECT_THAT(std::string(check(statements).message()), HasSubstr("statements[0].line")) << line;
  }
  for (const char* line : {"1", "7a", "16b"}) {
    statements.mutable_statements(0)->set_line(line);
    EXPECT_TRUE(check(statements).ok()) << line;
  }
}

}  // namespace
}  // namespace newel
