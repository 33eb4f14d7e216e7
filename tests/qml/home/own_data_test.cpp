// What the person tells later, takes along and erases: through the models, the engine and the files.
#include <SQLiteCpp/SQLiteCpp.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QElapsedTimer>
#include <QtCore/QFile>
#include <QtCore/QFileInfo>
#include <QtCore/QJsonArray>
#include <QtCore/QJsonDocument>
#include <QtCore/QJsonObject>
#include <QtCore/QProcess>
#include <QtCore/QStandardPaths>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "qml/home/own_record.h"
#include "qml/home/screen_language.h"
#include "tests/qml/home/home_world.h"

namespace newel::tests {
namespace {

using home::AppModel;
using home::TellLaterModel;
using Page = AppModel::Page;
using Step = TellLaterModel::Step;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class OwnData : public testing::Test {
 protected:
  void begin(const std::vector<std::string>& exercises = {"sit-to-stand", "weight-shift-side"}) {
    m_world.clinic().put(inventedProgramme(1, exercises));
    m_world.pair();
    m_world.clock().advance(absl::Minutes(5));  // since the clinic signed it
  }
  HomeProgram& program() { return m_world.program(); }
  TellLaterModel& tell() { return *program().tell_later; }
  // The whole way for the row, until it is kept.
  void tellOf(int row, int pain = 2, int effort = 4, v1::StopReason happened = v1::STOP_REASON_UNSPECIFIED) {
    tell().begin();
    tell().choose(row);
    tell().howMuch(100);
    tell().givePain(pain);
    tell().giveEffort(effort);
    tell().happened(happened);
    ASSERT_EQ(tell().step(), Step::Told) << tell().error().toStdString();
  }

  HomeWorld m_world;
};

// ---- told later ----

TEST_F(OwnData, toldLaterIsDoneTodayAndReachesTheClinicAsTold) {
  begin();
  EXPECT_EQ(program().today->dueCount(), 2);
  program().app->show(Page::TellLater);
  EXPECT_EQ(m_world.page(), Page::TellLater);
  tellOf(0);
  EXPECT_EQ(program().today->dueCount(), 1);
  EXPECT_EQ(program().today->at(), 1);
  m_world.sync();
  ASSERT_EQ(m_world.clinic().practices().size(), 1U);
  const v1::Practice practice = m_world.clinic().practices()[0];
  EXPECT_EQ(practice.origin(), v1::ORIGIN_TOLD_LATER);
  EXPECT_EQ(practice.elapsed_ms(), 0);
  EXPECT_EQ(practice.entries(0).occasion().local_day(), "2026-11-25");
  EXPECT_EQ(practice.entries(0).pain_after_0_10(), 2U);
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::Today);
}

TEST_F(OwnData, whatWasToldIsNotOfferedAgainAndEarlierDaysAre) {
  begin({"sit-to-stand"});
  tell().begin();
  ASSERT_EQ(tell().rows().size(), 7);
  EXPECT_EQ(tell().rows()[0].toMap()["day"].toString().toStdString(), "Today");
  EXPECT_EQ(tell().rows()[1].toMap()["day"].toString().toStdString(), "Yesterday");
  tellOf(1);
  tell().begin();
  ASSERT_EQ(tell().rows().size(), 6);
  EXPECT_EQ(program().engine->practices().front().local_day(), "2026-11-24");
  EXPECT_EQ(program().today->dueCount(), 1) << "today's is still due";
}

TEST_F(OwnData, eachQuestionCanBeTakenBackAndNothingIsKeptBefore) {
  begin();
  tell().begin();
  EXPECT_FALSE(tell().back()) << "at the first question the page is left";
  tell().choose(0);
  tell().howMuch(50);
  tell().givePain(3);
  EXPECT_EQ(tell().step(), Step::Effort);
  EXPECT_TRUE(tell().back());
  EXPECT_TRUE(tell().back());
  EXPECT_EQ(tell().step(), Step::HowMuch);
  tell().giveEffort(3);
  EXPECT_EQ(tell().step(), Step::HowMuch) << "an answer to another question changes nothing";
  tell().choose(99);
  EXPECT_THAT(program().engine->practices(), IsEmpty());
}

TEST_F(OwnData, aRedFlagToldLaterStopsPracticeUntilTheClinicSpeaks) {
  begin();
  tellOf(0, 2, 4, v1::STOP_REASON_CHEST_PAIN);
  EXPECT_TRUE(tell().ends());
  EXPECT_TRUE(tell().emergencyFirst());
  ASSERT_FALSE(tell().findings().isEmpty());
  EXPECT_FALSE(program().today->mayStart());
  EXPECT_THAT(program().today->whyNot().toStdString(), HasSubstr("until the clinic has spoken"));
  m_world.sync();
  EXPECT_THAT(m_world.clinic().practices()[0].red_flag_rule_ids(), testing::ElementsAre("stop-chest-pain"));
  m_world.clock().advance(absl::Minutes(10));
  v1::Message message = m_world.clinic().message("You may go on.", false);
  message.mutable_written_at()->set_seconds(absl::ToUnixSeconds(m_world.clock().wall()));
  m_world.clinic().put(message);
  m_world.sync();
  program().today->refresh();
  EXPECT_TRUE(program().today->mayStart());
}

TEST_F(OwnData, aRedFlagOfAnEarlierDayStopsTodayToo) {
  begin({"sit-to-stand"});
  tellOf(2, 9);
  EXPECT_TRUE(tell().ends());
  EXPECT_FALSE(program().today->mayStart());
}

// ---- everything about me ----

void written(const home::TakeAlongModel& model) {
  EXPECT_TRUE(model.busy());
  for (int i = 0; i < 1000 && model.busy(); ++i) settle(10);
  EXPECT_FALSE(model.busy());
}

std::string bytesOf(const QString& file) {
  std::ifstream stream(file.toStdString(), std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

TEST_F(OwnData, theDataFileIsWholeJsonForTheOwnerAloneAndNeverWrittenOver) {
  begin();
  tellOf(0);
  program().take_along->saveJson();
  written(*program().take_along);
  ASSERT_EQ(program().take_along->error().toStdString(), "");
  const QString first = program().take_along->file();
  EXPECT_THAT(program().take_along->savedAs().toStdString(), HasSubstr("documents"));
  EXPECT_THAT(program().take_along->savedAs().toStdString(), HasSubstr(".json"));
  const QJsonDocument json = QJsonDocument::fromJson(QByteArray::fromStdString(bytesOf(first)));
  ASSERT_TRUE(json.isObject());
  EXPECT_EQ(json.object()["practices"].toArray().size(), 1);
  EXPECT_EQ(json.object()["programmes"].toArray().size(), 1);
  EXPECT_EQ(QFileInfo(first).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteOther),
            QFile::Permissions());
  program().take_along->saveJson();
  written(*program().take_along);
  EXPECT_NE(program().take_along->file(), first);
  EXPECT_TRUE(QFile::exists(first));
}

TEST_F(OwnData, theDocumentSaysWhatWasDoneAndWhatWasToldLater) {
  begin();
  tellOf(0, 3, 5);
  m_world.clinic().put(m_world.clinic().message("Please use <both> hands.", false));
  m_world.sync();
  const std::string html = home::ownRecord(program().parts).blocks.join(QString()).toStdString();
  for (const char* words : {"Programme 1", "Sit to stand", "told later", "3 of 10", "5 of 10",
                            "Please use &lt;both&gt; hands.", "Ruth Sample"}) {
    EXPECT_THAT(html, HasSubstr(words));
  }
}

// Read back by another program: poppler's pdftotext.
TEST_F(OwnData, thePdfCanBeReadByAnotherProgram) {
  begin();
  tellOf(0);
  program().take_along->savePdf();
  written(*program().take_along);
  ASSERT_EQ(program().take_along->error().toStdString(), "");
  const QString file = program().take_along->file();
  EXPECT_EQ(bytesOf(file).substr(0, 5), "%PDF-");
  EXPECT_EQ(QFileInfo(file).permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
  const QString reader = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
  if (reader.isEmpty()) GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
  QProcess process;
  process.start(reader, {QStringLiteral("-layout"), file, QStringLiteral("-")});
  ASSERT_TRUE(process.waitForFinished(20000));
  const std::string read = process.readAllStandardOutput().toStdString();
  EXPECT_THAT(read, HasSubstr("What you did"));
  EXPECT_THAT(read, HasSubstr("told later"));
  EXPECT_THAT(read, HasSubstr("Page 1 of"));
}

// Five years of it: no table is laid out as a whole, which took minutes.
TEST(OwnRecord, yearsOfPracticesAreWrittenInSeconds) {
  home::OwnRecordText record{QStringLiteral("Long"), QStringLiteral("foot"), {}};
  QString table = QStringLiteral("<table width=\"100%\" border=\"1\">");
  for (int row = 0; row < 120; ++row) {
    table += QStringLiteral("<tr><td>Wednesday, 25 November 2026</td><td>Stairs</td><td>10 of 20</td></tr>");
  }
  for (int part = 0; part < 20; ++part) record.blocks << table + QStringLiteral("</table>");
  TempFolder folder;
  QElapsedTimer since;
  since.start();
  ASSERT_EQ(home::writeOwnRecord(record, QString::fromStdString(folder.path() + "/long.pdf")),
            absl::OkStatus());
  EXPECT_LT(since.elapsed(), 20000);
}

TEST_F(OwnData, aLongHistoryComesInPieces) {
  begin({"sit-to-stand"});
  for (int i = 0; i < 130; ++i) ASSERT_EQ(program().engine->writeMessage("A line."), absl::OkStatus());
  const QStringList blocks = home::ownRecord(program().parts).blocks;
  std::vector<std::ptrdiff_t> lines;
  for (const QString& block : blocks) {
    const auto count = block.count(QStringLiteral("A line."));
    if (count > 0) lines.push_back(count);
  }
  EXPECT_THAT(lines, testing::ElementsAre(120, 10)) << "whole, and no piece too long";
}

TEST_F(OwnData, whereNothingCanBeWrittenItIsSaidAndNothingIsLeft) {
  begin();
  program().parts.documents = [] { return std::string("/proc/no/such/place"); };
  program().take_along->savePdf();
  EXPECT_THAT(program().take_along->error().toStdString(), HasSubstr("Nothing was saved"));
  program().parts.documents = [] { return std::string(); };
  program().take_along->saveJson();
  EXPECT_THAT(program().take_along->error().toStdString(), HasSubstr("Nothing was saved"));
  EXPECT_EQ(program().take_along->savedAs().toStdString(), "");
}

// ---- erase ----

// Every file below the phone's folder, one after the other.
std::string everythingIn(const std::string& folder) {
  std::string all;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    std::ifstream file(entry.path(), std::ios::binary);
    all.append(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
  }
  return all;
}

// The sealed bytes as they lie in the store's tables: what a copy of the key could still open.
std::vector<std::string> sealedIn(const std::string& file) {
  std::vector<std::string> blobs;
  const SQLite::Database database(file, SQLite::OPEN_READONLY);
  for (const char* table : {"setting", "practice", "outbox", "programme", "message", "receipt"}) {
    const char* column = std::string(table) == "setting" ? "value" : "content";
    SQLite::Statement rows(database, std::string("SELECT ") + column + " FROM " + table);
    while (rows.executeStep()) blobs.push_back(rows.getColumn(0).getString());
  }
  return blobs;
}

TEST_F(OwnData, erasingLeavesNeitherAWordNorASealedByteInAnyFile) {
  const std::string canary = "CANARY-7f3a-of-Joan";
  v1::Programme programme = inventedProgramme(1, {"sit-to-stand"});
  programme.set_advice(canary);
  programme.mutable_entries(0)->set_note(canary);
  m_world.clinic().put(programme);
  m_world.pair();
  m_world.clinic().put(m_world.clinic().message(canary, false));
  m_world.sync();
  program().reminder_model->setOn(true);
  program().settings->setTextPercent(175);
  program().today->markRead(QString::fromStdString(program().engine->messages().front().id()));
  const std::string message_id = program().engine->messages().front().id();
  tellOf(0);
  ASSERT_EQ(program().engine->writeMessage(canary), absl::OkStatus());
  ASSERT_THAT(everythingIn(m_world.folder()), Not(HasSubstr(canary))) << "sealed before it is erased";
  ASSERT_THAT(everythingIn(m_world.folder()), HasSubstr(message_id));
  const std::vector<std::string> sealed = sealedIn(m_world.folder() + "/home.db");
  ASSERT_GT(sealed.size(), 20U);

  program().app->show(Page::Settings);
  program().app->show(Page::Erase);
  EXPECT_GT(program().take_along->waiting(), 0) << "the page says that something would be lost";
  program().settings->erase();
  EXPECT_EQ(m_world.page(), Page::Language);
  const std::string left = everythingIn(m_world.folder());
  EXPECT_THAT(left, Not(HasSubstr(canary)));
  EXPECT_THAT(left, Not(HasSubstr(message_id)));
  EXPECT_THAT(left, Not(HasSubstr("175")));
  for (const std::string& blob : sealed) {
    if (blob.size() < 16) continue;
    EXPECT_EQ(left.find(blob.substr(0, 16)), std::string::npos) << "a sealed record is still there";
  }
}

}  // namespace
}  // namespace newel::tests
