#include "platform/linux/dbus_resident.h"

#include <QtCore/QCryptographicHash>
#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QFileInfo>
#include <QtCore/QSaveFile>
#include <QtCore/QStandardPaths>
#include <QtCore/QStringList>
#include <QtDBus/QDBusConnection>
#include <QtDBus/QDBusMessage>

namespace newel::platform {
namespace {

const QString kPath = QStringLiteral("/org/newel/Resident");
const QString kInterface = QStringLiteral("org.newel.Resident");
// The other one may be waiting for the place of its key to be unlocked.
constexpr int kAnswerWithinMs = 15000;

QString hashOf(const std::string& folder) {
  const QString whole = QFileInfo(QString::fromStdString(folder)).absoluteFilePath();
  return QString::fromLatin1(
      QCryptographicHash::hash(whole.toUtf8(), QCryptographicHash::Sha256).toHex().left(16));
}

// One argument of an Exec line (Desktop Entry Specification 1.5, "The Exec key"): in quotes, with what is
// special inside them escaped, then once more as a string of the file, and % doubled.
QString quoted(const std::string& argument) {
  QString text = QString::fromStdString(argument);
  for (const char* special : {"\\", "\"", "`", "$"}) {
    text.replace(QLatin1String(special), QLatin1Char('\\') + QLatin1String(special));
  }
  text.replace(QLatin1Char('\\'), QStringLiteral("\\\\"));
  text.replace(QLatin1Char('%'), QStringLiteral("%%"));
  return QLatin1Char('"') + text + QLatin1Char('"');
}

}  // namespace

DbusResident::DbusResident(const std::string& program, const std::string& folder)
    : m_name(QStringLiteral("org.newel.%1.f%2").arg(QString::fromStdString(program), hashOf(folder))),
      m_file_name(
          QStringLiteral("newel-%1-%2.desktop").arg(QString::fromStdString(program), hashOf(folder))) {}

bool DbusResident::takePlace() {
  QDBusConnection bus = QDBusConnection::sessionBus();
  if (!bus.isConnected()) return true;
  bus.registerObject(kPath, this, QDBusConnection::ExportAllSlots);
  if (bus.registerService(m_name)) return true;
  const QDBusMessage call =
      QDBusMessage::createMethodCall(m_name, kPath, kInterface, QStringLiteral("comeToFront"));
  const QDBusMessage answer = bus.call(call, QDBus::Block, kAnswerWithinMs);
  // One that does not answer must not lock the person out of their programme.
  return answer.type() == QDBusMessage::ErrorMessage;
}

void DbusResident::comeToFront() {
  if (m_called) m_called();
}

bool DbusResident::startAtLogin(bool on, const std::vector<std::string>& command) {
  const QString folder =
      QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + QStringLiteral("/autostart");
  const QString path = folder + QLatin1Char('/') + m_file_name;
  if (!on) return !QFile::exists(path) || QFile::remove(path);
  QStringList words;
  for (const std::string& argument : command) words << quoted(argument);
  const QString text = QStringLiteral(
                           "[Desktop Entry]\nType=Application\nName=Newel\nExec=%1\nTerminal=false\n"
                           "NoDisplay=true\n")
                           .arg(words.join(QLatin1Char(' ')));
  QSaveFile file(path);
  return QDir().mkpath(folder) && file.open(QIODevice::WriteOnly) &&
         file.write(text.toUtf8()) == text.toUtf8().size() && file.commit();
}

std::unique_ptr<Resident> makeResident(const std::string& program, const std::string& folder) {
  return std::make_unique<DbusResident>(program, folder);
}

}  // namespace newel::platform
