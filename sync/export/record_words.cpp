#include "sync/export/record_words.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/str_format.h>
#include <absl/strings/str_replace.h>

#include <array>
#include <charconv>

#include "core/library/own_exercises.h"
#include "core/library/wording.h"
#include "core/safety/facts.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/text_codes.h"

namespace newel {
namespace {

std::string ownTitle(const std::string& exercise_id, std::uint32_t revision, const v1::Programme& programme,
                     const std::string& language) {
  std::string title;
  for (const auto& own : programme.own_exercises()) {
    if (own.exercise().id() != exercise_id || own.exercise().revision() != revision) continue;
    for (const auto& words : own.words()) {
      if (title.empty() || servesLanguage(words.language(), language)) title = words.title();
    }
  }
  return title;
}

std::string legWords(v1::Side side) {
  switch (side) {
    case v1::SIDE_LEFT:
      return "left leg";
    case v1::SIDE_RIGHT:
      return "right leg";
    default:
      return "";
  }
}

}  // namespace

std::string enumWord(const google::protobuf::EnumDescriptor* type, int value) {
  return value == 0 ? "" : wordOf(*type, value);
}

std::string isoInstant(absl::Time at) {
  return absl::FormatTime("%Y-%m-%dT%H:%M:%SZ", at, absl::UTCTimeZone());
}

std::string isoInstantIn(absl::Time at, const std::string& zone) {
  const auto loaded = loadZone(zone);
  // Before standard time some zones had offsets with seconds, which no ISO form has.
  if (!loaded.ok() || loaded->At(at).offset % 60 != 0) return isoInstant(at);
  return absl::FormatTime("%Y-%m-%dT%H:%M:%S%Ez", at, *loaded);
}

std::string clockMinute(std::uint32_t minute) {
  return absl::StrFormat("%02d:%02d", minute / 60, minute % 60);
}

std::string plainNumber(double value) {
  std::array<char, 400> text{};  // the longest double without an exponent has 325 characters
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  return {text.data(), end.ptr};
}

std::string secondsText(std::int64_t ms) {
  std::string text = absl::StrFormat("%d.%03d", ms / 1000, ms % 1000);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string derivedId(const std::string& whole, const std::string& part) {
  const auto bytes = fromHex(absl::StrReplaceAll(whole, {{"-", ""}}));
  std::string hash = sha256(absl::StrCat(bytes.ok() ? *bytes : whole, part)).substr(0, 16);
  hash[6] = static_cast<char>((static_cast<unsigned char>(hash[6]) & 0x0fU) | 0x80U);
  hash[8] = static_cast<char>((static_cast<unsigned char>(hash[8]) & 0x3fU) | 0x80U);
  const std::string hex = toHex(hash);
  return absl::StrCat(hex.substr(0, 8), "-", hex.substr(8, 4), "-", hex.substr(12, 4), "-", hex.substr(16, 4),
                      "-", hex.substr(20));
}

std::string exerciseTitle(const std::string& exercise_id, std::uint32_t revision,
                          const v1::Programme* programme, const std::string& language) {
  if (programme != nullptr) {
    std::string title = ownTitle(exercise_id, revision, *programme, language);
    if (!title.empty()) return title;
  }
  const auto* words = wordsOrEnglish(Catalogue::builtIn(), exercise_id, language, revision);
  if (words == nullptr) words = wordsOrEnglish(Catalogue::builtIn(), exercise_id, language);
  return words != nullptr ? words->title() : exercise_id;
}

std::string sideWords(v1::SidePolicy policy, const v1::Person& person) {
  const Limbs limbs = limbsOf(person);
  switch (policy) {
    case v1::SIDE_POLICY_WHOLE_BODY:
      return "both legs";
    case v1::SIDE_POLICY_ALTERNATING:
    case v1::SIDE_POLICY_ONE_THEN_OTHER:
      return "both legs in turn";
    case v1::SIDE_POLICY_PROSTHETIC:
      return legWords(limbs.prosthetic);
    case v1::SIDE_POLICY_SOUND:
      return legWords(limbs.sound);
    case v1::SIDE_POLICY_LEFT:
      return legWords(v1::SIDE_LEFT);
    case v1::SIDE_POLICY_RIGHT:
      return legWords(v1::SIDE_RIGHT);
    default:
      return "";
  }
}

}  // namespace newel
