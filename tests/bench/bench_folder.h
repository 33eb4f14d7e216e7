// A folder of its own for one benchmark, on the disk that is measured, gone at the end.
#pragma once

#include <filesystem>
#include <string>

namespace newel::bench {

class BenchFolder {
 public:
  explicit BenchFolder(const std::string& name)
      : m_path(std::filesystem::current_path() / ("newel-bench-" + name)) {
    std::filesystem::remove_all(m_path);
    std::filesystem::create_directories(m_path);
  }
  ~BenchFolder() { std::filesystem::remove_all(m_path); }
  BenchFolder(const BenchFolder&) = delete;
  BenchFolder& operator=(const BenchFolder&) = delete;
  std::string path() const { return m_path.string(); }

 private:
  std::filesystem::path m_path;
};

}  // namespace newel::bench
