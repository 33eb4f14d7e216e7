// One file of a MemoryDisk: what is read, what is on the medium, and SQLite's locks on it.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "tests/core/people/sample_random.h"

namespace newel::sim {

constexpr int kShmLocks = 8;  // SQLITE_SHM_NLOCK

// Not flushed yet: bytes at a place, or a new length.
struct PendingWrite {
  std::size_t at = 0;
  std::string bytes;
  bool truncates = false;
};

struct FileNode {
  std::string seen;     // what a read gives
  std::string durable;  // what is left when the power goes
  std::vector<PendingWrite> pending;

  int shared = 0;  // rollback locks: how many connections hold each
  bool reserved = false;
  bool exclusive = false;
  std::array<int, kShmLocks> shm_shared{};
  std::array<bool, kShmLocks> shm_exclusive{};
  std::vector<std::unique_ptr<char[]>> shm;
};

void writeBytes(std::string& file, std::size_t at, const char* bytes, std::size_t size);
void applyTo(std::string& file, const PendingWrite& write);
// All that was pending reaches the medium.
void flush(FileNode& file);
// Some of it is lost for good, though it can still be read.
void flushBadly(FileNode& file, test::SampleRandom& random);
// The power goes.
void losePower(FileNode& file, test::SampleRandom& random);
void dropLocks(FileNode& file);

}  // namespace newel::sim
