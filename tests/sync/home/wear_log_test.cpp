// Wearing time and measures through the real thing: phone, hub over TLS, desk.
#include "sync/home/wear_log.h"

#include <gtest/gtest.h>

#include "core/records/record_text.h"
#include "core/schedule/wear_plan.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class WearWay : public testing::Test {
 protected:
  absl::StatusOr<v1::Measure> put(const v1::Measure& measure, std::uint32_t base = 0) {
    v1::PutMeasureRequest request;
    *request.mutable_measure() = measure;
    request.set_base_revision(base);
    return m_clinic.desk().putMeasure(request);
  }
  v1::Programme withPlan(const v1::WearPlan& plan, std::uint32_t base) {
    v1::SignProgrammeRequest request;
    *request.mutable_draft() = m_clinic.draft(m_record);
    *request.mutable_draft()->mutable_wear_plan() = plan;
    request.set_base_number(base);
    const auto reply = m_clinic.desk().signProgramme(request);
    EXPECT_TRUE(reply.ok()) << reply.status();
    return reply.ok() ? reply->programme() : v1::Programme();
  }

  test::TestClinic m_clinic;
  v1::Person m_record = test::transfemoralLeft();
  std::string m_person = m_clinic.addPerson(m_record, "Tilda");
};

TEST_F(WearWay, aBlockGoesToTheDeskInItsLastRevisionAndOnce) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const std::string id = phone->newId();
  v1::WearBlock on = test::sampleWearBlock(id, m_person);
  on.clear_taken_off_at();
  on.clear_check();
  ASSERT_EQ(phone->keepWearBlock(on), absl::OkStatus());
  EXPECT_TRUE(absl::IsAlreadyExists(phone->keepWearBlock(on)));
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(m_clinic.desk().wearBlocks(m_person)->size(), 1U);
  EXPECT_FALSE(m_clinic.desk().wearBlocks(m_person)->at(0).has_taken_off_at());
  ASSERT_EQ(phone->keepWearBlock(test::sampleWearBlock(id, m_person, 2)), absl::OkStatus());
  EXPECT_EQ(phone->deliveryOf(id), Delivery::Waiting);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->deliveryOf(id), Delivery::Arrived);
  const auto kept = *m_clinic.desk().wearBlocks(m_person);
  ASSERT_EQ(kept.size(), 1U);
  EXPECT_EQ(kept[0].revision(), 2U);
  EXPECT_TRUE(kept[0].has_taken_off_at());
  EXPECT_EQ(phone->wearBlocks().size(), 1U);
}

TEST_F(WearWay, aBlockThatDoesNotHoldIsRefusedByItsField) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  v1::WearBlock bad = test::sampleWearBlock(phone->newId(), m_person);
  bad.mutable_check()->add_signs(v1::SKIN_SIGN_BLISTER);
  const absl::Status status = phone->keepWearBlock(bad);
  EXPECT_TRUE(absl::IsInvalidArgument(status));
  EXPECT_NE(std::string(status.message()).find("check.signs"), std::string::npos) << status;
  v1::WearBlock other = test::sampleWearBlock(phone->newId(), test::idOf(77));
  EXPECT_TRUE(absl::IsInvalidArgument(phone->keepWearBlock(other)));
  EXPECT_TRUE(phone->wearBlocks().empty());
}

// A new phone would otherwise allow what the skin had stopped.
TEST_F(WearWay, aNewPhoneKnowsWhatTheSkinSaid) {
  const auto first = m_clinic.pairedPhone("first", m_person);
  withPlan(test::sampleWearPlan(m_person), 0);
  v1::WearBlock harmed = test::sampleWearBlock(first->newId(), m_person);
  harmed.mutable_check()->set_signs(0, v1::SKIN_SIGN_BLISTER);
  ASSERT_EQ(first->keepWearBlock(harmed), absl::OkStatus());
  ASSERT_EQ(first->syncOnce(), absl::OkStatus());
  const auto second = m_clinic.pairedPhone("second", m_person);
  ASSERT_EQ(second->syncOnce(), absl::OkStatus());
  ASSERT_EQ(second->wearBlocks().size(), 1U);
  ASSERT_TRUE(second->programme().has_value());
  const auto day =
      wearDay(second->programme()->wear_plan(), second->wearBlocks(), absl::CivilDay(2026, 11, 26));
  ASSERT_TRUE(day.ok()) << day.status();
  EXPECT_EQ(day->gate, WearGate::StayOff);
  EXPECT_TRUE(day->call_clinic);
  EXPECT_EQ(m_clinic.desk().wearBlocks(m_person)->size(), 1U);
}

