#include "qml/desk/document_work.h"

#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QFileInfo>
#include <QtCore/QTemporaryDir>
#include <array>

#include "core/time/local_day.h"
#include "qml/desk/history_of.h"
#include "qml/print/handout.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

struct Naming {
  const char* word;
  const char* ending;  // empty: a folder
};

// By DocumentKind.
constexpr std::array<Naming, 6> kNaming = {{{"handout", ".pdf"},
                                            {"report", ".pdf"},
                                            {"card", ".pdf"},
                                            {"fhir", ".json"},
                                            {"ical", ".ics"},
                                            {"csv", ""}}};

Naming namingOf(DocumentKind kind) { return kNaming[static_cast<std::size_t>(kind)]; }

// Nobody's name, and still found again by who has the record.
QString pseudonym(const PersonFile& file) { return print::text(file.person.id()).right(8); }

QString plainName(const PersonFile& file) {
  QString name = print::fullName(file.identity);
  for (QChar& c : name) c = c.isLetterOrNumber() ? c.toLower() : QLatin1Char('-');
  return name;
}

QString formWord(DocumentKind kind, const SheetChoice& sheet) {
  QString word = QString::fromLatin1(formatWord(kind));
  if (kind != DocumentKind::Handout) return word;
  if (sheet.compact) word += QStringLiteral("-short");
  if (sheet.body_pt >= print::kLargePrintPt) word += QStringLiteral("-large");
  return word;
}

absl::StatusOr<int> draw(const DocumentWish& wish, const PersonFile& file, const DeskContext& context,
                         const QString& name) {
  if (wish.kind == DocumentKind::Handout) return saveHandoutSheet(file, context, wish.sheet, name);
  if (wish.kind == DocumentKind::Card) return saveCardSheet(file, context, wish.sheet, name);
  if (wish.last < wish.first) return absl::InvalidArgumentError("to: is before from");
  return saveReportSheet(file, context, wish.first, wish.last, name, wish.sheet);
}

absl::StatusOr<std::vector<ExportFile>> drawn(const DocumentWish& wish, const PersonFile& file,
                                              const DeskContext& context, const QString& path,
                                              const ExportProgress& progress) {
  QDir().mkpath(QFileInfo(path).absolutePath());
  // Beside where it will be and for nobody else to read; it goes with everything in it.
  const QTemporaryDir folder(path + QStringLiteral(".XXXXXX"));
  if (!folder.isValid()) return absl::PermissionDeniedError("out: " + folder.errorString().toStdString());
  const QString name = folder.filePath(QStringLiteral("sheet.pdf"));
  const auto pages = draw(wish, file, context, name);
  if (!pages.ok()) return pages.status();
  absl::Status going = askProgress(progress, 90);
  if (!going.ok()) return going;
  QFile sheet(name);
  if (!sheet.open(QIODevice::ReadOnly))
    return absl::InternalError("out: " + sheet.errorString().toStdString());
  return std::vector<ExportFile>{{"", sheet.readAll().toStdString()}};
}

}  // namespace

const char* formatWord(DocumentKind kind) { return namingOf(kind).word; }

bool isSheet(DocumentKind kind) {
  return kind == DocumentKind::Handout || kind == DocumentKind::Report || kind == DocumentKind::Card;
}

QString newDocumentPath(const QString& folder, DocumentKind kind, const SheetChoice& sheet,
                        const PersonFile& file, absl::CivilDay today) {
  const QString who = isSheet(kind) ? plainName(file) : pseudonym(file);
  const QString stem =
      QStringLiteral("newel-%1-%2-%3").arg(formWord(kind, sheet), who, print::text(formatLocalDay(today)));
  const QString ending = QString::fromLatin1(namingOf(kind).ending);
  QString path = QDir(folder).filePath(stem + ending);
  for (int i = 2; QFileInfo::exists(path); ++i)
    path = QDir(folder).filePath(QStringLiteral("%1-%2%3").arg(stem).arg(i).arg(ending));
  return path;
}

absl::StatusOr<std::vector<ExportFile>> makeDocument(const DocumentWish& wish, const PersonFile& file,
                                                     const DeskContext& context, const QString& path,
                                                     const ExportProgress& progress) {
  if (isSheet(wish.kind)) return drawn(wish, file, context, path, progress);
  PersonHistory history = historyOf(file, context.now() + context.hub_ahead);
  absl::Status days = setDays(wish.from, wish.to, history);
  if (!days.ok()) return days;
  const auto format = parseExportFormat(formatWord(wish.kind));
  if (!format.ok()) return format.status();
  return makeExport(history, *format, wish.options, progress);
}

}  // namespace newel::desk
