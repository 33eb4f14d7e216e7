#include "qml/desk/documents_model.h"

#include <QtCore/QDir>
#include <QtCore/QFileInfo>
#include <QtCore/QLocale>
#include <QtCore/QUrl>
#include <algorithm>
#include <utility>

#include "core/time/local_day.h"
#include "qml/desk/problem_words.h"
#include "qml/print/handout.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_language.h"

namespace newel::desk {
namespace {

constexpr int kReportDays = 28;
enum Layout { Roomy, LargePrint, Short };

QVariantMap option(const QVariant& value, const QString& text) {
  return {{QStringLiteral("value"), value}, {QStringLiteral("text"), text}};
}

QVariantMap option(DocumentKind kind, const QString& text) { return option(static_cast<int>(kind), text); }

QString languageName(const QString& language) {
  QString name = QLocale(language).nativeLanguageName();
  return name.isEmpty() ? language : name.replace(0, 1, name.at(0).toUpper());
}

}  // namespace

DocumentsModel::DocumentsModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

DocumentsModel::~DocumentsModel() {
  if (m_stop != nullptr) m_stop->store(true);
  if (m_thread.joinable()) m_thread.join();
}

void DocumentsModel::begin(std::shared_ptr<const PersonFile> file) {
  const bool other = m_file == nullptr || m_file->person.id() != file->person.id();
  m_file = std::move(file);
  m_problem.clear();
  if (other) {
    m_made.clear();
    m_language.clear();
    m_first.clear();
    m_last.clear();
    m_extras.clear();
    m_kind = lastProgramme(*m_file) == nullptr ? DocumentKind::Card : DocumentKind::Handout;
  }
  emit changed();
  emit workChanged();
}

void DocumentsModel::beginReport(std::shared_ptr<const PersonFile> file, absl::CivilDay first,
                                 absl::CivilDay last) {
  begin(std::move(file));
  m_kind = DocumentKind::Report;
  m_first = print::text(formatLocalDay(first));
  m_last = print::text(formatLocalDay(last));
  emit changed();
}

void DocumentsModel::follow(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  emit changed();
}

void DocumentsModel::forget() {
  cancel();
  m_file.reset();
  m_made.clear();
  m_problem.clear();
  emit changed();
  emit workChanged();
}

QString DocumentsModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }

QVariantList DocumentsModel::kinds() {
  return {option(DocumentKind::Handout, tr("Handout to take home")),
          option(DocumentKind::Report, tr("Progress report")),
          option(DocumentKind::Card, tr("Wallet card")),
          option(DocumentKind::Calendar, tr("Practice times for a calendar")),
          option(DocumentKind::Fhir, tr("Record for another system (FHIR)")),
          option(DocumentKind::Csv, tr("Tables (CSV)"))};
}

QString DocumentsModel::about() const {
  const QString pseudonymous =
      has(Words) ? tr("Names may stand in what people wrote: keep it as you would the record.")
                 : tr("It holds no name, and still it is about somebody: keep it as you would the record.");
  switch (m_kind) {
    case DocumentKind::Handout:
      return tr("PDF. Each exercise in three pictures, how much, when to stop, whom to call, boxes to tick.");
    case DocumentKind::Report:
      return tr(
          "PDF for the record: what was asked and done, dose, pain, measures with their error, what "
          "changed.");
    case DocumentKind::Card:
      return tr("PDF to cut out: whose limb, what is worn, whom to call, when to stop.");
    case DocumentKind::Calendar:
      return has(Exercises)
                 ? tr("iCalendar file for the person's own calendar. Whoever sees the calendar reads the "
                      "exercises.")
                 : tr("iCalendar file for the person's own calendar. It says \"Practice\" and nothing else.");
    case DocumentKind::Fhir:
      return tr("One file, HL7 FHIR R4, with the record's own id.") + QLatin1Char(' ') + pseudonymous;
    case DocumentKind::Csv:
      return tr("A folder of tables for a spreadsheet or statistics.") + QLatin1Char(' ') + pseudonymous;
  }
  return {};
}

QVariantList DocumentsModel::layouts() {
  return {option(Roomy, tr("One or two exercises a page")), option(LargePrint, tr("The same in large print")),
          option(Short, tr("Short, several a page"))};
}

