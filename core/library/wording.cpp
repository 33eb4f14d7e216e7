#include "core/library/wording.h"

#include <absl/status/status.h>

#include <cctype>

namespace newel {
namespace {

absl::Status noAnswer(const std::string& name, const std::string& reason) {
  return absl::InvalidArgumentError("{" + name + "}: " + reason);
}

absl::StatusOr<std::string> phraseOf(const std::string& name, const std::string& key,
                                     const WordingContext& context) {
  std::string phrase = context.catalogue->phrase(key, context.language);
  if (phrase.empty()) return noAnswer(name, "no phrase \"" + key + "\" in \"" + context.language + "\"");
  return phrase;
}

absl::StatusOr<std::string> limbPhrase(const std::string& name, const std::string& group, v1::Side side,
                                       const WordingContext& context) {
  if (side == v1::SIDE_UNSPECIFIED) return noAnswer(name, "has no answer here");
  return phraseOf(name, group + (side == v1::SIDE_LEFT ? ".left" : ".right"), context);
}

const std::map<std::string, v1::LimbRole>& legRoles() {
  static const std::map<std::string, v1::LimbRole> roles = {
      {"working", v1::LIMB_ROLE_WORKING},       {"other", v1::LIMB_ROLE_OTHER},
      {"prosthetic", v1::LIMB_ROLE_PROSTHETIC}, {"sound", v1::LIMB_ROLE_SOUND},
      {"stronger", v1::LIMB_ROLE_STRONGER},     {"weaker", v1::LIMB_ROLE_WEAKER},
  };
  return roles;
}

absl::StatusOr<std::string> answerTo(const std::string& name, const WordingContext& context) {
  const auto role = legRoles().find(name);
  if (role != legRoles().end()) {
    if (context.person == nullptr) return noAnswer(name, "nobody is known");
    return limbPhrase(name, "leg", sideOf(role->second, limbsOf(*context.person), context.working), context);
  }
  if (name == "working_arm") return limbPhrase(name, "arm", context.working, context);
  if (name == "opposite_arm") return limbPhrase(name, "arm", otherSide(context.working), context);
  if (name == "working_side") return limbPhrase(name, "side", context.working, context);
  if (name == "support") {
    if (context.entry == nullptr) return noAnswer(name, "no entry is known");
    return phraseOf(name, phraseKey("support", v1::Support_Name(context.entry->support()), "SUPPORT_"),
                    context);
  }
  return noAnswer(name, "is not a placeholder");
}

}  // namespace

Limbs limbsOf(const v1::Person& person) {
  Limbs limbs;
  if (person.limbs_size() == 1) {
    limbs.prosthetic = limbs.weaker = person.limbs(0).side();
    limbs.sound = limbs.stronger = otherSide(limbs.prosthetic);
  } else if (person.limbs_size() > 1) {
    limbs.both_lost = true;
    limbs.stronger = person.strong_side();
    limbs.weaker = otherSide(limbs.stronger);
  }
  return limbs;
}

v1::Side otherSide(v1::Side side) {
  if (side == v1::SIDE_LEFT) return v1::SIDE_RIGHT;
  if (side == v1::SIDE_RIGHT) return v1::SIDE_LEFT;
  return v1::SIDE_UNSPECIFIED;
}

v1::LimbLossLevel levelOf(const v1::Person& person, v1::Side side) {
  for (const v1::LimbLoss& limb : person.limbs()) {
    if (limb.side() == side) return limb.level();
  }
  return v1::LIMB_LOSS_LEVEL_UNSPECIFIED;
}

v1::Side sideOf(v1::LimbRole role, const Limbs& limbs, v1::Side working) {
  switch (role) {
    case v1::LIMB_ROLE_WORKING:
      return working;
    case v1::LIMB_ROLE_OTHER:
      return otherSide(working);
    case v1::LIMB_ROLE_PROSTHETIC:
      return limbs.prosthetic;
    case v1::LIMB_ROLE_SOUND:
      return limbs.sound;
    case v1::LIMB_ROLE_LEFT:
      return v1::SIDE_LEFT;
    case v1::LIMB_ROLE_RIGHT:
      return v1::SIDE_RIGHT;
    case v1::LIMB_ROLE_STRONGER:
      return limbs.stronger;
    case v1::LIMB_ROLE_WEAKER:
      return limbs.weaker;
    default:
      return v1::SIDE_UNSPECIFIED;
  }
}

absl::StatusOr<std::string> resolveWords(const std::string& text, const WordingContext& context) {
  std::string resolved;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t open = text.find('{', at);
    resolved += text.substr(at, open == std::string::npos ? open : open - at);
    if (open == std::string::npos) break;
    const std::size_t close = text.find('}', open);
    if (close == std::string::npos) return absl::InvalidArgumentError("\"{\" is never closed");
    std::string name = text.substr(open + 1, close - open - 1);
    const bool capital = !name.empty() && std::isupper(static_cast<unsigned char>(name[0])) != 0;
    if (capital) name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
    absl::StatusOr<std::string> answer = answerTo(name, context);
    if (!answer.ok()) return answer.status();
    // Letters beyond ASCII stay as they are: a phrase that begins with one is written for both places.
    if (capital) (*answer)[0] = static_cast<char>(std::toupper(static_cast<unsigned char>((*answer)[0])));
    resolved += *answer;
    at = close + 1;
  }
  return resolved;
}

std::string phraseKey(const std::string& group, const std::string& value_name, const std::string& prefix) {
  std::string key = value_name.substr(value_name.rfind(prefix, 0) == 0 ? prefix.size() : 0);
  for (char& c : key) c = c == '_' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return group + "." + key;
}

namespace {
std::string baseOf(const std::string& language) { return language.substr(0, language.find('-')); }
}  // namespace

const v1::ExerciseWords* wordsOrEnglish(const Catalogue& catalogue, const std::string& exercise_id,
                                        const std::string& language, std::uint32_t revision) {
  for (const std::string& tried : {language, baseOf(language), std::string("en")}) {
    if (const auto* found = catalogue.words(exercise_id, tried, revision)) return found;
  }
  for (const std::string& tried : catalogue.languages()) {
    if (const auto* found = catalogue.words(exercise_id, tried, revision)) return found;
  }
  return nullptr;
}

const v1::AdviceWords* cardWordsOrEnglish(const Catalogue& catalogue, const std::string& card_id,
                                          const std::string& language) {
  for (const std::string& tried : {language, baseOf(language), std::string("en")}) {
    if (const auto* found = catalogue.cardWords(card_id, tried)) return found;
  }
  return nullptr;
}

bool servesLanguage(const std::string& given, const std::string& asked) {
  return baseOf(given) == baseOf(asked);
}

}  // namespace newel
