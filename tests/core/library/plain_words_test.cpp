#include "core/library/plain_words.h"

#include <gtest/gtest.h>

#include "core/library/wording.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

// Kincaid et al. 1975: 0.39 * words / sentences + 11.8 * syllables / words - 15.59.
TEST(PlainWords, gradeFollowsTheFormula) {
  // 6 words, 1 sentence, 6 syllables: 2.34 + 11.8 - 15.59.
  EXPECT_NEAR(readingGrade("The cat sat on the mat."), -1.45, 0.005);
  // 3 words in 2 sentences, 5 syllables: 0.585 + 19.667 - 15.59.
  EXPECT_NEAR(readingGrade("Prosthesis. Sit down."), 4.66, 0.005);
  EXPECT_EQ(readingGrade(""), 0);
}

TEST(PlainWords, syllablesOfWordsThatCuesUse) {
  // One word of n syllables in one sentence: 0.39 + 11.8 n - 15.59.
  const auto syllables = [](const std::string& word) { return (readingGrade(word) + 15.59 - 0.39) / 11.8; };
  const std::pair<const char*, int> known[] = {
      {"leg", 1},        {"slowly", 2},  {"table", 2},   {"shoulders", 2}, {"lifted", 2}, {"raised", 1},
      {"prosthesis", 3}, {"breathe", 1}, {"squeeze", 1}, {"middle", 2},    {"reach", 1},  {"forward", 2}};
  for (const auto& [word, count] : known) EXPECT_NEAR(syllables(word), count, 0.001) << word;
}

TEST(PlainWords, speechTakes150WordsAMinute) {
  EXPECT_DOUBLE_EQ(spokenSeconds("Left leg up."), 1.2);
  EXPECT_DOUBLE_EQ(spokenSeconds(""), 0);
}

// Grade 6 or under, by the formula above, for every cue of every exercise and everybody it is said to.
TEST(PlainWords, everyEnglishCueIsReadableAtGradeSix) {
  const Catalogue& catalogue = Catalogue::builtIn();
  int texts = 0;
  for (const v1::Exercise& exercise : catalogue.exercises()) {
    for (const auto& sample : test::samplePeople()) {
      const v1::Entry entry = test::entryOf(exercise.id(), sample.person);
      for (const v1::Side side : {v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
        const WordingContext context{&catalogue, &sample.person, &entry, "en", side};
        for (const auto& [key, cue] : catalogue.words(exercise.id(), "en")->cues()) {
          for (const std::string* text : {&cue.screen(), &cue.spoken()}) {
            const auto resolved = resolveWords(*text, context);
            if (!resolved.ok()) continue;  // a text for one sound limb, a person with none
            EXPECT_LE(readingGrade(*resolved), 6.0) << exercise.id() << " " << key << ": " << *resolved;
            ++texts;
          }
        }
      }
    }
  }
  EXPECT_GT(texts, 1000);
}

// The texts around the cues too, so that a handout reads like the voice.
TEST(PlainWords, everyOtherEnglishTextIsReadableAtGradeSix) {
  const Catalogue& catalogue = Catalogue::builtIn();
  const v1::Person person = test::transfemoralLeft();
  for (const v1::Exercise& exercise : catalogue.exercises()) {
    const v1::ExerciseWords& words = *catalogue.words(exercise.id(), "en");
    std::vector<std::string> texts = {words.purpose(), words.start(), words.breathing(), words.support()};
    texts.insert(texts.end(), words.good().begin(), words.good().end());
    texts.insert(texts.end(), words.stop_if().begin(), words.stop_if().end());
    texts.insert(texts.end(), words.cautions().begin(), words.cautions().end());
    for (const v1::Fault& fault : words.faults()) {
      texts.push_back(fault.seen());
      texts.push_back(fault.mend());
    }
    const v1::Entry entry = test::entryOf(exercise.id(), person);
    for (const std::string& text : texts) {
      const auto resolved = resolveWords(text, {&catalogue, &person, &entry, "en", v1::SIDE_UNSPECIFIED});
      ASSERT_TRUE(resolved.ok()) << text;
      EXPECT_LE(readingGrade(*resolved), 6.0) << exercise.id() << ": " << *resolved;
    }
  }
}

}  // namespace
}  // namespace newel
