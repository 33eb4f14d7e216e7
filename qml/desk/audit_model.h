// The audit page: who saw and changed what, newest first, by person, account and days; and whether the chain
// holds. Nothing here can be changed.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <vector>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class AuditModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)  // {n, when, who, what, about}
  Q_PROPERTY(QString who READ who WRITE setWho NOTIFY changed)
  Q_PROPERTY(QString whoProblem READ whoProblem NOTIFY changed)
  Q_PROPERTY(QString about READ about NOTIFY changed)  // the person's name, or empty: everybody
  Q_PROPERTY(QString firstDay READ firstDay WRITE setFirstDay NOTIFY changed)
  Q_PROPERTY(QString firstDayProblem READ firstDayProblem NOTIFY changed)
  Q_PROPERTY(QString lastDay READ lastDay WRITE setLastDay NOTIFY changed)
  Q_PROPERTY(QString lastDayProblem READ lastDayProblem NOTIFY changed)
  Q_PROPERTY(bool more READ more NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString chain READ chain NOTIFY changed)  // of the last check; empty: none yet
  Q_PROPERTY(bool chainBroken READ chainBroken NOTIFY changed)

 public:
  explicit AuditModel(DeskContext& context, QObject* parent = nullptr);

  QVariantList lines() const;
  QString who() const { return m_who; }
  void setWho(const QString& who);
  QString whoProblem() const { return m_who_problem; }
  QString about() const { return m_about; }
  QString firstDay() const { return m_first_day; }
  void setFirstDay(const QString& day);
  QString firstDayProblem() const { return m_first_day_problem; }
  QString lastDay() const { return m_last_day; }
  void setLastDay(const QString& day);
  QString lastDayProblem() const { return m_last_day_problem; }
  bool more() const { return m_next != 0; }
  bool busy() const { return m_busy; }
  QString problem() const { return m_problem; }
  QString chain() const { return m_chain; }
  bool chainBroken() const { return m_chain_broken; }

  // Empty id: about everybody.
  void begin(const std::string& person_id, const QString& name);
  void leave();
  Q_INVOKABLE void look();         // from the newest on
  Q_INVOKABLE void lookFurther();  // what is older
  Q_INVOKABLE void aboutEverybody();
  Q_INVOKABLE void check();

 signals:
  void changed();
  void sessionEnded();

 private:
  struct Page {
    absl::Status status;
    std::vector<v1::AuditLine> lines;
    std::uint64_t next = 0;
  };
  // nullopt: something to mend was said.
  std::optional<v1::ListAuditRequest> request();
  void read(v1::ListAuditRequest request);
  void got(Page page);
  void readAccounts();
  bool findAccount(std::string& id);

  DeskContext& m_context;
  std::vector<v1::AuditLine> m_lines;
  std::vector<v1::Account> m_accounts;
  std::string m_person_id;
  QString m_about;
  QString m_who;
  QString m_who_problem;
  QString m_first_day;
  QString m_first_day_problem;
  QString m_last_day;
  QString m_last_day_problem;
  std::uint64_t m_next = 0;
  int m_round = 0;  // an answer of an earlier one is not shown
  bool m_busy = false;
  QString m_problem;
  QString m_chain;
  bool m_chain_broken = false;
};

}  // namespace newel::desk
