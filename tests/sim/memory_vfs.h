// SQLite's file layer over a MemoryDisk.
#pragma once

#include <sqlite3.h>

#include <memory>

namespace newel::sim {

class MemoryDisk;

// Registers a layer under the disk's name. `disk` outlives it and every connection through it.
std::unique_ptr<sqlite3_vfs> registerVfs(MemoryDisk* disk);
void unregisterVfs(sqlite3_vfs* vfs);

// SQLite has one source of randomness for the whole process, fed by the default file layer: from here on by a
// seed, so that a replay writes the same bytes.
void seedSqlite(std::uint64_t seed);

}  // namespace newel::sim
