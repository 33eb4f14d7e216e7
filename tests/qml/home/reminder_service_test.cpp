// Reminders on the phone, from the store to what the system is told, with the system's side played by the
// test.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/schedule/reminder_book.h"
#include "tests/qml/home/home_world.h"

namespace newel::tests {
namespace {

using home::AppModel;
using testing::HasSubstr;
using testing::IsEmpty;

// The bench stands at 10:00 in Berlin; windows are made for that.
v1::Programme withWindows(std::uint32_t number, const std::vector<std::pair<int, int>>& windows) {
  v1::Programme programme = inventedProgramme(number, {"sit-to-stand"});
  v1::Schedule& schedule = *programme.mutable_entries(0)->mutable_schedule();
  schedule.clear_windows();
  for (const auto& [from, to] : windows) {
    v1::Window& window = *schedule.add_windows();
    window.set_from_min(static_cast<std::uint32_t>(from));
    window.set_to_min(static_cast<std::uint32_t>(to));
  }
  return programme;
}

class Reminding : public testing::Test {
 protected:
  void begin(const std::vector<std::pair<int, int>>& windows = {{660, 780}, {1020, 1140}}) {
    m_world.clinic().put(withWindows(1, windows));
    m_world.pair();
    program().reminder_service->rebuild();
  }
  void beginOn() {
    begin();
    program().reminder_model->setOn(true);
    ASSERT_FALSE(armed().empty());
  }
  HomeProgram& program() { return m_world.program(); }
  platform::RecordedReminders& system() { return program().reminders; }
  const std::vector<platform::Reminder>& armed() { return system().armed(); }
  // The clock goes on to the next reminder, and it is shown.
  std::string showNext() {
    const platform::Reminder next = armed().front();
    m_world.clock().advance(next.at - m_world.clock().wall());
    EXPECT_EQ(system().showUntil(m_world.clock().wall()), 1);
    program().reminder_service->rebuild();
    return next.id;
  }

