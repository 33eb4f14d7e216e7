// The entry that starts the program after log-in, as a desktop reads it: GLib's, through "gio launch". That a
// second copy of the program gives way to the first is in tests/qml/home/reminder_program_test.cpp.
#include "platform/resident.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QElapsedTimer>
#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <QtCore/QStandardPaths>
#include <QtCore/QTemporaryDir>

namespace newel::platform {
namespace {

using testing::ElementsAreArray;

QStringList entries(const QTemporaryDir& config) {
  return QDir(config.filePath(QStringLiteral("autostart"))).entryList(QDir::Files);
}

class LogIn : public testing::Test {
 protected:
  LogIn() { qputenv("XDG_CONFIG_HOME", m_config.path().toUtf8()); }
  ~LogIn() override { qunsetenv("XDG_CONFIG_HOME"); }

  QTemporaryDir m_config;
};

TEST_F(LogIn, anEntryIsWrittenAndTakenAwayAgain) {
  const auto resident = makeResident("home", "/data/of one person");
  EXPECT_TRUE(resident->startAtLogin(false, {})) << "taking away what is not there is no error";
  ASSERT_TRUE(resident->startAtLogin(true, {"/opt/newel-home", "--reminders-only"}));
  ASSERT_EQ(entries(m_config).size(), 1);
  const auto other = makeResident("home", "/data/of another");
  ASSERT_TRUE(other->startAtLogin(true, {"/opt/newel-home", "--reminders-only"}));
  EXPECT_EQ(entries(m_config).size(), 2) << "one for each folder";
  EXPECT_TRUE(other->startAtLogin(false, {}));
  EXPECT_TRUE(resident->startAtLogin(false, {}));
  EXPECT_TRUE(entries(m_config).isEmpty());
}

TEST_F(LogIn, whatCannotBeWrittenIsSaid) {
  QFile in_the_way(m_config.filePath(QStringLiteral("autostart")));
  ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
  EXPECT_FALSE(makeResident("home", "/data")->startAtLogin(true, {"/opt/newel-home"}));
}

TEST_F(LogIn, theCommandIsWhatADesktopStarts) {
  if (QStandardPaths::findExecutable(QStringLiteral("gio")).isEmpty())
    GTEST_SKIP() << "gio (libglib2.0-bin) is not installed";
  const QString out = m_config.filePath(QStringLiteral("arguments"));
  const QString script = m_config.filePath(QStringLiteral("a program $1 \"quoted\""));
  QFile program(script);
  ASSERT_TRUE(program.open(QIODevice::WriteOnly));
  program.write("#!/bin/sh\nfor each in \"$@\"; do printf '%s\\n' \"$each\"; done > \"" + out.toUtf8() +
                "\"\n");
  program.close();
  program.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  const std::vector<std::string> arguments = {"--data", "/home/o'brien/my \"own\" `x` $HOME 100% \\ end",
                                              "--reminders-only"};
  std::vector<std::string> command = {script.toStdString()};
  command.insert(command.end(), arguments.begin(), arguments.end());
  ASSERT_TRUE(makeResident("home", "/data")->startAtLogin(true, command));
  QProcess gio;
  gio.start(QStringLiteral("gio"), {QStringLiteral("launch"),
                                    m_config.filePath(QStringLiteral("autostart/")) + entries(m_config)[0]});
  ASSERT_TRUE(gio.waitForFinished(10000));
  EXPECT_EQ(gio.exitCode(), 0) << gio.readAllStandardError().toStdString();
  QElapsedTimer since;
  since.start();
  while (!QFile::exists(out) && since.elapsed() < 5000)
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  QFile read(out);
  ASSERT_TRUE(read.open(QIODevice::ReadOnly));
  for (int i = 0; i < 50 && read.size() == 0; ++i) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  std::vector<std::string> came;
  for (const QByteArray& line : read.readAll().trimmed().split('\n')) came.push_back(line.toStdString());
  EXPECT_THAT(came, ElementsAreArray(arguments));
}

}  // namespace
}  // namespace newel::platform

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  const QCoreApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
