// The Spanish catalogue: complete, readable, sayable in time, and about the right leg.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstring>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/library/catalogue_builder.h"
#include "core/library/plain_words.h"
#include "core/practice/compile.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

const char kSpanish[] = "es";
// "Fairly easy" (algo facil) is 70 to 80: Fernandez Huerta's scale as legible.es prints it.
constexpr double kFairlyEasy = 70;

const Catalogue& catalogue() { return Catalogue::builtIn(); }

// One word in one sentence: 206.84 - 60 n - 1.02.
double syllablesOf(const std::string& word) { return (206.84 - 1.02 - spanishReadingEase(word)) / 60; }

// As school grammars divide them: lenguayliteratura38.blogspot.com (ahu-ma-do, prohi-bir, bú-ho),
// profldiaz69.blogspot.com (al-de-a, le-ón, ba-hí-a, o-í-do, fan-ta-sí-a), educa.jcyl.es (sa-lí-ais, buey),
// scribd 723768264 (hé-ro-e, re-ír, ma-íz, ca-í-da, te-o-re-ma), timeuniversity.com.mx (que and gue, güe).
// The words of the body are from memory.
TEST(SpanishReading, countsSyllablesAsGrammarsDivideThem) {
  const std::pair<const char*, int> known[] = {
      {"cielo", 2},   {"peine", 2},    {"cuidado", 3},  {"ciudad", 2},     {"causa", 2},    {"huevo", 2},
      {"rehén", 2},   {"aldea", 3},    {"león", 2},     {"bahía", 3},      {"oído", 3},     {"fantasía", 4},
      {"ahumado", 3}, {"prohibir", 2}, {"búho", 2},     {"buey", 1},       {"miau", 1},     {"héroe", 3},
      {"reír", 2},    {"maíz", 2},     {"caída", 3},    {"teorema", 4},    {"país", 2},     {"salíais", 3},
      {"guerra", 2},  {"guiso", 2},    {"queso", 2},    {"cigüeña", 3},    {"después", 2},  {"estudiáis", 3},
      {"muñón", 2},   {"pierna", 2},   {"prótesis", 3}, {"izquierda", 3},  {"siéntese", 3}, {"acuéstese", 4},
      {"toalla", 3},  {"almohada", 4}, {"escalón", 3},  {"MURCIÉLAGO", 4}, {"línea", 3},    {"aire", 2},
      {"y", 1},       {"hay", 1},      {"apoyar", 3},   {"yeso", 2},       {"guíe", 2},     {"quietas", 2}};
  for (const auto& [word, count] : known) EXPECT_NEAR(syllablesOf(word), count, 0.001) << word;
}

// The first sentence of Don Quixote (1605): 33 words and, counted by hand, 60 syllables.
TEST(SpanishReading, agreesWithACountByHandOfAPrintedSentence) {
  const std::string text =
      "En un lugar de la Mancha, de cuyo nombre no quiero acordarme, no ha mucho tiempo que vivía un hidalgo "
      "de "
      "los de lanza en astillero, adarga antigua, rocín flaco y galgo corredor.";
  EXPECT_NEAR(spanishReadingEase(text), 206.84 - 60 * 60 / 33.0 - 1.02 * 33, 0.001);
  EXPECT_NEAR(spokenSeconds(text), 33 * 0.4, 0.001);
}

TEST(SpanishReading, easeFollowsTheFormula) {
  // 8 syllables in 4 words, 1 sentence.
  EXPECT_NEAR(spanishReadingEase("Suba la pierna izquierda."), 82.76, 0.001);
  // 9 syllables in 6 words, 2 sentences; the mark in front is no word.
  EXPECT_NEAR(spanishReadingEase("¡No se mueva! Mire al frente."), 206.84 - 60 * 9 / 6.0 - 1.02 * 3, 0.001);
  EXPECT_EQ(spanishReadingEase(""), 0);
}

TEST(SpanishCatalogue, hasWordsForEveryExercise) {
  EXPECT_THAT(catalogue().languages(), ::testing::Contains(kSpanish));
  for (const v1::Exercise& exercise : catalogue().exercises())
    EXPECT_NE(catalogue().words(exercise.id(), kSpanish), nullptr) << exercise.id();
}

TEST(SpanishCatalogue, hasEveryPhraseThatEnglishHas) {
  int phrases = 0;
  for (const v1::PhraseFile& file : CatalogueBuilder::recordsOf(catalogue()).phrases) {
    if (file.language() != "en") continue;
    for (const auto& [key, text] : file.phrases()) {
      EXPECT_NE(catalogue().phrase(key, kSpanish), "") << key;
      ++phrases;
    }
  }
  EXPECT_GT(phrases, 90);
}

// A line of advice that is in one language and not in the other would be lost on the way.
TEST(SpanishCatalogue, saysAsMuchAsEnglish) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    const v1::ExerciseWords& english = *catalogue().words(exercise.id(), "en");
    const v1::ExerciseWords& spanish = *catalogue().words(exercise.id(), kSpanish);
    EXPECT_EQ(spanish.cues().size(), english.cues().size()) << exercise.id();
    EXPECT_EQ(spanish.good_size(), english.good_size()) << exercise.id();
    EXPECT_EQ(spanish.faults_size(), english.faults_size()) << exercise.id();
    EXPECT_EQ(spanish.stop_if_size(), english.stop_if_size()) << exercise.id();
    EXPECT_EQ(spanish.cautions_size(), english.cautions_size()) << exercise.id();
  }
}

