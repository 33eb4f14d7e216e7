#include "qml/desk/next_step_model.h"

#include <algorithm>
#include <array>

#include "core/library/default_entry.h"
#include "core/progress/progression_presets.h"
#include "core/review/ladder.h"
#include "core/time/local_day.h"
#include "qml/desk/evidence_words.h"
#include "qml/desk/in_language.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

const QString kNone = QStringLiteral("none");
const QString kOwn = QStringLiteral("own");

struct Field {
  const char* key;
  std::uint32_t (v1::ProgressionRule::*get)() const;
  void (v1::ProgressionRule::*set)(std::uint32_t);
  int from;
  int to;
};

using Rule = v1::ProgressionRule;
// Ranges: core/records/programme.proto.
constexpr std::array<Field, 8> kFields = {{
    {"practices", &Rule::practices, &Rule::set_practices, 1, 10},
    {"goal_repetitions", &Rule::goal_repetitions, &Rule::set_goal_repetitions, 0, 100},
    {"repetitions_over_goal", &Rule::repetitions_over_goal, &Rule::set_repetitions_over_goal, 0, 20},
    {"effort_at_most_0_10", &Rule::effort_at_most_0_10, &Rule::set_effort_at_most_0_10, 1, 10},
    {"pain_rise_at_most_0_10", &Rule::pain_rise_at_most_0_10, &Rule::set_pain_rise_at_most_0_10, 0, 9},
    {"step_back_practices", &Rule::step_back_practices, &Rule::set_step_back_practices, 0, 10},
    {"step_back_pain_rise_0_10", &Rule::step_back_pain_rise_0_10, &Rule::set_step_back_pain_rise_0_10, 0, 10},
    {"step_back_done_percent", &Rule::step_back_done_percent, &Rule::set_step_back_done_percent, 0, 100},
}};

bool isOfRepetitions(const Field& field) {
  const std::string key = field.key;
  return key == "goal_repetitions" || key == "repetitions_over_goal";
}

const v1::ProgressionPreset* presetOf(const Rule& rule) {
  for (const auto& preset : progressionPresets())
    if (preset.rule().SerializeAsString() == rule.SerializeAsString()) return &preset;
  return nullptr;
}

}  // namespace

NextStepModel::NextStepModel(DraftModel& draft, const DeskContext& context, QObject* parent)
    : QObject(parent), m_draft(draft), m_context(context) {
  connect(&draft, &DraftModel::changed, this, &NextStepModel::refresh);
  connect(&draft, &DraftModel::selectedChanged, this, &NextStepModel::refresh);
}

const v1::Exercise* NextStepModel::exercise() const {
  const v1::Entry* entry = m_draft.selectedEntry();
  return entry == nullptr ? nullptr
                          : m_context.catalogue->find(entry->exercise_id(), entry->exercise_revision());
}

// What the practices say changes with the file alone, so a keystroke in the draft judges nothing anew.
void NextStepModel::refresh() {
  const v1::Entry* entry = m_draft.selectedEntry();
  const PersonFile* file = m_draft.file();
  const std::string id = entry == nullptr ? "" : entry->id();
  if (id != m_judged_entry || file != m_judged_file) {
    m_judged_entry = id;
    m_judged_file = file;
    m_advice = ProgressionAdvice();
    const v1::Programme* last = file == nullptr ? nullptr : lastProgramme(*file);
    const bool known = last != nullptr && std::any_of(last->entries().begin(), last->entries().end(),
                                                      [&id](const v1::Entry& one) { return one.id() == id; });
    const auto due = known ? recentAdherence(*file, m_context.now() + m_context.hub_ahead, kJudgedWeeks)
                           : absl::StatusOr<Adherence>(absl::NotFoundError("new"));
    if (due.ok()) {
      auto advice = adviseProgression(file->programmes, id, file->practices, due->occasions);
      if (advice.ok()) m_advice = *std::move(advice);
    }
  }
  emit changed();
}

QVariantList NextStepModel::rungs() const {
  QVariantList list;
  if (exercise() == nullptr) return list;
  const int all = exercise()->ladder_size();
  for (int i = 0; i < all; ++i) {
    const v1::Rung& rung = exercise()->ladder(i);
    list << QVariantMap{
        {QStringLiteral("value"), print::text(rung.id())},
        {QStringLiteral("text"), tr("%1 of %2: %3, %4")
                                     .arg(i + 1)
                                     .arg(all)
                                     .arg(print::words(rung.support()), print::doseWords(rung.dose()))}};
  }
  return list;
}

QString NextStepModel::rung() const {
  return m_draft.selectedEntry() == nullptr ? QString() : print::text(m_draft.selectedEntry()->rung_id());
}

void NextStepModel::setRung(const QString& rung_id) {
  if (exercise() == nullptr) return;
  for (const v1::Rung& rung : exercise()->ladder()) {
    if (rung.id() != rung_id.toStdString()) continue;
    m_draft.editSelected("", [&rung](v1::Entry& entry) { standOn(entry, rung); });
    return;
  }
}

QVariantList NextStepModel::presets() const {
  QVariantList list{QVariantMap{{QStringLiteral("value"), kNone}, {QStringLiteral("text"), tr("no rule")}}};
  for (const auto& preset : progressionPresets()) {
    list << QVariantMap{
        {QStringLiteral("value"), print::text(preset.id())},
        {QStringLiteral("text"), print::text(inLanguage(preset.words(), m_context.language).name())}};
  }
  if (preset() == kOwn)
    list << QVariantMap{{QStringLiteral("value"), kOwn}, {QStringLiteral("text"), tr("your own")}};
  return list;
}

