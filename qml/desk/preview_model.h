// What the person's phone will show and say for the selected entry, beat by beat, from the very timeline that
// the phone will play.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractListModel>
#include <QtCore/QVariantMap>

#include "core/records/timeline.pb.h"
#include "qml/desk/draft_model.h"

namespace newel::desk {

class PreviewModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(int at READ at WRITE setAt NOTIFY atChanged)
  Q_PROPERTY(int count READ count NOTIFY shownChanged)
  Q_PROPERTY(QString problem READ problem NOTIFY shownChanged)
  Q_PROPERTY(QString language READ language NOTIFY shownChanged)
  // Of the beat `at`, as PracticeFacts has them: title, cue, next, support, number, numberOf, setWords,
  // sideWords, resting, posts, entryNumber, entryCount.
  Q_PROPERTY(QVariantMap facts READ facts NOTIFY atChanged)

 public:
  enum Role { Start = Qt::UserRole + 1, Words, Spoken, What };

  PreviewModel(DraftModel& draft, const DeskContext& context, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : count(); }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;
  int count() const { return m_timeline.beats_size(); }
  int at() const { return m_at; }
  void setAt(int at);
  QString problem() const { return m_problem; }
  QString language() const;
  QVariantMap facts() const;

 signals:
  void atChanged();
  void shownChanged();

 private:
  void refresh();
  QString numberOf(const v1::Beat& beat) const;
  QString number(const v1::Beat& beat) const;
  QString setWords(const v1::Beat& beat) const;
  QString sideWords(const v1::Beat& beat) const;
  int repetitionsOfSet(const v1::Beat& beat) const;

  DraftModel& m_draft;
  const DeskContext& m_context;
  v1::Timeline m_timeline;
  QString m_problem;
  int m_at = 0;
};

}  // namespace newel::desk
