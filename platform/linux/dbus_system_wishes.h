#pragma once

#include <QtCore/QMap>
#include <QtCore/QObject>
#include <QtCore/QVariantMap>
#include <QtDBus/QDBusVariant>

#include "platform/system_wishes.h"

namespace newel::platform {

class DbusSystemWishes : public QObject, public SystemWishes {
  Q_OBJECT

 public:
  DbusSystemWishes();

  bool lessMotion() const override;
  bool moreContrast() const override;
  void onChange(std::function<void()> changed) override { m_changed = std::move(changed); }

 private slots:
  void settingChanged(const QString& group, const QString& key, const QDBusVariant& value);

 private:
  void take(const QMap<QString, QVariantMap>& all);
  void keep(const QString& group, const QString& key, const QVariant& value);
  QVariant value(const char* group, const char* key) const;

  QMap<QString, QVariantMap> m_values;  // by group, then key; only what wishes are read from
  std::function<void()> m_changed;
};

}  // namespace newel::platform
