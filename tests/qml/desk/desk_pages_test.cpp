// Every page of the desk in a real window over a real hub, at 1280x720 and with text up to 200 %: nothing cut
// off, covered, outside the window, too small to press or nameless, and no warning. With NEWEL_SHOTS=<folder>
// in the environment it keeps a picture of each, to be looked at. Everybody here is invented.
#include <gtest/gtest.h>

#include <QtGui/QKeyEvent>
#include <QtQml/QQmlExtensionPlugin>
#include <set>

#include "tests/qml/desk/desk_window.h"

Q_IMPORT_QML_PLUGIN(Newel_DeskPlugin)

namespace newel::tests {
namespace {

TEST_P(DeskPages, signingInAndTheOwnAccountHoldTogether) {
  check(DeskModel::SignInPage);
  m_desk->signInModel()->setUserName(QString::fromLatin1(test::kUser));
  m_desk->signInModel()->signIn(QStringLiteral("wrong"));
  answered();
  check(DeskModel::SignInPage, "-wrong");
  signIn(test::kUser);
  m_desk->openOwnAccount();
  check(DeskModel::OwnAccountPage);
  m_desk->ownAccount()->beginFactor(QString::fromLatin1(test::kPassword));
  answered();
  scroll(10000);
  check(DeskModel::OwnAccountPage, "-square");
  m_desk->ownAccount()->confirmFactor(QStringLiteral("12345"));
  m_desk->ownAccount()->changePassword("a", "b", "c");
  answered();
  scroll(10000);
  check(DeskModel::OwnAccountPage, "-problems");
  m_desk->lockNow();
  answered();
  check(DeskModel::OwnAccountPage, "-locked");
  m_desk->lock()->unlock(QStringLiteral("wrong"), QString());
  answered();
  check(DeskModel::OwnAccountPage, "-locked-wrong");
}

TEST_P(DeskPages, accountsAndTheTrailHoldTogether) {
  signIn("l.lead");
  check(DeskModel::CaseloadPage, "-lead");
  waitsAndNoLonger();
  m_desk->openAccounts();
  check(DeskModel::AccountsPage);
  m_desk->accounts()->write(QString());
  check(DeskModel::AccountsPage, "-new");
  m_desk->accounts()->setUserName(QStringLiteral("Not good"));
  m_desk->accounts()->setDisplayName(QStringLiteral("Nia New (invented)"));
  m_desk->accounts()->save();
  check(DeskModel::AccountsPage, "-problem");
  m_desk->accounts()->setUserName(QStringLiteral("n.new"));
  m_desk->accounts()->save();
  answered();
  ASSERT_NE(m_desk->accounts()->firstPassword(), "");
  check(DeskModel::AccountsPage, "-first-password");
  scroll(10000);
  check(DeskModel::AccountsPage, "-first-password-end");
  m_desk->back();
  m_desk->back();
  m_desk->openAudit();
  check(DeskModel::AuditPage);
  m_desk->audit()->check();
  answered();
  check(DeskModel::AuditPage, "-checked");
  m_desk->audit()->setFirstDay(QStringLiteral("soon"));
  m_desk->audit()->setWho(QStringLiteral("e"));
  m_desk->audit()->look();
  check(DeskModel::AuditPage, "-problems");
  m_desk->back();
  m_desk->openClinicSettings();
  check(DeskModel::ClinicSettingsPage);
  scroll(10000);
  check(DeskModel::ClinicSettingsPage, "-end");
}

TEST_P(DeskPages, accessToAPersonHoldsTogether) {
  signIn("l.lead");
  openAda();
  check(DeskModel::PersonPage);
  m_desk->openAccess();
  check(DeskModel::AccessPage);
  m_desk->access()->ask(m_desk->access()->phones().first().toMap().value("id").toString());
  check(DeskModel::AccessPage, "-sure");
  scroll(10000);
  check(DeskModel::AccessPage, "-sure-end");
  m_desk->signOut();
  answered();
  EXPECT_TRUE(m_clinic.hub()
                  .accounts()
                  .add("o.other", "Olu Other (invented)", v1::ROLE_THERAPIST, test::kPassword)
                  .ok());
  signIn("o.other");
  check(DeskModel::CaseloadPage, "-nobody");
  m_desk->openFind();
  m_desk->find()->setFamilyName(QStringLiteral("Invented"));
  m_desk->find()->find();
  answered();
  check(DeskModel::FindPage);
  m_desk->find()->ask(QString::fromStdString(m_person.id()));
  m_desk->find()->openFor(QStringLiteral("ill"));
  check(DeskModel::FindPage, "-reason");
  scroll(10000);
  check(DeskModel::FindPage, "-reason-end");
  m_desk->find()->openFor(QStringLiteral("Their therapist is ill and they phoned about a fall."));
  answered();
  check(DeskModel::PersonPage, "-opened");
  EXPECT_NE(m_desk->openedWords(), "");
  // The hour passes on both clocks, with somebody at the desk.
  for (int i = 0; i < 15; ++i) {
    EXPECT_NE(m_desk->openedWords(), "") << i;
    m_clinic.clock().advance(absl::Minutes(4));
    QKeyEvent key(QEvent::KeyPress, Qt::Key_Shift, Qt::NoModifier);
    QCoreApplication::sendEvent(m_window, &key);
    m_desk->person()->reload();
    answered();
  }
  EXPECT_EQ(m_desk->page(), DeskModel::CaseloadPage) << "what is not open any more leaves the screen";
  EXPECT_EQ(m_desk->openedWords(), "");
  EXPECT_FALSE(m_desk->person()->loaded());
}

TEST_P(DeskPages, everydayPagesHoldTogether) {
  signIn(test::kUser);
  check(DeskModel::CaseloadPage);
  openAda();
  check(DeskModel::PersonPage);
  m_desk->openDone();
  check(DeskModel::DonePage);
  m_desk->done()->setWeeks(8);
  check(DeskModel::DonePage, "-eight-weeks");
  m_desk->back();
  m_desk->openHold();
  check(DeskModel::HoldPage);
  m_desk->back();
  m_desk->openPairing();
  check(DeskModel::PairingPage);
  m_desk->back();
  m_desk->openRecord();
  check(DeskModel::PersonEditPage);
  m_desk->back();
  m_desk->openProgramme();
  check(DeskModel::ProgrammePage);
  m_desk->openSign();
  check(DeskModel::SignPage);
  m_desk->back();
  m_desk->back();
  m_desk->back();
  m_desk->openOwnExercises();
  check(DeskModel::OwnExercisePage);
}

TEST_P(DeskPages, measuresHoldTogetherAndSayWhatAChangeMeans) {
  signIn(test::kUser);
  openAda();
  m_desk->openMeasures();
  check(DeskModel::MeasuresPage);
  desk::MeasuresModel& measures = *m_desk->measures();
  measures.setKind(QStringLiteral("timed-up-and-go"));
  measures.setValue(QStringLiteral("2000"));
  EXPECT_FALSE(measures.maySave());
  check(DeskModel::MeasuresPage, "-problem");
  const std::vector<std::pair<const char*, const char*>> taken = {
      {"2026-10-01", "24,5"}, {"2026-10-20", "16.0"}, {"2026-11-20", "12.5"}};
  for (const auto& [day, value] : taken) {
    measures.setDay(QString::fromLatin1(day));
    measures.setValue(QString::fromLatin1(value));
    ASSERT_TRUE(measures.maySave()) << value;
    measures.save();
    answered();
    ASSERT_EQ(measures.problem(), "");
  }
  ASSERT_EQ(measures.taken().size(), 1);
  const QVariantMap row = measures.taken().first().toMap();
  EXPECT_EQ(row["points"].toList().size(), 3);
  EXPECT_TRUE(row["verdict"].toString().contains(said("Report", "better, beyond error")))
      << row["verdict"].toString().toStdString();
  check(DeskModel::MeasuresPage, "-taken");
  scroll(10000);
  check(DeskModel::MeasuresPage, "-taken-end");
  measures.withdraw(row["values"].toList().first().toMap()["id"].toString());
  answered();
  EXPECT_EQ(measures.taken().first().toMap()["points"].toList().size(), 2)
      << "entered by mistake: gone from here";
}

TEST_P(DeskPages, aWearPlanIsWrittenSignedAndItsBlocksAreRead) {
  signIn(test::kUser);
  openAda();
  m_desk->openProgramme();
  check(DeskModel::ProgrammePage);
  click(said("DraftList", "Wearing time, measures"));
  check(DeskModel::ProgrammePage, "-no-wear");
  desk::WearDraftModel& wear = *m_desk->wear();
  EXPECT_FALSE(wear.planned());
  wear.startFrom(wear.examples().first().toMap()["id"].toString());
  ASSERT_TRUE(wear.planned());
  wear.setBlocks(0, 2);
  wear.setMinutes(0, 45);
  wear.toggleMeasure(QStringLiteral("two-minute-walk"));
  EXPECT_EQ(wear.steps().first().toMap()["words"].toString(),
            said("newel::desk::WearDraftModel", "%1 min a day").arg(90));
  check(DeskModel::ProgrammePage, "-wear");
  scroll(10000);
  check(DeskModel::ProgrammePage, "-wear-end");
  m_desk->draft()->undo();
  EXPECT_EQ(m_desk->draft()->programme().measures_size(), 0);
  m_desk->draft()->redo();
  ASSERT_TRUE(m_desk->draft()->maySign()) << m_desk->draft()->whyNot().toStdString();
  m_desk->openSign();
  m_desk->draft()->sign();
  answered();
  ASSERT_EQ(m_desk->draft()->signProblem(), "");
  const auto programmes = *m_clinic.desk().programmes(m_person.id());
  EXPECT_EQ(programmes.back().wear_plan().number(), 1U);
  EXPECT_EQ(programmes.back().wear_plan().steps(0).block_min(), 45U);
  EXPECT_EQ(programmes.back().measures_size(), 1);
  ASSERT_EQ(m_phone->keepWearBlock(test::sampleWearBlock(m_phone->newId(), m_person.id())), absl::OkStatus());
  v1::WearBlock harmed = test::sampleWearBlock(m_phone->newId(), m_person.id());
  harmed.mutable_check()->set_signs(0, v1::SKIN_SIGN_BLISTER);
  harmed.mutable_put_on_at()->set_seconds(harmed.put_on_at().seconds() + 10800);
  harmed.mutable_taken_off_at()->set_seconds(harmed.taken_off_at().seconds() + 10800);
  ASSERT_EQ(m_phone->keepWearBlock(harmed), absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  openAda();
  m_desk->openDone();
  answered();
  ASSERT_EQ(m_desk->done()->wear().size(), 2);
  EXPECT_TRUE(m_desk->done()->wear().first().toMap()["bad"].toBool());
  EXPECT_FALSE(m_desk->done()->wear().last().toMap()["bad"].toBool());
  check(DeskModel::DonePage, "-wear");
}

// Where a draft begins: the pane, what a template leaves out, what suits, and the clinic's own templates.
TEST_P(DeskPages, aProgrammeBeginsFromATemplate) {
  v1::Person careful = test::transfemoralLeft();
  careful.set_id(test::idOf(800));
  careful.add_conditions(v1::CONDITION_CANNOT_LIE_FACE_DOWN);
  m_clinic.addPerson(careful, "Cora");
  signIn(test::kUser);
  m_desk->openPerson(QString::fromStdString(careful.id()));
  answered();
  m_desk->openProgramme();
  check(DeskModel::ProgrammePage, "-start");
  desk::StartModel& start = *m_desk->start();
  EXPECT_EQ(start.lastWords(), "") << "there is none";
  ASSERT_EQ(start.fitting(), 2) << "first weeks and walking at home, above the knee, K2";
  click(said("StartPane", "Templates for others too (%1)").arg(11));
  scroll(10000);
  check(DeskModel::ProgrammePage, "-start-all");
  start.startFrom(QStringLiteral("first-steps-above-knee"));
  answered();
  EXPECT_EQ(m_desk->draft()->programme().entries_size(), 2);
  EXPECT_EQ(m_desk->draft()->programme().cards_size(), 2);
  ASSERT_EQ(start.leftOut().size(), 1);
  EXPECT_TRUE(start.leftOut().first().toMap()["why"].toString().contains(
      GetParam().language == std::string("es") ? "boca abajo" : "face down"))
      << start.leftOut().first().toMap()["why"].toString().toStdString();
  EXPECT_TRUE(start.tookWords().contains(GetParam().language == std::string("es") ? "2 de 3" : "2 of 3"))
      << start.tookWords().toStdString();
  EXPECT_TRUE(m_desk->draft()->maySign()) << m_desk->draft()->whyNot().toStdString();
  check(DeskModel::ProgrammePage, "-from-template");
  m_desk->draft()->undo();
  EXPECT_EQ(m_desk->draft()->programme().entries_size(), 0);
  EXPECT_TRUE(start.leftOut().isEmpty()) << "it went with what was undone";
  m_desk->draft()->redo();
  click(said("DraftList", "What suits this person"));
  check(DeskModel::ProgrammePage, "-suits");
  scroll(10000);
  check(DeskModel::ProgrammePage, "-suits-end");
  ASSERT_FALSE(start.suggestions().isEmpty());
  for (const QVariant& row : start.suggestions())
    EXPECT_NE(row.toMap()["exerciseId"].toString(), "face-down-lying");
  m_desk->draft()->add(QStringLiteral("gluteal-set"));
  EXPECT_TRUE(start.taken().contains("gluteal-set"));
  // As a template of the clinic's, renamed, and taken back.
  start.keepAs(QStringLiteral("  "));
  EXPECT_NE(start.problem(), "");
  start.keepAs(QStringLiteral("First weeks, gently"));
  answered();
  ASSERT_EQ(start.problem(), "");
  EXPECT_TRUE(m_desk->news().contains("First weeks, gently"));
  ASSERT_EQ(start.fitting(), 3);
  QVariantMap own = start.choices().first().toMap();
  EXPECT_TRUE(own["own"].toBool());
  click(said("DraftList", "Start from …"));
  click(said("TemplateRow", "Rename the template %1").arg("First weeks, gently"));
  check(DeskModel::ProgrammePage, "-own-template");
  start.rename(own["id"].toString(), QStringLiteral("First weeks, very gently"));
  answered();
  EXPECT_EQ(start.choices().first().toMap()["name"].toString(), "First weeks, very gently");
  start.ask(own["id"].toString());
  check(DeskModel::ProgrammePage, "-withdraw");
  start.withdraw(own["id"].toString());
  answered();
  EXPECT_EQ(start.fitting(), 2);
  EXPECT_TRUE(m_clinic.desk().templates()->empty());
}

// What goes on about the person when another beginning is taken, and what is the same entry as before.
TEST_P(DeskPages, anotherBeginningKeepsLimitsWearAndTheSameEntry) {
  signIn(test::kUser);
  openAda();
  m_desk->openProgramme();
  answered();
  desk::StartModel& start = *m_desk->start();
  EXPECT_NE(start.lastWords(), "");
  m_desk->wear()->startFrom(m_desk->wear()->examples().first().toMap()["id"].toString());
  m_desk->draft()->setPainStop(3);
  const v1::Programme last = m_clinic.desk().programmes(m_person.id())->back();
  // The last has sit-to-stand; so has this one.
  start.startFrom(QStringLiteral("at-home-below-knee"));
  const v1::Programme& draft = m_desk->draft()->programme();
  ASSERT_EQ(draft.entries_size(), 3);
  EXPECT_EQ(draft.thresholds().pain_stop_0_10(), last.thresholds().pain_stop_0_10())
      << "as the last programme has it: what was typed here can be undone, not mixed";
  std::set<std::string> ids;
  for (const auto& entry : draft.entries()) {
    EXPECT_TRUE(ids.insert(entry.id()).second);
    for (const auto& before : last.entries()) {
      if (before.exercise_id() == entry.exercise_id()) {
        EXPECT_EQ(before.id(), entry.id());
      }
    }
  }
  start.startBlank();
  EXPECT_EQ(m_desk->draft()->programme().entries_size(), 0);
  start.startLast();
  EXPECT_EQ(m_desk->draft()->programme().entries_size(), last.entries_size());
}

// Everything on one list by date, each with how far it got.
TEST_P(DeskPages, whatHappenedIsOneListByDate) {
  v1::IssueHoldRequest hold;
  hold.set_person_id(m_person.id());
  hold.set_reason("Rest until I have seen the skin.");
  m_clinic.clock().advance(absl::Minutes(10));
  const auto held = m_clinic.desk().issueHold(hold);
  ASSERT_TRUE(held.ok()) << held.status();
  v1::PutMeasureRequest measure;
  *measure.mutable_measure() = test::timedWalk(test::idOf(760), m_person.id(), 12.5);
  const auto kept = m_clinic.desk().putMeasure(measure);
  ASSERT_TRUE(kept.ok()) << kept.status();
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  signIn(test::kUser);
  openAda();
  m_desk->openTimeline();
  check(DeskModel::TimelinePage);
  desk::TimelineModel& timeline = *m_desk->timeline();
  std::set<int> kinds;
  for (const QVariant& row : timeline.rows()) kinds.insert(row.toMap()["kind"].toInt());
  EXPECT_EQ(kinds, (std::set<int>{desk::TimelineModel::Programmes, desk::TimelineModel::Holds,
                                  desk::TimelineModel::Messages, desk::TimelineModel::Measures}));
  const QVariantMap newest = timeline.rows().first().toMap();
  EXPECT_EQ(newest["kind"].toInt(), desk::TimelineModel::Holds);
  EXPECT_EQ(newest["text"].toString(), "Rest until I have seen the skin.");
  EXPECT_NE(newest["arrived"].toString(), "") << "the phone has it";
  timeline.setWanted(desk::TimelineModel::Messages);
  ASSERT_EQ(timeline.rows().size(), 1);
  check(DeskModel::TimelinePage, "-messages");
  EXPECT_EQ(m_desk->backWords(), said("newel::desk::DeskModel", "Person"));
  m_desk->back();
  EXPECT_EQ(m_desk->page(), DeskModel::PersonPage);
}

// A note for colleagues about a practice and about a day; it can be taken back, and the phone never gets it.
TEST_P(DeskPages, notesForColleagues) {
  ASSERT_EQ(m_phone->closePractice(test::samplePractice(test::idOf(810), m_person.id())), absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  signIn(test::kUser);
  openAda();
  m_desk->openDone();
  answered();
  desk::RemarksModel& remarks = *m_desk->remarks();
  const QString practice = QString::fromStdString(test::idOf(810));
  remarks.write(practice, remarks.today(), QStringLiteral("She held the worktop all the time."));
  answered();
  remarks.write(QString(), remarks.today(), QStringLiteral("Phoned: the neighbour is away this week."));
  answered();
  EXPECT_EQ(remarks.problem(), "");
  ASSERT_EQ(remarks.about(practice).size(), 1);
  ASSERT_EQ(remarks.ofDays().size(), 1);
  EXPECT_TRUE(remarks.ofDays().first().toMap()["mine"].toBool());
  check(DeskModel::DonePage, "-notes");
  scroll(10000);
  check(DeskModel::DonePage, "-notes-end");
  remarks.write(QString(), QStringLiteral("soon"), QStringLiteral("x"));
  answered();
  EXPECT_NE(remarks.problem(), "");
  remarks.takeBack(remarks.ofDays().first().toMap()["id"].toString());
  answered();
  EXPECT_TRUE(remarks.ofDays().isEmpty());
  EXPECT_EQ(remarks.about(practice).size(), 1);
}

INSTANTIATE_TEST_SUITE_P(Looks, DeskPages, testing::ValuesIn(kLooks), nameOfLook);

}  // namespace
}  // namespace newel::tests
