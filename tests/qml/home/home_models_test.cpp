// The view models against a real engine, with no hub: what the pages show, and that nothing is lost.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/figure/palette.h"
#include "tests/qml/home/home_world.h"
#include "tests/qml/home/media_entry.h"

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;
using testing::Contains;
using testing::HasSubstr;

class HomeModels : public testing::Test {
 protected:
  void begin(const std::vector<std::string>& exercises) {
    m_world.clinic().put(inventedProgramme(1, exercises));
    m_world.pair();
  }
  // To the moment when the first exercise runs.
  void startFirst() {
    m_world.program().today->start();
    m_world.answerAllFine();
    ASSERT_EQ(m_world.page(), Page::GetReady);
    m_world.program().practice->confirmSupportAndStart();
    ASSERT_EQ(m_world.page(), Page::Practice);
  }
  HomeProgram& program() { return m_world.program(); }
  // Receipts at the clinic that say a hold order was seen.
  std::ptrdiff_t holdsSeen() {
    const auto receipts = m_world.clinic().receipts();
    return std::count_if(receipts.begin(), receipts.end(), [](const v1::Receipt& receipt) {
      return receipt.of() == v1::RECEIPT_OF_HOLD_ORDER && receipt.state() == v1::RECEIPT_STATE_SEEN;
    });
  }

  HomeWorld m_world;
};

TEST_F(HomeModels, phoneWithoutAClinicAsksToBeConnected) {
  EXPECT_EQ(m_world.page(), Page::Language) << "a new phone begins at its beginning";
  program().settings->setFirstRunStep("Done");
  EXPECT_EQ(m_world.page(), Page::Pair);
}

TEST_F(HomeModels, wrongCodeSaysWhatToDoAndChangesNothing) {
  program().settings->setFirstRunStep("Pair");
  program().pair->pairTyped("clinic.example:7443", "short");
  EXPECT_THAT(program().pair->codeError().toStdString(), HasSubstr("8 letters"));
  program().pair->pairTyped("not an address", "ABCD-2345");
  EXPECT_THAT(program().pair->addressError().toStdString(), HasSubstr("address"));
  program().pair->pairText("hello");
  EXPECT_THAT(program().pair->error().toStdString(), HasSubstr("newel:1"));
  program().pair->pairTyped("clinic.example:7443", "ABCD-9999");
  while (program().pair->busy()) settle(10);
  EXPECT_THAT(program().pair->error().toStdString(), HasSubstr("Ask for a new one"));
  EXPECT_EQ(m_world.page(), Page::Pair);
}

TEST_F(HomeModels, typedPairingHasTheFingerprintCompared) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  program().pair->pairTyped("clinic.example:7443", "abcd-2345");
  while (program().pair->busy()) settle(10);
  EXPECT_EQ(program().pair->error().toStdString(), "");
  EXPECT_EQ(m_world.page(), Page::Paired);
  EXPECT_TRUE(program().pair->mustCompare());
  EXPECT_EQ(program().app->fingerprint().toStdString(), "5A5A 5A5A 5A5A 5A5A");
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::Today);
}

TEST_F(HomeModels, differentFingerprintErasesThePhoneAgain) {
  program().settings->setFirstRunStep("Pair");
  program().settings->setTextPercent(150);
  program().pair->pairTyped("clinic.example:7443", "abcd-2345");
  while (program().pair->busy()) settle(10);
  ASSERT_EQ(m_world.page(), Page::Paired);
  program().settings->forgetClinic();
  EXPECT_EQ(m_world.page(), Page::Pair);
  EXPECT_EQ(program().settings->textPercent(), 150) << "how the phone shows is not the clinic's";
  EXPECT_FALSE(program().app->paired());
}

TEST_F(HomeModels, todayCountsWhatIsDueAndItsMinutes) {
  begin({"sit-to-stand", "weight-shift-side"});
  const home::TodayModel& today = *program().today;
  EXPECT_EQ(m_world.page(), Page::Today);
  EXPECT_EQ(today.dueCount(), 2);
  EXPECT_TRUE(today.mayStart());
  EXPECT_THAT(today.heading().toStdString(), HasSubstr("2 to do"));
  ASSERT_EQ(today.rows().size(), 2);
  EXPECT_GE(today.rows().first().toMap().value("minutes").toInt(), 1);
  EXPECT_EQ(today.at(), 0);
}

