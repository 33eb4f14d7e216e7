#include "qml/parts/driver.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDateTime>
#include <QtCore/QDir>
#include <QtCore/QFileInfo>
#include <QtCore/QJsonArray>
#include <QtCore/QJsonDocument>
#include <QtCore/QPointer>
#include <QtCore/QTimer>
#include <QtGui/QAccessible>
#include <QtGui/QKeyEvent>
#include <QtGui/QMouseEvent>
#include <QtGui/QWheelEvent>
#include <QtQuick/QQuickItem>
#include <algorithm>
#include <condition_variable>
#include <fstream>
#include <iostream>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace newel::parts {
namespace {

constexpr int kWaitMs = 5000;
// Two looks in a row at the same place mean that it lies still.
constexpr int kLookMs = 20;
constexpr int kMostLooks = 150;
constexpr qint64 kLongestChangeMs = 3000;
// No picture for so long: what was set going has come to rest.
constexpr qint64 kStillMs = 150;
constexpr int kWheelNotch = 120;  // in eighths of a degree, as Qt counts them

// Splits a line into words; double quotes hold a word together. Null when a quote is left open.
std::optional<QStringList> wordsOf(const QString& line) {
  QStringList words;
  QString word;
  bool quoted = false;
  bool begun = false;
  for (int i = 0; i < line.size(); ++i) {
    const QChar c = line.at(i);
    if (quoted && c == u'\\' && i + 1 < line.size()) {
      const QChar next = line.at(++i);
      word += next == u'n' ? QChar(u'\n') : next;
    } else if (c == u'"') {
      quoted = !quoted;
      begun = true;
    } else if (!quoted && c.isSpace()) {
      if (begun) words << word;
      word.clear();
      begun = false;
    } else {
      word += c;
      begun = true;
    }
  }
  if (quoted) return std::nullopt;
  if (begun) words << word;
  return words;
}

bool matches(const QString& name, const QString& wanted) {
  if (wanted.endsWith(u'*')) return name.startsWith(wanted.left(wanted.size() - 1));
  return name == wanted;
}

// Shown to its full depth: itself and all around it visible and not faded out.
bool shown(const QQuickItem* item) {
  if (!item->isVisible() || item->width() <= 0 || item->height() <= 0) return false;
  for (const QQuickItem* at = item; at != nullptr; at = at->parentItem()) {
    if (at->opacity() < 0.01) return false;
  }
  return true;
}

bool shielded(const QQuickItem* item) {
  if (!item->isVisible()) return false;
  if (item->objectName() == "shield") return true;
  const QList<QQuickItem*> children = item->childItems();
  return std::any_of(children.begin(), children.end(),
                     [](const QQuickItem* child) { return shielded(child); });
}

// Moves every scrolling area around `item` so that its middle can be seen, as a person's finger would.
void scrollTo(QQuickItem* item) {
  for (QQuickItem* at = item->parentItem(); at != nullptr; at = at->parentItem()) {
    if (!at->inherits("QQuickFlickable")) continue;
    const double top = item->mapToItem(at, QPointF(0, 0)).y();
    const double middle = top + std::min(item->height(), at->height()) / 2;
    double content = at->property("contentY").toDouble();
    if (middle > at->height() - 30 || middle < 30) content += middle - at->height() / 2;
    const double most = std::max(0.0, at->property("contentHeight").toDouble() - at->height());
    at->setProperty("contentY", std::clamp(content, 0.0, most));
  }
}

// Words beside a control may carry the same name; what can be acted on comes first.
QList<QQuickItem*> controlsFirst(QList<QQuickItem*> items) {
  std::stable_partition(items.begin(), items.end(), [](QQuickItem* item) {
    const QAccessible::Role role = QAccessible::queryAccessibleInterface(item)->role();
    return role != QAccessible::StaticText && role != QAccessible::Heading && role != QAccessible::Grouping &&
           role != QAccessible::AlertMessage && role != QAccessible::ListItem;
  });
  return items;
}

int keyCode(const QString& name) {
  static const QHash<QString, int> kKeys = {{"Tab", Qt::Key_Tab},       {"Backtab", Qt::Key_Backtab},
                                            {"Return", Qt::Key_Return}, {"Space", Qt::Key_Space},
                                            {"Escape", Qt::Key_Escape}, {"Up", Qt::Key_Up},
                                            {"Down", Qt::Key_Down},     {"Left", Qt::Key_Left},
                                            {"Right", Qt::Key_Right},   {"Back", Qt::Key_Back}};
  return kKeys.value(name, 0);
}

QString quotedJson(const QJsonObject& object) {
  return QStringLiteral("ok ") + QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

int numberAt(const QStringList& words, int index, int otherwise) {
  bool fine = false;
  const int number = words.size() > index ? words.at(index).toInt(&fine) : 0;
  return fine ? number : otherwise;
}

}  // namespace

Driver::Driver(QQuickWindow* window, State state, QObject* parent)
    : QObject(parent), m_window(window), m_state(std::move(state)) {
  QAccessible::setActive(true);
  connect(window, &QQuickWindow::frameSwapped, this, [this] {
    ++m_frames;
    m_since_frame.restart();
  });
}

// The reader's thread ends with the program and may outlive this: what it has to say goes through here.
struct Driver::Turn {
  std::mutex mutex;
  std::condition_variable changed;
  bool free = true;
  Driver* driver = nullptr;  // null: gone

