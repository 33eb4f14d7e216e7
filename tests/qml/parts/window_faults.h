// Looks at a window as it lies there and says what is wrong with it: text cut off or covering other text,
// things to press that are too small or overlap, controls without a name. For every page test of both
// programs.
#pragma once

#include <QtQuick/QQuickWindow>
#include <string>
#include <vector>

namespace newel::tests {

// Least side of anything to press: the project's own rule for a phone, above WCAG 2.2 SC 2.5.8 (24).
inline constexpr double kPhoneTarget = 48;

// One line a fault, empty when there is none. `window` must be shown and at rest.
std::vector<std::string> faultsOf(QQuickWindow& window, double least_target = kPhoneTarget);

// Whether a screen reader is led as the eye is: down the page, and along a line from the reading edge. The
// title of a page may come before what stands beside or above it. One line a fault.
std::vector<std::string> orderFaultsOf(QQuickWindow& window);

// Places and sizes of all words and controls that are shown, as one text: the same text, the same layout.
std::string layoutOf(QQuickWindow& window);

// Has the window lay itself out until it stays as it is.
void settleLayout(QQuickWindow& window);

// Lets the window lay itself out and paint.
void settle(int milliseconds = 60);

// A folder that is removed again with everything in it.
class TempFolder {
 public:
  TempFolder();
  ~TempFolder();
  TempFolder(const TempFolder&) = delete;
  TempFolder& operator=(const TempFolder&) = delete;
  const std::string& path() const { return m_path; }

 private:
  std::string m_path;
};

}  // namespace newel::tests
