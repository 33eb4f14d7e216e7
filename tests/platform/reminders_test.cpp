// Reminders over a real session bus of this test's own, with a notification service of this test's own on it
// that writes down what came. By the Desktop Notifications Specification 1.2: methods GetCapabilities, Notify
// and CloseNotification, signals ActionInvoked and NotificationClosed.
#include "platform/reminders.h"

#include <absl/time/clock.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QElapsedTimer>
#include <QtCore/QFile>
#include <QtCore/QTemporaryDir>
#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMessage>
#include <functional>

#include "platform/linux/wall_alarm.h"
#include "tests/platform/notification_service.h"

namespace newel::platform {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const ReminderWords kWords{"Newel", "You asked for a reminder now.", "Open", "Later"};

class RealClock : public Clock {
 public:
  absl::Time wall() const override { return absl::Now() + offset; }
  absl::Duration elapsed() const override { return absl::Now() - absl::UnixEpoch(); }
  absl::Duration offset = absl::ZeroDuration();
};

bool until(const std::function<bool()>& true_now, int limit_ms = 5000) {
  QElapsedTimer since;
  since.start();
  while (!true_now() && since.elapsed() < limit_ms)
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  return true_now();
}

void settle(int ms = 150) {
  until([] { return false; }, ms);
}

class Heard : public ReminderListener {
 public:
  void reminderShown(const std::string& id, absl::Time) override { said.push_back("shown " + id); }
  void reminderOpened(const std::string& id) override { said.push_back("opened " + id); }
  void reminderLater(const std::string& id) override { said.push_back("later " + id); }
  void reminderDismissed(const std::string& id) override { said.push_back("dismissed " + id); }
  void reminderPermissionChanged() override { ++permissions; }
  void clockOrZoneChanged() override { ++clocks; }
  std::vector<std::string> said;
  int permissions = 0;
  int clocks = 0;
};

class DesktopReminders : public testing::Test {
 protected:
  DesktopReminders() {
    EXPECT_TRUE(m_zone.isValid());
    EXPECT_TRUE(QFile::link(QStringLiteral("/usr/share/zoneinfo/Europe/Berlin"), zoneFile()));
    m_reminders = makeReminders(m_clock, "Newel", zoneFile().toStdString());
    m_reminders->setListener(&m_heard);
  }
  ~DesktopReminders() override {
    if (m_reminders != nullptr) m_reminders->setListener(nullptr);
  }

  QString zoneFile() const { return m_zone.filePath(QStringLiteral("localtime")); }
  void granted() {
    m_reminders->ask();
    ASSERT_TRUE(until([this] { return m_reminders->permission() == ReminderPermission::Granted; }));
  }
  Reminder in(const std::string& id, absl::Duration time) { return {id, m_clock.wall() + time}; }
  bool shown(std::size_t count) {
    return until([this, count] { return m_service.shown().size() >= count; }) && until([this, count] {
             return std::count_if(m_heard.said.begin(), m_heard.said.end(), [](const std::string& line) {
                      return line.rfind("shown", 0) == 0;
                    }) >= static_cast<std::ptrdiff_t>(count);
           });
  }

  QTemporaryDir m_zone;
  RealClock m_clock;
  NotificationService m_service;
  Heard m_heard;
  std::unique_ptr<Reminders> m_reminders;
};

TEST_F(DesktopReminders, areShownAtTheirTimeWithNeutralWordsAndTwoActions) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", absl::Milliseconds(300))}, kWords);
  settle(150);
  EXPECT_THAT(m_service.shown(), IsEmpty()) << "not before its time";
  ASSERT_TRUE(shown(1));
  const auto& came = m_service.shown()[0];
  EXPECT_EQ(came.app, QStringLiteral("Newel"));
  EXPECT_EQ(came.title, QStringLiteral("Newel"));
  EXPECT_EQ(came.text, QStringLiteral("You asked for a reminder now."));
  EXPECT_EQ(came.actions, (QStringList{"default", "Open", "later", "Later"}));
  EXPECT_THAT(m_heard.said, ElementsAre("shown a"));
}

