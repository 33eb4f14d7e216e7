// See platform/resident.h.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QString>

#include "platform/resident.h"

namespace newel::platform {

class DbusResident : public QObject, public Resident {
  Q_OBJECT
  Q_CLASSINFO("D-Bus Interface", "org.newel.Resident")

 public:
  DbusResident(const std::string& program, const std::string& folder);

  bool takePlace() override;
  void onCalled(std::function<void()> called) override { m_called = std::move(called); }
  bool startAtLogin(bool on, const std::vector<std::string>& command) override;

 public slots:  // on the bus
  void comeToFront();

 private:
  const QString m_name;       // on the bus
  const QString m_file_name;  // in the autostart folder
  std::function<void()> m_called;
};

}  // namespace newel::platform
