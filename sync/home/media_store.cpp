#include "sync/home/media_store.h"

#include <sqlite3.h>

#include "core/records/media_type.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/text_codes.h"
#include "sync/home/seal_functions.h"

namespace newel {
namespace {

constexpr char kWhat[] = "the photos of this phone";

// Names are hashes: they say nothing of the person, and to be found by they lie open. The content is sealed.
constexpr char kFirst[] = R"(
CREATE TABLE media (sha256 TEXT PRIMARY KEY, have INTEGER NOT NULL, whole INTEGER NOT NULL,
  failures INTEGER NOT NULL) WITHOUT ROWID;
CREATE TABLE media_part (sha256 TEXT NOT NULL, at_byte INTEGER NOT NULL, content BLOB NOT NULL,
  PRIMARY KEY (sha256, at_byte));
)";

const std::vector<Migration>& migrations() {
  static const std::vector<Migration> kMigrations = {{1, kFirst}};
  return kMigrations;
}

MediaStore::Progress progressOf(Database& database, const std::string& hex) {
  Rows rows = database.query("SELECT have, whole, failures FROM media WHERE sha256 = ?", hex);
  if (!rows.next()) return {};
  return {static_cast<std::uint64_t>(rows.number(0)), rows.number(1) != 0, static_cast<int>(rows.number(2))};
}

void putProgress(Database& database, const std::string& hex, const MediaStore::Progress& progress) {
  database.run(
      "INSERT INTO media (sha256, have, whole, failures) VALUES (?, ?, ?, ?) ON CONFLICT (sha256) DO UPDATE "
      "SET "
      "have = excluded.have, whole = excluded.whole, failures = excluded.failures",
      hex, progress.have, progress.whole ? 1 : 0, progress.failures);
}

void dropParts(Database& database, const std::string& hex) {
  database.run("DELETE FROM media_part WHERE sha256 = ?", hex);
}

bool isIt(const std::string& content, const v1::MediaRef& ref) {
  if (isBroken(Broken::UseMediaUnchecked)) return true;
  return content.size() == ref.size_bytes() && sniffMedia(content) == ref.type() &&
         sha256(content) == ref.sha256();
}

// Somewhere in the file, or sealed with another key: it can all be fetched again.
bool isUnusable(const absl::Status& status) {
  return absl::IsDataLoss(status) || absl::IsPermissionDenied(status) || absl::IsFailedPrecondition(status);
}

}  // namespace

MediaStore::MediaStore(std::string folder, std::string vfs, const std::string& key, Random& random)
    : m_path(std::move(folder) + "/media.db"),
      m_vfs(std::move(vfs)),
      m_random(random),
      m_seal(std::make_unique<Seal>(key, random)) {}

absl::Status MediaStore::openFile() {
  DatabaseOptions options;
  options.path = m_path;
  options.what = kWhat;
  options.vfs = m_vfs;
  options.prepare = [&](SQLite::Database& database) {
    database.exec("PRAGMA temp_store = MEMORY");
    addSealFunctions(database, {&m_seal, &m_next});
  };
  auto database = Database::open(options, migrations());
  if (!database.ok()) return database.status();
  m_database = *std::move(database);
  return absl::OkStatus();
}

absl::Status MediaStore::ready() {
  if (m_database != nullptr) return absl::OkStatus();
  absl::Status opened = openFile();
  if (!isUnusable(opened)) return opened;
  absl::Status gone = removeFile();
  return gone.ok() ? openFile() : gone;
}

absl::Status MediaStore::removeFile() {
  m_database.reset();
  sqlite3_vfs* const files = sqlite3_vfs_find(m_vfs.empty() ? nullptr : m_vfs.c_str());
  if (files == nullptr) return absl::InternalError("no such file layer");
  for (const char* suffix : {"-wal", "-shm", "-journal", ""}) {
    const int code = files->xDelete(files, (m_path + suffix).c_str(), 1);
    if (code != SQLITE_OK && code != SQLITE_IOERR_DELETE_NOENT)
      return absl::InternalError("could not remove the photos of this phone");
  }
  return absl::OkStatus();
}

absl::Status MediaStore::write(const std::function<absl::Status(Database&)>& body) {
  const std::lock_guard lock(m_mutex);
  if (absl::Status open = ready(); !open.ok()) return open;
  return healed(guarded([&]() -> absl::Status {
    Transaction transaction(*m_database);
    absl::Status done = body(*m_database);
    if (done.ok()) transaction.commit();
    return done;
  }));
}

// A damaged file is found by its first bad page; it goes, and the next call begins anew.
absl::Status MediaStore::healed(absl::Status status) {
  if (isUnusable(status)) removeFile().IgnoreError();
  return status;
}

