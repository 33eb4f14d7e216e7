// What happened between the clinic and one person, on one list by date, newest first: programmes, hold
// orders, messages, measures, and how far each got. Not here: what was practised (done_model.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>

#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class TimelineModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString name READ name NOTIFY changed)
  // {value, text} of what can be looked at alone, "all of it" first; `wanted` is one of the values.
  Q_PROPERTY(QVariantList kinds READ kinds NOTIFY changed)
  Q_PROPERTY(int wanted READ wanted WRITE setWanted NOTIFY changed)
  // {kind, kindWords, title, text, day, firstOfDay, tracked, sent, arrived, seen}; the last four only where
  // `tracked`: words, empty for not yet.
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)

 public:
  enum Kind { Everything, Programmes, Holds, Messages, Measures };
  Q_ENUM(Kind)

  explicit TimelineModel(DeskContext& context, QObject* parent = nullptr)
      : QObject(parent), m_context(context) {}

  void show(std::shared_ptr<const PersonFile> file);

  QString name() const;
  QVariantList kinds() const;
  int wanted() const { return m_wanted; }
  void setWanted(int kind);
  QVariantList rows() const;

 signals:
  void changed();

 private:
  struct Row {
    absl::Time at;
    Kind kind = Everything;
    QString title;
    QString text;
    std::optional<Reached> reached;  // nullopt: it is not sent anywhere, or came from the person
  };
  std::vector<Row> all() const;
  void addProgrammes(std::vector<Row>& rows) const;
  void addHolds(std::vector<Row>& rows) const;
  void addMessages(std::vector<Row>& rows) const;
  void addMeasures(std::vector<Row>& rows) const;

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  int m_wanted = Everything;
};

}  // namespace newel::desk
