// The record tables: persons, programmes, hold orders, messages, practices, receipts, and the feed.
#include <algorithm>
#include <utility>

#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

constexpr int kOfProgramme = 1;  // message.proto: ReceiptOf
constexpr int kOfHoldOrder = 2;
constexpr int kSeen = 2;  // message.proto: ReceiptState

template <typename Found>
std::optional<VersionedRow> versioned(Found rows) {
  if (!rows.next()) return std::nullopt;
  return VersionedRow{static_cast<std::uint64_t>(rows.number(0)), rows.text(1)};
}

template <typename Found>
std::vector<v1::Envelope> envelopes(Found rows) {
  std::vector<v1::Envelope> list;
  while (rows.next()) {
    v1::Envelope envelope;
    envelope.set_kind(static_cast<v1::RecordKind>(rows.number(0)));
    envelope.set_id(rows.text(1));
    envelope.set_revision(static_cast<std::uint32_t>(rows.number(2)));
    envelope.set_content(rows.text(3));
    envelope.set_sha256(rows.text(4));
    envelope.set_sequence(static_cast<std::uint64_t>(rows.number(5)));
    *envelope.mutable_received_at() = toTimestamp(absl::FromUnixMicros(rows.number(6)));
    list.push_back(std::move(envelope));
  }
  return list;
}

// The columns of a signed row, the last one end_day or lifts_id.
template <typename Found>
std::vector<SignedRow> signedRows(Found rows, std::string SignedRow::*last) {
  std::vector<SignedRow> list;
  while (rows.next()) {
    SignedRow row;
    row.person_id = rows.text(0);
    row.number = static_cast<std::uint64_t>(rows.number(1));
    row.id = rows.text(2);
    row.content = rows.text(3);
    row.signature = rows.text(4);
    row.key_id = rows.text(5);
    row.*last = rows.text(6);
    list.push_back(std::move(row));
  }
  return list;
}

std::optional<SignedRow> firstOf(std::vector<SignedRow> rows) {
  if (rows.empty()) return std::nullopt;
  return std::move(rows.front());
}

template <typename Found>
std::vector<MessageRow> messageRows(Found rows) {
  std::vector<MessageRow> list;
  while (rows.next()) {
    list.push_back(
        {rows.text(0), rows.text(1), rows.number(2) != 0, rows.text(3), rows.text(4), rows.number(5) != 0});
  }
  return list;
}

template <typename Found>
std::vector<ReceiptRow> receiptRows(Found rows) {
  std::vector<ReceiptRow> list;
  while (rows.next()) {
    list.push_back({rows.text(0), rows.text(1), static_cast<int>(rows.number(2)), rows.text(3),
                    static_cast<std::uint64_t>(rows.number(4)), static_cast<int>(rows.number(5)),
                    rows.text(6), rows.text(7)});
  }
  return list;
}

template <typename Found>
std::optional<absl::Time> timeAt(const Found& rows, int column) {
  if (rows.isNull(column)) return std::nullopt;
  return absl::FromUnixMicros(rows.number(column));
}

}  // namespace

template <typename Session>
std::string SqlHubTransaction<Session>::setting(const std::string& name) {
  auto rows = m_db.query("SELECT value FROM setting WHERE name = ?", name);
  return rows.next() ? rows.text(0) : "";
}

template <typename Session>
void SqlHubTransaction<Session>::putSetting(const std::string& name, const std::string& value) {
  m_db.run(
      "INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = "
      "excluded.value",
      name, Blob{value});
}

template <typename Session>
std::optional<VersionedRow> SqlHubTransaction<Session>::person(const std::string& id) {
  return versioned(m_db.query("SELECT revision, content FROM person WHERE id = ?", id));
}

template <typename Session>
void SqlHubTransaction<Session>::putPerson(const std::string& id, const VersionedRow& row) {
  m_changed.insert(id);
  m_db.run(
      "INSERT INTO person (id, revision, content) VALUES (?, ?, ?) "
      "ON CONFLICT (id) DO UPDATE SET revision = excluded.revision, content = excluded.content",
      id, row.revision, Blob{row.content});
}

