// The progress report, read back as a reader would get it.
#include "qml/print/report.h"

#include <QtCore/QRegularExpression>

#include "core/time/local_day.h"
#include "qml/print/record_words.h"
#include "qml/print/report_extras.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/print/sheets.h"

namespace newel::print {
namespace {

v1::Practice practiceOf(const v1::Programme& programme, const std::string& day, std::uint64_t number) {
  v1::Practice practice;
  practice.set_id(test::idOf(number));
  practice.set_revision(1);
  practice.set_person_id(programme.person_id());
  practice.set_programme_number(programme.number());
  practice.set_zone(programme.zone());
  practice.set_local_day(day);
  const absl::Time began =
      instantOf(absl::CivilMinute(*parseLocalDay(day)) + 570, *loadZone(programme.zone()));
  *practice.mutable_started_at() = toTimestamp(began);
  *practice.mutable_ended_at() = toTimestamp(began + absl::Minutes(10));
  practice.set_elapsed_ms(600000);
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_app_version("test");
  auto& entry = *practice.add_entries();
  entry.mutable_occasion()->set_entry_id(programme.entries(0).id());
  entry.mutable_occasion()->set_local_day(day);
  entry.set_exercise_id(programme.entries(0).exercise_id());
  entry.set_exercise_revision(1);
  entry.mutable_asked()->set_repetitions(16);
  entry.mutable_asked()->set_hold_ms(32000);
  entry.mutable_asked()->set_active_ms(128000);
  *entry.mutable_done() = entry.asked();
  entry.set_pain_before_0_10(2);
  entry.set_pain_after_0_10(3);
  entry.set_effort_0_10(5);
  entry.set_elapsed_ms(300000);
  return practice;
}

ReportInput reportInput() {
  ReportInput input;
  input.person = test::transfemoralLeft();
  input.identity.set_person_id(input.person.id());
  input.identity.set_given_name("Lena");
  input.identity.set_family_name("Fisk");
  input.identity.set_birth_date("1961-05-04");
  input.clinic = clinic();
  input.made_by = QStringLiteral("Ruth Adler");
  const auto programme = test::programmeOf(input.person, {test::entryOf("sit-to-stand", input.person, 100)});
  input.programmes = {programme};
  // Mondays, Wednesdays and Fridays of two weeks: six due; four done, the last with a fall.
  input.practices = {practiceOf(programme, "2026-11-02", 1), practiceOf(programme, "2026-11-04", 2),
                     practiceOf(programme, "2026-11-09", 3), practiceOf(programme, "2026-11-11", 4)};
  auto& fall = input.practices.back();
  fall.set_end(v1::PRACTICE_END_RED_FLAG);
  fall.set_stop_reason(v1::STOP_REASON_FALL);
  fall.add_red_flag_rule_ids("stop-fall");
  fall.mutable_entries(0)->set_skipped(v1::STOP_REASON_FALL);
  fall.mutable_entries(0)->mutable_done()->set_repetitions(4);
  fall.mutable_entries(0)->set_pain_after_0_10(7);
  fall.set_note("Slipped on the mat");
  input.first = absl::CivilDay(2026, 11, 2);
  input.last = absl::CivilDay(2026, 11, 15);
  input.today = absl::CivilDay(2026, 11, 16);
  input.heard_until = absl::CivilDay(2026, 11, 15);
  input.zone = *loadZone("Europe/Berlin");
  return input;
}

class Report : public ::testing::Test {
 protected:
  QString write(const ReportInput& input) {
    const QString file = m_folder.filePath(QStringLiteral("report.pdf"));
    const auto pages = writeReport(input, {}, Catalogue::builtIn(), RuleBook::builtIn(), file);
    EXPECT_TRUE(pages.ok()) << pages.status();
    EXPECT_EQ(pages.value_or(0), pagesOf(file));
    return file;
  }
  SheetFolder m_folder;
};

TEST_F(Report, saysPersonPeriodAdherenceAndItsDefinition) {
  const QString words = textOf(write(reportInput()));
  for (const char* wanted :
       {"Lena Fisk", "left, transfemoral", "K2", "Mon 2 Nov 2026 to Sun 15 Nov 2026", "number 1", "4 of 6",
        "67 %", "Sit to stand", "Ruth Adler", "14 of 14 days have data; practice on 4 of them"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  EXPECT_TRUE(words.contains(adherenceDefinition()));
}

v1::Measure measured(const std::string& kind, const std::string& unit, double value, const std::string& day,
                     std::uint64_t number) {
  v1::Measure measure;
  measure.set_id(test::idOf(number));
  measure.set_revision(1);
  measure.set_kind(kind);
  measure.set_unit(unit);
  measure.set_value(value);
  measure.set_local_day(day);
  *measure.mutable_taken_at() =
      toTimestamp(instantOf(absl::CivilMinute(*parseLocalDay(day)) + 600, absl::UTCTimeZone()));
  return measure;
}

// Vectors: Resnik and Borgia 2011 as the table has it, smallest detectable change of the timed up and go 3.6
// s at 90 % (from memory, says the table).
TEST_F(Report, setsMeasuresBesideTheirError) {
  ReportInput input = reportInput();
  input.measures = {measured("timed-up-and-go", "s", 24.5, "2026-10-01", 800),
                    measured("timed-up-and-go", "s", 16.0, "2026-11-10", 801),
                    measured("two-minute-walk", "m", 90, "2026-11-03", 802),
                    measured("timed-up-and-go", "s", 9.0, "2026-12-24", 803)};
  input.measures.push_back(measured("timed-up-and-go", "s", 99, "2026-11-11", 804));
  input.measures.back().set_withdrawn(true);
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("Outcome measures")));
  EXPECT_TRUE(words.contains(QStringLiteral("-8.5 s: better, beyond error"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("smallest detectable change (90 %)")));
  EXPECT_TRUE(words.contains(QStringLiteral("taken once: nothing to compare")));
  EXPECT_FALSE(words.contains(QStringLiteral("9.0 s"))) << "after the period";
  EXPECT_FALSE(words.contains(QStringLiteral("99"))) << "entered by mistake";
  input.measures[1].set_value(24.3);
  EXPECT_TRUE(textOf(write(input)).contains(QStringLiteral("within error: no change can be told")));
}

TEST_F(Report, tellsWearingTimeAndWhereTheSkinWasNotClear) {
  ReportInput input = reportInput();
  EXPECT_TRUE(textOf(write(input)).contains(QStringLiteral("No wearing time was told")));
  input.redness_min = 15;
  const auto worn = [&](const std::string& day, int minutes, v1::SkinSign sign, std::uint64_t number) {
    v1::WearBlock block;
    block.set_id(test::idOf(number));
    block.set_revision(1);
    block.set_local_day(day);
    const absl::Time on = instantOf(absl::CivilMinute(*parseLocalDay(day)) + 540, input.zone);
    *block.mutable_put_on_at() = toTimestamp(on);
    *block.mutable_taken_off_at() = toTimestamp(on + absl::Minutes(minutes));
    block.mutable_check()->add_signs(sign);
    return block;
  };
  input.wear_blocks = {worn("2026-11-03", 60, v1::SKIN_SIGN_CLEAR, 810),
                       worn("2026-11-04", 90, v1::SKIN_SIGN_BLISTER, 811),
                       worn("2026-12-24", 500, v1::SKIN_SIGN_OPEN_SKIN, 812)};
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("Mon 2 Nov 2026 2 75 min"))) << words.toStdString();
  EXPECT_TRUE(
      words.contains(QStringLiteral("Wed 4 Nov 2026: 09:00 to 10:30, 90 min. blister: a sign of harm")));
  EXPECT_FALSE(words.contains(QStringLiteral("Tue 3 Nov 2026: 09:00"))) << "clear";
  EXPECT_FALSE(words.contains(QStringLiteral("open skin"))) << "after the period";
}

// The record is in the clinic's language, whatever the person's.
TEST_F(Report, isWrittenInTheLanguageOfTheRecord) {
  ReportInput input = reportInput();
  input.person.set_language("ar");
  input.language = "es";
  const QString words = textOf(write(input));
  for (const char* wanted :
       {"Informe de progreso", "Adherencia", "días tienen datos", "Órdenes de suspensión",
        "Medidas de resultado", "Tiempo de uso y piel", "El dolor en el periodo"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  for (const char* english : {"Progress report", "Adherence", "Hold orders", "Week of", "Pain after"}) {
    EXPECT_FALSE(words.contains(QString::fromUtf8(english))) << english;
  }
  EXPECT_TRUE(words.contains(QString::fromUtf8("De la silla a estar de pie")))
      << "the exercise's title in Spanish";
}

TEST_F(Report, tellsStopsWithReasonAndTheRuleThatSpoke) {
  const QString words = textOf(write(reportInput()));
  EXPECT_TRUE(words.contains(QStringLiteral("a fall")));
  EXPECT_TRUE(words.contains(QStringLiteral("Slipped on the mat")));
  EXPECT_TRUE(words.contains(text(RuleBook::builtIn().rule("stop-fall")->words().at("en").therapist())));
  EXPECT_TRUE(words.contains(QStringLiteral("3 to 7"))) << "pain after over the period";
}

TEST_F(Report, noDataIsNeverNotDone) {
  ReportInput input = reportInput();
  input.practices.clear();
  input.heard_until.reset();
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("never heard from: 0 of 14 days have data")));
  EXPECT_TRUE(words.contains(QStringLiteral("6 no data")));
  EXPECT_FALSE(words.contains(QStringLiteral("not done")));
  EXPECT_TRUE(words.contains(QStringLiteral("nothing due")));
  EXPECT_FALSE(words.contains(QStringLiteral(" 0 %")));
}

TEST_F(Report, listsHoldsAndChangesOfProgramme) {
  ReportInput input = reportInput();
  v1::Programme second = input.programmes[0];
  second.set_number(2);
  second.set_effective_day("2026-11-13");
  second.mutable_issued_at()->set_seconds(1794528000);  // 2026-11-13 00:00 UTC
  second.mutable_entries(0)->mutable_dose()->mutable_sets()->set_repetitions(6);
  auto& answered = *second.mutable_entries(0)->add_overrides();
  answered.set_rule_id("mobility-under-usual");
  answered.set_reason("Seen in clinic, steady with the rail");
  input.programmes.push_back(second);
  v1::HoldOrder hold;
  hold.set_id(test::idOf(50));
  hold.set_number(1);
  hold.set_person_id(input.person.id());
  hold.set_clinic_id(test::idOf(2000));
  hold.set_signer_id(test::idOf(2001));
  hold.set_signer_name("Ruth Adler");
  hold.mutable_issued_at()->set_seconds(1794441600);
  hold.set_reason("Rest until I have seen the skin");
  input.holds = {hold};
  const QString words = textOf(write(input));
  for (const char* wanted :
       {"Rest until I have seen the skin", "6 times instead of 8", "Programme 2, signed on",
        "Seen in clinic, steady with the rail", "number 2 from Fri 13 Nov 2026"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
}

TEST_F(Report, wordsFromOutsideCannotBecomeMarkup) {
  ReportInput input = reportInput();
  input.practices.back().set_note("<b>5 < 6 & \"so\"</b>");
  EXPECT_TRUE(textOf(write(input)).contains(QStringLiteral("<b>5 < 6 & \"so\"</b>")));
}

}  // namespace
}  // namespace newel::print
