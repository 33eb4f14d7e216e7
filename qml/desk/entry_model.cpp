#include "qml/desk/entry_model.h"

#include <algorithm>
#include <cmath>

#include "core/library/wording.h"
#include "core/records/check.h"
#include "qml/desk/dose_fields.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr double kMsPerMinute = 60000;

template <typename Value, typename Field>
QVariantList optionsOf(const google::protobuf::RepeatedField<Field>& values) {
  QVariantList list;
  for (const auto value : values) {
    list << QVariantMap{{QStringLiteral("value"), static_cast<int>(value)},
                        {QStringLiteral("text"), print::words(static_cast<Value>(value))}};
  }
  return list;
}

}  // namespace

EntryModel::EntryModel(DraftModel& draft, const DeskContext& context, QObject* parent)
    : QObject(parent), m_draft(draft), m_context(context) {
  connect(&draft, &DraftModel::changed, this, &EntryModel::changed);
  connect(&draft, &DraftModel::selectedChanged, this, [this] {
    m_window_problem.clear();
    emit changed();
  });
}

const v1::Entry& EntryModel::entry() const {
  const v1::Entry* selected = m_draft.selectedEntry();
  return selected == nullptr ? v1::Entry::default_instance() : *selected;
}

const v1::Exercise* EntryModel::exercise() const {
  return present() ? m_context.catalogue->find(entry().exercise_id(), entry().exercise_revision()) : nullptr;
}

QString EntryModel::entryId() const { return print::text(entry().id()); }

QString EntryModel::purpose() const {
  const v1::ExerciseWords* words =
      wordsOrEnglish(*m_context.catalogue, entry().exercise_id(), m_context.language);
  return words == nullptr ? QString() : print::text(words->purpose());
}

QString EntryModel::minutesWords() const {
  const EntryReview* review = m_draft.selectedReview();
  if (review == nullptr || review->total_ms == 0) return {};
  const double minutes = static_cast<double>(review->total_ms) / kMsPerMinute;
  return tr("%1, about %2 min each time")
      .arg(print::doseWords(entry().dose()))
      .arg(std::max(1.0, std::ceil(minutes)));
}

QString EntryModel::problem() const {
  const EntryReview* review = m_draft.selectedReview();
  return review == nullptr ? QString() : print::text(review->problem);
}

QVariantList EntryModel::doseFields() const { return desk::doseFields(entry().dose()); }
QVariantMap EntryModel::dose() const { return doseValues(entry().dose()); }

void EntryModel::setDose(const QString& key, int value) {
  if (doseValues(entry().dose()).value(key).toInt() == value) return;
  m_draft.editSelected("dose." + key.toStdString(), [&](v1::Entry& entry) {
    setDoseValue(*entry.mutable_dose(), key, static_cast<std::uint32_t>(std::max(0, value)));
    entry.clear_rung_id();
  });
}

QVariantList EntryModel::supports() const {
  return exercise() == nullptr ? QVariantList() : optionsOf<v1::Support>(exercise()->supports());
}
int EntryModel::support() const { return entry().support(); }
void EntryModel::setSupport(int value) {
  m_draft.editSelected("", [value](v1::Entry& entry) { entry.set_support(static_cast<v1::Support>(value)); });
}

QVariantList EntryModel::sidePolicies() const {
  return exercise() == nullptr ? QVariantList() : optionsOf<v1::SidePolicy>(exercise()->side_policies());
}
int EntryModel::sidePolicy() const { return entry().side_policy(); }
void EntryModel::setSidePolicy(int value) {
  m_draft.editSelected(
      "", [value](v1::Entry& entry) { entry.set_side_policy(static_cast<v1::SidePolicy>(value)); });
}

QVariantList EntryModel::prosthesisUses() const {
  if (exercise() == nullptr) return {};
  google::protobuf::RepeatedField<int> uses;
  if (exercise()->prosthesis() != v1::PROSTHESIS_USE_OFF) uses.Add(v1::PROSTHESIS_USE_ON);
  if (exercise()->prosthesis() != v1::PROSTHESIS_USE_ON) uses.Add(v1::PROSTHESIS_USE_OFF);
  return optionsOf<v1::ProsthesisUse>(uses);
}
int EntryModel::prosthesis() const { return entry().prosthesis(); }
void EntryModel::setProsthesis(int value) {
  m_draft.editSelected(
      "", [value](v1::Entry& entry) { entry.set_prosthesis(static_cast<v1::ProsthesisUse>(value)); });
}