TEST_F(DesktopReminders, aServiceWithoutActionsIsGivenNone) {
  m_service.setCapabilities({QStringLiteral("body")});
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", absl::ZeroDuration())}, kWords);
  ASSERT_TRUE(shown(1));
  EXPECT_TRUE(m_service.shown()[0].actions.isEmpty());
}

TEST_F(DesktopReminders, whatThePersonDoesComesBack) {
  ASSERT_TRUE(m_service.start());
  granted();
  const auto showOne = [this](const char* id, std::size_t count) {
    m_reminders->arm({in(id, absl::ZeroDuration())}, kWords);
    ASSERT_TRUE(shown(count));
    m_heard.said.clear();
  };
  m_reminders->arm({in("opened", absl::ZeroDuration())}, kWords);
  ASSERT_TRUE(shown(1));
  m_heard.said.clear();
  m_service.act(m_service.shown()[0].number, QStringLiteral("default"));
  EXPECT_TRUE(until([this] { return !m_heard.said.empty(); }));
  EXPECT_THAT(m_heard.said, ElementsAre("opened opened"));
  m_heard.said = {"shown"};
  showOne("snoozed", 2);
  m_service.act(m_service.shown()[1].number, QStringLiteral("later"));
  EXPECT_TRUE(until([this] { return !m_heard.said.empty(); }));
  EXPECT_THAT(m_heard.said, ElementsAre("later snoozed"));
  m_heard.said = {"shown", "shown"};
  showOne("put away", 3);
  m_service.close(m_service.shown()[2].number, 2);
  EXPECT_TRUE(until([this] { return !m_heard.said.empty(); }));
  EXPECT_THAT(m_heard.said, ElementsAre("dismissed put away"));
  m_heard.said = {"shown", "shown", "shown"};
  showOne("ran out", 4);
  m_service.close(m_service.shown()[3].number, 1);
  settle();
  EXPECT_THAT(m_heard.said, IsEmpty()) << "one that ran out is no answer";
}

TEST_F(DesktopReminders, aPressOnSomebodyElsesNotificationIsNotOurs) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", absl::ZeroDuration())}, kWords);
  ASSERT_TRUE(shown(1));
  m_heard.said.clear();
  m_service.act(m_service.shown()[0].number + 1000, QStringLiteral("default"));
  m_service.close(m_service.shown()[0].number + 1000, 2);
  settle();
  EXPECT_THAT(m_heard.said, IsEmpty());
}

TEST_F(DesktopReminders, anewArmedListTakesThePlaceOfTheOldOne) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("old", absl::Milliseconds(200))}, kWords);
  m_reminders->arm({in("new", absl::Milliseconds(250)), in("second", absl::Hours(1))}, kWords);
  ASSERT_TRUE(shown(1));
  settle();
  EXPECT_THAT(m_heard.said, ElementsAre("shown new"));
}

TEST_F(DesktopReminders, clearedOnesGoFromTheScreenAndFromTheList) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", absl::ZeroDuration()), in("b", absl::Milliseconds(200))}, kWords);
  ASSERT_TRUE(shown(1));
  m_reminders->clear("b");
  m_reminders->clear("a");
  m_reminders->clear("never there");
  EXPECT_TRUE(until([this] { return !m_service.closed().empty(); }));
  EXPECT_THAT(m_service.closed(), ElementsAre(m_service.shown()[0].number));
  settle(300);
  EXPECT_EQ(m_service.shown().size(), 1U);
}

