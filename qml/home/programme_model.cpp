#include "qml/home/programme_model.h"

#include <QtQml/QQmlEngine>

#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"
#include "qml/parts/picture_address.h"

namespace newel::home {

ProgrammeModel::ProgrammeModel(EngineBridge& bridge, SettingsModel& settings, const HomeParts& parts,
                               QObject* parent)
    : QObject(parent), m_settings(settings), m_parts(parts), m_media(*parts.engine) {
  connect(&bridge, &EngineBridge::news, this, &ProgrammeModel::changed);
}

QString ProgrammeModel::title() const {
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  return programme.has_value() ? tr("Programme %L1").arg(programme->number()) : tr("No programme yet");
}

QString ProgrammeModel::signedBy() const {
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  if (!programme.has_value()) return tr("The clinic has not sent one. It comes by itself once it is signed.");
  const absl::StatusOr<absl::CivilDay> last = parseLocalDay(programme->end_day());
  const QString until = last.ok() ? dayWords(*last) : text(programme->end_day());
  return tr("From %1, until %2").arg(text(programme->signer_name()), until);
}

QString ProgrammeModel::changes() const {
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  return programme.has_value() ? text(programme->changes()) : QString();
}

QString ProgrammeModel::advice() const {
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  return programme.has_value() ? text(programme->advice()) : QString();
}

QVariantMap ProgrammeModel::rowOf(const v1::Entry& entry, const v1::Person& person) const {
  const Catalogue& catalogue = *m_parts.catalogue;
  const v1::ExerciseWords* words =
      wordsOrEnglish(catalogue, entry.exercise_id(), person.language(), entry.exercise_revision());
  const std::string language = words == nullptr ? "en" : words->language();
  QVariantMap row{{"title", text(entry.exercise_id())},
                  {"dose", doseWords(entry.dose())},
                  {"rhythm", rhythmWords(entry.schedule())},
                  {"hands", supportWords(catalogue, entry.support(), language)},
                  {"prosthesis", prosthesisWords(entry.prosthesis())},
                  {"note", text(entry.note())},
                  {"media", m_media.rowOf(entry)}};
  if (words == nullptr) return row;
  const WordingContext context{&catalogue, &person, &entry, language, limbsOf(person).prosthetic};
  const auto resolved = [&context](const std::string& words_of) {
    const absl::StatusOr<std::string> own = resolveWords(words_of, context);
    return own.ok() ? text(*own) : QString();
  };
  const auto list = [&resolved](const auto& texts) {
    QStringList lines;
    for (const std::string& line : texts) {
      const QString own = resolved(line);
      if (!own.isEmpty()) lines << own;
    }
    return lines;
  };
  row["figure"] = QVariant::fromValue(figureFor(entry, person));
  row["picture"] = parts::pictureAddress(pictureOf(*m_parts.engine, entry));
  row["otherLanguage"] = !servesLanguage(language, person.language());
  row["title"] = text(words->title());
  row["purpose"] = resolved(words->purpose());
  row["start"] = resolved(words->start());
  row["good"] = list(words->good());
  row["stopIf"] = list(words->stop_if());
  row["cautions"] = list(words->cautions());
  return row;
}

// Kept as long as the model: a page may still show what a newer programme no longer has.
parts::FigureSource* ProgrammeModel::figureFor(const v1::Entry& entry, const v1::Person& person) const {
  std::unique_ptr<parts::FigureSource>& figure = m_figures[entry.id()];
  if (figure == nullptr) {
    figure = std::make_unique<parts::FigureSource>();
    QQmlEngine::setObjectOwnership(figure.get(), QQmlEngine::CppOwnership);
  }
  const auto timeline = compileTimeline(entry, person, *m_parts.catalogue, person.language());
  if (timeline.ok()) {
    figure->show(parts::figureOf(*timeline, person, appearanceOf(m_parts)));
  } else {
    figure->clear();
  }
  return figure.get();
}

QVariantList ProgrammeModel::entries() const {
  QVariantList rows;
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  std::optional<v1::Person> person = m_parts.engine->person();
  if (!programme.has_value() || !person.has_value()) return rows;
  person->set_language(languageOf(m_parts));
  for (const v1::Entry& entry : programme->entries()) rows << rowOf(entry, *person);
  return rows;
}

bool ProgrammeModel::fresh() const {
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  return programme.has_value() && programme->number() > m_settings.seenProgramme();
}

void ProgrammeModel::shown() {
  const std::optional<v1::Programme> programme = m_parts.engine->programme();
  if (!programme.has_value() || !fresh()) return;
  const absl::Status seen =
      m_parts.engine->markSeen(v1::RECEIPT_OF_PROGRAMME, programme->id(), programme->number());
  if (!seen.ok()) return;  // shown again next time
  m_settings.setSeenProgramme(programme->number());
  m_parts.engine->syncSoon();
  emit changed();
}

}  // namespace newel::home
