// Drives a program from outside, for tests and for the walkthrough: finds controls by their accessible names
// and acts through mouse and key events sent to the window, as a hand would. Does nothing unless a program
// is started with --drive. Not a way round the screens: what is hidden, disabled or without a name cannot be
// reached.
//
// One command a line, from a file, a FIFO or stdin ("-"). Words with spaces stand in double quotes; inside
// them \" and \\ mean themselves and \n a new line. Each command gives one line on stdout: "ok", "ok <JSON>"
// or "error <reason>", and the next is read only then.
//   click NAME [NTH]          press and release in its middle; scrolls there first. NTH from 1, default 1.
//                             Waits until it lies still and no shield (qml/parts/Shield.qml) covers the page,
//                             at most 3 s
//   press NAME                as click, but the release follows 50 ms after the press
//   type NAME TEXT            clicks it, selects all, types over
//   key NAME                  one key to what has the focus: Tab, Backtab, Return, Space, Escape, Up, Down,
//                             Left, Right, Back, or one character
//   wait NAME [MS]            until something of that name is visible (default 5000 ms)
//   gone NAME [MS]            until nothing of that name is visible
//   until KEY VALUE [MS]      until the program's state has KEY equal to VALUE (as text)
//   read NAME                 ok {"name","description","value","enabled","checked","focused"}
//   list                      ok [names of all that is visible and named, top to bottom]
//   shot FILE.png             the window as a picture
//   size W H                  resizes the window
//   state                     ok {the program's own facts: "page" and more}
//   frame [MS]                until the window has shown a picture of itself at all (default 30000 ms)
//   time NAME                 as click; ok <milliseconds until the next picture is shown>
//   turn NAME NOTCHES         the wheel over its middle, down for more than 0; ok <longest milliseconds
//   between two
//                             pictures until nothing moves any more>
//   sleep MS                  lets the program run
//   quit                      ok, then the program ends
// A NAME matches exactly; a NAME ending in * matches the beginning.
#pragma once

#include <QtCore/QElapsedTimer>
#include <QtCore/QJsonObject>
#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtQuick/QQuickWindow>
#include <functional>
#include <memory>

namespace newel::parts {

class Driver : public QObject {
  Q_OBJECT

 public:
  using State = std::function<QJsonObject()>;

  // `window` outlives the driver; `state` is called on the UI thread.
  Driver(QQuickWindow* window, State state, QObject* parent = nullptr);
  ~Driver() override;

  // Starts a thread that reads `source`. A FIFO is opened again when its writer leaves; at the end of stdin
  // or of a plain file the program quits.
  void readFrom(const QString& source);

  // One command; the answer comes through answered(), at once or later. UI thread.
  void run(const QString& line);

  // What is visible and carries the name, in reading order. For tests too.
  QList<QQuickItem*> find(const QString& name) const;
  static QString nameOf(QQuickItem* item);

 signals:
  void answered(const QString& answer);

 private:
  using Test = std::function<bool()>;
  struct Turn;  // between the reader's thread and this one

  QString timeAt(const QPointF& at);
  QString turnAt(const QPointF& at, int notches);
  void waitUntil(int milliseconds, const QString& what, Test test);
  void answer(const QString& text);
  QString act(const QStringList& words);  // empty: the answer comes later
  // Waits until what `name` means lies still, then acts on its place; `then` gives the answer.
  using Then = std::function<QString(QQuickItem*, const QPointF&)>;
  void whenStill(const QString& name, int nth, Then then);
  QString pressAt(const QPointF& at, bool release);
  QString typeAt(const QPointF& at, const QString& text);
  QString key(const QString& name);
  QString read(const QString& name) const;
  QString list() const;
  QString shot(const QString& file);
  QString waitFor(const QStringList& words);
  void sendMouse(QEvent::Type kind, const QPointF& at);
  void sendKey(int code, const QString& text, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
  void collect(QQuickItem* item, QList<QQuickItem*>& found) const;

  std::shared_ptr<Turn> m_turn;
  QQuickWindow* m_window;
  State m_state;
  int m_frames = 0;
  QElapsedTimer m_since_frame;  // the last one
  bool m_busy = false;
};

}  // namespace newel::parts
