#include "qml/home/store_key.h"

#include <absl/strings/escaping.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/time/local_day.h"
#include "sync/common/database.h"
#include "sync/home/seal.h"

namespace newel::home {
namespace {

namespace fs = std::filesystem;

// One store a folder: two phones of one account on one machine have two keys.
std::string nameFor(const std::string& folder) {
  std::error_code error;
  return "store key of " + fs::weakly_canonical(folder, error).string();
}

std::string keyFile(const std::string& folder) { return folder + "/store.key"; }

absl::StatusOr<std::string> keyOf(const std::string& text) {
  std::string hex = text;
  while (!hex.empty() && (hex.back() == '\n' || hex.back() == '\r')) hex.pop_back();
  const bool is_hex =
      hex.size() == 2 * kStoreKeyBytes && hex.find_first_not_of("0123456789abcdef") == std::string::npos;
  if (!is_hex) return absl::DataLossError("the key of this phone's store cannot be read");
  return absl::HexStringToBytes(hex);
}

absl::StatusOr<std::string> keyInFile(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  const std::string text((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  if (!stream && !stream.eof()) return absl::PermissionDeniedError("not allowed: " + path);
  return keyOf(text);
}

// Says, beside the store, that its key is in the system's secret store: where that is away for a while, no
// other key may take its place.
std::string placeMark(const std::string& folder) { return folder + "/store.key-in-system"; }

absl::Status keepInFolder(const std::string& folder, const std::string& file, const std::string& text) {
  const absl::Status made = ensurePrivateFolder(folder);
  return made.ok() ? writePrivateFile(file, text) : made;
}

// Where the key is while it is being changed, and where it goes: the same place as the key itself.
constexpr char kNext[] = " next";
std::string nextFile(const std::string& folder) { return keyFile(folder) + ".next"; }

absl::StatusOr<std::optional<std::string>> nextKey(const std::string& folder,
                                                   platform::SecretStore& secrets) {
  if (fs::exists(keyFile(folder))) {
    if (!fs::exists(nextFile(folder))) return std::optional<std::string>();
    auto key = keyInFile(nextFile(folder));
    // A file that was cut off by a crash was never used.
    if (!key.ok()) return std::optional<std::string>();
    return std::optional<std::string>(*std::move(key));
  }
  const auto kept = secrets.read(nameFor(folder) + kNext);
  if (!kept.ok()) return kept.status();
  if (!kept->has_value()) return std::optional<std::string>();
  auto key = keyOf(**kept);
  if (!key.ok()) return key.status();
  return std::optional<std::string>(*std::move(key));
}

absl::Status replaceFile(const std::string& path, const std::string& text) {
  const std::string part = path + ".part";
  std::error_code error;
  fs::remove(part, error);
  absl::Status written = writePrivateFile(part, text);
  if (!written.ok()) return written;
  fs::rename(part, path, error);
  return error ? absl::PermissionDeniedError(path + ": " + error.message()) : absl::OkStatus();
}

absl::Status keepKey(const std::string& folder, platform::SecretStore& secrets, const std::string& key,
                     bool next) {
  const std::string text = absl::BytesToHexString(key);
  if (fs::exists(keyFile(folder))) return replaceFile(next ? nextFile(folder) : keyFile(folder), text + "\n");
  return secrets.write(nameFor(folder) + (next ? kNext : ""), text);
}

absl::Status dropNext(const std::string& folder, platform::SecretStore& secrets) {
  std::error_code error;
  fs::remove(nextFile(folder), error);
  return fs::exists(keyFile(folder)) ? absl::OkStatus() : secrets.erase(nameFor(folder) + kNext);
}

}  // namespace

absl::StatusOr<std::string> storeKey(const std::string& folder, platform::SecretStore& secrets,
                                     Random& random, const std::function<bool()>& ask_for_file) {
  const std::string file = keyFile(folder);
  if (fs::exists(file)) return keyInFile(file);
  const std::string name = nameFor(folder);
  const auto kept = secrets.read(name);
  if (kept.ok() && kept->has_value()) return keyOf(**kept);
  if (!kept.ok() && fs::exists(placeMark(folder))) return kept.status();
  const std::string key = newStoreKey(random);
  const std::string text = absl::BytesToHexString(key);
  if (kept.ok() && secrets.write(name, text).ok()) {
    if (fs::exists(placeMark(folder))) return key;
    const absl::Status marked = keepInFolder(folder, placeMark(folder), "");
    if (!marked.ok()) return marked;
    return key;
  }
  if (!ask_for_file()) return absl::CancelledError("no place to keep the key of this phone's store");
  const absl::Status made = keepInFolder(folder, file, text + "\n");
  if (!made.ok()) return made;
  return key;
}

absl::StatusOr<std::unique_ptr<HomeEngine>> openWithKey(HomeEngine::Options options,
                                                        platform::SecretStore& secrets,
                                                        const std::function<bool()>& ask_for_file) {
  const std::string folder = options.folder;
  const auto key = storeKey(folder, secrets, *options.random, ask_for_file);
  if (!key.ok()) return key.status();
  const auto next = nextKey(folder, secrets);
  if (!next.ok()) return next.status();
  options.store_key = *key;
  auto engine = HomeEngine::open(options);
  if (!next->has_value()) return engine;
  const bool changed = absl::IsPermissionDenied(engine.status());
  if (changed) {
    options.store_key = **next;
    engine = HomeEngine::open(options);
  }
  if (!engine.ok()) return engine;
  const absl::Status kept = changed ? keepKey(folder, secrets, **next, false) : absl::OkStatus();
  // One that cannot be tidied up now is found again at the next start.
  if (kept.ok()) dropNext(folder, secrets).IgnoreError();
  return engine;
}

bool keyIsOld(const HomeEngine& engine, absl::Time now) {
  std::optional<absl::Time> since = engine.storeKeySince();
  if (!since.has_value()) {
    since = engine.firstPracticeAt();
    if (!since.has_value()) return false;
  }
  return now - *since > kStoreKeyLife;
}

absl::Status changeKey(HomeEngine& engine, const std::string& folder, platform::SecretStore& secrets,
                       Random& random) {
  // The copy beside may be the only one of the key in use, when an earlier change was cut off after 2.
  const auto unfinished = nextKey(folder, secrets);
  if (!unfinished.ok()) return unfinished.status();
  if (unfinished->has_value()) return absl::FailedPreconditionError("an earlier change is not finished yet");
  const std::string key = newStoreKey(random);
  absl::Status kept = keepKey(folder, secrets, key, true);
  if (!kept.ok()) return kept;
  absl::Status sealed = engine.changeStoreKey(key);
  if (!sealed.ok()) return sealed;
  kept = keepKey(folder, secrets, key, false);
  if (!kept.ok()) return kept;
  return dropNext(folder, secrets);
}

}  // namespace newel::home
