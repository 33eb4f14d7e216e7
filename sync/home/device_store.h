// The phone's store: one SQLite file that holds everything of one person. Journal, outbox and inbox work
// inside its transactions; nothing else opens the file.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <type_traits>

#include "core/records/identity.pb.h"
#include "core/records/person.pb.h"
#include "sync/common/database.h"
#include "sync/home/hub_link.h"
#include "sync/home/seal.h"

namespace newel {

// Everything that is one of a kind. Kept in the table "setting", one row a field.
struct DeviceSettings {
  bool paired = false;
  bool revoked = false;
  HubAddress hub;
  std::uint64_t pins_number = 0;  // of the set in hub.pins; 0: from the ticket
  std::string device_id;
  std::string clinic_key;  // Ed25519 public key
  std::string generation;
  std::uint64_t cursor = 0;
  std::string greeting_name;
  std::string person;       // serialised v1::Person
  std::string clinic;       // serialised v1::ClinicCard
  std::string app_version;  // that last opened the store
  std::optional<absl::Time> last_contact;
  std::optional<absl::Time> last_hub_time;
  std::optional<absl::Time> key_since;  // not written by saveSettings(): it is the store's, not the pairing's
};

// Of the present store; earlier ones are brought up to it.
int deviceStoreVersion();

// Thread-safe: one lock for all.
class DeviceStore {
 public:
  // `folder` is made (0700) when missing. What is kept is sealed with `key` (seal.h); a store of an earlier
  // version is sealed now. Errors as HomeEngine::open. `vfs` as DatabaseOptions.
  static absl::StatusOr<std::unique_ptr<DeviceStore>> open(const std::string& folder, const std::string& vfs,
                                                           const std::string& key, Random& random);

  // Runs `body(database)` in one transaction, committed when its status is OK; SQLite's errors become the
  // status. On the disk when it returns OK.
  template <typename Body>
  auto write(Body&& body) -> std::invoke_result_t<Body, Database&> {
    const std::lock_guard lock(m_mutex);
    m_settings.reset();
    return guarded([&]() -> std::invoke_result_t<Body, Database&> {
      Transaction transaction(*m_database);
      auto result = body(*m_database);
      if (result.ok()) transaction.commit();
      return result;
    });
  }

  // `body(database)` returns absl::StatusOr<T> and writes nothing.
  template <typename Body>
  auto read(Body&& body) -> std::invoke_result_t<Body, Database&> {
    const std::lock_guard lock(m_mutex);
    return guarded([&] { return body(*m_database); });
  }

  // As loadSettings(); unsealed once after each write, since every screen asks for them.
  absl::StatusOr<DeviceSettings> settings();

  // Seals everything anew with `key`, in one transaction that also notes `now`; from then on only it opens
  // the store.
  absl::Status reseal(const std::string& key, absl::Time now);

  // Every row of every table, then the free pages and the log; and stores that were set aside.
  absl::Status wipe();

 private:
  DeviceStore(std::string folder, std::string vfs, Random& random)
      : m_folder(std::move(folder)), m_vfs(std::move(vfs)), m_random(random) {}
  absl::Status openDatabase(const std::string& key);
  absl::Status scrub();

  const std::string m_folder;
  const std::string m_vfs;
  Random& m_random;
  std::mutex m_mutex;
  // Before the database, whose functions use them. While all is sealed anew, `next` has the new key.
  std::unique_ptr<Seal> m_seal;
  std::unique_ptr<Seal> m_next;
  std::unique_ptr<Database> m_database;
  std::optional<DeviceSettings> m_settings;  // as they are on the disk; none: to be read
};

// Inside a transaction; they throw as Database does.
DeviceSettings loadSettings(Database& database);
void saveSettings(Database& database, const DeviceSettings& settings);
void saveSetting(Database& database, const char* name, const std::string& value);
std::string loadSetting(Database& database, const char* name);  // empty: none
inline constexpr char kRemindersSetting[] = "reminders";        // a v1::ReminderBook
void deleteEverything(Database& database);

}  // namespace newel
