#include "tests/qml/print/sheets.h"

#include <QtCore/QProcess>
#include <QtCore/QRegularExpression>

#include "tests/core/people/sample_people.h"

namespace newel::print {
namespace {

v1::Programme programmeOf(const v1::Person& person) {
  auto programme = test::programmeOf(
      person,
      {test::entryOf("sit-to-stand", person, 100), test::entryOf("weight-shift-side", person, 101),
       test::entryOf("face-down-lying", person, 102), test::entryOf("stairs-one-at-a-time", person, 103)});
  programme.mutable_entries(0)->set_note("Use the kitchen chair.");
  programme.mutable_entries(1)->mutable_schedule()->set_times_per_week(4);
  programme.set_end_day("2026-11-29");
  programme.set_advice("Wear firm shoes.");
  return programme;
}

}  // namespace

QString textOf(const QString& pdf) {
  QProcess process;
  process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
  EXPECT_TRUE(process.waitForFinished(20000));
  EXPECT_EQ(process.exitCode(), 0);
  return QString::fromUtf8(process.readAllStandardOutput())
      .normalized(QString::NormalizationForm_KC)
      .replace(QRegularExpression(QStringLiteral("\\s+")), QStringLiteral(" "));
}

QString wordsOfPage(const QString& pdf, int page) {
  QProcess process;
  process.start(QStringLiteral("pdftotext"),
                {QStringLiteral("-layout"), QStringLiteral("-f"), QString::number(page), QStringLiteral("-l"),
                 QString::number(page), pdf, QStringLiteral("-")});
  EXPECT_TRUE(process.waitForFinished(20000));
  return QString::fromUtf8(process.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
}

int pagesOf(const QString& pdf) {
  QProcess process;
  process.start(QStringLiteral("pdfinfo"), {pdf});
  EXPECT_TRUE(process.waitForFinished(20000));
  const QString info = QString::fromUtf8(process.readAllStandardOutput());
  return QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(info).captured(1).toInt();
}

QImage pageOf(const QString& pdf, int page, int dots_per_inch) {
  QTemporaryDir folder;
  const QString name = folder.filePath(QStringLiteral("page"));
  const QString number = QString::number(page);
  QProcess::execute(
      QStringLiteral("pdftoppm"),
      {QStringLiteral("-png"), QStringLiteral("-r"), QString::number(dots_per_inch), QStringLiteral("-f"),
       number, QStringLiteral("-l"), number, QStringLiteral("-singlefile"), pdf, name});
  return QImage(name + QStringLiteral(".png"));
}

v1::ClinicCard clinic() {
  v1::ClinicCard card;
  card.set_clinic_id(test::idOf(2000));
  card.set_name("Limb clinic at Harbour Street");
  card.set_phone("555 0100");
  card.set_hours("weekdays 8 to 17");
  card.set_emergency_number("112");
  return card;
}

HandoutInput handoutFor(const v1::Person& person) {
  return {programmeOf(person), person, QStringLiteral("Lena Fisk"), clinic()};
}

HandoutInput eightExercises() {
  const v1::Person person = test::transtibialRight();
  HandoutInput input = handoutFor(person);
  input.programme.clear_entries();
  std::uint64_t number = 300;
  for (const char* id : {"sit-to-stand", "weight-shift-side", "quad-set", "face-down-lying",
                         "stairs-one-at-a-time", "tandem-stance", "side-stepping", "walking-programme"})
    *input.programme.add_entries() = test::entryOf(id, person, ++number);
  return input;
}

}  // namespace newel::print
