// A secret store in memory, for tests: it may be missing, or refuse to write.
#pragma once

#include <map>

#include "platform/secret_store.h"

namespace newel::platform {

class MemorySecretStore : public SecretStore {
 public:
  bool there = true;
  bool writable = true;
  std::map<std::string, std::string> secrets;

  absl::StatusOr<std::optional<std::string>> read(const std::string& name) override {
    if (!there) return absl::UnavailableError("secret store: none");
    const auto found = secrets.find(name);
    if (found == secrets.end()) return std::optional<std::string>();
    return std::optional<std::string>(found->second);
  }
  absl::Status write(const std::string& name, const std::string& value) override {
    if (!there || !writable) return absl::UnavailableError("secret store: none");
    secrets[name] = value;
    return absl::OkStatus();
  }
  absl::Status erase(const std::string& name) override {
    secrets.erase(name);
    return absl::OkStatus();
  }
};

}  // namespace newel::platform
