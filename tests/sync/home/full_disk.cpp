#include "tests/sync/home/full_disk.h"

#include <sqlite3.h>

#include <atomic>
#include <cstring>
#include <new>

namespace newel::test {
namespace {

std::atomic<bool> g_full{false};

// Our file, followed in memory by the real one.
struct File {
  sqlite3_file base;
  sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

sqlite3_file* realOf(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real(); }
sqlite3_vfs* realVfs() { return sqlite3_vfs_find("unix"); }

int writeUnlessFull(sqlite3_file* file, const void* bytes, int size, sqlite3_int64 offset) {
  sqlite3_file* real = realOf(file);
  sqlite3_int64 length = 0;
  real->pMethods->xFileSize(real, &length);
  if (g_full && offset + size > length) return SQLITE_FULL;
  return real->pMethods->xWrite(real, bytes, size, offset);
}

const sqlite3_io_methods* methods() {
  static const sqlite3_io_methods kMethods = [] {
    sqlite3_io_methods m{};
    m.iVersion = 2;
    m.xClose = [](sqlite3_file* f) { return realOf(f)->pMethods->xClose(realOf(f)); };
    m.xRead = [](sqlite3_file* f, void* to, int n, sqlite3_int64 at) {
      return realOf(f)->pMethods->xRead(realOf(f), to, n, at);
    };
    m.xWrite = writeUnlessFull;
    m.xTruncate = [](sqlite3_file* f, sqlite3_int64 n) {
      return realOf(f)->pMethods->xTruncate(realOf(f), n);
    };
    m.xSync = [](sqlite3_file* f, int flags) { return realOf(f)->pMethods->xSync(realOf(f), flags); };
    m.xFileSize = [](sqlite3_file* f, sqlite3_int64* n) {
      return realOf(f)->pMethods->xFileSize(realOf(f), n);
    };
    m.xLock = [](sqlite3_file* f, int l) { return realOf(f)->pMethods->xLock(realOf(f), l); };
    m.xUnlock = [](sqlite3_file* f, int l) { return realOf(f)->pMethods->xUnlock(realOf(f), l); };
    m.xCheckReservedLock = [](sqlite3_file* f, int* out) {
      return realOf(f)->pMethods->xCheckReservedLock(realOf(f), out);
    };
    m.xFileControl = [](sqlite3_file* f, int op, void* arg) {
      return realOf(f)->pMethods->xFileControl(realOf(f), op, arg);
    };
    m.xSectorSize = [](sqlite3_file* f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); };
    m.xDeviceCharacteristics = [](sqlite3_file* f) {
      return realOf(f)->pMethods->xDeviceCharacteristics(realOf(f));
    };
    m.xShmMap = [](sqlite3_file* f, int page, int size, int extend, void volatile** to) {
      return realOf(f)->pMethods->xShmMap(realOf(f), page, size, extend, to);
    };
    m.xShmLock = [](sqlite3_file* f, int at, int n, int flags) {
      return realOf(f)->pMethods->xShmLock(realOf(f), at, n, flags);
    };
    m.xShmBarrier = [](sqlite3_file* f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); };
    m.xShmUnmap = [](sqlite3_file* f, int gone) { return realOf(f)->pMethods->xShmUnmap(realOf(f), gone); };
    return m;
  }();
  return &kMethods;
}

int openFile(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* out_flags) {
  File* ours = new (file) File();
  const int opened = realVfs()->xOpen(realVfs(), name, ours->real(), flags, out_flags);
  if (opened == SQLITE_OK) ours->base.pMethods = methods();
  return opened;
}

}  // namespace

std::string fullDiskVfs() {
  static sqlite3_vfs vfs = [] {
    sqlite3_vfs made = *realVfs();  // all but opening is the real one's
    made.zName = "newel-full-disk";
    made.szOsFile = static_cast<int>(sizeof(File)) + realVfs()->szOsFile;
    made.xOpen = openFile;
    return made;
  }();
  static const int registered = sqlite3_vfs_register(&vfs, 0);
  return registered == SQLITE_OK ? vfs.zName : "";
}

void setDiskFull(bool full) { g_full = full; }

}  // namespace newel::test
