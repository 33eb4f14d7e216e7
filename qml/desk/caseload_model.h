// The attention list: every person of the clinic, most urgent first, each row saying why in words.
// The order is core/progress's. While somebody reads it no row moves by itself: news changes the words of a
// row in its place, and `stale` offers to sort again.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractListModel>
#include <map>
#include <vector>

#include "core/progress/attention.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class CaseloadModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY filterChanged)
  Q_PROPERTY(QString summary READ summary NOTIFY changed)  // "46 people, 6 shown; 2 phones not heard from"
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(bool loading READ loading NOTIFY changed)
  Q_PROPERTY(int read READ read NOTIFY changed)  // people whose record is read, of
  Q_PROPERTY(int total READ total NOTIFY changed)
  Q_PROPERTY(bool stale READ stale NOTIFY changed)  // the order would be another one now
  Q_PROPERTY(QString news READ news NOTIFY changed)
  Q_PROPERTY(int count READ count NOTIFY changed)
  Q_PROPERTY(bool seesOthers READ seesOthers NOTIFY changed)  // there are people of colleagues in the list
  Q_PROPERTY(bool mineOnly READ mineOnly WRITE setMineOnly NOTIFY filterChanged)

 public:
  enum Role {
    PersonId = Qt::UserRole + 1,
    Name,
    Limbs,
    UrgencyLevel,  // 0 now, 1 today, 2 soon, 3 all well
    UrgencyWords,
    Reason,       // the first
    MoreReasons,  // the others, a list
    Age,          // of the figures
    Fresh,        // figures are not older than they should be
    Weeks,
    WeeksWords,
  };

  explicit CaseloadModel(DeskContext& context, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  QString filter() const { return m_filter; }
  void setFilter(const QString& filter);
  bool seesOthers() const;
  bool mineOnly() const { return m_mine_only; }
  void setMineOnly(bool mine);
  QString summary() const;
  QString problem() const { return m_problem; }
  bool loading() const { return m_loading; }
  int read() const { return m_read; }
  int total() const { return static_cast<int>(m_rows.size()); }
  bool stale() const { return m_stale; }
  QString news() const { return m_news; }
  int count() const { return static_cast<int>(m_shown.size()); }

  // Reads everything again and sorts.
  Q_INVOKABLE void reload();
  // Sorts what is known.
  Q_INVOKABLE void sortAgain();
  // Something of this person changed at the hub; empty: perhaps of everybody.
  void nudge(const std::string& person_id);
  // Whose records are open to this account by a written reason at `now`, the hub's, each with its end.
  QStringList openedWords(const std::string& account_id, absl::Time now) const;
  void clear();
  // Reads no further; what is known stays.
  void rest();

 signals:
  void changed();
  void filterChanged();
  void sessionEnded(const absl::Status& status);

 private:
  struct Row {
    v1::CaseRow row;
    AttentionFacts facts;
    std::vector<std::optional<double>> weeks;
    AttentionRow attention;
    bool known = false;  // the record was read
  };

  void gotRows(std::vector<v1::CaseRow> rows);
  void readNext();
  void readOne(const std::string& person_id, bool at_once);
  void gotFile(const std::string& person_id, const absl::StatusOr<PersonFile>& file);
  std::vector<std::string> order() const;
  void judge(Row& row) const;
  void show();
  bool matches(const Row& row) const;
  QString weeksWords(const Row& row) const;

  DeskContext& m_context;
  std::map<std::string, Row> m_rows;
  std::vector<std::string> m_sorted;  // every id
  std::vector<std::string> m_shown;   // those that match the filter
  std::vector<std::string> m_to_read;
  QString m_filter;
  bool m_mine_only = false;
  QString m_problem;
  QString m_news;
  bool m_loading = false;
  bool m_stale = false;
  int m_read = 0;
};

}  // namespace newel::desk