template <typename Session>
std::vector<std::string> SqlHubTransaction<Session>::personIdsAfter(const std::string& id,
                                                                    std::uint32_t limit) {
  std::vector<std::string> ids;
  auto rows = m_db.query("SELECT id FROM person WHERE id > ? ORDER BY id LIMIT ?", id, limit);
  while (rows.next()) ids.push_back(rows.text(0));
  return ids;
}

template <typename Session>
std::optional<VersionedRow> SqlHubTransaction<Session>::identity(const std::string& person_id) {
  return versioned(m_db.query("SELECT revision, content FROM identity WHERE person_id = ?", person_id));
}

template <typename Session>
void SqlHubTransaction<Session>::putIdentity(const std::string& person_id, const VersionedRow& row) {
  m_db.run(
      "INSERT INTO identity (person_id, revision, content) VALUES (?, ?, ?) "
      "ON CONFLICT (person_id) DO UPDATE SET revision = excluded.revision, content = excluded.content",
      person_id, row.revision, Blob{row.content});
}

template <typename Session>
CaseFacts SqlHubTransaction<Session>::caseFacts(const std::string& person_id) {
  CaseFacts facts;
  addProgrammeFacts(person_id, facts);
  addHoldFacts(person_id, facts);
  addContactFacts(person_id, facts);
  // Later by the hub's own sequence: no clock decides whether a red flag has been answered.
  auto red = m_db.query(
      "SELECT 1 FROM practice WHERE person_id = ?1 AND red_flag = 1 "
      "AND sequence > COALESCE((SELECT MAX(sequence) FROM programme WHERE person_id = ?1), 0) "
      "AND sequence > COALESCE((SELECT MAX(sequence) FROM hold_order WHERE person_id = ?1), 0) "
      "AND sequence > COALESCE((SELECT MAX(sequence) FROM message WHERE person_id = ?1 AND from_person = 0), "
      "0) LIMIT 1",
      person_id);
  facts.red_flag_open = red.next();
  return facts;
}

template <typename Session>
void SqlHubTransaction<Session>::addProgrammeFacts(const std::string& person_id, CaseFacts& facts) {
  auto latest =
      m_db.query("SELECT number, end_day, id FROM programme WHERE person_id = ? ORDER BY number DESC LIMIT 1",
                 person_id);
  if (!latest.next()) return;
  facts.programme_number = static_cast<std::uint32_t>(latest.number(0));
  facts.programme_end_day = latest.text(1);
  auto reached = m_db.query("SELECT MAX(state) FROM receipt WHERE person_id = ? AND of = ? AND ref_id = ?",
                            person_id, kOfProgramme, latest.text(2));
  facts.programme_arrived = reached.next() && !reached.isNull(0);
  facts.programme_seen = facts.programme_arrived && reached.number(0) >= kSeen;
}

template <typename Session>
void SqlHubTransaction<Session>::addHoldFacts(const std::string& person_id, CaseFacts& facts) {
  auto active = m_db.query(
      "SELECT COUNT(*), COALESCE(SUM(CASE WHEN EXISTS (SELECT 1 FROM receipt AS r WHERE r.person_id = "
      "h.person_id AND r.of = ?2 AND r.ref_id = h.id) THEN 1 ELSE 0 END), 0) FROM hold_order AS h "
      "WHERE h.person_id = ?1 AND h.lifts_id = '' AND NOT EXISTS "
      "(SELECT 1 FROM hold_order AS l WHERE l.person_id = h.person_id AND l.lifts_id = h.id)",
      person_id, kOfHoldOrder);
  if (!active.next()) return;
  facts.hold_active = active.number(0) > 0;
  facts.hold_arrived = facts.hold_active && active.number(1) == active.number(0);
}

template <typename Session>
void SqlHubTransaction<Session>::addContactFacts(const std::string& person_id, CaseFacts& facts) {
  auto contact = m_db.query(
      "SELECT MAX(last_contact), COALESCE(SUM(CASE WHEN revoked = 0 THEN 1 ELSE 0 END), 0), "
      "(SELECT MAX(at) FROM practice WHERE person_id = ?1), "
      "(SELECT COUNT(*) FROM message WHERE person_id = ?1 AND from_person = 1 AND read_at IS NULL) "
      "FROM device WHERE person_id = ?1",
      person_id);
  if (!contact.next()) return;
  facts.last_contact = timeAt(contact, 0);
  facts.paired = contact.number(1) > 0;
  facts.last_practice = timeAt(contact, 2);
  facts.unread_messages = static_cast<std::uint32_t>(contact.number(3));
}