QString NextStepModel::preset() const {
  const v1::Entry* entry = m_draft.selectedEntry();
  if (entry == nullptr || !entry->has_progression()) return kNone;
  const v1::ProgressionPreset* preset = presetOf(entry->progression());
  return preset == nullptr ? kOwn : print::text(preset->id());
}

QString NextStepModel::ruleWords() const {
  const v1::Entry* entry = m_draft.selectedEntry();
  if (entry == nullptr || !entry->has_progression())
    return tr("Nobody is told when this may be ready for its next step.");
  const v1::ProgressionPreset* preset = presetOf(entry->progression());
  return preset == nullptr ? QString() : print::text(inLanguage(preset->words(), m_context.language).says());
}

void NextStepModel::setPreset(const QString& preset_id) {
  if (preset_id == kOwn || preset_id == preset()) return;
  m_draft.editSelected("", [&preset_id](v1::Entry& entry) {
    entry.clear_progression();
    for (const auto& preset : progressionPresets())
      if (preset.id() == preset_id.toStdString()) *entry.mutable_progression() = preset.rule();
  });
}

QVariantList NextStepModel::fields() const {
  const v1::Entry* entry = m_draft.selectedEntry();
  if (entry == nullptr || !entry->has_progression()) return {};
  const std::array<QString, kFields.size()> labels = {
      tr("Good practices in a row"),
      tr("Goal of the last set (0: the dose)"),
      tr("Repetitions over the goal"),
      tr("Effort at most, of 10"),
      tr("Pain rises at most by, of 10"),
      tr("Too hard ones that make a step back (0: never)"),
      tr("Too hard: pain rose by (0: does not count)"),
      tr("Too hard: less done than, in % (0: does not count)")};
  QVariantList list;
  for (std::size_t i = 0; i < kFields.size(); ++i) {
    const Field& field = kFields[i];
    if (isOfRepetitions(field) && !entry->dose().has_sets()) continue;
    list << QVariantMap{{QStringLiteral("key"), QString::fromLatin1(field.key)},
                        {QStringLiteral("label"), labels[i]},
                        {QStringLiteral("from"), field.from},
                        {QStringLiteral("to"), field.to}};
  }
  return list;
}

QVariantMap NextStepModel::values() const {
  QVariantMap values;
  const v1::Entry* entry = m_draft.selectedEntry();
  if (entry == nullptr) return values;
  for (const Field& field : kFields)
    values[QString::fromLatin1(field.key)] = (entry->progression().*field.get)();
  return values;
}

void NextStepModel::setField(const QString& key, int value) {
  for (const Field& field : kFields) {
    if (key != QLatin1String(field.key)) continue;
    m_draft.editSelected("progression." + key.toStdString(), [&field, value](v1::Entry& entry) {
      (entry.mutable_progression()->*field.set)(
          static_cast<std::uint32_t>(std::clamp(value, field.from, field.to)));
    });
  }
}

bool NextStepModel::nothingMissed() const {
  return m_draft.selectedEntry() != nullptr && m_draft.selectedEntry()->progression().nothing_missed();
}

void NextStepModel::setNothingMissed(bool nothing) {
  m_draft.editSelected(
      "", [nothing](v1::Entry& entry) { entry.mutable_progression()->set_nothing_missed(nothing); });
}

QString NextStepModel::adviceWords() const {
  return m_advice.advice == Advice::NoRule ? QString() : desk::adviceWords(m_advice.advice);
}

QVariantList NextStepModel::evidence() const {
  QVariantList list;
  for (const auto& line : m_advice.evidence)
    list << QVariantMap{
        {QStringLiteral("good"), line.good},
        {QStringLiteral("words"), evidenceWords(line, *m_context.catalogue, m_context.language)}};
  return list;
}

// From where the programme that counts has it: the step that the advice is about was taken once it is in the
// draft.
std::optional<v1::Entry> NextStepModel::step() const {
  const bool up = m_advice.advice == Advice::Ready;
  const PersonFile* file = m_draft.file();
  const v1::Programme* last = file == nullptr ? nullptr : lastProgramme(*file);
  if (last == nullptr || (!up && m_advice.advice != Advice::StepBack)) return std::nullopt;
  const auto& entries = last->entries();
  const auto before = std::find_if(entries.begin(), entries.end(),
                                   [this](const v1::Entry& one) { return one.id() == m_judged_entry; });
  if (before == entries.end()) return std::nullopt;
  LadderStep taken = stepOnLadder(*before, up, file->person, *m_context.catalogue, *m_context.rules);
  const bool there =
      taken.what == LadderStep::What::Taken && taken.entry.rung_id() != m_draft.selectedEntry()->rung_id();
  return there ? std::optional(std::move(taken.entry)) : std::nullopt;
}

QString NextStepModel::stepWords() const {
  const auto next = step();
  if (!next) return {};
  return m_advice.advice == Advice::Ready
             ? tr("Next step: %1, %2").arg(print::words(next->support()), print::doseWords(next->dose()))
             : tr("Step back: %1, %2").arg(print::words(next->support()), print::doseWords(next->dose()));
}

void NextStepModel::takeStep() {
  if (const auto next = step()) setRung(print::text(next->rung_id()));
}

}  // namespace newel::desk
