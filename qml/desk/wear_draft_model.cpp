#include "qml/desk/wear_draft_model.h"

#include <algorithm>

#include "core/progress/measure_table.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "qml/desk/in_language.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

QString sourcesOf(const v1::WearExample& example) {
  QStringList lines;
  for (const v1::Source& source : example.sources()) lines << print::text(source.text());
  return lines.join(QStringLiteral("\n"));
}

// A plan that the clinic changed is a new one: what the skin said before its first day no longer counts.
void markChanged(v1::WearPlan& plan, const std::string& day) { plan.set_effective_day(day); }

}  // namespace

WearDraftModel::WearDraftModel(DeskContext& context, DraftModel& draft, QObject* parent)
    : QObject(parent), m_context(context), m_draft(draft) {
  connect(&m_draft, &DraftModel::changed, this, &WearDraftModel::changed);
}

bool WearDraftModel::planned() const { return m_draft.programme().has_wear_plan(); }

QVariantList WearDraftModel::examples() const {
  QVariantList list;
  for (const v1::WearExample& example : WearLibrary::builtIn().examples()) {
    list << QVariantMap{{"id", print::text(example.id())},
                        {"name", print::text(inLanguage(example.words(), m_context.language).name())},
                        {"when", print::text(inLanguage(example.words(), m_context.language).when())},
                        {"sources", sourcesOf(example)}};
  }
  return list;
}

QVariantList WearDraftModel::steps() const {
  QVariantList list;
  if (!planned()) return list;
  for (int i = 0; i < plan().steps_size(); ++i) {
    const v1::WearStep& step = plan().steps(i);
    const auto blocks = static_cast<int>(step.blocks());
    const auto minutes = static_cast<int>(step.block_min());
    list << QVariantMap{{"days", static_cast<int>(step.days())},
                        {"blocks", blocks},
                        {"minutes", minutes},
                        {"allDay", step.all_day()},
                        {"activity", print::text(step.activity())},
                        {"words", step.all_day() ? tr("all day") : tr("%1 min a day").arg(blocks * minutes)},
                        {"first", static_cast<int>(plan().first_step()) == i}};
  }
  return list;
}

int WearDraftModel::offMinutes() const { return static_cast<int>(plan().off_min()); }
int WearDraftModel::rednessMinutes() const { return static_cast<int>(plan().redness_min()); }
bool WearDraftModel::staysOff() const { return plan().redness_action() != v1::REDNESS_ACTION_SAME_STEP; }
QString WearDraftModel::note() const { return print::text(plan().note()); }

QString WearDraftModel::state() const {
  if (!planned()) return tr("No wear plan: the phone sets no limit and asks nothing.");
  const v1::Programme* last = m_draft.file() == nullptr ? nullptr : lastProgramme(*m_draft.file());
  if (last == nullptr || !last->has_wear_plan()) return tr("A first wear plan.");
  if (toBytes(last->wear_plan()) == toBytes(plan()))
    return tr("Goes on as it is, plan %1. What the skin stopped stays stopped.")
        .arg(last->wear_plan().number());
  return tr("Changed: plan %1 begins on %2. What stopped the plan before no longer counts.")
      .arg(last->wear_plan().number() + 1)
      .arg(print::text(plan().effective_day()));
}

QStringList WearDraftModel::published() const {
  QStringList lines;
  for (const v1::RednessRule& rule : WearLibrary::builtIn().redness().published()) {
    const QString minutes = rule.over_most_min() > 0
                                ? tr("over %1 to %2 min").arg(rule.over_min()).arg(rule.over_most_min())
                                : tr("over %1 min").arg(rule.over_min());
    lines << tr("%1: %2 (%3)").arg(minutes, print::text(rule.action()), print::text(rule.source().text()));
  }
  return lines;
}

QVariantList WearDraftModel::measures() const {
  QVariantList list;
  for (const v1::MeasureKind& kind : MeasureTable::builtIn().kinds()) {
    QString by;
    for (const v1::AskedMeasure& asked : m_draft.programme().measures())
      if (asked.kind() == kind.id()) by = print::text(asked.by_day());
    list << QVariantMap{{"id", print::text(kind.id())},
                        {"name", print::text(measureWords(kind, m_context.language).name())},
                        {"byDay", by}};
  }
  return list;
}

void WearDraftModel::edit(const std::string& key, const std::function<void(v1::WearPlan&)>& change) {
  m_draft.editProgramme(key.empty() ? key : "wear." + key, [&change](v1::Programme& programme) {
    v1::WearPlan& plan = *programme.mutable_wear_plan();
    markChanged(plan, programme.effective_day());
    change(plan);
  });
}

