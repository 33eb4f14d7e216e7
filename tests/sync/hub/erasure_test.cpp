// What is left of a person after `newel-hub erase`: nothing in any table, no byte on the disk, and a mark for
// their phone.
#include "sync/hub/erasure.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>

#include "sync/common/content_hash.h"
#include "sync/hub/demo_people.h"
#include "sync/hub/hub_commands.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"

namespace newel {
namespace {

constexpr char kWords[] = "The liner pinches below the knee, quite unmistakably.";

class Erasure : public testing::Test {
 protected:
  // A person with a row in every table that has persons.
  std::string addWhole(const v1::Person& person, const std::string& given_name) {
    const std::string id = m_clinic.addPerson(person, given_name);
    m_clinic.sign(person);
    v1::IssueHoldRequest hold;
    hold.set_person_id(id);
    hold.set_reason(kWords);
    EXPECT_TRUE(m_clinic.desk().issueHold(hold).ok());
    v1::SendMessageRequest message;
    message.set_person_id(id);
    message.set_text(kWords);
    message.set_id(newRecordId());
    EXPECT_TRUE(m_clinic.desk().sendMessage(message).ok());
    return id;
  }
  std::string newRecordId() {
    m_clinic.clock().advance(absl::Milliseconds(2));
    return test::idOf(++m_ids);
  }
  void openOne(const std::string& person_id) {
    EXPECT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
      const absl::Time now = m_clinic.clock().wall();
      transaction.addOpening({newRecordId(), person_id, "somebody", kWords, now, now + absl::Hours(1)});
      return absl::OkStatus();
    }),
              absl::OkStatus());
  }
  int erase(const std::string& id, const std::string& reason = "wish") {
    return eraseCommand(m_machine, m_clinic.folder().path(), id, reason);
  }
  // Rows that carry `person_id` in any table that has such a column, table by table.
  std::map<std::string, int> rowsOf(const std::string& person_id) {
    SQLite::Database raw(m_clinic.storePath(), SQLite::OPEN_READONLY);
    std::map<std::string, int> rows;
    SQLite::Statement tables(raw,
                             "SELECT m.name, c.name FROM sqlite_master AS m, pragma_table_info(m.name) AS c "
                             "WHERE m.type = 'table' AND (c.name = 'person_id' OR (m.name = 'person' AND "
                             "c.name = 'id'))");
    while (tables.executeStep()) {
      const std::string table = tables.getColumn(0).getString();
      SQLite::Statement count(
          raw, "SELECT COUNT(*) FROM " + table + " WHERE " + tables.getColumn(1).getString() + " = ?");
      count.bind(1, person_id);
      count.executeStep();
      rows[table] = count.getColumn(0).getInt();
    }
    return rows;
  }
  bool onDisk(const std::string& words) {
    for (const auto& file : std::filesystem::directory_iterator(m_clinic.folder().path())) {
      if (file.path().filename().string().rfind("hub.db", 0) != 0) continue;
      std::ifstream stream(file.path(), std::ios::binary);
      const std::string bytes((std::istreambuf_iterator<char>(stream)), {});
      if (bytes.find(words) != std::string::npos) return true;
    }
    return false;
  }

  test::TestClinic m_clinic;
  std::uint64_t m_ids = 5000;
  std::ostringstream m_out;
  std::ostringstream m_err;
  HubMachine m_machine{&m_clinic.clock(), &m_clinic.random(), &m_out, &m_err};
};

