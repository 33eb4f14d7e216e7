// What a phone's desktop offers on the session bus, on a connection of its own and answering nothing but what
// the test says: the shaking service in its newer and its older form, and the portal's settings.
#pragma once

#include <QtCore/QVariantMap>
#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusVirtualObject>
#include <vector>

namespace newel::platform {

// One call of feedbackd that came over the bus.
struct FeltCall {
  QString method;
  QString signature;  // of its arguments
  QString app;
  QString event;                  // older form
  QString profile;                // older form
  std::vector<double> strengths;  // newer form
  std::vector<uint> lengths_ms;
};

class FeedbackService : public QDBusVirtualObject {
 public:
  // `takes_rhythms`: the newer form, on a device with a motor.
  explicit FeedbackService(bool takes_rhythms);
  ~FeedbackService() override;

  QString introspect(const QString& path) const override;
  bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override;
  const std::vector<FeltCall>& calls() const { return m_calls; }
  void forget() { m_calls.clear(); }

 private:
  const bool m_takes_rhythms;
  QDBusConnection m_bus;
  std::vector<FeltCall> m_calls;
};

class SettingsPortal : public QDBusVirtualObject {
 public:
  using Groups = QMap<QString, QVariantMap>;
  explicit SettingsPortal(Groups groups);
  ~SettingsPortal() override;

  QString introspect(const QString& path) const override;
  bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override;
  void change(const QString& group, const QString& key, const QVariant& value);
  const QStringList& asked() const { return m_asked; }  // the groups of the last ReadAll

 private:
  Groups m_groups;
  QDBusConnection m_bus;
  QStringList m_asked;
};

}  // namespace newel::platform
