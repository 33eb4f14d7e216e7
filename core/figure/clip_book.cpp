#include "core/figure/clip_book.h"

#include <algorithm>
#include <utility>

namespace newel {

ClipBook ClipBook::assemble(std::vector<v1::Clip> clips, std::vector<v1::PhraseFile> phrases) {
  ClipBook book;
  book.m_clips = std::move(clips);
  book.m_phrases = std::move(phrases);
  std::sort(book.m_clips.begin(), book.m_clips.end(),
            [](const v1::Clip& a, const v1::Clip& b) { return a.exercise_id() < b.exercise_id(); });
  return book;
}

const v1::Clip* ClipBook::find(const std::string& exercise_id) const {
  for (const v1::Clip& clip : m_clips) {
    if (clip.exercise_id() == exercise_id) return &clip;
  }
  return nullptr;
}

std::string ClipBook::phrase(const std::string& key, const std::string& language) const {
  const v1::PhraseFile* english = nullptr;
  for (const v1::PhraseFile& file : m_phrases) {
    if (file.language() == "en") english = &file;
    if (file.language() != language) continue;
    const auto found = file.phrases().find(key);
    if (found != file.phrases().end()) return found->second;
  }
  if (english == nullptr) return {};
  const auto found = english->phrases().find(key);
  return found == english->phrases().end() ? std::string() : found->second;
}

}  // namespace newel
