// A desktop's notification service that shows nothing and remembers everything, on a bus connection of its
// own, so that whatever reaches it has gone over the bus.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantMap>
#include <QtDBus/QDBusConnection>
#include <vector>

namespace newel::platform {

struct CameIn {
  QString app;
  quint32 replaces = 0;
  QString title;
  QString text;
  QStringList actions;
  quint32 number = 0;
};

class NotificationService : public QObject {
  Q_OBJECT
  Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

 public:
  NotificationService();
  ~NotificationService() override;

  bool start();  // takes the name; false when somebody has it
  void stop();
  void setCapabilities(const QStringList& capabilities) { m_capabilities = capabilities; }

  const std::vector<CameIn>& shown() const { return m_shown; }
  const std::vector<quint32>& closed() const { return m_closed; }
  void act(quint32 number, const QString& action) { emit ActionInvoked(number, action); }
  void close(quint32 number, quint32 reason) { emit NotificationClosed(number, reason); }

 public slots:  // as on the bus
  QStringList GetCapabilities() { return m_capabilities; }
  quint32 Notify(const QString& app, quint32 replaces, const QString& icon, const QString& title,
                 const QString& text, const QStringList& actions, const QVariantMap& hints, int timeout);
  void CloseNotification(quint32 number) { m_closed.push_back(number); }

 signals:
  void ActionInvoked(quint32 number, const QString& action);
  void NotificationClosed(quint32 number, quint32 reason);

 private:
  QDBusConnection m_bus;
  QStringList m_capabilities{QStringLiteral("actions"), QStringLiteral("body")};
  std::vector<CameIn> m_shown;
  std::vector<quint32> m_closed;
  quint32 m_number = 0;
};

}  // namespace newel::platform
