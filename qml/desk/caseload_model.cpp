#include "qml/desk/caseload_model.h"

#include <QtCore/QVariantList>
#include <algorithm>
#include <cmath>

#include "core/time/local_day.h"
#include "qml/desk/attention_words.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr int kWeeks = 8;

QVariantList sharesOf(const std::vector<std::optional<double>>& weeks) {
  QVariantList list;
  for (const auto& week : weeks) list << (week ? QVariant(*week) : QVariant());
  return list;
}

}  // namespace

CaseloadModel::CaseloadModel(DeskContext& context, QObject* parent)
    : QAbstractListModel(parent), m_context(context) {}

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
          {WeeksWords, "weeksWords"}};
}

QVariant CaseloadModel::data(const QModelIndex& index, int role) const {
  const auto at = static_cast<std::size_t>(index.row());
  if (!index.isValid() || at >= m_shown.size()) return {};
  const Row& row = m_rows.at(m_shown[at]);
  switch (role) {
    case PersonId:
      return print::text(row.row.person().id());
    case Name:
      return print::fullName(row.row.identity());
    case Limbs:
      return tr("%1 · %2").arg(print::limbsWords(row.row.person()),
                               print::words(row.row.person().mobility()));
    case UrgencyLevel:
      return static_cast<int>(row.attention.urgency);
    case UrgencyWords:
      return urgencyWords(row.attention.urgency);
    case Reason:
      return row.known ? reasonWords(row.attention.reasons.front(), *m_context.rules)
                       : tr("The record could not be read. Press Read again.");
    case MoreReasons: {
      QStringList more;
      for (std::size_t i = 1; i < row.attention.reasons.size(); ++i) {
        more << reasonWords(row.attention.reasons[i], *m_context.rules);
      }
      return more;
    }
    case Age:
      return figuresWords(row.attention);
    case Fresh:
      return row.attention.figures == Figures::Fresh;
    case Weeks:
      return sharesOf(row.weeks);
    case WeeksWords:
      return weeksWords(row);
    default:
      return {};
  }
}

QString CaseloadModel::weeksWords(const Row& row) const {
  QStringList words;
  for (const auto& week : row.weeks) {
    words << (week ? tr("%1 %").arg(std::lround(*week * 100)) : tr("no data"));
  }
  return tr("Done of due, week by week, oldest first: %1").arg(words.join(QStringLiteral(", ")));
}

void CaseloadModel::setFilter(const QString& filter) {
  if (m_filter == filter) return;
  m_filter = filter;
  emit filterChanged();
  show();
}

QString CaseloadModel::summary() const {
  int silent = 0;
  for (const auto& [id, row] : m_rows) {
    if (row.known && row.facts.paired && row.attention.figures != Figures::Fresh) ++silent;
  }
  QString words = total() == 1 ? tr("1 person") : tr("%1 people").arg(total());
  if (count() != total()) words += tr(" · %1 shown").arg(count());
  if (silent > 0) {
    words += tr(" · %1 not heard from for %2 days").arg(silent).arg(kStaleAfterDays);
  } else if (total() > 0) {
    words += tr(" · all paired phones heard from");
  }
  return words;
}

void CaseloadModel::clear() {
  beginResetModel();
  m_rows.clear();
  m_sorted.clear();
  m_shown.clear();
  m_to_read.clear();
  endResetModel();
  m_news.clear();
  m_filter.clear();
  m_mine_only = false;
  m_stale = false;
  m_loading = false;
  emit filterChanged();
  emit changed();
}

QStringList CaseloadModel::openedWords(const std::string& account_id, absl::Time now) const {
  QStringList words;
  for (const auto& [id, row] : m_rows) {
    for (const auto& opening : row.row.openings()) {
      if (opening.therapist_id() != account_id || toTime(opening.until()) <= now) continue;
      words << tr("%1 until %2")
                   .arg(print::fullName(row.row.identity()),
                        print::momentWords(toTime(opening.until()), m_context.zone));
      break;
    }
  }
  return words;
}

void CaseloadModel::rest() {
  m_to_read.clear();
  m_loading = false;
  emit changed();
}

bool CaseloadModel::seesOthers() const {
  return std::any_of(m_rows.begin(), m_rows.end(), [](const auto& row) { return !row.second.row.mine(); });
}

void CaseloadModel::setMineOnly(bool mine) {
  if (m_mine_only == mine) return;
  m_mine_only = mine;
  emit filterChanged();
  show();
}

void CaseloadModel::reload() {
  m_loading = true;
  m_problem.clear();
  m_read = 0;
  m_context.worker->dropLater();
  emit changed();
  m_context.worker->run(
      this, tr("Reading the caseload"),
      [](DeskClient* client) -> absl::StatusOr<std::vector<v1::CaseRow>> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->caseload();
      },
      [this](absl::StatusOr<std::vector<v1::CaseRow>> rows) {
        if (rows.ok()) {
          gotRows(*std::move(rows));
          return;
        }
        m_loading = false;
        m_problem = problemWords(rows.status(), tr("read the caseload"));
        emit changed();
        if (rows.status().code() == absl::StatusCode::kUnauthenticated) emit sessionEnded(rows.status());
      });
}

