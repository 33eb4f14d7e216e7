// When a desk locks, on a clock that only the test moves; and that while it is locked no key does anything
// but what the cover asks for.
#include "qml/desk/desk_lock.h"

#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtGui/QMouseEvent>
#include <QtGui/QShortcutEvent>

#include "core/library/settings.h"
#include "qml/desk/idle_watch.h"

namespace newel::desk {
namespace {

class HandClock : public Clock {
 public:
  absl::Time wall() const override { return absl::FromUnixSeconds(1795600000) + m_elapsed; }
  absl::Duration elapsed() const override { return m_elapsed; }
  void advance(absl::Duration by) { m_elapsed += by; }

 private:
  absl::Duration m_elapsed = absl::Hours(1);
};

TEST(IdleWatch, isDueAfterTheLimitAndEveryTouchBeginsItAnew) {
  IdleWatch watch;
  const absl::Duration begun = absl::Hours(7);
  watch.begin(begun, absl::Minutes(5));
  EXPECT_FALSE(watch.due(begun));
  EXPECT_FALSE(watch.due(begun + absl::Minutes(5) - absl::Milliseconds(1)));
  EXPECT_TRUE(watch.due(begun + absl::Minutes(5)));
  EXPECT_TRUE(watch.used(begun + absl::Minutes(4)));
  EXPECT_FALSE(watch.due(begun + absl::Minutes(9) - absl::Milliseconds(1)));
  EXPECT_TRUE(watch.due(begun + absl::Minutes(9)));
}

// A laptop that was closed for the night: the first touch is whose nobody knows.
TEST(IdleWatch, aTouchAfterTheTimeWasOverComesTooLate) {
  IdleWatch watch;
  watch.begin(absl::ZeroDuration(), absl::Minutes(5));
  EXPECT_FALSE(watch.used(absl::Hours(9)));
  EXPECT_TRUE(watch.due(absl::Hours(9)));
}

// WCAG 2.2, SC 2.2.1: at least 20 seconds to go on with a simple action.
TEST(IdleWatch, warnsTwentySecondsBefore) {
  IdleWatch watch;
  watch.begin(absl::ZeroDuration(), absl::Minutes(1));
  EXPECT_FALSE(watch.warns(absl::Seconds(40) - absl::Milliseconds(1)));
  EXPECT_TRUE(watch.warns(absl::Seconds(40)));
  EXPECT_TRUE(watch.used(absl::Seconds(50)));
  EXPECT_FALSE(watch.warns(absl::Seconds(50)));
}

class DeskLockTest : public testing::Test {
 protected:
  DeskLockTest() {
    m_context.clock = &m_clock;
    m_context.catalogue = &Catalogue::builtIn();
    m_context.settings = usualSettings(Catalogue::builtIn());
    m_context.therapist.set_display_name("Terry Sample (invented)");
    m_lock = std::make_unique<DeskLock>(m_context);
    QObject::connect(m_lock.get(), &DeskLock::due, m_lock.get(), [this] { ++m_due; });
    QObject::connect(m_lock.get(), &DeskLock::stillUsed, m_lock.get(), [this] { ++m_told; });
    m_lock->watch({});
  }

  void pass(absl::Duration by) {
    m_clock.advance(by);
    m_lock->tick();
  }
  // As the window gets it.
  bool send(QEvent&& event) {
    QObject window;
    QCoreApplication::sendEvent(&window, &event);
    return event.isAccepted();
  }
  void key() { send(QKeyEvent(QEvent::KeyPress, Qt::Key_A, Qt::NoModifier, QStringLiteral("a"))); }
  void pointerAt(double x) {
    send(QMouseEvent(QEvent::MouseMove, {x, 5}, {x, 5}, Qt::NoButton, Qt::NoButton, Qt::NoModifier));
  }

