// What a person can do in the middle of a practice, and what befalls it: slower, sound that is gone, the last
// one said as a word.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "platform/sound_route.h"
#include "tests/qml/home/home_world.h"

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;
using testing::Contains;
using testing::HasSubstr;

class PracticeControls : public testing::Test {
 protected:
  PracticeControls() {
    m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
    m_world.pair();
    program().today->start();
    m_world.answerAllFine();
    program().practice->confirmSupportAndStart();
  }
  HomeProgram& program() { return m_world.program(); }
  std::uint32_t beat() { return program().session->run()->player()->beat(); }
  HomeWorld m_world;
};

TEST_F(PracticeControls, headphonesThatAreGonePauseAndNothingGoesOnByItself) {
  m_world.pass(absl::Seconds(1));
  ASSERT_FALSE(program().player->paused());
  const int stops = program().speech.stops();
  program().session->soundRouteLost();
  EXPECT_TRUE(program().player->paused());
  EXPECT_GT(program().speech.stops(), stops) << "nothing is suddenly said aloud";
  EXPECT_THAT(program().player->pausedWhy().toStdString(), HasSubstr("headphones"));
  const std::uint32_t at = beat();
  m_world.pass(absl::Minutes(2));
  EXPECT_TRUE(program().player->paused());
  EXPECT_EQ(beat(), at);
  program().player->goOn();
  EXPECT_FALSE(program().player->paused());
  program().player->pause();
  EXPECT_EQ(program().player->pausedWhy(), "") << "this time it was the person";
}

TEST_F(PracticeControls, headphonesThatAreGoneBetweenExercisesDisturbNothing) {
  program().player->stop();
  const Page page = m_world.page();
  program().session->soundRouteLost();
  EXPECT_EQ(m_world.page(), page);
}

TEST_F(PracticeControls, slowerGoesOnAndStretchesTheMovementsThatFollow) {
  while (program().player->resting()) m_world.pass(absl::Milliseconds(100));
  const absl::Duration signed_length = program().session->run()->player()->beatLength();
  program().player->pause();
  ASSERT_TRUE(program().player->canSlow());
  program().player->slower();
  EXPECT_FALSE(program().player->paused());
  while (program().player->resting()) m_world.pass(absl::Milliseconds(100));
  EXPECT_EQ(program().session->run()->player()->beatLength(), signed_length * 1.25);
  for (int i = 0; i < 4; ++i) program().player->slower();
  EXPECT_FALSE(program().player->canSlow());
  // The figure keeps in step: at the beat's end it is at its end.
  m_world.pass(program().session->run()->player()->leftInBeat(m_world.clock().elapsed()) -
               absl::Milliseconds(100));
  EXPECT_GT(program().player->fraction(), 0.9);
}

TEST_F(PracticeControls, theLastOneIsAWordOnTheScreenAndInTheEar) {
  bool shown = false;
  for (int i = 0; i < 3000 && m_world.page() == Page::Practice; ++i) {
    m_world.pass(absl::Milliseconds(100));
    shown = shown || program().player->setWords().contains(QStringLiteral("last one"));
  }
  EXPECT_TRUE(shown);
  EXPECT_THAT(program().speech.said(), Contains(HasSubstr("Last one")));
}

TEST_F(PracticeControls, mutedItRunsThroughJustTheSame) {
  program().session->setVoice(false);
  program().speech.breakWith("speech.no-voice");
  program().tones.breakWith("sound.no-device");
  ASSERT_TRUE(m_world.passUntilPageChanges());
  EXPECT_EQ(m_world.page(), Page::Rating);
}

TEST_F(PracticeControls, everyToneIsFeltWhereThePhoneCanShake) {
  m_world.pass(absl::Seconds(5));
  EXPECT_TRUE(program().vibration.played().empty()) << "a phone without a motor";
  program().vibration.haveMotor(true);
  program().tones.forget();
  m_world.pass(absl::Seconds(30));
  EXPECT_FALSE(program().tones.played().empty());
  EXPECT_EQ(program().vibration.played(), program().tones.played());
  program().settings->setVibrates(false);
  const std::size_t felt = program().vibration.played().size();
  EXPECT_GE(program().vibration.stops(), 1);
  m_world.pass(absl::Seconds(30));
  EXPECT_EQ(program().vibration.played().size(), felt);
}

// Where no voice can be heard the note says what is left, and only what is.
TEST_F(PracticeControls, theNoteAboutSoundNamesVibrationOnlyWhereItIs) {
  for (const char* why : {"speech.no-voice", "speech.broken", "speech.no-sound-device"}) {
    program().speech.breakWith(why);
    program().vibration.haveMotor(false);
    EXPECT_FALSE(program().player->soundNote().contains(QStringLiteral("vibrates"))) << why;
    program().vibration.haveMotor(true);
    EXPECT_TRUE(program().player->soundNote().contains(QStringLiteral("vibrates"))) << why;
  }
}

TEST_F(PracticeControls, theScreenStaysOnWhilePractisingAndNotForAForgottenPause) {
  EXPECT_TRUE(program().stay_awake.on());
  program().player->pause();
  m_world.pass(absl::Minutes(1));
  EXPECT_TRUE(program().stay_awake.on()) << "somebody takes a breath";
  program().session->giveBackDevices();
  EXPECT_FALSE(program().stay_awake.on());
  EXPECT_FALSE(program().tones.isWarm());
  program().player->goOn();
  EXPECT_TRUE(program().stay_awake.on());
  EXPECT_TRUE(program().tones.isWarm());
}

TEST_F(PracticeControls, whatHappenedIsOneTapInterruptedToo) {
  program().player->stop();
  ASSERT_EQ(m_world.page(), Page::WhatHappened);
  std::vector<int> reasons;
  for (const QVariant& row : program().practice->reasons()) reasons.push_back(row.toMap()["id"].toInt());
  for (const int reason : {v1::STOP_REASON_PAIN, v1::STOP_REASON_DIZZY, v1::STOP_REASON_UNSTEADY,
                           v1::STOP_REASON_PROSTHESIS, v1::STOP_REASON_TIRED, v1::STOP_REASON_INTERRUPTED}) {
    EXPECT_THAT(reasons, Contains(reason));
  }
  program().practice->stopReason(v1::STOP_REASON_INTERRUPTED);
  EXPECT_NE(m_world.page(), Page::WhatHappened);
}

// Headphones come and go: only the loss of what was in use counts.
TEST(RouteWatch, onlyWhatWasInUseCanBeLost) {
  platform::RouteWatch watch;
  EXPECT_FALSE(watch.changed({"speaker"}, "speaker"));
  EXPECT_FALSE(watch.changed({"speaker", "phones"}, "phones")) << "plugged in";
  EXPECT_FALSE(watch.changed({"speaker", "phones", "hdmi"}, "phones")) << "something else came";
  EXPECT_FALSE(watch.changed({"speaker", "phones"}, "phones")) << "and went";
  EXPECT_TRUE(watch.changed({"speaker"}, "speaker")) << "pulled out";
  EXPECT_FALSE(watch.changed({"speaker"}, "speaker"));
  EXPECT_TRUE(watch.changed({}, ""));
  EXPECT_FALSE(watch.changed({"speaker"}, "speaker"));
}

}  // namespace
}  // namespace newel::tests
