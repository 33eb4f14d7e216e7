// Says one thing in a window of its own, before the app itself can be shown, and asks one question.
#pragma once

#include <QtCore/QEventLoop>
#include <QtCore/QObject>
#include <QtCore/QString>

namespace newel::home {

struct Trouble {
  QString heading;
  QString words;
  QString accept;  // empty: nothing to accept
  QString refuse;
};
// True when it was accepted. Needs the QML import path of the app.
bool askInWindow(const Trouble& trouble);

// What the window's two buttons do.
class TroubleAnswer : public QObject {
  Q_OBJECT

 public:
  explicit TroubleAnswer(QEventLoop& loop) : m_loop(loop) {}
  bool accepted() const { return m_accepted; }

 public slots:
  void accept();
  void refuse();

 private:
  QEventLoop& m_loop;
  bool m_accepted = false;
};

}  // namespace newel::home
