// The catalogue and the rules of the clinic that this desk is signed in to: the program's own, with the
// clinic's exercises and settings. Not here: writing them (own_exercise_model.h, clinic_settings_model.h).
#pragma once

#include <deque>
#include <vector>

#include "qml/desk/desk_context.h"

namespace newel::desk {

// UI thread. Everything it ever gave out stays valid as long as it lives.
class DeskContent {
 public:
  // `context` outlives it; its catalogue, rules and settings are set here.
  explicit DeskContent(DeskContext& context) : m_context(context) {}

  void takeOwn(std::vector<v1::OwnExercise> own);  // every revision of each
  void takeSettings(const v1::ClinicSettings& settings);
  const std::vector<v1::OwnExercise>& own() const { return m_own; }
  // Back to what the program brings, in this desk's language: nobody is signed in.
  void forget();

 private:
  DeskContext& m_context;
  std::vector<v1::OwnExercise> m_own;
  std::deque<Catalogue> m_catalogues;
  std::deque<RuleBook> m_rules;
};

}  // namespace newel::desk
