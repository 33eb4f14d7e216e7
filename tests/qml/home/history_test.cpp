// How it goes: what the page says of a week, of five years and of nothing, and what that costs.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QElapsedTimer>
#include <QtCore/QLocale>

#include "core/progress/adherence.h"
#include "qml/home/place_words.h"
#include "qml/home/screen_language.h"
#include "tests/qml/home/home_world.h"
#include "tests/qml/home/past_practices.h"

namespace newel::tests {
namespace {

using State = OccasionResult::State;
using testing::HasSubstr;

class History : public testing::Test {
 protected:
  History() {
    m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));  // every day of November 2026
    m_world.pair();
  }
  ~History() override {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    home::ScreenLanguage().use("en");
  }
  home::HistoryModel& history() { return *m_world.program().history; }
  QVariantMap week(int newest_first) { return history().weeks().at(newest_first).toMap(); }
  std::vector<int> statesOf(const QVariantMap& week) {
    std::vector<int> states;
    for (const QVariant& day : week["states"].toList()) {
      const QVariantList marks = day.toList();
      states.push_back(marks.isEmpty() ? -1 : marks.first().toInt());
    }
    return states;
  }
  HomeWorld m_world;
};

TEST_F(History, aPhoneThatWasConnectedTodayKnowsNothingOfTheDaysBefore) {
  history().shown();
  EXPECT_TRUE(history().empty()) << "nothing is known of what was due";
  EXPECT_EQ(history().weeks().size(), 1) << "no rows of dots for weeks before the phone";
  const auto none = static_cast<int>(State::NoData);
  const auto coming = static_cast<int>(State::Coming);
  // Monday 23 and Tuesday 24 November before the phone came; today is Wednesday.
  EXPECT_EQ(statesOf(week(0)), (std::vector<int>{none, none, coming, coming, coming, coming, coming}));
  EXPECT_THAT(week(0)["words"].toString().toStdString(), HasSubstr("not known: 2"));
  EXPECT_THAT(history().painWords().toStdString(), HasSubstr("No number"));
}

TEST_F(History, aWeekSaysTheSameInSignsAndInWords) {
  keepPastPractices(m_world, 10);
  history().shown();
  const auto done = static_cast<int>(State::Done);
  const auto part = static_cast<int>(State::Part);
  const auto missed = static_cast<int>(State::NotDone);
  // 16 to 22 November are 9 to 3 days ago: 4 in part (number % 6 == 4), 3 left out (back % 7 == 3).
  EXPECT_EQ(statesOf(week(1)), (std::vector<int>{done, done, done, done, done, part, missed}));
  const std::string words = week(1)["words"].toString().toStdString();
  EXPECT_THAT(words, HasSubstr("done: 5"));
  EXPECT_THAT(words, HasSubstr("in part: 1"));
  EXPECT_THAT(words, HasSubstr("not done: 1"));
  EXPECT_THAT(history().painWords().toStdString(), HasSubstr("Between 0 and 4"));
  EXPECT_EQ(history().pain().size(), 8) << "of ten days two were left out";
}

TEST_F(History, daysUnderAHoldOrderAreExcused) {
  keepPastPractices(m_world, 10);
  m_world.clinic().put(m_world.clinic().holdOrder("Rest today."));
  m_world.sync();
  history().shown();
  EXPECT_EQ(statesOf(week(0))[2], static_cast<int>(State::Excused));
}

TEST_F(History, theWeekBeginsWhereThePlaceSaysItDoes) {
  history().shown();
  EXPECT_EQ(history().dayNames().size(), 7);
  EXPECT_EQ(history().dayNames().first(), "M");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
  history().shown();
  EXPECT_EQ(history().dayNames().first(), "S");
  EXPECT_THAT(week(0)["title"].toString().toStdString(), HasSubstr("Nov 22"));
  QLocale::setDefault(QLocale(QLocale::Arabic, QLocale::Egypt));
  history().shown();
  EXPECT_THAT(week(0)["title"].toString().toStdString(), HasSubstr("٢١")) << "Saturday 21 November";
}

// CLDR 42 (as in ICU 72): d–d MMM, MMM d – d, d–d de MMM.
TEST_F(History, spansOfDaysAreWrittenTheWayOfThePlace) {
  const absl::CivilDay first(2026, 11, 23);
  const absl::CivilDay last(2026, 11, 29);
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  EXPECT_EQ(home::spanWords(first, last).toStdString(), "23–29 Nov");
  QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Spain));
  EXPECT_THAT(home::spanWords(first, last).toStdString(), HasSubstr("23–29 nov"));
  QLocale::setDefault(QLocale(QLocale::Arabic, QLocale::Egypt));
  EXPECT_THAT(home::spanWords(first, last).toStdString(), HasSubstr("نوفمبر"));
}

// Five years, one practice a day: the page reads its six weeks alone, and one can leaf back to the first.
TEST_F(History, fiveYearsAreLeafedThroughSixWeeksAtATime) {
  v1::Programme programme = inventedProgramme(2, {"sit-to-stand"});
  programme.set_effective_day("2021-11-25");
  m_world.clinic().put(programme);
  m_world.sync();
  keepPastPractices(m_world, 5 * 365);
  history().shown();
  QElapsedTimer timer;
  timer.start();
  history().shown();
  const qint64 years = timer.nsecsElapsed();
  int pages = 1;
  while (history().hasEarlier() && pages < 60) {
    history().earlier();
    ++pages;
    EXPECT_FALSE(history().empty());
  }
  EXPECT_EQ(pages, 44);  // 5 x 365 days are 260.7 weeks, 43.5 pages of six, the present week among them
  EXPECT_FALSE(history().hasEarlier());
  while (history().hasLater()) history().later();
  EXPECT_FALSE(history().hasLater());
  // Reading all would be 1,800 records; the page's own are at most 45.
  timer.start();
  const auto all = m_world.program().engine->practices();
  const qint64 whole = timer.nsecsElapsed();
  EXPECT_GT(all.size(), 1500U);
  RecordProperty("page_us", static_cast<int>(years / 1000));
  RecordProperty("everything_us", static_cast<int>(whole / 1000));
  EXPECT_LT(years, whole) << "the page costs more than reading everything";
}

}  // namespace
}  // namespace newel::tests
