#include "qml/desk/own_exercise_model.h"

#include <algorithm>
#include <map>

#include "core/library/own_exercises.h"
#include "qml/desk/dose_fields.h"
#include "qml/desk/in_language.h"
#include "qml/desk/own_exercise_options.h"
#include "qml/desk/picture_file.h"
#include "qml/desk/problem_words.h"
#include "qml/parts/picture_address.h"
#include "qml/print/record_words.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

template <typename List>
QVariantList valuesOf(const List& list) {
  QVariantList values;
  for (const auto value : list) values << static_cast<int>(value);
  return values;
}

QVariantList keysOf(const google::protobuf::RepeatedPtrField<std::string>& list) {
  QVariantList values;
  for (const std::string& key : list) values << print::text(key);
  return values;
}

void toggleNumber(google::protobuf::RepeatedField<int>& list, int value) {
  const auto found = std::find(list.begin(), list.end(), value);
  if (found != list.end()) {
    list.erase(found);
  } else {
    list.Add(value);
    std::sort(list.begin(), list.end());
  }
}

void toggleKey(google::protobuf::RepeatedPtrField<std::string>& list, const std::string& key) {
  const auto found = std::find(list.begin(), list.end(), key);
  if (found != list.end()) {
    list.erase(found);
  } else {
    *list.Add() = key;
  }
}

void setLines(google::protobuf::RepeatedPtrField<std::string>& list, const QString& text) {
  list.Clear();
  for (const QString& line : text.split(QLatin1Char('\n'))) {
    if (!line.trimmed().isEmpty()) *list.Add() = line.trimmed().toStdString();
  }
}

