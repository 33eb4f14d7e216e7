#include "sync/hub/person_export.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <ostream>
#include <utility>
#include <vector>

#include "sync/export/export_teller.h"
#include "sync/hub/audit_trail.h"
#include "sync/hub/hub_commands.h"
#include "sync/hub/hub_place.h"

namespace newel {
namespace {

constexpr std::uint32_t kPage = 500;
// Of the whole: gathering, writing it in the format, writing it to the disk. For a bar; ours, no source.
constexpr int kGathered = 40;
constexpr int kWritten = 95;

absl::Status unreadable(const std::string& what, const std::string& id) {
  return absl::DataLossError(what + " " + id + ": not to be read");
}

template <typename Kept>
absl::Status takeSigned(const std::vector<SignedRow>& rows, const char* what, std::vector<Kept>& to) {
  for (const auto& row : rows) {
    Kept& kept = to.emplace_back();
    kept.signature = row.signature;
    kept.key_id = row.key_id;
    bool read = false;
    if constexpr (requires { kept.programme; }) {
      read = kept.programme.ParseFromString(row.content);
    } else {
      read = kept.order.ParseFromString(row.content);
    }
    if (!read) return unreadable(what, row.id);
  }
  return absl::OkStatus();
}

// Page by page, so that a long record can be left on the way.
template <typename Record, typename Fetch>
absl::Status takePages(const char* what, const Fetch& fetch, const ExportProgress& progress, int percent,
                       std::vector<Record>& to) {
  std::uint64_t sequence = 0;
  while (true) {
    absl::Status going = askProgress(progress, percent);
    if (!going.ok()) return going;
    const std::vector<v1::Envelope> page = fetch(sequence);
    for (const auto& envelope : page) {
      if (!to.emplace_back().ParseFromString(envelope.content())) return unreadable(what, envelope.id());
      sequence = std::max(sequence, envelope.sequence());
    }
    if (page.size() < kPage) return absl::OkStatus();
  }
}

absl::Status takeMessages(HubTransaction& transaction, const std::string& person_id, PersonHistory& history) {
  for (const auto& row : transaction.messages(person_id)) {
    if (!history.messages.emplace_back().message.ParseFromString(row.content))
      return unreadable("message", row.id);
  }
  std::vector<v1::Receipt> receipts;
  for (const auto& row : transaction.receipts(person_id)) {
    if (!receipts.emplace_back().ParseFromString(row.content)) return unreadable("receipt", row.id);
  }
  addReceipts(receipts, history);
  return absl::OkStatus();
}

std::string textIn(const nlohmann::json& entry, const char* key) {
  const auto found = entry.find(key);
  return found != entry.end() && found->is_string() ? found->get<std::string>() : std::string();
}

// Who is who in the trail, each id looked up once.
class WhoIsWho {
 public:
  explicit WhoIsWho(HubTransaction& transaction) : m_transaction(transaction) {}

  AuditLine::Who operator()(const std::string& id) {
    const auto known = m_known.find(id);
    return known != m_known.end() ? known->second : m_known[id] = look(id);
  }

