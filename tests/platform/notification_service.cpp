#include "tests/platform/notification_service.h"

namespace newel::platform {
namespace {

const QString kBus = QStringLiteral("notification-service");
const QString kName = QStringLiteral("org.freedesktop.Notifications");
const QString kPath = QStringLiteral("/org/freedesktop/Notifications");

}  // namespace

NotificationService::NotificationService()
    : m_bus(QDBusConnection::connectToBus(QDBusConnection::SessionBus, kBus)) {
  m_bus.registerObject(kPath, this, QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals);
}

NotificationService::~NotificationService() {
  stop();
  m_bus.unregisterObject(kPath);
  QDBusConnection::disconnectFromBus(kBus);
}

bool NotificationService::start() { return m_bus.registerService(kName); }
void NotificationService::stop() { m_bus.unregisterService(kName); }

quint32 NotificationService::Notify(const QString& app, quint32 replaces, const QString&,
                                    const QString& title, const QString& text, const QStringList& actions,
                                    const QVariantMap&, int) {
  const quint32 number = replaces != 0 ? replaces : ++m_number;
  m_shown.push_back({app, replaces, title, text, actions, number});
  return number;
}

}  // namespace newel::platform
