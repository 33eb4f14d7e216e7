#include "sync/hub/prescriptions.h"

#include <gtest/gtest.h>

#include <atomic>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/signing.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class PrescriptionRule : public testing::Test {
 protected:
  absl::StatusOr<v1::SignProgrammeReply> sign(const v1::Programme& draft, std::uint32_t base = 0) {
    v1::SignProgrammeRequest request;
    *request.mutable_draft() = draft;
    request.set_base_number(base);
    return m_clinic.desk().signProgramme(request);
  }
  // The first exercise of the catalogue with a finding of `effect` for this person, as a draft.
  std::optional<v1::Programme> draftWith(v1::Effect effect) {
    for (const auto& exercise : Catalogue::builtIn().exercises()) {
      const v1::Entry entry = test::entryOf(exercise.id(), m_person, 300);
      const auto findings = RuleBook::builtIn().check(entry, m_person, Catalogue::builtIn());
      if (!findings.ok()) continue;
      bool blocks = false;
      bool has = false;
      for (const auto& finding : *findings) {
        blocks = blocks || finding.effect() == v1::EFFECT_BLOCK;
        has = has || finding.effect() == effect;
      }
      if (!has || (blocks && effect != v1::EFFECT_BLOCK)) continue;
      v1::Programme draft = m_clinic.draft(m_person);
      draft.clear_entries();
      *draft.add_entries() = entry;
      return draft;
    }
    return std::nullopt;
  }
  static v1::Therapist someTherapist() {
    v1::Therapist therapist;
    therapist.set_id(test::idOf(60));
    therapist.set_display_name("Terry Sample (invented)");
    return therapist;
  }
  std::uint32_t latest() { return m_clinic.desk().caseload()->at(0).programme_number(); }

  test::TestClinic m_clinic;
  v1::Person m_person = test::transfemoralLeft();
  std::string m_id = m_clinic.addPerson(m_person);
};

TEST_F(PrescriptionRule, theHubNumbersSignsAndNamesTheSigner) {
  v1::Programme draft = m_clinic.draft(m_person);
  draft.set_number(77);
  draft.set_signer_name("Somebody else");
  const auto reply = sign(draft);
  ASSERT_TRUE(reply.ok()) << reply.status();
  EXPECT_EQ(reply->programme().number(), 1U);
  EXPECT_EQ(reply->programme().signer_name(), "Terry Sample (invented)");
  EXPECT_EQ(reply->programme().clinic_id(), m_clinic.hub().clinic().card.clinic_id());
  const auto opened = openProgramme(reply->signed_programme(), m_clinic.hub().clinic().key.public_key);
  ASSERT_TRUE(opened.ok()) << opened.status();
  EXPECT_EQ(toBytes(*opened), toBytes(reply->programme()));
}

TEST_F(PrescriptionRule, aBlockCannotBeSigned) {
  m_person.add_conditions(v1::CONDITION_OPEN_WOUND);
  m_person.set_mobility(v1::MOBILITY_LEVEL_K0);
  m_person.mutable_home()->set_rails(v1::RAILS_NONE);
  m_person.set_can_get_up_from_floor(v1::ANSWER_NO);
  v1::PutPersonRequest put;
  *put.mutable_person() = m_person;
  put.mutable_identity()->set_person_id(m_id);
  put.mutable_identity()->set_given_name("Sample");
  put.set_base_revision(1);
  ASSERT_TRUE(m_clinic.desk().putPerson(put).ok());
  auto draft = draftWith(v1::EFFECT_BLOCK);
  ASSERT_TRUE(draft.has_value()) << "no rule blocks anything for this person";
  const auto refused = sign(*draft);
  EXPECT_TRUE(absl::IsFailedPrecondition(refused.status())) << refused.status();
  EXPECT_NE(std::string(refused.status().message()).find("block"), std::string::npos);
  EXPECT_EQ(latest(), 0U) << "and nothing was kept";
  // Reasons help against an ask, never against a block.
  const auto findings = RuleBook::builtIn().check(draft->entries(0), m_person, Catalogue::builtIn());
  for (const auto& finding : *findings) {
    v1::Override& reason = *draft->mutable_entries(0)->add_overrides();
    reason.set_rule_id(finding.rule_id());
    reason.set_reason("I insist.");
  }
  EXPECT_TRUE(absl::IsFailedPrecondition(sign(*draft).status()));
  EXPECT_EQ(latest(), 0U);
}

TEST_F(PrescriptionRule, anAskNeedsAWrittenReason) {
  m_person.add_conditions(v1::CONDITION_DIABETES);
  m_person.add_conditions(v1::CONDITION_HEART_DISEASE);
  m_person.add_conditions(v1::CONDITION_BACK_PAIN);
  v1::PutPersonRequest put;
  *put.mutable_person() = m_person;
  put.mutable_identity()->set_person_id(m_id);
  put.mutable_identity()->set_given_name("Sample");
  put.set_base_revision(1);
  ASSERT_TRUE(m_clinic.desk().putPerson(put).ok());
  auto draft = draftWith(v1::EFFECT_ASK);
  ASSERT_TRUE(draft.has_value()) << "no rule asks anything for this person";
  const auto refused = sign(*draft);
  EXPECT_TRUE(absl::IsFailedPrecondition(refused.status())) << refused.status();
  EXPECT_NE(std::string(refused.status().message()).find("ask"), std::string::npos);
  const auto findings = RuleBook::builtIn().check(draft->entries(0), m_person, Catalogue::builtIn());
  for (const auto& finding : *findings) {
    if (finding.effect() != v1::EFFECT_ASK) continue;
    v1::Override& reason = *draft->mutable_entries(0)->add_overrides();
    reason.set_rule_id(finding.rule_id());
    reason.set_reason("Tried together on Monday.");
  }
  const auto accepted = sign(*draft);
  ASSERT_TRUE(accepted.ok()) << accepted.status();
  EXPECT_GT(accepted->programme().entries(0).overrides_size(), 0) << "the reason is kept under the signature";
}

