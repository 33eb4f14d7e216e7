// How hard a text is to read and how long it takes to say. For the catalogue's own checks and tests.
// Not here: what the words mean, or languages other than English (the reading formula is for English only).
#pragma once

#include <string>

namespace newel {

// Flesch-Kincaid grade of an English text: 0.39 words per sentence + 11.8 syllables per word - 15.59
// (Kincaid, Fishburne, Rogers and Chissom 1975, Navy Research Branch Report 8-75). Syllables are counted by
// vowel groups, silent final e left out. 0 for a text without a word; may be negative for very short words.
double readingGrade(const std::string& text);

// Seconds to say `text` at 150 words a minute, a calm pace of speech (common practice, no source).
double spokenSeconds(const std::string& text);

}  // namespace newel
