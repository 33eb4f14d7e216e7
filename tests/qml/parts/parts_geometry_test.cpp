// The shared controls and the practice screen at every size, scale and theme: nothing cut off, covered, too
// small or nameless.
#include <gtest/gtest.h>

#include <QtQml/QQmlComponent>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickItem>

#include "qml/parts/theme.h"
#include "tests/qml/parts/window_faults.h"

namespace newel::parts {
namespace {

constexpr char kControls[] = R"(
import QtQuick
import Newel.Parts
Window {
    width: 360; height: 640; visible: true
    PageFrame {
        anchors.fill: parent
        title: "A long title that takes two lines or more"
        over: "Wednesday, November 25, 2026"
        canGoBack: true
        banner: "Test clock: the date is shifted"
        Notice { width: parent.width; kind: Notice.Stop; title: "Stop: Ruth Adler put all practice on hold"; text: "Your skin needs rest." }
        Notice { width: parent.width; kind: Notice.New; title: "New"; text: "Stairs now with one hand." }
        TextEntry { width: parent.width; label: "Address of the clinic"; help: "For example clinic.example:7443"; error: "This is not an address." }
        RadioRow { width: parent.width; text: "Sudden weak arm, leg or face, or trouble with speech"; help: "Call for help first" }
        ChoiceRow { width: parent.width; many: true; text: "Say the cues aloud"; checked: true }
        NumberStepper { label: "Repetitions"; value: 8; to: 60; unit: "times" }
        ScalePicker { width: parent.width; label: "Pain"; lowWords: "no pain"; highWords: "the worst you can think of"; value: 4 }
        WeekBars { width: parent.width; weeks: [0.5, undefined, 1, 0] ; Accessible.role: Accessible.Graphic; Accessible.name: "Weeks" }
        SecondaryButton { width: parent.width; text: "Leave this exercise out of the practice" }
        actions: [ PrimaryButton { width: parent.width; text: "My hands hold on: start" }, SecondaryButton { width: parent.width; text: "Close it" } ]
    }
})";

constexpr char kPractice[] = R"(
import QtQuick
import Newel.Parts
Window {
    width: 360; height: 640; visible: true
    property alias facts: facts
    PracticeView {
        anchors.fill: parent
        facts: PracticeFacts {
            id: facts
            entryNumber: 3; entryCount: 6
            title: "Stairs, one step at a time"
            cue: "Up: put your right foot on the next step, push, and bring your left foot to the same step."
            next: "Then: bring the left foot to the same step"
            number: "12"; numberOf: "of 12 steps"; setWords: "round 2 of 3"; sideWords: "right leg, sound limb"
            fraction: 0.4
            soundNote: "This phone has no sound just now: read the words."
            posts: [{treads: 30, done: 30}, {treads: 60, done: 60}, {treads: 144, done: 44}, {treads: 20, done: 0}, {treads: 9, done: 0, leftOut: true}, {treads: 9, done: 0}]
            at: 2
        }
    }
})";

struct Look {
  int width, height, percent;
  bool dark;
};

class PartsGeometry : public testing::TestWithParam<Look> {
 protected:
  std::unique_ptr<QQuickWindow> load(const char* scene) {
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QObject::connect(&m_engine, &QQmlEngine::warnings, [this](const QList<QQmlError>& errors) {
      for (const QQmlError& error : errors) m_warnings.push_back(error.toString().toStdString());
    });
    QQmlComponent component(&m_engine);
    component.setData(scene, QUrl());
    std::unique_ptr<QQuickWindow> window(qobject_cast<QQuickWindow*>(component.create()));
    EXPECT_NE(window, nullptr) << component.errorString().toStdString();
    Theme* const theme = m_engine.singletonInstance<Theme*>(qmlTypeId("Newel.Parts", 1, 0, "Theme"));
    theme->setDark(GetParam().dark);
    theme->setTextPercent(GetParam().percent);
    window->resize(GetParam().width, GetParam().height);
    tests::settle();
    return window;
  }
  void expectNoFaults(QQuickWindow& window) {
    tests::settle();
    for (const std::string& fault : tests::faultsOf(window)) ADD_FAILURE() << fault;
    for (const std::string& warning : m_warnings) ADD_FAILURE() << warning;
  }

  QQmlEngine m_engine;
  std::vector<std::string> m_warnings;
};

TEST_P(PartsGeometry, controlsHoldTogether) {
  const auto window = load(kControls);
  ASSERT_NE(window, nullptr);
  expectNoFaults(*window);
}

TEST_P(PartsGeometry, practiceScreenHoldsTogether) {
  const auto window = load(kPractice);
  ASSERT_NE(window, nullptr);
  QObject* const facts = window->property("facts").value<QObject*>();
  ASSERT_NE(facts, nullptr);
  expectNoFaults(*window);
  // A rest, with its two buttons.
  facts->setProperty("canLengthen", true);
  facts->setProperty("canGoNow", true);
  facts->setProperty("resting", true);
  facts->setProperty("numberOf", "seconds of rest");
  expectNoFaults(*window);
  // Waiting for a tap.
  facts->setProperty("canLengthen", false);
  facts->setProperty("canGoNow", false);
  facts->setProperty("resting", false);
  facts->setProperty("waiting", true);
  expectNoFaults(*window);
  facts->setProperty("waiting", false);
  facts->setProperty("paused", true);
  expectNoFaults(*window);
}

INSTANTIATE_TEST_SUITE_P(Looks, PartsGeometry,
                         testing::Values(Look{360, 640, 100, false}, Look{360, 640, 200, false},
                                         Look{360, 640, 100, true}, Look{360, 640, 200, true},
                                         Look{412, 915, 100, false}, Look{412, 915, 200, false},
                                         Look{412, 915, 100, true}, Look{412, 915, 200, true},
                                         Look{640, 360, 100, false}, Look{800, 1280, 150, false}),
                         [](const testing::TestParamInfo<Look>& info) {
                           const Look& look = info.param;
                           return std::to_string(look.width) + "x" + std::to_string(look.height) + "at" +
                                  std::to_string(look.percent) + (look.dark ? "dark" : "light");
                         });

}  // namespace
}  // namespace newel::parts
