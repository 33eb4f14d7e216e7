// The clinic's own exercises: the list, and the form in which one is written or revised. The form's rules are
// core/library's; this carries values in and says what is still wrong.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantMap>

#include "qml/desk/desk_content.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class OwnExerciseModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QVariantList list READ list NOTIFY changed)  // {id, title, facts}, the newest revisions
  Q_PROPERTY(QVariantList movements READ movements NOTIFY changed)  // {value, text}
  Q_PROPERTY(bool writing READ writing NOTIFY changed)              // the form is open
  Q_PROPERTY(QString heading READ heading NOTIFY changed)
  Q_PROPERTY(QString movement READ movement NOTIFY changed)
  Q_PROPERTY(QVariantList phases READ phases NOTIFY changed)   // {key, label, text}
  Q_PROPERTY(QVariantMap values READ values NOTIFY changed)    // by the keys of set()
  Q_PROPERTY(QVariantMap options READ options NOTIFY changed)  // lists of {value, text}
  Q_PROPERTY(QVariantMap chosen READ chosen NOTIFY changed)    // lists of values, for those with many
  Q_PROPERTY(QVariantList doseFields READ doseFields NOTIFY changed)
  Q_PROPERTY(QVariantMap dose READ dose NOTIFY changed)
  Q_PROPERTY(QString picture READ picture NOTIFY changed)  // as an address for an image; empty: none
  Q_PROPERTY(QString missing READ missing NOTIFY changed)  // what is still wrong; empty: may be saved
  Q_PROPERTY(bool saving READ saving NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)

 public:
  OwnExerciseModel(DeskContext& context, DeskContent& content, QObject* parent = nullptr);

  void begin();
  QVariantList list() const;
  QVariantList movements() const;
  bool writing() const { return m_writing; }
  QString heading() const;
  QString movement() const;
  QVariantList phases() const;
  QVariantMap values() const;
  QVariantMap options() const;
  QVariantMap chosen() const;
  QVariantList doseFields() const;
  QVariantMap dose() const;
  QString picture() const;
  QString missing() const;
  bool saving() const { return m_saving; }
  QString problem() const { return m_problem; }

  Q_INVOKABLE void beginNew(const QString& movement_id);
  Q_INVOKABLE void revise(const QString& exercise_id);
  Q_INVOKABLE void close();
  // title, purpose, start, support, breathing, fault, mend; good, stop_if, cautions: one line each.
  Q_INVOKABLE void set(const QString& key, const QString& text);
  Q_INVOKABLE void setPhase(const QString& key, const QString& text);
  // position, purpose_group, prosthesis, mobility, both.
  Q_INVOKABLE void choose(const QString& key, int value);
  // supports, sides, equipment; muscles and tags by their keys.
  Q_INVOKABLE void toggle(const QString& key, const QVariant& value);
  Q_INVOKABLE void setDose(const QString& key, int value);
  // A file on this desk: made small, without place and time in it. Empty: none.
  Q_INVOKABLE void setPicture(const QString& file);
  Q_INVOKABLE void save();

 signals:
  void changed();
  void saved(const QString& title);

 private:
  v1::ExerciseWords& words() { return *m_own.mutable_words(0); }
  const v1::ExerciseWords& words() const { return m_own.words(0); }
  void positionChosen();
  v1::OwnExercise complete() const;  // what was typed, without blanks round it

  DeskContext& m_context;
  DeskContent& m_content;
  v1::OwnExercise m_own;
  std::uint32_t m_base = 0;
  bool m_writing = false;
  bool m_saving = false;
  QString m_problem;
};

}  // namespace newel::desk