TEST_F(DesktopReminders, oneTakesThePlaceOfTheOtherOnTheScreen) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", absl::ZeroDuration()), in("b", absl::Milliseconds(300))}, kWords);
  ASSERT_TRUE(shown(2));
  EXPECT_EQ(m_service.shown()[0].replaces, 0U);
  EXPECT_EQ(m_service.shown()[1].replaces, m_service.shown()[0].number);
  m_reminders->clearAll();
  EXPECT_TRUE(until([this] { return !m_service.closed().empty(); }));
}

TEST_F(DesktopReminders, noneStaysOnTheScreenWhenTheProgramEnds) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", absl::ZeroDuration())}, kWords);
  ASSERT_TRUE(shown(1));
  m_reminders.reset();
  EXPECT_TRUE(until([this] { return !m_service.closed().empty(); }));
}

TEST_F(DesktopReminders, withoutAServiceItIsSaidAndAServiceThatComesIsFound) {
  m_reminders->ask();
  EXPECT_TRUE(until([this] { return m_reminders->permission() == ReminderPermission::None; }));
  m_reminders->arm({in("a", absl::ZeroDuration())}, kWords);
  settle();
  EXPECT_THAT(m_heard.said, IsEmpty()) << "what was not shown is not said to be";
  ASSERT_TRUE(m_service.start());
  EXPECT_TRUE(until([this] { return m_reminders->permission() == ReminderPermission::Granted; }));
  m_reminders->arm({in("a", absl::ZeroDuration())}, kWords);
  EXPECT_TRUE(shown(1));
  m_service.stop();
  EXPECT_TRUE(until([this] { return m_reminders->permission() == ReminderPermission::None; }));
  EXPECT_GE(m_heard.permissions, 3);
}

TEST_F(DesktopReminders, anotherZoneIsNoticed) {
  ASSERT_TRUE(QFile::link(QStringLiteral("/usr/share/zoneinfo/Asia/Tokyo"), zoneFile() + ".new"));
  settle();
  EXPECT_EQ(m_heard.clocks, 0) << "another file in that folder is nothing";
  ASSERT_EQ(rename((zoneFile() + ".new").toUtf8().constData(), zoneFile().toUtf8().constData()), 0);
  EXPECT_TRUE(until([this] { return m_heard.clocks == 1; }));
}

// The machine slept across the instants: not a heap of old ones, but the question what is still to be shown.
TEST_F(DesktopReminders, whatPiledUpInASleepIsAskedForAnew) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_reminders->arm({in("a", -absl::Hours(3)), in("b", -absl::Hours(1))}, kWords);
  EXPECT_TRUE(until([this] { return m_heard.clocks == 1; }));
  settle();
  EXPECT_THAT(m_service.shown(), IsEmpty());
}

TEST_F(DesktopReminders, countByTheProgramsClockThoughItIsShifted) {
  ASSERT_TRUE(m_service.start());
  granted();
  m_clock.offset = absl::Hours(24 * 30);
  m_reminders->arm({in("a", absl::Milliseconds(200))}, kWords);
  EXPECT_TRUE(shown(1));
}

TEST(WallAlarmRule, waitsWithoutAWakeUpAndComesOnce) {
  RealClock clock;
  WallAlarm alarm(clock);
  int due = 0;
  QObject::connect(&alarm, &WallAlarm::due, &alarm, [&due] { ++due; });
  alarm.wakeAt(clock.wall() + absl::Milliseconds(250));
  settle(150);
  EXPECT_EQ(due, 0);
  EXPECT_TRUE(until([&due] { return due == 1; }));
  settle(200);
  EXPECT_EQ(due, 1);
  alarm.wakeAt(clock.wall() - absl::Hours(1));
  EXPECT_TRUE(until([&due] { return due == 2; })) << "an instant that is over is due at once";
  alarm.wakeAt(clock.wall() + absl::Milliseconds(100));
  alarm.wakeAt(absl::InfiniteFuture());
  settle(250);
  EXPECT_EQ(due, 2) << "nothing is waited for";
}

}  // namespace
}  // namespace newel::platform

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  const QCoreApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
