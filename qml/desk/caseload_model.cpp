#include "qml/desk/caseload_model.h"

#include <algorithm>
#include <cmath>

#include "core/time/local_day.h"
#include "qml/desk/attention_words.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

QVariantList sharesOf(const std::vector<std::optional<double>>& weeks) {
  QVariantList list;
  for (const auto& week : weeks) list << (week ? QVariant(*week) : QVariant());
  return list;
}

int levelOf(const CaseloadEntry& entry) {
  return entry.attention.snoozed ? CaseloadModel::kWaitingLevel : static_cast<int>(entry.attention.urgency);
}

bool sorts(const CaseloadEntry& left, const CaseloadEntry& right) {
  return comesBefore(left.attention, right.attention);
}

QVariantMap choice(int value, const QString& words, int count) {
  return {{QStringLiteral("value"), value},
          {QStringLiteral("text"), QStringLiteral("%1 %2").arg(words).arg(count)}};
}

}  // namespace

CaseloadModel::CaseloadModel(DeskContext& context, QObject* parent)
    : QAbstractListModel(parent), m_context(context), m_urgency_counts(5), m_kind_counts(kReasonKinds) {}

CaseloadModel::~CaseloadModel() { *m_wanted = false; }

int CaseloadModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : count(); }

QHash<int, QByteArray> CaseloadModel::roleNames() const {
  return {{PersonId, "personId"},
          {Name, "name"},
          {Limbs, "limbs"},
          {UrgencyLevel, "urgency"},
          {UrgencyWords, "urgencyWords"},
          {Reason, "reason"},
          {MoreReasons, "moreReasons"},
          {Age, "age"},
          {Fresh, "fresh"},
          {Weeks, "weeks"},
          {WeeksWords, "weeksWords"},
          {Waiting, "waiting"},
          {WaitingWords, "waitingWords"},
          {MayWait, "mayWait"},
          {Chosen, "chosen"}};
}

QVariant CaseloadModel::data(const QModelIndex& index, int role) const {
  const auto at = static_cast<std::size_t>(index.row());
  if (!index.isValid() || at >= m_shown.size()) return {};
  const CaseloadEntry& entry = m_entries[m_shown[at]];
  const AttentionRow& attention = entry.attention;
  switch (role) {
    case PersonId:
      return print::text(attention.person_id);
    case Name:
      return entry.name;
    case Limbs:
      return entry.limbs;
    case UrgencyLevel:
      return static_cast<int>(attention.urgency);
    case UrgencyWords:
      return urgencyWords(attention.urgency);
    case Reason:
      return entry.known ? reasonWords(attention.reasons.front(), *m_context.rules)
                         : tr("The record could not be read as a whole. Open it and look.");
    case MoreReasons: {
      QStringList more;
      for (std::size_t i = 1; entry.known && i < attention.reasons.size(); ++i) {
        more << reasonWords(attention.reasons[i], *m_context.rules);
      }
      return more;
    }
    case Age:
      return figuresWords(attention);
    case Fresh:
      return attention.figures == Figures::Fresh;
    case Weeks:
      return sharesOf(entry.weeks);
    case WeeksWords:
      return weeksWords(entry);
    case Waiting:
      return attention.snoozed;
    case WaitingWords:
      return waitingWords(entry);
    case MayWait:
      return entry.known && maySnooze(attention);
    case Chosen:
      return m_chosen.contains(attention.person_id);
    default:
      return {};
  }
}

QString CaseloadModel::weeksWords(const CaseloadEntry& entry) const {
  QStringList words;
  for (const auto& week : entry.weeks) {
    words << (week ? tr("%1 %").arg(std::lround(*week * 100)) : tr("no data"));
  }
  return tr("Done of due, week by week, oldest first: %1").arg(words.join(QStringLiteral(", ")));
}

QString CaseloadModel::waitingWords(const CaseloadEntry& entry) const {
  if (!entry.attention.snoozed) return {};
  const v1::Snooze& snooze = entry.row.snooze();
  return tr("Waits until %1: %2 (%3)")
      .arg(print::dayWords(snooze.until_day()), print::text(snooze.reason()),
           print::text(snooze.display_name()));
}

