#include "sync/hub/audit_trail.h"

#include <nlohmann/json.hpp>

#include "sync/common/content_hash.h"

namespace newel {
namespace {

constexpr std::size_t kHashBytes = 32;
constexpr std::size_t kMostWindows = 10000;

}  // namespace

std::string chainHash(const std::string& previous_hash, const std::string& entry) {
  return sha256(previous_hash + entry);
}

std::string auditEntry(const AuditEvent& event, std::uint64_t n, absl::Time at) {
  // nlohmann::json sorts its keys by bytes, writes no spaces and RFC 8785's escapes; ours are ASCII keys,
  // strings and one integer, where that is all the RFC asks for.
  nlohmann::json entry;
  entry["a"] = event.action;
  entry["n"] = n;
  entry["t"] = absl::FormatTime("%Y-%m-%dT%H:%M:%SZ", at, absl::UTCTimeZone());
  if (!event.who.empty()) entry["w"] = event.who;
  if (!event.person.empty()) entry["p"] = event.person;
  if (!event.record.empty()) entry["r"] = event.record;
  if (!event.field.empty()) entry["f"] = event.field;
  return entry.dump(-1, ' ', /*ensure_ascii=*/false, nlohmann::json::error_handler_t::replace);
}

absl::Status AuditChecker::add(const AuditRow& row) {
  const std::string line = "line " + std::to_string(row.n);
  const std::uint64_t n = m_head.n + 1;
  if (row.n != n) {
    return absl::DataLossError("audit: " + line + " where " + std::to_string(n) + " belongs");
  }
  const auto entry = nlohmann::json::parse(row.entry, nullptr, /*allow_exceptions=*/false);
  const auto number = entry.is_object() ? entry.find("n") : entry.end();
  if (number == entry.end() || !number->is_number_unsigned() || number->get<std::uint64_t>() != n) {
    return absl::DataLossError("audit: " + line + " does not carry its number");
  }
  const std::string hash = chainHash(m_head.hash, row.entry);
  if (hash != row.hash) return absl::DataLossError("audit: " + line + " was changed");
  m_head = {n, hash};
  return absl::OkStatus();
}

absl::Status verifyAudit(const std::vector<AuditRow>& rows, const std::optional<AuditHead>& expected) {
  AuditChecker checker;
  bool met = !expected.has_value() || (expected->n == 0 && expected->hash == checker.head().hash);
  for (const auto& row : rows) {
    absl::Status good = checker.add(row);
    if (!good.ok()) return good;
    if (!expected.has_value() || expected->n != checker.head().n) continue;
    if (expected->hash != checker.head().hash) {
      return absl::DataLossError("audit: line " + std::to_string(row.n) + " is not what the head says");
    }
    met = true;
  }
  if (!met) return absl::DataLossError("audit: cut after line " + std::to_string(checker.head().n));
  return absl::OkStatus();
}

void AuditTrail::add(HubTransaction& transaction, const AuditEvent& event) const {
  const auto last = transaction.lastAudit();
  AuditRow row;
  row.n = last.has_value() ? last->n + 1 : 1;
  row.entry = auditEntry(event, row.n, m_clock->wall());
  row.hash = chainHash(last.has_value() ? last->hash : std::string(kHashBytes, '\0'), row.entry);
  transaction.addAudit(row);
}

bool AuditTrail::mayWrite(const std::string& key, int most, absl::Duration in) {
  const absl::Duration now = m_clock->elapsed();
  const std::lock_guard lock(m_mutex);
  if (m_windows.size() > kMostWindows) m_windows.clear();
  auto [found, added] = m_windows.try_emplace(key, Window{now, 0});
  if (!added && now - found->second.began > in) found->second = Window{now, 0};
  return ++found->second.count <= most;
}

void AuditTrail::refusal(HubStore& store, const AuditEvent& event) {
  if (!mayWrite("refused " + event.action + " " + event.who, 30, absl::Minutes(1))) return;
  store
      .write([&](HubTransaction& transaction) {
        add(transaction, event);
        return absl::OkStatus();
      })
      .IgnoreError();
}

void AuditTrail::sight(HubStore& store, const AuditEvent& event) {
  if (!mayWrite("seen " + event.action + " " + event.who + " " + event.person, 1, absl::Minutes(5))) return;
  store
      .write([&](HubTransaction& transaction) {
        add(transaction, event);
        return absl::OkStatus();
      })
      .IgnoreError();
}

}  // namespace newel
