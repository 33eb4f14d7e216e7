// How hard a text is to read and how long it takes to say. For the catalogue's own checks and tests.
// Not here: what the words mean. Each reading formula is for its one language only.
#pragma once

#include <string>

namespace newel {

// Flesch-Kincaid grade of an English text: 0.39 words per sentence + 11.8 syllables per word - 15.59
// (Kincaid, Fishburne, Rogers and Chissom 1975, Navy Research Branch Report 8-75). Syllables are counted by
// vowel groups, silent final e left out. 0 for a text without a word; may be negative for very short words.
double readingGrade(const std::string& text);

// Reading ease of a Spanish text, 206.84 - 60 syllables per word - 1.02 words per sentence (Fernandez Huerta
// 1959, Consigna 214, in the form that G. Law corrected in 2011: the original's "sentences" are words per
// sentence; legible.es). Higher is easier; 70 to 80 is "fairly easy" (algo facil), 80 to 90 easy. Syllables
// are counted by the rules of diphthong and hiatus. 0 for a text without a word; may be over 100. UTF-8.
double spanishReadingEase(const std::string& text);

// The limits that texts for the person are held to: what most adults manage on a bad day. Ours; the grade by
// common practice, no source; "fairly easy" (algo facil) begins at 70 on Fernandez Huerta's scale.
inline constexpr double kHardestEnglishGrade = 6;
inline constexpr double kLeastSpanishEase = 70;

// Seconds to say `text` at 150 words a minute, a calm pace of speech (common practice, no source).
// Any language that puts spaces between words; UTF-8.
double spokenSeconds(const std::string& text);

}  // namespace newel