const CaseloadEntry* CaseloadModel::entryOf(const std::string& person_id) const {
  const auto found = m_place.find(person_id);
  return found == m_place.end() ? nullptr : &m_entries[found->second];
}

ListMoment CaseloadModel::moment() const { return {m_context.now(), m_context.zone, silentDays(m_context)}; }

QVariantList CaseloadModel::urgencies() const {
  QVariantList list{choice(-1, tr("All"), total())};
  for (int level = 0; level < kWaitingLevel; ++level) {
    list << choice(level, urgencyWords(static_cast<Urgency>(level)),
                   m_urgency_counts[static_cast<std::size_t>(level)]);
  }
  return list << choice(kWaitingLevel, tr("Waiting"), m_urgency_counts[kWaitingLevel]);
}

QVariantList CaseloadModel::kinds() const {
  QVariantList list{choice(-1, tr("Any reason"), total())};
  for (int kind = 0; kind < kReasonKinds; ++kind) {
    const int count = m_kind_counts[static_cast<std::size_t>(kind)];
    if (count > 0 || kind == m_wanted_kind)
      list << choice(kind, kindWords(static_cast<ReasonKind>(kind)), count);
  }
  return list;
}

void CaseloadModel::setFilter(const QString& filter) {
  if (m_filter == filter) return;
  m_filter = filter;
  emit filterChanged();
  show();
}

void CaseloadModel::setWantedUrgency(int urgency) {
  if (m_wanted_urgency == urgency) return;
  m_wanted_urgency = urgency;
  emit filterChanged();
  show();
}

void CaseloadModel::setWantedKind(int kind) {
  if (m_wanted_kind == kind) return;
  m_wanted_kind = kind;
  emit filterChanged();
  show();
}

void CaseloadModel::setMineOnly(bool mine) {
  if (m_mine_only == mine) return;
  m_mine_only = mine;
  emit filterChanged();
  show();
}

QString CaseloadModel::summary() const {
  QString words = total() == 1 ? tr("1 person") : tr("%L1 people").arg(total());
  if (count() != total()) words += tr(" · %L1 shown").arg(count());
  if (m_silent > 0) {
    words += tr(" · %L1 not heard from for %2 days").arg(m_silent).arg(kStaleAfterDays);
  } else if (total() > 0) {
    words += tr(" · all paired phones heard from");
  }
  return words;
}

void CaseloadModel::countAll() {
  std::vector<int> urgencies(m_urgency_counts.size());
  std::vector<int> kinds(m_kind_counts.size());
  m_silent = 0;
  m_sees_others = false;
  for (const auto& entry : m_entries) {
    ++urgencies[static_cast<std::size_t>(levelOf(entry))];
    for (unsigned kind = 0; kind < kinds.size(); ++kind) {
      if ((entry.kinds >> kind & 1U) != 0) ++kinds[kind];
    }
    if (entry.known && entry.facts.paired && entry.attention.figures != Figures::Fresh) ++m_silent;
    m_sees_others = m_sees_others || !entry.row.mine();
  }
  if (urgencies == m_urgency_counts && kinds == m_kind_counts) return;
  m_urgency_counts = std::move(urgencies);
  m_kind_counts = std::move(kinds);
  emit countsChanged();
}

void CaseloadModel::clear() {
  rest();
  beginResetModel();
  m_entries.clear();
  m_place.clear();
  m_shown.clear();
  endResetModel();
  m_nudged.clear();
  m_news.clear();
  m_filter.clear();
  m_wanted_urgency = m_wanted_kind = -1;
  m_mine_only = false;
  m_stale = false;
  countAll();
  askWait(QString());
  setChoosing(false);
  emit filterChanged();
  emit changed();
}

QStringList CaseloadModel::openedWords(const std::string& account_id, absl::Time now) const {
  QStringList words;
  for (const auto& entry : m_entries) {
    for (const auto& opening : entry.row.openings()) {
      if (opening.therapist_id() != account_id || toTime(opening.until()) <= now) continue;
      words << tr("%1 until %2").arg(entry.name, print::momentWords(toTime(opening.until()), m_context.zone));
      break;
    }
  }
  return words;
}

