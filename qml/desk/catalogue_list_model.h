// The catalogue to pick from, filtered by words, each with what the rules would say for this person.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractListModel>
#include <vector>

#include "core/records/rule.pb.h"
#include "qml/desk/desk_context.h"

namespace newel::desk {

class CatalogueListModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY filterChanged)
  Q_PROPERTY(int count READ count NOTIFY countChanged)

 public:
  enum Role { ExerciseId = Qt::UserRole + 1, Title, Purpose, Facts, Worst, WorstWords };

  explicit CatalogueListModel(const DeskContext& context, QObject* parent = nullptr)
      : QAbstractListModel(parent), m_context(context) {}

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : count(); }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;
  int count() const { return static_cast<int>(m_shown.size()); }
  QString filter() const { return m_filter; }
  void setFilter(const QString& filter);

  // What the rules say is worked out here, once a person.
  void showFor(const v1::Person& person);

 signals:
  void filterChanged();
  void countChanged();

 private:
  struct Row {
    const v1::Exercise* exercise = nullptr;
    QString title;
    QString purpose;
    QString facts;
    v1::Effect worst = v1::EFFECT_UNSPECIFIED;
    QString worst_words;
  };
  void refresh();

  const DeskContext& m_context;
  std::vector<Row> m_rows;
  std::vector<std::size_t> m_shown;
  QString m_filter;
};

}  // namespace newel::desk