TEST_F(Erasure, leavesNoRowAndNoByteAndTellsThePhone) {
  const std::string id = addWhole(test::transfemoralLeft(), "Unmistakable");
  const auto phone = m_clinic.pairedPhone("phone", id);
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), id)).ok());
  ASSERT_EQ(phone->keepWearBlock(test::sampleWearBlock(phone->newId(), id)), absl::OkStatus());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus()) << "the receipts of what the first one brought";
  EXPECT_TRUE(m_clinic.desk().createPairing(id).ok());
  openOne(id);
  // A photo that came whole, and one that was cut.
  ASSERT_EQ(m_clinic.desk().putMedia(id, test::photoOfColour(1)), absl::OkStatus());
  const std::string cut = test::photoOfColour(2);
  v1::PutMediaRequest part = mediaPartOf(id, cut, sha256(cut), 0);
  part.mutable_content()->resize(cut.size() / 2);
  ASSERT_TRUE(m_clinic.desk().putMediaPart(part).ok());
  ASSERT_TRUE(m_clinic.hub().digests().refresh(100).ok());
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    transaction.putSnooze(id, v1::Snooze().SerializeAsString() + std::string(kWords));
    return absl::OkStatus();
  }),
            absl::OkStatus());
  for (const auto& [table, count] : rowsOf(id)) EXPECT_GT(count, 0) << table << ": the test has to fill it";
  EXPECT_TRUE(onDisk(kWords) && onDisk("Unmistakable"));
  ASSERT_EQ(erase(id), 0) << m_err.str();
  for (const auto& [table, count] : rowsOf(id)) EXPECT_EQ(count, 0) << table;
  EXPECT_FALSE(onDisk(kWords));
  EXPECT_FALSE(onDisk("Unmistakable"));
  const auto lines = m_clinic.auditActions();
  EXPECT_NE(lines.back().find("\"a\":\"person.erase\""), std::string::npos) << lines.back();
  EXPECT_NE(lines.back().find("\"f\":\"wish\""), std::string::npos);
  EXPECT_EQ(verifyAuditCommand(m_machine, m_clinic.folder().path(), ""), 0) << m_err.str();
  EXPECT_EQ(m_clinic.desk().caseload()->size(), 0U);

  const absl::Status told = phone->syncOnce();
  EXPECT_TRUE(absl::IsPermissionDenied(told)) << told;
  EXPECT_NE(told.message().find("erased"), std::string::npos) << told;
  // The id is spent: a desk with an old copy does not bring the person back.
  v1::PutPersonRequest put;
  *put.mutable_person() = test::transfemoralLeft();
  put.mutable_identity()->set_person_id(id);
  put.mutable_identity()->set_given_name("Back");
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().putPerson(put).status()));
}

TEST_F(Erasure, leavesOthersAsTheyWere) {
  const std::string id = addWhole(test::transfemoralLeft(), "First");
  const std::string other = addWhole(test::transtibialRight(), "Second");
  const auto phone = m_clinic.pairedPhone("other", other);
  const auto before = rowsOf(other);
  ASSERT_EQ(erase(id), 0) << m_err.str();
  EXPECT_EQ(rowsOf(other), before);
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
}

TEST_F(Erasure, saysWhatIsWrongAndChangesNothing) {
  const std::string id = addWhole(test::transfemoralLeft(), "First");
  const auto before = rowsOf(id);
  EXPECT_EQ(erase(id, "their stump infection"), 1);
  EXPECT_EQ(erase(test::idOf(99)), 1);
  EXPECT_EQ(rowsOf(id), before);
}

TEST_F(Erasure, aSecondDemoDoesNotBringAnybodyBack) {
  const std::string data = m_clinic.folder().path("demo");
  ASSERT_EQ(demoCommand(m_machine, data), 0) << m_err.str();
  const std::string id = demoPeople().front().person.id();
  ASSERT_EQ(eraseCommand(m_machine, data, id, "mistake"), 0) << m_err.str();
  EXPECT_EQ(demoCommand(m_machine, data), 0) << m_err.str();
  EXPECT_EQ(eraseCommand(m_machine, data, id, "mistake"), 1) << "nobody has the id any more";
}

TEST_F(Erasure, dueAreOnlyThoseOfWhomNothingHappened) {
  // Both ids are of the day of the test's clock; one has a programme that ends in 2027.
  const std::string planned = addWhole(test::transfemoralLeft(), "Planned");
  const std::string quiet = m_clinic.addPerson(test::transtibialRight(), "Quiet");
  const absl::Time now = m_clinic.clock().wall();
  const auto due = [&](absl::Time at, int days) {
    const auto list = personsDue(m_clinic.store(), at, absl::Hours(24) * days);
    EXPECT_TRUE(list.ok()) << list.status();
    return list.ok() ? *list : std::vector<std::string>();
  };
  const absl::Time later = now + absl::Hours(24 * 365 * 3);
  EXPECT_TRUE(due(now, 4000).empty());
  EXPECT_EQ(due(later, 365 * 10).size(), 0U);
  const auto both = due(later, 30);
  EXPECT_EQ(both.size(), 2U);
  EXPECT_EQ(due(absl::FromUnixSeconds(1801526400), 30), std::vector<std::string>{quiet})
      << "on 2027-02-02 the programme has ended two days ago";
  EXPECT_EQ(dueCommand(m_machine, m_clinic.folder().path(), 0), 1);
  EXPECT_EQ(rowsOf(planned)["person"], 1) << "nobody is erased by looking";
}

}  // namespace
}  // namespace newel
