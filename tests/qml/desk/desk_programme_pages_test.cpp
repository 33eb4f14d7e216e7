// Writing a programme: what would answer a finding, the next step by its rule, what a report would lack,
// wearing time and measures of a template, the phone in the person's own language. In each look of
// desk_window.h.
#include <gtest/gtest.h>

#include "core/progress/measure_table.h"
#include "core/progress/progression.h"
#include "core/progress/progression_presets.h"
#include "core/records/check.h"
#include "core/review/cert.h"
#include "qml/desk/evidence_words.h"
#include "qml/parts/theme.h"
#include "tests/qml/desk/desk_window.h"

namespace newel::tests {
namespace {

class ProgrammePages : public DeskPages {
 protected:
  void openDraft() {
    signIn(test::kUser);
    openAda();
    m_desk->openProgramme();
    answered();
  }
  // The first item of a type by its name, or nullptr.
  QQuickItem* itemOfType(const QByteArray& name) {
    QList<QQuickItem*> items = {m_window->contentItem()};
    while (!items.isEmpty()) {
      QQuickItem* const item = items.takeFirst();
      if (QByteArray(item->metaObject()->className()).endsWith(name)) return item;
      items << item->childItems();
    }
    return nullptr;
  }
  const v1::Entry& entry() { return *m_desk->draft()->selectedEntry(); }
  // The whole dose, as asked, with the effort and pain of a good day, `n` quarters of an hour after the
  // first.
  v1::Practice goodPractice(const v1::Programme& programme, const v1::Entry& asked, int n) {
    v1::Practice practice = test::samplePractice(m_phone->newId(), m_person.id());
    practice.set_programme_number(programme.number());
    practice.mutable_started_at()->set_seconds(practice.started_at().seconds() + n * 900);
    practice.mutable_ended_at()->set_seconds(practice.ended_at().seconds() + n * 900);
    v1::EntryDone& done = *practice.mutable_entries(0);
    done.mutable_occasion()->set_entry_id(asked.id());
    done.set_exercise_id(asked.exercise_id());
    done.set_exercise_revision(asked.exercise_revision());
    const v1::SetsDose& dose = asked.dose().sets();
    done.mutable_asked()->set_repetitions(dose.sets() * dose.repetitions());
    *done.mutable_done() = done.asked();
    done.mutable_done()->set_active_ms(60000);
    for (std::uint32_t set = 1; set <= dose.sets(); ++set) {
      v1::SetDone& one = *done.add_sets();
      one.set_set(set);
      one.mutable_done()->set_repetitions(dose.repetitions());
    }
    done.set_effort_0_10(3);
    done.set_pain_before_0_10(1);
    done.set_pain_after_0_10(1);
    return practice;
  }
};

TEST_P(ProgrammePages, aFindingIsAnsweredByOneClick) {
  openDraft();
  desk::EntryModel& editor = *m_desk->entry();
  // The first exercise and support of the catalogue of which a rule says something that one change answers.
  QVariantMap with_fix;
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises()) {
    if (!with_fix.isEmpty()) break;
    m_desk->draft()->add(QString::fromStdString(exercise.id()));
    for (const int support : exercise.supports()) {
      editor.setSupport(support);
      for (const QVariant& finding : editor.findings()) {
        if (!finding.toMap()["fixes"].toList().isEmpty()) with_fix = finding.toMap();
      }
      if (!with_fix.isEmpty()) break;
    }
    if (with_fix.isEmpty()) m_desk->draft()->removeSelected();
  }
  ASSERT_FALSE(with_fix.isEmpty());
  check(DeskModel::ProgrammePage, "-fix");
  const v1::Entry before = entry();
  editor.applyFix(with_fix["ruleId"].toString(), 0);
  for (const QVariant& finding : editor.findings())
    EXPECT_NE(finding.toMap()["ruleId"].toString(), with_fix["ruleId"].toString());
  m_desk->draft()->undo();
  EXPECT_EQ(entry().SerializeAsString(), before.SerializeAsString()) << "one step to undo";
}

TEST_P(ProgrammePages, theNextStepHasItsRuleAndItsLadder) {
  openDraft();
  m_desk->draft()->add(QStringLiteral("sit-to-stand"));
  desk::NextStepModel& step = *m_desk->nextStep();
  ASSERT_GE(step.rungs().size(), 3);
  step.setRung(step.rungs().at(1).toMap()["value"].toString());
  EXPECT_EQ(entry().rung_id(), step.rungs().at(1).toMap()["value"].toString().toStdString());
  EXPECT_EQ(step.preset(), "none");
  EXPECT_NE(step.ruleWords(), "");
  step.setPreset(QStringLiteral("steady-three"));
  EXPECT_EQ(entry().progression().practices(), 3U);
  EXPECT_EQ(step.preset(), "steady-three");
  EXPECT_GE(step.fields().size(), 6);
  check(DeskModel::ProgrammePage, "-next-step");
  scroll(700);
  check(DeskModel::ProgrammePage, "-next-step-rule");
  click(said("NextStep", "The rule's numbers") + ", " + m_desk->entry()->title());
  step.setField(QStringLiteral("practices"), 4);
  step.setField(QStringLiteral("effort_at_most_0_10"), 99);
  EXPECT_EQ(entry().progression().practices(), 4U);
  EXPECT_EQ(entry().progression().effort_at_most_0_10(), 10U) << "no further than the record allows";
  EXPECT_EQ(step.preset(), "own");
  EXPECT_EQ(newel::check(entry()), absl::OkStatus());
  scroll(900);
  check(DeskModel::ProgrammePage, "-next-step-numbers");
  m_desk->draft()->undo();
  m_desk->draft()->undo();
  EXPECT_EQ(step.preset(), "steady-three");
  step.setPreset(QStringLiteral("none"));
  EXPECT_FALSE(entry().has_progression());
}

// Three good practices under a signed rule: it says ready, with what speaks for it, and one click takes the
// step.
TEST_P(ProgrammePages, theRuleSaysReadyAndOneClickTakesTheStep) {
  openDraft();
  desk::NextStepModel& step = *m_desk->nextStep();
  m_desk->draft()->add(QStringLiteral("sit-to-stand"));
  step.setRung(QStringLiteral("both-hands-few"));
  step.setPreset(QStringLiteral("steady-three"));
  step.setNothingMissed(false);
  const std::string id = entry().id();
  ASSERT_TRUE(m_desk->draft()->maySign()) << m_desk->draft()->whyNot().toStdString();
  m_desk->openSign();
  m_desk->draft()->sign();
  answered();
  const v1::Programme signed_one = m_clinic.desk().programmes(m_person.id())->back();
  const auto& signed_entry = *std::find_if(signed_one.entries().begin(), signed_one.entries().end(),
                                           [&](const v1::Entry& one) { return one.id() == id; });
  for (int n = 0; n < 3; ++n) {
    ASSERT_EQ(m_phone->closePractice(goodPractice(signed_one, signed_entry, n)), absl::OkStatus());
  }
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  openAda();
  m_desk->openProgress();
  check(DeskModel::ProgressPage);
  const QVariantMap first = m_desk->progress()->rows().value(0).toMap();
  EXPECT_EQ(first["advice"].toInt(), static_cast<int>(Advice::Ready));
  EXPECT_TRUE(first["moves"].toBool());
  EXPECT_FALSE(first["evidence"].toList().isEmpty());
  EXPECT_EQ(m_desk->progress()->moving(), 1);
  click(m_desk->progress()->draftWords());
  EXPECT_EQ(m_desk->page(), DeskModel::ProgrammePage);
  const v1::Programme& draft = m_desk->draft()->programme();
  const auto moved = std::find_if(draft.entries().begin(), draft.entries().end(),
                                  [&](const v1::Entry& one) { return one.id() == id; });
  ASSERT_NE(moved, draft.entries().end());
  EXPECT_EQ(moved->rung_id(), "both-hands");
  m_desk->draft()->undo();
  EXPECT_EQ(m_clinic.desk().programmes(m_person.id())->size(), 2U) << "nothing was sent";
  for (int i = 0; i < m_desk->draft()->entries()->rowCount(); ++i) {
    m_desk->draft()->select(i);
    if (entry().id() == id) break;
  }
  std::string why;
  for (const QVariant& line : step.evidence()) why += line.toMap()["words"].toString().toStdString() + "; ";
  EXPECT_EQ(step.advice(), static_cast<int>(Advice::Ready)) << why;
  check(DeskModel::ProgrammePage, "-ready");
  scroll(700);
  check(DeskModel::ProgrammePage, "-ready-why");
  ASSERT_NE(step.stepWords(), "") << why;
  // Three times effort 3 over 4 minutes: of ten minutes told, four times the minute of work counts (load.h).
  EXPECT_TRUE(m_desk->draft()->loadWords().contains("36")) << m_desk->draft()->loadWords().toStdString();
  step.takeStep();
  EXPECT_EQ(entry().rung_id(), "both-hands");
  EXPECT_EQ(step.stepWords(), "") << "it is taken";
  EXPECT_FALSE(m_desk->draft()->changes().isEmpty());
}

TEST_P(ProgrammePages, whatAReportWouldLackIsListedAndLedTo) {
  openDraft();
  m_desk->draft()->add(QStringLiteral("sit-to-stand"));
  click(said("DraftList", "Dates, advice, limits"));
  EXPECT_NE(m_desk->draft()->reportWords(), "");
  int rows = 0;
  for (const QVariant& lack : m_desk->draft()->reportLacks()) {
    const QVariantMap map = lack.toMap();
    EXPECT_NE(map["words"].toString(), "");
    if (map["row"].toInt() >= 0) ++rows;
  }
  EXPECT_GT(rows, 0) << "no exercise has a rule yet";
  check(DeskModel::ProgrammePage, "-report");
  scroll(10000);
  check(DeskModel::ProgrammePage, "-report-end");
  const int before = m_desk->draft()->reportLacks().size();
  for (int i = 0; i < m_desk->draft()->programme().entries_size(); ++i) {
    m_desk->draft()->select(i);
    m_desk->nextStep()->setPreset(QStringLiteral("steady-three"));
  }
  EXPECT_LT(m_desk->draft()->reportLacks().size(), before);
  EXPECT_TRUE(m_desk->draft()->programme().entries(0).has_progression());
}

TEST_P(ProgrammePages, aTemplateBringsMeasuresAndWearingTimeWhereThereIsNone) {
  openDraft();
  m_desk->draft()->add(QStringLiteral("sit-to-stand"));
  m_desk->wear()->startFrom(m_desk->wear()->examples().first().toMap()["id"].toString());
  m_desk->wear()->toggleMeasure(QStringLiteral("two-minute-walk"));
  desk::StartModel& start = *m_desk->start();
  start.keepAs(QStringLiteral("First weeks with wearing time"));
  answered();
  ASSERT_EQ(start.problem().toStdString(), "");
  const auto kept = *m_clinic.desk().templates();
  ASSERT_EQ(kept.size(), 1U);
  EXPECT_GT(kept.front().wear_plan().steps_size(), 0);
  EXPECT_EQ(kept.front().measures_size(), 1);
  const QString id = QString::fromStdString(kept.front().id());
  // For somebody who has no plan.
  m_desk->openPerson(QString::fromStdString(test::transfemoralLeft().id()));
  answered();
  m_desk->openProgramme();
  EXPECT_TRUE(start.choices().first().toMap()["minutes"].toString().contains(
      said("newel::desk::StartModel", "with wearing time")));
  check(DeskModel::ProgrammePage, "-template-wear");
  start.startFrom(id);
  EXPECT_GT(m_desk->draft()->programme().wear_plan().steps_size(), 0);
  EXPECT_EQ(m_desk->draft()->programme().measures_size(), 1);
  ASSERT_TRUE(m_desk->draft()->maySign()) << m_desk->draft()->whyNot().toStdString();
  m_desk->openSign();
  m_desk->draft()->sign();
  answered();
  ASSERT_EQ(m_desk->draft()->signProblem().toStdString(), "");
  const v1::Programme first = m_clinic.desk().programmes(test::transfemoralLeft().id())->back();
  EXPECT_EQ(first.wear_plan().number(), 1U);
  // Who has one keeps it, as the skin left it.
  m_desk->openPerson(QString::fromStdString(test::transfemoralLeft().id()));
  answered();
  m_desk->openProgramme();
  start.startFrom(id);
  EXPECT_EQ(m_desk->draft()->programme().wear_plan().id(), first.wear_plan().id());
  EXPECT_NE(start.tookWords(), "");
  EXPECT_EQ(m_desk->draft()->programme().measures_size(), 1);
}

// The phone beside the programme speaks the person's language, buttons and all, and reads as they read.
TEST_P(ProgrammePages, thePhoneBesideItIsInThePersonsLanguage) {
  v1::Person reader = test::transtibialRight();
  reader.set_id(test::idOf(810));
  const std::pair<const char*, const char*> expected[] = {{"es", "Pausa"}, {"ar", "انتظر"}, {"en", "Pause"}};
  signIn(test::kUser);
  int n = 0;
  for (const auto& [language, pause] : expected) {
    reader.set_id(test::idOf(static_cast<std::uint64_t>(810 + n++)));
    reader.set_language(language);
    m_clinic.addPerson(reader, "Reader");
    m_desk->openPerson(QString::fromStdString(reader.id()));
    answered();
    m_desk->openProgramme();
    m_desk->draft()->add(QStringLiteral("sit-to-stand"));
    desk::PreviewModel& preview = *m_desk->preview();
    ASSERT_GT(preview.count(), 2) << preview.problem().toStdString();
    EXPECT_TRUE(preview.labels()["Pause"].toString().startsWith(QString::fromUtf8(pause)))
        << language << ": " << preview.labels()["Pause"].toString().toStdString();
    EXPECT_EQ(preview.rightToLeft(), std::string(language) == "ar");
    if (std::string(language) != "en") {
      for (const QVariant& label : preview.labels()) EXPECT_NE(label.toString(), "Go on now") << language;
      preview.setAt(0);
      EXPECT_FALSE(preview.facts()["numberOf"].toString().contains("seconds")) << language;
    }
    for (int at = 0; at < preview.count(); ++at) {
      preview.setAt(at);
      EXPECT_FALSE(preview.facts()["numberOf"].toString().contains("%")) << language << " " << at;
    }
    preview.setAt(preview.count() / 2);
    check(DeskModel::ProgrammePage, std::string("-phone-") + language);
  }
}

// And at the size of text that the person reads: their phone tells it.
TEST_P(ProgrammePages, thePhoneBesideItHasThePersonsSizeOfText) {
  m_phone->showsTextAt(160);
  ASSERT_EQ(m_phone->closePractice(test::samplePractice(m_phone->newId(), m_person.id())), absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  openDraft();
  m_desk->draft()->add(QStringLiteral("sit-to-stand"));
  desk::PreviewModel& preview = *m_desk->preview();
  EXPECT_EQ(preview.textPercent(), 160);
  EXPECT_TRUE(preview.textWords().contains("160")) << preview.textWords().toStdString();
  EXPECT_EQ(preview.textSizes().size(), 4);
  preview.setAt(preview.count() / 2);
  check(DeskModel::ProgrammePage, "-phone-160");
  QQuickItem* const screen = itemOfType("PhoneScreen");
  ASSERT_NE(screen, nullptr);
  QQuickItem* const view = screen->childItems().value(0);
  ASSERT_NE(view, nullptr) << "the phone's screen is there";
  EXPECT_NE(qmlEngine(view), qmlEngine(screen));
  const int id = qmlTypeId("Newel.Parts", 1, 0, "Theme");
  EXPECT_EQ(qmlEngine(view)->singletonInstance<parts::Theme*>(id)->scale(), 1.6)
      << "whatever the desk's own is";
  preview.setTextPercent(200);
  EXPECT_EQ(qmlEngine(view)->singletonInstance<parts::Theme*>(id)->scale(), 2.0);
  EXPECT_TRUE(preview.textWords().contains("160"));
  check(DeskModel::ProgrammePage, "-phone-200");
}

TEST_P(ProgrammePages, aFindingOverTheWholeIsAnsweredByOneClick) {
  openDraft();
  m_desk->draft()->add(QStringLiteral("sit-to-stand"));
  m_desk->draft()->setPainStop(9);
  m_desk->draft()->setEndDay(QStringLiteral("2028-01-01"));
  const auto finding = [&](const char* rule) {
    for (const QVariant& one : m_desk->draft()->findings()) {
      if (one.toMap()["ruleId"].toString() == rule) return one.toMap();
    }
    return QVariantMap();
  };
  ASSERT_EQ(finding("programme-pain-stop-high")["fixes"].toList().size(), 1);
  ASSERT_EQ(finding("programme-long-run")["fixes"].toList().size(), 1);
  check(DeskModel::ProgrammePage, "-whole-fix");
  m_desk->draft()->applyFix(QStringLiteral("programme-long-run"), 0);
  m_desk->draft()->applyFix(QStringLiteral("programme-pain-stop-high"), 0);
  EXPECT_TRUE(finding("programme-pain-stop-high").isEmpty());
  EXPECT_TRUE(finding("programme-long-run").isEmpty());
  EXPECT_EQ(m_desk->draft()->painStop(), 5);
  EXPECT_EQ(m_desk->draft()->endDay().toStdString(), m_desk->draft()->programme().end_day())
      << "the field follows";
  m_desk->draft()->undo();
  EXPECT_EQ(m_desk->draft()->painStop(), 9);
}

INSTANTIATE_TEST_SUITE_P(Looks, ProgrammePages, testing::ValuesIn(kLooks), nameOfLook);

TEST(EvidenceWordsTest, everyKeyAndEveryLineHasWords) {
  for (const auto& key : progressionKeys()) EXPECT_TRUE(desk::hasEvidenceWords(key)) << key;
  for (const auto& key : certKeys()) EXPECT_TRUE(desk::hasEvidenceWords(key)) << key;
  for (const auto& line : certTable().lines())
    EXPECT_EQ(desk::certLineWords(line.id()).toStdString(), line.asks())
        << line.id() << ": as the table has it";
  EvidenceLine line{
      "progress.pain", {{"day", "2026-11-25"}, {"before", "1"}, {"after", "3"}, {"limit", "1"}}, false};
  const QString words = desk::evidenceWords(line, Catalogue::builtIn(), "en");
  EXPECT_FALSE(words.contains('{')) << words.toStdString();
  EXPECT_FALSE(words.contains("2026-11-25")) << "a day as people write it: " << words.toStdString();
}

}  // namespace
}  // namespace newel::tests
