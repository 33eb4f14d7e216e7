#include "qml/desk/draft_model.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/library/default_entry.h"
#include "core/time/local_day.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

constexpr int kKeepAfterMs = 300;

double mostOf(const std::array<double, 7>& minutes) {
  return *std::max_element(minutes.begin(), minutes.end());
}

// Source: common practice, no source; three days with a day between. The therapist sees and changes it.
v1::Schedule firstSchedule() {
  v1::Schedule schedule;
  for (const auto day : {v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY}) {
    schedule.mutable_weekdays()->add_days(day);
  }
  schedule.add_windows()->set_to_min(1440);
  return schedule;
}

}  // namespace

QVariantList findingList(const std::vector<v1::Finding>& findings,
                         const std::function<QStringList(const std::string& rule_id)>& fixes_of) {
  QVariantList list;
  for (const auto& finding : findings) {
    QStringList sources;
    for (const auto& source : finding.sources()) sources << print::text(source.text());
    QVariantList fixes;
    if (fixes_of) {
      for (const QString& words : fixes_of(finding.rule_id()))
        fixes << QVariantMap{{QStringLiteral("text"), words}};
    }
    list << QVariantMap{{QStringLiteral("ruleId"), print::text(finding.rule_id())},
                        {QStringLiteral("effect"), static_cast<int>(finding.effect())},
                        {QStringLiteral("effectWords"), print::words(finding.effect())},
                        {QStringLiteral("words"), print::text(finding.therapist())},
                        {QStringLiteral("source"), sources.join(QStringLiteral("; "))},
                        {QStringLiteral("asks"), finding.effect() == v1::EFFECT_ASK},
                        {QStringLiteral("fixes"), fixes}};
  }
  return list;
}

DraftModel::DraftModel(DeskContext& context, QObject* parent)
    : QObject(parent),
      m_context(context),
      m_entries(context),
      m_catalogue(context),
      m_review(absl::FailedPreconditionError("no draft")) {
  m_keep.setSingleShot(true);
  m_keep.setInterval(kKeepAfterMs);
  connect(&m_keep, &QTimer::timeout, this, &DraftModel::keepNow);
}

DraftModel::~DraftModel() {
  if (m_keep.isActive()) keepNow();
}

QString DraftModel::draftFolder() const { return m_context.data_folder + QStringLiteral("/drafts"); }

void DraftModel::begin(std::shared_ptr<const PersonFile> file) {
  if (m_keep.isActive()) keepNow();
  m_file = std::move(file);
  m_notice.clear();
  m_sign_problem.clear();
  m_signing = false;
  const v1::Programme* last = lastProgramme(*m_file);
  const std::uint32_t base = last == nullptr ? 0 : last->number();
  const absl::Status kept = m_draft.load(draftFolder(), m_file->person.id());
  if (kept.ok()) {
    m_notice =
        m_draft.baseNumber() == base
            ? tr("This draft was kept on this desk. \"Start from\" begins anew.")
            : tr("Programme %1 was signed after this draft was begun. What is new is shown against it.")
                  .arg(base);
    m_draft.setBaseNumber(base);
  } else {
    if (kept.code() == absl::StatusCode::kDataLoss) {
      m_notice = tr(
          "A draft kept here could not be read and was set aside. This one begins from the last programme.");
    }
    m_draft.begin(startingDraft(last, m_context.settings, m_file->person.id(), m_file->person.zone(),
                                todayOf(*m_file, m_context.now())),
                  base);
  }
  m_catalogue.setFilter(QString());
  m_catalogue.showFor(m_file->person);
  takeDays();
  m_selected = m_draft.value().entries().empty() ? -1 : 0;
  refresh();
  emit selectedChanged();
}

void DraftModel::follow(std::shared_ptr<const PersonFile> file) {
  if (!m_file || !file || file->person.id() != m_file->person.id()) return;
  const v1::Programme* last = lastProgramme(*file);
  const std::uint32_t base = last == nullptr ? 0 : last->number();
  m_file = std::move(file);
  if (base != m_draft.baseNumber()) {
    m_draft.setBaseNumber(base);
    m_notice =
        tr("Programme %1 was signed after this draft was begun. What is new is shown against it.").arg(base);
  }
  m_catalogue.showFor(m_file->person);
  refresh();
}

void DraftModel::scheduleKeep() { m_keep.start(); }

void DraftModel::keepNow() {
  m_keep.stop();
  if (!m_file) return;
  const absl::Status status = m_draft.save(draftFolder());
  m_save_problem = status.ok()
                       ? QString()
                       : tr("This draft cannot be kept on this desk: %1. It is lost if the program ends now.")
                             .arg(print::text(std::string(status.message())));
  emit changed();
}

void DraftModel::change(const std::string& key, const std::function<void(v1::Programme&)>& edit) {
  if (!m_file || m_signing) return;
  m_draft.change(key, edit);
  m_sign_problem.clear();
  scheduleKeep();
  refresh();
}

void DraftModel::refresh() {
  const v1::Programme* last = lastProgramme(*m_file);
  m_review = reviewProgramme(m_draft.value(), m_file->person, last, *m_context.catalogue, *m_context.rules,
                             m_context.language);
  m_minutes_before = -1;
  if (last != nullptr) {
    const auto before = reviewProgramme(*last, m_file->person, nullptr, *m_context.catalogue,
                                        *m_context.rules, m_context.language);
    if (before.ok()) m_minutes_before = mostOf(before->minutes_by_weekday);
  }
  m_selected = std::clamp(m_selected, -1, m_draft.value().entries_size() - 1);
  m_entries.show(m_draft.value(), m_review.ok() ? *m_review : Review(), last);
  emit changed();
}

