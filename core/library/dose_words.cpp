#include "core/library/dose_words.h"

#include <vector>

#include "core/library/counted.h"

namespace newel {
namespace {

// Lists in every language we have are joined by a comma; Arabic writes its own.
std::string joined(const std::vector<std::string>& parts, const std::string& language) {
  const std::string comma = language == "ar" ? "\u060C " : ", ";
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : comma) + part;
  return text;
}

std::string languageFor(const Catalogue& catalogue, const std::string& language) {
  for (const std::string& tried : {language, language.substr(0, language.find('-'))}) {
    if (catalogue.plural("dose.sets", tried) != nullptr) return tried;
  }
  return "en";
}

bool perSide(v1::SidePolicy policy) {
  return policy == v1::SIDE_POLICY_ALTERNATING || policy == v1::SIDE_POLICY_ONE_THEN_OTHER;
}

class Words {
 public:
  Words(const Catalogue& catalogue, std::string language)
      : m_catalogue(catalogue), m_language(std::move(language)) {}

  void add(const std::string& key, std::uint32_t n) {
    m_parts.push_back(counted(m_catalogue, "dose." + key, n, m_language));
  }
  void addUnlessNone(const std::string& key, std::uint32_t n) {
    if (n > 0) add(key, n);
  }
  void sides(v1::SidePolicy policy) {
    if (perSide(policy)) m_parts.back() += " " + m_catalogue.phrase("dose.per-side", m_language);
  }
  std::string text() const { return joined(m_parts, m_language); }

 private:
  const Catalogue& m_catalogue;
  std::string m_language;
  std::vector<std::string> m_parts;
};

}  // namespace

std::string doseWords(const v1::Dose& dose, v1::SidePolicy policy, const Catalogue& catalogue,
                      const std::string& language) {
  Words words(catalogue, languageFor(catalogue, language));
  if (dose.has_sets()) {
    words.add("sets", dose.sets().sets());
    words.add("repetitions", dose.sets().repetitions());
    words.sides(policy);
    words.addUnlessNone("hold-seconds", dose.sets().hold_s());
    if (dose.sets().sets() > 1) words.addUnlessNone("rest-seconds", dose.sets().rest_s());
  } else if (dose.has_minutes()) {
    if (dose.minutes().bouts() > 1) words.add("bouts", dose.minutes().bouts());
    words.add("minutes", dose.minutes().minutes());
    if (dose.minutes().bouts() > 1) words.addUnlessNone("rest-seconds", dose.minutes().rest_s());
  } else if (dose.has_passes()) {
    words.add("passes", dose.passes().passes());
    if (dose.passes().has_distance_m()) {
      words.add("metres", dose.passes().distance_m());
    } else {
      words.add("steps", dose.passes().step_count());
    }
    if (dose.passes().passes() > 1) words.addUnlessNone("rest-seconds", dose.passes().rest_s());
  }
  return words.text();
}

}  // namespace newel
