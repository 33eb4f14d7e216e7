// Reminders of the real program, from the switch on its page to a press on the desktop, and what is told
// later with it: paired with a real hub, on a session bus of this test's own with a notification service of
// this test's own. After the machine was started again it reminds without a window; a second start brings the
// first to the front; an erased phone is not started any more.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QElapsedTimer>
#include <QtCore/QJsonDocument>
#include <QtCore/QJsonObject>
#include <QtCore/QProcess>
#include <QtCore/QStandardPaths>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "core/progress/adherence.h"
#include "core/time/local_day.h"
#include "sync/common/record_id.h"
#include "tests/core/people/sample_people.h"
#include "tests/platform/notification_service.h"
#include "tests/platform/x_window.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::test {
namespace {

const QString kProgram = QStringLiteral(NEWEL_BINARY_DIR "/bin/newel-home");

class Running {
 public:
  // `display`: of an X server; empty: no screen is needed.
  Running(const std::string& folder, absl::Time phone_time, const QStringList& arguments,
          const QString& display = QString()) {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("QT_QPA_PLATFORM", display.isEmpty() ? "offscreen" : "xcb");
    environment.insert("DISPLAY", display);
    environment.insert("QT_QUICK_BACKEND", "software");
    environment.insert("TZ", "Europe/Berlin");
    environment.insert("NEWEL_WALL_OFFSET_S",
                       QString::number(static_cast<qlonglong>(absl::ToUnixSeconds(phone_time)) -
                                       QDateTime::currentSecsSinceEpoch()));
    environment.insert("XDG_CONFIG_HOME", QString::fromStdString(folder + "/config"));
    environment.insert("HOME", QString::fromStdString(folder + "/home"));
    environment.insert("XDG_DATA_HOME", QString::fromStdString(folder + "/other-data"));
    m_process.setProcessEnvironment(environment);
    m_process.start(kProgram, QStringList{"--data", QString::fromStdString(folder + "/phone")} + arguments);
    EXPECT_TRUE(m_process.waitForStarted(10000));
  }
  ~Running() {
    if (m_process.state() == QProcess::NotRunning) return;
    m_process.kill();
    m_process.waitForFinished(5000);
  }

