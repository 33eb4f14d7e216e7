// Every page of the phone, in a real window over a real engine, at every size, scale and theme: nothing cut
// off, covered, too small to press or nameless, no warning, and the title has the focus. With
// NEWEL_SHOTS=<folder> in the environment it keeps a picture of each, to be looked at.
#include <gtest/gtest.h>

#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QMetaEnum>
#include <QtQml/QQmlApplicationEngine>
#include <QtQml/QQmlExtensionPlugin>
#include <QtQuick/QQuickItem>
#include <QtQuick/QQuickWindow>
#include <algorithm>

#include "qml/home/screen_language.h"
#include "qml/parts/driver.h"
#include "qml/parts/theme.h"
#include "tests/qml/home/home_world.h"
#include "tests/qml/home/media_entry.h"

Q_IMPORT_QML_PLUGIN(Newel_HomePlugin)

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;

struct Look {
  int width, height, percent;
  bool dark;
  const char* language = "en";
};

std::string nameOf(const Look& look) {
  return std::to_string(look.width) + "x" + std::to_string(look.height) + "at" +
         std::to_string(look.percent) + (look.dark ? "dark" : "light") +
         (std::string(look.language) == "en" ? "" : look.language);
}

class HomePages : public testing::TestWithParam<Look> {
 protected:
  HomePages() {
    m_language.use(GetParam().language);
    inventedLanguage() = GetParam().language;
    HomeProgram& program = m_world.program();
    load();
    program.settings->setTextPercent(GetParam().percent);
    program.settings->setLook(GetParam().dark ? home::SettingsModel::Look::Dark
                                              : home::SettingsModel::Look::Light);
    settle();
  }

  void load() {
    m_engine = std::make_unique<QQmlApplicationEngine>();
    QObject::connect(m_engine.get(), &QQmlApplicationEngine::warnings,
                     [this](const QList<QQmlError>& errors) {
                       for (const QQmlError& error : errors)
                         m_warnings.push_back(error.toString().toStdString());
                     });
    m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine->setInitialProperties({{QStringLiteral("models"), QVariant::fromValue(&program().models)}});
    m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Home/Main.qml")));
    if (m_engine->rootObjects().isEmpty()) return;
    m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
    m_window->resize(GetParam().width, GetParam().height);
    settle();
  }

  void killAndRestart() {
    m_window = nullptr;
    m_engine.reset();
    m_world.killAndRestart();
    load();
  }

  HomeProgram& program() { return m_world.program(); }

  void check(Page page, const char* variant = "") {
    ASSERT_NE(m_window, nullptr);
    ASSERT_EQ(m_world.page(), page);
    settle();
    const std::string where = program().app->pageName().toStdString() + variant;
    for (const std::string& fault : faultsOf(*m_window)) ADD_FAILURE() << where << ": " << fault;
    for (const std::string& warning : m_warnings) ADD_FAILURE() << where << ": " << warning;
    m_warnings.clear();
    keepPicture(where);
  }

  void keepPicture(const std::string& name) {
    const QString folder = qEnvironmentVariable("NEWEL_SHOTS");
    if (folder.isEmpty()) return;
    const QString place = folder + "/" + QString::fromStdString(nameOf(GetParam()));
    QDir().mkpath(place);
    EXPECT_TRUE(m_window->grabWindow().save(place + "/" + QString::fromStdString(name) + ".png"));
  }

  void scroll(double content_y) {
    QList<QQuickItem*> items = {m_window->contentItem()};
    while (!items.isEmpty()) {
      QQuickItem* const item = items.takeFirst();
      if (item->inherits("QQuickFlickable")) {
        const double end = item->property("contentHeight").toDouble() - item->height();
        item->setProperty("contentY", std::clamp(content_y, 0.0, std::max(0.0, end)));
      }
      items << item->childItems();
    }
  }

