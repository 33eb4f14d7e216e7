// Outcome measures of one person: what was taken, what a change of it means by the published errors, and the
// form for the next one. The judgement is core/progress's; nothing here assigns a mobility level.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>

#include "core/progress/measure_table.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class MeasuresModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString limbs READ limbs NOTIFY changed)
  // Kinds that were taken, by name: {title, last, change, verdict, studies, cutoffs, points, least, most,
  // band, values: [{id, words, mayWithdraw}]}.
  Q_PROPERTY(QVariantList taken READ taken NOTIFY changed)
  Q_PROPERTY(QVariantList kinds READ kinds CONSTANT)  // {id, name}
  // The form.
  Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY formChanged)
  Q_PROPERTY(QString protocol READ protocol NOTIFY formChanged)
  Q_PROPERTY(QString unit READ unit NOTIFY formChanged)
  Q_PROPERTY(bool perSide READ perSide NOTIFY formChanged)
  Q_PROPERTY(bool aidRecorded READ aidRecorded NOTIFY formChanged)
  Q_PROPERTY(QString value READ value WRITE setValue NOTIFY formChanged)
  Q_PROPERTY(QString day READ day WRITE setDay NOTIFY formChanged)
  Q_PROPERTY(QString aid READ aid WRITE setAid NOTIFY formChanged)
  Q_PROPERTY(int side READ side WRITE setSide NOTIFY formChanged)  // v1::Side
  Q_PROPERTY(QString note READ note WRITE setNote NOTIFY formChanged)
  Q_PROPERTY(QString valueProblem READ valueProblem NOTIFY formChanged)
  Q_PROPERTY(QString dayProblem READ dayProblem NOTIFY formChanged)
  Q_PROPERTY(QString preview READ preview NOTIFY formChanged)  // what the typed value would mean
  Q_PROPERTY(bool maySave READ maySave NOTIFY formChanged)
  Q_PROPERTY(bool saving READ saving NOTIFY formChanged)
  Q_PROPERTY(QString problem READ problem NOTIFY formChanged)

 public:
  explicit MeasuresModel(DeskContext& context, QObject* parent = nullptr);

  // Opens the page with an empty form; follow() keeps the form.
  void begin(std::shared_ptr<const PersonFile> file);
  void follow(std::shared_ptr<const PersonFile> file);

  QString name() const;
  QString limbs() const;
  QVariantList taken() const;
  QVariantList kinds() const;
  QString kind() const { return QString::fromStdString(m_kind); }
  void setKind(const QString& kind);
  QString protocol() const;
  QString unit() const;
  bool perSide() const;
  bool aidRecorded() const;
  QString value() const { return m_value; }
  void setValue(const QString& value);
  QString day() const { return m_day; }
  void setDay(const QString& day);
  QString aid() const { return m_aid; }
  void setAid(const QString& aid);
  int side() const { return m_side; }
  void setSide(int side);
  QString note() const { return m_note; }
  void setNote(const QString& note);
  QString valueProblem() const;
  QString dayProblem() const;
  QString preview() const;
  bool maySave() const;
  bool saving() const { return m_saving; }
  QString problem() const { return m_problem; }

  // saved() follows, or problem. Tried again, it is put once.
  Q_INVOKABLE void save();
  // It was entered by mistake: kept at the hub, and counts nowhere from now on.
  Q_INVOKABLE void withdraw(const QString& id);

 signals:
  void changed();
  void formChanged();
  void saved();

 private:
  struct Series;
  const v1::MeasureKind* current() const { return MeasureTable::builtIn().find(m_kind); }
  std::vector<Series> series() const;
  QVariantMap rowOf(const Series& series) const;
  v1::Measure formed() const;
  std::optional<double> number() const;
  void put(const v1::PutMeasureRequest& request, bool from_form);

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  std::string m_kind;
  std::string m_id;  // of the measure being entered; made once
  QString m_value;
  QString m_day;
  QString m_aid;
  int m_side = v1::SIDE_UNSPECIFIED;
  QString m_note;
  bool m_saving = false;
  QString m_problem;
};

}  // namespace newel::desk
