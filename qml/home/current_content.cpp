#include "qml/home/current_content.h"

#include <vector>

#include "core/records/record_text.h"

namespace newel::home {

CurrentContent::CurrentContent(HomeParts& parts) : m_parts(parts) {
  m_parts.catalogue = &Catalogue::builtIn();
  m_parts.rules = &RuleBook::builtIn();
  m_parts.settings = m_settings = usualSettings(*m_parts.catalogue);
  refresh();
}

void CurrentContent::readBuiltIn() {
  Catalogue::builtIn();
  RuleBook::builtIn();
}

void CurrentContent::refresh() {
  std::vector<v1::OwnExercise> own;
  std::string names;
  for (const v1::Programme& programme : m_parts.engine->programmes()) {
    for (const v1::OwnExercise& exercise : programme.own_exercises()) {
      own.push_back(exercise);
      names += exercise.exercise().id() + " " + std::to_string(exercise.exercise().revision()) + " ";
    }
  }
  if (names != m_own) {
    m_own = names;
    m_catalogues.push_back(Catalogue::builtIn().with(own));
    m_parts.catalogue = &m_catalogues.back();
  }
  const auto card = m_parts.engine->clinic();
  const SettingValues settings =
      settingValues(card.has_value() ? card->settings() : v1::ClinicSettings(), *m_parts.catalogue);
  if (settings == m_settings) return;
  m_settings = settings;
  m_parts.settings = settings;
  m_rules.push_back(RuleBook::builtIn().with(settings));
  m_parts.rules = &m_rules.back();
}

}  // namespace newel::home