 private:
  AuditLine::Who look(const std::string& id) {
    if (id.empty()) return AuditLine::Who::Nobody;
    if (m_transaction.account(id).has_value()) return AuditLine::Who::Account;
    return m_transaction.device(id).has_value() ? AuditLine::Who::Phone : AuditLine::Who::Unknown;
  }
  HubTransaction& m_transaction;
  std::map<std::string, AuditLine::Who> m_known;
};

// The whole trail is looked through, because it is kept by time and not by person.
absl::Status takeTrail(HubTransaction& transaction, const std::string& person_id,
                       const ExportProgress& progress, PersonHistory& history) {
  WhoIsWho who_is_who(transaction);
  std::uint64_t n = 0;
  while (true) {
    absl::Status going = askProgress(progress, 90);
    if (!going.ok()) return going;
    const auto rows = transaction.auditAfter(n, kPage);
    for (const auto& row : rows) {
      n = row.n;
      if (row.entry.find(person_id) == std::string::npos) continue;
      const auto entry = nlohmann::json::parse(row.entry, nullptr, /*allow_exceptions=*/false);
      AuditLine line;
      line.n = row.n;
      if (!entry.is_object() || !absl::ParseTime(absl::RFC3339_sec, textIn(entry, "t"), &line.at, nullptr))
        return unreadable("line of the audit trail", std::to_string(row.n));
      if (textIn(entry, "p") != person_id) continue;
      line.action = textIn(entry, "a");
      line.who = textIn(entry, "w");
      line.who_is = who_is_who(line.who);
      line.record = textIn(entry, "r");
      line.field = textIn(entry, "f");
      history.audit.push_back(std::move(line));
    }
    if (rows.size() < kPage) return absl::OkStatus();
  }
}

void takePhones(HubTransaction& transaction, const std::string& person_id, PersonHistory& history) {
  for (const auto& row : transaction.devices(person_id)) {
    history.phones.push_back(
        {row.id, row.name, row.app_version, row.paired_at, row.last_contact, row.revoked});
  }
}

absl::StatusOr<PersonHistory> gathered(HubStore& store, const std::string& person_id, absl::Time now,
                                       const ExportProgress& progress) {
  absl::StatusOr<PersonHistory> history = absl::InternalError("not read");
  absl::Status read = store.read([&](HubTransaction& transaction) {
    history = gatherHistory(transaction, person_id, now, progress);
    return history.status();
  });
  if (!read.ok()) return read;
  return history;
}

absl::Status exportPerson(const HubMachine& machine, HubStore& store, const ExportCommand& command) {
  const auto format = parseExportFormat(command.format);
  if (!format.ok()) return format.status();
  ExportTeller teller(
      *machine.err, [&] { return machine.clock->elapsed(); }, command.asked_to_stop);
  auto history = gathered(store, command.person_id, machine.clock->wall(), teller.part(0, kGathered));
  if (!history.ok()) return history.status();
  absl::Status days = setDays(command.from, command.to, *history);
  if (!days.ok()) return days;
  const auto files = makeExport(*history, *format, command.options, teller.part(kGathered, kWritten));
  if (!files.ok()) return files.status();
  return writeExport(command.out, *files, [&]() -> absl::Status {
    absl::Status going = askProgress(teller.part(kWritten, 100), 0);
    if (!going.ok()) return going;
    return store.write([&](HubTransaction& transaction) -> absl::Status {
      // Erased since: what is gone is not to leave any more.
      if (!transaction.person(command.person_id).has_value())
        return absl::NotFoundError("person: nobody has this id");
      AuditTrail(machine.clock)
          .add(transaction,
               {.action = "person.export", .person = command.person_id, .field = command.format});
      return absl::OkStatus();
    });
  });
}

}  // namespace

absl::StatusOr<PersonHistory> gatherHistory(HubTransaction& transaction, const std::string& person_id,
                                            absl::Time as_of, const ExportProgress& progress) {
  PersonHistory history;
  history.as_of = as_of;
  const auto person = transaction.person(person_id);
  if (!person.has_value()) return absl::NotFoundError("person: nobody has this id");
  if (!history.person.ParseFromString(person->content)) return unreadable("person", person_id);
  absl::Status taken = takeSigned(transaction.programmes(person_id), "programme", history.programmes);
  if (taken.ok()) taken = takeSigned(transaction.holdOrders(person_id), "hold order", history.holds);
  if (taken.ok()) taken = takeMessages(transaction, person_id, history);
  const auto records = [&](v1::RecordKind kind) {
    return [&transaction, &person_id, kind](std::uint64_t sequence) {
      return transaction.recordsAfter(person_id, kind, sequence, kPage);
    };
  };
  const auto practices = [&](std::uint64_t sequence) {
    return transaction.practicesAfter(person_id, sequence, kPage);
  };
  if (taken.ok()) taken = takePages("practice", practices, progress, 20, history.practices);
  if (taken.ok())
    taken = takePages("wear block", records(v1::RECORD_KIND_WEAR_BLOCK), progress, 60, history.wear_blocks);
  if (taken.ok())
    taken = takePages("measure", records(v1::RECORD_KIND_MEASURE), progress, 80, history.measures);
  if (taken.ok()) taken = takeTrail(transaction, person_id, progress, history);
  if (!taken.ok()) return taken;
  takePhones(transaction, person_id, history);
  history.last_contact = transaction.caseFacts(person_id).last_contact;
  putInOrder(history);
  return history;
}

int exportCommand(const HubMachine& machine, const std::string& place, const ExportCommand& command) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const absl::Status done = exportPerson(machine, **store, command);
  if (!done.ok()) return failed(machine, done);
  *machine.out << "Exported: " << command.out << "\n" << exportCare(command.options) << "\n";
  return 0;
}

}  // namespace newel
