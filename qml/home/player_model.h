// The practice screen's facts, worked out from the player, and its presses. Feeds PracticeFacts.qml.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <optional>

#include "qml/home/practice_session.h"
#include "qml/parts/figure_source.h"

namespace newel::home {

class PlayerModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(int entryNumber READ entryNumber NOTIFY changed)
  Q_PROPERTY(int entryCount READ entryCount NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString cue READ cue NOTIFY changed)
  Q_PROPERTY(QString next READ next NOTIFY changed)
  Q_PROPERTY(QString support READ support NOTIFY changed)
  Q_PROPERTY(QString number READ number NOTIFY ticked)
  Q_PROPERTY(QString numberOf READ numberOf NOTIFY ticked)
  // Number and what it counts, for who does not see them: it changes at most once in ten seconds, so that it
  // is up to ten seconds old, and the voice of a screen reader leaves room for ours.
  Q_PROPERTY(QString countSaid READ countSaid NOTIFY countSaidChanged)
  Q_PROPERTY(bool canSlow READ canSlow NOTIFY changed)
  Q_PROPERTY(QString setWords READ setWords NOTIFY changed)
  Q_PROPERTY(QString sideWords READ sideWordsNow NOTIFY changed)
  Q_PROPERTY(double fraction READ fraction NOTIFY ticked)
  Q_PROPERTY(bool resting READ resting NOTIFY changed)
  Q_PROPERTY(bool canLengthen READ canLengthen NOTIFY changed)
  Q_PROPERTY(bool canSkipBeat READ canSkipBeat NOTIFY changed)
  Q_PROPERTY(bool waiting READ waiting NOTIFY changed)
  Q_PROPERTY(bool paused READ paused NOTIFY changed)
  Q_PROPERTY(QString pausedWhy READ pausedWhy NOTIFY changed)
  Q_PROPERTY(QString soundNote READ soundNote NOTIFY changed)
  Q_PROPERTY(newel::parts::FigureSource* figure READ figure CONSTANT)
  Q_PROPERTY(QVariantList posts READ posts NOTIFY changed)
  Q_PROPERTY(int at READ at NOTIFY changed)

 public:
  PlayerModel(PracticeSession& session, const HomeParts& parts, QObject* parent = nullptr);

  int entryNumber() const;
  int entryCount() const;
  QString title() const;
  QString cue() const;
  QString next() const;
  QString support() const;
  QString number() const;
  QString numberOf() const;
  QString countSaid() const { return m_count_said; }
  bool canSlow() const;
  QString setWords() const;
  QString sideWordsNow() const;
  double fraction() const;
  bool resting() const;
  bool canLengthen() const;
  bool canSkipBeat() const;
  bool waiting() const;
  bool paused() const;
  QString pausedWhy() const;
  QString soundNote() const;
  parts::FigureSource* figure() { return &m_figure; }
  QVariantList posts() const;
  int at() const;

  Q_INVOKABLE void stop();
  Q_INVOKABLE void pause();
  Q_INVOKABLE void goOn();
  Q_INVOKABLE void done();
  Q_INVOKABLE void sayAgain();
  Q_INVOKABLE void longer();
  Q_INVOKABLE void slower();  // and on it goes
  Q_INVOKABLE void now();

 signals:
  void changed();
  void ticked();
  void countSaidChanged();

 private:
  void sayCount();
  const PracticeRun* run() const { return m_session.run(); }
  const Player* player() const { return run() != nullptr ? run()->player() : nullptr; }
  const v1::Beat* beat() const;
  void showFigure();
  std::int64_t activeMs() const;
  bool leadingIn() const;
  std::optional<int> secondsShown() const;
  int repetitionsOfSet(const v1::Beat& beat) const;
  int stepsOfPart(const v1::Beat& beat) const;

  PracticeSession& m_session;
  const HomeParts& m_parts;
  parts::FigureSource m_figure;
  bool m_paused_by_person = false;
  QString m_count_said;
  absl::Duration m_count_said_at = -absl::InfiniteDuration();
};

}  // namespace newel::home