QString linesOf(const google::protobuf::RepeatedPtrField<std::string>& list) {
  QStringList lines;
  for (const std::string& line : list) lines << print::text(line);
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

OwnExerciseModel::OwnExerciseModel(DeskContext& context, DeskContent& content, QObject* parent)
    : QObject(parent), m_context(context), m_content(content) {}

void OwnExerciseModel::begin() {
  m_writing = false;
  m_saving = false;
  m_problem.clear();
  emit changed();
}

QVariantList OwnExerciseModel::list() const {
  std::map<std::string, const v1::OwnExercise*> newest;
  for (const v1::OwnExercise& own : m_content.own()) newest[own.exercise().id()] = &own;
  QVariantList rows;
  for (const auto& [id, own] : newest) {
    rows << QVariantMap{
        {QStringLiteral("id"), print::text(id)},
        {QStringLiteral("title"), print::text(own->words(0).title())},
        {QStringLiteral("facts"),
         tr("revision %1, by %2").arg(own->exercise().revision()).arg(print::text(own->author_name()))}};
  }
  return rows;
}

QVariantList OwnExerciseModel::movements() const {
  QVariantList rows;
  for (const v1::Movement& movement : m_context.catalogue->movements()) {
    rows << QVariantMap{
        {QStringLiteral("value"), print::text(movement.id())},
        {QStringLiteral("text"), print::text(inLanguage(movement.words(), m_context.language).title())}};
  }
  return rows;
}

QString OwnExerciseModel::heading() const {
  return m_base == 0 ? tr("A new exercise")
                     : tr("Revision %1 of %2").arg(m_base + 1).arg(print::text(words().title()));
}

QString OwnExerciseModel::movement() const {
  const v1::Movement* movement = m_context.catalogue->movement(m_own.movement());
  return movement == nullptr ? QString()
                             : print::text(inLanguage(movement->words(), m_context.language).title());
}

QVariantList OwnExerciseModel::phases() const {
  QVariantList rows;
  const v1::Movement* movement = m_context.catalogue->movement(m_own.movement());
  if (movement == nullptr || !m_writing) return rows;
  for (const v1::Part& part : movement->parts()) {
    for (const v1::Phase& phase : part.phases()) {
      const auto cue = words().cues().find(phase.id());
      QString label = print::text(inLanguage(movement->words(), m_context.language).phases().at(phase.id()));
      label.replace(QStringLiteral("{working}"), tr("working leg"));
      rows << QVariantMap{{QStringLiteral("key"), print::text(phase.id())},
                          {QStringLiteral("label"), label},
                          {QStringLiteral("text"),
                           cue == words().cues().end() ? QString() : print::text(cue->second.screen())}};
    }
  }
  return rows;
}

QVariantMap OwnExerciseModel::values() const {
  if (!m_writing) return {};
  const v1::Exercise& exercise = m_own.exercise();
  const bool fault = !words().faults().empty();
  return {{QStringLiteral("title"), print::text(words().title())},
          {QStringLiteral("purpose"), print::text(words().purpose())},
          {QStringLiteral("start"), print::text(words().start())},
          {QStringLiteral("support"), print::text(words().support())},
          {QStringLiteral("breathing"), print::text(words().breathing())},
          {QStringLiteral("good"), linesOf(words().good())},
          {QStringLiteral("stop_if"), linesOf(words().stop_if())},
          {QStringLiteral("cautions"), linesOf(words().cautions())},
          {QStringLiteral("fault"), fault ? print::text(words().faults(0).seen()) : QString()},
          {QStringLiteral("mend"), fault ? print::text(words().faults(0).mend()) : QString()},
          {QStringLiteral("position"), static_cast<int>(exercise.position())},
          {QStringLiteral("purpose_group"), static_cast<int>(exercise.purpose())},
          {QStringLiteral("prosthesis"), static_cast<int>(exercise.prosthesis())},
          {QStringLiteral("mobility"), static_cast<int>(exercise.fit().least_mobility())},
          {QStringLiteral("both"), static_cast<int>(exercise.both_sides())}};
}

QVariantMap OwnExerciseModel::options() const {
  return ownExerciseOptions(*m_context.catalogue, m_own.movement(), m_context.language);
}

QVariantMap OwnExerciseModel::chosen() const {
  const v1::Exercise& exercise = m_own.exercise();
  return {{QStringLiteral("supports"), valuesOf(exercise.supports())},
          {QStringLiteral("sides"), valuesOf(exercise.side_policies())},
          {QStringLiteral("equipment"), valuesOf(exercise.equipment())},
          {QStringLiteral("muscles"), keysOf(exercise.muscles())},
          {QStringLiteral("tags"), keysOf(exercise.tags())}};
}

QVariantList OwnExerciseModel::doseFields() const {
  return newel::desk::doseFields(m_own.exercise().default_dose());
}

QVariantMap OwnExerciseModel::dose() const { return doseValues(m_own.exercise().default_dose()); }

QString OwnExerciseModel::picture() const { return parts::pictureAddress(m_own.picture()); }

v1::OwnExercise OwnExerciseModel::complete() const {
  const auto trimmed = [](const std::string& text) { return print::text(text).trimmed().toStdString(); };
  v1::OwnExercise own = m_own;
  v1::ExerciseWords& to = *own.mutable_words(0);
  to.set_title(trimmed(to.title()));
  to.set_purpose(trimmed(to.purpose()));
  to.set_start(trimmed(to.start()));
  to.set_support(trimmed(to.support()));
  to.set_breathing(trimmed(to.breathing()));
  for (auto& [key, cue] : *to.mutable_cues()) {
    cue.set_screen(trimmed(cue.screen()));
    cue.set_spoken(trimmed(cue.spoken()));
  }
  for (v1::Fault& fault : *to.mutable_faults()) {
    fault.set_seen(trimmed(fault.seen()));
    fault.set_mend(trimmed(fault.mend()));
  }
  return own;
}

QString OwnExerciseModel::missing() const {
  if (!m_writing) return {};
  v1::OwnExercise own = complete();
  // What the hub sets is not the therapist's to fill in.
  own.set_clinic_id(m_context.clinic.clinic_id());
  own.set_author_id(m_context.therapist.id());
  own.set_author_name(m_context.therapist.display_name());
  own.mutable_written_at()->set_seconds(1);
  const absl::Status status = checkOwn(own, *m_context.catalogue);
  return status.ok() ? QString() : ownExerciseProblem(std::string(status.message()));
}

void OwnExerciseModel::beginNew(const QString& movement_id) {
  const v1::Movement* movement = m_context.catalogue->movement(movement_id.toStdString());
  if (movement == nullptr) return;
  const std::string unique = newRecordId(*m_context.clock, *m_context.random);
  m_own = beginOwn(*movement, *m_context.catalogue, "own-" + unique.substr(unique.size() - 12),
                   m_context.language);
  auto& exercise = *m_own.mutable_exercise();
  // Usual for every level, until the therapist's own eyes say otherwise; the least mobility is asked.
  for (int level = v1::LimbLossLevel_MIN + 1; level <= v1::LimbLossLevel_MAX; ++level)
    exercise.mutable_fit()->add_usual_levels(static_cast<v1::LimbLossLevel>(level));
  auto& source = *exercise.add_sources();
  source.set_kind(v1::SOURCE_KIND_COMMON_PRACTICE);
  source.set_text("common practice, no source: written by the clinic");
  m_base = 0;
  m_writing = true;
  m_problem.clear();
  emit changed();
}

void OwnExerciseModel::revise(const QString& exercise_id) {
  for (const v1::OwnExercise& own : m_content.own()) {
    if (own.exercise().id() == exercise_id.toStdString()) m_own = own;
  }
  m_base = m_own.exercise().revision();
  m_writing = m_base > 0;
  m_problem.clear();
  emit changed();
}

void OwnExerciseModel::close() {
  m_writing = false;
  emit changed();
}

void OwnExerciseModel::set(const QString& key, const QString& text) {
  // As typed, the space at the end of a word included: what is kept is trimmed in complete().
  const std::string said = text.toStdString();
  v1::ExerciseWords& to = words();
  if (key == QLatin1String("title")) to.set_title(said);
  if (key == QLatin1String("purpose")) to.set_purpose(said);
  if (key == QLatin1String("start")) to.set_start(said);
  if (key == QLatin1String("support")) to.set_support(said);
  if (key == QLatin1String("breathing")) to.set_breathing(said);
  if (key == QLatin1String("good")) setLines(*to.mutable_good(), text);
  if (key == QLatin1String("stop_if")) setLines(*to.mutable_stop_if(), text);
  if (key == QLatin1String("cautions")) setLines(*to.mutable_cautions(), text);
  if (key == QLatin1String("fault") || key == QLatin1String("mend")) {
    v1::Fault& fault = to.faults().empty() ? *to.add_faults() : *to.mutable_faults(0);
    (key == QLatin1String("fault")) ? fault.set_seen(said) : fault.set_mend(said);
    if (fault.seen().empty() && fault.mend().empty()) to.clear_faults();
  }
  emit changed();
}

void OwnExerciseModel::setPhase(const QString& key, const QString& text) {
  v1::Cue& cue = (*words().mutable_cues())[key.toStdString()];
  cue.set_screen(text.toStdString());
  cue.set_spoken(cue.screen());
  emit changed();
}

void OwnExerciseModel::choose(const QString& key, int value) {
  v1::Exercise& exercise = *m_own.mutable_exercise();
  if (key == QLatin1String("purpose_group")) exercise.set_purpose(static_cast<v1::Purpose>(value));
  if (key == QLatin1String("prosthesis")) exercise.set_prosthesis(static_cast<v1::ProsthesisUse>(value));
  if (key == QLatin1String("mobility"))
    exercise.mutable_fit()->set_least_mobility(static_cast<v1::MobilityLevel>(value));
  if (key == QLatin1String("both")) exercise.set_both_sides(static_cast<v1::BothSides>(value));
  if (key == QLatin1String("position")) {
    exercise.set_position(static_cast<v1::Position>(value));
    positionChosen();
  }
  emit changed();
}

// The tags of a position are there at once, and cannot be forgotten.
void OwnExerciseModel::positionChosen() {
  v1::Exercise& exercise = *m_own.mutable_exercise();
  for (const std::string& tag : tagsOfPosition(*m_context.catalogue, exercise.position())) {
    const auto& tags = exercise.tags();
    if (std::find(tags.begin(), tags.end(), tag) == tags.end()) exercise.add_tags(tag);
  }
}

void OwnExerciseModel::toggle(const QString& key, const QVariant& value) {
  v1::Exercise& exercise = *m_own.mutable_exercise();
  if (key == QLatin1String("supports")) toggleNumber(*exercise.mutable_supports(), value.toInt());
  if (key == QLatin1String("sides")) toggleNumber(*exercise.mutable_side_policies(), value.toInt());
  if (key == QLatin1String("equipment")) toggleNumber(*exercise.mutable_equipment(), value.toInt());
  if (key == QLatin1String("muscles")) toggleKey(*exercise.mutable_muscles(), value.toString().toStdString());
  if (key == QLatin1String("tags")) toggleKey(*exercise.mutable_tags(), value.toString().toStdString());
  emit changed();
}

void OwnExerciseModel::setDose(const QString& key, int value) {
  setDoseValue(*m_own.mutable_exercise()->mutable_default_dose(), key, static_cast<std::uint32_t>(value));
  emit changed();
}

void OwnExerciseModel::setPicture(const QString& file) {
  m_problem.clear();
  if (file.trimmed().isEmpty()) {
    m_own.clear_picture();
  } else {
    const absl::StatusOr<std::string> picture = smallPicture(file.trimmed());
    if (picture.ok()) {
      m_own.set_picture(*picture);
    } else {
      m_problem = print::text(std::string(picture.status().message()));
    }
  }
  emit changed();
}

void OwnExerciseModel::save() {
  if (m_saving || !missing().isEmpty()) return;
  v1::PutOwnExerciseRequest request;
  *request.mutable_exercise() = complete();
  request.set_base_revision(m_base);
  m_saving = true;
  m_problem.clear();
  emit changed();
  using Kept = std::vector<v1::OwnExercise>;
  m_context.worker->run(
      this, tr("Saving the exercise"),
      [request](DeskClient* client) -> absl::StatusOr<Kept> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        const auto put = client->putOwnExercise(request);
        if (!put.ok()) return put.status();
        return client->ownExercises();
      },
      [this](const absl::StatusOr<Kept>& own) {
        m_saving = false;
        m_problem = problemWords(own.status(), tr("save the exercise"));
        m_writing = !own.ok();
        const QString title = print::text(words().title());
        if (own.ok()) m_content.takeOwn(*own);
        emit changed();
        if (own.ok()) emit saved(title);
      });
}

}  // namespace newel::desk
