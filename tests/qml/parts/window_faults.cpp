#include "tests/qml/parts/window_faults.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDeadlineTimer>
#include <QtCore/QEventLoop>
#include <QtCore/QThread>
#include <QtGui/QAccessible>
#include <QtQuick/QQuickItem>
#include <cstdlib>
#include <filesystem>

#include "qml/parts/driver.h"

namespace newel::tests {
namespace {

constexpr double kSlack = 1.0;

struct Seen {
  QQuickItem* item;
  QRectF box;    // in the window, whole
  QRectF shown;  // the part that no scrolling area cuts off
};

void gather(QQuickItem* item, const QRectF& clip, std::vector<Seen>& texts, std::vector<Seen>& controls) {
  if (!item->isVisible() || item->opacity() < 0.01) return;
  const QRectF box = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
  QRectF inner = clip;
  if (item->clip()) inner = clip.intersected(box);
  if (item->inherits("QQuickText") && !item->property("text").toString().isEmpty()) {
    texts.push_back({item, box, box.intersected(clip)});
  }
  QAccessibleInterface* const face = QAccessible::queryAccessibleInterface(item);
  if (face != nullptr && face->isValid()) {
    switch (face->role()) {
      case QAccessible::Button:
      case QAccessible::CheckBox:
      case QAccessible::RadioButton:
      case QAccessible::EditableText:
        controls.push_back({item, box, box.intersected(clip)});
        break;
      default:
        break;
    }
  }
  const QList<QQuickItem*> children = item->childItems();
  for (QQuickItem* child : children) gather(child, inner, texts, controls);
}

std::string nameOf(const Seen& seen) {
  QString text = seen.item->property("text").toString();
  if (text.isEmpty()) text = newel::parts::Driver::nameOf(seen.item);
  const QRectF& box = seen.box;
  return "\"" + text.left(40).toStdString() + "\" at " + std::to_string(static_cast<int>(box.x())) + "," +
         std::to_string(static_cast<int>(box.y())) + " " + std::to_string(static_cast<int>(box.width())) +
         "x" + std::to_string(static_cast<int>(box.height()));
}

// The rectangle that the letters of a text cover.
QRectF lettersOf(const Seen& text) {
  // A preview is drawn smaller than it lays itself out.
  const double scale = text.item->width() > 0 ? text.box.width() / text.item->width() : 1;
  const double width = text.item->property("contentWidth").toDouble() * scale;
  double height = text.item->property("contentHeight").toDouble() * scale;
  // Digits have neither ascenders nor descenders: Noto Sans' cap height is 0.714 of an em, a line 1.36.
  if (text.item->objectName() == "numeral") height *= 0.714 / 1.36;
  QRectF letters = text.box;
  const auto across = text.item->property("effectiveHorizontalAlignment").toInt();
  const auto down = text.item->property("verticalAlignment").toInt();
  if (across & Qt::AlignHCenter) letters.setLeft(text.box.center().x() - width / 2);
  if (across & Qt::AlignRight) letters.setLeft(text.box.right() - width);
  if (down & Qt::AlignVCenter) letters.setTop(text.box.center().y() - height / 2);
  if (down & Qt::AlignBottom) letters.setTop(text.box.bottom() - height);
  letters.setWidth(width);
  letters.setHeight(height);
  return letters;
}

bool overlap(const QRectF& a, const QRectF& b) {
  const QRectF common = a.intersected(b);
  return common.width() > 2 && common.height() > 2;
}

bool contains(QQuickItem* outer, QQuickItem* inner) {
  for (QQuickItem* at = inner; at != nullptr; at = at->parentItem()) {
    if (at == outer) return true;
  }
  return false;
}

void checkText(const Seen& text, const QRectF& window, std::vector<std::string>& faults) {
  const QRectF letters = lettersOf(text);
  if (text.item->property("truncated").toBool()) faults.push_back("text cut off: " + nameOf(text));
  if (letters.width() > text.box.width() + kSlack)
    faults.push_back("text wider than its room: " + nameOf(text));
  if (letters.height() > text.box.height() + kSlack)
    faults.push_back("text higher than its room: " + nameOf(text));
  if (letters.left() < window.left() - kSlack || letters.right() > window.right() + kSlack) {
    faults.push_back("text outside the window: " + nameOf(text));
  }
}

void checkControl(const Seen& control, const QRectF& window, double least, std::vector<std::string>& faults) {
  if (control.box.width() < least - 0.5 || control.box.height() < least - 0.5) {
    faults.push_back("too small to press: " + nameOf(control));
  }
  if (control.box.left() < window.left() - kSlack || control.box.right() > window.right() + kSlack) {
    faults.push_back("control outside the window: " + nameOf(control));
  }
  if (newel::parts::Driver::nameOf(control.item).isEmpty())
    faults.push_back("control without a name: " + nameOf(control));
}

}  // namespace

std::vector<std::string> faultsOf(QQuickWindow& window, double least_target) {
  std::vector<Seen> texts;
  std::vector<Seen> controls;
  const QRectF all(0, 0, window.width(), window.height());
  gather(window.contentItem(), all, texts, controls);
  std::vector<std::string> faults;
  if (texts.empty()) faults.push_back("the window shows no text at all");
  for (const Seen& text : texts) checkText(text, all, faults);
  for (const Seen& control : controls) checkControl(control, all, least_target, faults);
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t k = i + 1; k < texts.size(); ++k) {
      const QRectF a = lettersOf(texts[i]).intersected(texts[i].shown);
      const QRectF b = lettersOf(texts[k]).intersected(texts[k].shown);
      if (overlap(a, b)) faults.push_back("text over text: " + nameOf(texts[i]) + " and " + nameOf(texts[k]));
    }
  }
  for (std::size_t i = 0; i < controls.size(); ++i) {
    for (std::size_t k = i + 1; k < controls.size(); ++k) {
      if (contains(controls[i].item, controls[k].item) || contains(controls[k].item, controls[i].item))
        continue;
      if (overlap(controls[i].shown, controls[k].shown)) {
        faults.push_back("control over control: " + nameOf(controls[i]) + " and " + nameOf(controls[k]));
      }
    }
  }
  for (const Seen& text : texts) {
    for (const Seen& control : controls) {
      if (contains(control.item, text.item)) continue;
      if (overlap(lettersOf(text).intersected(text.shown), control.shown)) {
        faults.push_back("text under a control: " + nameOf(text) + " and " + nameOf(control));
      }
    }
  }
  return faults;
}

void settle(int milliseconds) {
  const QDeadlineTimer deadline(milliseconds);
  do {
    QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
    QThread::msleep(2);
  } while (!deadline.hasExpired());
}

TempFolder::TempFolder() {
  std::string pattern = (std::filesystem::temp_directory_path() / "newel-XXXXXX").string();
  m_path = mkdtemp(pattern.data()) != nullptr ? pattern : "";
}

TempFolder::~TempFolder() {
  std::error_code ignored;
  if (!m_path.empty()) std::filesystem::remove_all(m_path, ignored);
}

}  // namespace newel::tests
