#include "core/library/counted.h"

#include <unicode/plurrule.h>
#include <unicode/strenum.h>

#include <memory>

namespace newel {
namespace {

std::unique_ptr<icu::PluralRules> rulesOf(const std::string& language) {
  UErrorCode error = U_ZERO_ERROR;
  const icu::Locale locale = icu::Locale::forLanguageTag(language, error);
  std::unique_ptr<icu::PluralRules> rules(icu::PluralRules::forLocale(locale, error));
  if (U_SUCCESS(error) != 0 && rules != nullptr) return rules;
  // A tag that ICU cannot read has one form: ICU's own answer for a language without rules.
  error = U_ZERO_ERROR;
  return std::unique_ptr<icu::PluralRules>(icu::PluralRules::createDefaultRules(error));
}

std::string textOf(const icu::UnicodeString& unicode) {
  std::string text;
  return unicode.toUTF8String(text);
}

// Whole numbers that show every category a language has for them: CLDR's rules look at n, n % 10, n % 100 and
// at millions only.
constexpr std::int64_t kMostTried = 1000;
constexpr std::int64_t kMillion = 1000000;

}  // namespace

std::string pluralCategory(const std::string& language, std::int64_t n) {
  return textOf(rulesOf(language)->select(static_cast<double>(n)));
}

std::set<std::string> pluralCategories(const std::string& language) {
  const auto rules = rulesOf(language);
  std::set<std::string> categories;
  for (std::int64_t n = 0; n <= kMostTried; ++n)
    categories.insert(textOf(rules->select(static_cast<double>(n))));
  categories.insert(textOf(rules->select(static_cast<double>(kMillion))));
  return categories;
}

std::string counted(const Catalogue& catalogue, const std::string& key, std::int64_t n,
                    const std::string& language) {
  for (const std::string& tried : {language, language.substr(0, language.find('-')), std::string("en")}) {
    const v1::PluralPhrase* plural = catalogue.plural(key, tried);
    if (plural == nullptr) continue;
    const auto form = plural->forms().find(pluralCategory(tried, n));
    std::string text = form == plural->forms().end() ? std::string() : form->second;
    const std::size_t at = text.find("{n}");
    if (at != std::string::npos) text.replace(at, 3, std::to_string(n));
    return text;
  }
  return {};
}

}  // namespace newel
