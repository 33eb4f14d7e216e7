#include "qml/desk/desk_settings.h"

#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QJsonArray>
#include <QtCore/QJsonDocument>
#include <QtCore/QJsonObject>
#include <QtCore/QSaveFile>

namespace newel::desk {
namespace {

QString fileOf(const QString& data_folder) { return QDir(data_folder).filePath(QStringLiteral("desk.json")); }

}  // namespace

DeskSettings loadSettings(const QString& data_folder) {
  DeskSettings settings;
  QFile file(fileOf(data_folder));
  if (!file.open(QIODevice::ReadOnly)) return settings;
  const QJsonObject json = QJsonDocument::fromJson(file.readAll()).object();
  settings.address = json.value(QStringLiteral("address")).toString();
  settings.fingerprint = json.value(QStringLiteral("fingerprint")).toString();
  const QJsonArray pins = json.value(QStringLiteral("pins")).toArray();
  for (const auto& pin : pins) settings.pins << pin.toString();
  settings.user_name = json.value(QStringLiteral("user_name")).toString();
  settings.language = json.value(QStringLiteral("language")).toString();
  settings.text_percent = json.value(QStringLiteral("text_percent")).toInt(100);
  settings.look_chosen = json.contains(QStringLiteral("dark"));
  settings.dark = json.value(QStringLiteral("dark")).toBool();
  return settings;
}

bool saveSettings(const QString& data_folder, const DeskSettings& settings) {
  QJsonObject json{{QStringLiteral("address"), settings.address},
                   {QStringLiteral("fingerprint"), settings.fingerprint},
                   {QStringLiteral("pins"), QJsonArray::fromStringList(settings.pins)},
                   {QStringLiteral("user_name"), settings.user_name},
                   {QStringLiteral("text_percent"), settings.text_percent}};
  if (!settings.language.isEmpty()) json.insert(QStringLiteral("language"), settings.language);
  if (settings.look_chosen) json.insert(QStringLiteral("dark"), settings.dark);
  if (!QDir().mkpath(data_folder)) return false;
  QSaveFile file(fileOf(data_folder));
  if (!file.open(QIODevice::WriteOnly)) return false;
  file.write(QJsonDocument(json).toJson());
  return file.commit();
}

}  // namespace newel::desk
