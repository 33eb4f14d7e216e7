#include "sync/hub/person_remarks.h"

#include <gtest/gtest.h>

#include "core/records/check.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class Remarks : public testing::Test {
 protected:
  v1::PutRemarkRequest note(int number, const std::string& text, std::uint32_t base = 0) {
    v1::PutRemarkRequest request;
    *request.mutable_remark() = test::sampleRemark(test::idOf(number), m_person);
    request.mutable_remark()->set_text(text);
    request.set_base_revision(base);
    return request;
  }
  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
};

TEST_F(Remarks, areKeptWithTheirWriterAndChangedByTheLatestRevisionOnly) {
  const auto kept = m_clinic.desk().putRemark(note(700, "The neighbour was away."));
  ASSERT_TRUE(kept.ok()) << kept.status();
  EXPECT_FALSE(kept->written_by().empty());
  EXPECT_FALSE(kept->writer_name().empty());
  EXPECT_TRUE(m_clinic.desk().putRemark(note(700, "The neighbour was away.")).ok()) << "said again";
  EXPECT_TRUE(absl::IsAborted(m_clinic.desk().putRemark(note(700, "Something else.")).status()));
  EXPECT_TRUE(m_clinic.desk().putRemark(note(700, "The neighbour was ill.", 1)).ok());
  const auto all = m_clinic.desk().remarks(m_person);
  ASSERT_TRUE(all.ok());
  ASSERT_EQ(all->size(), 1U);
  EXPECT_EQ(all->front().text(), "The neighbour was ill.");
  EXPECT_EQ(all->front().revision(), 2U);
}

TEST_F(Remarks, badOnesAreRefusedByField) {
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putRemark(note(701, "")).status()));
  auto request = note(701, "x");
  request.mutable_remark()->set_local_day("yesterday");
  EXPECT_EQ(std::string(check(request.remark()).message()).rfind("local_day", 0), 0U);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putRemark(request).status()));
  request = note(701, std::string(1001, 'x'));
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().putRemark(request).status()));
  request = note(701, "x");
  request.mutable_remark()->set_person_id(test::idOf(999));
  EXPECT_FALSE(m_clinic.desk().putRemark(request).ok());
}

TEST_F(Remarks, anIdStandsForOnePersonAndOneWriter) {
  ASSERT_TRUE(m_clinic.desk().putRemark(note(702, "Mine.")).ok());
  auto request = note(702, "Of another.");
  request.mutable_remark()->set_person_id(m_clinic.addPerson(test::transtibialRight()));
  EXPECT_TRUE(absl::IsAlreadyExists(m_clinic.desk().putRemark(request).status()));
  DeskCaller other;
  other.therapist.set_id(test::idOf(990));
  EXPECT_TRUE(
      absl::IsPermissionDenied(m_clinic.hub().remarks().put(other, note(702, "Not mine.", 1)).status()));
  EXPECT_TRUE(absl::IsPermissionDenied(m_clinic.hub().remarks().put(other, note(702, "Mine.")).status()))
      << "nor told what it says";
}

// What colleagues tell each other about a person is not the person's post.
TEST_F(Remarks, neverReachAPhone) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_TRUE(m_clinic.desk().putRemark(note(703, "Frightened of the stairs, I think.")).ok());
  m_clinic.store()
      .read([&](HubTransaction& transaction) {
        for (const auto& envelope : transaction.feedAfter(m_person, 0, 1000))
          EXPECT_NE(envelope.kind(), v1::RECORD_KIND_REMARK);
        return absl::OkStatus();
      })
      .IgnoreError();
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
}

// Nor can a phone bring one.
TEST_F(Remarks, areNotTakenFromPhones) {
  for (const auto& action : m_clinic.auditActions()) EXPECT_EQ(action.find("remark"), std::string::npos);
  ASSERT_TRUE(m_clinic.desk().putRemark(note(704, "Seen on the ward.")).ok());
  int noted = 0;
  for (const auto& action : m_clinic.auditActions()) {
    if (action.find("remark.put") != std::string::npos) ++noted;
    EXPECT_EQ(action.find("ward"), std::string::npos) << "the trail says that, not what";
  }
  EXPECT_EQ(noted, 1);
}

}  // namespace
}  // namespace newel
