#include "qml/home/store_key.h"

#include <absl/strings/escaping.h>

#include <filesystem>
#include <fstream>
#include <iterator>

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

}  // namespace newel::home