// Who reads on finds that nobody waits for it.
void CaseloadModel::rest() {
  *m_wanted = false;
  m_wanted = std::make_shared<std::atomic<bool>>(true);
  m_loading = false;
  m_reading_nudged = false;
  emit changed();
}

void CaseloadModel::reload() {
  rest();
  m_loading = true;
  m_problem.clear();
  m_read = 0;
  m_nudged.clear();
  m_context.worker->dropLater();
  emit changed();
  const auto wanted = m_wanted;
  const auto said = [this, wanted, worker = m_context.worker](std::size_t read) {
    if (!*wanted) return false;
    QMetaObject::invokeMethod(
        worker,
        [this, wanted, read] {
          if (!*wanted) return;
          m_read = static_cast<int>(read);
          emit changed();
        },
        Qt::QueuedConnection);
    return true;
  };
  m_context.worker->run(
      this, tr("Reading the caseload"),
      [said, at = moment(),
       rules = m_context.rules](DeskClient* client) -> absl::StatusOr<std::vector<CaseloadEntry>> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        auto rows = client->caseload(said);
        if (!rows.ok()) return rows.status();
        std::vector<CaseloadEntry> entries;
        entries.reserve(rows->size());
        for (auto& row : *rows) entries.push_back(caseloadEntry(std::move(row), at, *rules));
        std::sort(entries.begin(), entries.end(), sorts);
        return entries;
      },
      [this, wanted](absl::StatusOr<std::vector<CaseloadEntry>> entries) {
        if (!*wanted) return;
        if (entries.ok()) {
          gotEntries(*std::move(entries));
        } else {
          failed(entries.status());
        }
      });
}

void CaseloadModel::failed(const absl::Status& status) {
  m_loading = false;
  m_problem = problemWords(status, tr("read the caseload"));
  emit changed();
  if (status.code() == absl::StatusCode::kUnauthenticated) emit sessionEnded(status);
}

// Sorted already.
void CaseloadModel::gotEntries(std::vector<CaseloadEntry> entries) {
  beginResetModel();
  m_shown.clear();
  m_entries = std::move(entries);
  m_place.clear();
  for (std::size_t i = 0; i < m_entries.size(); ++i) m_place[m_entries[i].attention.person_id] = i;
  endResetModel();
  m_loading = false;
  m_stale = false;
  m_news.clear();
  dropGone();
  show();
  readNudged();
}

void CaseloadModel::sortAgain() {
  std::vector<CaseloadEntry> entries = std::move(m_entries);
  for (auto& entry : entries) judgeAgain(entry, moment(), *m_context.rules);
  std::sort(entries.begin(), entries.end(), sorts);
  gotEntries(std::move(entries));
}

bool CaseloadModel::matches(const CaseloadEntry& entry) const {
  if (m_mine_only && !entry.row.mine()) return false;
  if (m_wanted_urgency >= 0 && levelOf(entry) != m_wanted_urgency) return false;
  if (m_wanted_kind >= 0 && (entry.kinds >> static_cast<unsigned>(m_wanted_kind) & 1U) == 0) return false;
  const QStringList parts = m_filter.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::all_of(parts.begin(), parts.end(),
                     [&entry](const QString& part) { return entry.search.contains(part); });
}

void CaseloadModel::show() {
  beginResetModel();
  m_shown.clear();
  for (std::size_t i = 0; i < m_entries.size(); ++i) {
    if (matches(m_entries[i])) m_shown.push_back(i);
  }
  endResetModel();
  countAll();
  emit changed();
}

void CaseloadModel::nudge(const std::string& person_id) {
  if (person_id.empty() || !m_place.contains(person_id)) {
    if (!m_loading) reload();
    return;
  }
  m_nudged.insert(person_id);
  if (!m_loading) readNudged();
}

