#include "qml/desk/programme_draft.h"

#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QSaveFile>

#include "core/time/local_day.h"

namespace newel::desk {
namespace {

constexpr std::size_t kMostUndo = 200;

QString fileOf(const QString& folder, const std::string& person_id) {
  return QDir(folder).filePath(QString::fromStdString(person_id) + QStringLiteral(".draft"));
}

}  // namespace

void ProgrammeDraft::begin(v1::Programme value, std::uint32_t base_number) {
  m_value = std::move(value);
  m_base_number = base_number;
  m_past.clear();
  m_future.clear();
  m_last_key.clear();
}

void ProgrammeDraft::change(const std::string& key, const std::function<void(v1::Programme&)>& edit) {
  const bool joined = !key.empty() && key == m_last_key && !m_past.empty();
  if (!joined) m_past.push_back(m_value);
  if (m_past.size() > kMostUndo) m_past.erase(m_past.begin());
  m_future.clear();
  m_last_key = key;
  edit(m_value);
}

void ProgrammeDraft::undo() {
  if (m_past.empty()) return;
  m_future.push_back(std::move(m_value));
  m_value = std::move(m_past.back());
  m_past.pop_back();
  m_last_key.clear();
}

void ProgrammeDraft::redo() {
  if (m_future.empty()) return;
  m_past.push_back(std::move(m_value));
  m_value = std::move(m_future.back());
  m_future.pop_back();
  m_last_key.clear();
}

// 1 a new file beside the old one: a crash leaves the old one. 2 flushed. 3 renamed over it: a crash leaves
// one or the other, whole.
absl::Status ProgrammeDraft::save(const QString& folder) const {
  if (!QDir().mkpath(folder)) return absl::UnavailableError("cannot make " + folder.toStdString());
  QFile::setPermissions(folder, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
  v1::Programme kept = m_value;
  kept.set_number(m_base_number + 1);
  std::string content;
  if (!kept.SerializeToString(&content)) return absl::InternalError("the draft cannot be serialised");
  QSaveFile file(fileOf(folder, m_value.person_id()));
  if (!file.open(QIODevice::WriteOnly)) return absl::UnavailableError(file.errorString().toStdString());
  file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
  file.write(content.data(), static_cast<qint64>(content.size()));
  if (!file.commit()) return absl::UnavailableError(file.errorString().toStdString());
  return absl::OkStatus();
}

absl::Status ProgrammeDraft::load(const QString& folder, const std::string& person_id) {
  const QString name = fileOf(folder, person_id);
  QFile file(name);
  if (!file.open(QIODevice::ReadOnly)) return absl::NotFoundError("no draft");
  const std::string content = file.readAll().toStdString();
  v1::Programme kept;
  if (!kept.ParseFromString(content) || kept.person_id() != person_id || kept.number() == 0) {
    file.rename(name + QStringLiteral(".unreadable"));
    return absl::DataLossError("the draft cannot be read");
  }
  const std::uint32_t base = kept.number() - 1;
  kept.clear_number();
  begin(std::move(kept), base);
  return absl::OkStatus();
}

void ProgrammeDraft::discard(const QString& folder, const std::string& person_id) {
  QFile::remove(fileOf(folder, person_id));
}

v1::Programme startingDraft(const v1::Programme* last, const SettingValues& settings,
                            const std::string& person_id, const std::string& zone, absl::CivilDay today) {
  v1::Programme draft;
  if (last != nullptr) {
    *draft.mutable_entries() = last->entries();
    draft.set_advice(last->advice());
    *draft.mutable_cards() = last->cards();
    if (last->has_wear_plan()) *draft.mutable_wear_plan() = last->wear_plan();
    *draft.mutable_thresholds() = last->thresholds();
  } else {
    draft.mutable_thresholds()->set_pain_stop_0_10(settings.at("pain-stop"));
    draft.mutable_thresholds()->set_pain_rise_0_10(settings.at("pain-rise"));
  }
  draft.set_person_id(person_id);
  draft.set_zone(zone);
  draft.set_effective_day(formatLocalDay(today));
  draft.set_end_day(formatLocalDay(today + kFirstDays - 1));
  return draft;
}

}  // namespace newel::desk
