// Every page of the phone, in a real window over a real engine, in every language, at every size and scale:
// nothing cut off, covered, too small to press, nameless or read out of order, and no warning. What is looked
// at how often: page_walk.h. That each page begins at its title: keyboard_test.cpp. With NEWEL_SHOTS=<folder>
// in the environment it keeps pictures, to be looked at.
#include <gtest/gtest.h>

#include <QtCore/QFile>

#include "tests/qml/home/grey_square.h"
#include "tests/qml/home/media_entry.h"
#include "tests/qml/home/page_walk.h"

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;

class HomePages : public PageWalk, public testing::WithParamInterface<const char*> {
 protected:
  HomePages() { begin(GetParam()); }
};

TEST_P(HomePages, fromPairingToTodayHoldTogether) {
  program().settings->setFirstRunStep("Pair");
  check(Page::Pair);
  program().pair->pairTyped("nowhere", "x");
  check(Page::Pair, "-errors");
  program().app->show(Page::Scan);
  check(Page::Scan);
  program().camera.show(greySquare("https://example.org"));
  check(Page::Scan, "-other");
  program().camera.breakWith("camera.refused");
  program().scan->end();
  check(Page::Scan, "-refused");
  program().app->back();
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time", "face-down-lying"});
  for (const char* id : {"after-a-fall", "sock-changes"}) {
    auto& card = *programme.add_cards();
    card.set_card_id(id);
    card.set_card_revision(1);
    card.mutable_days()->add_days(v1::WEEKDAY_WEDNESDAY);
    card.set_note("Practise this with me first.");
  }
  m_world.clinic().put(programme);
  program().pair->pairTyped("clinic.example:7443", "abcd-2345");
  while (program().pair->busy()) settle(10);
  check(Page::Paired);
  program().app->back();
  ASSERT_EQ(m_world.page(), Page::AskReminders);
  program().settings->setFirstRunStep("Done");
  check(Page::Today, "-empty");
  m_world.sync();
  check(Page::Today);
  scroll(400);
  check(Page::Today, "-scrolled");
  program().app->show(Page::Programme);
  check(Page::Programme);
  program().app->back();
  program().advice->open("after-a-fall");
  program().app->show(Page::Advice);
  check(Page::Advice);
  program().advice->open("sock-changes");
  scroll(600);
  check(Page::Advice, "-log");
  program().app->back();
  program().app->show(Page::Help);
  check(Page::Help);
  program().app->back();
  program().app->show(Page::Settings);
  check(Page::Settings);
  program().app->show(Page::Drawn);
  check(Page::Drawn);
  scroll(500);
  program().settings->setSkin(3);
  program().settings->setHead(2);
  check(Page::Drawn, "-chosen");
  program().app->back();
  ASSERT_EQ(m_world.page(), Page::Settings) << "one step back, not two";
  program().app->back();
  m_world.clinic().put(m_world.clinic().message("Please use both hands on the stairs this week.", true));
  m_world.clinic().put(m_world.clinic().holdOrder("Your skin needs rest. I phone you today.",
                                                  {inventedProgramme(1, {"sit-to-stand"}).entries(0).id()}));
  m_world.sync();
  check(Page::Today, "-notices");
}

// What the therapist took for this person: shown, said in words, and, for the second exercise, still on its
// way.
TEST_P(HomePages, photosAndClipsHoldTogether) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time"});
  putMedia(m_world.clinic(), *programme.mutable_entries(0), "tagged.jpg", "tagged.webm");
  putMedia(m_world.clinic(), *programme.mutable_entries(1), "", "");
  m_world.clinic().put(programme);
  m_world.pair();
  m_world.sync();
  program().app->show(Page::Programme);
  check(Page::Programme, "-media");
  scroll(500);
  check(Page::Programme, "-media-scrolled");
  program().app->back();
  program().today->start();
  m_world.answerAllFine();
  ASSERT_EQ(m_world.page(), Page::GetReady);
  scroll(420);
  check(Page::GetReady, "-media");
}

// What is asked before anything else can be shown.
TEST_P(HomePages, troubleHoldsTogether) {
  QQmlApplicationEngine engine;
  engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  engine.setInitialProperties(
      {{QStringLiteral("heading"), QStringLiteral("This phone has no safe place for a key")},
       {QStringLiteral("words"),
        QStringLiteral("Newel locks what it keeps about you with a key. This phone has no "
                       "place of its own for keys, so the key would lie in a file.")},
       {QStringLiteral("accept"), QStringLiteral("Keep the key in a file")},
       {QStringLiteral("refuse"), QStringLiteral("Do not use Newel here")},
       {QStringLiteral("rightToLeft"), QGuiApplication::isRightToLeft()}});
  auto* const theme = engine.singletonInstance<parts::Theme*>(qmlTypeId("Newel.Parts", 1, 0, "Theme"));
  engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Home/TroubleWindow.qml")));
  ASSERT_FALSE(engine.rootObjects().isEmpty());
  auto* const window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
  for (const PageSize& size : kPageSizes) {
    for (const int percent : {100, 200}) {
      theme->setTextPercent(percent);
      window->resize(size.width, size.height);
      settleLayout(*window);
      judge(*window, "Trouble");
      keepPicture(*window, std::to_string(size.width) + "at" + std::to_string(percent), "Trouble");
    }
  }
}

