#include "qml/desk/clinic_settings_model.h"

#include <utility>

#include "core/time/local_day.h"
#include "qml/desk/in_language.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

// Ours, common practice, no source: what a week wrote is a lot to write again.
constexpr absl::Duration kBackupOld = absl::Hours(24 * 7);

}  // namespace

ClinicSettingsModel::ClinicSettingsModel(DeskContext& context, DeskContent& content, QObject* parent)
    : QObject(parent), m_context(context), m_content(content), m_values(context.settings) {}

void ClinicSettingsModel::begin() {
  m_values = m_context.settings;
  m_problem.clear();
  m_saving = false;
  emit changed();
}

void ClinicSettingsModel::readBackup() {
  m_backup = absl::UnknownError("not asked yet");
  m_context.worker->run(
      this, tr("Asking for the last backup"),
      [](DeskClient* client) -> absl::StatusOr<v1::BackupState> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        auto state = client->clinicState();
        if (!state.ok()) return state.status();
        return state->backup();
      },
      [this](absl::StatusOr<v1::BackupState> state) {
        m_backup = std::move(state);
        emit changed();
      },
      HubWorker::Turn::Later);
}

QString ClinicSettingsModel::backup() const {
  if (absl::IsUnknown(m_backup.status())) return tr("Asking the hub …");
  if (!m_backup.ok()) return problemWords(m_backup.status(), tr("ask for the last backup"));
  const QString how =
      m_backup->by_database()
          ? tr("The database is copied with its own tools; newel-hub backed-up tells the clinic when.")
          : tr("newel-hub backup makes one while the hub is serving.");
  if (!m_backup->has_last())
    return (m_backup->by_database() ? tr("No copy of the database was ever told of.")
                                    : tr("There was never a backup.")) +
           QLatin1Char(' ') + how;
  const absl::Time last = toTime(m_backup->last());
  const QString age = print::ageWords(m_context.now() + m_context.hub_ahead - last);
  const QString when = print::momentWords(last, m_context.zone);
  const QString words = m_backup->by_database()
                            ? tr("The database was last said to be copied %1 (%2).").arg(age, when)
                            : tr("Last made and checked %1 (%2).").arg(age, when);
  return backupOld() ? words + QLatin1Char(' ') + how : words;
}

bool ClinicSettingsModel::backupOld() const {
  if (!m_backup.ok()) return !absl::IsUnknown(m_backup.status());
  return !m_backup->has_last() ||
         m_context.now() + m_context.hub_ahead - toTime(m_backup->last()) > kBackupOld;
}

QVariantList ClinicSettingsModel::rows() const {
  QVariantList rows;
  for (const v1::SettingKind& kind : m_context.catalogue->settings()) {
    const v1::SettingWords& words = inLanguage(kind.words(), m_context.language);
    QStringList sources;
    for (const auto& source : kind.sources()) sources << print::text(source.text());
    const auto value = m_values.find(kind.id());
    rows << QVariantMap{{QStringLiteral("id"), print::text(kind.id())},
                        {QStringLiteral("title"), print::text(words.title())},
                        {QStringLiteral("help"), print::text(words.help())},
                        {QStringLiteral("unit"),
                         print::text(m_context.catalogue->phrase("unit." + kind.unit(), m_context.language))},
                        {QStringLiteral("value"), value == m_values.end() ? kind.usual() : value->second},
                        {QStringLiteral("usual"), kind.usual()},
                        {QStringLiteral("least"), kind.least()},
                        {QStringLiteral("most"), kind.most()},
                        {QStringLiteral("source"), sources.join(QStringLiteral("; "))}};
  }
  return rows;
}

bool ClinicSettingsModel::mayChange() const {
  const v1::Role role = m_context.therapist.role();
  return role == v1::ROLE_LEAD || role == v1::ROLE_ADMINISTRATOR;
}

void ClinicSettingsModel::set(const QString& id, int value) {
  m_values[id.toStdString()] = static_cast<std::uint32_t>(value);
  emit changed();
}

void ClinicSettingsModel::usual() {
  m_values = usualSettings(*m_context.catalogue);
  emit changed();
}

void ClinicSettingsModel::save() {
  if (m_saving || !dirty()) return;
  v1::PutSettingsRequest request;
  request.set_base_revision(m_context.clinic.settings().revision());
  const SettingValues usual_values = usualSettings(*m_context.catalogue);
  for (const auto& [id, value] : m_values) {
    // What is as usual is not set, so that it follows a better usual value of a later program.
    if (usual_values.at(id) != value) (*request.mutable_values())[id] = value;
  }
  m_saving = true;
  m_problem.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Saving the settings"),
      [request](DeskClient* client) -> absl::StatusOr<v1::ClinicCard> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->putSettings(request);
      },
      [this](const absl::StatusOr<v1::ClinicCard>& card) {
        m_saving = false;
        m_problem = problemWords(card.status(), tr("save the settings"));
        if (card.ok()) {
          m_context.clinic = *card;
          m_content.takeSettings(card->settings());
          m_values = m_context.settings;
        }
        emit changed();
        if (card.ok()) emit saved();
      });
}

}  // namespace newel::desk
