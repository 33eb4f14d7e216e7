#include "sync/hub/audit_view.h"

#include <algorithm>
#include <limits>
#include <map>
#include <nlohmann/json.hpp>
#include <utility>

#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr std::uint32_t kMostLines = 500;  // desk_service.proto
constexpr std::uint32_t kLookedAt = 5000;
constexpr std::uint32_t kPage = 500;
constexpr std::uint64_t kEnd = std::numeric_limits<std::int64_t>::max();

bool isTime(const google::protobuf::Timestamp& time) {
  // 0001 to 9999, as Timestamp says.
  return time.seconds() >= -62135596800 && time.seconds() <= 253402300799 && time.nanos() >= 0 &&
         time.nanos() <= 999999999;
}

absl::Status checkRequest(const v1::ListAuditRequest& request) {
  if (request.limit() < 1 || request.limit() > kMostLines) {
    return absl::InvalidArgumentError("limit: 1 to 500");
  }
  if (request.has_from() && !isTime(request.from())) return absl::InvalidArgumentError("from: no time");
  if (request.has_until() && !isTime(request.until())) return absl::InvalidArgumentError("until: no time");
  return absl::OkStatus();
}

// nullopt: the line cannot be read; CheckAudit says which.
std::optional<v1::AuditLine> lineOf(const AuditRow& row) {
  const auto entry = nlohmann::json::parse(row.entry, nullptr, /*allow_exceptions=*/false);
  if (!entry.is_object()) return std::nullopt;
  const auto text = [&entry](const char* key) {
    const auto found = entry.find(key);
    return found != entry.end() && found->is_string() ? found->get<std::string>() : std::string();
  };
  v1::AuditLine line;
  line.set_n(row.n);
  line.set_action(text("a"));
  line.set_who_id(text("w"));
  line.set_person_id(text("p"));
  line.set_record_id(text("r"));
  line.set_field(text("f"));
  absl::Time at;
  if (absl::ParseTime(absl::RFC3339_sec, text("t"), &at, nullptr)) *line.mutable_at() = toTimestamp(at);
  return line;
}

bool matches(const v1::AuditLine& line, const v1::ListAuditRequest& request) {
  if (!request.person_id().empty() && line.person_id() != request.person_id()) return false;
  if (!request.account_id().empty() && line.who_id() != request.account_id() &&
      line.record_id() != request.account_id()) {
    return false;
  }
  const absl::Time at = toTime(line.at());
  return !(request.has_from() && at < toTime(request.from())) &&
         !(request.has_until() && at >= toTime(request.until()));
}

// Each id is looked up once.
class Names {
 public:
  explicit Names(HubTransaction& transaction) : m_transaction(transaction) {
    for (const auto& account : transaction.accounts()) m_accounts[account.id] = account.display_name;
  }

  void addTo(v1::AuditLine& line) {
    line.set_who_name(whoIs(line.who_id()));
    line.set_person_name(personIs(line.person_id()));
    const auto account = m_accounts.find(line.record_id());
    if (account != m_accounts.end()) line.set_record_name(account->second);
  }

 private:
  std::string whoIs(const std::string& id) {
    const auto account = m_accounts.find(id);
    if (id.empty() || account != m_accounts.end()) return id.empty() ? "" : account->second;
    const auto device = m_transaction.device(id);
    return m_accounts[id] = device.has_value() ? device->name : "";
  }
  std::string personIs(const std::string& id) {
    const auto known = m_persons.find(id);
    if (id.empty() || known != m_persons.end()) return id.empty() ? "" : known->second;
    const auto row = m_transaction.identity(id);
    v1::Identity identity;
    std::string name;
    if (row.has_value() && identity.ParseFromString(row->content)) {
      name = identity.given_name() + " " + identity.family_name();
    }
    return m_persons[id] = name;
  }

  HubTransaction& m_transaction;
  std::map<std::string, std::string> m_accounts;
  std::map<std::string, std::string> m_persons;
};

void fill(HubTransaction& transaction, const v1::ListAuditRequest& request, v1::ListAuditReply& reply) {
  Names names(transaction);
  std::uint64_t before = request.before_n() == 0 ? kEnd : std::min(request.before_n(), kEnd);
  for (std::uint32_t looked = 0; looked < kLookedAt; looked += kPage) {
    const auto rows = transaction.auditBefore(before, kPage);
    for (const auto& row : rows) {
      before = row.n;
      auto line = lineOf(row);
      if (!line.has_value() || !matches(*line, request)) continue;
      names.addTo(*line);
      *reply.add_lines() = *std::move(line);
      if (static_cast<std::uint32_t>(reply.lines_size()) == request.limit()) break;
    }
    if (static_cast<std::uint32_t>(reply.lines_size()) == request.limit()) break;
    if (rows.size() < kPage) return;  // that was the beginning
  }
  reply.set_next_before_n(before > 1 ? before : 0);
}

}  // namespace

absl::StatusOr<v1::ListAuditReply> AuditView::list(const v1::ListAuditRequest& request) {
  const absl::Status good = checkRequest(request);
  if (!good.ok()) return good;
  v1::ListAuditReply reply;
  absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    reply.Clear();
    fill(transaction, request, reply);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

// Page by page, so that lines may be added meanwhile and memory stays bounded.
absl::StatusOr<v1::CheckAuditReply> AuditView::check() {
  AuditChecker checker;
  absl::Status holds = absl::OkStatus();
  std::vector<AuditRow> rows;
  do {
    absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
      rows = transaction.auditAfter(checker.head().n, kPage);
      return absl::OkStatus();
    });
    if (!read.ok()) return read;
    for (const auto& row : rows) {
      if (holds.ok()) holds = checker.add(row);
    }
  } while (holds.ok() && rows.size() == kPage);
  v1::CheckAuditReply reply;
  reply.set_lines(checker.head().n);
  reply.set_head_sha256(checker.head().hash);
  if (!holds.ok()) reply.set_problem(std::string(holds.message()));
  return reply;
}

}  // namespace newel
