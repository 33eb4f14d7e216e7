// A whole practice with the keyboard alone: every page is left by keys that a person without a pointer has,
// and each new page begins at its title.
#include <gtest/gtest.h>

#include <QtGui/QAccessible>
#include <QtQuick/QQuickItem>
#include <algorithm>

#include "core/safety/rule_book.h"
#include "qml/parts/driver.h"
#include "tests/qml/home/page_walk.h"

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;

class Keyboard : public PageWalk {
 protected:
  Keyboard() { begin("en"); }

  static bool shielded(const QQuickItem* item) {
    if (!item->isVisible()) return false;
    if (item->objectName() == "shield") return true;
    const QList<QQuickItem*> children = item->childItems();
    return std::any_of(children.begin(), children.end(), shielded);
  }
  void key(const char* name) {
    parts::Driver driver(m_window, [] { return QJsonObject(); });
    driver.run(QStringLiteral("key ") + name);
    settle(5);
  }
  QString focusedName() const {
    QQuickItem* const item = m_window->activeFocusItem();
    return item == nullptr ? QString() : parts::Driver::nameOf(item);
  }
  QAccessible::Role focusedRole() const {
    QAccessibleInterface* const face = QAccessible::queryAccessibleInterface(m_window->activeFocusItem());
    return face == nullptr ? QAccessible::NoRole : face->role();
  }
  // Tabs until what has the focus begins with `name`, at most once round the page.
  void tabTo(const QString& name) {
    for (int i = 0; i < 60; ++i) {
      if (focusedName().startsWith(name)) return;
      key("Tab");
    }
    FAIL() << "no way by Tab to " << name.toStdString() << " on " << program().app->pageName().toStdString();
  }
  void press(const QString& name) {
    // The shield against a trembling hand's second tap.
    for (int i = 0; i < 60 && shielded(m_window->contentItem()); ++i) settle(10);
    tabTo(name);
    if (!HasFatalFailure()) key("Return");
  }
  void beginsAtTitle(Page page) {
    settle();
    ASSERT_EQ(m_world.page(), page) << program().app->pageName().toStdString();
    EXPECT_EQ(focusedRole(), QAccessible::Heading) << program().app->pageName().toStdString();
    EXPECT_FALSE(focusedName().isEmpty());
  }
};

TEST_F(Keyboard, leadsFromTheFirstRunThroughAWholePractice) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  for (const Page page : {Page::Language, Page::TextSize, Page::SoundCheck}) {
    beginsAtTitle(page);
    press("Next");
  }
  beginsAtTitle(Page::Pair);
  tabTo("Address of the clinic");
  for (const QChar c : QStringLiteral("clinic.example:7443")) key(QString(c).toUtf8().constData());
  tabTo("Code");
  for (const QChar c : QStringLiteral("abcd2345")) key(QString(c).toUtf8().constData());
  press("Connect");
  while (program().pair->busy()) settle(10);
  beginsAtTitle(Page::Paired);
  press("Yes, the same");
  m_world.sync();
  beginsAtTitle(Page::AskReminders);
  press("No reminders");
  press("Next");
  beginsAtTitle(Page::Calls);
  press("Next");
  beginsAtTitle(Page::About);
  press("I have read this");
  beginsAtTitle(Page::Today);
  press("Start");
  for (int i = 0; i < 10 && m_world.page() == Page::Question; ++i) {
    beginsAtTitle(Page::Question);
    for (const v1::ReadyChoice& choice : program().session->run()->question()->choices()) {
      if (choice.fine()) press(QString::fromStdString(wordsOf(choice, "en")));
    }
    press("Next");
  }
  beginsAtTitle(Page::Pain);
  press("1");
  press("Next");
  beginsAtTitle(Page::GetReady);
  press("Support is there");
  beginsAtTitle(Page::Practice);
  press("Pause");
  EXPECT_TRUE(program().player->paused());
  press("Go on, slower");
  EXPECT_FALSE(program().player->paused());
  ASSERT_TRUE(m_world.passUntilPageChanges());
  beginsAtTitle(Page::Rating);
  press("1");
  press("Next");
  beginsAtTitle(Page::Rating);
  press("3");
  press("Next");
  beginsAtTitle(Page::Close);
  press("Back to today");
  beginsAtTitle(Page::Today);
  EXPECT_EQ(program().engine->practices().size(), 1U);
}

// One of several is a radio button to a screen reader, any of several a check box; Qt has its own mind about
// it.
TEST_F(Keyboard, choicesAreWhatTheyAreToAScreenReader) {
  parts::Driver driver(m_window, [] { return QJsonObject(); });
  const auto role = [&driver](const char* name) {
    return QAccessible::queryAccessibleInterface(driver.find(QString::fromUtf8(name)).first())->role();
  };
  EXPECT_EQ(role("English"), QAccessible::RadioButton);
  program().first_run->next();
  settle();
  EXPECT_EQ(role("More contrast"), QAccessible::CheckBox);
}

TEST_F(Keyboard, stopsAPracticeAndSaysWhy) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  m_world.pair();
  program().today->start();
  m_world.answerAllFine();
  program().practice->confirmSupportAndStart();
  settle();
  press("Stop");
  beginsAtTitle(Page::WhatHappened);
  press("Tired");
  EXPECT_NE(m_world.page(), Page::WhatHappened);
}

// The page for the eyes counts every second; a screen reader hears of it at most once in ten.
TEST_F(Keyboard, aCountdownIsAnnouncedAtMostOnceInTenSeconds) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  m_world.pair();
  program().today->start();
  m_world.answerAllFine();
  program().practice->confirmSupportAndStart();
  settle();
  std::vector<absl::Duration> told;
  int seen = 0;
  QObject::connect(program().player.get(), &home::PlayerModel::countSaidChanged, m_window,
                   [&] { told.push_back(m_world.clock().elapsed()); });
  QString number;
  for (int i = 0; i < 900 && m_world.page() == Page::Practice; ++i) {
    m_world.pass(absl::Milliseconds(100));
    if (program().player->number() != number) ++seen;
    number = program().player->number();
  }
  EXPECT_GT(seen, 10);
  ASSERT_GE(told.size(), 2U);
  for (std::size_t i = 1; i < told.size(); ++i) EXPECT_GE(told[i] - told[i - 1], absl::Seconds(10));
}

}  // namespace
}  // namespace newel::tests
