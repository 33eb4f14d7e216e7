// English words of the core's evidence lines, for the command line. The apps have their own, in every
// language.
#pragma once

#include <string>

#include "core/records/evidence.h"

namespace newel::tool {

// The sentence of a line, its arguments filled in. A key without words gives the key and its arguments, so
// that nothing is swallowed.
std::string evidenceText(const EvidenceLine& line);

// True when `key` has words of its own.
bool hasEvidenceWords(const std::string& key);

}  // namespace newel::tool
