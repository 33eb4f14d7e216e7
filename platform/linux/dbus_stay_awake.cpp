#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMessage>
#include <QtDBus/QDBusPendingCallWatcher>
#include <QtDBus/QDBusPendingReply>

#include "platform/sound.h"

namespace newel::platform {
namespace {

// The desktop's screen-saver service (freedesktop.org, "Idle Inhibition Service"). Calls are sent and not
// waited for: a desktop without the service costs nothing.
class DbusStayAwake : public StayAwake {
 public:
  explicit DbusStayAwake(std::string reason) : m_reason(std::move(reason)) {}
  ~DbusStayAwake() override { DbusStayAwake::keepOn(false); }

  void keepOn(bool on) override {
    if (on == m_on) return;
    m_on = on;
    if (on) {
      inhibit();
    } else if (m_cookie != 0) {
      send("UnInhibit", {m_cookie});
      m_cookie = 0;
    }
  }

 private:
  static QDBusMessage call(const char* method) {
    return QDBusMessage::createMethodCall("org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver",
                                          "org.freedesktop.ScreenSaver", method);
  }
  static void send(const char* method, const QVariantList& arguments) {
    QDBusMessage message = call(method);
    message.setArguments(arguments);
    QDBusConnection::sessionBus().send(message);
  }
  void inhibit() {
    const QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) return;
    QDBusMessage message = call("Inhibit");
    message.setArguments({QStringLiteral("Newel"), QString::fromStdString(m_reason)});
    m_watcher = std::make_unique<QDBusPendingCallWatcher>(bus.asyncCall(message));
    QObject::connect(m_watcher.get(), &QDBusPendingCallWatcher::finished, m_watcher.get(), [this] {
      const QDBusPendingReply<quint32> reply = *m_watcher;
      if (reply.isError()) return;
      m_cookie = reply.value();
      if (!m_on) {
        send("UnInhibit", {m_cookie});
        m_cookie = 0;
      }
    });
  }

  std::string m_reason;
  std::unique_ptr<QDBusPendingCallWatcher> m_watcher;
  quint32 m_cookie = 0;
  bool m_on = false;
};

}  // namespace

std::unique_ptr<StayAwake> makeStayAwake(const std::string& reason) {
  return std::make_unique<DbusStayAwake>(reason);
}

}  // namespace newel::platform
