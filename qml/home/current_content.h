// The catalogue and the rules as they are for this person: the program's own, with the clinic's exercises
// that the signed programmes carry and the clinic's settings. Not here: which of them is due (today_model.h).
#pragma once

#include <deque>
#include <string>

#include "qml/home/home_parts.h"

namespace newel::home {

// UI thread. Everything it ever gave out stays valid as long as it lives: a practice that runs goes on with
// the catalogue it began with.
class CurrentContent {
 public:
  // `parts` outlives it, and its catalogue, rules and settings are set here.
  explicit CurrentContent(HomeParts& parts);

  // Reads what is built into the program, once; any thread, before or while one of these is made.
  static void readBuiltIn();

  // To be called when a programme or the clinic's card has come, before anything that shows them.
  void refresh();

 private:
  HomeParts& m_parts;
  std::string m_own;  // what the current catalogue was made from
  SettingValues m_settings;
  std::deque<Catalogue> m_catalogues;
  std::deque<RuleBook> m_rules;
};

}  // namespace newel::home
