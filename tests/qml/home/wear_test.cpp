// Wearing time on the phone: what the plan allows at each moment, what the person tells, and what the clinic
// gets. The rules themselves are tested in core (wear_plan_test); here it is that the screen follows them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QLocale>

#include "qml/home/own_record.h"
#include "qml/home/wear_words.h"
#include "tests/qml/home/home_world.h"

namespace newel::tests {
namespace {

using home::WearModel;
using State = WearModel::State;
using testing::HasSubstr;

class Wearing : public testing::Test {
 protected:
  void begin(const v1::WearPlan& plan = inventedWearPlan()) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    v1::Programme programme = inventedProgramme(1, {"sit-to-stand", "weight-shift-side"});
    *programme.mutable_wear_plan() = plan;
    m_world.clinic().put(programme);
    m_world.pair();
    program().wear->refresh();
  }
  ~Wearing() override { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
  HomeProgram& program() { return m_world.program(); }
  WearModel& wear() { return *program().wear; }
  void pass(absl::Duration time) {
    m_world.clock().advance(time);
    wear().refresh();
  }
  void wearFor(absl::Duration time, const std::vector<v1::SkinSign>& signs) {
    wear().putOn(0);
    ASSERT_EQ(wear().state(), State::On) << wear().error().toStdString();
    pass(time);
    wear().takeOff(0);
    ASSERT_EQ(wear().state(), State::Look);
    QVariantList seen;
    for (const v1::SkinSign sign : signs) seen << static_cast<int>(sign);
    wear().look(seen);
  }
  HomeWorld m_world;
};

TEST_F(Wearing, withoutAPlanThereIsNothing) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  m_world.pair();
  EXPECT_FALSE(wear().planned());
  wear().putOn(0);
  EXPECT_TRUE(program().engine->wearBlocks().empty());
}

TEST_F(Wearing, aDayOfTwoBlocksWithItsBreakAndTheClinicHasEachWord) {
  begin();
  EXPECT_EQ(wear().state(), State::Off);
  EXPECT_THAT(wear().plan().toStdString(), HasSubstr("2 times a day for 1 hour"));
  EXPECT_THAT(wear().note().toStdString(), HasSubstr("Two fresh socks"));
  EXPECT_THAT(wear().worn().toStdString(), HasSubstr("Not worn yet"));
  wear().putOn(0);
  EXPECT_EQ(wear().state(), State::On);
  EXPECT_THAT(wear().worn().toStdString(), HasSubstr("less than a minute")) << "it is on";
  EXPECT_TRUE(wear().timed());
  EXPECT_EQ(wear().minutesLeft(), 60);
  pass(absl::Minutes(45));
  EXPECT_EQ(wear().minutesLeft(), 15);
  EXPECT_FALSE(wear().over());
  pass(absl::Minutes(15));
  EXPECT_TRUE(wear().over());
  EXPECT_THAT(wear().headline().toStdString(), HasSubstr("take it off now"));
  wear().takeOff(0);
  EXPECT_EQ(wear().state(), State::Look) << "no next block before the skin was looked at";
  wear().look({static_cast<int>(v1::SKIN_SIGN_CLEAR)});
  EXPECT_EQ(wear().state(), State::Rest);
  pass(absl::Minutes(60));
  EXPECT_EQ(wear().state(), State::Off);
  wearFor(absl::Minutes(60), {v1::SKIN_SIGN_CLEAR});
  EXPECT_EQ(wear().state(), State::DoneToday);
  EXPECT_THAT(wear().worn().toStdString(), HasSubstr("2 hours"));
  m_world.sync();
  const auto blocks = m_world.clinic().wearBlocks();
  ASSERT_EQ(blocks.size(), 6U) << "on, off and looked at, twice";
  EXPECT_EQ(blocks.back().revision(), 3U);
  EXPECT_EQ(blocks.back().origin(), v1::ORIGIN_TIMED_HERE);
  EXPECT_EQ(blocks.back().zone(), "Europe/Berlin");
}

TEST_F(Wearing, redSkinThatGoesInTimeIsFineAndThatStaysEndsIt) {
  begin();
  wearFor(absl::Minutes(30), {v1::SKIN_SIGN_RED});
  ASSERT_EQ(wear().state(), State::Watch);
  EXPECT_FALSE(wear().watchOver());
  wear().redGone(false);
  EXPECT_EQ(wear().state(), State::Watch) << "too early to say that it stays";
  pass(absl::Minutes(4));
  wear().redGone(true);
  EXPECT_EQ(wear().state(), State::Rest);
  pass(absl::Minutes(120));
  wearFor(absl::Minutes(30), {v1::SKIN_SIGN_RED});
  pass(absl::Minutes(25));  // asked late: the question is about the tenth minute
  EXPECT_TRUE(wear().watchOver());
  wear().redGone(false);
  EXPECT_EQ(wear().state(), State::StayOff);
  EXPECT_THAT(wear().stop().toStdString(), HasSubstr("call the clinic"));
  EXPECT_FALSE(wear().planned() && wear().state() == State::Off);
}

TEST_F(Wearing, askedLateWhatWasGoneInTimeIsNotTakenForTooRed) {
  begin();
  wearFor(absl::Minutes(30), {v1::SKIN_SIGN_RED});
  pass(absl::Minutes(90));
  wear().redGone(true);
  EXPECT_EQ(wear().state(), State::Off);
  EXPECT_EQ(program().engine->wearBlocks().back().check().redness().watched_min(), 10U);
}

TEST_F(Wearing, aHurtKeepsTheProsthesisOffAndWhatIsDoneWithItWaits) {
  begin();
  const int due = program().today->dueCount();
  ASSERT_GT(due, 0);
  wearFor(absl::Minutes(20), {v1::SKIN_SIGN_BLISTER, v1::SKIN_SIGN_RED});
  EXPECT_EQ(wear().state(), State::StayOff);
  EXPECT_EQ(program().today->dueCount(), 0) << "both are done with the prosthesis on";
  EXPECT_FALSE(program().today->mayStart());
  const QVariantMap notice = program().today->notices().first().toMap();
  EXPECT_EQ(notice["title"].toString(), "Leave the prosthesis off");
  wear().putOn(0);
  EXPECT_EQ(wear().state(), State::On) << "what happened all the same is better told than not";
  pass(absl::Hours(24));
  wear().takeOff(0);
  wear().look({static_cast<int>(v1::SKIN_SIGN_CLEAR)});
  EXPECT_EQ(wear().state(), State::StayOff) << "clear skin later does not end it";
  // The clinic's next plan does.
  v1::Programme next = inventedProgramme(2, {"sit-to-stand"});
  *next.mutable_wear_plan() = inventedWearPlan();
  next.mutable_wear_plan()->set_number(2);
  next.mutable_wear_plan()->set_effective_day("2026-11-27");
  m_world.clinic().put(next);
  m_world.sync();
  pass(absl::Hours(24));
  EXPECT_EQ(wear().state(), State::Off);
  program().today->refresh();
  EXPECT_GT(program().today->dueCount(), 0);
}

TEST_F(Wearing, whatIsToldLaterIsMarkedAndMayNotLieBeforeWhatWasTold) {
  begin();
  ASSERT_GT(wear().agoSteps(), 10);
  wear().putOn(6);  // half an hour ago
  EXPECT_EQ(wear().minutesLeft(), 30);
  EXPECT_EQ(wear().agoSteps(), 7) << "no further back than it was put on";
  wear().takeOff(2);
  wear().look({static_cast<int>(v1::SKIN_SIGN_CLEAR)});
  const v1::WearBlock block = program().engine->wearBlocks().back();
  EXPECT_EQ(block.origin(), v1::ORIGIN_TOLD_LATER);
  EXPECT_EQ(block.taken_off_at().seconds() - block.put_on_at().seconds(), 20 * 60);
  EXPECT_THAT(wear().past().first().toMap()["words"].toString().toStdString(), HasSubstr("not timed"));
}

TEST_F(Wearing, aTakeOffThatWasForgottenForDaysCanStillBeTold) {
  begin();
  wear().putOn(0);
  pass(absl::Hours(24 * 3));
  EXPECT_TRUE(wear().over());
  ASSERT_GT(wear().agoSteps(), 0);
  wear().takeOff(0);
  EXPECT_TRUE(wear().error().isEmpty()) << wear().error().toStdString();
  EXPECT_EQ(wear().state(), State::Look);
  const v1::WearBlock block = program().engine->wearBlocks().back();
  EXPECT_LE(block.taken_off_at().seconds() - block.put_on_at().seconds(), 36 * 3600);
  EXPECT_EQ(block.origin(), v1::ORIGIN_TOLD_LATER);
}

TEST_F(Wearing, aKillInTheMiddleLosesNothing) {
  begin();
  wear().putOn(0);
  m_world.killAndRestart(absl::Minutes(20));
  wear().refresh();
  EXPECT_EQ(wear().state(), State::On);
  EXPECT_EQ(wear().minutesLeft(), 40);
}

TEST_F(Wearing, aPlanOfAProgrammeToComeLeavesTheOneInForce) {
  begin();
  v1::Programme next = inventedProgramme(2, {"sit-to-stand"});
  next.set_effective_day("2026-11-28");
  *next.mutable_wear_plan() = inventedWearPlan();
  next.mutable_wear_plan()->set_number(2);
  next.mutable_wear_plan()->set_effective_day("2026-11-28");
  next.mutable_wear_plan()->mutable_steps(0)->set_block_min(30);
  m_world.clinic().put(next);
  m_world.sync();
  wear().refresh();
  EXPECT_THAT(wear().plan().toStdString(), HasSubstr("1 hour"));
  pass(absl::Hours(24 * 3));
  EXPECT_THAT(wear().plan().toStdString(), HasSubstr("30 minutes"));
}

TEST_F(Wearing, howItGoesShowsTheHoursTheSkinAndWhatTheClinicMeasured) {
  begin();
  wearFor(absl::Minutes(60), {v1::SKIN_SIGN_CLEAR});
  m_world.clinic().put(inventedMeasure(3, 16.4));
  m_world.clinic().put(inventedMeasure(20, 12.5));
  m_world.sync();
  home::HistoryModel& history = *program().history;
  history.shown();
  EXPECT_EQ(history.wear().size(), 1);
  EXPECT_DOUBLE_EQ(history.wear().first().toMap()["value"].toDouble(), 1.0);
  EXPECT_THAT(history.wearWords().toStdString(), HasSubstr("Worn on 1 day"));
  EXPECT_THAT(history.wearWords().toStdString(), HasSubstr("No red skin"));
  ASSERT_EQ(history.measures().size(), 1);
  const QVariantMap walk = history.measures().first().toMap();
  EXPECT_EQ(walk["points"].toList().size(), 2);
  EXPECT_THAT(walk["words"].toString().toStdString(), HasSubstr("Last: 12.5 seconds"));
  EXPECT_THAT(walk["words"].toString().toStdString(), HasSubstr("Before: 16.4 seconds"));
  EXPECT_LT(walk["least"].toDouble(), 12.5);
  EXPECT_GT(walk["most"].toDouble(), 16.4);
  EXPECT_THAT(walk["ends"].toString().toStdString(), HasSubstr("Less is better"));
}

TEST_F(Wearing, whatTheClinicAskedForIsSaidUntilItIsTaken) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  v1::AskedMeasure& asked = *programme.add_measures();
  asked.set_kind("two-minute-walk");
  asked.set_by_day("2026-12-04");
  m_world.clinic().put(programme);
  m_world.pair();
  home::HistoryModel& history = *program().history;
  history.shown();
  ASSERT_EQ(history.measures().size(), 1);
  const QString words = history.measures().first().toMap()["words"].toString();
  EXPECT_THAT(words.toStdString(), HasSubstr("need not do it at home"));
  EXPECT_TRUE(history.measures().first().toMap()["points"].toList().isEmpty());
}

TEST(WearWords, timesAreSaidAsPeopleSayThem) {
  EXPECT_EQ(home::spanOfTimeWords(45), "45 minutes");
  EXPECT_EQ(home::spanOfTimeWords(60), "1 hour");
  EXPECT_EQ(home::spanOfTimeWords(150), "2 hours 30 minutes");
  for (const QVariant& row : home::skinSignRows()) EXPECT_FALSE(row.toMap()["words"].toString().isEmpty());
  EXPECT_EQ(home::skinSignRows().size(), v1::SkinSign_descriptor()->value_count() - 1);
}

}  // namespace
}  // namespace newel::tests
