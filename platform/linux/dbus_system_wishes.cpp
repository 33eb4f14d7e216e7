#include "platform/linux/dbus_system_wishes.h"

#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMessage>
#include <QtDBus/QDBusMetaType>
#include <QtDBus/QDBusPendingCallWatcher>
#include <QtDBus/QDBusPendingReply>

namespace newel::platform {
namespace {

using Groups = QMap<QString, QVariantMap>;

const QString kService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kInterface = QStringLiteral("org.freedesktop.portal.Settings");
constexpr char kAppearance[] = "org.freedesktop.appearance";
constexpr char kInterfaceOfGnome[] = "org.gnome.desktop.interface";
constexpr char kReadingOfGnome[] = "org.gnome.desktop.a11y.interface";
constexpr uint kAsked = 1;  // in the two keys of the portal; what is unknown counts as not asked

}  // namespace

DbusSystemWishes::DbusSystemWishes() {
  qDBusRegisterMetaType<Groups>();
  QDBusConnection bus = QDBusConnection::sessionBus();
  if (!bus.isConnected()) return;
  bus.connect(kService, kPath, kInterface, QStringLiteral("SettingChanged"), this,
              SLOT(settingChanged(QString, QString, QDBusVariant)));
  QDBusMessage message =
      QDBusMessage::createMethodCall(kService, kPath, kInterface, QStringLiteral("ReadAll"));
  message.setArguments({QStringList{QString::fromLatin1(kAppearance), QString::fromLatin1(kInterfaceOfGnome),
                                    QString::fromLatin1(kReadingOfGnome)}});
  auto* const asked = new QDBusPendingCallWatcher(bus.asyncCall(message), this);
  connect(asked, &QDBusPendingCallWatcher::finished, this, [this, asked] {
    asked->deleteLater();
    const QDBusPendingReply<Groups> reply = *asked;
    if (!reply.isError()) take(reply.value());
  });
}

void DbusSystemWishes::take(const Groups& all) {
  for (auto group = all.begin(); group != all.end(); ++group) {
    for (auto each = group->begin(); each != group->end(); ++each) {
      keep(group.key(), each.key(), each.value());
    }
  }
}

void DbusSystemWishes::settingChanged(const QString& group, const QString& key, const QDBusVariant& value) {
  keep(group, key, value.variant());
}

void DbusSystemWishes::keep(const QString& group, const QString& key, const QVariant& value) {
  static constexpr const char* kRead[][2] = {{kAppearance, "contrast"},
                                             {kAppearance, "reduced-motion"},
                                             {kInterfaceOfGnome, "enable-animations"},
                                             {kReadingOfGnome, "high-contrast"}};
  for (const auto& [read_group, read_key] : kRead) {
    if (group != QLatin1String(read_group) || key != QLatin1String(read_key)) continue;
    const bool motion = lessMotion();
    const bool contrast = moreContrast();
    m_values[group][key] = value;
    if (m_changed && (motion != lessMotion() || contrast != moreContrast())) m_changed();
  }
}

QVariant DbusSystemWishes::value(const char* group, const char* key) const {
  return m_values.value(QString::fromLatin1(group)).value(QString::fromLatin1(key));
}

bool DbusSystemWishes::lessMotion() const {
  if (value(kAppearance, "reduced-motion").toUInt() == kAsked) return true;
  const QVariant moves = value(kInterfaceOfGnome, "enable-animations");
  return moves.isValid() && !moves.toBool();
}

bool DbusSystemWishes::moreContrast() const {
  return value(kAppearance, "contrast").toUInt() == kAsked ||
         value(kReadingOfGnome, "high-contrast").toBool();
}

std::unique_ptr<SystemWishes> makeSystemWishes() { return std::make_unique<DbusSystemWishes>(); }

}  // namespace newel::platform
