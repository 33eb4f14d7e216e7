#include "sync/home/wear_log.h"

#include <algorithm>
#include <string>
#include <utility>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/home/outbox.h"

namespace newel {
namespace {

std::int64_t lastRevision(Database& database, const std::string& id) {
  Rows rows = database.query("SELECT COALESCE(MAX(revision), 0) FROM wear_block WHERE id = ?", id);
  return rows.next() ? rows.number(0) : 0;
}

void addBlock(Database& database, const v1::WearBlock& block, const std::string& bytes) {
  database.run(
      "INSERT INTO wear_block (id, revision, content) VALUES (?1, ?2, seal(?3, 'wear_block', ?1, ?2))",
      block.id(), block.revision(), Blob{bytes});
}

}  // namespace

absl::Status keepWearBlock(Database& database, const v1::WearBlock& block) {
  absl::Status good = check(block);
  if (!good.ok()) return good;
  if (lastRevision(database, block.id()) >= block.revision())
    return absl::AlreadyExistsError("revision: this block is kept already");
  const std::string bytes = toBytes(block);
  addBlock(database, block, bytes);
  queueRecord(database, makeEnvelope(v1::RECORD_KIND_WEAR_BLOCK, block.id(), block.revision(), bytes));
  return absl::OkStatus();
}

bool takeWearBlock(Database& database, const v1::WearBlock& block) {
  if (lastRevision(database, block.id()) >= block.revision()) return false;
  addBlock(database, block, toBytes(block));
  return true;
}

bool takeMeasure(Database& database, const v1::Measure& measure) {
  return database.run(
             "INSERT INTO measure (id, revision, content) VALUES (?1, ?2, seal(?3, 'measure', ?1)) "
             "ON CONFLICT (id) DO UPDATE SET revision = excluded.revision, content = excluded.content "
             "WHERE excluded.revision > measure.revision",
             measure.id(), measure.revision(), Blob{toBytes(measure)}) > 0;
}

std::vector<v1::WearBlock> keptWearBlocks(Database& database) {
  std::vector<v1::WearBlock> blocks;
  Rows rows = database.query(
      "SELECT try_unseal(content, 'wear_block', id, revision) FROM wear_block AS w "
      "WHERE revision = (SELECT MAX(revision) FROM wear_block WHERE id = w.id)");
  while (rows.next()) {
    v1::WearBlock block;
    if (!rows.isNull(0) && block.ParseFromString(rows.text(0))) blocks.push_back(std::move(block));
  }
  std::stable_sort(blocks.begin(), blocks.end(), [](const v1::WearBlock& a, const v1::WearBlock& b) {
    return toTime(a.put_on_at()) < toTime(b.put_on_at());
  });
  return blocks;
}

std::vector<v1::Measure> keptMeasures(Database& database) {
  std::vector<v1::Measure> measures;
  Rows rows = database.query("SELECT try_unseal(content, 'measure', id) FROM measure");
  while (rows.next()) {
    v1::Measure measure;
    if (rows.isNull(0) || !measure.ParseFromString(rows.text(0)) || measure.withdrawn()) continue;
    measures.push_back(std::move(measure));
  }
  std::stable_sort(measures.begin(), measures.end(), [](const v1::Measure& a, const v1::Measure& b) {
    return toTime(a.taken_at()) < toTime(b.taken_at());
  });
  return measures;
}

}  // namespace newel
