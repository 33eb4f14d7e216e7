// Every language is as complete as it claims, counts as CLDR says, and is never mixed with another.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "core/library/catalogue.h"
#include "core/library/catalogue_builder.h"
#include "core/library/counted.h"
#include "core/library/dose_words.h"
#include "core/library/plain_words.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

const Catalogue& catalogue() { return Catalogue::builtIn(); }

// The twelve that Arabic begins with.
const std::set<std::string>& firstTwelve() {
  static const std::set<std::string> ids = {
      "bridge-over-roll",        "curl-up-legs-lifted",  "even-weight-standing",
      "face-down-lying",         "opposite-arm-and-leg", "ramp-up-down",
      "rolling-chair-push-pull", "sit-to-stand",         "stairs-one-at-a-time",
      "stairs-step-over-step",   "step-through",         "weight-shift-side"};
  return ids;
}

TEST(Languages, wholeOnesComeFirst) {
  EXPECT_THAT(catalogue().languages(), testing::ElementsAre("en", "es", "ar"));
  EXPECT_TRUE(catalogue().whole("en"));
  EXPECT_TRUE(catalogue().whole("es"));
  EXPECT_FALSE(catalogue().whole("ar"));
}

TEST(Languages, haveWhatTheyClaim) {
  for (const std::string& language : catalogue().languages()) {
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      const bool claimed = catalogue().whole(language) || firstTwelve().contains(exercise.id());
      EXPECT_EQ(catalogue().words(exercise.id(), language) != nullptr, claimed)
          << language << " " << exercise.id();
    }
    for (const v1::AdviceCard& card : catalogue().cards())
      EXPECT_NE(catalogue().cardWords(card.id(), language), nullptr) << language << " " << card.id();
    for (const std::string& key : catalogue().keysOf("", "en"))
      EXPECT_NE(catalogue().phrase(key, language), "") << language << " " << key;
  }
}

// A line that is in one language and not in the other would be lost on the way.
TEST(Languages, sayAsMuchAsEnglish) {
  for (const std::string& language : catalogue().languages()) {
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      const v1::ExerciseWords* words = catalogue().words(exercise.id(), language);
      if (words == nullptr) continue;
      const v1::ExerciseWords& english = *catalogue().words(exercise.id(), "en");
      EXPECT_EQ(words->cues().size(), english.cues().size()) << language << " " << exercise.id();
      EXPECT_EQ(words->good_size(), english.good_size()) << language << " " << exercise.id();
      EXPECT_EQ(words->faults_size(), english.faults_size()) << language << " " << exercise.id();
      EXPECT_EQ(words->stop_if_size(), english.stop_if_size()) << language << " " << exercise.id();
      EXPECT_EQ(words->cautions_size(), english.cautions_size()) << language << " " << exercise.id();
    }
    for (const v1::AdviceCard& card : catalogue().cards()) {
      const v1::AdviceWords& words = *catalogue().cardWords(card.id(), language);
      const v1::AdviceWords& english = *catalogue().cardWords(card.id(), "en");
      EXPECT_EQ(words.steps_size(), english.steps_size()) << language << " " << card.id();
      EXPECT_EQ(words.call_if_size(), english.call_if_size()) << language << " " << card.id();
    }
  }
}

std::set<std::string> placeholdersIn(std::string text) {
  std::set<std::string> names;
  for (std::size_t open = text.find('{'); open != std::string::npos; open = text.find('{', open + 1)) {
    std::string name = text.substr(open + 1, text.find('}', open) - open - 1);
    name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
    names.insert(name);
  }
  return names;
}

// A translation that names another leg than the English would be the worst of faults.
TEST(Languages, everyCueNamesTheSameLimbsAsInEnglish) {
  int compared = 0;
  for (const std::string& language : catalogue().languages()) {
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      const v1::ExerciseWords* words = catalogue().words(exercise.id(), language);
      if (words == nullptr) continue;
      for (const auto& [key, cue] : catalogue().words(exercise.id(), "en")->cues()) {
        EXPECT_EQ(placeholdersIn(words->cues().at(key).screen()), placeholdersIn(cue.screen()))
            << language << " " << exercise.id() << " " << key;
        ++compared;
      }
    }
  }
  EXPECT_GT(compared, 700);
}

// Arabic: letters of its own only, but for placeholders and numbers.
TEST(Languages, arabicHasNoLatinLeftInIt) {
  for (const std::string& id : firstTwelve()) {
    std::string bytes;
    catalogue().words(id, "ar")->SerializeToString(&bytes);
    for (const auto& [key, cue] : catalogue().words(id, "ar")->cues()) {
      std::string text = cue.screen() + cue.spoken();
      for (const std::string& name : placeholdersIn(text)) {
        const std::string braced = "{" + name + "}";
        for (std::size_t at = text.find(braced); at != std::string::npos; at = text.find(braced))
          text.erase(at, braced.size());
      }
      for (const char c : text)
        EXPECT_EQ(std::isalpha(static_cast<unsigned char>(c)), 0) << id << ": " << text;
    }
  }
}

