#include "qml/parts/theme.h"

#include <QtGui/QFont>
#include <QtGui/QFontDatabase>
#include <QtGui/QGuiApplication>
#include <QtGui/QPalette>
#include <QtGui/QScreen>
#include <algorithm>

namespace newel::parts {
namespace {

constexpr QLatin1StringView kOurFont("Noto Sans");

// What desktops and phones give plain text at their own 100 %: 11 points at 96 dots an inch.
constexpr double kSystemTextPx = 14.67;

// Counted here, not asked of QFontInfo: that loads a font of a size that nothing is written in.
double systemTextPx() {
  const QFont font = QGuiApplication::font();
  if (font.pixelSize() > 0) return font.pixelSize();
  const QScreen* const screen = QGuiApplication::primaryScreen();
  constexpr double kUsualDotsPerInch = 96, kPointsPerInch = 72;
  return font.pointSizeF() * (screen == nullptr ? kUsualDotsPerInch : screen->logicalDotsPerInchY()) /
         kPointsPerInch;
}

double systemScale() { return std::clamp(systemTextPx() / kSystemTextPx, 1.0, 2.0); }

}  // namespace

Theme::Theme(QObject* parent)
    : QObject(parent),
      m_system_dark(QGuiApplication::palette().color(QPalette::Window).lightness() < 128),
      m_dark(m_system_dark),
      m_system_scale(systemScale()) {}

void Theme::setDark(bool dark) {
  if (m_dark == dark) return;
  m_dark = dark;
  emit changed();
}

void Theme::setStrong(bool on) {
  if (m_strong == on) return;
  m_strong = on;
  emit changed();
}

void Theme::setTextPercent(int percent) {
  const int kept = std::clamp(percent, 100, 200);
  if (m_text_percent == kept) return;
  m_text_percent = kept;
  emit changed();
}

void Theme::showAt(int percent) {
  if (m_system_scale != 1) {
    m_system_scale = 1;
    emit changed();
  }
  setTextPercent(percent);
}

void Theme::setLessMotion(bool on) {
  if (m_less_motion == on) return;
  m_less_motion = on;
  emit changed();
}

double Theme::scale() const { return std::clamp(m_system_scale * m_text_percent / 100.0, 1.0, 2.0); }

void useOurFont() {
  QFont font = QGuiApplication::font();
  font.setFamilies({kOurFont, QStringLiteral("Noto Sans Arabic")});
  QGuiApplication::setFont(font);
}

bool ourFontIsThere() { return QFontDatabase::hasFamily(kOurFont); }

}  // namespace newel::parts