TEST_F(HomeModels, wholePracticeGoesFromQuestionsToTheClinic) {
  begin({"sit-to-stand"});
  startFirst();
  EXPECT_TRUE(program().stay_awake.on());
  EXPECT_TRUE(program().tones.isWarm());
  ASSERT_TRUE(m_world.passUntilPageChanges());
  ASSERT_EQ(m_world.page(), Page::Rating);
  EXPECT_FALSE(program().stay_awake.on());
  program().practice->rate(2, 4);
  ASSERT_EQ(m_world.page(), Page::Close) << program().practice->error().toStdString();
  EXPECT_EQ(program().practice->endWords().toStdString(), "Done for now");
  EXPECT_THAT(program().app->contact().toStdString(), HasSubstr("kept on this phone"));
  ASSERT_EQ(program().practice->doneRows().size(), 1);
  EXPECT_TRUE(program().practice->doneRows().first().toMap().value("done").toBool());
  EXPECT_THAT(program().practice->doneRows().first().toMap().value("words").toString().toStdString(),
              HasSubstr("2 of 2 times"));
  m_world.sync();
  EXPECT_THAT(program().app->contact().toStdString(), HasSubstr("reached the clinic"));
  ASSERT_EQ(m_world.clinic().practices().size(), 1U);
  EXPECT_EQ(m_world.clinic().practices()[0].end(), v1::PRACTICE_END_FINISHED);
  EXPECT_EQ(m_world.clinic().practices()[0].entries(0).done().repetitions(), 2U);
  program().app->leavePractice();
  EXPECT_EQ(m_world.page(), Page::Today);
  EXPECT_EQ(program().today->dueCount(), 0);
  EXPECT_EQ(program().today->at(), 1);
  EXPECT_EQ(program().today->heading().toStdString(), "All done for today");
}

// From the start of an exercise to its end nobody touches anything, and every beat was heard and sounded.
TEST_F(HomeModels, everyBeatIsSpokenAndSounded) {
  begin({"sit-to-stand"});
  startFirst();
  std::vector<std::string> words;
  for (const v1::Beat& beat : program().session->run()->timeline(0).beats()) words.push_back(beat.spoken());
  ASSERT_TRUE(m_world.passUntilPageChanges());
  for (const std::string& line : words) {
    if (line.empty()) continue;
    EXPECT_THAT(program().speech.said(), Contains(testing::EndsWith(line))) << line;
  }
  EXPECT_THAT(program().speech.said(), Contains(testing::StartsWith("Last one.")));
  EXPECT_THAT(program().tones.played(), Contains(platform::Tone::Go));
  EXPECT_THAT(program().tones.played(), Contains(platform::Tone::LastOne));
}

TEST_F(HomeModels, cuesAreOnTheScreenWhereNothingCanBeHeard) {
  program().speech.breakWith("speech.no-sound-device");
  program().tones.breakWith("sound.no-device");
  begin({"sit-to-stand"});
  startFirst();
  EXPECT_THAT(program().player->soundNote().toStdString(), HasSubstr("no sound"));
  EXPECT_FALSE(program().player->cue().isEmpty());
  EXPECT_FALSE(program().player->number().isEmpty());
  ASSERT_TRUE(m_world.passUntilPageChanges());
  EXPECT_EQ(m_world.page(), Page::Rating);
}

TEST_F(HomeModels, numberSaysWhatItCounts) {
  begin({"sit-to-stand"});
  startFirst();
  EXPECT_EQ(program().player->numberOf().toStdString(), "seconds to get ready");
  const int before = program().player->number().toInt();
  m_world.pass(absl::Seconds(2));
  EXPECT_EQ(program().player->number().toInt(), before - 2);
  m_world.pass(absl::Seconds(before - 2));
  EXPECT_EQ(program().player->numberOf().toStdString(), "of 2 times");
  EXPECT_EQ(program().player->number().toStdString(), "1");
}