  // Waits until the last command is answered; false: nobody is there any more.
  template <typename Body>
  bool give(Body body) {
    std::unique_lock<std::mutex> lock(mutex);
    changed.wait(lock, [this] { return free || driver == nullptr; });
    if (driver == nullptr) return false;
    free = false;
    QMetaObject::invokeMethod(
        driver, [body, to = driver] { body(*to); }, Qt::QueuedConnection);
    return true;
  }
  void taken() {
    const std::lock_guard<std::mutex> lock(mutex);
    free = true;
    changed.notify_one();
  }
};

Driver::~Driver() {
  if (m_turn == nullptr) return;
  const std::lock_guard<std::mutex> lock(m_turn->mutex);
  m_turn->driver = nullptr;
  m_turn->changed.notify_one();
}

void Driver::readFrom(const QString& source) {
  // The reader waits for each answer, so a script can be poured in whole. It ends with the program.
  m_turn = std::make_shared<Turn>();
  m_turn->driver = this;
  connect(this, &Driver::answered, this, [turn = m_turn](const QString& text) {
    std::cout << text.toStdString() << std::endl;  // flushed: the other side waits for it
    turn->taken();
  });
  const std::string path = source.toStdString();
  const bool keeps = source != QStringLiteral("-") && !QFileInfo(source).isFile();
  std::thread([turn = m_turn, path, keeps] {
    const auto pour = [&turn](std::istream& stream) {
      std::string line;
      while (std::getline(stream, line)) {
        const QString text = QString::fromStdString(line).trimmed();
        if (text.isEmpty() || text.startsWith(u'#')) continue;
        if (!turn->give([text](Driver& driver) { driver.run(text); })) return;
      }
    };
    if (path == "-") {
      pour(std::cin);
    } else {
      do {
        std::ifstream file(path);
        if (!file) break;
        pour(file);
      } while (keeps);
    }
    turn->give([](Driver&) { QCoreApplication::quit(); });
  }).detach();
}

void Driver::run(const QString& line) {
  const std::optional<QStringList> words = wordsOf(line);
  if (!words.has_value() || words->isEmpty()) return answer(QStringLiteral("error a quote is left open"));
  if (m_busy) return answer(QStringLiteral("error still busy with the last command"));
  m_busy = true;
  const QString text = act(*words);
  if (!text.isEmpty()) answer(text);
}

void Driver::answer(const QString& text) {
  m_busy = false;
  emit answered(text);
}

QString Driver::act(const QStringList& words) {
  const QString& verb = words.first();
  const QString name = words.value(1);
  if (verb == "click" || verb == "press") {
    const bool release = verb == "click";
    whenStill(name, release ? numberAt(words, 2, 1) : 1,
              [this, release](QQuickItem*, const QPointF& at) { return pressAt(at, release); });
    return QString();
  }
  if (verb == "frame") {
    waitUntil(numberAt(words, 1, 30000), QStringLiteral("no picture was shown"),
              [this] { return m_frames > 0; });
    return QString();
  }
  if (verb == "time") {
    whenStill(name, 1, [this](QQuickItem*, const QPointF& at) { return timeAt(at); });
    return QString();
  }
  if (verb == "turn") {
    whenStill(name, 1, [this, notches = numberAt(words, 2, 1)](QQuickItem*, const QPointF& at) {
      return turnAt(at, notches);
    });
    return QString();
  }
  if (verb == "type") {
    whenStill(name, 1,
              [this, text = words.value(2)](QQuickItem*, const QPointF& at) { return typeAt(at, text); });
    return QString();
  }
  if (verb == "key") return key(name);
  if (verb == "wait" || verb == "gone" || verb == "until") return waitFor(words);
  if (verb == "read") return read(name);
  if (verb == "list") return list();
  if (verb == "shot") return shot(name);
  if (verb == "state") return quotedJson(m_state());
  if (verb == "size") {
    m_window->resize(numberAt(words, 1, 360), numberAt(words, 2, 640));
    return QStringLiteral("ok");
  }
  if (verb == "sleep") {
    QTimer::singleShot(numberAt(words, 1, 0), this, [this] { answer(QStringLiteral("ok")); });
    return QString();
  }
  if (verb == "quit") {
    QTimer::singleShot(0, this, [] { QCoreApplication::quit(); });
    return QStringLiteral("ok");
  }
  return QStringLiteral("error unknown command ") + verb;
}

QString Driver::nameOf(QQuickItem* item) {
  QAccessibleInterface* const face = QAccessible::queryAccessibleInterface(item);
  if (face == nullptr || !face->isValid() || face->state().invisible) return QString();
  return face->text(QAccessible::Name);
}

void Driver::collect(QQuickItem* item, QList<QQuickItem*>& found) const {
  if (!item->isVisible()) return;
  found << item;
  const QList<QQuickItem*> children = item->childItems();
  for (QQuickItem* child : children) collect(child, found);
}

QList<QQuickItem*> Driver::find(const QString& name) const {
  QList<QQuickItem*> all;
  collect(m_window->contentItem(), all);
  QList<QQuickItem*> found;
  for (QQuickItem* item : std::as_const(all)) {
    if (shown(item) && matches(nameOf(item), name)) found << item;
  }
  std::stable_sort(found.begin(), found.end(), [](QQuickItem* a, QQuickItem* b) {
    return a->mapToScene(QPointF()).y() < b->mapToScene(QPointF()).y();
  });
  return found;
}

void Driver::sendMouse(QEvent::Type kind, const QPointF& at) {
  const Qt::MouseButtons held = kind == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
  QMouseEvent event(kind, at, m_window->mapToGlobal(at), Qt::LeftButton, held, Qt::NoModifier);
  QCoreApplication::sendEvent(m_window, &event);
}

void Driver::sendKey(int code, const QString& text, Qt::KeyboardModifiers modifiers) {
  QKeyEvent press(QEvent::KeyPress, code, modifiers, text);
  QCoreApplication::sendEvent(m_window, &press);
  QKeyEvent release(QEvent::KeyRelease, code, modifiers, text);
  QCoreApplication::sendEvent(m_window, &release);
}

void Driver::whenStill(const QString& name, int nth, Then then) {
  struct Look {
    QPointer<QQuickItem> item;
    QPointF at;
    int looks = 0;
  };
  auto look = std::make_shared<Look>();
  auto* const timer = new QTimer(this);
  const auto finish = [this, timer](const QString& text) {
    timer->stop();
    timer->deleteLater();
    answer(text);
  };
  connect(timer, &QTimer::timeout, this, [this, name, nth, then = std::move(then), look, finish] {
    const QList<QQuickItem*> found = controlsFirst(find(name));
    if (found.isEmpty()) return finish(QStringLiteral("error nothing visible is named ") + name);
    if (nth < 1 || nth > found.size())
      return finish(QStringLiteral("error fewer than that are named ") + name);
    QQuickItem* const item = found.at(nth - 1);
    if (!item->isEnabled()) return finish(QStringLiteral("error disabled: ") + name);
    scrollTo(item);
    const QPointF at = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    const bool still = look->item == item && look->at == at && !shielded(m_window->contentItem());
    look->item = item;
    look->at = at;
    if (!still) {
      if (++look->looks > kMostLooks) finish(QStringLiteral("error never lay still: ") + name);
      return;
    }
    const QRectF window(0, 0, m_window->width(), m_window->height());
    finish(window.contains(at) ? then(item, at) : QStringLiteral("error outside the window: ") + name);
  });
  timer->start(kLookMs);
}

QString Driver::pressAt(const QPointF& at, bool release) {
  sendMouse(QEvent::MouseButtonPress, at);
  if (release) {
    sendMouse(QEvent::MouseButtonRelease, at);
  } else {
    QTimer::singleShot(50, this, [this, at] { sendMouse(QEvent::MouseButtonRelease, at); });
  }
  return QStringLiteral("ok");
}

QString Driver::timeAt(const QPointF& at) {
  const int before = m_frames;
  QElapsedTimer since;
  since.start();
  pressAt(at, true);
  while (m_frames == before && since.elapsed() < kLongestChangeMs) QCoreApplication::processEvents();
  if (m_frames == before) return QStringLiteral("error nothing changed");
  const double took = static_cast<double>(since.nsecsElapsed() - m_since_frame.nsecsElapsed()) / 1e6;
  return QStringLiteral("ok ") + QString::number(took, 'f', 2);
}

QString Driver::turnAt(const QPointF& at, int notches) {
  QWheelEvent turn(at, m_window->mapToGlobal(at), {}, {0, -kWheelNotch * notches}, Qt::NoButton,
                   Qt::NoModifier, Qt::NoScrollPhase, false);
  // Two turns at one instant are none: what scrolls looks at the time between them.
  turn.setTimestamp(static_cast<quint64>(QDateTime::currentMSecsSinceEpoch()));
  int seen = m_frames;
  double longest = 0;
  double last = 0;  // the picture after all has come to rest is late on purpose, and does not count
  QElapsedTimer since;
  since.start();
  QElapsedTimer whole;
  whole.start();
  QCoreApplication::sendEvent(m_window, &turn);
  while (since.elapsed() < kStillMs && whole.elapsed() < kLongestChangeMs) {
    QCoreApplication::processEvents();
    if (m_frames == seen) continue;
    longest = std::max(longest, last);
    last = static_cast<double>(since.nsecsElapsed()) / 1e6;
    seen = m_frames;
    since.restart();
  }
  if (longest == 0) longest = last;
  return longest > 0 ? QStringLiteral("ok ") + QString::number(longest, 'f', 2)
                     : QStringLiteral("error nothing changed");
}

QString Driver::typeAt(const QPointF& at, const QString& text) {
  pressAt(at, true);
  sendKey(Qt::Key_A, QString(), Qt::ControlModifier);
  sendKey(Qt::Key_Delete, QString());
  for (const QChar c : text) {
    if (c == u'\n') {
      sendKey(Qt::Key_Return, QStringLiteral("\r"));
    } else {
      sendKey(c.toUpper().unicode() < 128 ? c.toUpper().unicode() : 0, QString(c));
    }
  }
  return QStringLiteral("ok");
}

QString Driver::key(const QString& name) {
  const int code = keyCode(name);
  if (code != 0) {
    sendKey(code, code == Qt::Key_Return  ? QStringLiteral("\r")
                  : code == Qt::Key_Space ? QStringLiteral(" ")
                                          : QString());
    return QStringLiteral("ok");
  }
  if (name.size() != 1) return QStringLiteral("error no such key: ") + name;
  sendKey(name.at(0).toUpper().unicode(), name);
  return QStringLiteral("ok");
}

QString Driver::read(const QString& name) const {
  const QList<QQuickItem*> found = controlsFirst(find(name));
  if (found.isEmpty()) return QStringLiteral("error nothing visible is named ") + name;
  QAccessibleInterface* const face = QAccessible::queryAccessibleInterface(found.first());
  const QAccessible::State state = face->state();
  return quotedJson({{"name", face->text(QAccessible::Name)},
                     {"description", face->text(QAccessible::Description)},
                     {"value", found.first()->property("text").toString()},
                     {"enabled", found.first()->isEnabled()},
                     {"checked", static_cast<bool>(state.checked)},
                     {"focused", found.first()->hasActiveFocus()}});
}

QString Driver::list() const {
  QJsonArray names;
  const QList<QQuickItem*> found = find(QStringLiteral("*"));
  for (QQuickItem* item : found) {
    const QString name = nameOf(item);
    if (!name.isEmpty()) names << name;
  }
  return QStringLiteral("ok ") + QString::fromUtf8(QJsonDocument(names).toJson(QJsonDocument::Compact));
}

QString Driver::shot(const QString& file) {
  const QImage picture = m_window->grabWindow();
  if (picture.isNull()) return QStringLiteral("error the window gave no picture");
  QDir().mkpath(QFileInfo(file).absolutePath());
  if (!picture.save(file)) return QStringLiteral("error cannot write ") + file;
  return QStringLiteral("ok");
}

QString Driver::waitFor(const QStringList& words) {
  const QString name = words.value(1);
  if (words.first() == "until") {
    const QString value = words.value(2);
    waitUntil(numberAt(words, 3, kWaitMs), name + " " + value,
              [this, name, value] { return m_state().value(name).toVariant().toString() == value; });
  } else {
    const bool present = words.first() == "wait";
    waitUntil(numberAt(words, 2, kWaitMs), words.first() + " " + name,
              [this, name, present] { return find(name).isEmpty() != present; });
  }
  return QString();
}

void Driver::waitUntil(int milliseconds, const QString& what, Test test) {
  if (test()) return answer(QStringLiteral("ok"));
  auto* const timer = new QTimer(this);
  QElapsedTimer since;
  since.start();
  connect(timer, &QTimer::timeout, this, [this, timer, since, milliseconds, what, test = std::move(test)] {
    const bool met = test();
    if (!met && since.elapsed() < milliseconds) return;
    timer->deleteLater();
    timer->stop();
    answer(met ? QStringLiteral("ok") : QStringLiteral("error waited in vain: ") + what);
  });
  timer->start(20);
}

}  // namespace newel::parts
