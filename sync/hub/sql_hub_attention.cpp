// The caseload in one question a page, and the digests that it reads.
#include <utility>

#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

// As long as person_access.h shows an opening.
constexpr absl::Duration kOpenedLately = absl::Hours(24 * 7);

// ?1 account, ?2 from that id, ?3 to that one, ?4 limit, ?5 openings that end after this count as lately. One
// look at the devices for two answers: none is not paired, and a phone that has never called says 0.
constexpr char kColumns[] =
    "SELECT p.id, p.content, i.content, d.version, d.last_day, d.content, q.person_id, s.content, "
    "(SELECT MAX(COALESCE(v.last_contact, 0)) FROM device AS v WHERE v.person_id = p.id AND v.revoked = 0), "
    "a.person_id, o.person_id ";
constexpr char kJoins[] =
    "LEFT JOIN identity AS i ON i.person_id = p.id LEFT JOIN digest AS d ON d.person_id = p.id "
    "LEFT JOIN digest_mark AS q ON q.person_id = p.id AND q.changed <> q.made "
    "LEFT JOIN snooze AS s ON s.person_id = p.id "
    "LEFT JOIN assignment AS a ON a.account_id = ?1 AND a.person_id = p.id "
    "LEFT JOIN (SELECT DISTINCT person_id FROM opening WHERE until > ?5) AS o ON o.person_id = p.id ";

// The upper bound, even where it bounds nothing, has PostgreSQL look each person up: without it, it walks the
// whole tables side by side for every page.
const char* everybodySql() {
  static const std::string kSql = std::string(kColumns) + "FROM person AS p " + kJoins +
                                  "WHERE p.id >= ?2 AND p.id <= ?3 ORDER BY p.id LIMIT ?4";
  return kSql.c_str();
}

// ?6 now
const char* ownSql() {
  static const std::string kSql =
      std::string(kColumns) +
      "FROM (SELECT person_id FROM assignment WHERE account_id = ?1 AND person_id >= ?2 AND person_id <= ?3 "
      "UNION SELECT person_id FROM opening WHERE account_id = ?1 AND until > ?6 AND person_id >= ?2 AND "
      "person_id <= ?3 ORDER BY person_id LIMIT ?4) AS own JOIN person AS p ON p.id = own.person_id " +
      kJoins + "ORDER BY p.id";
  return kSql.c_str();
}

template <typename Found>
std::string textOr(const Found& rows, int column) {
  return rows.isNull(column) ? std::string() : rows.text(column);
}

template <typename Found>
std::vector<CaseloadRow> caseloadRows(Found rows) {
  std::vector<CaseloadRow> list;
  while (rows.next()) {
    CaseloadRow& row = list.emplace_back();
    row.person_id = rows.text(0);
    row.person = rows.text(1);
    row.identity = textOr(rows, 2);
    if (!rows.isNull(3)) {
      row.digest = DigestRow{row.person_id, static_cast<int>(rows.number(3)),
                             static_cast<std::int32_t>(rows.number(4)), rows.text(5)};
    }
    row.due = !rows.isNull(6);
    row.snooze = textOr(rows, 7);
    row.paired = !rows.isNull(8);
    if (row.paired && rows.number(8) > 0) row.last_contact = absl::FromUnixMicros(rows.number(8));
    row.mine = !rows.isNull(9);
    row.opened = !rows.isNull(10);
  }
  return list;
}

}  // namespace

template <typename Session>
std::vector<CaseloadRow> SqlHubTransaction<Session>::caseload(const CaseloadQuery& query) {
  // Ids are plain letters and digits: what begins with a whole one and goes on sorts behind it.
  const bool one = !query.person_id.empty();
  const std::string from = one ? query.person_id : query.after_id.empty() ? "" : query.after_id + " ";
  const std::string to = one ? query.person_id : "~";
  const std::int64_t lately = absl::ToUnixMicros(query.now - kOpenedLately);
  if (query.only_own) {
    return caseloadRows(
        m_db.query(ownSql(), query.account_id, from, to, query.limit, lately, absl::ToUnixMicros(query.now)));
  }
  return caseloadRows(m_db.query(everybodySql(), query.account_id, from, to, query.limit, lately));
}

template <typename Session>
void SqlHubTransaction<Session>::markDue() {
  for (const auto& person_id : m_changed) {
    runSometime(
        "INSERT INTO digest_mark (person_id, changed, made) VALUES (?, 1, 0) ON CONFLICT (person_id) DO "
        "UPDATE SET "
        "changed = digest_mark.changed + 1",
        person_id);
  }
}

template <typename Session>
std::vector<DueDigest> SqlHubTransaction<Session>::dueDigests(std::uint32_t limit) {
  std::vector<DueDigest> list;
  auto rows = m_db.query(
      "SELECT person_id, changed FROM digest_mark WHERE changed <> made ORDER BY person_id LIMIT ?", limit);
  while (rows.next()) list.push_back({rows.text(0), static_cast<std::uint64_t>(rows.number(1))});
  return list;
}

template <typename Session>
bool SqlHubTransaction<Session>::putDigest(const DigestRow& row, std::uint64_t mark) {
  if (m_db.run("UPDATE digest_mark SET made = changed WHERE person_id = ? AND changed = ?", row.person_id,
               mark) == 0) {
    return false;
  }
  m_db.run(
      "INSERT INTO digest (person_id, version, last_day, content) VALUES (?, ?, ?, ?) ON CONFLICT "
      "(person_id) DO "
      "UPDATE SET version = excluded.version, last_day = excluded.last_day, content = excluded.content",
      row.person_id, row.version, row.last_day, Blob{row.content});
  return true;
}

template <typename Session>
void SqlHubTransaction<Session>::markOldDigests(int version, std::int32_t last_day) {
  m_db.run(
      "UPDATE digest_mark SET changed = changed + 1 WHERE person_id IN (SELECT person_id FROM digest WHERE "
      "version "
      "<> ? OR last_day < ?)",
      version, last_day);
}

template <typename Session>
void SqlHubTransaction<Session>::putSnooze(const std::string& person_id, const std::string& content) {
  m_db.run(
      "INSERT INTO snooze (person_id, content) VALUES (?, ?) ON CONFLICT (person_id) DO UPDATE SET content = "
      "excluded.content",
      person_id, Blob{content});
}

template <typename Session>
bool SqlHubTransaction<Session>::dropSnooze(const std::string& person_id) {
  return m_db.run("DELETE FROM snooze WHERE person_id = ?", person_id) > 0;
}

// The members of this file, for both engines.
template class SqlHubTransaction<Database>;
template class SqlHubTransaction<PgSession>;

}  // namespace newel
