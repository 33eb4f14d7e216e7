// Colours by role, the type scale, spacing: the one place that QML takes a look from.
// Sizes are device-independent pixels and already scaled; no screen sets a size of its own.
// UI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtGui/QColor>
#include <cmath>

#include "qml/parts/palette.h"

namespace newel::parts {

// At 100 %: standards for low vision, section 4.
inline constexpr int kBodyPixels = 18;

class Theme : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY changed)
  Q_PROPERTY(bool systemDark READ systemDark CONSTANT)  // what the system is set to
  // The person asked for more contrast than the usual colours have.
  Q_PROPERTY(bool strong READ strong WRITE setStrong NOTIFY changed)
  // The person's own setting, 100 to 200; values outside are brought inside.
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
  // The person asked for still pictures in place of movement.
  Q_PROPERTY(bool lessMotion READ lessMotion WRITE setLessMotion NOTIFY changed)
  // What text is drawn at: the setting times the system's own text scale, 1.0 to 2.0.
  Q_PROPERTY(double scale READ scale NOTIFY changed)
  Q_PROPERTY(QColor paper READ paper NOTIFY changed)
  Q_PROPERTY(QColor sheet READ sheet NOTIFY changed)
  Q_PROPERTY(QColor ink READ ink NOTIFY changed)
  Q_PROPERTY(QColor soft READ soft NOTIFY changed)
  Q_PROPERTY(QColor rail READ rail NOTIFY changed)
  Q_PROPERTY(QColor brass READ brass NOTIFY changed)
  Q_PROPERTY(QColor stop READ stop NOTIFY changed)
  Q_PROPERTY(QColor good READ good NOTIFY changed)
  Q_PROPERTY(QColor groove READ groove NOTIFY changed)
  // Type, in pixels. Body is 18 at 100 %: standards for low vision, section 4.
  Q_PROPERTY(int small READ small NOTIFY changed)
  Q_PROPERTY(int body READ body NOTIFY changed)
  Q_PROPERTY(int heading READ heading NOTIFY changed)
  Q_PROPERTY(int title READ title NOTIFY changed)
  // Read from 2 m: a digit of Noto Sans is 0.714 of this, 68 dp, which is 10.4 mm on a 6-inch 412x915 screen.
  Q_PROPERTY(int numeral READ numeral CONSTANT)
  Q_PROPERTY(int space READ space CONSTANT)    // 8, the step of all spacing
  Q_PROPERTY(int edge READ edge CONSTANT)      // 16, from the window's edge
  Q_PROPERTY(int radius READ radius CONSTANT)  // 6
  Q_PROPERTY(int target READ target CONSTANT)  // 48, the least side of anything to press
  Q_PROPERTY(int big READ big CONSTANT)        // 64, the least side of Stop and of the main action

 public:
  explicit Theme(QObject* parent = nullptr);

  bool dark() const { return m_dark; }
  void setDark(bool dark);
  bool systemDark() const { return m_system_dark; }
  bool strong() const { return m_strong; }
  void setStrong(bool on);
  int textPercent() const { return m_text_percent; }
  void setTextPercent(int percent);
  // As on another machine whose system leaves text as it is: of this one, nothing counts.
  void showAt(int percent);
  bool lessMotion() const { return m_less_motion; }
  void setLessMotion(bool on);
  double scale() const;

  QColor paper() const { return colour(palette().paper); }
  QColor sheet() const { return colour(palette().sheet); }
  QColor ink() const { return colour(palette().ink); }
  QColor soft() const { return colour(palette().soft); }
  QColor rail() const { return colour(palette().rail); }
  QColor brass() const { return colour(palette().brass); }
  QColor stop() const { return colour(palette().stop); }
  QColor good() const { return colour(palette().good); }
  QColor groove() const { return colour(palette().groove); }

  int small() const { return sized(16); }
  int body() const { return sized(kBodyPixels); }
  // What is large already grows less, as phones do it: at 200 % a title is still larger than body text.
  int heading() const { return sized(21, 0.85); }
  int title() const { return sized(27, 0.6); }
  int numeral() const { return 96; }
  int space() const { return 8; }
  int edge() const { return 16; }
  int radius() const { return 6; }
  int target() const { return 48; }
  int big() const { return 64; }

  const Palette& palette() const {
    if (m_strong) return m_dark ? kDarkStrong : kLightStrong;
    return m_dark ? kDark : kLight;
  }

 signals:
  void changed();

 private:
  static QColor colour(std::uint32_t rgb) { return QColor::fromRgb(0xFF000000U | rgb); }
  // `growth`: how much of the scale's increase it takes, 1 for all.
  int sized(int at_100, double growth = 1) const {
    return static_cast<int>(std::lround(at_100 * (1 + (scale() - 1) * growth)));
  }

  bool m_system_dark;
  bool m_dark;
  bool m_strong = false;
  int m_text_percent = 100;
  bool m_less_motion = false;
  double m_system_scale;
};

// Once, in main, before any window: Noto Sans with its Arabic companion (figures of equal width) as the
// program's font.
void useOurFont();
// False when the font is not on this machine (package fonts-noto-core): text still shows, in the system's
// font. Looks for every font there is, which takes long and is done once in a program: any thread may ask.
bool ourFontIsThere();

}  // namespace newel::parts
