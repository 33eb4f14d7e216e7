// All clips, compiled in and checked at build time, and the few words that describe a figure.
// Not here: what becomes of a clip (key_poses.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/clip.pb.h"

namespace newel {

// Immutable after load; safe to read from any thread. Clips are in the order of their exercises' ids.
class ClipBook {
 public:
  // The clips compiled into the program. Always valid: the build fails otherwise.
  static const ClipBook& builtIn();

  // Every "*.textproto" under `folder`/clips (one Clip each, named after its exercise) and `folder`/words
  // (one PhraseFile a language). kInvalidArgument; the message holds one "<file>:<line>: <reason>" a line,
  // all that were found. kNotFound when a folder is missing.
  static absl::StatusOr<ClipBook> load(const std::string& folder, const Catalogue& catalogue);

  // From records that load() has passed before: no checks.
  static ClipBook assemble(std::vector<v1::Clip> clips, std::vector<v1::PhraseFile> phrases);

  const std::vector<v1::Clip>& clips() const { return m_clips; }
  const std::vector<v1::PhraseFile>& phrases() const { return m_phrases; }
  // nullptr when the exercise has no clip.
  const v1::Clip* find(const std::string& exercise_id) const;
  // In `language` or, where that is missing, in English; empty when there is no such key.
  std::string phrase(const std::string& key, const std::string& language) const;

 private:
  std::vector<v1::Clip> m_clips;
  std::vector<v1::PhraseFile> m_phrases;
};

struct ClipProblem {
  std::string path;  // of the field in the clip, may be empty
  std::string reason;
};
// What must be true of a clip beside being a well-formed record: it fits its exercise phase by phase, every
// thing held is there and can be held so, numbers are in range, exceptions say why.
std::vector<ClipProblem> problemsOf(const v1::Clip& clip, const v1::Exercise& exercise);

}  // namespace newel
