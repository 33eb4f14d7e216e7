#include <cstdlib>
#include <utility>

#include "core/figure/clip_book.h"
#include "core/figure/embedded_clips.h"

namespace newel {
namespace {

template <typename Record>
std::vector<Record> recordsOf(bool words) {
  std::vector<Record> records;
  for (std::size_t i = 0; i < embeddedClipCount(); ++i) {
    const EmbeddedClip& part = embeddedClips()[i];
    if (part.words != words) continue;
    Record record;
    // The bytes were written by this very build; anything else is a broken program.
    if (!record.ParseFromArray(part.bytes, static_cast<int>(part.size))) std::abort();
    records.push_back(std::move(record));
  }
  return records;
}

}  // namespace

const ClipBook& ClipBook::builtIn() {
  static const ClipBook book = assemble(recordsOf<v1::Clip>(false), recordsOf<v1::PhraseFile>(true));
  return book;
}

}  // namespace newel
