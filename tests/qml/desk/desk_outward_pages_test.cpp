// What leaves the desk and what comes in: documents, a file of another system, one message to many. Over a
// real hub, in each look of desk_window.h. Everybody here is invented.
#include <gtest/gtest.h>

#include <QtCore/QFile>
#include <QtCore/QFileInfo>
#include <QtCore/QJsonArray>
#include <QtCore/QJsonDocument>
#include <QtGui/QImage>

#include "sync/hub/backup.h"
#include "tests/qml/desk/desk_window.h"

namespace newel::tests {
namespace {

using desk::DocumentKind;
using desk::ManyModel;

constexpr char kReferral[] = R"json({"resourceType":"Bundle","type":"collection","entry":[
  {"resource":{"resourceType":"Patient","id":"p","name":[{"use":"official","family":"Specimen","given":["Dora"]}],
    "telecom":[{"system":"phone","value":"555 0142"}],"birthDate":"1958-03-09","address":[{"city":"Nowhere"}],
    "communication":[{"language":{"coding":[{"code":"es"}]},"preferred":true}]}},
  {"resource":{"resourceType":"ServiceRequest","id":"s1","status":"active","intent":"order",
    "subject":{"reference":"Patient/p"},"code":{"text":"Balance at the worktop"},
    "patientInstruction":"Each day after breakfast","requester":{"display":"Dr. Sample (invented)"}}},
  {"resource":{"resourceType":"ServiceRequest","id":"s2","status":"on-hold","intent":"order",
    "subject":{"reference":"Patient/p"},"code":{"text":"Treadmill"}}}]})json";

class OutwardPages : public DeskPages {
 protected:
  void made() {
    for (int i = 0; i < 500 && m_desk->documents()->making(); ++i) settle(20);
    answered();
    ASSERT_EQ(m_desk->documents()->problem().toStdString(), "");
  }
  static QByteArray contentOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
  }
  std::string lastAction() { return m_clinic.auditActions().back(); }
  QString place(const char* name) const {
    return QString::fromStdString(m_folder.path()) + QLatin1Char('/') + QLatin1String(name);
  }
};

TEST_P(OutwardPages, everyDocumentIsMadeNotedAndWhole) {
  signIn(test::kUser);
  openAda();
  desk::DocumentsModel& documents = *m_desk->documents();
  m_desk->openDocuments();
  documents.setFolder(place("papers"));
  check(DeskModel::DocumentsPage);
  int count = 0;
  for (const QVariant& kind : desk::DocumentsModel::kinds()) {
    const int value = kind.toMap()["value"].toInt();
    documents.setKind(value);
    check(DeskModel::DocumentsPage, "-kind" + std::to_string(value));
    ASSERT_EQ(documents.whyNot().toStdString(), "");
    documents.make();
    made();
    ASSERT_EQ(documents.made().size(), ++count);
    const QString path = documents.made().first();
    EXPECT_TRUE(QFileInfo::exists(path)) << path.toStdString();
    EXPECT_NE(lastAction().find("person.export"), std::string::npos) << lastAction();
    EXPECT_NE(lastAction().find(desk::formatWord(static_cast<DocumentKind>(value))), std::string::npos);
    const bool sheet = desk::isSheet(static_cast<DocumentKind>(value));
    EXPECT_EQ(path.contains("ada"), sheet) << "no name in what is pseudonymous: " << path.toStdString();
    if (QFileInfo(path).isFile()) {
      EXPECT_EQ(QFile::permissions(path) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions())
          << "for nobody else to read";
    }
  }
  const QJsonObject bundle = QJsonDocument::fromJson(contentOf(documents.made().at(1))).object();
  EXPECT_EQ(bundle["resourceType"].toString(), "Bundle");
  EXPECT_GT(bundle["entry"].toArray().size(), 2);
  EXPECT_FALSE(contentOf(documents.made().at(1)).contains("Ada"));
  EXPECT_TRUE(contentOf(documents.made().at(2)).startsWith("BEGIN:VCALENDAR"));
  EXPECT_TRUE(contentOf(documents.made().last()).startsWith("%PDF"));
  EXPECT_TRUE(QFileInfo(documents.made().first()).isDir()) << "tables";
  // Again: nothing is replaced.
  const QString first = documents.made().first();
  documents.make();
  made();
  EXPECT_NE(documents.made().first(), first);
  scroll(10000);
  check(DeskModel::DocumentsPage, "-made");
}

