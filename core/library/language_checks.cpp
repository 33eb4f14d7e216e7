#include "core/library/language_checks.h"

#include <set>
#include <string>

#include "core/library/counted.h"

namespace newel {
namespace {

using Found = std::vector<CatalogueProblem>;

void checkSameKeys(Found& found, const v1::PhraseFile& phrases, const Catalogue& catalogue) {
  for (const std::string& key : catalogue.keysOf("", "en")) {
    if (!phrases.phrases().contains(key))
      found.push_back({"", "no phrase \"" + key + "\", which English has"});
  }
  for (const auto& [key, text] : phrases.phrases()) {
    if (catalogue.phrase(key, "en").empty())
      found.push_back({"phrases[" + key + "]", "English has no such phrase"});
  }
}

void checkPlurals(Found& found, const v1::PhraseFile& phrases, const Catalogue& catalogue) {
  for (const std::string& key : catalogue.pluralKeys("en")) {
    if (!phrases.plurals().contains(key))
      found.push_back({"", "no counted phrase \"" + key + "\", which English has"});
  }
  const std::set<std::string> categories = pluralCategories(phrases.language());
  for (const auto& [key, plural] : phrases.plurals()) {
    const std::string path = "plurals[" + key + "]";
    if (catalogue.plural(key, "en") == nullptr) found.push_back({path, "English has no such counted phrase"});
    std::set<std::string> given;
    for (const auto& [category, text] : plural.forms()) {
      given.insert(category);
      // "one" may be written out ("one set"), and so may "two" and "zero" where they are one number alone.
      if ((category == "other" || category == "many") && text.find("{n}") == std::string::npos)
        found.push_back({path, "\"" + category + "\" does not say {n}"});
    }
    for (const std::string& category : categories) {
      if (!given.contains(category)) found.push_back({path, "has no form \"" + category + "\""});
    }
    for (const std::string& category : given) {
      if (!categories.contains(category))
        found.push_back({path, "the language has no form \"" + category + "\""});
    }
  }
}

std::vector<std::string> claimedExercises(const v1::PhraseFile& phrases, const Catalogue& catalogue) {
  std::vector<std::string> ids(phrases.claim().exercises().begin(), phrases.claim().exercises().end());
  if (!phrases.claim().whole() && phrases.language() != "en") return ids;
  for (const v1::Exercise& exercise : catalogue.exercises()) ids.push_back(exercise.id());
  return ids;
}

template <typename Records>
void checkWordsOf(Found& found, const Records& records, const std::string& what,
                  const std::string& language) {
  for (const auto& record : records) {
    if (!record.words().contains(language))
      found.push_back({"claim", "the " + what + " " + record.id() + " has no words in this language"});
  }
}

}  // namespace

Found problemsOfLanguage(const v1::PhraseFile& phrases, const Catalogue& catalogue) {
  Found found;
  checkSameKeys(found, phrases, catalogue);
  checkPlurals(found, phrases, catalogue);
  const std::string& language = phrases.language();
  for (const std::string& id : claimedExercises(phrases, catalogue)) {
    if (catalogue.find(id) == nullptr) found.push_back({"claim", "there is no exercise \"" + id + "\""});
    if (catalogue.words(id, language) == nullptr)
      found.push_back({"claim", "the exercise " + id + " has no words in this language"});
  }
  for (const v1::AdviceCard& card : catalogue.cards()) {
    if (catalogue.cardWords(card.id(), language) == nullptr)
      found.push_back({"claim", "the card " + card.id() + " has no words in this language"});
  }
  if (!phrases.claim().whole()) return found;
  checkWordsOf(found, catalogue.movements(), "movement", language);
  checkWordsOf(found, catalogue.settings(), "setting", language);
  return found;
}

}  // namespace newel
