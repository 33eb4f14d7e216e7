#include "sync/hub/person_files.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class PersonFile : public testing::Test {
 protected:
  v1::PutPersonRequest put(const v1::Person& person, std::uint64_t base) {
    v1::PutPersonRequest request;
    *request.mutable_person() = person;
    request.mutable_identity()->set_person_id(person.id());
    request.mutable_identity()->set_given_name("Ottilie");
    request.mutable_identity()->set_family_name("Invented");
    request.set_base_revision(base);
    return request;
  }
  static DeskCaller lead() {
    DeskCaller caller;
    caller.therapist.set_role(v1::ROLE_LEAD);
    return caller;
  }
  test::TestClinic m_clinic;
  v1::Person m_person = test::transfemoralLeft();
};

TEST_F(PersonFile, changesNeedTheLatestRevision) {
  EXPECT_EQ(*m_clinic.desk().putPerson(put(m_person, 0)), 1U);
  EXPECT_TRUE(absl::IsAlreadyExists(m_clinic.desk().putPerson(put(m_person, 0)).status()));
  EXPECT_EQ(*m_clinic.desk().putPerson(put(m_person, 1)), 2U);
  EXPECT_TRUE(absl::IsAborted(m_clinic.desk().putPerson(put(m_person, 1)).status()));
  EXPECT_EQ(m_clinic.desk().person(m_person.id())->person().revision(), 2U);
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().putPerson(put(test::transtibialRight(), 4)).status()));
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().person(test::idOf(99)).status()));
}

TEST_F(PersonFile, badRecordsAreRefusedByField) {
  auto request = put(m_person, 0);
  request.mutable_person()->clear_limbs();
  const auto status = m_clinic.desk().putPerson(request).status();
  EXPECT_TRUE(absl::IsInvalidArgument(status));
  EXPECT_EQ(std::string(status.message()).rfind("limbs", 0), 0U) << status;
  request = put(m_person, 0);
  request.mutable_identity()->set_person_id(test::idOf(99));
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putPerson(request).status()));
}

// The name is in one table and nowhere else, the audit trail included.
TEST_F(PersonFile, identityLiesApart) {
  ASSERT_TRUE(m_clinic.desk().putPerson(put(m_person, 0)).ok());
  ASSERT_TRUE(m_clinic.desk().person(m_person.id()).ok());
  m_clinic.sign(m_person);
  int seen = 0;
  for (const auto& [table, bytes] : m_clinic.place().dump()) {
    const bool named = bytes.find("Ottilie") != std::string::npos;
    EXPECT_TRUE(!named || table == "identity") << table;
    seen += named ? 1 : 0;
  }
  EXPECT_EQ(seen, 1);
}

TEST_F(PersonFile, lookingIsAuditedOnceInAWhile) {
  ASSERT_TRUE(m_clinic.desk().putPerson(put(m_person, 0)).ok());
  const auto sights = [&] {
    int count = 0;
    for (const auto& line : m_clinic.auditActions())
      count += line.find("person.see") != std::string::npos ? 1 : 0;
    return count;
  };
  for (int i = 0; i < 5; ++i) EXPECT_TRUE(m_clinic.desk().person(m_person.id()).ok());
  EXPECT_EQ(sights(), 1);
  m_clinic.clock().advance(absl::Minutes(6));
  EXPECT_TRUE(m_clinic.desk().person(m_person.id()).ok());
  EXPECT_EQ(sights(), 2);
}

TEST_F(PersonFile, caseloadComesInPages) {
  for (const auto& sample : test::samplePeople()) {
    ASSERT_TRUE(m_clinic.desk().putPerson(put(sample.person, 0)).ok());
  }
  v1::ListCaseloadRequest request;
  request.set_limit(3);
  std::vector<std::string> ids;
  while (true) {
    const auto page = m_clinic.hub().files().caseload(lead(), request);
    ASSERT_TRUE(page.ok()) << page.status();
    for (const auto& row : page->rows()) ids.push_back(row.person().id());
    if (!page->more()) break;
    EXPECT_EQ(page->rows_size(), 3);
    request.set_after_person_id(ids.back());
  }
  EXPECT_EQ(ids.size(), test::samplePeople().size());
  EXPECT_TRUE(std::is_sorted(ids.begin(), ids.end()));
  request.set_limit(0);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.hub().files().caseload(lead(), request).status()));
  request.set_limit(501);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.hub().files().caseload(lead(), request).status()));
}

TEST_F(PersonFile, aMessageSentTwiceIsOneMessage) {
  ASSERT_TRUE(m_clinic.desk().putPerson(put(m_person, 0)).ok());
  v1::SendMessageRequest request;
  request.set_id(test::idOf(70));
  request.set_person_id(m_person.id());
  request.set_text("Please wear the new liner.");
  EXPECT_TRUE(m_clinic.desk().sendMessage(request).ok());
  EXPECT_TRUE(m_clinic.desk().sendMessage(request).ok());
  EXPECT_EQ(m_clinic.desk().messages(m_person.id(), false)->size(), 1U);
  request.set_text("Other words.");
  EXPECT_TRUE(absl::IsAlreadyExists(m_clinic.desk().sendMessage(request).status()));
  request.set_id(test::idOf(71));
  request.set_text("");
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().sendMessage(request).status()));
}

TEST_F(PersonFile, whatLeavesTheDeskStandsInTheTrail) {
  ASSERT_TRUE(m_clinic.desk().putPerson(put(m_person, 0)).ok());
  for (const char* format : {"fhir", "ical", "csv", "handout", "report", "card"}) {
    EXPECT_EQ(m_clinic.desk().noteExport(m_person.id(), format), absl::OkStatus()) << format;
    const std::string line = m_clinic.auditActions().back();
    EXPECT_NE(line.find("person.export"), std::string::npos) << line;
  }
  const std::size_t lines = m_clinic.auditActions().size();
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().noteExport(m_person.id(), "fax")));
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().noteExport(test::idOf(99), "fhir")));
  DeskCaller anybody;
  v1::NoteExportRequest request;
  request.set_person_id(test::idOf(99));
  request.set_format("fhir");
  EXPECT_TRUE(absl::IsNotFound(m_clinic.hub().files().noteExport(anybody, request).status()));
  EXPECT_GE(m_clinic.auditActions().size(), lines);
}

}  // namespace
}  // namespace newel
