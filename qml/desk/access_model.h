// Who has access to one person's record, and which phones: therapists are assigned and taken off by leads and
// administrators; a phone's access is taken away by whoever looks after the person, after one more look.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <functional>
#include <vector>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class AccessModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(bool mayAssign READ mayAssign NOTIFY changed)
  Q_PROPERTY(bool mayRevoke READ mayRevoke NOTIFY changed)
  Q_PROPERTY(QVariantList therapists READ therapists NOTIFY changed)  // {id, name, assigned}
  Q_PROPERTY(int assignedCount READ assignedCount NOTIFY changed)
  Q_PROPERTY(QVariantList phones READ phones NOTIFY changed)  // {id, name, paired, contact, version, revoked}
  Q_PROPERTY(QVariantMap asked READ asked NOTIFY changed)     // the phone that is about to lose access
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)

 public:
  explicit AccessModel(DeskContext& context, QObject* parent = nullptr);

  QString name() const { return m_name; }
  bool mayAssign() const;
  bool mayRevoke() const { return m_context.therapist.role() != v1::ROLE_AUDITOR; }
  QVariantList therapists() const;
  int assignedCount() const;
  QVariantList phones() const;
  QVariantMap asked() const;
  bool busy() const { return m_busy; }
  QString problem() const { return m_problem; }

  void begin(const std::string& person_id, const QString& name);
  void end();
  // Something of this person changed at the hub; empty: perhaps of everybody.
  void nudge(const std::string& person_id);
  Q_INVOKABLE void assign(const QString& therapist_id, bool assigned);
  Q_INVOKABLE void ask(const QString& device_id);  // empty: not after all
  Q_INVOKABLE void revoke();                       // the one that was asked about

 signals:
  void changed();
  void revoked(const QString& phone);
  void sessionEnded();

 private:
  struct Facts {
    absl::StatusOr<std::vector<v1::Assignment>> therapists;
    absl::StatusOr<std::vector<v1::Device>> phones;
  };
  void read();
  void got(Facts facts);
  void run(const QString& words, const QString& doing, std::function<absl::Status(DeskClient&)> call,
           std::function<void()> done);
  QVariantMap rowOf(const v1::Device& device) const;

  DeskContext& m_context;
  std::string m_person_id;
  QString m_name;
  std::vector<v1::Assignment> m_therapists;
  std::vector<v1::Device> m_phones;
  std::string m_asked_id;
  bool m_busy = false;
  QString m_problem;
};

}  // namespace newel::desk
