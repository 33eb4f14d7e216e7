// A disk in memory that SQLite writes to through a file layer of its own, so that power cuts, torn writes,
// full disks, failed flushes and damaged pages come exactly when a seed says so.
//
// What is modelled: a write is seen at once by everybody, but only a flush (xSync) puts it onto the medium.
// When the power goes, each write that was not flushed has reached the medium whole, in part (its beginning),
// or not at all, each independently of the others. A failed flush loses some of them for good although they
// can still be read, as systems with a page cache do (fsync after an error reports success again).
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "tests/core/people/sample_random.h"

struct sqlite3_vfs;

namespace newel::sim {

struct FileNode;

class MemoryDisk {
 public:
  // `name` must differ from that of every other disk that lives. The first one made serves SQLite's
  // randomness too, so that its numbers come from a seed.
  MemoryDisk(const std::string& name, std::uint64_t seed);
  ~MemoryDisk();
  MemoryDisk(const MemoryDisk&) = delete;
  MemoryDisk& operator=(const MemoryDisk&) = delete;

  const std::string& vfsName() const { return m_name; }

  // After `writes` more writes or flushes the machine stops: that one is torn or lost, and everything fails
  // from there on until reboot().
  void stopAfter(int writes) { m_writes_left = writes; }
  bool isDead() const { return m_dead; }
  // No connection may be open. `power_lost`: unflushed writes are at the mercy of the seed; otherwise only
  // the program died, and the system keeps what it was given.
  void reboot(bool power_lost);

  void setFull(bool full) { m_full = full; }
  bool isFull() const { return m_full; }
  void failFlushes(int times) { m_flushes_to_fail = times; }
  // Faults that have come true so far. An operation during which it stays the same has no excuse.
  std::uint64_t faults() const { return m_faults; }
  void noteFault() { ++m_faults; }
  void heal();

  using Image = std::map<std::string, std::string>;
  // What every file holds now. No transaction may be open.
  Image image() const;
  // No connection may be open. All is as it was when the image was taken.
  void restore(const Image& image);
  // Fills one page of `file` with rubbish. No connection may be open. False when there is no such page.
  bool damagePage(const std::string& file);
  // `file` and what belongs to it get a new name that nobody opens.
  void moveAside(const std::string& file);
  bool contains(const std::string& bytes) const;  // in any file that is not set aside, as it would be read
  std::uint64_t writes() const { return m_writes; }

  // For the file layer.
  std::shared_ptr<FileNode> find(const std::string& path) const;
  std::shared_ptr<FileNode> make(const std::string& path);
  void remove(const std::string& path) { m_files.erase(path); }
  // False: the machine stops at this write or flush.
  bool countWrite();
  bool takeFlushFault();
  test::SampleRandom& random() { return m_random; }

 private:
  std::string m_name;
  test::SampleRandom m_random;
  std::map<std::string, std::shared_ptr<FileNode>> m_files;
  std::unique_ptr<sqlite3_vfs> m_vfs;
  int m_writes_left = -1;  // under 0: no stop is planned
  int m_flushes_to_fail = 0;
  bool m_full = false;
  bool m_dead = false;
  std::uint64_t m_writes = 0;
  std::uint64_t m_faults = 0;
};

}  // namespace newel::sim
