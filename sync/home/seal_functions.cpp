#include "sync/home/seal_functions.h"

#include <sqlite3.h>

#include <string>

namespace newel {
namespace {

std::string bytesOf(sqlite3_value* value) {
  const void* const bytes = sqlite3_value_blob(value);
  const int size = sqlite3_value_bytes(value);
  return bytes == nullptr ? std::string() : std::string(static_cast<const char*>(bytes), size);
}

// "table/key/key": where the record belongs.
std::string placeOf(int count, sqlite3_value** values) {
  std::string place;
  for (int i = 1; i < count; ++i) {
    if (!place.empty()) place += '/';
    place += reinterpret_cast<const char*>(sqlite3_value_text(values[i]));
  }
  return place;
}

const Seals& sealsOf(sqlite3_context* context) {
  return *static_cast<const Seals*>(sqlite3_user_data(context));
}

void give(sqlite3_context* context, const std::string& bytes) {
  sqlite3_result_blob(context, bytes.data(), static_cast<int>(bytes.size()), SQLITE_TRANSIENT);
}

void fail(sqlite3_context* context, const absl::Status& status) {
  sqlite3_result_error(context, std::string(status.message()).c_str(), -1);
  sqlite3_result_error_code(context, absl::IsPermissionDenied(status) ? SQLITE_AUTH : SQLITE_CORRUPT);
}

void seal(sqlite3_context* context, int count, sqlite3_value** values) {
  give(context, (*sealsOf(context).now)->seal(bytesOf(values[0]), placeOf(count, values)));
}

void unseal(sqlite3_context* context, int count, sqlite3_value** values) {
  const auto plain = (*sealsOf(context).now)->open(bytesOf(values[0]), placeOf(count, values));
  plain.ok() ? give(context, *plain) : fail(context, plain.status());
}

void tryUnseal(sqlite3_context* context, int count, sqlite3_value** values) {
  const auto plain = (*sealsOf(context).now)->open(bytesOf(values[0]), placeOf(count, values));
  if (plain.ok()) return give(context, *plain);
  absl::IsDataLoss(plain.status()) ? sqlite3_result_null(context) : fail(context, plain.status());
}

void reseal(sqlite3_context* context, int count, sqlite3_value** values) {
  const std::string place = placeOf(count, values);
  const auto plain = (*sealsOf(context).now)->open(bytesOf(values[0]), place);
  plain.ok() ? give(context, (*sealsOf(context).next)->seal(*plain, place)) : fail(context, plain.status());
}

void forget(void* seals) { delete static_cast<Seals*>(seals); }

}  // namespace

void addSealFunctions(SQLite::Database& database, const Seals& seals) {
  constexpr int kAnyCount = -1;
  constexpr bool kDeterministic = false;
  using Function = void (*)(sqlite3_context*, int, sqlite3_value**);
  const auto add = [&](const char* name, Function function) {
    database.createFunction(name, kAnyCount, kDeterministic, new Seals(seals), function, nullptr, nullptr,
                            forget);
  };
  add("seal", seal);
  add("unseal", unseal);
  add("try_unseal", tryUnseal);
  add("reseal", reseal);
}

}  // namespace newel