TEST_F(HomeModels, stopActsAtOnceAndAsksWhy) {
  begin({"sit-to-stand", "weight-shift-side"});
  startFirst();
  m_world.pass(absl::Seconds(12));
  program().player->stop();
  EXPECT_EQ(m_world.page(), Page::WhatHappened);
  m_world.pass(absl::Minutes(2));
  EXPECT_EQ(m_world.page(), Page::WhatHappened);  // nothing goes on by itself
  program().practice->stopReason(v1::STOP_REASON_TIRED);
  EXPECT_NE(m_world.page(), Page::Practice);
}

TEST_F(HomeModels, chestPainEndsThePracticeWithTheEmergencyNumberFirst) {
  begin({"sit-to-stand", "weight-shift-side"});
  startFirst();
  m_world.pass(absl::Seconds(12));
  program().player->stop();
  program().practice->stopReason(v1::STOP_REASON_CHEST_PAIN);
  ASSERT_EQ(m_world.page(), Page::Verdict);
  EXPECT_TRUE(program().practice->verdictEnds());
  EXPECT_TRUE(program().practice->emergencyFirst());
  EXPECT_EQ(program().app->emergencyNumber().toStdString(), "112");
  // Sent before it is even acknowledged.
  m_world.sync();
  ASSERT_EQ(m_world.clinic().practices().size(), 1U);
  EXPECT_EQ(m_world.clinic().practices()[0].end(), v1::PRACTICE_END_RED_FLAG);
  program().practice->acknowledge();
  EXPECT_EQ(m_world.page(), Page::Close);
  program().app->leavePractice();
  EXPECT_EQ(m_world.page(), Page::Today);
  EXPECT_FALSE(program().today->mayStart());
  EXPECT_THAT(program().today->whyNot().toStdString(), HasSubstr("clinic"));
}

TEST_F(HomeModels, pauseStopsTheClockOfTheExercise) {
  begin({"sit-to-stand"});
  startFirst();
  m_world.pass(absl::Seconds(3));
  program().player->pause();
  EXPECT_TRUE(program().player->paused());
  const QString number = program().player->number();
  m_world.pass(absl::Minutes(3));
  EXPECT_TRUE(program().player->paused());
  EXPECT_EQ(program().player->number(), number);
  program().player->goOn();
  EXPECT_FALSE(program().player->paused());
}

TEST_F(HomeModels, phoneThatSleptPausesAndSaysSo) {
  begin({"sit-to-stand"});
  startFirst();
  m_world.pass(absl::Seconds(14));
  m_world.clock().advance(absl::Minutes(10));
  m_world.pass(absl::Milliseconds(100));
  EXPECT_TRUE(program().player->paused());
  EXPECT_FALSE(program().player->pausedWhy().isEmpty());
}

TEST_F(HomeModels, afterAKillTheUnfinishedPracticeIsOfferedAndNothingIsLostOrDoubled) {
  begin({"sit-to-stand"});
  startFirst();
  m_world.pass(absl::Seconds(16));
  m_world.killAndRestart();
  ASSERT_EQ(m_world.page(), Page::Unfinished);
  EXPECT_THAT(program().today->unfinishedWords().toStdString(), HasSubstr("Sit to stand"));
  program().today->goOn();
  ASSERT_EQ(m_world.page(), Page::Practice) << program().today->error().toStdString();
  EXPECT_TRUE(program().player->paused());
  program().player->goOn();
  ASSERT_TRUE(m_world.passUntilPageChanges());
  ASSERT_EQ(m_world.page(), Page::Rating);
  program().practice->rate(1, 3);
  ASSERT_EQ(m_world.page(), Page::Close);
  m_world.sync();
  ASSERT_EQ(m_world.clinic().practices().size(), 1U);
  const v1::Practice practice = m_world.clinic().practices()[0];
  EXPECT_EQ(practice.entries(0).done().repetitions(), 2U);
  EXPECT_EQ(practice.resumed(), 1U);
}

TEST_F(HomeModels, unfinishedPracticeCanBeClosedWithWhatWasDone) {
  begin({"sit-to-stand"});
  startFirst();
  m_world.pass(absl::Seconds(22));
  m_world.killAndRestart();
  program().today->closeIt();
  EXPECT_EQ(m_world.page(), Page::Close);
  m_world.sync();
  ASSERT_EQ(m_world.clinic().practices().size(), 1U);
  EXPECT_EQ(m_world.clinic().practices()[0].end(), v1::PRACTICE_END_INTERRUPTED);
}