  HandClock m_clock;
  DeskContext m_context;
  std::unique_ptr<DeskLock> m_lock;
  int m_due = 0;
  int m_told = 0;
};

TEST_F(DeskLockTest, afterFiveMinutesUnlessTheClinicSaysOtherwise) {
  pass(absl::Minutes(5) - absl::Seconds(1));
  EXPECT_EQ(m_due, 0);
  pass(absl::Seconds(1));
  EXPECT_EQ(m_due, 1);
  m_context.settings["desk-lock-minutes"] = 10;
  m_lock->watch({});
  pass(absl::Minutes(9));
  EXPECT_EQ(m_due, 1);
  m_context.settings["desk-lock-minutes"] = 8;
  m_lock->takeSettings();
  pass(absl::ZeroDuration());
  EXPECT_EQ(m_due, 2) << "a shorter time counts at once";
}

TEST_F(DeskLockTest, thisDeskMayLockSoonerAndNeverLater) {
  m_lock->setSooner(absl::Seconds(30));
  m_lock->watch({});
  pass(absl::Seconds(30));
  EXPECT_EQ(m_due, 1);
  m_lock->setSooner(absl::Hours(2));
  m_lock->watch({});
  pass(absl::Minutes(5));
  EXPECT_EQ(m_due, 2);
}

TEST_F(DeskLockTest, keysAndAPointerThatMovesAreATouch) {
  pass(absl::Minutes(4));
  key();
  pass(absl::Minutes(4));
  EXPECT_EQ(m_due, 0);
  pointerAt(10);
  pass(absl::Minutes(4));
  EXPECT_EQ(m_due, 0);
  pointerAt(10);  // reported again, and nobody moved it
  pass(absl::Minutes(1));
  EXPECT_EQ(m_due, 1);
}

TEST_F(DeskLockTest, theFirstTouchAfterASleepLocksInPlaceOfGoingOn) {
  m_clock.advance(absl::Hours(9));
  key();
  EXPECT_EQ(m_due, 1);
}

TEST_F(DeskLockTest, warnsWhileThereIsTimeAndATouchTakesTheWarningAway) {
  pass(absl::Minutes(4));
  EXPECT_EQ(m_lock->warning(), "");
  pass(absl::Seconds(43));
  EXPECT_EQ(m_lock->warning().toStdString(),
            "This desk locks in 17 s. Press a key or move the pointer to stay.");
  key();
  EXPECT_EQ(m_lock->warning(), "");
}

// The hub ends a session after half an hour without a call.
TEST_F(DeskLockTest, tellsTheHubWhileSomebodyWorksAndNotWhileNobodyDoes) {
  for (int minute = 0; minute < 20; ++minute) {
    key();
    pass(absl::Minutes(1));
  }
  EXPECT_EQ(m_told, 4);
  EXPECT_EQ(m_due, 0);
  m_told = 0;
  for (int i = 0; i < 4; ++i) pass(absl::Minutes(1));
  EXPECT_LE(m_told, 1) << "at most the last touch";
}

TEST_F(DeskLockTest, whileLockedNoShortcutOfACoveredPageGetsAKey) {
  const auto wanted = [this] {
    QKeyEvent event(QEvent::ShortcutOverride, Qt::Key_S, Qt::ControlModifier);
    event.ignore();
    QObject page;
    QCoreApplication::sendEvent(&page, &event);
    return event.isAccepted();  // the focus wants it, so no shortcut does
  };
  EXPECT_FALSE(wanted());
  m_lock->cover("");
  EXPECT_TRUE(wanted());
  pass(absl::Hours(1));
  key();
  EXPECT_EQ(m_due, 0) << "it is locked already";
  m_lock->end();
  EXPECT_FALSE(wanted());
  pass(absl::Hours(1));
  EXPECT_EQ(m_due, 0) << "nobody is signed in";
}

TEST_F(DeskLockTest, anEmptyPasswordIsNotSent) {
  m_lock->cover("Nobody touched it.");
  EXPECT_EQ(m_lock->who().toStdString(), "Terry Sample (invented)");
  m_lock->unlock("", "");  // there is no worker to send it with
  EXPECT_EQ(m_lock->attempt()->problem().toStdString(), "Type your password.");
}

TEST_F(DeskLockTest, aThrottledTryCountsDownOnTheClockThatNobodySets) {
  SignInTry attempt(m_context);
  ASSERT_TRUE(attempt.begin("x", ""));
  EXPECT_FALSE(attempt.mayTry()) << "one at a time";
  attempt.end(absl::ResourceExhaustedError("tried too often; wait 12 seconds"), "sign in");
  EXPECT_EQ(attempt.waitWords().toStdString(), "Too many tries. Wait 12 seconds, then try again.");
  EXPECT_FALSE(attempt.begin("x", ""));
  m_clock.advance(absl::Milliseconds(11500));
  EXPECT_EQ(attempt.secondsToWait(), 1);
  m_clock.advance(absl::Milliseconds(500));
  EXPECT_EQ(attempt.waitWords(), "");
  EXPECT_TRUE(attempt.begin("x", ""));
}

TEST_F(DeskLockTest, aCodeIsSixDigitsBeforeItIsSent) {
  SignInTry attempt(m_context);
  ASSERT_TRUE(attempt.begin("x", "12"));
  attempt.end(absl::PermissionDeniedError("code: the second factor's code is needed as well"), "sign in");
  EXPECT_TRUE(attempt.needsCode());
  for (const char* wrong : {"", "12345", "1234567", "12a456", "१२३४५६"})
    EXPECT_FALSE(attempt.begin("x", wrong));
  EXPECT_NE(attempt.codeProblem(), "");
  EXPECT_TRUE(attempt.begin("x", "123456"));
}

}  // namespace
}  // namespace newel::desk
