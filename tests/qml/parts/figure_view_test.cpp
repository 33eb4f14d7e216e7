// The figure on a screen: it follows the clock while it runs and can be seen, else it costs nothing; left
// stays left whatever way the language reads.
#include "qml/parts/figure_view.h"

#include <gtest/gtest.h>

#include <QtCore/QElapsedTimer>
#include <QtQml/QQmlComponent>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickWindow>

#include "core/library/catalogue.h"
#include "core/practice/compile.h"
#include "qml/parts/theme.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/parts/window_faults.h"

namespace newel::parts {
namespace {

constexpr char kScene[] = R"(
import QtQuick
import Newel.Parts
Window {
    width: 300; height: 300; visible: true; color: "white"
    property bool mirrored: false
    LayoutMirroring.enabled: mirrored
    LayoutMirroring.childrenInherit: true
    property FigureSource source: null
    FigurePane { objectName: "pane"; anchors.fill: parent; source: parent.Window.window.source }
})";

class OnScreen : public testing::Test {
 protected:
  void show(const std::string& exercise, const std::string& language = "en") {
    const v1::Person person = test::transfemoralLeft();
    const auto timeline =
        compileTimeline(test::entryOf(exercise, person), person, Catalogue::builtIn(), language);
    ASSERT_TRUE(timeline.ok()) << timeline.status();
    m_timeline = *timeline;
    m_source.setClock([this] { return m_ms; });
    m_source.show(figureOf(*timeline, person, {}));
    ASSERT_TRUE(m_source.there());
    open();
  }

  void open() {
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&m_engine);
    component.setData(kScene, QUrl());
    m_window.reset(qobject_cast<QQuickWindow*>(component.create()));
    ASSERT_NE(m_window, nullptr) << component.errorString().toStdString();
    m_window->setProperty("source", QVariant::fromValue(&m_source));
    m_view = m_window->findChild<FigureView*>();
    ASSERT_NE(m_view, nullptr);
    settle();
  }

  void settle(int ms = 60) { tests::settle(ms); }
  Theme* theme() { return m_engine.singletonInstance<Theme*>(qmlTypeId("Newel.Parts", 1, 0, "Theme")); }

  std::int64_t startOf(v1::BeatKind kind) const {
    for (const v1::Beat& beat : m_timeline.beats()) {
      if (beat.kind() == kind) return beat.start_ms();
    }
    ADD_FAILURE() << "no such beat";
    return 0;
  }

  std::int64_t m_ms = 0;
  v1::Timeline m_timeline;
  FigureSource m_source;
  QQmlEngine m_engine;
  std::unique_ptr<QQuickWindow> m_window;
  FigureView* m_view = nullptr;
};

TEST_F(OnScreen, followsTheClockWhileItRuns) {
  show("sit-to-stand");
  m_ms = startOf(v1::BEAT_KIND_MOVE);
  m_source.setMoving(true);
  EXPECT_TRUE(m_view->running());
  const int before = m_view->painted();
  for (int i = 0; i < 20; ++i) {
    m_ms += 40;
    settle(30);
  }
  EXPECT_GE(m_view->painted(), before + 15);
}

TEST_F(OnScreen, aHoldIsPaintedOnce) {
  show("sit-to-stand");
  m_ms = startOf(v1::BEAT_KIND_HOLD) + 10;
  m_source.setMoving(true);
  settle(100);
  const int before = m_view->painted();
  settle(200);
  EXPECT_LE(m_view->painted(), before + 12) << "the share of a hold moves on";
  const QImage now = m_window->grabWindow();
  m_ms += 500;
  settle(60);
  EXPECT_EQ(m_window->grabWindow(), now);
}

