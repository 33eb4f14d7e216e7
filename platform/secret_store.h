// Where the system keeps a program's secrets, locked with the person's own login. Values are bytes.
// Calls may wait for the system; on the UI thread.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <optional>
#include <string>

namespace newel::platform {

class SecretStore {
 public:
  virtual ~SecretStore() = default;
  // nullopt: nothing of that name. kUnavailable: this system has no such store, or it does not answer.
  virtual absl::StatusOr<std::optional<std::string>> read(const std::string& name) = 0;
  virtual absl::Status write(const std::string& name, const std::string& value) = 0;
  virtual absl::Status erase(const std::string& name) = 0;
};

// The system's own.
std::unique_ptr<SecretStore> makeSecretStore();

}  // namespace newel::platform
