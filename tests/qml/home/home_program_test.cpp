// The real program as its own process, driven through its window, against a real hub over TLS: pairing, a
// kill -9 in the middle of a hold, taking up again, and a hold order that stops a running practice within a
// second.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QElapsedTimer>
#include <QtCore/QJsonDocument>
#include <QtCore/QJsonObject>
#include <QtCore/QProcess>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/home/device_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::test {
namespace {

// One run of newel-home. Commands and answers as in qml/parts/driver.h.
class Phone {
 public:
  Phone(const std::string& folder, qlonglong wall_offset_s) {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("QT_QPA_PLATFORM", "offscreen");
    environment.insert("XDG_RUNTIME_DIR", QString::fromStdString(folder + "/run"));
    environment.insert("TZ", "Europe/Berlin");
    environment.insert("NEWEL_WALL_OFFSET_S", QString::number(wall_offset_s));
    // Whatever the program leaves anywhere, it leaves below this folder.
    for (const char* name :
         {"TMPDIR", "XDG_CACHE_HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME"}) {
      const std::string place = folder + "/left/" + name;
      std::filesystem::create_directories(place);
      environment.insert(name, QString::fromStdString(place));
    }
    std::filesystem::create_directories(folder + "/run");
    std::filesystem::permissions(folder + "/run", std::filesystem::perms::owner_all);
    m_process.setProcessEnvironment(environment);
    m_process.setProcessChannelMode(QProcess::SeparateChannels);
    m_process.start(QStringLiteral(NEWEL_BINARY_DIR "/bin/newel-home"),
                    {"--data", QString::fromStdString(folder + "/phone"), "--key-in-file", "--drive", "-"});
    EXPECT_TRUE(m_process.waitForStarted(10000));
  }
  ~Phone() {
    if (m_process.state() == QProcess::NotRunning) return;
    m_process.kill();
    m_process.waitForFinished(5000);
  }

  std::string run(const std::string& command, int wait_ms = 20000) {
    m_process.write((command + "\n").c_str());
    QElapsedTimer since;
    since.start();
    while (!m_process.canReadLine() && since.elapsed() < wait_ms) {
      if (m_process.state() == QProcess::NotRunning) return "newel-home ended: " + errors();
      m_process.waitForReadyRead(100);
    }
    return m_process.readLine().trimmed().toStdString();
  }
  void mustRun(const std::string& command) {
    EXPECT_EQ(run(command), "ok") << command << "\n" << run("state");
  }
  QJsonObject state() {
    const QByteArray answer = QByteArray::fromStdString(run("state"));
    return QJsonDocument::fromJson(answer.mid(3)).object();
  }
  void quit() {
    mustRun("quit");
    EXPECT_TRUE(m_process.waitForFinished(10000));
  }
  void killHard() {
    m_process.kill();  // SIGKILL
    EXPECT_TRUE(m_process.waitForFinished(5000));
  }
  std::string errors() { return m_process.readAllStandardError().toStdString(); }

  // The fine answer to every question: it is always the first choice of its page.
  void answerAllFine() {
    for (int round = 0; round < 8 && state().value("page") == "Question"; ++round) {
      mustRun("click \"" + firstChoice() + "\"");
      mustRun("click Next");
    }
    if (state().value("page") == "Pain") {
      mustRun("click 1");
      mustRun("click Next");
    }
  }

 private:
  std::string firstChoice() {
    for (const char* words : {"Well", "It looks as always", "Both look as always", "No", "As always",
                              "90 to 249 mg/dL (5.0 to 13.8 mmol/L)"}) {
      if (run("wait \"" + std::string(words) + "\" 50") == "ok") return words;
    }
    return "";
  }

