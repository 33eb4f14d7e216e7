#include "tests/sim/memory_disk.h"

#include <utility>

#include "tests/sim/memory_file.h"
#include "tests/sim/memory_vfs.h"

namespace newel::sim {
namespace {

constexpr char kAside[] = ".set-aside";
constexpr std::size_t kPageBytes = 4096;  // SQLite's default

}  // namespace

MemoryDisk::MemoryDisk(const std::string& name, std::uint64_t seed)
    : m_name(name), m_random(seed), m_vfs(registerVfs(this)) {}

MemoryDisk::~MemoryDisk() { unregisterVfs(m_vfs.get()); }

void MemoryDisk::reboot(bool power_lost) {
  for (auto& [path, file] : m_files) {
    if (power_lost) losePower(*file, m_random);
    dropLocks(*file);
  }
  m_dead = false;
  m_writes_left = -1;
}

void MemoryDisk::heal() {
  m_full = false;
  m_flushes_to_fail = 0;
  m_writes_left = -1;
}

MemoryDisk::Image MemoryDisk::image() const {
  Image image;
  for (const auto& [path, file] : m_files) image[path] = file->seen;
  return image;
}

void MemoryDisk::restore(const Image& image) {
  m_files.clear();
  for (const auto& [path, bytes] : image) {
    const auto file = make(path);
    file->seen = file->durable = bytes;
  }
}

bool MemoryDisk::damagePage(const std::string& path) {
  const auto file = find(path);
  if (!file || file->seen.size() < kPageBytes) return false;
  const auto pages = static_cast<std::uint32_t>(file->seen.size() / kPageBytes);
  const std::size_t at = random().between(0, pages - 1) * kPageBytes;
  random().fill(reinterpret_cast<std::uint8_t*>(file->seen.data() + at), kPageBytes);
  file->durable = file->seen;
  file->pending.clear();
  return true;
}

void MemoryDisk::moveAside(const std::string& path) {
  for (const char* suffix : {"", "-wal", "-journal"}) {
    const auto found = m_files.find(path + suffix);
    if (found == m_files.end()) continue;
    m_files[path + kAside + suffix] = found->second;
    m_files.erase(path + suffix);
  }
}

bool MemoryDisk::contains(const std::string& bytes) const {
  for (const auto& [path, file] : m_files) {
    if (path.find(kAside) == std::string::npos && file->seen.find(bytes) != std::string::npos) return true;
  }
  return false;
}

std::shared_ptr<FileNode> MemoryDisk::find(const std::string& path) const {
  const auto found = m_files.find(path);
  return found == m_files.end() ? nullptr : found->second;
}

std::shared_ptr<FileNode> MemoryDisk::make(const std::string& path) {
  auto& slot = m_files[path];
  if (!slot) slot = std::make_shared<FileNode>();
  return slot;
}

bool MemoryDisk::countWrite() {
  if (m_dead) return false;
  ++m_writes;
  if (m_writes_left < 0) return true;
  if (m_writes_left-- > 0) return true;
  m_dead = true;
  ++m_faults;
  return false;
}

bool MemoryDisk::takeFlushFault() {
  if (m_flushes_to_fail == 0) return false;
  --m_flushes_to_fail;
  ++m_faults;
  return true;
}

}  // namespace newel::sim