TEST_P(HomePages, practiceHoldsTogether) {
  pair();
  program().programme->shown();
  program().today->start();
  check(Page::Question);
  m_world.answerAllFine();
  ASSERT_EQ(m_world.page(), Page::GetReady);
  check(Page::GetReady);
  program().app->show(Page::LeaveOut);
  check(Page::LeaveOut);
  program().app->back();
  program().practice->confirmSupportAndStart();
  check(Page::Practice, "-ready");
  while (program().player->resting()) m_world.pass(absl::Milliseconds(100));
  check(Page::Practice, "-move");
  program().player->pause();
  check(Page::Practice, "-paused");
  program().player->goOn();
  ASSERT_TRUE(m_world.passUntilPageChanges());
  check(Page::Rating);
  program().practice->rate(1, 3);
  ASSERT_EQ(m_world.page(), Page::GetReady);
  check(Page::GetReady, "-stairs");
  program().practice->confirmSupportAndStart();
  for (int i = 0; i < 400 && program().player->resting(); ++i) m_world.pass(absl::Milliseconds(100));
  check(Page::Practice, "-stairs");
  for (int i = 0; i < 4000 && !program().player->canLengthen() && m_world.page() == Page::Practice; ++i) {
    m_world.pass(absl::Milliseconds(100));
  }
  check(Page::Practice, "-rest");
  program().player->stop();
  check(Page::WhatHappened);
  program().practice->stopReason(v1::STOP_REASON_FALL);
  check(Page::Verdict);
  program().practice->acknowledge();
  check(Page::Close);
}

TEST_P(HomePages, painUnfinishedAndEmergencyHoldTogether) {
  pair();
  program().today->start();
  for (int round = 0; round < 10 && m_world.page() == Page::Question; ++round) {
    const v1::ReadyQuestion* const question = program().session->run()->question();
    for (const v1::ReadyChoice& choice : question->choices()) {
      if (!choice.fine()) continue;
      program().practice->answer(QString::fromStdString(choice.id()));
      break;
    }
    if (m_world.page() == Page::Question) check(Page::Question, "-" + std::to_string(round + 2));
  }
  check(Page::Pain);
  program().practice->painBefore(1);
  program().practice->confirmSupportAndStart();
  m_world.pass(absl::Seconds(14));
  program().player->stop();
  program().practice->stopReason(v1::STOP_REASON_CHEST_PAIN);
  check(Page::Verdict, "-emergency");
}

TEST_P(HomePages, unfinishedPracticeAndItsRatingHoldTogether) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  m_world.pair();
  program().today->start();
  m_world.answerAllFine();
  program().practice->confirmSupportAndStart();
  m_world.pass(absl::Seconds(16));
  killAndRestart();
  check(Page::Unfinished);
  program().today->goOn();
  check(Page::Practice, "-taken-up");
  program().player->goOn();
  m_world.pass(absl::Milliseconds(300));
  check(Page::Practice, "-lead-in");
  ASSERT_TRUE(m_world.passUntilPageChanges());
  check(Page::Rating);
  click(QLocale().toString(1));
  click(QCoreApplication::translate("RatingPage", "Next"));
  check(Page::Rating, "-effort");
  click(QLocale().toString(3));
  click(QCoreApplication::translate("RatingPage", "Next"));
  check(Page::Close, "-finished");
}

TEST_P(HomePages, remindersHoldTogether) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time"});
  v1::Window& evening = *programme.mutable_entries(1)->mutable_schedule()->mutable_windows(0);
  evening.set_from_min(1260);
  evening.set_to_min(1380);
  m_world.clinic().put(programme);
  m_world.pair();
  program().app->show(Page::Settings);
  program().app->show(Page::Reminders);
  check(Page::Reminders, "-off");
  program().reminder_model->setOn(true);
  check(Page::Reminders, "-on");
  scroll(500);
  check(Page::Reminders, "-on-scrolled");
  scroll(5000);
  check(Page::Reminders, "-on-end");
  program().reminders.setPermission(platform::ReminderPermission::None);
  scroll(0);
  check(Page::Reminders, "-none");
  program().app->back();
  scroll(700);
  check(Page::Settings, "-mine");
  program().app->back();
  scroll(5000);
  check(Page::Today, "-no-reminders");
}