QVariantList DocumentsModel::languages() const {
  QVariantList list;
  if (!m_file) return list;
  const QString own = print::text(m_file->person.language());
  list << option(QString(), tr("As the person reads (%1)").arg(languageName(own)));
  for (const QString& language : print::SheetLanguage::languages())
    if (language != own) list << option(language, languageName(language));
  return list;
}

QVariantList DocumentsModel::papers() { return {option(0, tr("A4")), option(1, tr("US Letter"))}; }

bool DocumentsModel::hasDays() const {
  return m_kind == DocumentKind::Report || m_kind == DocumentKind::Fhir || m_kind == DocumentKind::Csv;
}

QVariantList DocumentsModel::extras() const {
  QVariantList list;
  if (m_kind == DocumentKind::Fhir || m_kind == DocumentKind::Csv)
    list << option(Words, tr("With what people wrote, and therapists' names"));
  if (m_kind == DocumentKind::Calendar) list << option(Exercises, tr("Say which exercises"));
  if (m_kind == DocumentKind::Fhir) list << option(UsProfiles, tr("Claim the US physical activity profiles"));
  return list;
}

void DocumentsModel::setKind(int kind) {
  m_kind = static_cast<DocumentKind>(std::clamp(kind, 0, static_cast<int>(DocumentKind::Csv)));
  m_problem.clear();
  if (daysNeeded() && m_file && m_first.isEmpty() && m_last.isEmpty()) {
    const absl::CivilDay today = todayOf(*m_file, m_context.now());
    m_first = print::text(formatLocalDay(today - (kReportDays - 1)));
    m_last = print::text(formatLocalDay(today));
  }
  emit changed();
  emit workChanged();
}

void DocumentsModel::setLayout(int layout) {
  m_layout = layout;
  emit changed();
}

void DocumentsModel::setLanguage(const QString& language) {
  m_language = language;
  emit changed();
}

void DocumentsModel::setPaper(int paper) {
  m_letter = paper == 1;
  emit changed();
}

void DocumentsModel::setFirstDay(const QString& day) {
  m_first = day;
  emit changed();
}

void DocumentsModel::setLastDay(const QString& day) {
  m_last = day;
  emit changed();
}

void DocumentsModel::setFolder(const QString& folder) {
  const QUrl address(folder);
  m_folder = address.isLocalFile() ? address.toLocalFile() : folder;
  emit changed();
}

void DocumentsModel::toggleExtra(int extra) {
  if (!m_extras.removeOne(extra)) m_extras << extra;
  emit changed();
}

QString DocumentsModel::dayProblem(const QString& day) const {
  if (!hasDays()) return {};
  if (day.trimmed().isEmpty()) return daysNeeded() ? tr("A day is needed, like 2026-11-25.") : QString();
  return parseLocalDay(day.trimmed().toStdString()).ok() ? QString()
                                                         : tr("A day is written like 2026-11-25.");
}

QString DocumentsModel::lastDayProblem() const {
  QString problem = dayProblem(m_last);
  const bool both = !m_first.trimmed().isEmpty() && !m_last.trimmed().isEmpty();
  if (problem.isEmpty() && hasDays() && both && firstDayProblem().isEmpty() &&
      m_last.trimmed() < m_first.trimmed())
    problem = tr("This is before the first day.");
  return problem;
}

QString DocumentsModel::whyNot() const {
  if (!m_file) return tr("No record is open.");
  const bool of_programme = m_kind == DocumentKind::Handout || m_kind == DocumentKind::Calendar;
  if (of_programme && lastProgramme(*m_file) == nullptr) return tr("There is no programme yet.");
  for (const QString& problem : {firstDayProblem(), lastDayProblem()})
    if (!problem.isEmpty()) return problem;
  return QDir::isAbsolutePath(m_folder) ? QString() : tr("Choose a folder on this computer first.");
}

QString DocumentsModel::makingWords() const {
  return making() ? tr("Making: %1, %2 %").arg(m_title).arg(m_percent) : QString();
}