// A writer is alone until it commits, so one look and one note do for all that a body takes. On PostgreSQL a
// stranger who moves the counter in between is a clash, and everything is run again.
template <typename Session>
std::uint64_t SqlHubTransaction<Session>::takeSequence() {
  if (m_last_taken == 0) {
    auto rows = m_db.query("SELECT value FROM counter WHERE one = 1");
    if (rows.next()) m_known_taken = m_last_taken = static_cast<std::uint64_t>(rows.number(0));
  }
  return ++m_last_taken;
}

template <typename Session>
void SqlHubTransaction<Session>::finish() {
  if (!m_changed.empty()) markDue();
  if (m_last_taken != m_known_taken) runSometime("UPDATE counter SET value = ? WHERE one = 1", m_last_taken);
}

template <typename Session>
void SqlHubTransaction<Session>::addToFeed(const std::string& person_id, const v1::Envelope& envelope,
                                           bool replace) {
  if (replace) {
    m_db.run("DELETE FROM feed WHERE kind = ? AND id = ?", static_cast<int>(envelope.kind()), envelope.id());
  }
  m_db.run(
      "INSERT INTO feed (sequence, person_id, kind, id, revision, content, sha256, at) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
      envelope.sequence(), person_id, static_cast<int>(envelope.kind()), envelope.id(), envelope.revision(),
      Blob{envelope.content()}, Blob{envelope.sha256()}, absl::ToUnixMicros(toTime(envelope.received_at())));
}

template <typename Session>
std::vector<v1::Envelope> SqlHubTransaction<Session>::feedAfter(const std::string& person_id,
                                                                std::uint64_t sequence, std::uint32_t limit) {
  if (isBroken(Broken::FeedEverybody)) {
    return envelopes(
        m_db.query("SELECT kind, id, revision, content, sha256, sequence, at FROM feed "
                   "WHERE sequence > ? ORDER BY sequence LIMIT ?",
                   sequence, limit));
  }
  return envelopes(
      m_db.query("SELECT kind, id, revision, content, sha256, sequence, at FROM feed "
                 "WHERE person_id IN (?, '') AND sequence > ? ORDER BY sequence LIMIT ?",
                 person_id, sequence, limit));
}

template <typename Session>
std::vector<SignedRow> SqlHubTransaction<Session>::programmes(const std::string& person_id) {
  return signedRows(
      m_db.query("SELECT person_id, number, id, content, signature, key_id, end_day FROM programme "
                 "WHERE person_id = ? ORDER BY number",
                 person_id),
      &SignedRow::end_day);
}

template <typename Session>
std::optional<SignedRow> SqlHubTransaction<Session>::latestProgramme(const std::string& person_id) {
  return firstOf(signedRows(
      m_db.query("SELECT person_id, number, id, content, signature, key_id, end_day FROM programme "
                 "WHERE person_id = ? ORDER BY number DESC LIMIT 1",
                 person_id),
      &SignedRow::end_day));
}

template <typename Session>
std::optional<SignedRow> SqlHubTransaction<Session>::programmeById(const std::string& id) {
  return firstOf(signedRows(
      m_db.query(
          "SELECT person_id, number, id, content, signature, key_id, end_day FROM programme WHERE id = ?",
          id),
      &SignedRow::end_day));
}

template <typename Session>
void SqlHubTransaction<Session>::addProgramme(const SignedRow& row, std::uint64_t sequence) {
  m_changed.insert(row.person_id);
  m_db.run(
      "INSERT INTO programme (person_id, number, id, content, signature, key_id, end_day, sequence) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
      row.person_id, row.number, row.id, Blob{row.content}, Blob{row.signature}, row.key_id, row.end_day,
      sequence);
}

template <typename Session>
std::vector<SignedRow> SqlHubTransaction<Session>::holdOrders(const std::string& person_id) {
  return signedRows(
      m_db.query("SELECT person_id, number, id, content, signature, key_id, lifts_id FROM hold_order "
                 "WHERE person_id = ? ORDER BY number",
                 person_id),
      &SignedRow::lifts_id);
}

