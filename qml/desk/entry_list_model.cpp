#include "qml/desk/entry_list_model.h"

#include <google/protobuf/util/message_differencer.h>

#include <algorithm>
#include <cmath>

#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr double kMsPerMinute = 60000;

bool sameEntries(const v1::Programme& left, const v1::Programme& right) {
  return left.entries_size() == right.entries_size() &&
         std::equal(left.entries().begin(), left.entries().end(), right.entries().begin(),
                    [](const v1::Entry& one, const v1::Entry& other) { return one.id() == other.id(); });
}

}  // namespace

QStringList entryTitles(const v1::Programme& programme, const Catalogue& catalogue,
                        const std::string& language) {
  QStringList titles;
  QMap<QString, int> seen;
  for (const auto& entry : programme.entries()) {
    const QString title = print::titleOf(catalogue, entry.exercise_id(), language);
    const int number = ++seen[title];
    titles << (number == 1 ? title : QStringLiteral("%1 (%2)").arg(title).arg(number));
  }
  return titles;
}

QHash<int, QByteArray> EntryListModel::roleNames() const {
  return {{EntryId, "entryId"},       {Title, "title"},     {Dose, "dose"},
          {Details, "details"},       {Minutes, "minutes"}, {Worst, "worst"},
          {WorstWords, "worstWords"}, {Changed, "changed"}};
}

const EntryReview* EntryListModel::reviewOf(int row) const {
  const auto found =
      std::find_if(m_review.entries.begin(), m_review.entries.end(),
                   [&](const EntryReview& review) { return review.entry_id == m_draft.entries(row).id(); });
  return found == m_review.entries.end() ? nullptr : &*found;
}

bool EntryListModel::changed(const v1::Entry& entry) const {
  if (!m_has_last) return false;
  const auto found = std::find_if(m_last.entries().begin(), m_last.entries().end(),
                                  [&](const v1::Entry& other) { return other.id() == entry.id(); });
  return found == m_last.entries().end() ||
         !google::protobuf::util::MessageDifferencer::Equals(*found, entry);
}

QVariant EntryListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const v1::Entry& entry = m_draft.entries(index.row());
  const EntryReview* review = reviewOf(index.row());
  const v1::Finding* worst =
      review == nullptr || review->findings.empty() ? nullptr : &review->findings.front();
  switch (role) {
    case EntryId:
      return print::text(entry.id());
    case Title:
      return m_titles.value(index.row());
    case Dose:
      return print::doseWords(entry.dose());
    case Details:
      return QStringList{print::words(entry.support()), print::words(entry.prosthesis()),
                         print::scheduleWords(entry.schedule())}
          .join(QStringLiteral(" · "));
    case Minutes:
      return review == nullptr || review->total_ms == 0
                 ? QString()
                 : tr("%1 min").arg(
                       std::max(1.0, std::ceil(static_cast<double>(review->total_ms) / kMsPerMinute)));
    case Worst:
      if (review != nullptr && !review->problem.empty()) return static_cast<int>(v1::EFFECT_BLOCK);
      return worst == nullptr ? 0 : static_cast<int>(worst->effect());
    case WorstWords:
      if (review != nullptr && !review->problem.empty()) return print::text(review->problem);
      if (worst == nullptr) return QString();
      return tr("%1: %2").arg(print::words(worst->effect()), print::text(worst->therapist()));
    case Changed:
      return changed(entry);
    default:
      return {};
  }
}

void EntryListModel::show(const v1::Programme& draft, const Review& review, const v1::Programme* last) {
  const bool same = sameEntries(m_draft, draft);
  if (!same) beginResetModel();
  m_draft = draft;
  m_review = review;
  m_has_last = last != nullptr;
  m_last = last == nullptr ? v1::Programme() : *last;
  m_titles = entryTitles(draft, *m_context.catalogue, m_context.language);
  if (same) {
    if (count() > 0) emit dataChanged(index(0), index(count() - 1));
  } else {
    endResetModel();
    emit countChanged();
  }
}

}  // namespace newel::desk
