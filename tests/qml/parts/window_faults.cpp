#include "tests/qml/parts/window_faults.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDeadlineTimer>
#include <QtCore/QEventLoop>
#include <QtCore/QThread>
#include <QtGui/QAccessible>
#include <QtGui/QFontMetricsF>
#include <QtGui/QGuiApplication>
#include <QtQuick/QQuickItem>
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <optional>

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
  // Digits fill little of their line, in Arabic less than in Latin letters.
  if (text.item->objectName() == "numeral") {
    const QFont font = text.item->property("font").value<QFont>();
    const double digits =
        QFontMetricsF(font).tightBoundingRect(text.item->property("text").toString()).height();
    height = std::min(height, digits * scale);
  }
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
  // A space at the end of a wrapped line hangs over and shows nothing.
  const bool wrapped = text.item->property("lineCount").toInt() > 1;
  const double space =
      wrapped ? QFontMetricsF(text.item->property("font").value<QFont>()).horizontalAdvance(u' ') : 0;
  if (letters.width() > text.box.width() + kSlack + space)
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

namespace {

// What a screen reader stops at, in the order it comes to them.
// `view`: of the scrolling area around it. What has been scrolled out of it is read where the area is.
void gatherNamed(QQuickItem* item, const std::optional<QRectF>& view, std::vector<Seen>& named) {
  if (!item->isVisible() || item->opacity() < 0.01) return;
  QAccessibleInterface* const face = QAccessible::queryAccessibleInterface(item);
  const bool says = face != nullptr && face->isValid() && !face->text(QAccessible::Name).isEmpty();
  if (says && face->role() != QAccessible::Grouping && face->role() != QAccessible::AlertMessage &&
      face->role() != QAccessible::ListItem && face->role() != QAccessible::SpinBox &&
      face->role() != QAccessible::Client) {
    const QRectF box = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
    if (box.width() > 0 && box.height() > 0) named.push_back({item, box, view.value_or(box)});
  }
  std::optional<QRectF> inner = view;
  if (item->inherits("QQuickFlickable")) {
    inner = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
  }
  const QList<QQuickItem*> children = item->childItems();
  for (QQuickItem* child : children) gatherNamed(child, inner, named);
}

void polish(QQuickItem* item) {
  item->ensurePolished();
  const QList<QQuickItem*> children = item->childItems();
  for (QQuickItem* child : children) polish(child);
}

void describe(const std::vector<Seen>& all, std::string& text) {
  for (const Seen& seen : all) {
    for (const double side : {seen.box.x(), seen.box.y(), seen.box.width(), seen.box.height()}) {
      text += std::to_string(std::lround(side * 4)) + " ";
    }
  }
}

}  // namespace

std::vector<std::string> orderFaultsOf(QQuickWindow& window) {
  std::vector<Seen> named;
  gatherNamed(window.contentItem(), std::nullopt, named);
  std::vector<std::string> faults;
  const bool to_left = QGuiApplication::isRightToLeft();
  for (std::size_t i = 1; i < named.size(); ++i) {
    // Within one area by where each lies in it, between two by where the areas lie.
    const bool one_area = named[i - 1].shown == named[i].shown;
    const QRectF& a = one_area ? named[i - 1].box : named[i - 1].shown;
    const QRectF& b = one_area ? named[i].box : named[i].shown;
    if (contains(named[i - 1].item, named[i].item)) continue;
    const bool after = to_left ? b.right() <= a.left() + kSlack : b.left() >= a.right() - kSlack;
    const bool before = to_left ? b.left() >= a.right() - kSlack : b.right() <= a.left() + kSlack;
    const double common = std::min(a.bottom(), b.bottom()) - std::max(a.top(), b.top());
    const bool beside = common > 0.5 * std::min(a.height(), b.height());
    const auto role = QAccessible::queryAccessibleInterface(named[i - 1].item)->role();
    const bool backwards = beside ? before : b.bottom() <= a.top() + kSlack && !after;
    if (backwards && role != QAccessible::Heading)
      faults.push_back("read out of order: " + nameOf(named[i - 1]) + " and then " + nameOf(named[i]));
  }
  return faults;
}

std::string layoutOf(QQuickWindow& window) {
  std::vector<Seen> texts;
  std::vector<Seen> controls;
  gather(window.contentItem(), QRectF(0, 0, window.width(), window.height()), texts, controls);
  std::string text;
  describe(texts, text);
  describe(controls, text);
  return text;
}

void settleLayout(QQuickWindow& window) {
  std::string before;
  for (int round = 0; round < 60; ++round) {
    QCoreApplication::processEvents();
    // What the next frame would do, without waiting for it.
    polish(window.contentItem());
    std::string now = layoutOf(window);
    if (round > 1 && now == before) return;
    before = std::move(now);
  }
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
