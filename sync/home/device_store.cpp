#include "sync/home/device_store.h"

#include <absl/strings/str_replace.h>

#include <filesystem>
#include <map>
#include <utility>

#include "sync/common/broken_variant.h"
#include "sync/home/hub_pins.h"
#include "sync/home/seal_functions.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

constexpr char kFileName[] = "home.db";
constexpr char kWhat[] = "the store of this phone";

// Forward only. A migration that has been shipped is never edited: the next number follows it.
constexpr char kFirst[] = R"(
CREATE TABLE setting (name TEXT PRIMARY KEY, value BLOB NOT NULL) WITHOUT ROWID;
CREATE TABLE journal (practice_id TEXT NOT NULL, sequence INTEGER NOT NULL, content BLOB NOT NULL,
  PRIMARY KEY (practice_id, sequence)) WITHOUT ROWID;
CREATE TABLE practice (id TEXT NOT NULL, revision INTEGER NOT NULL, content BLOB NOT NULL,
  kept INTEGER NOT NULL, PRIMARY KEY (id, revision)) WITHOUT ROWID;
CREATE TABLE outbox (sequence INTEGER PRIMARY KEY AUTOINCREMENT, kind INTEGER NOT NULL, id TEXT NOT NULL,
  revision INTEGER NOT NULL, content BLOB NOT NULL, sha256 BLOB NOT NULL, set_aside INTEGER NOT NULL DEFAULT 0,
  reason TEXT NOT NULL DEFAULT '');
CREATE INDEX outbox_record ON outbox (kind, id, revision);
CREATE TABLE programme (number INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, content BLOB NOT NULL,
  signature BLOB NOT NULL, key_id TEXT NOT NULL);
CREATE TABLE hold_order (number INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE, content BLOB NOT NULL,
  signature BLOB NOT NULL, key_id TEXT NOT NULL);
CREATE TABLE message (place INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, content BLOB NOT NULL);
CREATE TABLE receipt (of INTEGER NOT NULL, ref_id TEXT NOT NULL, state INTEGER NOT NULL, id TEXT NOT NULL,
  content BLOB NOT NULL, PRIMARY KEY (of, ref_id, state)) WITHOUT ROWID;
CREATE TABLE refused (kind INTEGER NOT NULL, id TEXT NOT NULL, reason TEXT NOT NULL, at INTEGER NOT NULL,
  PRIMARY KEY (kind, id, reason)) WITHOUT ROWID;
)";

// Two orders may have one number: a hub that went back to a backup numbers anew what a phone already has, and
// a hold is never refused for that.
constexpr char kHoldsById[] = R"(
ALTER TABLE hold_order RENAME TO hold_order_by_number;
CREATE TABLE hold_order (id TEXT PRIMARY KEY, number INTEGER NOT NULL, content BLOB NOT NULL,
  signature BLOB NOT NULL, key_id TEXT NOT NULL) WITHOUT ROWID;
INSERT INTO hold_order SELECT id, number, content, signature, key_id FROM hold_order_by_number;
DROP TABLE hold_order_by_number;
)";

// Everything that says something about the person is sealed; ids and numbers stay open, to be found by.
constexpr char kSealed[] = R"(
UPDATE setting SET value = seal(value, 'setting', name);
UPDATE journal SET content = seal(content, 'journal', practice_id, sequence);
UPDATE practice SET content = seal(content, 'practice', id, revision);
UPDATE outbox SET content = seal(content, 'outbox', kind, id, revision),
  sha256 = seal(sha256, 'outbox.sha256', kind, id, revision);
UPDATE programme SET content = seal(content, 'programme', number);
UPDATE hold_order SET content = seal(content, 'hold_order', id);
UPDATE message SET content = seal(content, 'message', id);
UPDATE receipt SET content = seal(content, 'receipt', of, ref_id, state);
)";

// Wearing time, each revision, and the measures that the clinic took, the last revision of each.
constexpr char kWearAndMeasures[] = R"(
CREATE TABLE wear_block (id TEXT NOT NULL, revision INTEGER NOT NULL, content BLOB NOT NULL,
  PRIMARY KEY (id, revision)) WITHOUT ROWID;
CREATE TABLE measure (id TEXT PRIMARY KEY, revision INTEGER NOT NULL, content BLOB NOT NULL) WITHOUT ROWID;
)";
constexpr char kSealedSince[] = R"(
UPDATE wear_block SET content = seal(content, 'wear_block', id, revision);
UPDATE measure SET content = seal(content, 'measure', id);
)";

