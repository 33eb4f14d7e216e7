// The clinic's store as each earlier version of the program left it, kept under tests/data/stores.
#pragma once

#include <string>
#include <vector>

namespace newel::test {

// Versions with a store of their own, the present one last.
std::vector<int> storeVersions();
// Where the store of `version` is kept, or would be.
std::string pastStorePath(const std::string& folder, int version);
// Writes the store of `version` to `path`: its schema, and of what `full` (a store of the present version)
// holds all that this schema has a place for.
void makePastStore(const std::string& full, const std::string& path, int version);
// A clinic that has used everything: a person, two programmes, three practices, words both ways, a hold and
// its lift. Everybody in it is invented. Its store stands at `path`.
void makeFullStore(const std::string& path);

}  // namespace newel::test
