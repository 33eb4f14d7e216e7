// The first run: one thing a page, kept at every step, done once, and open again later.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/qml/home/home_world.h"

namespace newel::tests {
namespace {

using home::AppModel;
using home::FirstRunModel;
using Page = AppModel::Page;
using Step = FirstRunModel::Step;
using testing::HasSubstr;

class FirstRun : public testing::Test {
 protected:
  HomeProgram& program() { return m_world.program(); }
  void goTo(Page page) {
    for (int i = 0; i < 8 && m_world.page() != page; ++i) {
      if (m_world.page() == Page::Pair) {
        pairTyped();
      } else {
        program().first_run->next();
      }
    }
    ASSERT_EQ(m_world.page(), page);
  }
  void pairTyped() {
    program().pair->pairTyped("clinic.example:7443", "abcd-2345");
    while (program().pair->busy()) settle(10);
    ASSERT_EQ(m_world.page(), Page::Paired);
    program().app->back();
    ASSERT_EQ(m_world.page(), Page::AskReminders);
  }
  HomeWorld m_world;
};

TEST_F(FirstRun, leadsThroughEveryStepToToday) {
  std::vector<Page> pages;
  for (int i = 0; i < 9 && m_world.page() != Page::Today; ++i) {
    pages.push_back(m_world.page());
    if (m_world.page() == Page::Pair) {
      pairTyped();
    } else {
      program().first_run->next();
    }
  }
  EXPECT_EQ(pages, (std::vector<Page>{Page::Language, Page::TextSize, Page::SoundCheck, Page::Pair,
                                      Page::AskReminders, Page::Calls, Page::About}));
  EXPECT_EQ(m_world.page(), Page::Today);
}

TEST_F(FirstRun, leftAnywhereItGoesOnThereAndDoneItStaysDone) {
  const Page way[] = {Page::Language,     Page::TextSize, Page::SoundCheck, Page::Pair,
                      Page::AskReminders, Page::Calls,    Page::About,      Page::Today};
  for (const Page page : way) {
    goTo(page);
    m_world.killAndRestart();
    EXPECT_EQ(m_world.page(), page);
  }
  EXPECT_FALSE(program().first_run->running());
}

// The phone dies between the clinic's answer and the keeping of the step.
TEST_F(FirstRun, aPairingThatJustWorkedIsNotAskedForAgain) {
  goTo(Page::Pair);
  m_world.pair();
  m_world.killAndRestart();
  EXPECT_EQ(m_world.page(), Page::AskReminders);
}

TEST_F(FirstRun, backGoesOneStepBackButNeverToASpentCode) {
  goTo(Page::SoundCheck);
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::TextSize);
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::Language);
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::Language);
  EXPECT_FALSE(program().first_run->canGoBack());
  goTo(Page::AskReminders);
  EXPECT_FALSE(program().first_run->canGoBack());
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::AskReminders);
}

TEST_F(FirstRun, pairingCannotBePassedOver) {
  goTo(Page::Pair);
  program().first_run->next();
  EXPECT_EQ(m_world.page(), Page::Pair);
}

TEST_F(FirstRun, aPhoneThatWasSetUpBeforeThereWereStepsIsLeftAlone) {
  m_world.pair();
  m_world.killAndRestart();
  EXPECT_EQ(m_world.page(), Page::Today);
}

TEST_F(FirstRun, itsPagesAreOpenLaterAndLeadBackToSettings) {
  m_world.pair();
  for (const Page page :
       {Page::Language, Page::TextSize, Page::SoundCheck, Page::AskReminders, Page::Calls, Page::About}) {
    program().app->show(Page::Settings);
    program().app->show(page);
    EXPECT_EQ(m_world.page(), page);
    program().app->back();
    EXPECT_EQ(m_world.page(), Page::Settings);
    program().app->back();
    EXPECT_EQ(m_world.page(), Page::Today);
  }
}

TEST_F(FirstRun, remindersAreNotWantedBeforeTheAnswerAndTheAnswerIsKept) {
  EXPECT_FALSE(program().reminder_model->asked());
  EXPECT_FALSE(program().reminder_model->on());
  program().reminder_model->setOn(false);
  EXPECT_TRUE(program().reminder_model->asked());
  m_world.killAndRestart();
  EXPECT_TRUE(program().reminder_model->asked());
  EXPECT_FALSE(program().reminder_model->on());
}

TEST_F(FirstRun, theSampleSentenceIsSpokenInTheLanguageChosen) {
  program().settings->saySample("Stand up slowly.");
  EXPECT_THAT(program().speech.said(), testing::ElementsAre("Stand up slowly."));
  program().settings->setLanguage("es");  // this bench has an English voice alone
  program().settings->saySample("Ponte de pie despacio.");
  EXPECT_EQ(program().speech.said().size(), 1U);
  EXPECT_THAT(program().settings->voiceNote().toStdString(), HasSubstr("no voice for your language"));
}

TEST_F(FirstRun, theSoundCheckGivesToneAndVoice) {
  program().settings->tryVoice();
  EXPECT_EQ(program().tones.played().size(), 1U);
  EXPECT_EQ(program().speech.said().size(), 1U);
}

// What was chosen on the phone counts for screens, exercises and voice alike; nothing chosen: the record.
TEST_F(FirstRun, theLanguageChosenHereComesBeforeTheRecords) {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  m_world.pair();
  const auto title = [this] { return program().programme->entries().first().toMap()["title"].toString(); };
  const QString english = title();
  program().settings->setLanguage("es");
  EXPECT_NE(title(), english);
  EXPECT_EQ(program().first_run->language(), "es");
  program().today->start();
  EXPECT_EQ(program().session->input().language, "es");
}

TEST_F(FirstRun, everyLanguageIsOfferedByItsOwnName) {
  QStringList names;
  for (const QVariant& row : program().first_run->languages()) names << row.toMap()["name"].toString();
  EXPECT_EQ(names, (QStringList{"English", QString::fromUtf8("العربية"), QString::fromUtf8("Español")}));
}

}  // namespace
}  // namespace newel::tests
