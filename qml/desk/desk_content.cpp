#include "qml/desk/desk_content.h"

#include <utility>

namespace newel::desk {

void DeskContent::takeOwn(std::vector<v1::OwnExercise> own) {
  m_own = std::move(own);
  if (m_own.empty()) {
    m_context.catalogue = &Catalogue::builtIn();
    return;
  }
  m_catalogues.push_back(Catalogue::builtIn().with(m_own));
  m_context.catalogue = &m_catalogues.back();
}

void DeskContent::takeSettings(const v1::ClinicSettings& settings) {
  m_context.settings = settingValues(settings, Catalogue::builtIn());
  m_rules.push_back(RuleBook::builtIn().with(m_context.settings, m_context.language));
  m_context.rules = &m_rules.back();
}

void DeskContent::forget() {
  takeOwn({});
  takeSettings({});
}

}  // namespace newel::desk