// Everything once more, from one key to the next.
std::string resealed() {
  return absl::StrReplaceAll(std::string(kSealed) + kSealedSince, {{" seal(", " reseal("}});
}

constexpr int kSealedFrom = 3;

const std::vector<Migration>& migrations() {
  static const std::vector<Migration> kMigrations = {
      {1, kFirst}, {2, kHoldsById}, {kSealedFrom, kSealed}, {4, kWearAndMeasures}};
  return kMigrations;
}

constexpr const char* kTables[] = {"setting", "journal", "practice", "outbox",     "programme", "hold_order",
                                   "message", "receipt", "refused",  "wear_block", "measure"};

std::string textOf(std::uint64_t number) { return std::to_string(number); }

std::string textOf(const std::optional<absl::Time>& time) {
  return time.has_value() ? std::to_string(absl::ToUnixMicros(*time)) : "";
}

std::int64_t numberOf(const std::string& text) { return text.empty() ? 0 : std::stoll(text); }

std::optional<absl::Time> timeOf(const std::string& text) {
  if (text.empty()) return std::nullopt;
  return absl::FromUnixMicros(numberOf(text));
}

// What nobody may miss: whose phone this is, what the clinic signed, what it forbade. Where one of these is
// damaged the whole store is.
void verify(Database& database) {
  (void)loadSettings(database);
  for (const char* sql : {"SELECT COUNT(unseal(content, 'programme', number)) FROM programme",
                          "SELECT COUNT(unseal(content, 'hold_order', id)) FROM hold_order"})
    database.raw().execAndGet(sql);
}

}  // namespace

int deviceStoreVersion() { return migrations().back().number; }

absl::StatusOr<std::unique_ptr<DeviceStore>> DeviceStore::open(const std::string& folder,
                                                               const std::string& vfs, const std::string& key,
                                                               Random& random) {
  if (key.size() != kStoreKeyBytes) {
    return absl::FailedPreconditionError("store_key: a key of " + std::to_string(kStoreKeyBytes) +
                                         " bytes is needed: nothing is kept unsealed");
  }
  if (vfs.empty()) {
    const absl::Status made = ensurePrivateFolder(folder);
    if (!made.ok()) return made;
  }
  std::unique_ptr<DeviceStore> store(new DeviceStore(folder, vfs, random));
  const absl::Status opened = store->openDatabase(key);
  if (!opened.ok()) return opened;
  return store;
}

absl::Status DeviceStore::openDatabase(const std::string& key) {
  m_seal = std::make_unique<Seal>(key, m_random);
  DatabaseOptions options;
  options.path = m_folder + "/" + kFileName;
  options.what = kWhat;
  options.vfs = m_vfs;
  options.set_aside = true;
  options.check_pages = true;
  bool was_open = false;
  options.prepare = [&](SQLite::Database& database) {
    const int version = database.execAndGet("PRAGMA user_version").getInt();
    was_open = version > 0 && version < kSealedFrom;
    // Nothing that is opened for a moment may lie in a file of its own.
    database.exec("PRAGMA temp_store = MEMORY");
    addSealFunctions(database, {&m_seal, &m_next});
  };
  options.verify = verify;
  auto database = Database::open(options, migrations());
  if (!database.ok()) return database.status();
  m_database = std::move(*database);
  // What lay open in an earlier version's pages and log goes.
  return was_open ? scrub() : absl::OkStatus();
}

absl::Status DeviceStore::scrub() {
  return guarded([&] {
    m_database->exec("VACUUM");
    m_database->exec("PRAGMA wal_checkpoint(TRUNCATE)");
  });
}

absl::StatusOr<DeviceSettings> DeviceStore::settings() {
  const std::lock_guard lock(m_mutex);
  if (m_settings) return *m_settings;
  auto read = guarded([&]() -> absl::StatusOr<DeviceSettings> { return loadSettings(*m_database); });
  if (read.ok()) m_settings = *read;
  return read;
}

absl::Status DeviceStore::reseal(const std::string& key, absl::Time now) {
  if (key.size() != kStoreKeyBytes) return absl::InvalidArgumentError("key: has the wrong length");
  const std::lock_guard lock(m_mutex);
  m_settings.reset();
  m_next = std::make_unique<Seal>(key, m_random);
  absl::Status done = guarded([&] {
    Transaction transaction(*m_database);
    saveSetting(*m_database, "key_since", textOf(now));
    m_database->exec(resealed());
    transaction.commit();
  });
  if (done.ok()) m_seal = std::move(m_next);
  m_next.reset();
  return done;
}