void DraftModel::select(int row) {
  const int kept = std::clamp(row, -1, m_draft.value().entries_size() - 1);
  if (m_selected == kept) return;
  m_selected = kept;
  emit selectedChanged();
}

const v1::Entry* DraftModel::selectedEntry() const {
  return m_selected < 0 || m_selected >= m_draft.value().entries_size()
             ? nullptr
             : &m_draft.value().entries(m_selected);
}

const EntryReview* DraftModel::selectedReview() const {
  const v1::Entry* entry = selectedEntry();
  if (entry == nullptr || !m_review.ok()) return nullptr;
  const auto found = std::find_if(m_review->entries.begin(), m_review->entries.end(),
                                  [&](const EntryReview& review) { return review.entry_id == entry->id(); });
  return found == m_review->entries.end() ? nullptr : &*found;
}

void DraftModel::editSelected(const std::string& key, const std::function<void(v1::Entry&)>& edit) {
  const v1::Entry* entry = selectedEntry();
  if (entry == nullptr) return;
  const std::string joined = key.empty() ? key : entry->id() + "." + key;
  change(joined, [this, &edit](v1::Programme& draft) { edit(*draft.mutable_entries(m_selected)); });
}

void DraftModel::editEntry(const std::string& entry_id, const std::string& key,
                           const std::function<void(v1::Entry&)>& edit) {
  const auto& entries = m_draft.value().entries();
  for (int i = 0; i < entries.size(); ++i) {
    if (entries[i].id() != entry_id) continue;
    std::string joined = key;
    if (!key.empty()) joined.insert(0, entry_id + ".");
    change(joined, [i, &edit](v1::Programme& draft) { edit(*draft.mutable_entries(i)); });
    return;
  }
}

void DraftModel::add(const QString& exercise_id) {
  const v1::Exercise* exercise = m_context.catalogue->find(exercise_id.toStdString());
  if (exercise == nullptr || !m_file) return;
  v1::Entry entry = defaultEntry(*exercise, m_file->person);
  entry.set_id(newRecordId(*m_context.clock, *m_context.random));
  const auto& entries = m_draft.value().entries();
  *entry.mutable_schedule() = entries.empty() ? firstSchedule() : entries[entries.size() - 1].schedule();
  entry.mutable_schedule()->clear_pauses();
  m_selected = entries.size();
  change("", [&entry](v1::Programme& draft) { *draft.add_entries() = entry; });
  emit selectedChanged();
}

void DraftModel::removeSelected() {
  if (selectedEntry() == nullptr) return;
  change("", [this](v1::Programme& draft) { draft.mutable_entries()->DeleteSubrange(m_selected, 1); });
  emit selectedChanged();
}

void DraftModel::moveSelected(int by) {
  const int to = m_selected + by;
  if (selectedEntry() == nullptr || to < 0 || to >= m_draft.value().entries_size()) return;
  const int from = m_selected;
  m_selected = to;
  change("", [from, to](v1::Programme& draft) { draft.mutable_entries()->SwapElements(from, to); });
  emit selectedChanged();
}

void DraftModel::undo() {
  m_draft.undo();
  emit steppedBack();
  takeDays();
  scheduleKeep();
  refresh();
  emit selectedChanged();
}

void DraftModel::redo() {
  m_draft.redo();
  takeDays();
  scheduleKeep();
  refresh();
  emit selectedChanged();
}

v1::Programme DraftModel::startingPoint() const {
  if (!m_file) return {};
  return startingDraft(lastProgramme(*m_file), m_context.settings, m_file->person.id(), m_file->person.zone(),
                       todayOf(*m_file, m_context.now()));
}

void DraftModel::beginWith(v1::Programme fresh) {
  if (!m_file) return;
  const v1::Programme* last = lastProgramme(*m_file);
  std::set<std::string> taken;
  for (auto& entry : *fresh.mutable_entries()) {
    if (!entry.id().empty()) continue;
    if (last != nullptr) {
      for (const auto& before : last->entries()) {
        if (before.exercise_id() != entry.exercise_id() || !taken.insert(before.id()).second) continue;
        entry.set_id(before.id());
        break;
      }
    }
    if (entry.id().empty()) entry.set_id(newRecordId(*m_context.clock, *m_context.random));
  }
  m_notice.clear();
  m_selected = fresh.entries().empty() ? -1 : 0;
  change("", [&fresh](v1::Programme& draft) { draft = fresh; });
  takeDays();
  emit changed();
  emit selectedChanged();
}

void DraftModel::startAgain() { beginWith(startingPoint()); }

void DraftModel::sign() {
  if (!maySign() || m_signing) return;
  // One id for every try, so that a signature whose answer was lost is recognised as this one.
  if (m_draft.value().id().empty()) {
    m_draft.change(
        "", [this](v1::Programme& draft) { draft.set_id(newRecordId(*m_context.clock, *m_context.random)); });
  }
  keepNow();
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = m_draft.value();
  request.mutable_draft()->set_changes(changesForPerson().toStdString());
  request.set_base_number(m_draft.baseNumber());
  m_signing = true;
  m_sign_problem.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Signing"),
      [request](DeskClient* client) -> absl::StatusOr<v1::SignProgrammeReply> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->signProgramme(request);
      },
      [this](const absl::StatusOr<v1::SignProgrammeReply>& reply) { gotSigned(reply); });
}

void DraftModel::gotSigned(const absl::StatusOr<v1::SignProgrammeReply>& reply) {
  m_signing = false;
  if (!reply.ok()) {
    m_sign_problem = problemWords(reply.status(), tr("sign this programme"));
    emit changed();
    return;
  }
  const std::string person_id = m_file->person.id();
  m_file.reset();
  ProgrammeDraft::discard(draftFolder(), person_id);
  emit signedAs(static_cast<int>(reply->programme().number()));
}

}  // namespace newel::desk
