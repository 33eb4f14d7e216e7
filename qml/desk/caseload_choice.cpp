// CaseloadModel: several rows at once, for what is sent to many.
#include <algorithm>

#include "qml/desk/caseload_model.h"

namespace newel::desk {

void CaseloadModel::setChoosing(bool choosing) {
  if (m_choosing == choosing && (choosing || m_chosen.empty())) return;
  m_choosing = choosing;
  if (!choosing) m_chosen.clear();
  if (count() > 0) emit dataChanged(index(0), index(count() - 1), {Chosen});
  emit choiceChanged();
}

void CaseloadModel::toggleChosen(const QString& person_id) {
  const std::string id = person_id.toStdString();
  const auto place = m_place.find(id);
  if (place == m_place.end()) return;
  m_choosing = true;
  if (m_chosen.erase(id) == 0) m_chosen.insert(id);
  const auto shown = std::lower_bound(m_shown.begin(), m_shown.end(), place->second);
  if (shown != m_shown.end() && *shown == place->second) {
    const QModelIndex at = index(static_cast<int>(shown - m_shown.begin()));
    emit dataChanged(at, at, {Chosen});
  }
  emit choiceChanged();
}

void CaseloadModel::chooseShown() {
  m_choosing = true;
  for (const std::size_t at : m_shown) m_chosen.insert(m_entries[at].attention.person_id);
  if (count() > 0) emit dataChanged(index(0), index(count() - 1), {Chosen});
  emit choiceChanged();
}

// Who is not this account's any more is not written to.
void CaseloadModel::dropGone() {
  const std::size_t before = m_chosen.size();
  std::erase_if(m_chosen, [this](const std::string& id) { return !m_place.contains(id); });
  if (m_chosen.size() != before) emit choiceChanged();
}

std::vector<CaseloadModel::ChosenPerson> CaseloadModel::chosen() const {
  std::vector<ChosenPerson> people;
  for (const auto& entry : m_entries) {
    if (m_chosen.contains(entry.attention.person_id))
      people.push_back({entry.attention.person_id, entry.name, entry.limbs});
  }
  return people;
}

}  // namespace newel::desk