TEST_F(OnScreen, stopsWhenPausedOrOutOfSight) {
  show("sit-to-stand");
  m_ms = startOf(v1::BEAT_KIND_MOVE) + 500;
  m_source.setMoving(true);
  ASSERT_TRUE(m_view->running());
  m_source.setMoving(false);
  EXPECT_FALSE(m_view->running());
  m_source.setMoving(true);
  ASSERT_TRUE(m_view->running());
  m_view->parentItem()->setVisible(false);
  EXPECT_FALSE(m_view->running());
  settle();
  const int before = m_view->painted();
  m_ms += 700;
  settle(100);
  EXPECT_EQ(m_view->painted(), before);
  m_view->parentItem()->setVisible(true);
  EXPECT_TRUE(m_view->running());
  m_window->hide();
  EXPECT_FALSE(m_view->running());
}

TEST_F(OnScreen, lessMotionGoesFromPoseToPose) {
  show("sit-to-stand");
  theme()->setLessMotion(true);
  m_source.setMoving(true);
  const std::int64_t start = startOf(v1::BEAT_KIND_MOVE);
  int others = 0;
  QImage last;
  for (std::int64_t at = 0; at < 2900; at += 100) {
    m_ms = start + at;
    settle(25);
    const QImage now = m_window->grabWindow();
    if (now != last) ++others;
    last = now;
  }
  EXPECT_EQ(others, 3) << "start, half-way, end";
}

TEST_F(OnScreen, leftStaysLeftFromRightToLeft) {
  show("side-lying-hip-abduction", "ar");
  m_ms = startOf(v1::BEAT_KIND_MOVE) + 800;
  m_source.jumped();
  settle();
  const QImage one = m_window->grabWindow();
  m_window->setProperty("mirrored", true);
  settle();
  EXPECT_EQ(m_window->grabWindow(), one);
}

TEST_F(OnScreen, isToldInWords) {
  show("weight-shift-side");
  QObject* const pane = m_window->findChild<QObject*>(QStringLiteral("pane"));
  ASSERT_NE(pane, nullptr);
  m_ms = startOf(v1::BEAT_KIND_MOVE) + 800;
  m_source.jumped();
  EXPECT_TRUE(m_source.words().contains(QStringLiteral("Movement"))) << m_source.words().toStdString();
  const QString before = m_source.words();
  m_ms = startOf(v1::BEAT_KIND_HOLD) + 100;
  m_source.jumped();
  EXPECT_NE(m_source.words(), before);
}

TEST_F(OnScreen, darkIsDrawnOnDark) {
  show("sit-to-stand");
  const QImage light = m_window->grabWindow();
  theme()->setDark(true);
  settle();
  const QImage dark = m_window->grabWindow();
  EXPECT_LT(QColor(dark.pixel(8, 8)).lightness(), 80);
  EXPECT_GT(QColor(light.pixel(8, 8)).lightness(), 200);
}

TEST_F(OnScreen, anExerciseWithoutADrawingShowsNothing) {
  show("sit-to-stand");
  FigureAsked asked;
  asked.exercise_id = "own-of-a-clinic";
  m_source.show(asked);
  EXPECT_FALSE(m_source.there());
  EXPECT_EQ(m_source.words(), QString());
  settle();
  EXPECT_FALSE(m_view->running());
}

TEST_F(OnScreen, aTimelineGoesRoundAndRound) {
  show("walking-programme");
  const std::int64_t start = startOf(v1::BEAT_KIND_HOLD);
  const double round_ms = ClipBook::builtIn().find("walking-programme")->scenes(0).phases(0).round_s() * 1000;
  m_ms = start + static_cast<std::int64_t>(round_ms * 2.25);
  const Moment a = m_source.momentNow(false);
  m_ms = start + 60000 - 60000 % static_cast<std::int64_t>(round_ms) +
         static_cast<std::int64_t>(round_ms * 1.25);
  const Moment b = m_source.momentNow(false);
  EXPECT_NEAR(a.fraction, b.fraction, 0.01) << "a round does not begin anew with a minute";
  EXPECT_FALSE(a.first_run);
}

}  // namespace
}  // namespace newel::parts