  HomeWorld m_world;
};

TEST_F(Reminding, nothingIsArmedOrAskedForUntilThePersonSaysYes) {
  begin();
  EXPECT_THAT(armed(), IsEmpty());
  EXPECT_EQ(system().asked(), 0) << "the system's own question comes after ours";
  EXPECT_FALSE(program().reminder_model->asked());
  EXPECT_EQ(program().reminder_model->state().toStdString(), "No reminders.");
  program().reminder_model->setOn(true);
  EXPECT_EQ(system().asked(), 1);
  EXPECT_TRUE(program().reminder_model->asked());
  ASSERT_GE(armed().size(), 2U);
  EXPECT_EQ(armed()[0].id, "2026-11-25/0660-0780");
  EXPECT_THAT(program().reminder_model->next().toStdString(), HasSubstr("today at 11:00"));
  program().reminder_model->setOn(false);
  EXPECT_THAT(armed(), IsEmpty());
}

TEST_F(Reminding, theWordsSayNothingAboutThePerson) {
  beginOn();
  const platform::ReminderWords& words = system().words();
  EXPECT_EQ(words.title, "Newel");
  for (const std::string& text : {words.title, words.text, words.open, words.later}) {
    EXPECT_FALSE(text.empty());
    for (const char* telling :
         {"xercise", "ractice", "imb", "leg", "pain", "linic", "rosthe", "health", "herap", "Sit", "walk"}) {
      EXPECT_EQ(text.find(telling), std::string::npos) << text;
    }
  }
}

TEST_F(Reminding, whatThePersonChoseAndAnsweredSurvivesARestart) {
  beginOn();
  program().reminder_model->setTime(0, 720);
  program().reminder_model->setQuietFrom(20 * 60);
  program().reminder_model->setSnooze(40);
  const std::string id = showNext();
  EXPECT_EQ(id, "2026-11-25/0660-0780");
  m_world.killAndRestart();
  EXPECT_TRUE(program().reminder_model->on());
  EXPECT_EQ(program().reminder_model->quietFrom(), 20 * 60);
  EXPECT_EQ(program().reminder_model->snooze(), 40);
  EXPECT_EQ(program().reminder_model->windows()[0].toMap()["minute"].toInt(), 720);
  ASSERT_FALSE(armed().empty()) << "made anew at the start";
  EXPECT_EQ(armed()[0].id, "2026-11-25/1020-1140") << "what was shown is not shown again";
}

TEST_F(Reminding, aNewProgrammeAndAHoldOrderChangeTheListWithTheNextContact) {
  beginOn();
  m_world.clinic().put(withWindows(2, {{720, 840}}));
  m_world.sync();
  settle(400);
  EXPECT_EQ(armed()[0].id, "2026-11-25/0720-0840");
  const std::string id = showNext();
  EXPECT_TRUE(system().onScreen().contains(id));
  m_world.clinic().put(m_world.clinic().holdOrder("Your skin needs rest."));
  m_world.sync();
  settle(400);
  EXPECT_THAT(armed(), IsEmpty());
  EXPECT_THAT(system().onScreen(), IsEmpty()) << "the one on the screen goes, too";
}

TEST_F(Reminding, aPracticeIsNotDisturbedAndWhatItDidIsNotRemindedOf) {
  begin({{0, 1440}});
  program().reminder_model->setQuietTo(10 * 60 + 30);
  program().reminder_model->setOn(true);
  EXPECT_EQ(armed()[0].id, "2026-11-25/0000-1440");
  program().today->start();
  EXPECT_THAT(armed(), IsEmpty()) << "nothing comes while it runs";
  m_world.answerAllFine();
  program().practice->confirmSupportAndStart();
  ASSERT_TRUE(m_world.passUntilPageChanges());
  program().practice->rate(2, 4);
  program().app->leavePractice();
  ASSERT_FALSE(armed().empty());
  EXPECT_EQ(armed()[0].id, "2026-11-26/0000-1440");
}

TEST_F(Reminding, laterOpenedAndDismissedAreKeptAndHaveTheirEffect) {
  beginOn();
  const std::string first = showNext();
  system().later(first);
  ASSERT_FALSE(armed().empty());
  EXPECT_EQ(armed()[0].id, first + "+");
  EXPECT_EQ(armed()[0].at, m_world.clock().wall() + absl::Minutes(30));
  const std::string second = showNext();
  int asked = 0;
  QObject::connect(program().reminder_service.get(), &home::ReminderService::openAsked,
                   program().reminder_service.get(), [&asked] { ++asked; });
  system().open(second);
  EXPECT_EQ(asked, 1);
  const std::string third = showNext();
  system().dismiss(third);
  const v1::ReminderBook book = program().engine->reminderBook();
  ASSERT_EQ(book.shown_size(), 3);
  EXPECT_EQ(book.shown(0).answer(), v1::REMINDER_ANSWER_LATER);
  EXPECT_EQ(book.shown(1).answer(), v1::REMINDER_ANSWER_OPENED);
  EXPECT_EQ(book.shown(2).answer(), v1::REMINDER_ANSWER_DISMISSED);
}

TEST_F(Reminding, threeUnansweredBecomeOneADayUntilNewelIsOpened) {
  beginOn();
  for (int i = 0; i < 3; ++i) showNext();
  EXPECT_EQ(unansweredInARow(program().engine->reminderBook()), 3);
  std::set<std::string> days;
  for (const auto& each : armed()) EXPECT_TRUE(days.insert(each.id.substr(0, 10)).second) << each.id;
  program().reminder_service->opened();
  program().reminder_service->rebuild();
  EXPECT_EQ(unansweredInARow(program().engine->reminderBook()), 0);
  EXPECT_EQ(armed()[0].id, "2026-11-26/1020-1140") << "the second of its day, as before";
}

TEST_F(Reminding, anotherZoneAndAnotherClockMakeTheListAnew) {
  beginOn();
  program().zone = "Asia/Tokyo";  // 18:00 there: the second window is open, and the first over
  system().changeClockOrZone();
  EXPECT_EQ(armed()[0].id, "2026-11-26/0660-0780") << "Newel was opened a moment ago";
  program().zone = "Europe/London";
  system().changeClockOrZone();
  EXPECT_EQ(armed()[0].at, m_world.clock().wall() + absl::Hours(2)) << "11:00 there";
  m_world.clock().setWall(m_world.clock().wall() + absl::Hours(24));
  system().changeClockOrZone();
  EXPECT_EQ(armed()[0].id.substr(0, 10), "2026-11-26");
}

TEST_F(Reminding, whatCannotBeShownIsSaidAndTodayGoesOn) {
  for (const auto permission : {platform::ReminderPermission::Refused, platform::ReminderPermission::None}) {
    HomeWorld world;
    world.clinic().put(withWindows(1, {{660, 780}}));
    world.pair();
    world.program().reminders.answerAskingWith(permission);
    world.program().reminder_model->setOn(true);
    EXPECT_THAT(world.program().reminder_model->problem().toStdString(),
                HasSubstr("always on the page for today"));
    EXPECT_EQ(world.program().reminder_model->state(), world.program().reminder_model->problem());
    EXPECT_EQ(world.program().today->dueCount(), 1);
    EXPECT_TRUE(world.program().today->mayStart());
    world.program().reminders.setPermission(platform::ReminderPermission::Granted);
    EXPECT_EQ(world.program().reminder_model->problem().toStdString(), "");
  }
}

TEST_F(Reminding, quietHoursAreExplainedAtEachWindow) {
  v1::Programme programme = withWindows(1, {{0, 1440}});
  *programme.add_entries() = withWindows(1, {{1260, 1380}}).entries(0);
  programme.mutable_entries(1)->set_id("019ab000-0000-7000-8000-000000000299");
  m_world.clinic().put(programme);
  m_world.pair();
  program().reminder_model->setOn(true);
  const QVariantList windows = program().reminder_model->windows();
  ASSERT_EQ(windows.size(), 2);
  EXPECT_THAT(windows[0].toMap()["words"].toString().toStdString(), HasSubstr("any time of day"));
  EXPECT_EQ(windows[0].toMap()["time"].toString().toStdString(), "08:00") << "when the quiet hours end";
  EXPECT_EQ(windows[0].toMap()["from"].toInt(), 480) << "nothing quieter can be chosen";
  EXPECT_EQ(windows[0].toMap()["to"].toInt(), 540);
  EXPECT_THAT(windows[1].toMap()["note"].toString().toStdString(), HasSubstr("no reminder here"));
}

TEST_F(Reminding, anErasedOrRevokedPhoneRemindsOfNothing) {
  beginOn();
  showNext();
  program().settings->erase();
  EXPECT_THAT(armed(), IsEmpty());
  EXPECT_THAT(system().onScreen(), IsEmpty());
  EXPECT_FALSE(program().reminder_model->asked()) << "the next person is asked anew";
  EXPECT_EQ(program().engine->reminderBook().shown_size(), 0);
}

// Where the timers are the program's own, it stays, and comes again after log-in; only while it is wanted.
TEST_F(Reminding, theProgramStaysAndComesBackAfterLogInOnlyWhileWanted) {
  begin();
  EXPECT_THAT(program().resident.command(), IsEmpty());
  EXPECT_EQ(program().reminder_model->reach().toStdString(), "") << "nothing comes at all";
  program().reminder_model->setOn(true);
  EXPECT_THAT(program().resident.command(), testing::ElementsAre("newel-home", "--reminders-only"));
  EXPECT_THAT(program().reminder_model->reach().toStdString(), HasSubstr("window of Newel is closed"));
  program().reminder_model->setOn(false);
  EXPECT_THAT(program().resident.command(), IsEmpty());
  program().reminder_model->setOn(true);
  program().settings->erase();
  EXPECT_THAT(program().resident.command(), IsEmpty());
}

TEST_F(Reminding, whereItCannotComeBackItIsSaid) {
  begin();
  program().resident.breakWriting();
  program().reminder_model->setOn(true);
  EXPECT_FALSE(program().reminder_service->comeWhenClosed());
  EXPECT_THAT(program().reminder_model->reach().toStdString(), HasSubstr("only while Newel is open"));
}

// On the disk nothing of it can be read, and a record that no longer passes is forgotten rather than
// believed.
TEST_F(Reminding, theEngineRefusesWhatIsNoBook) {
  begin();
  v1::ReminderBook book;
  EXPECT_TRUE(absl::IsInvalidArgument(program().engine->keepReminderBook(book)));
  *book.mutable_settings() = usualReminderSettings();
  book.mutable_settings()->set_quiet_from_min(5000);
  EXPECT_TRUE(absl::IsInvalidArgument(program().engine->keepReminderBook(book)));
  EXPECT_EQ(program().engine->reminderBook().settings().quiet_from_min(), 21U * 60);
}

}  // namespace
}  // namespace newel::tests
