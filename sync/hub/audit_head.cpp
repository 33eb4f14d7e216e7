#include "sync/hub/audit_head.h"

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <system_error>

#include "sync/common/database.h"
#include "sync/common/text_codes.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kHashBytes = 32;
constexpr std::size_t kLongestText = 4096;
constexpr char kTimeForm[] = "%Y-%m-%dT%H:%M:%SZ";

absl::Status noHead() { return absl::InvalidArgumentError("head: this is no signed head of an audit trail"); }

// As in audit_trail.cpp: sorted keys, no spaces, which for such values is RFC 8785.
std::string canonical(const nlohmann::json& object) {
  return object.dump(-1, ' ', /*ensure_ascii=*/false, nlohmann::json::error_handler_t::replace);
}

std::string textOf(const nlohmann::json& object, const char* name) {
  const auto found = object.find(name);
  return found != object.end() && found->is_string() ? found->get<std::string>() : "";
}

std::uint64_t numberOf(const nlohmann::json& object) {
  const auto found = object.find("n");
  return found != object.end() && found->is_number_unsigned() ? found->get<std::uint64_t>() : 0;
}

}  // namespace

std::string formatAuditHead(const AuditHead& head, const std::string& clinic_id, const ClinicKey& key,
                            absl::Time at) {
  nlohmann::json object;
  object["clinic"] = clinic_id;
  object["hash"] = toHex(head.hash);
  object["key"] = toHex(key.public_key);
  object["n"] = head.n;
  object["t"] = absl::FormatTime(kTimeForm, at, absl::UTCTimeZone());
  const std::string signature = signAuditHead(canonical(object), key);
  object["signature"] = toBase64Url(signature);
  return canonical(object) + "\n";
}

absl::StatusOr<SignedAuditHead> parseAuditHead(const std::string& text) {
  if (text.size() > kLongestText) return noHead();
  nlohmann::json object = nlohmann::json::parse(text, nullptr, /*allow_exceptions=*/false);
  if (!object.is_object()) return noHead();
  SignedAuditHead result;
  result.head.n = numberOf(object);
  result.clinic_id = textOf(object, "clinic");
  const auto hash = fromHex(textOf(object, "hash"));
  const auto key = fromHex(textOf(object, "key"));
  const auto signature = fromBase64Url(textOf(object, "signature"));
  const bool timed = absl::ParseTime(absl::RFC3339_full, textOf(object, "t"), &result.at, nullptr);
  if (result.head.n == 0 || !hash.ok() || hash->size() != kHashBytes || !key.ok() || !signature.ok() ||
      !timed) {
    return noHead();
  }
  result.head.hash = *hash;
  result.public_key = *key;
  object.erase("signature");
  if (!verifyAuditHead(canonical(object), *signature, *key).ok()) {
    return absl::DataLossError("head: its signature does not fit, so it was changed");
  }
  return result;
}

absl::StatusOr<AuditHead> readAuditHead(HubStore& store) {
  std::optional<AuditRow> last;
  const absl::Status read = store.read([&](HubTransaction& transaction) {
    last = transaction.lastAudit();
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!last.has_value()) return absl::NotFoundError("no line has been written yet");
  return AuditHead{last->n, last->hash};
}

absl::Status writeHeadFile(const std::string& path, const std::string& text) {
  // 1. Whole and on the disk under another name. 2. Renamed. A crash before 2 leaves what was there.
  const std::string part = path + ".part";
  std::error_code error;
  fs::remove(part, error);
  absl::Status written = writePrivateFile(part, text);
  if (!written.ok()) return written;
  const int file = ::open(part.c_str(), O_RDONLY | O_CLOEXEC);
  const bool flushed = file >= 0 && ::fsync(file) == 0;
  if (file >= 0) ::close(file);
  if (!flushed) return absl::ResourceExhaustedError("could not write all of " + path);
  fs::rename(part, path, error);
  return error ? absl::PermissionDeniedError(path + ": " + error.message()) : absl::OkStatus();
}

absl::StatusOr<std::string> writeDailyHead(const std::string& folder, HubStore& store, const Clinic& clinic,
                                           absl::Time at) {
  // One that is there may be a share of another machine, and keeps the rights it has.
  const absl::Status made = fs::exists(folder) ? absl::OkStatus() : ensurePrivateFolder(folder);
  if (!made.ok()) return made;
  const std::string day = absl::FormatTime("%Y-%m-%d", at, absl::UTCTimeZone());
  std::string path = folder + "/audit-head-" + day + ".json";
  if (fs::exists(path)) return std::string();
  const auto head = readAuditHead(store);
  if (!head.ok()) return head.status();
  const absl::Status written =
      writeHeadFile(path, formatAuditHead(*head, clinic.card.clinic_id(), clinic.key, at));
  if (!written.ok()) return written;
  return path;
}

}  // namespace newel
