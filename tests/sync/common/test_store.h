// Where test clinics keep their things: SQLite in their folder, or, in a program that is linked with
// postgres_test_store.cpp, a database of a PostgreSQL server that the program starts for itself.
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <map>
#include <memory>
#include <string>

#include "sync/hub/hub_store.h"

namespace newel::test {

class TestStore {
 public:
  virtual ~TestStore() = default;
  // Again gives what another process on the same machine would have: its own connections, the same tables.
  virtual absl::StatusOr<std::unique_ptr<HubStore>> open() = 0;
  // As the hub's commands take it: a folder, or where the database is.
  virtual std::string address() const = 0;
  // As somebody who has the store open does behind the hub's back. Throws when it cannot be done.
  virtual void tamper(const std::string& sql) = 0;
  // Every table, and all the bytes in it.
  virtual std::map<std::string, std::string> dump() = 0;
};

using TestStoreMaker = std::function<std::unique_ptr<TestStore>(const std::string& folder)>;

// What TestClinic uses, to be set before main.
TestStoreMaker& testStoreMaker();

}  // namespace newel::test