DocumentWish DocumentsModel::wish() const {
  DocumentWish wish;
  wish.kind = m_kind;
  if (m_letter) wish.sheet.size = QPageSize::Letter;
  if (m_kind == DocumentKind::Handout) {
    wish.sheet.body_pt = m_layout == LargePrint ? print::kLargePrintPt : print::kBodyPt;
    wish.sheet.compact = m_layout == Short;
  }
  if (hasLanguage()) wish.sheet.language = m_language.toStdString();
  if (hasDays()) {
    wish.from = m_first.trimmed().toStdString();
    wish.to = m_last.trimmed().toStdString();
  }
  if (daysNeeded()) {
    const absl::CivilDay today = todayOf(*m_file, m_context.now());
    wish.first = parseLocalDay(wish.from).value_or(today);
    // What is to come is not in a report of what was.
    wish.last = std::min(parseLocalDay(wish.to).value_or(today), today);
  }
  wish.options.with_words = has(Words) && m_kind != DocumentKind::Calendar;
  wish.options.with_exercises = has(Exercises) && m_kind == DocumentKind::Calendar;
  wish.options.us_profiles = has(UsProfiles) && m_kind == DocumentKind::Fhir;
  return wish;
}

void DocumentsModel::make() {
  if (making() || !whyNot().isEmpty()) return;
  if (m_thread.joinable()) m_thread.join();  // it has ended: making() says so
  Job job;
  job.wish = wish();
  job.file = m_file;
  job.path = newDocumentPath(m_folder, m_kind, job.wish.sheet, *m_file, todayOf(*m_file, m_context.now()));
  for (const QVariant& kind : kinds()) {
    const QVariantMap map = kind.toMap();
    if (map.value(QStringLiteral("value")).toInt() == static_cast<int>(m_kind))
      job.title = map.value(QStringLiteral("text")).toString();
  }
  job.stop = std::make_shared<std::atomic<bool>>(false);
  begun(job);
  // 1. Made here, on a thread of its own. 2. Back on the UI thread. 3. Written under another name, noted at
  // the hub, then named, on the worker's thread: without the hub's note there is no document.
  m_thread = std::thread([this, job, context = m_context] {
    const ExportProgress progress = [this, &job](int percent) {
      QMetaObject::invokeMethod(
          this, [this, stop = job.stop, percent] { setPercent(stop, percent); }, Qt::QueuedConnection);
      return !job.stop->load();
    };
    auto files = makeDocument(job.wish, *job.file, context, job.path, progress);
    QMetaObject::invokeMethod(
        this,
        [this, job, files = std::move(files)]() mutable {
          if (files.ok()) {
            finish(job, *std::move(files));
          } else {
            ended(job, files.status());
          }
        },
        Qt::QueuedConnection);
  });
}

void DocumentsModel::begun(const Job& job) {
  m_stop = job.stop;
  m_percent = 0;
  m_title = job.title;
  m_problem.clear();
  emit workChanged();
}

void DocumentsModel::setPercent(const Stop& stop, int percent) {
  if (m_stop != stop || m_percent == percent) return;
  m_percent = percent;
  emit workChanged();
}

void DocumentsModel::finish(const Job& job, std::vector<ExportFile> files) {
  m_context.worker->run(
      this, tr("Saving the document"),
      [job, files = std::move(files)](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        QDir().mkpath(QFileInfo(job.path).absolutePath());
        return writeExport(job.path.toStdString(), files, [&]() -> absl::Status {
          if (job.stop->load()) return absl::CancelledError("given up");
          return client->noteExport(job.file->person.id(), formatWord(job.wish.kind));
        });
      },
      [this, job](const absl::Status& status) { ended(job, status); });
}

void DocumentsModel::ended(const Job& job, const absl::Status& status) {
  const bool current = m_stop == job.stop;
  // Given up, and perhaps followed by another; what was given up too late is there, and that is said.
  if (!current && !status.ok()) return;
  if (current) m_stop.reset();
  if (status.ok()) {
    if (m_file && m_file->person.id() == job.file->person.id()) m_made.prepend(job.path);
    emit saved(tr("%1 saved: %2").arg(job.title, job.path));
  } else {
    m_problem = problemWords(status, tr("make this document"));
  }
  emit workChanged();
}

void DocumentsModel::cancel() {
  if (!making()) return;
  m_stop->store(true);
  m_stop.reset();
  emit workChanged();
}

}  // namespace newel::desk
