// Turns an exercise's words into this person's words: {placeholders} become limbs, sides and hands.
// Not here: which text is due when (core/practice/compile.h).
#pragma once

#include <absl/status/statusor.h>

#include <cstdint>
#include <map>
#include <string>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

// The person's two legs as roles, worked out once from the record.
struct Limbs {
  bool both_lost = false;
  v1::Side prosthetic = v1::SIDE_UNSPECIFIED;  // UNSPECIFIED when both are lost
  v1::Side sound = v1::SIDE_UNSPECIFIED;       // UNSPECIFIED when both are lost
  v1::Side stronger = v1::SIDE_UNSPECIFIED;    // UNSPECIFIED when both are lost and nobody chose
  v1::Side weaker = v1::SIDE_UNSPECIFIED;
};
Limbs limbsOf(const v1::Person& person);
v1::Side otherSide(v1::Side side);
// The level on `side`, UNSPECIFIED when that limb is sound.
v1::LimbLossLevel levelOf(const v1::Person& person, v1::Side side);

// The leg a role points at; UNSPECIFIED for BOTH and where this person has no such leg. `working` is the side
// of the repetition, UNSPECIFIED where the whole body works.
v1::Side sideOf(v1::LimbRole role, const Limbs& limbs, v1::Side working);

// Everything a text may ask for. `working` is UNSPECIFIED where no one side works.
struct WordingContext {
  const Catalogue* catalogue = nullptr;
  const v1::Person* person = nullptr;
  const v1::Entry* entry = nullptr;
  std::string language = "en";
  v1::Side working = v1::SIDE_UNSPECIFIED;
};

// Placeholders: {working} {other} {prosthetic} {sound} {stronger} {weaker} (a leg, as "left leg"),
// {working_arm} {opposite_arm} (an arm), {working_side} (as "left"), {support} (what the hands hold). With a
// capital first letter ({Working}) the answer begins with one too.
// kInvalidArgument when a placeholder is unknown or has no answer for this person (for example {sound}
// with both limbs lost): the caller must not show the text.
absl::StatusOr<std::string> resolveWords(const std::string& text, const WordingContext& context);

// Key of the phrase that names an enumeration's value: its name without the type's prefix, lower case and
// hyphens, after `group` and a dot: phraseKey("support", "SUPPORT_ONE_HAND", "SUPPORT_") is
// "support.one-hand". For looking up Catalogue::phrase().
std::string phraseKey(const std::string& group, const std::string& value_name, const std::string& prefix);

// The words of an exercise (of that revision; 0: the newest) in `language`, in its base language ("es" for
// "es-MX"), in English, or, for a clinic's own exercise, in the language it was written in. Whole, never
// mixed: its `language` says which it is, and who shows it marks it where that is not what was asked for.
// nullptr when there are none at all.
const v1::ExerciseWords* wordsOrEnglish(const Catalogue& catalogue, const std::string& exercise_id,
                                        const std::string& language, std::uint32_t revision = 0);
// The same for a card of advice.
const v1::AdviceWords* cardWordsOrEnglish(const Catalogue& catalogue, const std::string& card_id,
                                          const std::string& language);
// True when a text in `given` serves a reader of `asked`: "es" does for "es-MX", "en" does not for "es".
bool servesLanguage(const std::string& given, const std::string& asked);

}  // namespace newel