TEST_P(HomePages, whatWasDoneAwayFromThePhoneHoldsTogether) {
  pair();
  program().app->show(Page::TellLater);
  check(Page::TellLater);
  program().tell_later->choose(0);
  check(Page::TellLater, "-how-much");
  program().tell_later->howMuch(100);
  check(Page::TellLater, "-pain");
  program().tell_later->givePain(2);
  check(Page::TellLater, "-effort");
  program().tell_later->giveEffort(4);
  check(Page::TellLater, "-happened");
  program().tell_later->happened(0);
  check(Page::TellLater, "-told");
  program().tell_later->begin();
  program().tell_later->choose(1);
  program().tell_later->howMuch(50);
  program().tell_later->givePain(9);
  program().tell_later->giveEffort(4);
  program().tell_later->happened(v1::STOP_REASON_CHEST_PAIN);
  check(Page::TellLater, "-stop");
}

TEST_P(HomePages, wearingTimeHoldsTogether) {
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  *programme.mutable_wear_plan() = inventedWearPlan();
  v1::AskedMeasure& asked = *programme.add_measures();
  asked.set_kind("two-minute-walk");
  asked.set_by_day("2026-12-04");
  m_world.clinic().put(programme);
  m_world.clinic().put(inventedMeasure(3, 16.4));
  m_world.clinic().put(inventedMeasure(12, 14));
  m_world.clinic().put(inventedMeasure(20, 12.5));
  m_world.pair();
  home::WearModel& wear = *program().wear;
  const auto pass = [&](absl::Duration time) {
    m_world.clock().advance(time);
    wear.refresh();
  };
  wear.refresh();
  scroll(300);
  check(Page::Today, "-wear");
  scroll(0);
  program().app->show(Page::Wear);
  check(Page::Wear, "-off");
  wear.putOn(0);
  pass(absl::Minutes(35));
  check(Page::Wear, "-on");
  pass(absl::Minutes(30));
  check(Page::Wear, "-over");
  wear.takeOff(1);
  check(Page::Wear, "-look");
  scroll(5000);
  check(Page::Wear, "-look-end");
  wear.look({static_cast<int>(v1::SKIN_SIGN_RED)});
  check(Page::Wear, "-watch");
  pass(absl::Minutes(15));
  check(Page::Wear, "-watch-over");
  wear.redGone(true);
  check(Page::Wear, "-rest");
  pass(absl::Minutes(60));
  wear.putOn(0);
  pass(absl::Minutes(55));
  wear.takeOff(0);
  wear.look({static_cast<int>(v1::SKIN_SIGN_CLEAR)});
  check(Page::Wear, "-done");
  program().app->back();
  program().app->show(Page::HowItGoes);
  scroll(700);
  check(Page::HowItGoes, "-wear");
  scroll(5000);
  check(Page::HowItGoes, "-measures");
  program().app->back();
  program().app->show(Page::Wear);
  wear.putOn(0);
  wear.takeOff(0);
  wear.look({static_cast<int>(v1::SKIN_SIGN_OPEN_SKIN), static_cast<int>(v1::SKIN_SIGN_RED)});
  check(Page::Wear, "-stay-off");
  program().app->back();
  scroll(0);
  check(Page::Today, "-skin");
}

TEST_P(HomePages, takingAlongAndErasingHoldTogether) {
  pair();
  ASSERT_TRUE(program().engine->writeMessage("Thank you.").ok());
  program().app->show(Page::Settings);
  program().app->show(Page::TakeAlong);
  check(Page::TakeAlong);
  program().take_along->savePdf();
  check(Page::TakeAlong, "-busy");
  for (int i = 0; i < 1000 && program().take_along->busy(); ++i) settle(10);
  EXPECT_EQ(program().take_along->error().toStdString(), "");
  const QString folder = qEnvironmentVariable("NEWEL_SHOTS");
  if (!folder.isEmpty()) {
    QFile::copy(program().take_along->file(), folder + "/own-record-" + GetParam() + ".pdf");
  }
  scroll(5000);
  check(Page::TakeAlong, "-saved");
  program().parts.documents = nullptr;
  program().take_along->saveJson();
  check(Page::TakeAlong, "-error");
  program().app->show(Page::Erase);
  check(Page::Erase);
  scroll(5000);
  check(Page::Erase, "-end");
  click(QCoreApplication::translate("ErasePage", "Erase this phone …"));
  check(Page::Erase, "-asking");
  click(QCoreApplication::translate("ErasePage", "Yes, erase everything"));
  check(Page::Language, "-erased");
}

TEST_P(HomePages, lyingDownIsALongHoldInMinutes) {
  m_world.clinic().put(inventedProgramme(1, {"face-down-lying"}));
  m_world.pair();
  program().today->start();
  m_world.answerAllFine();
  program().practice->confirmSupportAndStart();
  while (program().player->resting()) m_world.pass(absl::Milliseconds(100));
  m_world.pass(absl::Seconds(3));
  check(Page::Practice, "-minutes");
}

INSTANTIATE_TEST_SUITE_P(Languages, HomePages, testing::ValuesIn(kWalkLanguages),
                         [](const auto& info) { return std::string(info.param); });

}  // namespace
}  // namespace newel::tests