absl::Status DeviceStore::wipe() {
  absl::Status emptied = write([](Database& database) {
    deleteEverything(database);
    return absl::OkStatus();
  });
  if (!emptied.ok()) return emptied;
  // 1. The rows are gone and committed: a crash from here on finds an unpaired phone, and wipe() may be
  //    called again. 2. The pages they lay in are rewritten. 3. The log that still holds them is cut.
  const std::lock_guard lock(m_mutex);
  m_settings.reset();
  absl::Status scrubbed = scrub();
  if (!scrubbed.ok() || !m_vfs.empty()) return scrubbed;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(m_folder, error)) {
    const std::string name = entry.path().filename().string();
    if (name.rfind(std::string(kFileName) + ".set-aside-", 0) == 0) fs::remove(entry.path(), error);
    if (error) return absl::InternalError("could not remove " + name);
  }
  return absl::OkStatus();
}

DeviceSettings loadSettings(Database& database) {
  std::map<std::string, std::string> values;
  Rows rows = database.query("SELECT name, unseal(value, 'setting', name) FROM setting");
  while (rows.next()) values[rows.text(0)] = rows.text(1);
  DeviceSettings settings;
  settings.paired = values["paired"] == "1";
  settings.revoked = values["revoked"] == "1";
  settings.hub = {values["address"], values["certificate"], values["fingerprint"], values["token"],
                  splitPins(values["pins"])};
  settings.pins_number = static_cast<std::uint64_t>(numberOf(values["pins_number"]));
  settings.device_id = values["device_id"];
  settings.clinic_key = values["clinic_key"];
  settings.generation = values["generation"];
  settings.cursor = static_cast<std::uint64_t>(numberOf(values["cursor"]));
  settings.greeting_name = values["greeting_name"];
  settings.person = values["person"];
  settings.clinic = values["clinic"];
  settings.app_version = values["app_version"];
  settings.last_contact = timeOf(values["last_contact"]);
  settings.last_hub_time = timeOf(values["last_hub_time"]);
  settings.key_since = timeOf(values["key_since"]);
  return settings;
}

void saveSetting(Database& database, const char* name, const std::string& value) {
  database.run(
      "INSERT INTO setting (name, value) VALUES (?1, seal(?2, 'setting', ?1)) "
      "ON CONFLICT (name) DO UPDATE SET value = excluded.value",
      name, Blob{value});
}

std::string loadSetting(Database& database, const char* name) {
  Rows rows = database.query("SELECT unseal(value, 'setting', name) FROM setting WHERE name = ?", name);
  return rows.next() ? rows.text(0) : "";
}

void saveSettings(Database& database, const DeviceSettings& settings) {
  saveSetting(database, "paired", settings.paired ? "1" : "0");
  saveSetting(database, "revoked", settings.revoked ? "1" : "0");
  saveSetting(database, "address", settings.hub.address);
  saveSetting(database, "certificate", settings.hub.certificate_pem);
  saveSetting(database, "fingerprint", settings.hub.certificate_sha256);
  saveSetting(database, "token", settings.hub.token);
  saveSetting(database, "pins", joinPins(settings.hub.pins));
  saveSetting(database, "pins_number", textOf(settings.pins_number));
  saveSetting(database, "device_id", settings.device_id);
  saveSetting(database, "clinic_key", settings.clinic_key);
  saveSetting(database, "generation", settings.generation);
  saveSetting(database, "cursor", textOf(settings.cursor));
  saveSetting(database, "greeting_name", settings.greeting_name);
  saveSetting(database, "person", settings.person);
  saveSetting(database, "clinic", settings.clinic);
  saveSetting(database, "app_version", settings.app_version);
  saveSetting(database, "last_contact", textOf(settings.last_contact));
  saveSetting(database, "last_hub_time", textOf(settings.last_hub_time));
}

void deleteEverything(Database& database) {
  if (isBroken(Broken::KeepFormerPerson)) {
    database.exec("DELETE FROM setting");
    return;
  }
  for (const char* table : kTables) database.exec(std::string("DELETE FROM ") + table);
}

}  // namespace newel