TEST_F(HomeModels, holdOrderDuringAPracticeStopsItAndSaysWhoToCall) {
  begin({"sit-to-stand"});
  startFirst();
  m_world.pass(absl::Seconds(14));
  m_world.clinic().put(m_world.clinic().holdOrder("Your skin needs rest."));
  m_world.sync();
  ASSERT_EQ(m_world.page(), Page::Verdict);
  EXPECT_THAT(program().practice->verdict().join(" ").toStdString(), HasSubstr("Your skin needs rest."));
  EXPECT_EQ(program().app->clinicPhone().toStdString(), "555 0142");
  EXPECT_THAT(program().tones.played(), Contains(platform::Tone::Stopped));
  m_world.pass(absl::Minutes(1));
  EXPECT_EQ(m_world.page(), Page::Verdict);
  EXPECT_EQ(holdsSeen(), 0);
  program().practice->acknowledge();
  m_world.sync();
  EXPECT_EQ(holdsSeen(), 1);
  program().app->leavePractice();
  EXPECT_FALSE(program().today->mayStart());
  EXPECT_EQ(program().today->heading().toStdString(), "Your practice is on hold");
}

TEST_F(HomeModels, holdOrderIsShownOnTodayAndCountsAsSeenOnce) {
  begin({"sit-to-stand"});
  m_world.clinic().put(m_world.clinic().holdOrder("Wait for my call."));
  m_world.sync();
  ASSERT_FALSE(program().today->notices().isEmpty());
  EXPECT_EQ(program().today->notices().first().toMap().value("words").toString().toStdString(),
            "Wait for my call.");
  program().today->shown();
  program().today->shown();
  m_world.sync();
  EXPECT_EQ(holdsSeen(), 1);
}

TEST_F(HomeModels, urgentMessageMustBeReadBeforeAPracticeStarts) {
  begin({"sit-to-stand"});
  m_world.clinic().put(m_world.clinic().message("Use both hands on the stairs.", true));
  m_world.sync();
  EXPECT_FALSE(program().today->mayStart());
  program().today->start();
  EXPECT_EQ(m_world.page(), Page::Today);
  ASSERT_EQ(program().today->notices().size(), 1);
  program().today->markRead(program().today->notices().first().toMap().value("id").toString());
  EXPECT_TRUE(program().today->mayStart());
  EXPECT_TRUE(program().today->notices().isEmpty());
}

TEST_F(HomeModels, newProgrammeIsShownAsNewUntilItWasSeen) {
  begin({"sit-to-stand"});
  EXPECT_TRUE(program().programme->fresh());
  program().programme->shown();
  EXPECT_FALSE(program().programme->fresh());
  m_world.clinic().put(inventedProgramme(2, {"sit-to-stand", "face-down-lying"}));
  m_world.sync();
  EXPECT_TRUE(program().programme->fresh());
  EXPECT_EQ(program().programme->title().toStdString(), "Programme 2");
  EXPECT_EQ(program().programme->entries().size(), 2);
}

// Cards show on their days, with the clinic's own numbers, and what is written on one reaches the clinic.
TEST_F(HomeModels, cardsOfAdviceShowOnTheDaysChosen) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  for (const auto& [id, day] : {std::pair("skin-check", v1::WEEKDAY_WEDNESDAY),  // today
                                std::pair("after-a-fall", v1::WEEKDAY_SUNDAY)}) {
    auto& card = *programme.add_cards();
    card.set_card_id(id);
    card.set_card_revision(1);
    card.mutable_days()->add_days(day);
  }
  programme.mutable_cards(0)->set_note("Mind the heel.");
  m_world.clinic().put(programme);
  m_world.clinic().putSetting("redness-minutes", 25);
  m_world.pair();
  const auto titles = [](const QVariantList& rows) {
    std::vector<std::string> list;
    for (const QVariant& row : rows) list.push_back(row.toMap()["title"].toString().toStdString());
    return list;
  };
  EXPECT_THAT(titles(program().advice->today()), testing::ElementsAre("Look at your skin"));
  EXPECT_THAT(titles(program().advice->all()), testing::ElementsAre("Look at your skin", "After a fall"));
  EXPECT_THAT(titles(program().advice->besidesFall()), testing::ElementsAre("Look at your skin"));
  program().advice->open("skin-check");
  EXPECT_EQ(program().advice->note().toStdString(), "Mind the heel.");
  EXPECT_THAT(program().advice->steps().join(' ').toStdString(), HasSubstr("after 25 minutes"));
  EXPECT_FALSE(program().advice->otherLanguage());
  program().advice->write("A red mark at the edge");
  EXPECT_THAT(program().advice->sent().toStdString(), HasSubstr("A red mark at the edge"));
  m_world.sync();
  ASSERT_EQ(m_world.clinic().messages().size(), 1U);
  EXPECT_EQ(m_world.clinic().messages()[0].text(), "Look at your skin: A red mark at the edge");
}

