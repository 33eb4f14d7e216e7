// What the clinic has set for itself, each number with its published range beside it.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>

#include "qml/desk/desk_content.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class ClinicSettingsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  // {id, title, help, unit, value, usual, least, most, source}
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  // When the clinic's store was last copied and checked, and whether that is too long ago.
  Q_PROPERTY(QString backup READ backup NOTIFY changed)
  Q_PROPERTY(bool backupOld READ backupOld NOTIFY changed)
  Q_PROPERTY(bool mayChange READ mayChange NOTIFY changed)  // by the role of who is signed in
  Q_PROPERTY(bool dirty READ dirty NOTIFY changed)
  Q_PROPERTY(bool saving READ saving NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)

 public:
  ClinicSettingsModel(DeskContext& context, DeskContent& content, QObject* parent = nullptr);

  void begin();
  void readBackup();  // asks the hub; what it said shows
  QVariantList rows() const;
  QString backup() const;
  bool backupOld() const;
  bool mayChange() const;
  bool dirty() const { return m_values != m_context.settings; }
  bool saving() const { return m_saving; }
  QString problem() const { return m_problem; }

  Q_INVOKABLE void set(const QString& id, int value);
  Q_INVOKABLE void usual();  // every number back to its usual value
  Q_INVOKABLE void save();

 signals:
  void changed();
  void saved();

 private:
  DeskContext& m_context;
  DeskContent& m_content;
  SettingValues m_values;
  bool m_saving = false;
  QString m_problem;
  absl::StatusOr<v1::BackupState> m_backup = absl::UnknownError("not asked yet");
};

}  // namespace newel::desk
