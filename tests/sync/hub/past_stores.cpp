#include "tests/sync/hub/past_stores.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "sync/common/database.h"
#include "sync/hub/hub_schema.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::test {
namespace {

std::vector<std::string> namesFrom(SQLite::Database& database, const std::string& query) {
  std::vector<std::string> names;
  SQLite::Statement rows(database, query);
  while (rows.executeStep()) names.push_back(rows.getColumn(0).getString());
  return names;
}

std::string sharedColumns(SQLite::Database& database, const std::string& table) {
  const auto here = namesFrom(database, "SELECT name FROM pragma_table_info('" + table + "', 'main')");
  const auto there = namesFrom(database, "SELECT name FROM pragma_table_info('" + table + "', 'whole')");
  std::string list;
  for (const auto& name : here) {
    if (std::find(there.begin(), there.end(), name) != there.end()) list += (list.empty() ? "" : ", ") + name;
  }
  return list;
}

}  // namespace

std::vector<int> storeVersions() {
  std::vector<int> versions;
  for (const auto& migration : hubMigrations()) versions.push_back(migration.number);
  return versions;
}

std::string pastStorePath(const std::string& folder, int version) {
  return folder + "/hub-" + std::to_string(version) + ".db";
}

void makePastStore(const std::string& full, const std::string& path, int version) {
  const auto& all = hubMigrations();
  std::filesystem::remove(path);
  DatabaseOptions options;
  options.path = path;
  options.what = "the clinic's store";
  auto made = Database::open(options, {all.begin(), all.begin() + version});
  ASSERT_TRUE(made.ok()) << made.status();
  SQLite::Database& database = (*made)->raw();
  database.exec("PRAGMA foreign_keys = OFF");
  database.exec("ATTACH '" + full + "' AS whole");
  for (const auto& table :
       namesFrom(database,
                 "SELECT name FROM main.sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")) {
    const std::string columns = sharedColumns(database, table);
    if (columns.empty()) continue;
    database.exec("DELETE FROM main." + table);
    database.exec("INSERT INTO main." + table + " (" + columns + ") SELECT " + columns + " FROM whole." +
                  table);
  }
  database.exec("DETACH whole");
  database.exec("PRAGMA journal_mode = DELETE");  // one file, with nothing beside it
}

void makeFullStore(const std::string& path) {
  TestClinic clinic;
  const v1::Person person = transfemoralLeft();
  const std::string id = clinic.addPerson(person);
  clinic.sign(person);
  auto phone = clinic.pairedPhone("phone", id);
  for (int i = 0; i < 3; ++i) {
    clinic.clock().advance(absl::Seconds(1));
    ASSERT_EQ(phone->closePractice(samplePractice(phone->newId(), id)), absl::OkStatus());
  }
  ASSERT_EQ(phone->writeMessage("The liner pinches."), absl::OkStatus());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  clinic.sign(person, 1);
  DeskCaller caller;
  caller.therapist.set_id(idOf(2001));
  caller.therapist.set_display_name("Dr Sample (invented)");
  v1::SendMessageRequest message;
  message.set_id(idOf(40));
  message.set_person_id(id);
  message.set_text("Thank you for writing.");
  ASSERT_TRUE(clinic.hub().files().sendMessage(caller, message).ok());
  v1::IssueHoldRequest hold;
  hold.set_person_id(id);
  hold.set_reason("Please rest today.");
  const auto held = clinic.hub().prescriptions().issueHold(caller, hold);
  ASSERT_TRUE(held.ok()) << held.status();
  hold.set_lifts_id(held->order().id());
  ASSERT_TRUE(clinic.hub().prescriptions().issueHold(caller, hold).ok());
  ASSERT_TRUE(clinic.hub().digests().refresh(100).ok());
  v1::Snooze snooze;
  snooze.set_reason("Seen on Monday.");
  snooze.set_until_day("2027-01-04");
  ASSERT_EQ(clinic.store().write([&](HubTransaction& transaction) {
    transaction.putSnooze(id, snooze.SerializeAsString());
    return absl::OkStatus();
  }),
            absl::OkStatus());
  phone.reset();
  clinic.stopHub();
  std::filesystem::copy_file(clinic.storePath(), path, std::filesystem::copy_options::overwrite_existing);
}

}  // namespace newel::test
