// The entries of a draft as rows: what, how much, how long, the worst a rule says about it.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractListModel>
#include <QtCore/QStringList>

#include "core/review/review.h"
#include "qml/desk/desk_context.h"

namespace newel::desk {

class EntryListModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(int count READ count NOTIFY countChanged)

 public:
  enum Role {
    EntryId = Qt::UserRole + 1,
    Title,  // unique in the draft: "Sit to stand (2)"
    Dose,
    Details,  // support, sides, prosthesis, days
    Minutes,
    Worst,       // an Effect, 0: nothing
    WorstWords,  // "Block: ...", empty: nothing
    Changed,     // new or other than in the last programme
  };

  explicit EntryListModel(const DeskContext& context, QObject* parent = nullptr)
      : QAbstractListModel(parent), m_context(context) {}

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : count(); }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;
  int count() const { return m_draft.entries_size(); }

  // Takes the draft and what the review says of it. Rows keep their place where their entry does, so that
  // nothing under the keyboard is made anew.
  void show(const v1::Programme& draft, const Review& review, const v1::Programme* last);
  QString titleAt(int row) const { return m_titles.value(row); }

 signals:
  void countChanged();

 private:
  const EntryReview* reviewOf(int row) const;
  bool changed(const v1::Entry& entry) const;

  const DeskContext& m_context;
  v1::Programme m_draft;
  Review m_review;
  v1::Programme m_last;
  bool m_has_last = false;
  QStringList m_titles;
};

// Each entry's title, numbered where an exercise comes more than once.
QStringList entryTitles(const v1::Programme& programme, const Catalogue& catalogue,
                        const std::string& language);

}  // namespace newel::desk
