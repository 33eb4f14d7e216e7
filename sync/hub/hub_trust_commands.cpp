// The commands of newel-hub by which others can trust it: certificate and audit trail.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <ostream>
#include <utility>
#include <vector>

#include "sync/common/pairing_ticket.h"
#include "sync/common/text_codes.h"
#include "sync/hub/audit_head.h"
#include "sync/hub/clinic.h"
#include "sync/hub/hub_commands.h"
#include "sync/hub/hub_place.h"

namespace newel {
namespace {

constexpr std::size_t kHashBytes = 32;
constexpr std::size_t kLongestNumber = 18;

absl::StatusOr<std::vector<AuditRow>> allAudit(HubStore& store) {
  std::vector<AuditRow> rows;
  const absl::Status read = store.read([&](HubTransaction& transaction) {
    rows = transaction.auditAfter(0, UINT32_MAX);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return rows;
}

absl::StatusOr<AuditHead> headInWords(const std::string& text) {
  const std::size_t colon = text.find(':');
  const bool numbered = colon != std::string::npos && colon > 0 && colon <= kLongestNumber &&
                        text.find_first_not_of("0123456789") == colon;
  const auto hash = fromHex(numbered ? text.substr(colon + 1) : "");
  if (!numbered || !hash.ok() || hash->size() != kHashBytes) {
    return absl::InvalidArgumentError("head: it is a file that audit head wrote, or reads number:hash");
  }
  return AuditHead{std::stoull(text.substr(0, colon)), *hash};
}

// A head in a file counts only when this clinic's key signed it.
absl::StatusOr<AuditHead> headInFile(const std::string& path, HubStore& store) {
  std::ifstream stream(path, std::ios::binary);
  const std::string text((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  const auto head = parseAuditHead(text);
  if (!head.ok()) return head.status();
  std::string key;
  const absl::Status read = store.read([&](HubTransaction& transaction) {
    key = transaction.setting("public_key");
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (key != head->public_key) {
    return absl::DataLossError("head: another key signed it than this clinic's; one of the two was replaced");
  }
  return head->head;
}

absl::StatusOr<std::optional<AuditHead>> readHead(const std::string& text, HubStore& store) {
  if (text.empty()) return std::optional<AuditHead>();
  auto head = std::filesystem::exists(text) ? headInFile(text, store) : headInWords(text);
  if (!head.ok()) return head.status();
  return std::optional<AuditHead>(*std::move(head));
}

}  // namespace

int fingerprintCommand(const HubMachine& machine, const std::string& place, bool with_backup) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto clinic = loadClinic(**store, *machine.clock, *machine.random);
  if (!clinic.ok()) return failed(machine, clinic.status());
  *machine.out << toHex(clinic->certificate_sha256) << "\n";
  if (!with_backup) return 0;
  std::string backup;
  const absl::Status read = (*store)->read([&](HubTransaction& transaction) {
    backup = otherPin(transaction, clinic->certificate_sha256);
    return absl::OkStatus();
  });
  if (!read.ok()) return failed(machine, read);
  *machine.out << toHex(backup) << "\n";
  return 0;
}

int rotateCertificateCommand(const HubMachine& machine, const std::string& place, const Rotation& rotation) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const absl::Status rotated = rotateClinicCertificate(**store, rotation, *machine.clock, *machine.random);
  if (!rotated.ok()) return failed(machine, rotated);
  const auto clinic = loadClinic(**store, *machine.clock, *machine.random);
  if (!clinic.ok()) return failed(machine, clinic.status());
  *machine.out << "From its next start the hub shows " << shortFingerprint(clinic->certificate_sha256)
               << "; phones and desks that know it go on by themselves. ";
  if (rotation.at_once) {
    *machine.out << "Restart it now: the former certificate is believed no longer.\n";
  } else {
    *machine.out << "The former one is believed for " << absl::ToInt64Hours(kCertificateOverlap) / 24
                 << " more days.\n";
  }
  return 0;
}

int verifyAuditCommand(const HubMachine& machine, const std::string& place, const std::string& head) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto expected = readHead(head, **store);
  if (!expected.ok()) return failed(machine, expected.status());
  const auto rows = allAudit(**store);
  if (!rows.ok()) return failed(machine, rows.status());
  const absl::Status good = verifyAudit(*rows, *expected);
  if (!good.ok()) return failed(machine, good);
  *machine.out << rows->size() << " lines, unbroken.\n";
  return 0;
}

int auditHeadCommand(const HubMachine& machine, const std::string& place, const std::string& out) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto head = readAuditHead(**store);
  if (!head.ok()) return failed(machine, head.status());
  *machine.out << head->n << ":" << toHex(head->hash) << "\n";
  if (out.empty()) return 0;
  const auto clinic = loadClinic(**store, *machine.clock, *machine.random);
  if (!clinic.ok()) return failed(machine, clinic.status());
  const absl::Status written = writeHeadFile(
      out, formatAuditHead(*head, clinic->card.clinic_id(), clinic->key, machine.clock->wall()));
  return written.ok() ? 0 : failed(machine, written);
}

}  // namespace newel
