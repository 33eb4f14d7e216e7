#include "platform/linux/dbus_reminders.h"

#include <QtCore/QFileInfo>
#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMessage>
#include <QtDBus/QDBusPendingReply>
#include <algorithm>
#include <utility>

namespace newel::platform {
namespace {

// Desktop Notifications Specification 1.2 (specifications.freedesktop.org).
const QString kService = QStringLiteral("org.freedesktop.Notifications");
const QString kPath = QStringLiteral("/org/freedesktop/Notifications");
const QString kOpen = QStringLiteral("default");  // a press on the notification itself does the same
const QString kLater = QStringLiteral("later");
constexpr quint32 kClosedByThePerson = 2;
constexpr int kServersOwnTime = -1;
constexpr uchar kNormalUrgency = 1;

QDBusMessage call(const char* method, const QVariantList& arguments = {}) {
  QDBusMessage message =
      QDBusMessage::createMethodCall(kService, kPath, kService, QString::fromLatin1(method));
  message.setArguments(arguments);
  return message;
}

}  // namespace

DbusReminders::DbusReminders(const Clock& clock, const std::string& program, const std::string& zone_file)
    : m_clock(clock),
      m_program(QString::fromStdString(program)),
      m_zone_file(QString::fromStdString(zone_file)),
      m_alarm(clock) {
  connect(&m_alarm, &WallAlarm::due, this, &DbusReminders::showDue);
  connect(&m_alarm, &WallAlarm::clockSet, this, &DbusReminders::tellClockOrZone);
  // The file is replaced rather than written, so it is its folder that changes.
  m_zone = QFileInfo(m_zone_file).symLinkTarget();
  m_zone_watch.addPath(QFileInfo(m_zone_file).absolutePath());
  connect(&m_zone_watch, &QFileSystemWatcher::directoryChanged, this, &DbusReminders::lookForZone);
  QDBusConnection bus = QDBusConnection::sessionBus();
  if (!bus.isConnected()) {
    m_permission = ReminderPermission::None;
    return;
  }
  bus.connect(kService, kPath, kService, QStringLiteral("ActionInvoked"), this,
              SLOT(actionInvoked(quint32, QString)));
  bus.connect(kService, kPath, kService, QStringLiteral("NotificationClosed"), this,
              SLOT(notificationClosed(quint32, quint32)));
  m_service_watch.setConnection(bus);
  m_service_watch.addWatchedService(kService);
  connect(&m_service_watch, &QDBusServiceWatcher::serviceRegistered, this, &DbusReminders::ask);
  connect(&m_service_watch, &QDBusServiceWatcher::serviceUnregistered, this, [this] {
    m_on_screen.clear();  // its notifications went with it
    setPermission(ReminderPermission::None);
  });
}

DbusReminders::~DbusReminders() {
  m_listener = nullptr;
  // What stays on the screen could not be answered any more.
  DbusReminders::clearAll();
}

void DbusReminders::setPermission(ReminderPermission permission) {
  if (permission == m_permission) return;
  m_permission = permission;
  if (m_listener != nullptr) m_listener->reminderPermissionChanged();
}

void DbusReminders::ask() {
  const QDBusConnection bus = QDBusConnection::sessionBus();
  if (!bus.isConnected()) return setPermission(ReminderPermission::None);
  // A service that is only started when it is called answers this, too.
  auto* const watcher = new QDBusPendingCallWatcher(bus.asyncCall(call("GetCapabilities")), this);
  connect(watcher, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* finished) {
    const QDBusPendingReply<QStringList> reply = *finished;
    finished->deleteLater();
    if (reply.isError()) return setPermission(ReminderPermission::None);
    m_capabilities = reply.value();
    setPermission(ReminderPermission::Granted);
  });
}

void DbusReminders::arm(const std::vector<Reminder>& reminders, const ReminderWords& words) {
  m_armed = reminders;
  m_words = words;
  waitForNext();
}

void DbusReminders::waitForNext() {
  m_alarm.wakeAt(m_armed.empty() ? absl::InfiniteFuture() : m_armed.front().at);
}

void DbusReminders::showDue() {
  const absl::Time now = m_clock.wall();
  std::vector<Reminder> due;
  while (!m_armed.empty() && m_armed.front().at <= now) {
    due.push_back(m_armed.front());
    m_armed.erase(m_armed.begin());
  }
  waitForNext();
  // What piled up while the machine slept may be over, or done elsewhere: whoever made the list decides anew.
  const bool slept = !due.empty() && now - due.front().at > absl::Minutes(2);
  if (slept) return tellClockOrZone();
  for (const Reminder& reminder : due) show(reminder);
}

