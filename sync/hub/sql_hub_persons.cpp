// Whose persons are whose, and the end of a person's records.
#include <utility>

#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

template <typename Found>
std::vector<std::string> texts(Found rows) {
  std::vector<std::string> list;
  while (rows.next()) list.push_back(rows.text(0));
  return list;
}

}  // namespace

template <typename Session>
bool SqlHubTransaction<Session>::isAssigned(const std::string& account_id, const std::string& person_id) {
  return m_db.query("SELECT 1 FROM assignment WHERE account_id = ? AND person_id = ?", account_id, person_id)
      .next();
}

template <typename Session>
void SqlHubTransaction<Session>::setAssigned(const std::string& account_id, const std::string& person_id,
                                             bool assigned) {
  if (assigned) {
    m_db.run("INSERT INTO assignment (account_id, person_id) VALUES (?, ?) ON CONFLICT DO NOTHING",
             account_id, person_id);
  } else {
    m_db.run("DELETE FROM assignment WHERE account_id = ? AND person_id = ?", account_id, person_id);
  }
}

template <typename Session>
std::vector<std::string> SqlHubTransaction<Session>::assignedAccounts(const std::string& person_id) {
  return texts(
      m_db.query("SELECT account_id FROM assignment WHERE person_id = ? ORDER BY account_id", person_id));
}

template <typename Session>
std::vector<std::string> SqlHubTransaction<Session>::personIdsOf(const std::string& account_id,
                                                                 absl::Time now, const std::string& after_id,
                                                                 std::uint32_t limit) {
  return texts(m_db.query(
      "SELECT person_id FROM assignment WHERE account_id = ?1 AND person_id > ?3 "
      "UNION SELECT person_id FROM opening WHERE account_id = ?1 AND until > ?2 AND person_id > ?3 "
      "ORDER BY person_id LIMIT ?4",
      account_id, absl::ToUnixMicros(now), after_id, limit));
}

template <typename Session>
void SqlHubTransaction<Session>::addOpening(const OpeningRow& row) {
  m_db.run("INSERT INTO opening (id, person_id, account_id, reason, at, until) VALUES (?, ?, ?, ?, ?, ?)",
           row.id, row.person_id, row.account_id, row.reason, absl::ToUnixMicros(row.at),
           absl::ToUnixMicros(row.until));
}

template <typename Session>
std::vector<OpeningRow> SqlHubTransaction<Session>::openings(const std::string& person_id, absl::Time now) {
  std::vector<OpeningRow> list;
  auto rows = m_db.query(
      "SELECT id, person_id, account_id, reason, at, until FROM opening WHERE person_id = ? AND until > ? "
      "ORDER BY at DESC, id DESC",
      person_id, absl::ToUnixMicros(now));
  while (rows.next()) {
    list.push_back({rows.text(0), rows.text(1), rows.text(2), rows.text(3),
                    absl::FromUnixMicros(rows.number(4)), absl::FromUnixMicros(rows.number(5))});
  }
  return list;
}

template <typename Session>
bool SqlHubTransaction<Session>::erasePerson(const std::string& id, absl::Time at) {
  if (!person(id).has_value()) return false;
  const std::int64_t micros = absl::ToUnixMicros(at);
  m_db.run(
      "INSERT INTO erased_token (token_sha256, at) SELECT token_sha256, CAST(?2 AS BIGINT) FROM device WHERE "
      "person_id = ?1 "
      "ON CONFLICT DO NOTHING",
      id, micros);
  dropMediaOf(id);
  m_db.run("DELETE FROM feed WHERE person_id = ?", id);
  m_db.run("DELETE FROM receipt WHERE person_id = ?", id);
  m_db.run("DELETE FROM practice WHERE person_id = ?", id);
  m_db.run("DELETE FROM record WHERE person_id = ?", id);
  m_db.run("DELETE FROM message WHERE person_id = ?", id);
  m_db.run("DELETE FROM hold_order WHERE person_id = ?", id);
  m_db.run("DELETE FROM programme WHERE person_id = ?", id);
  m_db.run("DELETE FROM invitation WHERE person_id = ?", id);
  m_db.run("DELETE FROM device WHERE person_id = ?", id);
  m_db.run("DELETE FROM assignment WHERE person_id = ?", id);
  m_db.run("DELETE FROM opening WHERE person_id = ?", id);
  m_db.run("DELETE FROM digest WHERE person_id = ?", id);
  m_db.run("DELETE FROM digest_mark WHERE person_id = ?", id);
  m_db.run("DELETE FROM snooze WHERE person_id = ?", id);
  m_changed.erase(id);
  m_db.run("DELETE FROM identity WHERE person_id = ?", id);
  // Whatever a later table refers with, the foreign key finds here: then nothing is erased and it is told.
  m_db.run("DELETE FROM person WHERE id = ?", id);
  m_db.run("INSERT INTO erased_person (id, at) VALUES (?, ?)", id, micros);
  return true;
}

template <typename Session>
bool SqlHubTransaction<Session>::wasErased(const std::string& person_id) {
  return m_db.query("SELECT 1 FROM erased_person WHERE id = ?", person_id).next();
}

template <typename Session>
bool SqlHubTransaction<Session>::tokenWasErased(const std::string& token_sha256) {
  return m_db.query("SELECT 1 FROM erased_token WHERE token_sha256 = ?", Blob{token_sha256}).next();
}

// The members of this file, for both engines.
template class SqlHubTransaction<Database>;
template class SqlHubTransaction<PgSession>;

}  // namespace newel
