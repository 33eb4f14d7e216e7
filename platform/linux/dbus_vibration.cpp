#include "platform/linux/dbus_vibration.h"

#include <QtDBus/QDBusArgument>
#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMetaType>
#include <QtDBus/QDBusPendingCallWatcher>
#include <QtDBus/QDBusPendingReply>
#include <utility>

namespace newel::platform {

// One step of a rhythm as feedbackd takes it: how strongly (0 to 1), how long in ms.
struct HapticStep {
  double strength = 0;
  uint ms = 0;
};

static QDBusArgument& operator<<(QDBusArgument& argument, const HapticStep& step) {
  argument.beginStructure();
  argument << step.strength << step.ms;
  argument.endStructure();
  return argument;
}

static const QDBusArgument& operator>>(const QDBusArgument& argument, HapticStep& step) {
  argument.beginStructure();
  argument >> step.strength >> step.ms;
  argument.endStructure();
  return argument;
}

}  // namespace newel::platform

Q_DECLARE_METATYPE(newel::platform::HapticStep)
Q_DECLARE_METATYPE(QList<newel::platform::HapticStep>)

namespace newel::platform {
namespace {

const QString kService = QStringLiteral("org.sigxcpu.Feedback");
const QString kPath = QStringLiteral("/org/sigxcpu/Feedback");
const QString kHaptic = QStringLiteral("org.sigxcpu.Feedback.Haptic");
// Of the event naming specification: the shortest shake that every theme has. Its quiet profile shakes, the
// full one would sound.
const QString kEvent = QStringLiteral("bell-terminal");
const QString kQuiet = QStringLiteral("quiet");

QDBusMessage call(const QString& interface, const char* method, const QVariantList& arguments) {
  QDBusMessage message =
      QDBusMessage::createMethodCall(kService, kPath, interface, QString::fromLatin1(method));
  message.setArguments(arguments);
  return message;
}

}  // namespace

DbusVibration::DbusVibration(const std::string& app) : m_app(QString::fromStdString(app)) {
  qDBusRegisterMetaType<HapticStep>();
  qDBusRegisterMetaType<QList<HapticStep>>();
  m_timer.setSingleShot(true);
  m_timer.setTimerType(Qt::PreciseTimer);
  connect(&m_timer, &QTimer::timeout, this, &DbusVibration::nextEvent);
}

QDBusMessage DbusVibration::rhythm(const std::vector<Pulse>& pulses) const {
  QList<HapticStep> steps;
  for (const Pulse& pulse : pulses) steps.append({pulse.shakes ? 1.0 : 0.0, static_cast<uint>(pulse.ms)});
  return call(kHaptic, "Vibrate", {m_app, QVariant::fromValue(steps)});
}

void DbusVibration::ask(std::function<void()> known) {
  if (works()) return known();
  m_wait.push_back(std::move(known));
  if (std::exchange(m_asked, true) || !QDBusConnection::sessionBus().isConnected()) return;
  askForRhythm();
}

// An empty rhythm shakes nothing.
void DbusVibration::askForRhythm() {
  auto* const asked = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(rhythm({})), this);
  connect(asked, &QDBusPendingCallWatcher::finished, this, [this, asked] {
    asked->deleteLater();
    if (!asked->isError()) return answered(Way::Rhythm);
    if (asked->error().type() != QDBusError::ServiceUnknown) askForEvents();
  });
}

void DbusVibration::askForEvents() {
  auto* const asked = new QDBusPendingCallWatcher(
      QDBusConnection::sessionBus().asyncCall(call(QStringLiteral("org.freedesktop.DBus.Properties"), "Get",
                                                   {kService, QStringLiteral("Profile")})),
      this);
  connect(asked, &QDBusPendingCallWatcher::finished, this, [this, asked] {
    asked->deleteLater();
    if (!asked->isError()) answered(Way::Events);
  });
}

void DbusVibration::answered(Way way) {
  m_way = way;
  for (const auto& known : std::exchange(m_wait, {})) known();
}

void DbusVibration::play(Tone tone) {
  if (!works()) return;
  if (m_way == Way::Rhythm) {
    QDBusConnection::sessionBus().send(rhythm(pulsesOf(tone)));
    return;
  }
  m_pulses = pulsesOf(tone);
  m_next = 0;
  nextEvent();
}

void DbusVibration::nextEvent() {
  if (m_next >= m_pulses.size()) return;
  const Pulse pulse = m_pulses[m_next++];
  if (pulse.shakes) {
    QDBusConnection::sessionBus().send(call(
        kService, "TriggerFeedback", {m_app, kEvent, QVariantMap{{QStringLiteral("profile"), kQuiet}}, -1}));
  }
  if (m_next < m_pulses.size()) m_timer.start(pulse.ms);
}

void DbusVibration::stop() {
  m_timer.stop();
  m_pulses.clear();
  if (m_way == Way::Rhythm) QDBusConnection::sessionBus().send(rhythm({}));
}

std::unique_ptr<Vibration> makeVibration(const std::string& app) {
  return std::make_unique<DbusVibration>(app);
}

}  // namespace newel::platform
