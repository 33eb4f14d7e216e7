#include "qml/parts/theme.h"

#include <QtGui/QFont>
#include <QtGui/QFontDatabase>
#include <QtGui/QFontInfo>
#include <QtGui/QGuiApplication>
#include <QtGui/QPalette>
#include <algorithm>

namespace newel::parts {
namespace {

// What desktops and phones give plain text at their own 100 %: 11 points at 96 dots an inch.
constexpr double kSystemTextPx = 14.67;

double systemScale() {
  const QFontInfo info(QGuiApplication::font());
  return std::clamp(info.pixelSize() / kSystemTextPx, 1.0, 2.0);
}

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

void Theme::setLessMotion(bool on) {
  if (m_less_motion == on) return;
  m_less_motion = on;
  emit changed();
}

double Theme::scale() const { return std::clamp(m_system_scale * m_text_percent / 100.0, 1.0, 2.0); }

bool useOurFont() {
  QFont font = QGuiApplication::font();
  font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic")});
  QGuiApplication::setFont(font);
  return QFontDatabase::hasFamily(QStringLiteral("Noto Sans"));
}

}  // namespace newel::parts