  // Keeps the notification service of this process answering meanwhile.
  std::string run(const std::string& command, int wait_ms = 30000) {
    m_process.write((command + "\n").c_str());
    QElapsedTimer since;
    since.start();
    while (!m_process.canReadLine() && since.elapsed() < wait_ms) {
      if (m_process.state() == QProcess::NotRunning)
        return "newel-home ended: " + m_process.readAllStandardError().toStdString();
      QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return m_process.readLine().trimmed().toStdString();
  }
  void mustRun(const std::string& command) {
    EXPECT_EQ(run(command), "ok") << command << "\n" << run("state");
  }
  QJsonObject state() {
    return QJsonDocument::fromJson(QByteArray::fromStdString(run("state")).mid(3)).object();
  }
  bool ends(int wait_ms = 20000) {
    QElapsedTimer since;
    since.start();
    while (m_process.state() != QProcess::NotRunning && since.elapsed() < wait_ms) {
      QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return m_process.state() == QProcess::NotRunning;
  }
  int code() const { return m_process.exitCode(); }

 private:
  QProcess m_process;
};

v1::Programme allDay(const TestClinic& clinic, const v1::Person& person) {
  v1::Programme draft = clinic.draft(person);
  for (v1::Entry& entry : *draft.mutable_entries()) {
    v1::Schedule& schedule = *entry.mutable_schedule();
    schedule.clear_windows();
    schedule.add_windows()->set_to_min(1440);
    schedule.mutable_weekdays()->clear_days();
    for (int day = 1; day <= 7; ++day) schedule.mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
  }
  return draft;
}

std::vector<std::string> atLogin(const std::string& folder) {
  std::vector<std::string> texts;
  for (const QFileInfo& file :
       QDir(QString::fromStdString(folder + "/config/autostart")).entryInfoList(QDir::Files)) {
    std::ifstream stream(file.filePath().toStdString());
    texts.emplace_back(std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>());
  }
  return texts;
}

// An invented person of `clinic`, and what she has to do all day.
struct Joan {
  v1::Person person;
  v1::Programme programme;
};
Joan joanWithAProgramme(TestClinic& clinic) {
  Joan joan{transfemoralLeft(), {}};
  clinic.addPerson(joan.person, "Joan");
  joan.programme = allDay(clinic, joan.person);
  joan.programme.set_id(newRecordId(clinic.clock(), clinic.random()));
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = joan.programme;
  EXPECT_TRUE(clinic.desk().signProgramme(request).ok());
  return joan;
}

// The first run, from the language to Today, paired by the text of the square; no reminders wanted yet.
void beginAnew(Running& phone, const std::string& ticket) {
  phone.mustRun("wait \"Your language\" 20000");
  for (int step = 0; step < 3; ++step) phone.mustRun("click Next");
  phone.mustRun("wait \"Connect this phone to your clinic\"");
  phone.mustRun("type \"Text of the QR code\" \"" + ticket + "\"");
  phone.mustRun("click \"Connect with this text\"");
  phone.mustRun("wait \"Hello Joan\" 20000");
  phone.mustRun("click \"Go on\"");
  phone.mustRun("click \"No reminders\"");
  phone.mustRun("click Next");
  phone.mustRun("click Next");
  phone.mustRun("click \"I have read this\"");
  phone.mustRun("until programme 1 10000");
}

TEST(ReminderProgram, remindsWithoutAWindowComesToTheFrontWhenPressedAndIsGoneWhenErased) {
  platform::NotificationService desktop;
  ASSERT_TRUE(desktop.start());
  TestClinic clinic;
  const v1::Person person = joanWithAProgramme(clinic).person;
  const std::string folder = clinic.folder().path();
  const auto zone = loadZone("Europe/Berlin");
  ASSERT_TRUE(zone.ok());
  const absl::CivilDay tomorrow = localDayAt(clinic.clock().wall(), *zone) + 1;
  const absl::Time eight = instantOf(absl::CivilMinute(tomorrow) + 8 * 60, *zone);  // quiet hours end

  {
    Running phone(folder, eight - absl::Hours(1), {"--key-in-file", "--drive", "-"});
    beginAnew(phone, formatTicket(clinic.ticketFor(person.id())));
    EXPECT_TRUE(atLogin(folder).empty()) << "nothing is started before the person wants it";
    phone.mustRun("click Settings");
    phone.mustRun("click \"When to remind me\"");
    phone.mustRun("click \"Remind me\"");
    phone.mustRun("wait \"Next: today at 08:00.\"");
    phone.mustRun("quit");
    EXPECT_TRUE(phone.ends());
  }
  ASSERT_EQ(atLogin(folder).size(), 1U);
  EXPECT_THAT(atLogin(folder)[0], testing::HasSubstr("--reminders-only"));
  EXPECT_TRUE(desktop.shown().empty());

  {
    Running phone(folder, eight - absl::Seconds(4), {"--reminders-only", "--drive", "-"});
    EXPECT_FALSE(phone.state().value("window").toBool()) << "no window after log-in";
    QElapsedTimer since;
    since.start();
    while (desktop.shown().empty() && since.elapsed() < 40000) phone.run("state");
    ASSERT_EQ(desktop.shown().size(), 1U);
    const QString words = desktop.shown()[0].title + " " + desktop.shown()[0].text;
    EXPECT_EQ(words.toStdString(), "Newel You asked for a reminder now.");
    desktop.act(desktop.shown()[0].number, QStringLiteral("default"));
    phone.mustRun("until window true 10000");
    EXPECT_EQ(phone.state().value("page").toString().toStdString(), "Today");

    Running second(folder, eight + absl::Minutes(1), {});
    EXPECT_TRUE(second.ends()) << "the first one has the store open";
    EXPECT_EQ(second.code(), 0);
    EXPECT_TRUE(phone.state().value("window").toBool());

    phone.mustRun("click Settings");
    phone.mustRun("click \"Erase this phone …\"");
    phone.mustRun("wait \"What goes\"");
    phone.mustRun("click \"Erase this phone …\"");
    phone.mustRun("click \"Yes, erase everything\"");
    phone.mustRun("wait \"Your language\"");
    EXPECT_TRUE(atLogin(folder).empty());
    phone.mustRun("quit");
    EXPECT_TRUE(phone.ends());
  }
  Running nobody(folder, eight, {"--reminders-only"});
  EXPECT_TRUE(nobody.ends()) << "there is nobody to remind";
  EXPECT_EQ(nobody.code(), 0);
}

// An X server without a screen, for windows that somebody closes.
class Screen {
 public:
  Screen() {
    if (QStandardPaths::findExecutable(QStringLiteral("Xvfb")).isEmpty()) return;
    m_server.start(QStringLiteral("Xvfb"),
                   {"-displayfd", "1", "-screen", "0", "800x1000x24", "-nolisten", "tcp"});
    if (m_server.waitForReadyRead(10000)) m_display = QLatin1Char(':') + m_server.readLine().trimmed();
  }
  ~Screen() {
    m_server.kill();
    m_server.waitForFinished(5000);
  }
  const QString& display() const { return m_display; }
  void closeWindow() const { EXPECT_TRUE(platform::closeXWindow(m_display.toStdString(), "Newel")); }

 private:
  QProcess m_server;
  QString m_display;
};

TEST(ReminderProgram, closingTheWindowEndsItUnlessRemindersComeFromIt) {
  const Screen screen;
  if (screen.display().isEmpty()) GTEST_SKIP() << "Xvfb (xvfb) is not installed";
  platform::NotificationService desktop;
  ASSERT_TRUE(desktop.start());
  TestClinic clinic;
  const v1::Person person = joanWithAProgramme(clinic).person;
  const std::string folder = clinic.folder().path();
  const absl::Time now = clinic.clock().wall() + absl::Minutes(5);
  {
    Running phone(folder, now, {"--key-in-file", "--drive", "-"}, screen.display());
    beginAnew(phone, formatTicket(clinic.ticketFor(person.id())));
    screen.closeWindow();
    EXPECT_TRUE(phone.ends()) << "nobody wants reminders";
  }
  Running phone(folder, now, {"--drive", "-"}, screen.display());
  phone.mustRun("wait Settings 20000");
  phone.mustRun("click Settings");
  phone.mustRun("click \"When to remind me\"");
  phone.mustRun("click \"Remind me\"");
  phone.mustRun("wait \"Next: *\"");
  screen.closeWindow();
  phone.mustRun("until window false");
  EXPECT_FALSE(phone.ends(1500)) << "its reminders are still to come";
  Running second(folder, now, {}, screen.display());
  EXPECT_TRUE(second.ends());
  phone.mustRun("until window true");
  phone.mustRun("click \"Remind me\"");
  phone.mustRun("wait Reminders");
  screen.closeWindow();
  EXPECT_TRUE(phone.ends()) << "they were switched off";
}

// The real phone, the real hub, and what the desk is given: a record of its own kind on its own day, counted
// as done, and its red flag standing at both ends.
TEST(ToldLaterProgram, reachesTheDeskAsToldAndItsRedFlagStands) {
  TestClinic clinic;
  const auto [person, programme] = joanWithAProgramme(clinic);
  const std::string folder = clinic.folder().path();
  Running phone(folder, clinic.clock().wall() + absl::Minutes(5), {"--key-in-file", "--drive", "-"});
  beginAnew(phone, formatTicket(clinic.ticketFor(person.id())));
  phone.mustRun("click \"I did this away from the phone\"");
  phone.mustRun("wait Today");
  phone.mustRun("click \"Sit to stand\"");
  phone.mustRun("click \"About half\"");
  phone.mustRun("click 2");
  phone.mustRun("click Next");
  phone.mustRun("click 3");
  phone.mustRun("click Next");
  phone.mustRun("click \"Chest pain\"");
  phone.mustRun("wait \"Please read this now\"");
  phone.mustRun("wait \"Call the emergency number now\"");
  phone.mustRun("click \"I have read this\"");
  EXPECT_FALSE(phone.state().value("mayStart").toBool());
  phone.mustRun("until queued 0 20000");
  const auto practices = clinic.desk().practices(person.id());
  ASSERT_TRUE(practices.ok()) << practices.status();
  ASSERT_EQ(practices->size(), 1U);
  const v1::Practice& practice = practices->front();
  EXPECT_EQ(practice.origin(), v1::ORIGIN_TOLD_LATER);
  EXPECT_THAT(practice.red_flag_rule_ids(), testing::ElementsAre("stop-chest-pain"));
  const absl::CivilDay day = *parseLocalDay(practice.local_day());
  v1::Programme signed_one = programme;
  signed_one.set_number(1);
  signed_one.set_clinic_id(idOf(2));
  signed_one.set_signer_id(idOf(3));
  signed_one.set_signer_name("A Therapist");
  *signed_one.mutable_issued_at() = toTimestamp(clinic.clock().wall());
  const auto adherence = adherenceOf({signed_one}, *practices, day, day, day, day, {});
  ASSERT_TRUE(adherence.ok()) << adherence.status();
  int told = 0;
  for (const OccasionResult& each : adherence->occasions) {
    if (!each.told_later) continue;
    ++told;
    EXPECT_EQ(each.state, OccasionResult::State::Part);
  }
  EXPECT_EQ(told, 1);
  const auto caseload = clinic.desk().caseload();
  ASSERT_TRUE(caseload.ok()) << caseload.status();
  ASSERT_EQ(caseload->size(), 1U);
  EXPECT_TRUE(caseload->front().red_flag_open());

  // And it is the person's to take along, where they find it.
  phone.mustRun("click Settings");
  phone.mustRun("click \"Save everything about me\"");
  phone.mustRun("click \"Save to read and print (PDF)\"");
  phone.mustRun("wait Saved 20000");
  phone.mustRun("click \"Save for other programs (JSON)\"");
  phone.mustRun("wait Saved 20000");
  std::set<std::string> endings;
  const std::filesystem::path documents = folder + "/home/Documents";
  for (const auto& file : std::filesystem::directory_iterator(documents)) {
    std::ifstream stream(file.path(), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(stream), {}};
    EXPECT_THAT(bytes, testing::HasSubstr(file.path().extension() == ".pdf" ? "%PDF-" : "ORIGIN_TOLD_LATER"));
    EXPECT_EQ(file.path().filename().string().find("Newel, about me, "), 0U);
    endings.insert(file.path().extension());
  }
  EXPECT_THAT(endings, testing::ElementsAre(".json", ".pdf"));
  phone.mustRun("quit");
  EXPECT_TRUE(phone.ends());
}

}  // namespace
}  // namespace newel::test

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  const QCoreApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
