// The table of the clinic's own exercises.
#include "sync/hub/sqlite_hub_transaction.h"

namespace newel {

std::vector<VersionedRow> SqliteHubTransaction::ownExercises() {
  std::vector<VersionedRow> list;
  Rows rows = m_db.query("SELECT revision, content FROM own_exercise ORDER BY id, revision");
  while (rows.next()) list.push_back({static_cast<std::uint64_t>(rows.number(0)), rows.text(1)});
  return list;
}

std::optional<VersionedRow> SqliteHubTransaction::ownExercise(const std::string& id, std::uint64_t revision) {
  Rows rows =
      m_db.query("SELECT revision, content FROM own_exercise WHERE id = ? AND revision = ?", id, revision);
  if (!rows.next()) return std::nullopt;
  return VersionedRow{static_cast<std::uint64_t>(rows.number(0)), rows.text(1)};
}

std::uint64_t SqliteHubTransaction::latestOwnRevision(const std::string& id) {
  Rows rows = m_db.query("SELECT COALESCE(MAX(revision), 0) FROM own_exercise WHERE id = ?", id);
  return rows.next() ? static_cast<std::uint64_t>(rows.number(0)) : 0;
}

void SqliteHubTransaction::addOwnExercise(const std::string& id, const VersionedRow& row) {
  m_db.run("INSERT INTO own_exercise (id, revision, content) VALUES (?, ?, ?)", id, row.revision,
           Blob{row.content});
}

}  // namespace newel
