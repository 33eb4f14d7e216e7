#include "tests/sim/memory_vfs.h"

#include <algorithm>
#include <cstring>
#include <new>
#include <string>

#include "tests/sim/memory_disk.h"
#include "tests/sim/memory_file.h"

namespace newel::sim {
namespace {

// One connection's open file.
struct Handle {
  sqlite3_file base;
  MemoryDisk* disk;
  std::shared_ptr<FileNode> node;
  std::string path;
  int flags;
  int lock;             // SQLITE_LOCK_...
  unsigned shm_shared;  // bit masks of what this connection holds
  unsigned shm_exclusive;
};

Handle& of(sqlite3_file* file) { return *reinterpret_cast<Handle*>(file); }

void unlockTo(Handle& handle, int level) {
  FileNode& node = *handle.node;
  if (handle.lock >= SQLITE_LOCK_PENDING && level < SQLITE_LOCK_PENDING) node.exclusive = false;
  if (handle.lock >= SQLITE_LOCK_RESERVED && level < SQLITE_LOCK_RESERVED) node.reserved = false;
  if (handle.lock >= SQLITE_LOCK_SHARED && level < SQLITE_LOCK_SHARED)
    node.shared = std::max(0, node.shared - 1);
  handle.lock = std::min(handle.lock, level);
}

int closeFile(sqlite3_file* file) {
  Handle& handle = of(file);
  unlockTo(handle, SQLITE_LOCK_NONE);
  if ((handle.flags & SQLITE_OPEN_DELETEONCLOSE) != 0) handle.disk->remove(handle.path);
  handle.~Handle();
  return SQLITE_OK;
}

int readFile(sqlite3_file* file, void* to, int size, sqlite3_int64 at) {
  const Handle& handle = of(file);
  if (handle.disk->isDead()) return SQLITE_IOERR_READ;
  const std::string& bytes = handle.node->seen;
  const auto from = std::min(static_cast<std::size_t>(at), bytes.size());
  const std::size_t there = std::min(static_cast<std::size_t>(size), bytes.size() - from);
  std::memcpy(to, bytes.data() + from, there);
  if (there == static_cast<std::size_t>(size)) return SQLITE_OK;
  std::memset(static_cast<char*>(to) + there, 0, static_cast<std::size_t>(size) - there);
  return SQLITE_IOERR_SHORT_READ;
}

int writeFile(sqlite3_file* file, const void* bytes, int size, sqlite3_int64 at) {
  Handle& handle = of(file);
  FileNode& node = *handle.node;
  const auto place = static_cast<std::size_t>(at);
  const auto length = static_cast<std::size_t>(size);
  if (handle.disk->isFull() && place + length > node.seen.size()) {
    handle.disk->noteFault();
    return SQLITE_FULL;
  }
  if (handle.disk->isDead()) return SQLITE_IOERR_WRITE;
  const bool goes_on = handle.disk->countWrite();
  // The write that the machine stops at gets as far as the seed says.
  const std::size_t done =
      goes_on ? length : handle.disk->random().between(0, static_cast<std::uint32_t>(length));
  node.pending.push_back({place, std::string(static_cast<const char*>(bytes), done), false});
  writeBytes(node.seen, place, static_cast<const char*>(bytes), done);
  return goes_on ? SQLITE_OK : SQLITE_IOERR_WRITE;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
  Handle& handle = of(file);
  if (!handle.disk->countWrite()) return SQLITE_IOERR_TRUNCATE;
  handle.node->pending.push_back({static_cast<std::size_t>(size), "", true});
  handle.node->seen.resize(static_cast<std::size_t>(size), '\0');
  return SQLITE_OK;
}

int syncFile(sqlite3_file* file, int /*flags*/) {
  Handle& handle = of(file);
  if (!handle.disk->countWrite()) return SQLITE_IOERR_FSYNC;
  if (handle.disk->takeFlushFault()) {
    flushBadly(*handle.node, handle.disk->random());
    return SQLITE_IOERR_FSYNC;
  }
  flush(*handle.node);
  return SQLITE_OK;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) {
  if (of(file).disk->isDead()) return SQLITE_IOERR_FSTAT;
  *size = static_cast<sqlite3_int64>(of(file).node->seen.size());
  return SQLITE_OK;
}

int lockFile(sqlite3_file* file, int level) {
  Handle& handle = of(file);
  FileNode& node = *handle.node;
  if (handle.lock >= level) return SQLITE_OK;
  if (level == SQLITE_LOCK_SHARED) {
    if (node.exclusive) return SQLITE_BUSY;
    ++node.shared;
    handle.lock = level;
    return SQLITE_OK;
  }
  if (handle.lock < SQLITE_LOCK_RESERVED) {
    if (node.reserved) return SQLITE_BUSY;
    node.reserved = true;
    handle.lock = SQLITE_LOCK_RESERVED;
  }
  if (level == SQLITE_LOCK_RESERVED) return SQLITE_OK;
  if (handle.lock < SQLITE_LOCK_PENDING && node.exclusive) return SQLITE_BUSY;
  node.exclusive = true;
  handle.lock = SQLITE_LOCK_PENDING;
  if (node.shared > 1) return SQLITE_BUSY;
  handle.lock = SQLITE_LOCK_EXCLUSIVE;
  return SQLITE_OK;
}

int unlockFile(sqlite3_file* file, int level) {
  unlockTo(of(file), level);
  return SQLITE_OK;
}

int checkReserved(sqlite3_file* file, int* out) {
  *out = of(file).node->reserved ? 1 : 0;
  return SQLITE_OK;
}

int shmMap(sqlite3_file* file, int region, int size, int extend, void volatile** out) {
  auto& shm = of(file).node->shm;
  *out = nullptr;
  while (static_cast<int>(shm.size()) <= region) {
    if (extend == 0) return SQLITE_OK;
    shm.push_back(std::make_unique<char[]>(static_cast<std::size_t>(size)));
  }
  *out = shm[static_cast<std::size_t>(region)].get();
  return SQLITE_OK;
}

int shmRelease(Handle& handle, unsigned mask, int at, int count) {
  for (int i = at; i < at + count; ++i) {
    const auto slot = static_cast<std::size_t>(i);
    if ((handle.shm_exclusive & (1U << slot)) != 0) handle.node->shm_exclusive[slot] = false;
    if ((handle.shm_shared & (1U << slot)) != 0) --handle.node->shm_shared[slot];
  }
  handle.shm_exclusive &= ~mask;
  handle.shm_shared &= ~mask;
  return SQLITE_OK;
}

int shmLock(sqlite3_file* file, int at, int count, int flags) {
  Handle& handle = of(file);
  FileNode& node = *handle.node;
  const unsigned mask = ((1U << static_cast<unsigned>(count)) - 1U) << static_cast<unsigned>(at);
  if ((flags & SQLITE_SHM_UNLOCK) != 0) return shmRelease(handle, mask, at, count);
  if ((flags & SQLITE_SHM_SHARED) != 0) {
    const auto slot = static_cast<std::size_t>(at);
    if ((handle.shm_shared & mask) != 0) return SQLITE_OK;
    if (node.shm_exclusive[slot]) return SQLITE_BUSY;
    ++node.shm_shared[slot];
    handle.shm_shared |= mask;
    return SQLITE_OK;
  }
  for (int i = at; i < at + count; ++i) {
    const auto slot = static_cast<std::size_t>(i);
    const int others = node.shm_shared[slot] - (((handle.shm_shared >> slot) & 1U) != 0 ? 1 : 0);
    const bool mine = ((handle.shm_exclusive >> slot) & 1U) != 0;
    if (others > 0 || (node.shm_exclusive[slot] && !mine)) return SQLITE_BUSY;
  }
  for (int i = at; i < at + count; ++i) node.shm_exclusive[static_cast<std::size_t>(i)] = true;
  handle.shm_exclusive |= mask;
  return SQLITE_OK;
}

int shmUnmap(sqlite3_file* file, int gone) {
  Handle& handle = of(file);
  shmRelease(handle, ~0U, 0, kShmLocks);
  if (gone != 0) handle.node->shm.clear();
  return SQLITE_OK;
}

const sqlite3_io_methods* methods() {
  static const sqlite3_io_methods kMethods = [] {
    sqlite3_io_methods m{};
    m.iVersion = 2;
    m.xClose = closeFile;
    m.xRead = readFile;
    m.xWrite = writeFile;
    m.xTruncate = truncateFile;
    m.xSync = syncFile;
    m.xFileSize = sizeOfFile;
    m.xLock = lockFile;
    m.xUnlock = unlockFile;
    m.xCheckReservedLock = checkReserved;
    m.xFileControl = [](sqlite3_file*, int, void*) { return SQLITE_NOTFOUND; };
    m.xSectorSize = [](sqlite3_file*) { return 512; };
    // As SQLite's own layer for Linux says of every file system it does not know.
    m.xDeviceCharacteristics = [](sqlite3_file*) { return SQLITE_IOCAP_POWERSAFE_OVERWRITE; };
    m.xShmMap = shmMap;
    m.xShmLock = shmLock;
    m.xShmBarrier = [](sqlite3_file*) {};
    m.xShmUnmap = shmUnmap;
    return m;
  }();
  return &kMethods;
}

MemoryDisk* diskOf(sqlite3_vfs* vfs) { return static_cast<MemoryDisk*>(vfs->pAppData); }

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* out_flags) {
  MemoryDisk* disk = diskOf(vfs);
  file->pMethods = nullptr;
  if (disk->isDead()) return SQLITE_CANTOPEN;
  // No name: for sorting and the like; nobody else opens it.
  const std::string path = name == nullptr ? "temporary-" + std::to_string(disk->random().next()) : name;
  auto node = disk->find(path);
  if (!node) {
    if ((flags & SQLITE_OPEN_CREATE) == 0) return SQLITE_CANTOPEN;
    node = disk->make(path);
  }
  Handle* handle = new (file) Handle{{methods()}, disk, std::move(node), path, flags, SQLITE_LOCK_NONE, 0, 0};
  static_cast<void>(handle);
  if (out_flags != nullptr) *out_flags = flags;
  return SQLITE_OK;
}

// Taken as durable at once: SQLite deletes its log only when everything in it is flushed elsewhere.
int deleteFile(sqlite3_vfs* vfs, const char* name, int /*sync*/) {
  if (!diskOf(vfs)->countWrite()) return SQLITE_IOERR_DELETE;
  diskOf(vfs)->remove(name);
  return SQLITE_OK;
}

int accessFile(sqlite3_vfs* vfs, const char* name, int /*flags*/, int* out) {
  *out = diskOf(vfs)->find(name) ? 1 : 0;
  return SQLITE_OK;
}

int fullPath(sqlite3_vfs* /*vfs*/, const char* name, int size, char* out) {
  sqlite3_snprintf(size, out, "%s", name);
  return SQLITE_OK;
}

test::SampleRandom& sqliteRandom() {
  static test::SampleRandom random(0);
  return random;
}

int seededRandomness(sqlite3_vfs* /*vfs*/, int size, char* out) {
  sqliteRandom().fill(reinterpret_cast<std::uint8_t*>(out), static_cast<std::size_t>(size));
  return size;
}

}  // namespace

