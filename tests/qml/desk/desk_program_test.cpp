// The real desk as its own process, driven through its window letter by letter, against a real hub over TLS:
// a lead sets a limit of the clinic, writes an exercise, and signs a programme with it and with a card of
// advice; then the exercise is revised, and what was signed stays as it was. Everybody here is invented.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QProcess>
#include <algorithm>

#include "sync/common/media_clean.h"
#include "sync/common/text_codes.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/desk/driven_desk.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::test {
namespace {

const std::vector<std::string> kWriteExercise = {
    "click \"Exercises that this clinic wrote\"",
    "click \"Both sides at once: move, hold, back\"",
    "type Title \"Reach to the shelf\"",
    "type Why \"You learn to reach with ease.\"",
    "click \"Group: balance\"",
    "click \"Position: standing\"",
    "type \"How to take up the position\" \"Stand at the worktop.\"",
    "type \"What the body does\" \"Reach to the shelf.\"",
    "type \"What to keep while holding\" \"Hold. Stand tall.\"",
    "type \"How it comes back\" \"Come back down.\"",
    "click \"Support it may be done with: both hands hold on\"",
    "click \"Prosthesis: on\"",
    "click \"Least mobility level: K2\"",
    "click \"Both limbs lost: the same words fit\"",
    "click \"Muscles: trunk\"",
    "type \"Done well\" \"You stand tall.\\nYour feet stay flat.\"",
    "type \"A common fault\" \"You lean far over.\"",
    "type \"Its correction\" \"Reach less far.\"",
    "wait \"Before it can be saved: Take care: is still missing.\"",
    "type \"Take care\" \"Keep the floor clear.\"",
    "click \"Save for the clinic\"",
    "wait \"Kept: Reach to the shelf. It is in the catalogue now.\" 10000",
};

const std::vector<std::string> kSignWithIt = {
    "click \"Back to Caseload\"",
    "wait \"Open Sample*\" 10000",
    "click \"Open Sample*\"",
    "until page PersonPage",
    "wait \"Write the first programme\" 10000",
    "click \"Write the first programme\"",
    "until page ProgrammePage",
    "click \"Add exercise\"",
    "type \"Find an exercise\" \"reach to the shelf\"",
    "click \"Add Reach to the shelf\"",
    "until entries 1",
    "click \"Dates, advice, limits\"",
    "click \"Card of advice: Look at your skin\"",
    "type \"Your note on the card Look at your skin\" \"Mind the heel, please.\"",
    "click \"Day, Look at your skin: Mon\"",
    "click \"Review and sign\"",
    "until page SignPage",
};

TEST(DeskProgram, anOwnExerciseAndACardGoFromTheFormIntoASignedProgramme) {
  TestClinic clinic;
  const v1::Person person = transtibialRight();
  const std::string id = clinic.addPerson(person);
  ASSERT_TRUE(clinic.hub().accounts().add("l.lead", "Lee Lead (invented)", v1::ROLE_LEAD, kPassword).ok());
  DrivenDesk desk(clinic, clinic.folder().path());
  desk.signIn("l.lead", kPassword);
  desk.mustRun({"click \"Clinic settings\"", "click \"Less: Pain that stops an exercise\"",
                "click \"Save for the clinic\"", "wait \"Settings saved.*\" 10000",
                "click \"Back to Caseload\""});
  desk.mustRun(kWriteExercise);
  desk.mustRun(kSignWithIt);
  desk.mustRun({"click \"Sign for *\"", "until page PersonPage 10000"});

  const auto programmes = clinic.desk().programmes(id);
  ASSERT_TRUE(programmes.ok()) << programmes.status();
  ASSERT_EQ(programmes->size(), 1U);
  const v1::Programme& programme = programmes->front();
  EXPECT_EQ(programme.thresholds().pain_stop_0_10(), 4U) << "the clinic's setting";
  ASSERT_EQ(programme.own_exercises_size(), 1);
  const v1::ExerciseWords& words = programme.own_exercises(0).words(0);
  EXPECT_EQ(words.title(), "Reach to the shelf");
  EXPECT_EQ(words.cues().at("stay").spoken(), "Hold. Stand tall.");
  EXPECT_EQ(words.faults(0).mend(), "Reach less far.");
  ASSERT_EQ(programme.cards_size(), 1);
  EXPECT_EQ(programme.cards(0).note(), "Mind the heel, please.");
  EXPECT_EQ(programme.cards(0).days().days_size(), 6);

  desk.mustRun({"click \"Back to Caseload\"", "click \"Exercises that this clinic wrote\"",
                "click \"Revise Reach to the shelf\"", "type Title \"Reach to the high shelf\"",
                "click \"Save for the clinic\"",
                "wait \"Kept: Reach to the high shelf. It is in the catalogue now.\" 10000"});
  EXPECT_EQ(clinic.desk().ownExercises()->size(), 2U);
  EXPECT_EQ(clinic.desk().programmes(id)->front().own_exercises(0).words(0).title(), "Reach to the shelf");
}

// Runs the program for one sheet, with no screen named; its exit code and what it said.
std::pair<int, QString> printed(TestClinic& clinic, const QStringList& options) {
  QProcess process;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.remove("QT_QPA_PLATFORM");
  environment.remove("DISPLAY");
  environment.insert("NEWEL_PASSWORD", kPassword);
  process.setProcessEnvironment(environment);
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(
      QStringLiteral(NEWEL_BINARY_DIR "/bin/newel-desk"),
      QStringList{"--hub", QString::fromStdString(clinic.address()), "--fingerprint",
                  QString::fromStdString(toHex(clinic.hub().clinic().certificate_sha256)), "--user", kUser} +
          options);
  EXPECT_TRUE(process.waitForFinished(60000));
  return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

QString textOfPdf(const QString& file) {
  QProcess process;
  process.start("pdftotext", {"-layout", file, "-"});
  EXPECT_TRUE(process.waitForFinished(20000));
  return QString::fromUtf8(process.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
}

// Dark dots of the first page as another program draws it, in grey as a grey printer would.
int inkOfFirstPage(const QString& file) {
  QProcess process;
  process.start("pdftoppm", {"-r", "40", "-gray", "-f", "1", "-l", "1", "-singlefile", file});
  EXPECT_TRUE(process.waitForFinished(20000));
  const QByteArray picture = process.readAllStandardOutput();
  EXPECT_TRUE(picture.startsWith("P5"));
  return static_cast<int>(std::count_if(picture.begin(), picture.end(),
                                        [](char c) { return static_cast<unsigned char>(c) < 100; }));
}

TEST(DeskProgram, printsEverySheetInEveryLanguageWithoutAScreen) {
  TestClinic clinic;
  const v1::Person person = transtibialRight();
  const std::string id = clinic.addPerson(person);
  clinic.sign(person);
  const auto file = [&clinic](const QString& name) {
    return QString::fromStdString(clinic.folder().path()) + "/" + name;
  };
  const struct {
    const char* kind;
    const char* language;
    const char* said;
  } kSheets[] = {{"handout", "en", "Whom to call"},         {"handout", "es", "A quién llamar"},
                 {"handout", "ar", "برنامج المنزل"},        {"report", "en", "Progress report"},
                 {"report", "es", "Informe de progreso"},   {"card", "en", "Card for the wallet"},
                 {"card", "es", "Tarjeta para la cartera"}, {"card", "ar", "بطاقة للمحفظة"}};
  for (const auto& sheet : kSheets) {
    const QString out = file(QStringLiteral("%1-%2.pdf").arg(sheet.kind, sheet.language));
    const auto [code, words] = printed(clinic, {"--print", sheet.kind, "--person", QString::fromStdString(id),
                                                "--out", out, "--language", sheet.language});
    ASSERT_EQ(code, 0) << sheet.kind << words.toStdString();
    EXPECT_TRUE(words.contains(" page")) << words.toStdString();
    EXPECT_TRUE(textOfPdf(out).contains(QString::fromUtf8(sheet.said)))
        << sheet.kind << " " << sheet.language;
    EXPECT_GT(inkOfFirstPage(out), 500) << sheet.kind;
  }
  const QStringList whose = {"--person", QString::fromStdString(id), "--out", file("more.pdf")};
  EXPECT_EQ(printed(clinic, whose + QStringList{"--print", "handout", "--compact", "--large-print", "--size",
                                                "letter"})
                .first,
            0);
  EXPECT_EQ(printed(clinic, whose + QStringList{"--print", "card", "--no-name"}).first, 0);
  EXPECT_FALSE(textOfPdf(file("more.pdf")).contains("Invented"));
  const auto [kind_code, kind_words] = printed(clinic, whose + QStringList{"--print", "poster"});
  EXPECT_EQ(kind_code, 2);
  EXPECT_TRUE(kind_words.contains("handout, report or card"));
  const auto [language_code, language_words] =
      printed(clinic, whose + QStringList{"--print", "card", "--language", "xx"});
  EXPECT_EQ(language_code, 2);
  EXPECT_TRUE(language_words.contains("--language: ar, en, es")) << language_words.toStdString();
}

// The other language is one press away before signing in, counts at once and is remembered.
TEST(DeskProgram, speaksSpanishOnceItIsChosen) {
  TestClinic clinic;
  clinic.addPerson(transtibialRight());
  {
    DrivenDesk desk(clinic, clinic.folder().path());
    desk.mustRun({"wait \"Sign in\"", "click \"Español\"", "wait \"Entrar\"", "wait \"Nombre de usuario\"",
                  "wait \"English\""});
  }
  DrivenDesk desk(clinic, clinic.folder().path());
  desk.mustRun({"wait \"Entrar\"", std::string("type \"Nombre de usuario\" ") + kUser,
                std::string("type \"Contraseña\" \"") + kPassword + "\"", "click \"Entrar\"",
                "until page CaseloadPage 15000", "wait \"Abrir Sample*\" 10000", "click \"Abrir Sample*\"",
                "wait \"Escribir el primer programa\" 10000", "click \"Escribir el primer programa\"",
                "wait \"Empezar desde Andar por casa, por debajo de la rodilla\" 10000"});
  desk.shot("desk-spanish");
}

// A programme for a known kind of person: from the caseload to the signature in five acts, four clicks and
// one key, each of them on something that the window shows.
TEST(DeskProgram, aProgrammeFromATemplateTakesFiveActs) {
  TestClinic clinic;
  const std::string id = clinic.addPerson(transtibialRight());
  DrivenDesk desk(clinic, clinic.folder().path());
  desk.signIn(kUser, kPassword);
  desk.mustRun({"wait \"Open Sample*\" 10000"});
  const std::vector<std::string> acts = {"click \"Open Sample*\"", "click \"Write the first programme\"",
                                         // The first template that fits has the keyboard.
                                         "key Return", "click \"Review and sign\"", "click \"Sign for *\""};
  const std::vector<std::string> seen = {"wait \"Write the first programme\" 10000",
                                         "wait \"Start from *\" 10000", "until entries 3",
                                         "until page SignPage", "until page PersonPage 10000"};
  for (std::size_t i = 0; i < acts.size(); ++i) desk.mustRun({acts[i], seen[i], "until idle true 10000"});
  const auto programmes = clinic.desk().programmes(id);
  ASSERT_TRUE(programmes.ok()) << programmes.status();
  ASSERT_EQ(programmes->size(), 1U);
  std::vector<std::string> exercises;
  for (const auto& entry : programmes->front().entries()) exercises.push_back(entry.exercise_id());
  EXPECT_THAT(exercises, testing::ElementsAre("sit-to-stand", "side-stepping", "walking-programme"));
  EXPECT_EQ(programmes->front().cards_size(), 1);
}

// From a file on the therapist's computer, place and all, to the person's phone, without it.
TEST(DeskProgram, aPhotoAndAClipGoFromTheirFilesToThePhone) {
  TestClinic clinic;
  const v1::Person person = transtibialRight();
  const std::string id = clinic.addPerson(person);
  DrivenDesk desk(clinic, clinic.folder().path());
  const std::string files = std::string(NEWEL_SOURCE_DIR) + "/tests/data/media/";
  desk.mustRun({"wait \"Sign in\"",
                std::string("type \"User name\" ") + kUser,
                std::string("type Password \"") + kPassword + "\"",
                "click \"Sign in\"",
                "until page CaseloadPage 15000",
                "wait \"Open Sample*\" 10000",
                "click \"Open Sample*\"",
                "until page PersonPage",
                "wait \"Write the first programme\" 10000",
                "click \"Write the first programme\"",
                "until page ProgrammePage",
                "click \"Add exercise\"",
                "type \"Find an exercise\" \"sit to stand\"",
                "click \"Add Sit to stand\"",
                "until entries 1",
                "type \"Photo or clip (may be left out), Sit to stand\" \"" + files + "README.txt\"",
                "click \"Take this file, Sit to stand\"",
                "wait \"This file is no picture that can be read.\"",
                "type \"Photo or clip (may be left out), Sit to stand\" \"" + files + "tagged.jpg\"",
                "click \"Take this file, Sit to stand\"",
                "wait \"Take the photo out, Sit to stand\" 10000"});
  desk.shot("desk-photo");
  // Not to be signed before it is said in words.
  desk.mustRun({"wait \"say in words what the photo shows*\"",
                "type \"What the photo shows, Sit to stand\" \"Both feet flat, hands on the seat.\"",
                "type \"Photo or clip (may be left out), Sit to stand\" \"" + files + "tagged.webm\"",
                "click \"Take this file, Sit to stand\"", "wait \"Take the clip out, Sit to stand\" 10000",
                "type \"What the clip shows, Sit to stand\" \"Standing up slowly.\"",
                "type \"What is said in the clip, Sit to stand\" \"Nose over toes.\""});
  desk.shot("desk-clip");
  desk.mustRun({"click \"Review and sign\"", "until page SignPage", "click \"Sign for *\"",
                "until page PersonPage 10000"});

  auto phone = clinic.pairedPhone("phone", id);
  for (int i = 0; i < 20; ++i) ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  const auto programme = phone->programme();
  ASSERT_TRUE(programme.has_value());
  const v1::Entry& entry = programme->entries(0);
  EXPECT_EQ(entry.photo().words(), "Both feet flat, hands on the seat.");
  EXPECT_EQ(entry.clip().captions(), "Nose over toes.");
  for (const v1::MediaRef* ref : {&entry.photo(), &entry.clip()}) {
    const auto content = phone->media(*ref);
    ASSERT_TRUE(content.has_value());
    EXPECT_EQ(checkCleanMedia(*content, ref->type()), absl::OkStatus());
    EXPECT_EQ(content->find("Canary"), std::string::npos);
  }
}

}  // namespace
}  // namespace newel::test
