// SQLite's own file layer with a disk that is full when the test says so.
#pragma once

#include <string>

namespace newel::test {

// Registers the layer once and returns its name, for HomeEngine::Options::sqlite_vfs.
std::string fullDiskVfs();
// From now on every write that would make a file longer fails as on a full disk. Any thread.
void setDiskFull(bool full);

}  // namespace newel::test