int EntryModel::pacing() const { return entry().pacing(); }
void EntryModel::setPacing(int value) {
  m_draft.editSelected("", [value](v1::Entry& entry) { entry.set_pacing(static_cast<v1::Pacing>(value)); });
}

QString EntryModel::note() const { return print::text(entry().note()); }
void EntryModel::setNote(const QString& note) {
  if (note == this->note()) return;
  m_draft.editSelected("note", [&note](v1::Entry& entry) { entry.set_note(note.toStdString()); });
}

bool EntryModel::ownThresholds() const { return entry().has_thresholds(); }

int EntryModel::painStop() const {
  return static_cast<int>(thresholdsOf(m_draft.programme(), entry()).pain_stop_0_10());
}
int EntryModel::painRise() const {
  return static_cast<int>(thresholdsOf(m_draft.programme(), entry()).pain_rise_0_10());
}

void EntryModel::setOwnThresholds(bool own) {
  if (own == ownThresholds()) return;
  const v1::StopThresholds kept = m_draft.programme().thresholds();
  m_draft.editSelected("", [own, &kept](v1::Entry& entry) {
    if (own) {
      *entry.mutable_thresholds() = kept;
    } else {
      entry.clear_thresholds();
    }
  });
}

void EntryModel::setPainStop(int value) {
  m_draft.editSelected("pain_stop", [value](v1::Entry& entry) {
    entry.mutable_thresholds()->set_pain_stop_0_10(static_cast<std::uint32_t>(value));
  });
}

void EntryModel::setPainRise(int value) {
  m_draft.editSelected("pain_rise", [value](v1::Entry& entry) {
    entry.mutable_thresholds()->set_pain_rise_0_10(static_cast<std::uint32_t>(value));
  });
}

QVariantList EntryModel::findings() const {
  const EntryReview* review = m_draft.selectedReview();
  if (review == nullptr) return {};
  return findingList(review->findings, [this](const std::string& rule_id) {
    QStringList words;
    for (const Fix& fix : fixesOf(rule_id)) words << fixWords(fix);
    return words;
  });
}

std::vector<Fix> EntryModel::fixesOf(const std::string& rule_id) const {
  if (m_draft.file() == nullptr) return {};
  return fixesFor(entry(), rule_id, m_draft.file()->person, *m_context.catalogue, *m_context.rules);
}

QString EntryModel::fixWords(const Fix& fix) const {
  switch (fix.kind) {
    case Fix::Kind::Support:
      return tr("Support: %1").arg(print::words(fix.entry.support()));
    case Fix::Kind::Rung:
      return tr("Ladder: %1, %2").arg(print::words(fix.entry.support()), print::doseWords(fix.entry.dose()));
    case Fix::Kind::Prosthesis:
      return tr("Prosthesis: %1").arg(print::words(fix.entry.prosthesis()));
    case Fix::Kind::Sides:
      return tr("Sides: %1").arg(print::words(fix.entry.side_policy()));
  }
  return {};
}

void EntryModel::applyFix(const QString& rule_id, int index) {
  const auto fixes = fixesOf(rule_id.toStdString());
  if (index < 0 || index >= static_cast<int>(fixes.size())) return;
  const v1::Entry& fixed = fixes[static_cast<std::size_t>(index)].entry;
  m_draft.editSelected("", [&fixed](v1::Entry& entry) { entry = fixed; });
}

QVariantMap EntryModel::reasons() const {
  QVariantMap reasons;
  for (const auto& answered : entry().overrides()) {
    reasons[print::text(answered.rule_id())] = print::text(answered.reason());
  }
  return reasons;
}

void EntryModel::setReason(const QString& rule_id, const QString& reason) {
  if (reasons().value(rule_id).toString() == reason.trimmed()) return;
  m_draft.editSelected("reason." + rule_id.toStdString(), [&](v1::Entry& entry) {
    auto& overrides = *entry.mutable_overrides();
    const auto found = std::find_if(overrides.begin(), overrides.end(), [&](const v1::Override& answered) {
      return answered.rule_id() == rule_id.toStdString();
    });
    if (found != overrides.end()) overrides.erase(found);
    if (reason.trimmed().isEmpty()) return;
    auto& answered = *overrides.Add();
    answered.set_rule_id(rule_id.toStdString());
    answered.set_reason(reason.trimmed().toStdString());
  });
}

}  // namespace newel::desk