template <typename Session>
std::optional<SignedRow> SqlHubTransaction<Session>::holdOrderById(const std::string& id) {
  return firstOf(signedRows(
      m_db.query(
          "SELECT person_id, number, id, content, signature, key_id, lifts_id FROM hold_order WHERE id = ?",
          id),
      &SignedRow::lifts_id));
}

template <typename Session>
void SqlHubTransaction<Session>::addHoldOrder(const SignedRow& row, std::uint64_t sequence) {
  m_changed.insert(row.person_id);
  m_db.run(
      "INSERT INTO hold_order (person_id, number, id, content, signature, key_id, lifts_id, sequence) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
      row.person_id, row.number, row.id, Blob{row.content}, Blob{row.signature}, row.key_id, row.lifts_id,
      sequence);
}

template <typename Session>
std::optional<MessageRow> SqlHubTransaction<Session>::message(const std::string& id) {
  auto rows = messageRows(
      m_db.query("SELECT id, person_id, from_person, content, sha256, 0 FROM message WHERE id = ?", id));
  if (rows.empty()) return std::nullopt;
  return std::move(rows.front());
}

template <typename Session>
std::vector<MessageRow> SqlHubTransaction<Session>::messages(const std::string& person_id) {
  return messageRows(
      m_db.query("SELECT id, person_id, from_person, content, sha256, "
                 "CASE WHEN from_person = 1 AND read_at IS NULL THEN 1 ELSE 0 END "
                 "FROM message WHERE person_id = ? ORDER BY sequence",
                 person_id));
}

template <typename Session>
void SqlHubTransaction<Session>::addMessage(const MessageRow& row, std::uint64_t sequence, absl::Time at) {
  m_changed.insert(row.person_id);
  m_db.run(
      "INSERT INTO message (id, person_id, from_person, content, sha256, sequence, at) VALUES (?, ?, ?, ?, "
      "?, ?, ?)",
      row.id, row.person_id, row.from_person ? 1 : 0, Blob{row.content}, Blob{row.sha256}, sequence,
      absl::ToUnixMicros(at));
}

template <typename Session>
int SqlHubTransaction<Session>::markMessagesRead(const std::string& person_id, absl::Time at) {
  const int marked =
      m_db.run("UPDATE message SET read_at = ? WHERE person_id = ? AND from_person = 1 AND read_at IS NULL",
               absl::ToUnixMicros(at), person_id);
  if (marked > 0) m_changed.insert(person_id);
  return marked;
}

template <typename Session>
std::vector<PracticeKept> SqlHubTransaction<Session>::practicesKept(const std::vector<PracticeKey>& keys) {
  std::vector<PracticeKept> kept(keys.size());
  for (std::size_t i = 0; i < keys.size(); ++i) {
    auto rows = m_db.query(
        "SELECT person_id, revision, (SELECT sha256 FROM practice WHERE id = ?1 AND revision = ?2) "
        "FROM practice WHERE id = ?1 ORDER BY revision DESC LIMIT 1",
        keys[i].id, keys[i].revision);
    if (!rows.next()) continue;
    kept[i] = {rows.text(0), static_cast<std::uint32_t>(rows.number(1)), rows.isNull(2) ? "" : rows.text(2)};
  }
  return kept;
}

template <typename Session>
void SqlHubTransaction<Session>::addPractices(const std::vector<PracticeRow>& all) {
  for (const PracticeRow& row : all) {
    const v1::Envelope& e = row.envelope;
    m_changed.insert(row.person_id);
    m_db.run(
        "INSERT INTO practice (id, revision, person_id, device_id, content, sha256, sequence, at, red_flag) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        e.id(), e.revision(), row.person_id, row.device_id, Blob{e.content()}, Blob{e.sha256()}, e.sequence(),
        absl::ToUnixMicros(toTime(e.received_at())), row.red_flag ? 1 : 0);
  }
}