// One after another, each behind whatever a therapist waits for. Who changes again meanwhile is read once
// more.
void CaseloadModel::readNudged() {
  if (m_nudged.empty() || m_reading_nudged) return;
  m_reading_nudged = true;
  const std::string person_id = *m_nudged.begin();
  m_nudged.erase(m_nudged.begin());
  m_context.worker->run(
      this, tr("Reading a record"),
      [person_id](DeskClient* client) -> absl::StatusOr<v1::CaseRow> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->caseRow(person_id);
      },
      [this, person_id, wanted = m_wanted](absl::StatusOr<v1::CaseRow> row) {
        if (!*wanted) return;
        m_reading_nudged = false;
        gotRow(person_id, std::move(row));
        readNudged();
      },
      HubWorker::Turn::Later);
}

bool CaseloadModel::standsRight(std::size_t place) const {
  const bool after = place == 0 || !sorts(m_entries[place], m_entries[place - 1]);
  return after && (place + 1 == m_entries.size() || !sorts(m_entries[place + 1], m_entries[place]));
}

void CaseloadModel::gotRow(const std::string& person_id, absl::StatusOr<v1::CaseRow> row) {
  const auto found = m_place.find(person_id);
  if (found == m_place.end()) return;
  if (absl::IsUnauthenticated(row.status())) {
    emit sessionEnded(row.status());
    return;
  }
  if (absl::IsNotFound(row.status()) || absl::IsPermissionDenied(row.status())) {
    reload();  // not this account's any more
    return;
  }
  if (!row.ok()) return;  // the next reload says so
  CaseloadEntry& entry = m_entries[found->second];
  entry = caseloadEntry(*std::move(row), moment(), *m_context.rules);
  countAll();
  const auto shown = std::lower_bound(m_shown.begin(), m_shown.end(), found->second);
  if (shown != m_shown.end() && *shown == found->second) {
    const QModelIndex at = index(static_cast<int>(shown - m_shown.begin()));
    emit dataChanged(at, at);
  }
  if (!standsRight(found->second)) {
    m_stale = true;
    m_news =
        tr("New: %1. %2").arg(entry.name, reasonWords(entry.attention.reasons.front(), *m_context.rules));
  }
  emit changed();
}

QString CaseloadModel::waitName() const {
  const CaseloadEntry* entry = entryOf(m_wait_for);
  return entry == nullptr ? QString() : entry->name;
}

QVariantList CaseloadModel::waitDays() const {
  QVariantList list;
  const absl::CivilDay today = localDayAt(m_context.now(), m_context.zone);
  for (const int days : {1, 3, 7, 14, 28}) {
    const absl::CivilDay day = today + days;
    list << QVariantMap{{QStringLiteral("value"), QString::fromStdString(formatLocalDay(day))},
                        {QStringLiteral("text"), print::dayWords(day)}};
  }
  return list;
}

void CaseloadModel::askWait(const QString& person_id) {
  m_wait_for = person_id.toStdString();
  m_wait_problem.clear();
  emit waitChanged();
}

void CaseloadModel::letWait(const QString& reason, const QString& until_day) {
  if (m_wait_for.empty()) return;
  if (reason.trimmed().size() < 3) {
    m_wait_problem = tr("Say in a few words why it can wait: colleagues see them.");
    emit waitChanged();
    return;
  }
  putWait(m_wait_for, reason.trimmed(), until_day);
}

void CaseloadModel::endWait(const QString& person_id) { putWait(person_id.toStdString(), {}, {}); }

void CaseloadModel::putWait(const std::string& person_id, const QString& reason, const QString& until_day) {
  m_context.worker->run(
      this, tr("Saving"),
      [person_id, words = reason.toStdString(), day = until_day.toStdString()](DeskClient* client) {
        if (client == nullptr) return absl::StatusOr<v1::Snooze>(absl::UnauthenticatedError("not signed in"));
        return client->snooze(person_id, words, day);
      },
      [this, person_id](const absl::StatusOr<v1::Snooze>& snooze) {
        if (absl::IsUnauthenticated(snooze.status())) {
          emit sessionEnded(snooze.status());
        } else if (!snooze.ok()) {
          m_wait_problem = absl::IsFailedPrecondition(snooze.status())
                               ? tr("This cannot wait any more: something new came. Read again.")
                               : problemWords(snooze.status(), tr("save that it can wait"));
          emit waitChanged();
        } else {
          askWait(QString());
          nudge(person_id);
        }
      });
}

}  // namespace newel::desk
