// The attention list: every person of the clinic, most urgent first, each row saying why in words.
// The order is core/progress's. While somebody reads it no row moves by itself: news changes the words of a
// row in its place, and `stale` offers to sort again.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractListModel>
#include <QtCore/QVariantList>
#include <atomic>
#include <memory>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "qml/desk/caseload_rows.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class CaseloadModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY filterChanged)
  Q_PROPERTY(int wantedUrgency READ wantedUrgency WRITE setWantedUrgency NOTIFY filterChanged)
  Q_PROPERTY(int wantedKind READ wantedKind WRITE setWantedKind NOTIFY filterChanged)
  // {value, text} with how many there are of each; value -1 is all.
  Q_PROPERTY(QVariantList urgencies READ urgencies NOTIFY countsChanged)
  Q_PROPERTY(QVariantList kinds READ kinds NOTIFY countsChanged)
  Q_PROPERTY(QString summary READ summary NOTIFY changed)  // "46 people, 6 shown; 2 phones not heard from"
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(bool loading READ loading NOTIFY changed)
  Q_PROPERTY(int read READ read NOTIFY changed)  // people who are read so far
  Q_PROPERTY(int total READ total NOTIFY changed)
  Q_PROPERTY(bool stale READ stale NOTIFY changed)  // the order would be another one now
  Q_PROPERTY(QString news READ news NOTIFY changed)
  Q_PROPERTY(int count READ count NOTIFY changed)
  Q_PROPERTY(bool seesOthers READ seesOthers NOTIFY changed)  // there are people of colleagues in the list
  Q_PROPERTY(bool mineOnly READ mineOnly WRITE setMineOnly NOTIFY filterChanged)
  // Several rows are being chosen, to write to all of them at once.
  Q_PROPERTY(bool choosing READ choosing WRITE setChoosing NOTIFY choiceChanged)
  Q_PROPERTY(int chosenCount READ chosenCount NOTIFY choiceChanged)
  // Whose row is about to wait; empty: nobody's.
  Q_PROPERTY(QString waitFor READ waitFor NOTIFY waitChanged)
  Q_PROPERTY(QString waitName READ waitName NOTIFY waitChanged)
  Q_PROPERTY(QVariantList waitDays READ waitDays NOTIFY waitChanged)  // {value, text}
  Q_PROPERTY(QString waitProblem READ waitProblem NOTIFY waitChanged)

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
    Waiting,       // somebody said that it can wait, and nothing has ended that
    WaitingWords,  // until when, why, who
    MayWait,
    Chosen,
  };
  static constexpr int kWaitingLevel = 4;  // of wantedUrgency: those that wait

  explicit CaseloadModel(DeskContext& context, QObject* parent = nullptr);
  ~CaseloadModel() override;
  CaseloadModel(const CaseloadModel&) = delete;
  CaseloadModel& operator=(const CaseloadModel&) = delete;

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;

  QString filter() const { return m_filter; }
  void setFilter(const QString& filter);
  int wantedUrgency() const { return m_wanted_urgency; }
  void setWantedUrgency(int urgency);
  int wantedKind() const { return m_wanted_kind; }
  void setWantedKind(int kind);
  QVariantList urgencies() const;
  QVariantList kinds() const;
  bool seesOthers() const { return m_sees_others; }
  bool mineOnly() const { return m_mine_only; }
  void setMineOnly(bool mine);
  QString summary() const;
  QString problem() const { return m_problem; }
  bool loading() const { return m_loading; }
  int read() const { return m_read; }
  int total() const { return static_cast<int>(m_entries.size()); }
  bool stale() const { return m_stale; }
  QString news() const { return m_news; }
  int count() const { return static_cast<int>(m_shown.size()); }
  QString waitFor() const { return QString::fromStdString(m_wait_for); }
  QString waitName() const;
  QVariantList waitDays() const;
  QString waitProblem() const { return m_wait_problem; }

  // Reads everything again and sorts.
  Q_INVOKABLE void reload();
  // Sorts what is known.
  Q_INVOKABLE void sortAgain();
  // Asks how long the row of this person can wait; an empty id: no more.
  Q_INVOKABLE void askWait(const QString& person_id);
  Q_INVOKABLE void letWait(const QString& reason, const QString& until_day);
  Q_INVOKABLE void endWait(const QString& person_id);
  bool choosing() const { return m_choosing; }
  void setChoosing(bool choosing);  // false: nobody is chosen any more
  int chosenCount() const { return static_cast<int>(m_chosen.size()); }
  Q_INVOKABLE void toggleChosen(const QString& person_id);  // begins choosing
  Q_INVOKABLE void chooseShown();                           // all that the filter leaves, beside those chosen
  struct ChosenPerson {
    std::string id;
    QString name;
    QString limbs;
  };
  std::vector<ChosenPerson> chosen() const;  // in the order of the list
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
  void countsChanged();  // and only then: what is chosen keeps the focus
  void waitChanged();
  void choiceChanged();
  void sessionEnded(const absl::Status& status);

 private:
  ListMoment moment() const;
  void gotEntries(std::vector<CaseloadEntry> entries);
  void failed(const absl::Status& status);
  void readNudged();
  void gotRow(const std::string& person_id, absl::StatusOr<v1::CaseRow> row);
  bool standsRight(std::size_t place) const;
  void putWait(const std::string& person_id, const QString& reason, const QString& until_day);
  void countAll();
  void show();
  void dropGone();
  bool matches(const CaseloadEntry& entry) const;
  QString weeksWords(const CaseloadEntry& entry) const;
  QString waitingWords(const CaseloadEntry& entry) const;
  const CaseloadEntry* entryOf(const std::string& person_id) const;

  DeskContext& m_context;
  std::vector<CaseloadEntry> m_entries;  // as sorted last
  std::unordered_map<std::string, std::size_t> m_place;
  std::vector<std::size_t> m_shown;  // places of those that match the filter
  std::set<std::string> m_nudged;
  std::set<std::string> m_chosen;
  bool m_choosing = false;
  std::shared_ptr<std::atomic<bool>> m_wanted = std::make_shared<std::atomic<bool>>(true);
  bool m_reading_nudged = false;
  QString m_filter;
  int m_wanted_urgency = -1;
  int m_wanted_kind = -1;
  bool m_mine_only = false;
  bool m_sees_others = false;
  std::vector<int> m_urgency_counts;
  std::vector<int> m_kind_counts;
  int m_silent = 0;
  QString m_problem;
  QString m_news;
  bool m_loading = false;
  bool m_stale = false;
  int m_read = 0;
  std::string m_wait_for;
  QString m_wait_problem;
};

}  // namespace newel::desk
