// The driver's grammar, on a real window with the shared controls.
#include "qml/parts/driver.h"

#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QJsonDocument>
#include <QtCore/QJsonObject>
#include <QtGui/QMouseEvent>
#include <QtQml/QQmlComponent>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickItem>

#include "tests/qml/parts/window_faults.h"

namespace newel::parts {
namespace {

constexpr char kScene[] = R"(
import QtQuick
import Newel.Parts
Window {
    id: window
    width: 360; height: 640; visible: true
    property int pressed: 0
    property int stopped: 0
    PageFrame {
        anchors.fill: parent
        title: "A page"
        Column {
            width: parent.width
            TextEntry { width: parent.width; label: "Given name" }
            Item { width: 1; height: 900 }
            SecondaryButton { objectName: "far"; text: "Far down"; onClicked: window.pressed += 1 }
            ChoiceRow { width: parent.width; many: true; text: "Voice" }
            SecondaryButton { text: "Off"; enabled: false }
        }
        actions: StopButton { width: parent.width; onStopPressed: window.stopped += 1 }
    }
})";

class DriverTest : public testing::Test {
 protected:
  DriverTest() {
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&m_engine);
    component.setData(kScene, QUrl());
    m_window.reset(qobject_cast<QQuickWindow*>(component.create()));
    EXPECT_NE(m_window, nullptr) << component.errorString().toStdString();
    m_driver = std::make_unique<Driver>(m_window.get(), [this] { return m_state; });
    QObject::connect(m_driver.get(), &Driver::answered, [this](const QString& text) { m_answer = text; });
    tests::settle();
  }

  std::string run(const char* line, int wait_ms = 2000) {
    m_answer.clear();
    m_driver->run(QString::fromUtf8(line));
    for (int waited = 0; m_answer.isEmpty() && waited < wait_ms; waited += 20) tests::settle(20);
    return m_answer.toStdString();
  }

  QQmlEngine m_engine;
  std::unique_ptr<QQuickWindow> m_window;
  std::unique_ptr<Driver> m_driver;
  QJsonObject m_state{{"page", "A"}};
  QString m_answer;
};

TEST_F(DriverTest, clickScrollsToTheControlAndPressesIt) {
  EXPECT_EQ(run("click \"Far down\""), "ok");
  EXPECT_EQ(m_window->property("pressed").toInt(), 1);
}

TEST_F(DriverTest, stopActsOnPress) {
  EXPECT_EQ(run("press Stop"), "ok");
  EXPECT_EQ(m_window->property("stopped").toInt(), 1);
  tests::settle(100);
  EXPECT_EQ(m_window->property("stopped").toInt(), 1);
}

TEST_F(DriverTest, stopActsOnceForAFullClickAndForTheKeyboard) {
  EXPECT_EQ(run("click Stop"), "ok");
  EXPECT_EQ(m_window->property("stopped").toInt(), 1);
  EXPECT_EQ(run("key Space"), "ok");
  EXPECT_EQ(m_window->property("stopped").toInt(), 2);
  EXPECT_EQ(run("key Return"), "ok");
  EXPECT_EQ(m_window->property("stopped").toInt(), 3);
}

TEST_F(DriverTest, typeReplacesTheText) {
  EXPECT_EQ(run("type \"Given name\" \"Ana \\\"B\\\" 1-2\""), "ok");
  EXPECT_EQ(run("type \"Given name\" \"Zoë, x@y:7\""), "ok");
  const std::string read = run("read \"Given name\"");
  EXPECT_NE(read.find("Zoë, x@y:7\""), std::string::npos) << read;
  EXPECT_EQ(read.find("Ana"), std::string::npos) << read;
}

TEST_F(DriverTest, errorsSayWhatIsWrong) {
  EXPECT_EQ(run("click Nowhere"), "error nothing visible is named Nowhere");
  EXPECT_EQ(run("click Off"), "error disabled: Off");
  EXPECT_EQ(run("click \"Off"), "error a quote is left open");
  EXPECT_EQ(run("jump"), "error unknown command jump");
  EXPECT_EQ(run("key Hyper"), "error no such key: Hyper");
  EXPECT_EQ(run("wait Nowhere 60"), "error waited in vain: wait Nowhere");
}

TEST_F(DriverTest, waitsForStateAndForNames) {
  EXPECT_EQ(run("wait \"Far*\" 100"), "ok");
  EXPECT_EQ(run("gone Nowhere 100"), "ok");
  EXPECT_EQ(run("until page A 100"), "ok");
  EXPECT_EQ(run("until page B 60"), "error waited in vain: page B");
  EXPECT_EQ(run("state"), "ok {\"page\":\"A\"}");
}

TEST_F(DriverTest, theWheelMovesWhatScrollsAndSaysHowSmoothly) {
  QList<QQuickItem*> items = {m_window->contentItem()};
  QQuickItem* page = nullptr;
  for (; page == nullptr && !items.isEmpty(); items.removeFirst()) {
    if (items.first()->inherits("QQuickFlickable")) page = items.first();
    items << items.first()->childItems();
  }
  ASSERT_NE(page, nullptr);
  const std::string moved = run("turn \"Given name\" 2", 5000);
  EXPECT_EQ(moved.rfind("ok ", 0), 0U) << moved;
  EXPECT_GT(std::stod(moved.substr(3)), 0);
  EXPECT_GT(page->property("contentY").toDouble(), 0);
}

TEST_F(DriverTest, checkboxTellsItsState) {
  EXPECT_EQ(run("click Voice"), "ok");
  EXPECT_NE(run("read Voice").find("\"checked\":true"), std::string::npos);
}

TEST_F(DriverTest, shotKeepsThePicture) {
  const tests::TempFolder folder;
  const std::string file = folder.path() + "/deep/page.png";
  EXPECT_EQ(run(("shot " + file).c_str()), "ok");
  const QImage picture(QString::fromStdString(file));
  EXPECT_EQ(picture.size(), QSize(360, 640));
}

// A second tap of a trembling hand lands on a page that nobody has seen yet.
TEST_F(DriverTest, pressRightAfterAPageOpensIsTakenByItsShield) {
  QQuickItem* const shield = m_window->findChild<QQuickItem*>("shield");
  ASSERT_NE(shield, nullptr);
  QMetaObject::invokeMethod(shield, "raise");
  EXPECT_TRUE(shield->isVisible());
  const QPointF at(180, 600);
  QMouseEvent press(QEvent::MouseButtonPress, at, at, Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(m_window.get(), &press);
  QMouseEvent release(QEvent::MouseButtonRelease, at, at, Qt::LeftButton, Qt::NoButton, Qt::NoModifier);
  QCoreApplication::sendEvent(m_window.get(), &release);
  EXPECT_EQ(m_window->property("stopped").toInt(), 0);
  tests::settle(500);
  EXPECT_FALSE(shield->isVisible());
  QCoreApplication::sendEvent(m_window.get(), &press);
  QCoreApplication::sendEvent(m_window.get(), &release);
  EXPECT_EQ(m_window->property("stopped").toInt(), 1);
}

TEST_F(DriverTest, titleHasTheFocusWhenAPageOpens) {
  EXPECT_NE(run("read \"A page\"").find("\"focused\":true"), std::string::npos);
}

}  // namespace
}  // namespace newel::parts
