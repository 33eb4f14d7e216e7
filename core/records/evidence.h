// One reason for an answer of the core, as a text key with arguments; the words are made where it is shown.
// Not here: words in any language.
#pragma once

#include <map>
#include <string>

namespace newel {

struct EvidenceLine {
  std::string key;                          // for example "progress.pain-rose"
  std::map<std::string, std::string> args;  // version-neutral: digits, ids, days, dot decimals
  bool good = false;                        // it speaks for going on; false: against
};

}  // namespace newel
