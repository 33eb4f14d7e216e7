// The table of the clinic's own exercises.
#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {

template <typename Session>
std::vector<VersionedRow> SqlHubTransaction<Session>::ownExercises() {
  std::vector<VersionedRow> list;
  auto rows = m_db.query("SELECT revision, content FROM own_exercise ORDER BY id, revision");
  while (rows.next()) list.push_back({static_cast<std::uint64_t>(rows.number(0)), rows.text(1)});
  return list;
}

template <typename Session>
std::optional<VersionedRow> SqlHubTransaction<Session>::ownExercise(const std::string& id,
                                                                    std::uint64_t revision) {
  auto rows =
      m_db.query("SELECT revision, content FROM own_exercise WHERE id = ? AND revision = ?", id, revision);
  if (!rows.next()) return std::nullopt;
  return VersionedRow{static_cast<std::uint64_t>(rows.number(0)), rows.text(1)};
}

template <typename Session>
std::uint64_t SqlHubTransaction<Session>::latestOwnRevision(const std::string& id) {
  auto rows = m_db.query("SELECT COALESCE(MAX(revision), 0) FROM own_exercise WHERE id = ?", id);
  return rows.next() ? static_cast<std::uint64_t>(rows.number(0)) : 0;
}

template <typename Session>
void SqlHubTransaction<Session>::addOwnExercise(const std::string& id, const VersionedRow& row) {
  m_db.run("INSERT INTO own_exercise (id, revision, content) VALUES (?, ?, ?)", id, row.revision,
           Blob{row.content});
}

// The members of this file, for both engines.
template class SqlHubTransaction<Database>;
template class SqlHubTransaction<PgSession>;

}  // namespace newel