TEST_F(PrescriptionRule, anOldBaseIsAborted) {
  m_clinic.sign(m_person, 0);
  m_clinic.sign(m_person, 1);
  EXPECT_TRUE(absl::IsAborted(sign(m_clinic.draft(m_person), 1).status()));
  EXPECT_TRUE(absl::IsAborted(sign(m_clinic.draft(m_person), 3).status()));
  EXPECT_EQ(latest(), 2U);
}

TEST_F(PrescriptionRule, theSameDraftSentAgainIsOneProgramme) {
  v1::Programme draft = m_clinic.draft(m_person);
  draft.set_id(test::idOf(55));
  const auto first = sign(draft);
  const auto again = sign(draft);
  ASSERT_TRUE(again.ok()) << again.status();
  EXPECT_EQ(again->programme().number(), 1U);
  EXPECT_EQ(again->signed_programme().signature(), first->signed_programme().signature());
  draft.set_advice("Other words.");
  EXPECT_TRUE(absl::IsAlreadyExists(sign(draft).status()));
  EXPECT_EQ(m_clinic.desk().programmes(m_id)->size(), 1U);
}

TEST_F(PrescriptionRule, twoDesksAtOnceNeverShareANumber) {
  std::atomic<int> signed_count{0};
  std::atomic<int> aborted{0};
  std::vector<std::thread> desks;
  for (int i = 0; i < 6; ++i) {
    desks.emplace_back([&] {
      v1::SignProgrammeRequest request;
      *request.mutable_draft() = m_clinic.draft(m_person);
      const auto reply = m_clinic.hub().prescriptions().sign(DeskCaller{someTherapist(), ""}, request);
      if (reply.ok()) ++signed_count;
      if (absl::IsAborted(reply.status())) ++aborted;
    });
  }
  for (auto& desk : desks) desk.join();
  EXPECT_EQ(signed_count, 1);
  EXPECT_EQ(aborted, 5);
}

TEST_F(PrescriptionRule, badDraftsAreRefusedByField) {
  v1::Programme draft = m_clinic.draft(m_person);
  draft.mutable_entries(0)->mutable_dose()->Clear();
  EXPECT_TRUE(absl::IsInvalidArgument(sign(draft).status()));
  draft = m_clinic.draft(m_person);
  draft.set_person_id(test::idOf(98));
  EXPECT_TRUE(absl::IsNotFound(sign(draft).status()));
  EXPECT_EQ(latest(), 0U);
}

TEST_F(PrescriptionRule, holdsAreNumberedAndLiftedOnce) {
  v1::IssueHoldRequest hold;
  hold.set_person_id(m_id);
  hold.set_reason("Please stop and call us.");
  const auto first = m_clinic.desk().issueHold(hold);
  ASSERT_TRUE(first.ok()) << first.status();
  EXPECT_EQ(first->number(), 1U);
  auto row = m_clinic.desk().caseload()->at(0);
  EXPECT_TRUE(row.hold_active());
  EXPECT_FALSE(row.hold_arrived());
  v1::IssueHoldRequest lift = hold;
  lift.set_lifts_id(first->id());
  const auto lifted = m_clinic.desk().issueHold(lift);
  ASSERT_TRUE(lifted.ok()) << lifted.status();
  EXPECT_EQ(lifted->number(), 2U);
  EXPECT_FALSE(m_clinic.desk().caseload()->at(0).hold_active());
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().issueHold(lift).status())) << "lifted already";
  lift.set_lifts_id(lifted->id());
  EXPECT_TRUE(absl::IsFailedPrecondition(m_clinic.desk().issueHold(lift).status())) << "it holds nothing";
  lift.set_lifts_id(test::idOf(97));
  EXPECT_TRUE(absl::IsNotFound(m_clinic.desk().issueHold(lift).status()));
  hold.clear_reason();
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().issueHold(hold).status()));
  EXPECT_EQ(m_clinic.desk().holds(m_id)->size(), 2U);
}

TEST_F(PrescriptionRule, aHoldSentAgainIsOneOrder) {
  v1::IssueHoldRequest hold;
  hold.set_person_id(m_id);
  hold.set_reason("Please stop and call us.");
  hold.set_id(test::idOf(640));
  const auto first = m_clinic.desk().issueHold(hold);
  ASSERT_TRUE(first.ok()) << first.status();
  EXPECT_EQ(first->id(), hold.id());
  m_clinic.clock().advance(absl::Minutes(3));
  const auto again = m_clinic.desk().issueHold(hold);
  ASSERT_TRUE(again.ok()) << again.status();
  EXPECT_EQ(again->SerializeAsString(), first->SerializeAsString());
  EXPECT_EQ(m_clinic.desk().holds(m_id)->size(), 1U);
  v1::IssueHoldRequest other = hold;
  other.set_reason("Something else.");
  EXPECT_TRUE(absl::IsAlreadyExists(m_clinic.desk().issueHold(other).status()));
  other = hold;
  other.set_person_id(m_clinic.addPerson(test::transtibialRight(), "Una"));
  EXPECT_TRUE(absl::IsAlreadyExists(m_clinic.desk().issueHold(other).status())) << "an id is one order's";
  other.set_id("no id");
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.desk().issueHold(other).status()));
}

}  // namespace
}  // namespace newel
