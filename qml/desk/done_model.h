// What was done: occasions by day, adherence by entry, week and programme, every practice in detail.
// The counting is core/progress's; days without data are never shown as not done.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>

#include "core/progress/adherence.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class DoneModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(int weeks READ weeks WRITE setWeeks NOTIFY changed)  // 2, 4 or 8, this one included
  Q_PROPERTY(QString period READ period NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString overall READ overall NOTIFY changed)
  Q_PROPERTY(QString heard READ heard NOTIFY changed)
  Q_PROPERTY(QString definition READ definition CONSTANT)
  Q_PROPERTY(QVariantList days READ days NOTIFY changed)  // {day, weekday, date, today}
  // {title, share, dose, cells: [{state, words}]}; state as OccasionResult::State, -1: nothing due.
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(QVariantList byWeek READ byWeek NOTIFY changed)            // {label, share, dose}
  Q_PROPERTY(QVariantList byProgramme READ byProgramme NOTIFY changed)  // {label, share, dose}
  // Wearing time, the newest day first: {day, words, bad}; bad: the skin was hurt or stayed red too long.
  Q_PROPERTY(QVariantList wear READ wear NOTIFY changed)
  // Newest first: {day, known, end, stopped, note, doubts, entries: [{title, dose, pain, effort, sets,
  // skipped}]}.
  Q_PROPERTY(QVariantList practices READ practices NOTIFY changed)

 public:
  explicit DoneModel(DeskContext& context, QObject* parent = nullptr);

  void show(std::shared_ptr<const PersonFile> file);

  int weeks() const { return m_weeks; }
  void setWeeks(int weeks);
  QString period() const;
  QString problem() const { return m_problem; }
  QString overall() const;
  QString heard() const;
  QString definition() const;
  QVariantList days() const { return m_days; }
  QVariantList rows() const { return m_rows; }
  QVariantList byWeek() const { return m_by_week; }
  QVariantList byProgramme() const { return m_by_programme; }
  QVariantList practices() const { return m_practices; }
  QVariantList wear() const;

  absl::CivilDay first() const { return m_first; }
  absl::CivilDay last() const { return m_last; }

 signals:
  void changed();

 private:
  void refresh();
  void makeDays();
  void makeRows();
  void makeShares();
  void makePractices();

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  int m_weeks = 2;
  absl::CivilDay m_first;
  absl::CivilDay m_last;
  Adherence m_adherence;
  QString m_problem;
  QVariantList m_days;
  QVariantList m_rows;
  QVariantList m_by_week;
  QVariantList m_by_programme;
  QVariantList m_practices;
};

// One practice for people to read; see DoneModel::practices.
QVariantMap practiceMap(const v1::Practice& practice, const PersonFile& file, const DeskContext& context);

}  // namespace newel::desk
