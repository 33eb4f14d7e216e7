// Who sees no colours sees the same: whatever the theme tells apart by colour is told apart in grey pictures
// as well, by shape or by lightness. Each state is painted as it is on the screen, turned to grey by WCAG's
// relative luminance, and compared with every other one of its kind.
#include <gtest/gtest.h>

#include <QtQml/QQmlComponent>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickItem>

#include "qml/parts/palette.h"
#include "qml/parts/theme.h"
#include "tests/qml/parts/window_faults.h"

namespace newel::parts {
namespace {

// Of the pixels of a picture, so many must differ in lightness by so much, for two states to be two.
// 3:1 is what WCAG 2.2 SC 1.4.11 asks of shapes; the share is ours, no source.
constexpr double kLeastContrast = 3;
constexpr int kLeastPixels = 24;

struct Kind {
  const char* name;
  const char* scene;  // with STATE in it
  std::vector<const char*> states;
};

const std::vector<Kind>& kinds() {
  static const std::vector<Kind> kKinds = {
      {"what became of a day",
       "DayMark { width: 40; height: 40; most: 28; states: [STATE] }",
       {"", "0", "1", "2", "3", "4", "5"}},
      {"kinds of notice",
       "Notice { width: 300; kind: STATE; title: 'Words'; text: 'More words' }",
       {"Notice.Note", "Notice.New", "Notice.Attention", "Notice.Stop", "Notice.Good"}},
      {"a choice", "RadioRow { width: 300; text: 'Words'; checked: STATE }", {"true", "false"}},
      {"one of many",
       "ChoiceRow { width: 300; many: true; text: 'Words'; checked: STATE }",
       {"true", "false"}},
      {"a number chosen", "ScalePicker { width: 300; value: STATE }", {"-1", "3", "4"}},
      {"a post of the rail",
       "Rail { width: 40; height: 200; at: 1; posts: STATE }",
       {"[{treads: 9, done: 9}, {treads: 9, done: 0}]",
        "[{treads: 9, done: 0, leftOut: true}, {treads: 9, done: 0}]"}},
      {"how far along the rail",
       "Rail { width: 40; height: 200; at: STATE; posts: [{treads: 9, done: 0}, {treads: 9, done: 0}] }",
       {"0", "1", "2"}},
      {"pain and effort",
       "RatingChart { width: 300; height: 140; square: STATE; points: [{at: 0, value: 2}, {at: 1, value: 5, "
       "joined: true}] }",
       {"true", "false"}},
      {"a week with and without data",
       "WeekBars { width: 100; height: 40; weeks: [STATE] }",
       {"undefined", "0", "1"}},
      {"a button and what cannot be pressed",
       "PrimaryButton { width: 300; text: 'Words'; enabled: STATE }",
       {"true", "false"}},
      {"Stop and the main action",
       "Column { width: 300; StopButton { width: 300; visible: STATE } PrimaryButton { width: 300; visible: "
       "!STATE; text: 'Stop' } }",
       {"true", "false"}}};
  return kKinds;
}

class Greyscale : public testing::TestWithParam<std::tuple<bool, bool>> {
 protected:
  Greyscale() { m_engine.addImportPath(QStringLiteral("qrc:/qt/qml")); }

  QImage paint(const char* scene, const char* state) {
    QString words = QString::fromUtf8(scene);
    words.replace(QStringLiteral("STATE"), QString::fromUtf8(state));
    QQmlComponent component(&m_engine);
    component.setData(("import QtQuick\nimport Newel.Parts\nWindow { width: 320; height: 240; visible: true; "
                       "color: Theme.paper; Item { x: 8; y: 8; " +
                       words.toStdString() + " } }")
                          .c_str(),
                      QUrl());
    std::unique_ptr<QQuickWindow> window(qobject_cast<QQuickWindow*>(component.create()));
    EXPECT_NE(window, nullptr) << component.errorString().toStdString();
    if (window == nullptr) return {};
    Theme* const theme = m_engine.singletonInstance<Theme*>(qmlTypeId("Newel.Parts", 1, 0, "Theme"));
    theme->setDark(std::get<0>(GetParam()));
    theme->setStrong(std::get<1>(GetParam()));
    tests::settle(40);
    return window->grabWindow().convertToFormat(QImage::Format_RGB32);
  }

  static int pixelsApart(const QImage& a, const QImage& b) {
    int apart = 0;
    for (int y = 0; y < a.height(); ++y) {
      for (int x = 0; x < a.width(); ++x) {
        if (contrast(a.pixel(x, y) & 0xFFFFFF, b.pixel(x, y) & 0xFFFFFF) >= kLeastContrast) ++apart;
      }
    }
    return apart;
  }

  QQmlEngine m_engine;
};

TEST_P(Greyscale, everyStateIsTwoStatesWithoutColour) {
  for (const Kind& kind : kinds()) {
    std::vector<QImage> pictures;
    for (const char* state : kind.states) pictures.push_back(paint(kind.scene, state));
    for (std::size_t i = 0; i < pictures.size(); ++i) {
      for (std::size_t k = i + 1; k < pictures.size(); ++k) {
        EXPECT_GE(pixelsApart(pictures[i], pictures[k]), kLeastPixels)
            << kind.name << ": " << kind.states[i] << " and " << kind.states[k] << " look the same in grey";
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Themes, Greyscale, testing::Combine(testing::Bool(), testing::Bool()),
                         [](const auto& info) {
                           return std::string(std::get<0>(info.param) ? "dark" : "light") +
                                  (std::get<1>(info.param) ? "Strong" : "");
                         });

}  // namespace
}  // namespace newel::parts