std::unique_ptr<sqlite3_vfs> registerVfs(MemoryDisk* disk) {
  // The date is the system's: no SQL of ours asks for it.
  auto vfs = std::make_unique<sqlite3_vfs>(*sqlite3_vfs_find("unix"));
  vfs->pNext = nullptr;
  vfs->zName = disk->vfsName().c_str();
  vfs->pAppData = disk;
  vfs->szOsFile = static_cast<int>(sizeof(Handle));
  vfs->xOpen = openFile;
  vfs->xDelete = deleteFile;
  vfs->xAccess = accessFile;
  vfs->xFullPathname = fullPath;
  vfs->xRandomness = seededRandomness;
  // One thread: nobody else would free a lock meanwhile, so waiting for it takes no time.
  vfs->xSleep = [](sqlite3_vfs*, int micros) { return micros; };
  sqlite3_vfs_register(vfs.get(), 0);
  return vfs;
}

void unregisterVfs(sqlite3_vfs* vfs) { sqlite3_vfs_unregister(vfs); }

void seedSqlite(std::uint64_t seed) {
  static sqlite3_vfs fed = [] {
    sqlite3_vfs made = *sqlite3_vfs_find("unix");
    made.pNext = nullptr;
    made.zName = "sim-seeded";
    made.xRandomness = seededRandomness;
    return made;
  }();
  static const int kRegistered = sqlite3_vfs_register(&fed, 1);
  static_cast<void>(kRegistered);
  sqliteRandom() = test::SampleRandom(seed);
  sqlite3_randomness(0, nullptr);  // the next number is drawn from the layer anew
}

}  // namespace newel::sim
