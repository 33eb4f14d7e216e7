// How things went, a few weeks at a time: days by what became of what was due, pain and effort, and the same
// in words. Reads only the weeks that it shows. What counts as what comes from core/progress; nothing here
// judges it. UI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>

#include "core/progress/course.h"
#include "qml/home/course_extras.h"
#include "qml/home/settings_model.h"

namespace newel::home {

class HistoryModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(QString span READ span NOTIFY changed)  // "20 October – 30 November 2026"
  Q_PROPERTY(QString summary READ summary NOTIFY changed)
  Q_PROPERTY(QString error READ error NOTIFY changed)
  Q_PROPERTY(bool empty READ empty NOTIFY changed)  // nothing that was due is known, nothing rated
  Q_PROPERTY(QStringList dayNames READ dayNames NOTIFY changed)  // seven, as the place begins its week
  // Newest first, maps: "title" (the days), "words" (what the marks say), "states" (seven lists for DayMark).
  Q_PROPERTY(QVariantList weeks READ weeks NOTIFY changed)
  // See RatingChart; and what they show, in words.
  Q_PROPERTY(QVariantList pain READ pain NOTIFY changed)
  Q_PROPERTY(QVariantList effort READ effort NOTIFY changed)
  Q_PROPERTY(QString painWords READ painWords NOTIFY changed)
  Q_PROPERTY(QString effortWords READ effortWords NOTIFY changed)
  // Hours that the prosthesis was worn, day by day; see course_extras.h.
  Q_PROPERTY(QVariantList wear READ wear NOTIFY changed)
  Q_PROPERTY(double wearMost READ wearMost NOTIFY changed)
  Q_PROPERTY(QString wearWords READ wearWords NOTIFY changed)
  // Whatever weeks are shown: all that the clinic measured or wants to.
  Q_PROPERTY(QVariantList measures READ measures NOTIFY changed)
  Q_PROPERTY(bool hasEarlier READ hasEarlier NOTIFY changed)
  Q_PROPERTY(bool hasLater READ hasLater NOTIFY changed)

 public:
  static constexpr int kWeeks = 6;  // on one page

  HistoryModel(SettingsModel& settings, const HomeParts& parts, QObject* parent = nullptr);

  QString span() const;
  QString summary() const;
  QString error() const { return m_error; }
  bool empty() const;
  QStringList dayNames() const;
  QVariantList weeks() const;
  QVariantList pain() const { return points(false); }
  QVariantList effort() const { return points(true); }
  QString painWords() const { return ratingWords(false); }
  QString effortWords() const { return ratingWords(true); }
  QVariantList wear() const { return m_worn.points; }
  double wearMost() const { return m_worn.most; }
  QString wearWords() const { return m_worn.words; }
  QVariantList measures() const { return m_measures; }
  bool hasEarlier() const;
  bool hasLater() const { return m_back > 0; }

  // The page has come to the front: the latest weeks, read anew.
  Q_INVOKABLE void shown();
  Q_INVOKABLE void earlier();
  Q_INVOKABLE void later();

 signals:
  void changed();

 private:
  void read();
  void noteKnownFrom();
  absl::CivilDay first() const;
  absl::CivilDay last() const;
  QVariantList points(bool effort) const;
  QString ratingWords(bool effort) const;

  SettingsModel& m_settings;
  const HomeParts& m_parts;
  int m_back = 0;  // pages back from the present one
  absl::CivilDay m_known_from;
  std::vector<CourseWeek> m_weeks;  // oldest first
  std::vector<CourseRating> m_ratings;
  WornCourse m_worn;
  QVariantList m_measures;
  QString m_error;
};

}  // namespace newel::home
