#include "sync/hub/postgres_hub_transaction.h"

#include "core/time/local_day.h"
#include "sync/common/text_codes.h"

namespace newel {

using Common = SqlHubTransaction<PgSession>;
using Kind = StoreNews::Kind;

void PostgresHubTransaction::putSetting(const std::string& name, const std::string& value) {
  Common::putSetting(name, value);
  note(Kind::Desks, "");
}

void PostgresHubTransaction::addToFeed(const std::string& person_id, const v1::Envelope& envelope,
                                       bool replace) {
  Common::addToFeed(person_id, envelope, replace);
  note(Kind::Feed, person_id);
}

void PostgresHubTransaction::addHoldOrder(const SignedRow& row, std::uint64_t sequence) {
  Common::addHoldOrder(row, sequence);
  note(Kind::Hold, row.id);
}

void PostgresHubTransaction::addOwnExercise(const std::string& id, const VersionedRow& row) {
  Common::addOwnExercise(id, row);
  note(Kind::Desks, "");
}

int PostgresHubTransaction::markMessagesRead(const std::string& person_id, absl::Time at) {
  const int marked = Common::markMessagesRead(person_id, at);
  if (marked > 0) note(Kind::Desks, person_id);
  return marked;
}

// One statement for all of them: each statement is a way to the server and back. What is looked up stands in
// sub-queries with an index each, so that no plan ever walks the table.
std::vector<PracticeKept> PostgresHubTransaction::practicesKept(const std::vector<PracticeKey>& keys) {
  std::vector<PracticeKept> kept(keys.size());
  if (keys.empty()) return kept;
  PgArray ids = PgArray::ofText();
  PgArray revisions = PgArray::ofNumbers();
  for (const PracticeKey& key : keys) {
    ids.add(key.id);
    revisions.add(std::int64_t{key.revision});
  }
  auto rows = m_session.query(
      "SELECT k.n, h.person_id, h.revision, (SELECT e.sha256 FROM practice AS e WHERE e.id = k.id AND "
      "e.revision = k.revision) FROM unnest(?::text[], ?::bigint[]) WITH ORDINALITY AS k (id, revision, n) "
      "CROSS JOIN LATERAL (SELECT p.person_id, p.revision FROM practice AS p WHERE p.id = k.id "
      "ORDER BY p.revision DESC LIMIT 1) AS h",
      ids, revisions);
  while (rows.next()) {
    kept.at(static_cast<std::size_t>(rows.number(0)) - 1) = {
        rows.text(1), static_cast<std::uint32_t>(rows.number(2)), rows.isNull(3) ? "" : rows.text(3)};
  }
  return kept;
}

void PostgresHubTransaction::addPractices(const std::vector<PracticeRow>& rows) {
  if (rows.empty()) return;
  PgArray ids = PgArray::ofText();
  PgArray revisions = PgArray::ofNumbers();
  PgArray persons = PgArray::ofText();
  PgArray devices = PgArray::ofText();
  PgArray contents = PgArray::ofBytes();
  PgArray hashes = PgArray::ofBytes();
  PgArray sequences = PgArray::ofNumbers();
  PgArray times = PgArray::ofNumbers();
  PgArray flags = PgArray::ofNumbers();
  for (const PracticeRow& row : rows) {
    const v1::Envelope& e = row.envelope;
    ids.add(e.id());
    revisions.add(std::int64_t{e.revision()});
    persons.add(row.person_id);
    devices.add(row.device_id);
    contents.add(e.content());
    hashes.add(e.sha256());
    sequences.add(static_cast<std::int64_t>(e.sequence()));
    times.add(absl::ToUnixMicros(toTime(e.received_at())));
    flags.add(std::int64_t{row.red_flag ? 1 : 0});
    noteChanged(row.person_id);
    note(Kind::Desks, row.person_id);
  }
  m_session.later(
      "INSERT INTO practice (id, revision, person_id, device_id, content, sha256, sequence, at, red_flag) "
      "SELECT * FROM unnest(?::text[], ?::bigint[], ?::text[], ?::text[], ?::bytea[], ?::bytea[], "
      "?::bigint[], ?::bigint[], ?::bigint[])",
      ids, revisions, persons, devices, contents, hashes, sequences, times, flags);
}

void PostgresHubTransaction::addReceipt(const ReceiptRow& row, std::uint64_t sequence, absl::Time at) {
  Common::addReceipt(row, sequence, at);
  note(Kind::Desks, row.person_id);
}

void PostgresHubTransaction::addDevice(const DeviceRow& row) {
  Common::addDevice(row);
  note(Kind::Desks, row.person_id);
}

void PostgresHubTransaction::revokeDevice(const std::string& id) {
  Common::revokeDevice(id);
  note(Kind::Device, id);
}

void PostgresHubTransaction::endSession(const std::string& token_sha256) {
  Common::endSession(token_sha256);
  note(Kind::Session, toHex(token_sha256));
}

std::vector<std::string> PostgresHubTransaction::endSessionsOf(const std::string& account_id,
                                                               const std::string& kept) {
  auto ended = Common::endSessionsOf(account_id, kept);
  for (const auto& session : ended) note(Kind::Session, toHex(session));
  return ended;
}

void PostgresHubTransaction::putSnooze(const std::string& person_id, const std::string& content) {
  Common::putSnooze(person_id, content);
  note(Kind::Desks, person_id);
}

bool PostgresHubTransaction::dropSnooze(const std::string& person_id) {
  note(Kind::Desks, person_id);
  return Common::dropSnooze(person_id);
}

// Whoever lost the person has to look again too, so it is news to every desk.
void PostgresHubTransaction::setAssigned(const std::string& account_id, const std::string& person_id,
                                         bool assigned) {
  Common::setAssigned(account_id, person_id, assigned);
  note(Kind::Desks, "");
}

void PostgresHubTransaction::addOpening(const OpeningRow& row) {
  Common::addOpening(row);
  note(Kind::Desks, row.person_id);
}

}  // namespace newel