  // Presses what has these words, found in the window as a person finds it.
  void click(const char* context, const char* words) {
    parts::Driver driver(m_window, [] { return QJsonObject(); });
    QString answer;
    QObject::connect(&driver, &parts::Driver::answered, &driver,
                     [&answer](const QString& text) { answer = text; });
    driver.run(QStringLiteral("click \"%1\"").arg(QCoreApplication::translate(context, words)));
    for (int i = 0; i < 200 && answer.isEmpty(); ++i) settle(20);
    EXPECT_EQ(answer.toStdString(), "ok") << words;
  }

  void pair() {
    m_world.clinic().put(inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time", "face-down-lying"}));
    m_world.pair();
  }

  ~HomePages() override {
    home::ScreenLanguage().use("en");
    inventedLanguage() = "en";
  }

  home::ScreenLanguage m_language;
  HomeWorld m_world;
  std::unique_ptr<QQmlApplicationEngine> m_engine;
  QQuickWindow* m_window = nullptr;
  std::vector<std::string> m_warnings;
};

TEST_P(HomePages, fromPairingToTodayHoldTogether) {
  check(Page::Pair);
  program().pair->pairTyped("nowhere", "x");
  check(Page::Pair, "-errors");
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
       {QStringLiteral("refuse"), QStringLiteral("Do not use Newel here")}});
  auto* const theme = engine.singletonInstance<parts::Theme*>(qmlTypeId("Newel.Parts", 1, 0, "Theme"));
  theme->setDark(GetParam().dark);
  theme->setTextPercent(GetParam().percent);
  engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Home/TroubleWindow.qml")));
  ASSERT_FALSE(engine.rootObjects().isEmpty());
  auto* const window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
  window->resize(GetParam().width, GetParam().height);
  settle();
  for (const std::string& fault : faultsOf(*window)) ADD_FAILURE() << fault;
  QQuickWindow* const before = m_window;
  m_window = window;
  keepPicture("Trouble");
  m_window = before;
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
    if (m_world.page() == Page::Question) check(Page::Question, ("-" + std::to_string(round + 2)).c_str());
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
  parts::Driver driver(m_window, [] { return QJsonObject(); });
  const auto click = [&driver](const char* name) {
    QString answer;
    QObject::connect(&driver, &parts::Driver::answered, &driver,
                     [&answer](const QString& text) { answer = text; });
    driver.run(QStringLiteral("click ") + name);
    for (int i = 0; i < 200 && answer.isEmpty(); ++i) settle(20);
    driver.disconnect();
    EXPECT_EQ(answer.toStdString(), "ok") << name;
  };
  click("1");
  click(QCoreApplication::translate("RatingPage", "Next").toUtf8().constData());
  check(Page::Rating, "-effort");
  click("3");
  click(QCoreApplication::translate("RatingPage", "Next").toUtf8().constData());
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
    QFile::copy(program().take_along->file(),
                folder + "/" + QString::fromStdString(nameOf(GetParam())) + "/own-record.pdf");
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
  click("ErasePage", "Erase this phone …");
  check(Page::Erase, "-asking");
  click("ErasePage", "Yes, erase everything");
  check(Page::Pair, "-erased");
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

INSTANTIATE_TEST_SUITE_P(Looks, HomePages,
                         testing::Values(Look{360, 640, 100, false}, Look{360, 640, 200, false},
                                         Look{360, 640, 100, true}, Look{360, 640, 200, true},
                                         Look{412, 915, 100, false}, Look{412, 915, 200, false},
                                         Look{412, 915, 100, true}, Look{412, 915, 200, true},
                                         Look{360, 640, 200, false, "es"}, Look{412, 915, 100, false, "es"},
                                         Look{360, 640, 100, false, "ar"}, Look{360, 640, 200, true, "ar"}),
                         [](const testing::TestParamInfo<Look>& info) { return nameOf(info.param); });

}  // namespace
}  // namespace newel::tests