TEST_F(WearWay, itIsAmongEverythingAboutMe) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  ASSERT_EQ(phone->keepWearBlock(test::sampleWearBlock(phone->newId(), m_person)), absl::OkStatus());
  const std::string all = phone->exportAll();
  EXPECT_NE(all.find("\"wearing_time\""), std::string::npos);
  EXPECT_NE(all.find("2026-11-25"), std::string::npos);
}

TEST_F(WearWay, aPlanGoesOnAsItIsUntilTheClinicChangesIt) {
  const v1::Programme first = withPlan(test::sampleWearPlan(m_person), 0);
  EXPECT_EQ(first.wear_plan().number(), 1U);
  EXPECT_EQ(first.wear_plan().person_id(), m_person);
  EXPECT_EQ(first.wear_plan().signer_name(), first.signer_name());
  v1::WearPlan again = first.wear_plan();
  again.set_number(40);
  again.set_signer_name("Somebody else");
  const v1::Programme second = withPlan(again, 1);
  EXPECT_EQ(toBytes(second.wear_plan()), toBytes(first.wear_plan())) << "the same plan, whoever signs";
  v1::WearPlan changed = second.wear_plan();
  changed.mutable_steps(0)->set_block_min(30);
  EXPECT_EQ(withPlan(changed, 2).wear_plan().number(), 2U);
}

TEST_F(WearWay, aMeasureReachesThePhoneInItsLastRevision) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const std::string id = test::idOf(810);
  const auto kept = put(test::timedWalk(id, m_person, 14.2));
  ASSERT_TRUE(kept.ok()) << kept.status();
  EXPECT_EQ(kept->revision(), 1U);
  EXPECT_FALSE(kept->taken_by().empty());
  ASSERT_TRUE(put(test::timedWalk(id, m_person, 14.2)).ok()) << "said again, it is the same";
  EXPECT_TRUE(absl::IsAborted(put(test::timedWalk(id, m_person, 15)).status()));
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->measures().size(), 1U);
  EXPECT_EQ(phone->measures()[0].value(), 14.2);
  ASSERT_TRUE(put(test::timedWalk(id, m_person, 12.5), 1).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->measures().size(), 1U);
  EXPECT_EQ(phone->measures()[0].value(), 12.5);
  v1::Measure mistake = test::timedWalk(id, m_person, 12.5);
  mistake.set_withdrawn(true);
  ASSERT_TRUE(put(mistake, 2).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(phone->measures().empty());
  EXPECT_EQ(m_clinic.desk().measures(m_person)->size(), 1U) << "kept, and marked";
}

TEST_F(WearWay, aMeasureThatDoesNotFitItsTableIsRefused) {
  v1::Measure measure = test::timedWalk(test::idOf(811), m_person, 14);
  measure.set_unit("min");
  EXPECT_TRUE(absl::IsInvalidArgument(put(measure).status()));
  measure = test::timedWalk(test::idOf(811), m_person, 9999);
  EXPECT_TRUE(absl::IsInvalidArgument(put(measure).status()));
  measure = test::timedWalk(test::idOf(811), m_person, 14);
  measure.set_kind("hopping");
  EXPECT_FALSE(put(measure).ok());
  EXPECT_TRUE(m_clinic.desk().measures(m_person)->empty());
}

}  // namespace
}  // namespace newel