  QProcess m_process;
};

// Every byte of every file that the phone's program left: its store, its settings, temporary files, caches,
// logs.
std::string leftBy(const std::string& folder) {
  std::string all;
  for (const char* part : {"/phone", "/run", "/left"}) {
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder + part)) {
      if (!entry.is_regular_file()) continue;
      std::ifstream file(entry.path(), std::ios::binary);
      all.append(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
  }
  return all;
}

// The secret that this phone shows the hub.
std::string tokenIn(const std::string& folder) {
  std::ifstream file(folder + "/phone/store.key");
  std::string hex;
  file >> hex;
  RealRandom random;
  const auto store = DeviceStore::open(folder + "/phone", "", fromHex(hex).value_or(""), random);
  if (!store.ok()) return "";
  return (*store)
      ->read(
          [](Database& database) -> absl::StatusOr<std::string> { return loadSettings(database).hub.token; })
      .value_or("");
}

// What the program said on its standard error, and what it left: no word about the person, nor a secret.
void expectNoWordOf(const std::string& text, const std::string& what, const std::string& token) {
  for (const std::string& word : {std::string("Joan"), std::string("Invented"), std::string("Your skin"),
                                  std::string("sit-to-stand"), std::string("transfemoral"), token}) {
    EXPECT_EQ(text.find(word), std::string::npos) << word << " is in " << what;
  }
}

v1::Programme dailyDraft(const TestClinic& clinic, const v1::Person& person) {
  v1::Programme draft = clinic.draft(person);
  for (v1::Entry& entry : *draft.mutable_entries()) {
    entry.mutable_schedule()->clear_windows();
    v1::Window& window = *entry.mutable_schedule()->add_windows();
    window.set_from_min(0);
    window.set_to_min(1440);
    entry.mutable_schedule()->mutable_weekdays()->clear_days();
    for (int day = 1; day <= 7; ++day) {
      entry.mutable_schedule()->mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
    }
    entry.mutable_dose()->mutable_sets()->set_hold_s(8);
  }
  return draft;
}

TEST(HomeProgram, killedInAHoldTakesUpAgainAndAHoldOrderStopsItWithinASecond) {
  TestClinic clinic;
  const v1::Person person = transfemoralLeft();
  clinic.addPerson(person, "Joan");
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = dailyDraft(clinic, person);
  request.mutable_draft()->set_id(newRecordId(clinic.clock(), clinic.random()));
  ASSERT_TRUE(clinic.desk().signProgramme(request).ok());
  const qlonglong offset =
      static_cast<qlonglong>(absl::ToUnixSeconds(clinic.clock().wall())) - QDateTime::currentSecsSinceEpoch();
  const std::string folder = clinic.folder().path();
  std::string said;

  {
    Phone phone(folder, offset);
    for (const char* title : {"Your language", "How large should words be?", "Can you hear the phone?"}) {
      phone.mustRun("wait \"" + std::string(title) + "\"");
      phone.mustRun("click Next");
    }
    phone.mustRun("wait \"Connect this phone to your clinic\"");
    phone.mustRun("type \"Text of the QR code\" \"" + formatTicket(clinic.ticketFor(person.id())) + "\"");
    phone.mustRun("click \"Connect with this text\"");
    phone.mustRun("wait \"Hello Joan\" 20000");
    phone.mustRun("click \"Go on\"");
    phone.mustRun("click \"No reminders\"");
    phone.mustRun("click Next");
    phone.mustRun("wait \"Whom to call\"");
    phone.mustRun("click Next");
    phone.mustRun("click \"I have read this\"");
    phone.mustRun("until page Today");
    phone.mustRun("until programme 1 10000");
    phone.mustRun("wait \"Test clock: the date is shifted\"");
    phone.mustRun("click Start");
    phone.answerAllFine();
    phone.mustRun("click \"Support is there: start\"");
    phone.mustRun("click \"Go on now\"");
    phone.mustRun("until kind hold 20000");
    phone.killHard();
    said = phone.errors();
  }
  Phone phone(folder, offset);
  phone.mustRun("wait \"Go on where you stopped?\"");
  phone.mustRun("click \"Go on\"");
  phone.mustRun("until player paused");
  EXPECT_EQ(phone.state().value("kind").toString().toStdString(), "hold");
  phone.mustRun("click \"Go on\"");
  phone.mustRun("until player running");

  v1::IssueHoldRequest hold;
  hold.set_person_id(person.id());
  hold.set_reason("Your skin needs rest.");
  // Where the stream is not open yet, the order comes with the next round: wait for contact first.
  phone.mustRun("sleep 1500");
  QElapsedTimer since;
  since.start();
  ASSERT_TRUE(clinic.desk().issueHold(hold).ok());
  phone.mustRun("wait \"Stop now\" 5000");
  EXPECT_LT(since.elapsed(), 1000) << "a hold order stops a running practice within a second";
  RecordProperty("hold_order_ms", static_cast<int>(since.elapsed()));
  phone.mustRun("wait \"Your skin needs rest.\"");
  phone.mustRun("wait \"555 0101\"");
  phone.mustRun("click \"I have read this\"");
  phone.mustRun("until queued 0 10000");
  const auto practices = clinic.desk().practices(person.id());
  ASSERT_TRUE(practices.ok());
  ASSERT_EQ(practices->size(), 1U);
  EXPECT_EQ(practices->front().end(), v1::PRACTICE_END_HELD);
  EXPECT_EQ(practices->front().resumed(), 1U);
  phone.mustRun("click \"Back to today\"");
  EXPECT_FALSE(phone.state().value("mayStart").toBool());
  phone.quit();
  said += phone.errors();
  const std::string left = leftBy(folder);
  EXPECT_GT(left.size(), 10000U);
  const std::string token = tokenIn(folder);
  ASSERT_FALSE(token.empty());
  expectNoWordOf(left, "a file", token);
  expectNoWordOf(said, "the log", token);
}

}  // namespace
}  // namespace newel::test

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  QCoreApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
