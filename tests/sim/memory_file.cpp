#include "tests/sim/memory_file.h"

#include <algorithm>
#include <cstring>

namespace newel::sim {
namespace {

// A medium writes sectors: a torn write ends at one of their borders. 512 is the smallest in use.
constexpr std::size_t kSector = 512;

void applyPart(std::string& file, const PendingWrite& write, test::SampleRandom& random) {
  switch (random.between(0, 3)) {
    case 0:
      return;
    case 1: {
      if (write.truncates) return;
      const std::size_t sectors = write.bytes.size() / kSector;
      const std::size_t kept = random.between(0, static_cast<std::uint32_t>(sectors)) * kSector;
      writeBytes(file, write.at, write.bytes.data(), std::min(kept, write.bytes.size()));
      return;
    }
    default:
      applyTo(file, write);
  }
}

}  // namespace

void writeBytes(std::string& file, std::size_t at, const char* bytes, std::size_t size) {
  if (size == 0) return;
  if (file.size() < at + size) file.resize(at + size, '\0');
  std::memcpy(file.data() + at, bytes, size);
}

void applyTo(std::string& file, const PendingWrite& write) {
  if (write.truncates) {
    file.resize(write.at, '\0');
  } else {
    writeBytes(file, write.at, write.bytes.data(), write.bytes.size());
  }
}

void flush(FileNode& file) {
  for (const auto& write : file.pending) applyTo(file.durable, write);
  file.pending.clear();
}

void flushBadly(FileNode& file, test::SampleRandom& random) {
  for (const auto& write : file.pending) {
    if (random.chance(50)) applyTo(file.durable, write);
  }
  file.pending.clear();
}

void losePower(FileNode& file, test::SampleRandom& random) {
  for (const auto& write : file.pending) applyPart(file.durable, write, random);
  file.pending.clear();
  file.seen = file.durable;
}

void dropLocks(FileNode& file) {
  file.shared = 0;
  file.reserved = file.exclusive = false;
  file.shm_shared.fill(0);
  file.shm_exclusive.fill(false);
  file.shm.clear();
}

}  // namespace newel::sim
