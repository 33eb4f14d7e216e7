// The phone's own window over a HomeWorld, looked at page by page. Each page that a test comes by is laid out
// anew at size after size and judged there; colours change no layout, which is proved on every page, so the
// themes are not multiplied with the rest.
//
//   each of 4 languages: 5 sizes x 100, 150, 200 %                              15 layouts of each page
//   and there: dark, light, strong dark, strong light at one size                the layout stays the same
#pragma once

#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QLocale>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlApplicationEngine>
#include <QtQuick/QQuickWindow>
#include <memory>
#include <string>
#include <vector>

#include "qml/home/screen_language.h"
#include "qml/parts/theme.h"
#include "tests/qml/home/home_world.h"
#include "tests/qml/home/pseudo_language.h"

namespace newel::tests {

inline constexpr const char* kWalkLanguages[] = {"en", "es", "ar", "pseudo"};

struct PageSize {
  int width, height;
};
// Phones upright and on their side, a tablet.
inline constexpr PageSize kPageSizes[] = {{360, 640}, {412, 915}, {640, 360}, {915, 412}, {800, 1280}};

class PageWalk : public testing::Test {
 protected:
  PageWalk() = default;
  ~PageWalk() override;

  // Opens the window in `language` ("pseudo": longer English).
  void begin(const std::string& language);
  void load();
  void killAndRestart();
  HomeProgram& program() { return m_world.program(); }

  // Judges the page in front, which must be `page`, as told above.
  void check(home::AppModel::Page page, const std::string& variant = "");
  // A picture of the window as it is, under NEWEL_SHOTS; nothing without it.
  void keepPicture(QQuickWindow& window, const std::string& folder, const std::string& name) const;
  void judge(QQuickWindow& window, const std::string& where) const;  // as it is
  void scroll(double content_y);
  void pair();  // with three exercises
  void click(const QString& name);

  std::string m_language_name;
  home::ScreenLanguage m_language;
  std::unique_ptr<PseudoLanguage> m_pseudo;
  HomeWorld m_world;
  std::unique_ptr<QQmlApplicationEngine> m_engine;
  QQuickWindow* m_window = nullptr;
  std::vector<std::string> m_warnings;

 private:
  void layOut(const PageSize& size, int percent);
  void checkThemes(const std::string& where);
  // In Arabic every number is in that language's digits: the kind of mistake is %1 where %L1 belongs.
  void checkDigits(const std::string& where) const;
  // `full`: words as long as they are in English or letters as small as they get: then the figure is there.
  void checkPractice(const std::string& where, bool full);
};

}  // namespace newel::tests