TEST(Languages, theTwelveAreLedInArabicAndTheRestWholeInEnglish) {
  int arabic = 0;
  int fell_back = 0;
  for (const test::SamplePerson& sample : test::samplePeople()) {
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      const auto timeline =
          compileTimeline(test::entryOf(exercise.id(), sample.person), sample.person, catalogue(), "ar-EG");
      if (!timeline.ok()) continue;
      EXPECT_EQ(timeline->language(), firstTwelve().contains(exercise.id()) ? "ar" : "en") << exercise.id();
      EXPECT_EQ(timeline->fell_back(), timeline->language() == "en") << exercise.id();
      (timeline->fell_back() ? fell_back : arabic) += 1;
      for (const v1::Beat& beat : timeline->beats()) {
        EXPECT_LE(spokenSeconds(beat.spoken()) * 1000, static_cast<double>(beat.length_ms()))
            << beat.spoken();
        // One language on one screen.
        bool latin = false;
        for (const char c : beat.screen()) latin = latin || std::isalpha(static_cast<unsigned char>(c)) != 0;
        if (beat.screen().empty()) continue;
        EXPECT_EQ(latin, timeline->fell_back()) << beat.screen();
      }
    }
  }
  EXPECT_GT(arabic, 50);
  EXPECT_GT(fell_back, 200);
}

TEST(Languages, aRegionIsServedByItsBaseLanguage) {
  EXPECT_EQ(wordsOrEnglish(catalogue(), "sit-to-stand", "es-MX")->language(), "es");
  EXPECT_EQ(wordsOrEnglish(catalogue(), "seated-marching", "ar")->language(), "en");
  EXPECT_EQ(cardWordsOrEnglish(catalogue(), "skin-check", "de")->language(), "en");
  EXPECT_TRUE(servesLanguage("es", "es-MX"));
  EXPECT_FALSE(servesLanguage("en", "es"));
}

// CLDR 48, plurals: the samples of unicode.org/cldr's plural rules chart.
TEST(Counted, followsCldr) {
  struct Sample {
    const char* language;
    std::int64_t n;
    const char* category;
  };
  const Sample samples[] = {
      {"en", 0, "other"},   {"en", 1, "one"},       {"en", 2, "other"}, {"es", 0, "other"},
      {"es", 1, "one"},     {"es", 2, "other"},     {"fr", 0, "one"},   {"fr", 1, "one"},
      {"pl", 1, "one"},     {"pl", 2, "few"},       {"pl", 22, "few"},  {"pl", 5, "many"},
      {"pl", 12, "many"},   {"ru", 1, "one"},       {"ru", 21, "one"},  {"ru", 2, "few"},
      {"ru", 22, "few"},    {"ru", 5, "many"},      {"ru", 11, "many"}, {"ar", 0, "zero"},
      {"ar", 1, "one"},     {"ar", 2, "two"},       {"ar", 3, "few"},   {"ar", 11, "many"},
      {"ar", 100, "other"}, {"cy", 0, "zero"},      {"cy", 1, "one"},   {"cy", 2, "two"},
      {"cy", 3, "few"},     {"cy", 6, "many"},      {"ja", 1, "other"}, {"ja", 5, "other"},
      {"ar", 103, "few"},   {"es", 1000000, "many"}};
  for (const Sample& sample : samples)
    EXPECT_EQ(pluralCategory(sample.language, sample.n), sample.category) << sample.language << sample.n;
}

TEST(Counted, categoriesOfALanguage) {
  using testing::ElementsAre;
  EXPECT_THAT(pluralCategories("en"), ElementsAre("one", "other"));
  EXPECT_THAT(pluralCategories("ar"), ElementsAre("few", "many", "one", "other", "two", "zero"));
  EXPECT_THAT(pluralCategories("ja"), ElementsAre("other"));
}

TEST(Counted, everyCountedPhraseHasAWordForEveryNumber) {
  for (const std::string& language : catalogue().languages()) {
    for (const std::string& key : catalogue().pluralKeys(language)) {
      for (const std::int64_t n : {0, 1, 2, 3, 5, 10, 11, 21, 60, 100, 101, 120, 300}) {
        const std::string text = counted(catalogue(), key, n, language);
        EXPECT_NE(text, "") << language << " " << key << " " << n;
        EXPECT_EQ(text.find('{'), std::string::npos) << text;
      }
    }
  }
  EXPECT_EQ(counted(catalogue(), "dose.sets", 1, "es-AR"), "1 serie");
  EXPECT_EQ(counted(catalogue(), "dose.sets", 2, "de"), "2 sets");
  EXPECT_EQ(counted(catalogue(), "dose.nothing", 2, "en"), "");
}

TEST(DoseWords, areWholeInOneLanguage) {
  v1::Dose dose;
  dose.mutable_sets()->set_sets(2);
  dose.mutable_sets()->set_repetitions(10);
  dose.mutable_sets()->set_hold_s(5);
  dose.mutable_sets()->set_rest_s(60);
  EXPECT_EQ(doseWords(dose, v1::SIDE_POLICY_ALTERNATING, catalogue(), "en"),
            "2 sets, 10 times each side, hold 5 seconds, rest 60 seconds");
  EXPECT_EQ(doseWords(dose, v1::SIDE_POLICY_WHOLE_BODY, catalogue(), "es"),
            "2 series, 10 veces, mantener 5 segundos, descansar 60 segundos");
  EXPECT_EQ(doseWords(dose, v1::SIDE_POLICY_WHOLE_BODY, catalogue(), "fi"),
            "2 sets, 10 times, hold 5 seconds, rest 60 seconds");
  dose.mutable_minutes()->set_minutes(1);
  dose.mutable_minutes()->set_bouts(1);
  EXPECT_EQ(doseWords(dose, v1::SIDE_POLICY_WHOLE_BODY, catalogue(), "es"), "1 minuto");
  dose.mutable_passes()->set_passes(3);
  dose.mutable_passes()->set_step_count(12);
  EXPECT_EQ(doseWords(dose, v1::SIDE_POLICY_WHOLE_BODY, catalogue(), "en"),
            "3 times there and back, 12 steps");
}

}  // namespace
}  // namespace newel