TEST_P(OutwardPages, withoutTheHubNothingIsThereAndItIsSaid) {
  signIn(test::kUser);
  openAda();
  m_desk->openDocuments();
  desk::DocumentsModel& documents = *m_desk->documents();
  documents.setFolder(place("papers"));
  documents.setKind(static_cast<int>(DocumentKind::Report));
  documents.setFirstDay(QStringLiteral("soon"));
  EXPECT_NE(documents.whyNot(), "");
  check(DeskModel::DocumentsPage, "-day");
  documents.setFirstDay(QStringLiteral("2026-11-20"));
  documents.setLastDay(QStringLiteral("2026-11-01"));
  EXPECT_NE(documents.lastDayProblem(), "");
  documents.setLastDay(QStringLiteral("2026-11-25"));
  documents.setFolder(QStringLiteral("somewhere"));
  EXPECT_NE(documents.whyNot(), "") << "no path of this computer";
  documents.setFolder(place("papers"));
  // Given up before it is there, and the folder stays empty.
  documents.make();
  ASSERT_TRUE(documents.making());
  check(DeskModel::DocumentsPage, "-making");
  documents.setKind(static_cast<int>(DocumentKind::Fhir));
  documents.make();
  documents.cancel();
  EXPECT_FALSE(documents.making());
  answered();
  settle(300);
  const std::size_t noted = m_clinic.auditActions().size();
  m_clinic.stopServer();
  documents.make();
  for (int i = 0; i < 1500 && documents.making(); ++i) settle(20);
  EXPECT_FALSE(documents.making());
  EXPECT_NE(documents.problem(), "");
  check(DeskModel::DocumentsPage, "-no-hub");
  EXPECT_EQ(m_clinic.auditActions().size(), noted);
  const QStringList left = QDir(place("papers")).entryList(QDir::AllEntries | QDir::NoDotAndDotDot);
  for (const QString& name : left)
    EXPECT_TRUE(name.contains("report")) << "only what was made before: " << name.toStdString();
}