std::vector<std::string> textsOf(const v1::ExerciseWords& words) {
  std::vector<std::string> texts = {words.title(), words.purpose(), words.start(), words.breathing(),
                                    words.support()};
  for (const auto& [key, cue] : words.cues()) {
    texts.push_back(cue.screen());
    texts.push_back(cue.spoken());
  }
  texts.insert(texts.end(), words.good().begin(), words.good().end());
  texts.insert(texts.end(), words.stop_if().begin(), words.stop_if().end());
  texts.insert(texts.end(), words.cautions().begin(), words.cautions().end());
  for (const v1::Fault& fault : words.faults()) {
    texts.push_back(fault.seen());
    texts.push_back(fault.mend());
  }
  return texts;
}

std::set<std::string> wordsIn(const std::string& text) {
  std::string spaced;
  for (const char c : text) spaced += std::strchr(".,:;!?{}", c) != nullptr ? ' ' : c;
  std::istringstream in(spaced);
  std::set<std::string> words;
  for (std::string word; in >> word;) words.insert(word);
  return words;
}

// One form of address, and no English left between the lines.
TEST(SpanishCatalogue, saysUstedAndNoEnglish) {
  const std::set<std::string> strange = {"tú",    "tu",     "tus",     "ti",   "te",  "contigo", "puedes",
                                         "debes", "tienes", "the",     "your", "you", "and",     "leg",
                                         "hold",  "with",   "quieres", "Haz",  "Pon", "Siéntate"};
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    for (const std::string& text : textsOf(*catalogue().words(exercise.id(), kSpanish))) {
      for (const std::string& word : wordsIn(text))
        EXPECT_EQ(strange.count(word), 0U) << exercise.id() << ": " << text;
    }
  }
}

void expectRightLeg(const v1::Beat& beat) {
  const bool left = beat.screen().find("ierna izquierda") != std::string::npos;
  const bool right = beat.screen().find("ierna derecha") != std::string::npos;
  if (beat.side() == v1::SIDE_UNSPECIFIED || left == right) return;
  EXPECT_EQ(beat.side(), left ? v1::SIDE_LEFT : v1::SIDE_RIGHT) << beat.screen();
}

// `easy` keeps texts that were found readable, so that each is measured once.
void expectSayable(const v1::Timeline& timeline, std::set<std::string>& easy) {
  EXPECT_FALSE(timeline.fell_back());
  EXPECT_EQ(timeline.language(), kSpanish);
  for (const v1::Beat& beat : timeline.beats()) {
    EXPECT_LE(spokenSeconds(beat.spoken()) * 1000, static_cast<double>(beat.length_ms())) << beat.spoken();
    if (isWork(beat.kind())) expectRightLeg(beat);
    for (const std::string* text : {&beat.screen(), &beat.spoken()}) {
      if (!text->empty() && easy.insert(*text).second) {
        EXPECT_GE(spanishReadingEase(*text), kFairlyEasy) << *text;
      }
    }
  }
}

TEST(SpanishCatalogue, everyCueIsFairlyEasyFitsItsBeatAndNamesTheRightLeg) {
  std::set<std::string> easy;
  int compiled = 0;
  const auto lead = [&](const v1::Entry& entry, const v1::Person& person) {
    const auto timeline = compileTimeline(entry, person, catalogue(), kSpanish);
    if (!timeline.ok()) {
      EXPECT_EQ(timeline.status().code(), absl::StatusCode::kFailedPrecondition) << timeline.status();
      return;
    }
    expectSayable(*timeline, easy);
    ++compiled;
  };
  for (const test::SamplePerson& sample : test::samplePeople()) {
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      SCOPED_TRACE(exercise.id() + " for " + sample.name);
      const v1::Entry entry = test::entryOf(exercise.id(), sample.person);
      for (const int policy : exercise.side_policies()) {
        v1::Entry changed = entry;
        changed.set_side_policy(static_cast<v1::SidePolicy>(policy));
        lead(changed, sample.person);
      }
      for (const v1::Rung& rung : exercise.ladder()) {
        v1::Entry changed = entry;
        *changed.mutable_dose() = rung.dose();
        changed.set_support(rung.support());
        lead(changed, sample.person);
      }
    }
  }
  EXPECT_GT(compiled, 2000);
  EXPECT_GT(easy.size(), 500U);
}

// The formula is made for texts of a hundred words, which the words of one exercise together are.
TEST(SpanishCatalogue, theWordsOfEachExerciseTogetherAreFairlyEasy) {
  for (const v1::Exercise& exercise : catalogue().exercises()) {
    std::string all;
    for (const std::string& text : textsOf(*catalogue().words(exercise.id(), kSpanish))) {
      const bool ends = !text.empty() && text.back() == '.';
      all += text + (ends ? " " : ". ");
    }
    EXPECT_GE(spanishReadingEase(all), kFairlyEasy) << exercise.id();
  }
}

}  // namespace
}  // namespace newel
