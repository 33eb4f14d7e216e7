#include "qml/desk/import_model.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QFile>
#include <QtCore/QFileInfo>
#include <QtCore/QUrl>
#include <utility>

#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

absl::StatusOr<FhirImport> importFrom(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return absl::NotFoundError(file.errorString().toStdString());
  // One more than is taken, so that the reader says that it is too much.
  return importFhir(file.read(static_cast<qint64>(kMostImportBytes) + 1).toStdString());
}

QStringList linesOf(const std::vector<std::string>& lines) {
  QStringList list;
  for (const auto& line : lines) list << print::text(line);
  return list;
}

}  // namespace

QVariantMap requestRow(const ImportedRequest& request) {
  const QString asked = QCoreApplication::translate("ImportModel", "Asked for by %1");
  const QString on = QCoreApplication::translate("ImportModel", "on %1");
  const QString because = QCoreApplication::translate("ImportModel", "Reason: %1");
  const QString where = QCoreApplication::translate("ImportModel", "Where: %1");
  QStringList details;
  const auto add = [&details](const QString& words, const std::string& value) {
    if (!value.empty()) details << words.arg(print::text(value));
  };
  add(QStringLiteral("%1"), request.instruction);
  add(because, request.reason);
  add(where, request.body_site);
  for (const auto& note : request.notes) add(QStringLiteral("%1"), note);
  add(asked, request.requester);
  add(on, request.authored_on);
  if (request.entry < 0)
    details << QCoreApplication::translate("ImportModel",
                                           "No exercise of the catalogue is named: yours to choose");
  QString title = print::text(request.title);
  if (title.isEmpty()) title = QCoreApplication::translate("ImportModel", "A request without a title");
  return {{QStringLiteral("title"), title}, {QStringLiteral("details"), details.join(QStringLiteral(" · "))}};
}

ImportModel::ImportModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void ImportModel::forget() {
  ++m_turn;
  m_import.reset();
  m_file_name.clear();
  m_problem.clear();
  m_reading = false;
  emit changed();
}

void ImportModel::readFile(const QString& file) {
  const QUrl address(file);
  const QString path = address.isLocalFile() ? address.toLocalFile() : file.trimmed();
  if (path.isEmpty()) return;
  forget();
  m_reading = true;
  emit changed();
  m_context.worker->run(
      this, tr("Reading the file"), [path](DeskClient*) { return importFrom(path); },
      [this, turn = m_turn, name = QFileInfo(path).fileName()](absl::StatusOr<FhirImport> import) {
        if (turn == m_turn) got(name, std::move(import));
      });
}

void ImportModel::got(const QString& name, absl::StatusOr<FhirImport> import) {
  m_reading = false;
  if (!import.ok()) {
    m_problem =
        tr("Nothing was taken from %1. %2").arg(name, print::text(std::string(import.status().message())));
    emit changed();
    return;
  }
  m_file_name = name;
  m_import = std::make_shared<const FhirImport>(*std::move(import));
  emit changed();
  emit read();
}

QString ImportModel::taken() const {
  if (m_import == nullptr) return {};
  QStringList fields;
  const auto add = [&fields](const std::string& value, const QString& word) {
    if (!value.empty()) fields << word;
  };
  add(m_import->identity.given_name(), tr("given name"));
  add(m_import->identity.family_name(), tr("family name"));
  add(m_import->identity.birth_date(), tr("birth date"));
  add(m_import->identity.phone(), tr("phone number"));
  add(m_import->person.language(), tr("language"));
  return fields.isEmpty() ? tr("From %1 nothing went into the form.").arg(m_file_name)
                          : tr("From %1 into the form: %2. Look at each.")
                                .arg(m_file_name, fields.join(QStringLiteral(", ")));
}

QStringList ImportModel::warnings() const { return m_import ? linesOf(m_import->warnings) : QStringList(); }

QStringList ImportModel::notTaken() const { return m_import ? linesOf(m_import->not_taken) : QStringList(); }

QVariantList ImportModel::requests() const {
  QVariantList rows;
  if (m_import == nullptr) return rows;
  for (const auto& request : m_import->requests) rows << requestRow(request);
  return rows;
}

}  // namespace newel::desk
