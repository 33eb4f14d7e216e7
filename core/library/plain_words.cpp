#include "core/library/plain_words.h"

#include <algorithm>
#include <cctype>
#include <map>
#include <string>
#include <vector>

namespace newel {
namespace {

constexpr double kWordsPerMinute = 150;

bool isVowel(char c) { return c == 'a' || c == 'e' || c == 'i' || c == 'o' || c == 'u' || c == 'y'; }

// In UTF-8, what begins with C2 (inverted marks) or E2 (dashes, quotes) is no letter.
bool beginsLetter(unsigned char u) { return std::isalnum(u) != 0 || (u >= 0xC3 && u != 0xE2); }

bool continues(unsigned char u) { return (u & 0xC0) == 0x80; }

std::vector<std::string> wordsOf(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  bool in_letter = false;
  for (const char c : text + " ") {
    const auto u = static_cast<unsigned char>(c);
    in_letter = continues(u) ? in_letter : beginsLetter(u);
    if (in_letter) {
      word += u < 0x80 ? static_cast<char>(std::tolower(u)) : c;
    } else if (c != '\'' && !word.empty()) {
      words.push_back(word);
      word.clear();
    }
  }
  return words;
}

int syllablesOf(const std::string& word) {
  int groups = 0;
  bool in_group = false;
  for (const char c : word) {
    if (isVowel(c) && !in_group) ++groups;
    in_group = isVowel(c);
  }
  const std::size_t n = word.size();
  // "hope" has one syllable, "table" two, "raised" one, "lifted" two.
  if (n > 2 && word[n - 1] == 'e' && !isVowel(word[n - 2]) && !(word[n - 2] == 'l' && !isVowel(word[n - 3])))
    --groups;
  if (n > 3 && word[n - 2] == 'e' && word[n - 1] == 'd' && !isVowel(word[n - 3]) && word[n - 3] != 't' &&
      word[n - 3] != 'd')
    --groups;
  return groups < 1 ? 1 : groups;
}

// One character for each letter of a Spanish word: capitals stand for accented vowels, W for u with two dots.
std::string spanishLetters(const std::string& word) {
  static const std::map<std::string, char> accented = {{"á", 'A'}, {"é", 'E'}, {"í", 'I'}, {"ó", 'O'},
                                                       {"ú", 'U'}, {"ü", 'W'}, {"Á", 'A'}, {"É", 'E'},
                                                       {"Í", 'I'}, {"Ó", 'O'}, {"Ú", 'U'}, {"Ü", 'W'}};
  std::string letters;
  for (std::size_t i = 0; i < word.size(); ++i) {
    if (static_cast<unsigned char>(word[i]) < 0x80) {
      letters += word[i];
      continue;
    }
    const auto known = accented.find(word.substr(i, 2));
    letters += known == accented.end() ? 'n' : known->second;
    while (i + 1 < word.size() && continues(static_cast<unsigned char>(word[i + 1]))) ++i;
  }
  return letters;
}

bool isOneOf(char c, const std::string& set) { return set.find(c) != std::string::npos; }

// The u of que and gui, and the h between two vowels.
bool isSilent(const std::string& letters, std::size_t i) {
  if (i == 0 || i + 1 >= letters.size()) return false;
  const char before = letters[i - 1];
  const char after = letters[i + 1];
  if (letters[i] == 'u') return isOneOf(before, "gq") && isOneOf(after, "eiEI");
  return letters[i] == 'h' && isOneOf(before, "aeiouAEIOUW") && isOneOf(after, "aeiouAEIOUW");
}

// Each open or accented vowel is a syllable; close ones lean on it, or make one where there is none.
int spanishSyllablesOf(const std::string& word) {
  const std::string letters = spanishLetters(word);
  int syllables = 0;
  int open = 0;
  bool in_vowels = false;
  for (std::size_t i = 0; i <= letters.size(); ++i) {
    if (i < letters.size() && isSilent(letters, i)) continue;
    const char c = i < letters.size() ? letters[i] : '-';
    const bool is_open = isOneOf(c, "aeoAEIOU");
    const bool is_close = isOneOf(c, "iuW") || (c == 'y' && i + 1 == letters.size());
    if (is_open || is_close) {
      in_vowels = true;
      if (is_open) ++open;
    } else if (in_vowels) {
      syllables += std::max(1, open);
      in_vowels = false;
      open = 0;
    }
  }
  return std::max(1, syllables);
}

int sentencesOf(const std::string& text) {
  int sentences = 0;
  bool open = false;
  for (const char c : text) {
    if (std::isalnum(static_cast<unsigned char>(c)) != 0) open = true;
    if (open && (c == '.' || c == '!' || c == '?' || c == ':')) {
      ++sentences;
      open = false;
    }
  }
  return sentences + (open ? 1 : 0);
}

}  // namespace

double readingGrade(const std::string& text) {
  const std::vector<std::string> words = wordsOf(text);
  if (words.empty()) return 0;
  int syllables = 0;
  for (const std::string& word : words) syllables += syllablesOf(word);
  const auto count = static_cast<double>(words.size());
  return 0.39 * count / sentencesOf(text) + 11.8 * syllables / count - 15.59;
}

double spanishReadingEase(const std::string& text) {
  const std::vector<std::string> words = wordsOf(text);
  if (words.empty()) return 0;
  int syllables = 0;
  for (const std::string& word : words) syllables += spanishSyllablesOf(word);
  const auto count = static_cast<double>(words.size());
  return 206.84 - 60 * syllables / count - 1.02 * count / std::max(1, sentencesOf(text));
}

double spokenSeconds(const std::string& text) {
  return static_cast<double>(wordsOf(text).size()) * 60.0 / kWordsPerMinute;
}

}  // namespace newel