absl::StatusOr<MediaStore::Progress> MediaStore::progress(const std::string& sha256) {
  const std::lock_guard lock(m_mutex);
  if (absl::Status open = ready(); !open.ok()) return open;
  Progress progress;
  absl::Status read = healed(guarded([&] { progress = progressOf(*m_database, toHex(sha256)); }));
  if (!read.ok()) return read;
  return progress;
}

absl::Status MediaStore::append(const std::string& sha256, const std::string& content) {
  return write([&](Database& database) {
    const std::string hex = toHex(sha256);
    Progress progress = progressOf(database, hex);
    database.run(
        "INSERT INTO media_part (sha256, at_byte, content) VALUES (?1, ?2, seal(?3, 'media_part', ?1, ?2))",
        hex, progress.have, Blob{content});
    progress.have += content.size();
    putProgress(database, hex, progress);
    return absl::OkStatus();
  });
}

absl::StatusOr<std::string> MediaStore::readAll(const std::string& hex) {
  return guarded([&]() -> absl::StatusOr<std::string> {
    std::string content;
    Rows rows = m_database->query(
        "SELECT unseal(content, 'media_part', sha256, at_byte) FROM media_part WHERE sha256 = ? ORDER BY "
        "at_byte",
        hex);
    while (rows.next()) content += rows.text(0);
    return content;
  });
}

absl::Status MediaStore::conclude(const v1::MediaRef& ref) {
  const std::string hex = toHex(ref.sha256());
  bool good = false;
  absl::Status noted = write([&](Database& database) -> absl::Status {
    const auto content = readAll(hex);
    if (!content.ok() && !isUnusable(content.status())) return content.status();
    good = content.ok() && isIt(*content, ref);
    Progress progress = progressOf(database, hex);
    if (good) {
      progress.whole = true;
    } else {
      dropParts(database, hex);
      progress = {0, false, progress.failures + 1};
    }
    putProgress(database, hex, progress);
    return absl::OkStatus();
  });
  if (!noted.ok()) return noted;
  return good ? absl::OkStatus() : absl::InvalidArgumentError("sha256: what came is not it");
}

absl::Status MediaStore::startAgain(const std::string& sha256) {
  return write([&](Database& database) {
    const std::string hex = toHex(sha256);
    dropParts(database, hex);
    putProgress(database, hex, {0, false, progressOf(database, hex).failures + 1});
    return absl::OkStatus();
  });
}

absl::StatusOr<std::string> MediaStore::content(const v1::MediaRef& ref) {
  const std::string hex = toHex(ref.sha256());
  {
    const std::lock_guard lock(m_mutex);
    if (absl::Status open = ready(); !open.ok()) return open;
    const auto progress = guarded([&]() -> absl::StatusOr<Progress> { return progressOf(*m_database, hex); });
    if (progress.ok() && !progress->whole) return absl::NotFoundError("media: not here yet");
    auto content = progress.ok() ? readAll(hex) : progress.status();
    if (content.ok() && isIt(*content, ref)) return content;
    if (!content.ok() && !isUnusable(content.status())) return content.status();
  }
  write([&](Database& database) {
    dropParts(database, hex);
    database.run("DELETE FROM media WHERE sha256 = ?", hex);
    return absl::OkStatus();
  }).IgnoreError();
  return absl::NotFoundError("media: was damaged; it is fetched again");
}

absl::Status MediaStore::keepOnly(const std::set<std::string>& hashes) {
  std::set<std::string> kept;
  for (const auto& hash : hashes) kept.insert(toHex(hash));
  return write([&](Database& database) {
    std::set<std::string> gone;
    {
      Rows rows = database.query("SELECT sha256 FROM media");
      while (rows.next()) {
        if (!kept.contains(rows.text(0))) gone.insert(rows.text(0));
      }
    }
    for (const auto& hex : gone) {
      dropParts(database, hex);
      database.run("DELETE FROM media WHERE sha256 = ?", hex);
    }
    return absl::OkStatus();
  });
}

absl::Status MediaStore::reseal(const std::string& key) {
  {
    const std::lock_guard lock(m_mutex);
    m_next = std::make_unique<Seal>(key, m_random);
  }
  absl::Status done = write([](Database& database) {
    database.exec("UPDATE media_part SET content = reseal(content, 'media_part', sha256, at_byte)");
    return absl::OkStatus();
  });
  const std::lock_guard lock(m_mutex);
  m_seal = std::move(m_next);
  return done;
}

absl::Status MediaStore::wipe() {
  const std::lock_guard lock(m_mutex);
  return removeFile();
}

}  // namespace newel