// The clinic's number in the question that decides about the skin.
TEST_F(HomeModels, theReadyCheckAsksWithTheClinicsNumber) {
  m_world.clinic().putSetting("redness-minutes", 25);
  begin({"sit-to-stand"});
  program().today->start();
  std::string asked;
  for (int i = 0; i < 5 && m_world.page() == Page::Question; ++i) {
    for (const QVariant& choice : program().practice->choices())
      asked += choice.toMap()["words"].toString().toStdString();
    program().practice->answer(program().practice->choices()[0].toMap()["id"].toString());
  }
  EXPECT_THAT(asked, HasSubstr("do not fade in 25 minutes"));
}

// What the clinic wrote itself is led like any other; its photo comes along.
TEST_F(HomeModels, theClinicsOwnExerciseIsLedFromTheProgramme) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  const Catalogue& catalogue = Catalogue::builtIn();
  v1::OwnExercise& own = *programme.add_own_exercises();
  own.set_clinic_id(programme.clinic_id());
  own.set_author_id(programme.signer_id());
  own.set_author_name("Ruth Sample");
  own.mutable_written_at()->set_seconds(1);
  own.set_movement("whole-body-hold");
  *own.mutable_exercise() = *catalogue.find("sit-to-stand");
  own.mutable_exercise()->set_id("own-bench");
  *own.add_words() = *catalogue.words("sit-to-stand", "en");
  own.mutable_words(0)->set_exercise_id("own-bench");
  own.mutable_words(0)->set_exercise_revision(1);
  own.mutable_words(0)->set_title("Up from the bench");
  own.set_picture("\xFF\xD8\xFFjpeg");
  programme.mutable_entries(0)->set_exercise_id("own-bench");
  m_world.clinic().put(programme);
  m_world.pair();
  ASSERT_EQ(program().today->rows().size(), 1);
  EXPECT_EQ(program().today->rows()[0].toMap()["title"].toString().toStdString(), "Up from the bench");
  program().today->start();
  m_world.answerAllFine();
  ASSERT_EQ(m_world.page(), Page::GetReady);
  EXPECT_EQ(program().practice->entryTitle().toStdString(), "Up from the bench");
  EXPECT_TRUE(program().practice->entryPicture().startsWith("data:image/jpeg;base64,"));
}

TEST_F(HomeModels, theTherapistsPhotoAndClipComeAndUntilThenItIsSaid) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  const MediaOfEntry media = putMedia(m_world.clinic(), *programme.mutable_entries(0), "", "");
  m_world.clinic().put(programme);
  m_world.pair();
  m_world.sync();
  const auto row = [this] { return program().programme->entries()[0].toMap()["media"].toMap(); };
  EXPECT_TRUE(row()["photoComing"].toBool());
  EXPECT_TRUE(row()["clipComing"].toBool());
  EXPECT_TRUE(program().today->mayStart()) << "a practice waits for neither";
  m_world.clinic().putMedia(media.photo);
  m_world.clinic().putMedia(media.clip);
  m_world.sync();
  EXPECT_TRUE(row()["photo"].toString().startsWith("data:image/jpeg;base64,"));
  EXPECT_FALSE(row()["photoComing"].toBool());
  EXPECT_FALSE(row()["clipComing"].toBool());
  EXPECT_EQ(row()["photoWords"].toString().toStdString(), kPhotoWords);
  EXPECT_EQ(row()["captions"].toString().toStdString(), kCaptions);
  auto* const clip = row()["clip"].value<parts::ClipContent*>();
  ASSERT_NE(clip, nullptr);
  EXPECT_EQ(clip->bytes().toStdString(), media.clip);
}

