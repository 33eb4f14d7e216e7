#include "tests/qml/desk/driven_desk.h"

#include <gtest/gtest.h>

#include <QtCore/QElapsedTimer>
#include <QtCore/QJsonDocument>
#include <filesystem>

#include "sync/common/text_codes.h"

namespace newel::test {

DrivenDesk::DrivenDesk(TestClinic& clinic, const std::string& folder, const QStringList& options) {
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert("QT_QPA_PLATFORM", "offscreen");
  environment.insert("XDG_RUNTIME_DIR", QString::fromStdString(folder + "/run"));
  environment.insert("NEWEL_WINDOW_SIZE", "1280x720");
  std::filesystem::create_directories(folder + "/run");
  std::filesystem::permissions(folder + "/run", std::filesystem::perms::owner_all);
  m_process.setProcessEnvironment(environment);
  m_process.setProcessChannelMode(QProcess::SeparateChannels);
  QStringList arguments = {
      "--data",        QString::fromStdString(folder + "/desk"),
      "--hub",         QString::fromStdString(clinic.address()),
      "--fingerprint", QString::fromStdString(toHex(clinic.hub().clinic().certificate_sha256)),
      "--drive",       "-"};
  m_process.start(QStringLiteral(NEWEL_BINARY_DIR "/bin/newel-desk"), arguments + options);
  EXPECT_TRUE(m_process.waitForStarted(10000));
}

DrivenDesk::~DrivenDesk() {
  if (m_process.state() == QProcess::NotRunning) return;
  m_process.kill();
  m_process.waitForFinished(5000);
}

std::string DrivenDesk::run(const std::string& command, int wait_ms) {
  m_process.write((command + "\n").c_str());
  QElapsedTimer since;
  since.start();
  while (!m_process.canReadLine() && since.elapsed() < wait_ms) {
    if (m_process.state() == QProcess::NotRunning) return "newel-desk ended";
    m_process.waitForReadyRead(100);
  }
  return m_process.readLine().trimmed().toStdString();
}

void DrivenDesk::mustRun(const std::vector<std::string>& commands) {
  for (const std::string& command : commands) {
    if (m_lost) return;  // what follows would only wait in vain
    const std::string answer = run(command);
    m_lost = answer != "ok";
    if (m_lost) ADD_FAILURE() << command << ": " << answer << "\n" << run("list");
  }
}

QJsonObject DrivenDesk::state() {
  return QJsonDocument::fromJson(QByteArray::fromStdString(run("state")).mid(3)).object();
}

void DrivenDesk::signIn(const std::string& user, const std::string& password, const std::string& page) {
  mustRun({"wait \"User name\"", "type \"User name\" " + user, "type Password \"" + password + "\"",
           "click \"Sign in\"", "until page " + page + " 15000", "until idle true 15000"});
}

void DrivenDesk::shot(const std::string& name) {
  const QString folder = qEnvironmentVariable("NEWEL_SHOTS");
  if (folder.isEmpty()) return;
  EXPECT_EQ(run("shot " + folder.toStdString() + "/" + name + ".png"), "ok");
}

}  // namespace newel::test
