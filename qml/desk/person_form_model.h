// The form for a new person or a change of record. It holds what was typed and chosen, by field, and says at
// the field what is missing or wrong. What a record must be is decided by core/records/check.h.
// Keys: the field's path in identity.proto and person.proto ("given_name", "home.ramp"), and for limbs the
// side instead of the index: "lost" (1 left, 2 right, 3 both), "left.level", "left.prosthesis" (an Answer),
// "left.knee", "left.foot". "no_conditions": asked, none of the list.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantMap>
#include <memory>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class PersonFormModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QVariantMap values READ values NOTIFY valuesChanged)
  Q_PROPERTY(QVariantMap problems READ problems NOTIFY problemsChanged)
  Q_PROPERTY(QVariantMap options READ options CONSTANT)                     // key: list of {value, text}
  Q_PROPERTY(QVariantList conditions READ conditions NOTIFY valuesChanged)  // chosen values
  Q_PROPERTY(bool isNew READ isNew NOTIFY valuesChanged)
  Q_PROPERTY(bool saving READ saving NOTIFY problemsChanged)
  Q_PROPERTY(QString problem READ problem NOTIFY problemsChanged)  // of the whole
  Q_PROPERTY(QString title READ title NOTIFY valuesChanged)

 public:
  explicit PersonFormModel(DeskContext& context, QObject* parent = nullptr);

  QVariantMap values() const { return m_values; }
  QVariantMap problems() const { return m_problems; }
  QVariantMap options() const { return m_options; }
  QVariantList conditions() const { return m_values.value(QStringLiteral("conditions")).toList(); }
  bool isNew() const { return m_base_revision == 0; }
  bool saving() const { return m_saving; }
  QString problem() const { return m_problem; }
  QString title() const;

  void beginNew();
  void beginChange(const PersonFile& file);
  // What a file from elsewhere states, over what the fields have; the rest stays. For a new person.
  void take(const v1::Identity& identity, const v1::Person& person);

  Q_INVOKABLE void set(const QString& key, const QVariant& value);
  Q_INVOKABLE void toggleCondition(int condition);
  // What has been asked of nobody yet becomes "not known", said aloud rather than left out.
  Q_INVOKABLE void restNotKnown();
  // saved() follows, or problems.
  Q_INVOKABLE void save();

  // What would be sent now. For tests.
  v1::Person person() const;
  v1::Identity identity() const;

 signals:
  void valuesChanged();
  void problemsChanged();
  void saved(const QString& person_id);

 private:
  int number(const QString& key) const { return m_values.value(key).toInt(); }
  std::string words(const QString& key) const {
    return m_values.value(key).toString().trimmed().toStdString();
  }
  void addLimb(v1::Person& person, v1::Side side) const;
  bool lost(v1::Side side) const;
  void fitLimb(const QString& side);
  void addMissing(QVariantMap& problems) const;
  bool checkAll();
  void putProblem(const absl::Status& status);

  DeskContext& m_context;
  QVariantMap m_values;
  QVariantMap m_problems;
  QVariantMap m_options;
  QString m_problem;
  v1::Person m_base_person;  // keeps what a newer program wrote
  v1::Identity m_base_identity;
  std::uint64_t m_base_revision = 0;
  bool m_saving = false;
};

}  // namespace newel::desk
