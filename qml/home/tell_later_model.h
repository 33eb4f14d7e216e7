// "I did this away from the phone": one occasion after another, told in a few taps. What it means is decided
// by core/practice/told_later.h; the record goes to the clinic as what it is, told and not timed.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>
#include <vector>

#include "core/records/rule.pb.h"
#include "core/schedule/untold.h"
#include "qml/home/home_parts.h"

namespace newel::home {

class TellLaterModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(Step step READ step NOTIFY changed)
  // What may be told, the newest day first: maps "day" (words, on the first row of its day, else empty),
  // "title", "words" (dose and window).
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)  // of the chosen one
  Q_PROPERTY(QString when READ when NOTIFY changed)    // its day and window
  Q_PROPERTY(int pain READ pain NOTIFY changed)        // -1: not answered
  Q_PROPERTY(int effort READ effort NOTIFY changed)
  Q_PROPERTY(QVariantList reasons READ reasons CONSTANT)         // as PracticeModel.reasons
  Q_PROPERTY(QStringList findings READ findings NOTIFY changed)  // once told: what to do, most urgent first
  Q_PROPERTY(bool ends READ ends NOTIFY changed)
  Q_PROPERTY(bool emergencyFirst READ emergencyFirst NOTIFY changed)
  Q_PROPERTY(QString error READ error NOTIFY changed)

 public:
  enum class Step { Which, HowMuch, Pain, Effort, Happened, Told };
  Q_ENUM(Step)

  explicit TellLaterModel(const HomeParts& parts, QObject* parent = nullptr);

  Step step() const { return m_step; }
  QVariantList rows() const { return m_rows; }
  QString title() const { return m_title; }
  QString when() const { return m_when; }
  int pain() const { return m_pain; }
  int effort() const { return m_effort; }
  QVariantList reasons() const;
  QStringList findings() const;
  bool ends() const { return m_ends; }
  bool emergencyFirst() const;
  QString error() const { return m_error; }

  // From the beginning: the list anew.
  Q_INVOKABLE void begin();
  Q_INVOKABLE void choose(int row);
  Q_INVOKABLE void howMuch(int percent);
  Q_INVOKABLE void givePain(int pain);
  Q_INVOKABLE void giveEffort(int effort);
  // The last answer; 0: nothing happened. Keeps the record.
  Q_INVOKABLE void happened(int reason);
  // One question back; false at the first and once it is told.
  Q_INVOKABLE bool back();

 signals:
  void changed();
  void told();  // a record was kept

 private:
  void findRows();
  void keep(v1::StopReason happened);

  const HomeParts& m_parts;
  Step m_step = Step::Which;
  std::vector<UntoldOccasion> m_untold;
  QVariantList m_rows;
  UntoldOccasion m_chosen;
  QString m_title;
  QString m_when;
  int m_percent = 100;
  int m_pain = -1;
  int m_effort = -1;
  std::vector<v1::Finding> m_findings;
  bool m_ends = false;
  QString m_error;
};

}  // namespace newel::home
