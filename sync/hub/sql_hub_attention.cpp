// The caseload in one question a page, and the digests that it reads.
#include <utility>

#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

// As long as person_access.h shows an opening.
constexpr absl::Duration kOpenedLately = absl::Hours(24 * 7);

// ?1 account, ?2 from that id, ?3 to that one, ?4 limit, ?5 openings that end after this count as lately, ?6
// now. One look at the devices for two answers: none is not paired, and a phone that has never called says 0.
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

// A few persons among many: each is looked up in every table.
const char* ownSql() {
  static const std::string kSql =
      std::string(kColumns) +
      "FROM (SELECT person_id FROM assignment WHERE account_id = ?1 AND person_id >= ?2 AND person_id <= ?3 "
      "UNION SELECT person_id FROM opening WHERE account_id = ?1 AND until > ?6 AND person_id >= ?2 AND "
      "person_id <= ?3 ORDER BY person_id LIMIT ?4) AS own JOIN person AS p ON p.id = own.person_id " +
      kJoins + "ORDER BY p.id";
  return kSql.c_str();
}

// Everybody's page is a stretch of each table, and each is read along its key by a question of its own: a
// third of the time of looking every person up in every table, and no plan that can go wrong. ?1 from that
// id, ?2 limit.
constexpr char kPageSql[] = "SELECT id, content FROM person WHERE id >= ?1 ORDER BY id LIMIT ?2";
// ?1 from that id, ?2 to that one
constexpr char kIdentitiesSql[] =
    "SELECT person_id, content FROM identity WHERE person_id >= ?1 AND person_id <= ?2 ORDER BY person_id";
constexpr char kDigestsSql[] =
    "SELECT person_id, version, last_day, content FROM digest WHERE person_id >= ?1 AND person_id <= ?2 "
    "ORDER "
    "BY person_id";
constexpr char kDueSql[] =
    "SELECT person_id FROM digest_mark WHERE changed <> made AND person_id >= ?1 AND person_id <= ?2 ORDER "
    "BY "
    "person_id";
constexpr char kSnoozesSql[] =
    "SELECT person_id, content FROM snooze WHERE person_id >= ?1 AND person_id <= ?2 ORDER BY person_id";
constexpr char kPhonesSql[] =
    "SELECT person_id, MAX(COALESCE(last_contact, 0)) FROM device WHERE revoked = 0 AND person_id >= ?1 AND "
    "person_id <= ?2 GROUP BY person_id ORDER BY person_id";
// ?3 account
constexpr char kMineSql[] =
    "SELECT person_id FROM assignment WHERE account_id = ?3 AND person_id >= ?1 AND person_id <= ?2 ORDER BY "
    "person_id";
// ?3 the openings that end after this
constexpr char kOpenedSql[] =
    "SELECT DISTINCT person_id FROM opening WHERE until > ?3 AND person_id >= ?1 AND person_id <= ?2 ORDER "
    "BY "
    "person_id";

// `last_contact_us`: 0 for a phone that has never called.
void setPaired(CaseloadRow& row, std::int64_t last_contact_us) {
  row.paired = true;
  if (last_contact_us > 0) row.last_contact = absl::FromUnixMicros(last_contact_us);
}

// `column` is the first of version, last day and content.
template <typename Found>
void setDigest(const Found& found, int column, CaseloadPage& page, CaseloadRow& row) {
  row.has_digest = true;
  row.digest_age = {static_cast<int>(found.number(column)),
                    static_cast<std::int32_t>(found.number(column + 1))};
  row.digest = page.keep(found.view(column + 2));
}

// `found` has ids in its first column, in order as the page is, each once: `fill` for whoever is in both.
template <typename Found, typename Fill>
void fillFrom(Found found, CaseloadPage& page, const Fill& fill) {
  auto row = page.rows.begin();
  while (found.next()) {
    const std::string_view person_id = found.view(0);
    while (row != page.rows.end() && row->person_id < person_id) ++row;
    if (row == page.rows.end()) return;
    if (row->person_id == person_id) fill(found, *row);
  }
}

template <typename Session>
CaseloadPage everybodysPage(Session& db, const CaseloadQuery& query, const std::string& from,
                            std::int64_t lately) {
  CaseloadPage page;
  page.rows.reserve(query.limit);
  for (auto rows = db.query(kPageSql, from, query.limit); rows.next();) {
    CaseloadRow& row = page.rows.emplace_back();
    row.person_id = page.keep(rows.view(0));
    row.person = page.keep(rows.view(1));
  }
  if (page.rows.empty()) return page;
  const std::string first(page.rows.front().person_id);
  const std::string last(page.rows.back().person_id);
  fillFrom(db.query(kIdentitiesSql, first, last), page,
           [&page](const auto& found, CaseloadRow& row) { row.identity = page.keep(found.view(1)); });
  fillFrom(db.query(kDigestsSql, first, last), page,
           [&page](const auto& found, CaseloadRow& row) { setDigest(found, 1, page, row); });
  fillFrom(db.query(kDueSql, first, last), page, [](const auto&, CaseloadRow& row) { row.due = true; });
  fillFrom(db.query(kSnoozesSql, first, last), page,
           [&page](const auto& found, CaseloadRow& row) { row.snooze = page.keep(found.view(1)); });
  fillFrom(db.query(kPhonesSql, first, last), page,
           [](const auto& found, CaseloadRow& row) { setPaired(row, found.number(1)); });
  fillFrom(db.query(kMineSql, first, last, query.account_id), page,
           [](const auto&, CaseloadRow& row) { row.mine = true; });
  fillFrom(db.query(kOpenedSql, first, last, lately), page,
           [](const auto&, CaseloadRow& row) { row.opened = true; });
  return page;
}

template <typename Found>
CaseloadPage caseloadRows(Found rows) {
  CaseloadPage page;
  while (rows.next()) {
    CaseloadRow& row = page.rows.emplace_back();
    row.person_id = page.keep(rows.view(0));
    row.person = page.keep(rows.view(1));
    if (!rows.isNull(2)) row.identity = page.keep(rows.view(2));
    if (!rows.isNull(3)) setDigest(rows, 3, page, row);
    row.due = !rows.isNull(6);
    if (!rows.isNull(7)) row.snooze = page.keep(rows.view(7));
    if (!rows.isNull(8)) setPaired(row, rows.number(8));
    row.mine = !rows.isNull(9);
    row.opened = !rows.isNull(10);
  }
  return page;
}

}  // namespace

template <typename Session>
CaseloadPage SqlHubTransaction<Session>::caseload(const CaseloadQuery& query) {
  // Ids are plain letters and digits: what begins with a whole one and goes on sorts behind it.
  const bool one = !query.person_id.empty();
  const std::string from = one ? query.person_id : query.after_id.empty() ? "" : query.after_id + " ";
  const std::int64_t lately = absl::ToUnixMicros(query.now - kOpenedLately);
  if (query.only_own) {
    const std::string to = one ? query.person_id : "~";
    return caseloadRows(
        m_db.query(ownSql(), query.account_id, from, to, query.limit, lately, absl::ToUnixMicros(query.now)));
  }
  if (!one) return everybodysPage(m_db, query, from, lately);
  CaseloadQuery alone = query;
  alone.limit = 1;
  CaseloadPage page = everybodysPage(m_db, alone, from, lately);
  std::erase_if(page.rows, [&query](const CaseloadRow& row) { return row.person_id != query.person_id; });
  return page;
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
      row.person_id, row.age.version, row.age.last_day, Blob{row.content});
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