void WearDraftModel::editStep(int step, const std::string& key,
                              const std::function<void(v1::WearStep&)>& change) {
  if (!planned() || step < 0 || step >= plan().steps_size()) return;
  edit(std::to_string(step) + "." + key, [&](v1::WearPlan& plan) { change(*plan.mutable_steps(step)); });
}

void WearDraftModel::startFrom(const QString& example_id) {
  const v1::WearExample* example = WearLibrary::builtIn().find(example_id.toStdString());
  if (example == nullptr) return;
  const std::uint32_t minutes = m_context.settings.at("redness-minutes");
  edit("", [&](v1::WearPlan& plan) {
    const std::string day = plan.effective_day();
    plan = draftPlan(*example, WearLibrary::builtIn().redness(), minutes);
    plan.set_effective_day(day);
  });
}

void WearDraftModel::clear() {
  if (!planned()) return;
  m_draft.editProgramme("", [](v1::Programme& programme) { programme.clear_wear_plan(); });
}

void WearDraftModel::setDays(int step, int days) {
  editStep(step, "days", [days](v1::WearStep& one) { one.set_days(static_cast<std::uint32_t>(days)); });
}

void WearDraftModel::setBlocks(int step, int blocks) {
  editStep(step, "blocks",
           [blocks](v1::WearStep& one) { one.set_blocks(static_cast<std::uint32_t>(blocks)); });
}

void WearDraftModel::setMinutes(int step, int minutes) {
  editStep(step, "minutes",
           [minutes](v1::WearStep& one) { one.set_block_min(static_cast<std::uint32_t>(minutes)); });
}

void WearDraftModel::setActivity(int step, const QString& words) {
  if (!planned() || step < 0 || step >= plan().steps_size() ||
      print::text(plan().steps(step).activity()) == words)
    return;
  editStep(step, "activity", [&words](v1::WearStep& one) { one.set_activity(words.toStdString()); });
}

void WearDraftModel::beginAt(int step) {
  if (!planned() || step < 0 || step >= plan().steps_size()) return;
  edit("", [step](v1::WearPlan& plan) { plan.set_first_step(static_cast<std::uint32_t>(step)); });
}

void WearDraftModel::removeStep(int step) {
  if (!planned() || plan().steps_size() < 2 || step < 0 || step >= plan().steps_size()) return;
  edit("", [step](v1::WearPlan& plan) {
    plan.mutable_steps()->DeleteSubrange(step, 1);
    const auto last = static_cast<std::uint32_t>(plan.steps_size() - 1);
    plan.set_first_step(std::min(plan.first_step(), last));
  });
}

void WearDraftModel::repeatStep(int step) {
  if (!planned() || step < 0 || step >= plan().steps_size() || plan().steps(step).all_day()) return;
  edit("", [step](v1::WearPlan& plan) {
    *plan.add_steps() = plan.steps(step);
    for (int i = plan.steps_size() - 1; i > step + 1; --i) plan.mutable_steps()->SwapElements(i, i - 1);
  });
}

void WearDraftModel::setOffMinutes(int minutes) {
  if (planned())
    edit("off", [minutes](v1::WearPlan& plan) { plan.set_off_min(static_cast<std::uint32_t>(minutes)); });
}

void WearDraftModel::setRednessMinutes(int minutes) {
  if (planned())
    edit("redness",
         [minutes](v1::WearPlan& plan) { plan.set_redness_min(static_cast<std::uint32_t>(minutes)); });
}

void WearDraftModel::setStaysOff(bool stays) {
  if (!planned() || stays == staysOff()) return;
  edit("", [stays](v1::WearPlan& plan) {
    plan.set_redness_action(stays ? v1::REDNESS_ACTION_STAY_OFF : v1::REDNESS_ACTION_SAME_STEP);
  });
}

void WearDraftModel::setNote(const QString& note) {
  if (!planned() || note == this->note()) return;
  edit("note", [&note](v1::WearPlan& plan) { plan.set_note(note.toStdString()); });
}

void WearDraftModel::toggleMeasure(const QString& kind) {
  const std::string id = kind.toStdString();
  m_draft.editProgramme("", [&id](v1::Programme& programme) {
    auto& asked = *programme.mutable_measures();
    const auto found = std::find_if(asked.begin(), asked.end(),
                                    [&id](const v1::AskedMeasure& one) { return one.kind() == id; });
    if (found != asked.end()) {
      asked.erase(found);
      return;
    }
    v1::AskedMeasure& one = *asked.Add();
    one.set_kind(id);
    one.set_by_day(programme.end_day());
  });
}

}  // namespace newel::desk