void CaseloadModel::gotRows(std::vector<v1::CaseRow> rows) {
  std::map<std::string, Row> fresh;
  m_to_read.clear();
  for (auto& row : rows) {
    const std::string id = row.person().id();
    const auto known = m_rows.find(id);
    if (known != m_rows.end()) fresh[id] = known->second;
    fresh[id].row = std::move(row);
    if (!fresh[id].known) judge(fresh[id]);
    m_to_read.push_back(id);
  }
  m_rows = std::move(fresh);
  m_read = 0;
  if (m_to_read.empty()) {
    m_loading = false;
    sortAgain();
    return;
  }
  std::reverse(m_to_read.begin(), m_to_read.end());
  emit changed();
  readNext();
}

// One after another, each behind whatever a therapist waits for.
void CaseloadModel::readNext() {
  if (m_to_read.empty()) {
    m_loading = false;
    sortAgain();
    return;
  }
  const std::string id = m_to_read.back();
  m_to_read.pop_back();
  readOne(id, false);
}

void CaseloadModel::readOne(const std::string& person_id, bool at_once) {
  m_context.worker->run(
      this, tr("Reading a record"),
      [person_id](DeskClient* client) -> absl::StatusOr<PersonFile> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return fetchPerson(*client, person_id, false);
      },
      [this, person_id, at_once](const absl::StatusOr<PersonFile>& file) {
        gotFile(person_id, file);
        if (!at_once) {
          ++m_read;
          emit changed();
          readNext();
        }
      },
      HubWorker::Turn::Later);
}

void CaseloadModel::judge(Row& row) const {
  const absl::CivilDay today = localDayAt(m_context.now(), m_context.zone);
  if (row.facts.person_id.empty()) row.facts.person_id = row.row.person().id();
  row.attention = attentionList({row.facts}, m_context.now(), today, silentDays(m_context)).front();
}

void CaseloadModel::gotFile(const std::string& person_id, const absl::StatusOr<PersonFile>& file) {
  const auto found = m_rows.find(person_id);
  if (found == m_rows.end()) return;
  Row& row = found->second;
  row.known = file.ok();
  if (file.ok()) {
    *row.row.mutable_person() = file->person;
    *row.row.mutable_identity() = file->identity;
    row.facts = attentionFactsOf(*file, *m_context.rules, m_context.now(), row.row.unread_messages());
    row.weeks = weekShares(*file, m_context.now(), kWeeks);
  } else if (file.status().code() == absl::StatusCode::kUnauthenticated) {
    emit sessionEnded(file.status());
    return;
  }
  judge(row);
  const auto shown = std::find(m_shown.begin(), m_shown.end(), person_id);
  if (shown == m_shown.end()) return;
  const QModelIndex at = index(static_cast<int>(shown - m_shown.begin()));
  emit dataChanged(at, at);
  if (!m_loading && order() != m_sorted) {
    m_stale = true;
    m_news = tr("New: %1. %2")
                 .arg(print::fullName(row.row.identity()),
                      reasonWords(row.attention.reasons.front(), *m_context.rules));
    emit changed();
  }
}

std::vector<std::string> CaseloadModel::order() const {
  std::vector<AttentionFacts> facts;
  facts.reserve(m_rows.size());
  for (const auto& [id, row] : m_rows) facts.push_back(row.facts);
  std::vector<std::string> ids;
  for (const auto& row : attentionList(facts, m_context.now(), localDayAt(m_context.now(), m_context.zone),
                                       silentDays(m_context))) {
    ids.push_back(row.person_id);
  }
  return ids;
}

void CaseloadModel::sortAgain() {
  m_stale = false;
  m_news.clear();
  for (auto& [id, row] : m_rows) judge(row);
  m_sorted = order();
  show();
}

bool CaseloadModel::matches(const Row& row) const {
  if (m_mine_only && !row.row.mine()) return false;
  const QString wanted = m_filter.trimmed();
  if (wanted.isEmpty()) return true;
  const QString all = print::fullName(row.row.identity()) + QLatin1Char(' ') +
                      print::limbsWords(row.row.person()) + QLatin1Char(' ') +
                      urgencyWords(row.attention.urgency) + QLatin1Char(' ') +
                      (row.known ? reasonWords(row.attention.reasons.front(), *m_context.rules) : QString());
  const QStringList parts = wanted.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::all_of(parts.begin(), parts.end(),
                     [&all](const QString& part) { return all.contains(part, Qt::CaseInsensitive); });
}

void CaseloadModel::show() {
  beginResetModel();
  m_shown.clear();
  for (const auto& id : m_sorted) {
    if (matches(m_rows.at(id))) m_shown.push_back(id);
  }
  endResetModel();
  emit changed();
}

void CaseloadModel::nudge(const std::string& person_id) {
  if (m_loading) return;
  if (person_id.empty() || !m_rows.contains(person_id)) {
    reload();
    return;
  }
  m_context.worker->run(
      this, tr("Reading a record"),
      [](DeskClient* client) -> absl::StatusOr<std::vector<v1::CaseRow>> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->caseload();
      },
      [this, person_id](absl::StatusOr<std::vector<v1::CaseRow>> rows) {
        if (!rows.ok()) return;  // the next reload says so
        for (auto& row : *rows) {
          const auto found = m_rows.find(row.person().id());
          if (found != m_rows.end()) found->second.row = std::move(row);
        }
        readOne(person_id, true);
      },
      HubWorker::Turn::Later);
}

}  // namespace newel::desk
