// A secret store that outlives its process, for tests that end one: each secret a file, written new and
// renamed.
#pragma once

#include <csignal>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <string>

#include "platform/secret_store.h"

namespace newel::tests {

class FolderSecretStore : public platform::SecretStore {
 public:
  explicit FolderSecretStore(std::string folder) : m_folder(std::move(folder)) {
    std::filesystem::create_directories(m_folder);
  }
  bool there = true;
  // Ends the process at the `step`-th change from now: odd before it is made, even after it. 0: never.
  void dieAt(int step) { m_left = step; }

  absl::StatusOr<std::optional<std::string>> read(const std::string& name) override {
    if (!there) return absl::UnavailableError("secret store: none");
    std::ifstream stream(path(name));
    if (!stream) return std::optional<std::string>();
    return std::optional<std::string>(std::string(std::istreambuf_iterator<char>(stream), {}));
  }
  absl::Status write(const std::string& name, const std::string& value) override {
    if (!there) return absl::UnavailableError("secret store: none");
    step();
    std::ofstream(path(name) + ".part") << value;
    std::filesystem::rename(path(name) + ".part", path(name));
    step();
    return absl::OkStatus();
  }
  absl::Status erase(const std::string& name) override {
    step();
    std::filesystem::remove(path(name));
    step();
    return absl::OkStatus();
  }

 private:
  std::string path(const std::string& name) const {
    return m_folder + "/" + std::to_string(std::hash<std::string>()(name));
  }
  void step() {
    if (m_left > 0 && --m_left == 0) raise(SIGKILL);
  }
  const std::string m_folder;
  int m_left = 0;
};

}  // namespace newel::tests