TEST_F(HomeModels, aClipIsSilentWhileAPracticeLeads) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  putMedia(m_world.clinic(), *programme.mutable_entries(0), "tagged.jpg", "tagged.webm");
  m_world.clinic().put(programme);
  m_world.pair();
  m_world.sync();
  program().today->start();
  m_world.answerAllFine();
  ASSERT_EQ(m_world.page(), Page::GetReady);
  auto* const clip = program().practice->entryMedia()["clip"].value<parts::ClipContent*>();
  parts::ClipPlayer& clips = program().clips;
  clips.play(clip);
  EXPECT_TRUE(clips.playing());
  // Not only by the end of the step, but before the first cue of it.
  bool played_into_a_cue = false;
  QObject::connect(program().session.get(), &home::PracticeSession::changed, &clips,
                   [&] { played_into_a_cue = played_into_a_cue || clips.playing(); });
  program().practice->confirmSupportAndStart();
  EXPECT_FALSE(played_into_a_cue);
  EXPECT_FALSE(clips.playing());
  EXPECT_FALSE(clips.mayPlay());
  clips.play(clip);
  EXPECT_FALSE(clips.playing());
  program().player->pause();
  clips.play(clip);
  EXPECT_FALSE(clips.playing()) << "a pause is a part of practice";
  program().player->goOn();
  ASSERT_TRUE(m_world.passUntilPageChanges());
  ASSERT_EQ(m_world.page(), Page::Rating);
  EXPECT_TRUE(clips.mayPlay());
}

TEST_F(HomeModels, clinicOutOfReachIsSaidAndNothingStops) {
  begin({"sit-to-stand"});
  m_world.clinic().setReachable(false);
  m_world.sync();
  EXPECT_THAT(program().app->contact().toStdString(), HasSubstr("cannot be reached"));
  EXPECT_TRUE(program().today->mayStart());
}

TEST_F(HomeModels, leavingAnExerciseOutAsksWhyAndGoesOn) {
  begin({"sit-to-stand", "weight-shift-side"});
  program().today->start();
  m_world.answerAllFine();
  program().app->show(Page::LeaveOut);
  EXPECT_EQ(m_world.page(), Page::LeaveOut);
  program().app->back();
  program().practice->skip(v1::STOP_REASON_NO_TIME);
  EXPECT_EQ(m_world.page(), Page::GetReady);
  EXPECT_THAT(program().practice->entryPlace().toStdString(), HasSubstr("2 of 2"));
}

TEST_F(HomeModels, helpIsReachableAndLeadsBack) {
  begin({"sit-to-stand"});
  program().today->start();
  const Page before = m_world.page();
  program().app->show(Page::Help);
  EXPECT_EQ(m_world.page(), Page::Help);
  program().app->back();
  EXPECT_EQ(m_world.page(), before);
}

TEST_F(HomeModels, settingsSurviveARestartAndAnErasureTakesThem) {
  begin({"sit-to-stand"});
  program().settings->setTextPercent(175);
  program().settings->setLook(home::SettingsModel::Look::Dark);
  program().settings->setVoice(false);
  m_world.killAndRestart();
  EXPECT_EQ(program().settings->textPercent(), 175);
  EXPECT_EQ(program().settings->look(), home::SettingsModel::Look::Dark);
  EXPECT_FALSE(program().settings->voice());
  program().settings->erase();
  EXPECT_EQ(m_world.page(), Page::Language);
  EXPECT_EQ(program().settings->textPercent(), 100);
}

// ---- the drawn body ----

