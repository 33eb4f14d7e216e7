#include "core/library/plain_words.h"

#include <cctype>
#include <string>
#include <vector>

namespace newel {
namespace {

constexpr double kWordsPerMinute = 150;

bool isVowel(char c) { return c == 'a' || c == 'e' || c == 'i' || c == 'o' || c == 'u' || c == 'y'; }

std::vector<std::string> wordsOf(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : text + " ") {
    const auto u = static_cast<unsigned char>(c);
    if (std::isalnum(u) != 0) {
      word += static_cast<char>(std::tolower(u));
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

double spokenSeconds(const std::string& text) {
  return static_cast<double>(wordsOf(text).size()) * 60.0 / kWordsPerMinute;
}

}  // namespace newel
