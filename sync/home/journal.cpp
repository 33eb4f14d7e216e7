#include "sync/home/journal.h"

#include <algorithm>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/records/uuid7.h"
#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/home/outbox.h"

namespace newel {
namespace {

std::int64_t lastLine(Database& database, const std::string& practice_id) {
  Rows rows =
      database.query("SELECT COALESCE(MAX(sequence), 0) FROM journal WHERE practice_id = ?", practice_id);
  return rows.next() ? rows.number(0) : 0;
}

std::int64_t lastRevision(Database& database, const std::string& practice_id) {
  Rows rows = database.query("SELECT COALESCE(MAX(revision), 0) FROM practice WHERE id = ?", practice_id);
  return rows.next() ? rows.number(0) : 0;
}

}  // namespace

absl::Status appendLine(Database& database, const v1::JournalLine& line) {
  absl::Status good = check(line);
  if (!good.ok()) return good;
  if (lastRevision(database, line.practice_id()) > 0) {
    return absl::FailedPreconditionError("practice_id: this practice is closed");
  }
  const std::int64_t next = lastLine(database, line.practice_id()) + 1;
  if (line.sequence() != next) {
    return absl::FailedPreconditionError("sequence: " + std::to_string(line.sequence()) + " where " +
                                         std::to_string(next) + " is the next");
  }
  const std::string bytes = toBytes(line);
  database.run(
      "INSERT INTO journal (practice_id, sequence, content) VALUES (?1, ?2, seal(?3, 'journal', ?1, ?2))",
      line.practice_id(), line.sequence(), Blob{bytes});
  return absl::OkStatus();
}

std::optional<JournalOfPractice> unfinishedJournal(Database& database) {
  JournalOfPractice journal;
  {
    // Ids are time-ordered, so the smallest is the oldest.
    Rows rows = database.query("SELECT MIN(practice_id) FROM journal");
    if (!rows.next() || rows.isNull(0)) return std::nullopt;
    journal.practice_id = rows.text(0);
  }
  Rows rows = database.query(
      "SELECT try_unseal(content, 'journal', practice_id, sequence) FROM journal WHERE practice_id = ? "
      "ORDER BY sequence",
      journal.practice_id);
  while (rows.next()) {
    v1::JournalLine line;
    if (!rows.isNull(0) && line.ParseFromString(rows.text(0))) journal.lines.push_back(std::move(line));
  }
  return journal;
}

absl::Status keepPractice(Database& database, const v1::Practice& practice) {
  absl::Status good = check(practice);
  if (!good.ok()) return good;
  if (lastRevision(database, practice.id()) >= practice.revision()) {
    return absl::AlreadyExistsError("revision: this practice is kept already");
  }
  const std::string bytes = toBytes(practice);
  if (bytes.size() > kMostContentBytes) return absl::InvalidArgumentError("practice: too long to be sent");
  database.run(
      "INSERT INTO practice (id, revision, content, kept) "
      "VALUES (?1, ?2, seal(?3, 'practice', ?1, ?2), (SELECT COUNT(*) FROM practice))",
      practice.id(), practice.revision(), Blob{bytes});
  database.run("DELETE FROM journal WHERE practice_id = ?", practice.id());
  if (isBroken(Broken::ForgetCorrections) && practice.revision() > 1) return absl::OkStatus();
  queueRecord(database, makeEnvelope(v1::RECORD_KIND_PRACTICE, practice.id(), practice.revision(), bytes));
  return absl::OkStatus();
}

std::vector<v1::Practice> keptPractices(Database& database) {
  return keptPracticesSince(database, absl::InfinitePast());
}

std::optional<absl::Time> firstKeptAt(Database& database) {
  Rows rows = database.query(
      "SELECT try_unseal(content, 'practice', id, revision) FROM practice ORDER BY id, revision LIMIT 1");
  v1::Practice practice;
  if (!rows.next() || rows.isNull(0) || !practice.ParseFromString(rows.text(0))) return std::nullopt;
  return toTime(practice.started_at());
}

std::vector<v1::Practice> keptPracticesSince(Database& database, absl::Time since) {
  const std::int64_t since_ms = std::max<std::int64_t>(0, absl::ToUnixMillis(since));
  std::vector<v1::Practice> practices;
  Rows rows = database.query(
      "SELECT try_unseal(content, 'practice', id, revision) FROM practice AS p WHERE id >= ? AND revision = "
      "(SELECT MAX(revision) FROM practice WHERE id = p.id) "
      "ORDER BY (SELECT MIN(kept) FROM practice WHERE id = p.id)",
      makeUuid7(since_ms, {}));
  while (rows.next()) {
    v1::Practice practice;
    if (!rows.isNull(0) && practice.ParseFromString(rows.text(0))) practices.push_back(std::move(practice));
  }
  return practices;
}

}  // namespace newel
