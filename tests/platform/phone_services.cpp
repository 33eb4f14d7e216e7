#include "tests/platform/phone_services.h"

#include <QtDBus/QDBusArgument>
#include <QtDBus/QDBusMessage>
#include <QtDBus/QDBusMetaType>
#include <QtDBus/QDBusVariant>

namespace newel::platform {
namespace {

const QString kFeedback = QStringLiteral("org.sigxcpu.Feedback");
const QString kFeedbackPath = QStringLiteral("/org/sigxcpu/Feedback");
const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPortalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kSettings = QStringLiteral("org.freedesktop.portal.Settings");

QDBusConnection ownConnection(const QString& name) {
  return QDBusConnection::connectToBus(QDBusConnection::SessionBus, name);
}

void readSteps(const QVariant& value, FeltCall& call) {
  const auto steps = value.value<QDBusArgument>();
  steps.beginArray();
  while (!steps.atEnd()) {
    double strength = 0;
    uint ms = 0;
    steps.beginStructure();
    steps >> strength >> ms;
    steps.endStructure();
    call.strengths.push_back(strength);
    call.lengths_ms.push_back(ms);
  }
  steps.endArray();
}

}  // namespace

FeedbackService::FeedbackService(bool takes_rhythms)
    : m_takes_rhythms(takes_rhythms), m_bus(ownConnection(kFeedback)) {
  m_bus.registerVirtualObject(kFeedbackPath, this);
  m_bus.registerService(kFeedback);
}

FeedbackService::~FeedbackService() {
  m_bus.unregisterService(kFeedback);
  m_bus.unregisterObject(kFeedbackPath);
  QDBusConnection::disconnectFromBus(kFeedback);
}

QString FeedbackService::introspect(const QString& /*path*/) const { return QString(); }

bool FeedbackService::handleMessage(const QDBusMessage& message, const QDBusConnection& connection) {
  FeltCall call;
  call.method = message.member();
  call.signature = message.signature();
  const QVariantList arguments = message.arguments();
  if (message.member() == QLatin1String("Get")) {
    connection.send(message.createReply(QVariant::fromValue(QDBusVariant(QStringLiteral("full")))));
    return true;
  }
  if (message.interface() == kFeedback + QStringLiteral(".Haptic")) {
    if (!m_takes_rhythms) return false;
    call.app = arguments.at(0).toString();
    readSteps(arguments.at(1), call);
    m_calls.push_back(call);
    connection.send(message.createReply(true));
    return true;
  }
  call.app = arguments.at(0).toString();
  call.event = arguments.at(1).toString();
  call.profile = qdbus_cast<QVariantMap>(arguments.at(2)).value(QStringLiteral("profile")).toString();
  m_calls.push_back(call);
  connection.send(message.createReply(static_cast<uint>(m_calls.size())));
  return true;
}

SettingsPortal::SettingsPortal(Groups groups) : m_groups(std::move(groups)), m_bus(ownConnection(kPortal)) {
  qDBusRegisterMetaType<Groups>();
  m_bus.registerVirtualObject(kPortalPath, this);
  m_bus.registerService(kPortal);
}

SettingsPortal::~SettingsPortal() {
  m_bus.unregisterService(kPortal);
  m_bus.unregisterObject(kPortalPath);
  QDBusConnection::disconnectFromBus(kPortal);
}

QString SettingsPortal::introspect(const QString& /*path*/) const { return QString(); }

bool SettingsPortal::handleMessage(const QDBusMessage& message, const QDBusConnection& connection) {
  if (message.interface() != kSettings || message.member() != QLatin1String("ReadAll")) return false;
  m_asked = message.arguments().at(0).toStringList();
  connection.send(message.createReply(QVariant::fromValue(m_groups)));
  return true;
}

void SettingsPortal::change(const QString& group, const QString& key, const QVariant& value) {
  QDBusMessage signal = QDBusMessage::createSignal(kPortalPath, kSettings, QStringLiteral("SettingChanged"));
  signal.setArguments({group, key, QVariant::fromValue(QDBusVariant(value))});
  m_bus.send(signal);
}

}  // namespace newel::platform
