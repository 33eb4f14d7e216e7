#include "qml/home/take_along_model.h"

#include <QtCore/QDir>
#include <QtCore/QFileInfo>
#include <QtCore/QSaveFile>
#include <QtCore/QThread>
#include <memory>
#include <utility>

#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/own_record.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

constexpr QFile::Permissions kOwnerOnly = QFile::ReadOwner | QFile::WriteOwner;

absl::Status writeWhole(const QString& file, const std::string& bytes) {
  QSaveFile target(file);
  const bool good =
      target.open(QIODevice::WriteOnly) && target.setPermissions(kOwnerOnly) &&
      target.write(bytes.data(), static_cast<qint64>(bytes.size())) == static_cast<qint64>(bytes.size()) &&
      target.commit();
  return good ? absl::OkStatus() : absl::UnavailableError(target.errorString().toStdString());
}

}  // namespace

TakeAlongModel::TakeAlongModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts) {
  connect(&bridge, &EngineBridge::news, this, &TakeAlongModel::changed);
}

TakeAlongModel::~TakeAlongModel() {
  if (m_thread == nullptr) return;
  m_thread->wait();
  delete m_thread;
}

void TakeAlongModel::begin() {
  m_file.clear();
  m_error.clear();
  emit changed();
}

int TakeAlongModel::waiting() const {
  const HomeState state = m_parts.engine->state();
  return static_cast<int>(state.queued + state.set_aside);
}

QString TakeAlongModel::waitingWords() const {
  return tr("%n record(s) have not reached the clinic and would be lost.", nullptr, waiting());
}

QString TakeAlongModel::savedAs() const {
  if (m_file.isEmpty()) return QString();
  const QFileInfo file(m_file);
  // Names run their own way, whichever way the sentence does.
  const auto apart = [](const QString& name) { return QChar(0x2068) + name + QChar(0x2069); };
  return tr("The file %1 is in the folder %2.")
      .arg(apart(file.fileName()), apart(QDir::toNativeSeparators(file.absolutePath())));
}

QString TakeAlongModel::place(const QString& ending) {
  begin();
  const QString folder = m_parts.documents ? text(m_parts.documents()) : QString();
  if (folder.isEmpty() || !QDir().mkpath(folder)) {
    m_error =
        tr("This phone has no folder for documents, or nothing can be written there. Nothing was saved.");
    emit changed();
    return QString();
  }
  const QString name = tr("Newel, about me, %1").arg(text(formatLocalDay(todayOf(m_parts))));
  QString file = QDir(folder).filePath(name + ending);
  for (int number = 2; QFileInfo::exists(file); ++number) {
    file = QDir(folder).filePath(QStringLiteral("%1 (%2)%3").arg(name).arg(number).arg(ending));
  }
  return file;
}

void TakeAlongModel::finish(const QString& file, const absl::Status& written) {
  if (written.ok()) {
    m_file = file;
  } else {
    m_error = tr("The file could not be written, so nothing was saved. Is there room on this phone? (%1)")
                  .arg(text(std::string(written.message())));
  }
  emit changed();
}

void TakeAlongModel::write(const QString& file, std::function<absl::Status()> body) {
  auto result = std::make_shared<absl::Status>();
  m_thread = QThread::create([body = std::move(body), result] { *result = body(); });
  connect(m_thread, &QThread::finished, this, [this, file, result] {
    m_thread->deleteLater();
    m_thread = nullptr;
    finish(file, *result);
  });
  m_thread->start();
  emit changed();
}

void TakeAlongModel::savePdf() {
  if (busy()) return;
  const QString file = place(QStringLiteral(".pdf"));
  if (file.isEmpty()) return;
  write(file, [record = ownRecord(m_parts), file]() -> absl::Status {
    absl::Status written = writeOwnRecord(record, file);
    if (!written.ok() || QFile::setPermissions(file, kOwnerOnly)) return written;
    QFile::remove(file);
    return absl::UnavailableError("its permissions could not be set");
  });
}

void TakeAlongModel::saveJson() {
  if (busy()) return;
  const QString file = place(QStringLiteral(".json"));
  if (file.isEmpty()) return;
  write(file, [bytes = m_parts.engine->exportAll(), file] { return writeWhole(file, bytes); });
}

}  // namespace newel::home
