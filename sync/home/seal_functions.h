// The seal as functions of SQL, so that a statement seals what it writes and opens what it reads:
// seal(bytes, table, key...), unseal(bytes, table, key...), reseal(...) from the present to the next seal,
// and try_unseal(...), NULL for what is damaged, where one bad record must not stand in the way of others.
// Their errors are SQLite's: SQLITE_AUTH sealed with another key, SQLITE_CORRUPT damaged.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <memory>

#include "sync/home/seal.h"

namespace newel {

// Both outlive the database.
struct Seals {
  const std::unique_ptr<Seal>* now = nullptr;
  const std::unique_ptr<Seal>* next = nullptr;
};
// `seals` is copied; it must point at what outlives the database.
void addSealFunctions(SQLite::Database& database, const Seals& seals);

}  // namespace newel
