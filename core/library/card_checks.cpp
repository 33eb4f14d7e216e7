#include "core/library/card_checks.h"

#include <algorithm>
#include <functional>

#include "core/library/plain_words.h"
#include "core/library/settings.h"

namespace newel {
namespace {

using Found = std::vector<CatalogueProblem>;

bool isPlain(const std::string& text, const std::string& language) {
  if (language == "en") return readingGrade(text) <= kHardestEnglishGrade;
  if (language == "es") return spanishReadingEase(text) >= kLeastSpanishEase;
  return true;  // no formula of our own for it
}

class PlainCheck {
 public:
  PlainCheck(Found& found, const Catalogue& catalogue, const std::string& language)
      : m_found(found), m_catalogue(catalogue), m_language(language) {}

  void text(const std::string& path, const std::string& text) {
    for (const std::string& name : settingsNamedIn(text)) {
      if (m_catalogue.setting(name) == nullptr)
        m_found.push_back({path, "there is no setting \"" + name + "\""});
    }
    const std::string said = withSettings(text, usualSettings(m_catalogue));
    if (!said.empty() && !isPlain(said, m_language))
      m_found.push_back({path, "is too hard to read: " + said});
  }

 private:
  Found& m_found;
  const Catalogue& m_catalogue;
  const std::string m_language;
};

}  // namespace

Found problemsOfCard(const v1::AdviceWords& words, const Catalogue& catalogue) {
  Found found;
  const v1::AdviceCard* card = catalogue.card(words.card_id());
  if (card == nullptr) return {{"card_id", "there is no such card"}};
  const bool asks = card->log() != v1::ADVICE_LOG_NOTHING;
  if (asks == words.log_question().empty())
    found.push_back({"log_question", asks ? "is missing" : "the card has nothing to write down"});
  PlainCheck plain(found, catalogue, words.language());
  plain.text("why", words.why());
  plain.text("log_question", words.log_question());
  for (int i = 0; i < words.steps_size(); ++i) plain.text("steps[" + std::to_string(i) + "]", words.steps(i));
  for (int i = 0; i < words.call_if_size(); ++i)
    plain.text("call_if[" + std::to_string(i) + "]", words.call_if(i));
  return found;
}

Found problemsOfMovement(const v1::Movement& movement) {
  // The rules for phases are the exercise's own.
  v1::Exercise exercise;
  exercise.set_dose_kind(movement.dose_kind());
  *exercise.mutable_default_dose() = movement.usual_dose();
  *exercise.mutable_parts() = movement.parts();
  *exercise.mutable_side_policies() = movement.side_policies();
  exercise.set_change_side_s(movement.change_side_s());
  exercise.set_both_sides(v1::BOTH_SIDES_SAME);
  return problemsOf(exercise, Catalogue());
}

Found problemsOfSetting(const v1::SettingKind& setting) {
  Found found;
  for (const auto& [language, words] : setting.words()) {
    if (words.title().find('{') != std::string::npos)
      found.push_back({"words", "a title has no placeholder"});
  }
  return found;
}

}  // namespace newel