TEST_F(HomeModels, theFigureMovesWithThePracticeAndStandsStillWithIt) {
  begin({"sit-to-stand"});
  program().today->start();
  m_world.answerAllFine();
  parts::FigureSource& start = *program().practice->entryFigure();
  EXPECT_TRUE(start.there());
  EXPECT_THAT(start.words().toStdString(), HasSubstr("how to start"));
  program().practice->confirmSupportAndStart();
  parts::FigureSource& figure = *program().player->figure();
  ASSERT_TRUE(figure.there());
  EXPECT_TRUE(figure.moving());
  while (program().player->resting()) m_world.pass(absl::Milliseconds(100));
  m_world.pass(absl::Milliseconds(700));
  const Moment early = figure.momentNow(false);
  EXPECT_EQ(early.phase, 0);
  m_world.pass(absl::Milliseconds(800));
  const Moment later = figure.momentNow(false);
  EXPECT_EQ(later.phase, 0);
  EXPECT_GT(later.fraction, early.fraction);
  program().player->pause();
  EXPECT_FALSE(figure.moving());
  m_world.pass(absl::Seconds(5));
  EXPECT_EQ(figure.momentNow(false), figure.momentNow(false));
  program().player->goOn();
  EXPECT_TRUE(figure.moving());
  program().player->stop();
  EXPECT_FALSE(program().player->figure()->moving());
}

// A hold of the timeline is a hold of the figure, as long as it is dosed.
TEST_F(HomeModels, theFigureHoldsAsLongAsTheHoldLasts) {
  begin({"sit-to-stand"});
  startFirst();
  while (program().player->numberOf() != QStringLiteral("seconds to hold"))
    m_world.pass(absl::Milliseconds(100));
  const v1::Timeline& timeline = program().session->run()->timeline(0);
  std::int64_t hold_ms = 0;
  for (const v1::Beat& beat : timeline.beats()) {
    if (beat.kind() == v1::BEAT_KIND_HOLD && hold_ms == 0) hold_ms = beat.length_ms();
  }
  const int phase = program().player->figure()->momentNow(false).phase;
  m_world.pass(absl::Milliseconds(hold_ms - 300));
  EXPECT_EQ(program().player->figure()->momentNow(false).phase, phase);
  m_world.pass(absl::Milliseconds(500));
  EXPECT_NE(program().player->figure()->momentNow(false).phase, phase);
}

TEST_F(HomeModels, howThePersonIsDrawnIsKeptOnThePhoneAndDrawn) {
  begin({"sit-to-stand"});
  program().settings->setBuild(2);
  program().settings->setSkin(3);
  program().settings->setHead(2);
  program().settings->setLessMotion(true);
  m_world.killAndRestart();
  EXPECT_EQ(program().settings->build(), 2);
  EXPECT_EQ(program().settings->skin(), 3);
  EXPECT_EQ(program().settings->head(), 2);
  EXPECT_TRUE(program().settings->lessMotion());
  const v1::Appearance appearance = program().settings->appearance();
  EXPECT_EQ(appearance.build(), v1::BUILD_HEAVY);
  EXPECT_EQ(appearance.skin(), v1::SKIN_TONE_4);
  EXPECT_EQ(appearance.head(), v1::HEAD_WEAR_SCARF);
  startFirst();
  parts::FigureSource& figure = *program().player->figure();
  const Drawing& drawing = figure.draw(figure.momentNow(false), false);
  const Colour skin = lightPalette(appearance).skin;
  EXPECT_TRUE(std::any_of(drawing.ops.begin(), drawing.ops.end(),
                          [&](const Op& op) { return op.kind == OpKind::Fill && op.colour == skin; }));
}

TEST_F(HomeModels, theFigureHasTheLostLimbAndTheLettersOfThePersonsLanguage) {
  begin({"sit-to-stand"});
  startFirst();
  parts::FigureSource& figure = *program().player->figure();
  const Drawing& drawing = figure.draw(figure.momentNow(false), false);
  const Colour brass = lightPalette({}).brass;
  EXPECT_TRUE(
      std::any_of(drawing.ops.begin(), drawing.ops.end(), [&](const Op& op) { return op.colour == brass; }));
  ASSERT_GT(drawing.label_count, 0U);
  EXPECT_THAT(drawing.labels[0].text, testing::AnyOf("L", "R"));
}

TEST_F(HomeModels, theProgrammeShowsEachExerciseInThreePoses) {
  begin({"sit-to-stand", "stairs-one-at-a-time"});
  for (const QVariant& row : program().programme->entries()) {
    auto* const figure = row.toMap().value(QStringLiteral("figure")).value<parts::FigureSource*>();
    ASSERT_NE(figure, nullptr);
    EXPECT_EQ(figure->stills(), 3);
  }
}

}  // namespace
}  // namespace newel::tests