void DbusReminders::show(const Reminder& reminder) {
  QStringList actions;
  if (m_capabilities.contains(QLatin1String("actions"))) {
    actions << kOpen << QString::fromStdString(m_words.open) << kLater
            << QString::fromStdString(m_words.later);
  }
  // One reminder of ours on the screen at a time: a new one takes the place of the last.
  quint32 replaces = 0;
  for (const auto& [id, number] : m_on_screen) replaces = std::max(replaces, number);
  m_on_screen.clear();
  m_on_screen[reminder.id] = 0;
  const QVariantMap hints{{QStringLiteral("urgency"), QVariant::fromValue(kNormalUrgency)},
                          {QStringLiteral("desktop-entry"), QStringLiteral("newel-home")}};
  const QVariantList arguments{m_program,
                               replaces,
                               QString(),
                               QString::fromStdString(m_words.title),
                               QString::fromStdString(m_words.text),
                               actions,
                               hints,
                               kServersOwnTime};
  auto* const watcher =
      new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(call("Notify", arguments)), this);
  connect(watcher, &QDBusPendingCallWatcher::finished, this,
          [this, id = reminder.id](QDBusPendingCallWatcher* finished) { shown(id, finished); });
}

void DbusReminders::shown(const std::string& id, QDBusPendingCallWatcher* call_made) {
  const QDBusPendingReply<quint32> reply = *call_made;
  call_made->deleteLater();
  const auto found = m_on_screen.find(id);
  if (reply.isError()) {
    // Not shown, so not said to be: it is late, and comes when the list is made anew.
    if (found != m_on_screen.end()) m_on_screen.erase(found);
    return setPermission(ReminderPermission::None);
  }
  if (found == m_on_screen.end()) return takeOff(reply.value());  // cleared meanwhile
  found->second = reply.value();
  if (m_listener != nullptr) m_listener->reminderShown(id, m_clock.wall());
}

void DbusReminders::takeOff(quint32 number) {
  QDBusConnection::sessionBus().send(call("CloseNotification", {number}));
}

void DbusReminders::clear(const std::string& id) {
  std::erase_if(m_armed, [&id](const Reminder& reminder) { return reminder.id == id; });
  waitForNext();
  const auto found = m_on_screen.find(id);
  if (found == m_on_screen.end()) return;
  if (found->second != 0) takeOff(found->second);
  m_on_screen.erase(found);
}

void DbusReminders::clearAll() {
  m_armed.clear();
  waitForNext();
  for (const auto& [id, number] : std::exchange(m_on_screen, {})) {
    if (number != 0) takeOff(number);
  }
}

std::string DbusReminders::idOf(quint32 number) const {
  const auto found = std::find_if(m_on_screen.begin(), m_on_screen.end(), [number](const auto& each) {
    return number != 0 && each.second == number;
  });
  return found == m_on_screen.end() ? "" : found->first;
}

// The signals go to every program on the bus; numbers that are not ours are somebody else's.
void DbusReminders::actionInvoked(quint32 number, const QString& action) {
  const std::string id = idOf(number);
  if (id.empty()) return;
  m_on_screen.erase(id);
  takeOff(number);  // some services leave it standing
  if (m_listener == nullptr) return;
  if (action == kLater) {
    m_listener->reminderLater(id);
  } else {
    m_listener->reminderOpened(id);
  }
}

void DbusReminders::notificationClosed(quint32 number, quint32 reason) {
  const std::string id = idOf(number);
  if (id.empty()) return;
  m_on_screen.erase(id);
  if (reason == kClosedByThePerson && m_listener != nullptr) m_listener->reminderDismissed(id);
}

void DbusReminders::lookForZone() {
  const QString zone = QFileInfo(m_zone_file).symLinkTarget();
  if (zone == m_zone) return;
  m_zone = zone;
  tellClockOrZone();
}

void DbusReminders::tellClockOrZone() {
  waitForNext();
  if (m_listener != nullptr) m_listener->clockOrZoneChanged();
}

std::unique_ptr<Reminders> makeReminders(const Clock& clock, const std::string& program,
                                         const std::string& zone_file) {
  return std::make_unique<DbusReminders>(clock, program, zone_file);
}

}  // namespace newel::platform