template <typename Session>
std::vector<v1::Envelope> SqlHubTransaction<Session>::practicesAfter(const std::string& person_id,
                                                                     std::uint64_t sequence,
                                                                     std::uint32_t limit) {
  return envelopes(
      m_db.query("SELECT 1, id, revision, content, sha256, sequence, at FROM practice AS p "
                 "WHERE person_id = ? AND sequence > ? "
                 "AND NOT EXISTS (SELECT 1 FROM practice AS q WHERE q.id = p.id AND q.revision > p.revision) "
                 "ORDER BY sequence LIMIT ?",
                 person_id, sequence, limit));
}

template <typename Session>
PracticeKept SqlHubTransaction<Session>::recordKept(v1::RecordKind kind, const PracticeKey& key) {
  auto rows = m_db.query(
      "SELECT person_id, revision, "
      "(SELECT sha256 FROM record WHERE kind = ?1 AND id = ?2 AND revision = ?3) "
      "FROM record WHERE kind = ?1 AND id = ?2 ORDER BY revision DESC LIMIT 1",
      static_cast<int>(kind), key.id, key.revision);
  if (!rows.next()) return {};
  return {rows.text(0), static_cast<std::uint32_t>(rows.number(1)), rows.isNull(2) ? "" : rows.text(2)};
}

template <typename Session>
void SqlHubTransaction<Session>::addRecord(const std::string& person_id, const v1::Envelope& envelope) {
  m_changed.insert(person_id);
  m_db.run(
      "INSERT INTO record (sequence, kind, id, revision, person_id, content, sha256, at) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
      envelope.sequence(), static_cast<int>(envelope.kind()), envelope.id(), envelope.revision(), person_id,
      Blob{envelope.content()}, Blob{envelope.sha256()}, absl::ToUnixMicros(toTime(envelope.received_at())));
}

template <typename Session>
std::vector<v1::Envelope> SqlHubTransaction<Session>::recordsAfter(const std::string& person_id,
                                                                   v1::RecordKind kind,
                                                                   std::uint64_t sequence,
                                                                   std::uint32_t limit) {
  return envelopes(m_db.query(
      "SELECT kind, id, revision, content, sha256, sequence, at FROM record AS r "
      "WHERE person_id = ?1 AND kind = ?2 AND sequence > ?3 AND NOT EXISTS "
      "(SELECT 1 FROM record AS q WHERE q.kind = r.kind AND q.id = r.id AND q.revision > r.revision) "
      "ORDER BY sequence LIMIT ?4",
      person_id, static_cast<int>(kind), sequence, limit));
}

template <typename Session>
std::optional<ReceiptRow> SqlHubTransaction<Session>::receipt(const std::string& id) {
  auto rows = receiptRows(m_db.query(
      "SELECT id, person_id, of, ref_id, ref_number, state, content, sha256 FROM receipt WHERE id = ?", id));
  if (rows.empty()) return std::nullopt;
  return std::move(rows.front());
}

template <typename Session>
std::vector<ReceiptRow> SqlHubTransaction<Session>::receipts(const std::string& person_id) {
  return receiptRows(
      m_db.query("SELECT id, person_id, of, ref_id, ref_number, state, content, sha256 FROM receipt "
                 "WHERE person_id = ? ORDER BY sequence",
                 person_id));
}

template <typename Session>
void SqlHubTransaction<Session>::addReceipt(const ReceiptRow& row, std::uint64_t sequence, absl::Time at) {
  m_changed.insert(row.person_id);
  m_db.run(
      "INSERT INTO receipt (id, person_id, of, ref_id, ref_number, state, content, sha256, sequence, at) "
      "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      row.id, row.person_id, row.of, row.ref_id, row.ref_number, row.state, Blob{row.content},
      Blob{row.sha256}, sequence, absl::ToUnixMicros(at));
}

template <typename Session>
std::uint64_t SqlHubTransaction<Session>::highestReceiptNumber(const std::string& person_id, int of) {
  auto rows = m_db.query("SELECT COALESCE(MAX(ref_number), 0) FROM receipt WHERE person_id = ? AND of = ?",
                         person_id, of);
  return rows.next() ? static_cast<std::uint64_t>(rows.number(0)) : 0;
}

// The members of this file, for both engines.
template class SqlHubTransaction<Database>;
template class SqlHubTransaction<PgSession>;

}  // namespace newel