TEST_P(OutwardPages, aFileOfAnotherSystemFillsTheFormAndTheFirstProgramme) {
  QFile file(place("referral.json"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(kReferral);
  file.close();
  signIn(test::kUser);
  m_desk->openNewPerson();
  desk::ImportModel& import = *m_desk->importing();
  check(DeskModel::PersonEditPage, "-new");
  import.readFile(place("nothing.json"));
  answered();
  EXPECT_NE(import.problem(), "");
  import.readFile(place("referral.json"));
  answered();
  ASSERT_EQ(import.problem().toStdString(), "");
  EXPECT_EQ(m_desk->form()->values()["family_name"].toString(), "Specimen");
  EXPECT_EQ(m_desk->form()->values()["given_name"].toString(), "Dora");
  EXPECT_EQ(m_desk->form()->values()["birth_date"].toString(), "1958-03-09");
  EXPECT_EQ(m_desk->form()->values()["phone"].toString(), "555 0142");
  EXPECT_EQ(m_desk->form()->values()["language"].toString(), "es");
  EXPECT_EQ(import.requests().size(), 2);
  ASSERT_EQ(import.warnings().size(), 1);
  EXPECT_TRUE(import.warnings().first().contains("on-hold"));
  EXPECT_FALSE(import.notTaken().isEmpty()) << "the address has no place here";
  check(DeskModel::PersonEditPage, "-imported");
  click(said("ImportPane", "What was not taken (%1)").arg(import.notTaken().size()));
  scroll(300);
  check(DeskModel::PersonEditPage, "-not-taken");
  // The rest of the record by hand.
  desk::PersonFormModel& form = *m_desk->form();
  form.set(QStringLiteral("lost"), 1);
  form.set(QStringLiteral("left.level"), v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  form.set(QStringLiteral("left.prosthesis"), v1::ANSWER_YES);
  form.set(QStringLiteral("left.foot"), v1::FOOT_KIND_FIXED_ANKLE);
  form.set(QStringLiteral("mobility"), v1::MOBILITY_LEVEL_K2);
  form.set(QStringLiteral("height_cm"), 170);
  form.set(QStringLiteral("walking_aid"), v1::WALKING_AID_NONE);
  form.set(QStringLiteral("no_conditions"), true);
  form.restNotKnown();
  form.save();
  answered();
  std::string problems = form.problem().toStdString();
  for (auto at = form.problems().cbegin(); at != form.problems().cend(); ++at)
    problems += "; " + at.key().toStdString() + ": " + at.value().toString().toStdString();
  ASSERT_EQ(m_desk->page(), DeskModel::PersonPage) << problems;
  m_desk->openProgramme();
  check(DeskModel::ProgrammePage, "-asked-for");
  ASSERT_EQ(m_desk->start()->asks().size(), 2);
  EXPECT_EQ(m_desk->start()->asks().first().toMap()["title"].toString(), "Balance at the worktop");
  EXPECT_EQ(m_desk->start()->asksWords(), "") << "neither names an exercise of the catalogue";
  m_desk->back();
  m_desk->openDone();
  answered();
  EXPECT_EQ(m_desk->remarks()->ofDays().size(), 3) << "two requests and a warning outlive this desk";
  m_desk->back();
  m_desk->back();
  m_desk->openPerson(QString::fromStdString(m_person.id()));
  answered();
  m_desk->openProgramme();
  EXPECT_TRUE(m_desk->start()->asks().isEmpty()) << "asked for somebody else";
}

// What this desk wrote for somebody is a beginning for somebody else's record, exercise by exercise.
TEST_P(OutwardPages, ourOwnExportIsABeginning) {
  signIn(test::kUser);
  openAda();
  m_desk->openDocuments();
  m_desk->documents()->setFolder(place("papers"));
  m_desk->documents()->setKind(static_cast<int>(DocumentKind::Fhir));
  m_desk->documents()->make();
  made();
  const QString bundle = m_desk->documents()->made().first();
  m_desk->back();
  m_desk->back();
  m_desk->openNewPerson();
  m_desk->importing()->readFile(bundle);
  answered();
  ASSERT_EQ(m_desk->importing()->problem().toStdString(), "");
  const v1::Programme signed_one = m_clinic.desk().programmes(m_person.id())->back();
  EXPECT_EQ(m_desk->importing()->requests().size(), signed_one.entries_size());
  m_desk->start()->offer(m_person.id(), m_desk->importing()->import());
  openAda();
  m_desk->openProgramme();
  EXPECT_NE(m_desk->start()->asksWords(), "");
  m_desk->start()->startBlank();
  m_desk->start()->startFromAsked();
  ASSERT_EQ(m_desk->draft()->programme().entries_size(), signed_one.entries_size());
  EXPECT_EQ(m_desk->draft()->programme().entries(0).exercise_id(), signed_one.entries(0).exercise_id());
  EXPECT_EQ(m_desk->draft()->programme().entries(0).dose().SerializeAsString(),
            signed_one.entries(0).dose().SerializeAsString());
  check(DeskModel::ProgrammePage, "-from-file");
}

TEST_P(OutwardPages, oneMessageGoesToManyAndWhoHasItIsShown) {
  signIn(test::kUser);
  desk::CaseloadModel& list = *m_desk->caseload();
  list.toggleChosen(QString::fromStdString(m_person.id()));
  EXPECT_TRUE(list.choosing());
  check(DeskModel::CaseloadPage, "-choosing");
  list.chooseShown();
  EXPECT_EQ(list.chosenCount(), list.count());
  m_desk->openMany(false);
  ManyModel& many = *m_desk->many();
  ASSERT_EQ(many.count(), 2);
  check(DeskModel::ManyPage);
  EXPECT_NE(many.whyNot(), "");
  many.review();
  EXPECT_FALSE(many.reviewing());
  many.setText(QStringLiteral("The clinic is closed on Monday. Practise as usual."));
  QImage picture(600, 400, QImage::Format_RGB32);
  picture.fill(Qt::darkGreen);
  ASSERT_TRUE(picture.save(place("door.png")));
  many.attach(place("door.png"));
  ASSERT_EQ(many.mediaProblem().toStdString(), "");
  EXPECT_NE(many.whyNot(), "") << "for who does not see it";
  check(DeskModel::ManyPage, "-photo");
  many.setMediaWords(QStringLiteral("The door of the clinic"));
  ASSERT_EQ(many.whyNot().toStdString(), "");
  many.review();
  check(DeskModel::ManyPage, "-review");
  many.send();
  for (int i = 0; i < 500 && many.sending(); ++i) settle(20);
  answered();
  EXPECT_EQ(many.failures(), 0) << many.progress().toStdString();
  check(DeskModel::ManyPage, "-sent");
  for (const QVariant& one : many.people()) EXPECT_EQ(one.toMap()["state"].toInt(), ManyModel::Sent);
  many.send();
  answered();
  const auto messages = *m_clinic.desk().messages(m_person.id(), false);
  ASSERT_EQ(messages.size(), 2U) << "sent once, whatever is pressed";
  EXPECT_EQ(messages.back().photo().words(), "The door of the clinic");
  // On the one phone there is, the photo comes after the words; the other has none.
  for (int i = 0; i < 20 && !m_phone->hasMedia(messages.back().photo()); ++i)
    ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(m_phone->hasMedia(messages.back().photo()));
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus()) << "its receipts";
  many.look();
  answered();
  EXPECT_EQ(many.people().first().toMap()["state"].toInt(), ManyModel::Sent)
      << "who needs something comes first";
  EXPECT_EQ(many.people().last().toMap()["state"].toInt(), ManyModel::Arrived);
  ASSERT_EQ(m_phone->markSeen(v1::RECEIPT_OF_MESSAGE, messages.back().id(), 0), absl::OkStatus());
  ASSERT_EQ(m_phone->syncOnce(), absl::OkStatus());
  many.look();
  answered();
  EXPECT_EQ(many.people().last().toMap()["state"].toInt(), ManyModel::Seen);
  check(DeskModel::ManyPage, "-seen");
  EXPECT_EQ(m_desk->backWords(), said("newel::desk::DeskModel", "Caseload"));
  m_desk->back();
  EXPECT_FALSE(list.choosing()) << "the next choice begins anew";
  openAda();
  check(DeskModel::PersonPage, "-photo-sent");
}

TEST_P(OutwardPages, aHoldGoesToManyAndWhatFailedIsSentAgainOnce) {
  signIn(test::kUser);
  m_desk->caseload()->chooseShown();
  m_desk->openMany(true);
  ManyModel& many = *m_desk->many();
  many.setText(QStringLiteral("A batch of liners is called back. Stop until we have called you."));
  many.review();
  check(DeskModel::ManyPage, "-hold");
  const int port = m_clinic.address().empty()
                       ? 0
                       : std::stoi(m_clinic.address().substr(m_clinic.address().rfind(':') + 1));
  m_clinic.stopServer();
  many.send();
  for (int i = 0; i < 1500 && many.sending(); ++i) settle(20);
  EXPECT_EQ(many.failures(), 2) << "the first has failed, and nobody else's would go out";
  check(DeskModel::ManyPage, "-hold-failed");
  m_clinic.stopHub();
  m_clinic.startHub(port);
  for (int i = 0; i < 40 && many.failures() > 0; ++i) {
    many.send();
    for (int k = 0; k < 500 && many.sending(); ++k) settle(20);
  }
  EXPECT_EQ(many.failures(), 0) << many.progress().toStdString();
  for (const QVariant& one : many.people()) EXPECT_NE(one.toMap()["state"].toInt(), ManyModel::Failed);
  EXPECT_EQ(m_clinic.hub().prescriptions().holds(m_person.id())->orders_size(), 1) << "one each";
}

// With the keyboard alone: down into the list, space on each, and on to the form.
TEST_P(OutwardPages, severalAreChosenByKeyboard) {
  signIn(test::kUser);
  parts::Driver driver(m_window, [] { return QJsonObject(); });
  const auto key = [&](const char* name) {
    driver.run(QStringLiteral("key %1").arg(QLatin1String(name)));
    answered();
  };
  key("Down");
  key("Space");
  EXPECT_EQ(m_desk->caseload()->chosenCount(), 1);
  key("Down");
  key("Space");
  EXPECT_EQ(m_desk->caseload()->chosenCount(), 2);
  key("Space");
  EXPECT_EQ(m_desk->caseload()->chosenCount(), 1);
  key("Escape");
  EXPECT_FALSE(m_desk->caseload()->choosing());
}

TEST_P(OutwardPages, theClinicsPageSaysWhenItWasLastCopied) {
  signIn("l.lead");
  m_desk->openClinicSettings();
  answered();
  EXPECT_TRUE(m_desk->clinicSettings()->backupOld()) << "never";
  check(DeskModel::ClinicSettingsPage, "-never");
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    noteBackup(transaction, m_clinic.clock().wall() - absl::Hours(30));
    return absl::OkStatus();
  }),
            absl::OkStatus());
  m_desk->openClinicSettings();
  answered();
  EXPECT_FALSE(m_desk->clinicSettings()->backupOld()) << m_desk->clinicSettings()->backup().toStdString();
  check(DeskModel::ClinicSettingsPage, "-copied");
  m_clinic.clock().advance(absl::Hours(24 * 8));
  EXPECT_TRUE(m_desk->clinicSettings()->backupOld());
}

INSTANTIATE_TEST_SUITE_P(Looks, OutwardPages, testing::ValuesIn(kLooks), nameOfLook);

}  // namespace
}  // namespace newel::tests
