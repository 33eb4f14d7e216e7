#include "qml/desk/catalogue_list_model.h"

#include <algorithm>

#include "core/library/default_entry.h"
#include "core/library/wording.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

QString factsOf(const v1::Exercise& exercise, const Catalogue& catalogue, const std::string& language) {
  const auto phrase = [&](const char* group, const std::string& name, const char* prefix) {
    return print::text(catalogue.phrase(phraseKey(group, name, prefix), language));
  };
  QStringList parts{phrase("purpose", v1::Purpose_Name(exercise.purpose()), "PURPOSE_"),
                    phrase("position", v1::Position_Name(exercise.position()), "POSITION_")};
  for (const int equipment : exercise.equipment()) {
    parts << phrase("equipment", v1::Equipment_Name(static_cast<v1::Equipment>(equipment)), "EQUIPMENT_");
  }
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

}  // namespace

QHash<int, QByteArray> CatalogueListModel::roleNames() const {
  return {{ExerciseId, "exerciseId"}, {Title, "title"}, {Purpose, "purpose"},
          {Facts, "facts"},           {Worst, "worst"}, {WorstWords, "worstWords"}};
}

QVariant CatalogueListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const Row& row = m_rows[m_shown[static_cast<std::size_t>(index.row())]];
  switch (role) {
    case ExerciseId:
      return print::text(row.exercise->id());
    case Title:
      return row.title;
    case Purpose:
      return row.purpose;
    case Facts:
      return row.facts;
    case Worst:
      return static_cast<int>(row.worst);
    case WorstWords:
      return row.worst_words;
    default:
      return {};
  }
}

void CatalogueListModel::showFor(const v1::Person& person) {
  m_rows.clear();
  for (const auto& exercise : m_context.catalogue->exercises()) {
    Row row;
    row.exercise = &exercise;
    row.title = print::titleOf(*m_context.catalogue, exercise.id(), m_context.language);
    const v1::ExerciseWords* words = wordsOrEnglish(*m_context.catalogue, exercise.id(), m_context.language);
    if (words != nullptr) row.purpose = print::text(words->purpose());
    row.facts = factsOf(exercise, *m_context.catalogue, m_context.language);
    const auto findings =
        m_context.rules->check(defaultEntry(exercise, person), person, *m_context.catalogue);
    if (findings.ok() && !findings->empty()) {
      row.worst = findings->front().effect();
      row.worst_words = tr("%1: %2").arg(print::words(row.worst), print::text(findings->front().therapist()));
    }
    m_rows.push_back(row);
  }
  refresh();
}

void CatalogueListModel::setFilter(const QString& filter) {
  if (m_filter == filter) return;
  m_filter = filter;
  emit filterChanged();
  refresh();
}

void CatalogueListModel::refresh() {
  beginResetModel();
  m_shown.clear();
  const QStringList wanted = m_filter.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    const QString all =
        m_rows[i].title + QLatin1Char(' ') + m_rows[i].purpose + QLatin1Char(' ') + m_rows[i].facts;
    if (std::all_of(wanted.begin(), wanted.end(),
                    [&all](const QString& part) { return all.contains(part, Qt::CaseInsensitive); })) {
      m_shown.push_back(i);
    }
  }
  endResetModel();
  emit countChanged();
}

}  // namespace newel::desk
