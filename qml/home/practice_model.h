// The pages around the exercises: questions, pain, support, ratings, reasons, verdicts, the close. Shows what
// core/practice says and passes on what the person pressed.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>

#include "qml/home/entry_media.h"
#include "qml/home/practice_session.h"
#include "qml/parts/figure_source.h"

namespace newel::home {

class PracticeModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(QString error READ error NOTIFY changed)  // in words; empty when the last step went well
  // A question of the ready check.
  Q_PROPERTY(QString question READ question NOTIFY changed)
  Q_PROPERTY(QString questionHelp READ questionHelp NOTIFY changed)
  Q_PROPERTY(QString questionPlace READ questionPlace NOTIFY changed)  // "Before you start, 2 of 4"
  Q_PROPERTY(QVariantList choices READ choices NOTIFY changed)         // maps "id", "words"
  // The coming exercise.
  Q_PROPERTY(QString entryTitle READ entryTitle NOTIFY changed)
  Q_PROPERTY(QString entryPlace READ entryPlace NOTIFY changed)  // "Exercise 2 of 5"
  Q_PROPERTY(QString entryDose READ entryDose NOTIFY changed)
  Q_PROPERTY(QString entryStart READ entryStart NOTIFY changed)  // how to take up the position
  Q_PROPERTY(QString entryNote READ entryNote NOTIFY changed)    // the therapist's
  Q_PROPERTY(QString entryCaution READ entryCaution NOTIFY changed)
  Q_PROPERTY(
      bool entryOtherLanguage READ entryOtherLanguage NOTIFY changed)  // its words are not in the person's
  Q_PROPERTY(QString entryPicture READ entryPicture NOTIFY changed)    // an address for an image; empty: none
  Q_PROPERTY(QVariantMap entryMedia READ entryMedia NOTIFY changed)    // see EntryMedia.qml
  Q_PROPERTY(newel::parts::FigureSource* entryFigure READ entryFigure CONSTANT)  // how it begins
  Q_PROPERTY(QString support READ support NOTIFY changed)
  Q_PROPERTY(QStringList things READ things NOTIFY changed)  // to have ready
  Q_PROPERTY(QString prosthesis READ prosthesis NOTIFY changed)
  Q_PROPERTY(bool lastEntry READ lastEntry NOTIFY changed)
  // Reasons for a stop or for leaving an exercise out: maps "id" (number), "words".
  Q_PROPERTY(QVariantList reasons READ reasons CONSTANT)
  Q_PROPERTY(QVariantList skipReasons READ skipReasons CONSTANT)
  // A verdict.
  Q_PROPERTY(QStringList verdict READ verdict NOTIFY changed)  // what to do, most urgent first
  Q_PROPERTY(bool verdictEnds READ verdictEnds NOTIFY changed)
  Q_PROPERTY(bool emergencyFirst READ emergencyFirst NOTIFY changed)
  // The close.
  Q_PROPERTY(QString endWords READ endWords NOTIFY changed)
  Q_PROPERTY(QVariantList doneRows READ doneRows NOTIFY changed)  // maps "title", "words", "done" (bool)

 public:
  PracticeModel(PracticeSession& session, const HomeParts& parts, QObject* parent = nullptr);

  QString error() const { return m_error; }
  QString question() const;
  QString questionHelp() const;
  QString questionPlace() const;
  QVariantList choices() const;
  QString entryTitle() const;
  QString entryPlace() const;
  QString entryDose() const;
  QString entryStart() const;
  QString entryNote() const;
  QString entryCaution() const;
  bool entryOtherLanguage() const;
  QString entryPicture() const;
  QVariantMap entryMedia() const;
  parts::FigureSource* entryFigure() { return &m_figure; }
  QString support() const;
  QStringList things() const;
  QString prosthesis() const;
  bool lastEntry() const;
  QVariantList reasons() const;
  QVariantList skipReasons() const;
  QStringList verdict() const;
  bool verdictEnds() const;
  bool emergencyFirst() const;
  QString endWords() const;
  QVariantList doneRows() const;

  Q_INVOKABLE void answer(const QString& choice);
  Q_INVOKABLE void painBefore(int pain);
  Q_INVOKABLE void confirmSupportAndStart();
  Q_INVOKABLE void stopReason(int reason);
  Q_INVOKABLE void skip(int reason);
  Q_INVOKABLE void rate(int pain, int effort);
  Q_INVOKABLE void acknowledge();
  // Ends the practice where it is; what was done counts.
  Q_INVOKABLE void finishNow();

 signals:
  void changed();

 private:
  const PracticeRun* run() const { return m_session.run(); }
  void showFigure();
  void markHoldsSeen();
  const v1::Entry* entry() const;  // nullptr when there is none to come
  const v1::ExerciseWords* words() const;
  QString resolved(const std::string& text) const;
  void apply(const PracticeSession::Step& step);

  PracticeSession& m_session;
  const HomeParts& m_parts;
  QString m_error;
  parts::FigureSource m_figure;
  mutable MediaRows m_media;
};

}  // namespace newel::home
