#include "sync/hub/intake.h"

#include <gtest/gtest.h>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

class IntakeRule : public testing::Test {
 protected:
  v1::Envelope practice(std::uint64_t id, std::uint32_t revision = 1, const std::string& note = "") {
    v1::Practice record = test::samplePractice(test::idOf(id), m_person, revision);
    record.set_note(note);
    return envelopeOf(v1::RECORD_KIND_PRACTICE, record, revision);
  }
  template <typename Record>
  v1::Envelope envelopeOf(v1::RecordKind kind, const Record& record, std::uint32_t revision = 1) {
    v1::Envelope envelope = makeEnvelope(kind, record.id(), revision, toBytes(record));
    envelope.set_sequence(++m_sequence);
    return envelope;
  }
  v1::Receipt receipt(std::uint64_t id, const std::string& ref_id, std::uint64_t number) {
    v1::Receipt record;
    record.set_id(test::idOf(id));
    record.set_person_id(m_person);
    record.set_of(v1::RECEIPT_OF_PROGRAMME);
    record.set_ref_id(ref_id);
    record.set_ref_number(number);
    record.set_state(v1::RECEIPT_STATE_ARRIVED);
    record.mutable_at()->set_seconds(1795600000);
    return record;
  }
  v1::OfferReply offer(const std::vector<v1::Envelope>& envelopes) {
    v1::OfferRequest request;
    for (const auto& envelope : envelopes) *request.add_records() = envelope;
    auto reply = m_clinic.hub().phones().offer(m_caller, request);
    EXPECT_TRUE(reply.ok()) << reply.status();
    return reply.ok() ? *reply : v1::OfferReply();
  }
  v1::OutcomeOf offerOne(const v1::Envelope& envelope) {
    const auto reply = offer({envelope});
    return reply.outcomes_size() == 1 ? reply.outcomes(0) : v1::OutcomeOf();
  }
  void expectRefused(const v1::Envelope& envelope, const std::string& field) {
    const std::size_t practices = m_clinic.desk().practices(m_person)->size();
    const std::size_t lines = m_clinic.auditActions().size();
    const auto outcome = offerOne(envelope);
    EXPECT_EQ(outcome.outcome(), v1::OUTCOME_REFUSED) << field;
    EXPECT_EQ(outcome.reason().rfind(field, 0), 0U) << outcome.reason();
    EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), practices) << "a refused record changes nothing";
    const auto audit = m_clinic.auditActions();
    EXPECT_GT(audit.size(), lines) << "and is audited";
    EXPECT_NE(audit.back().find(R"("a":"offer.refused","f":")" + field), std::string::npos) << audit.back();
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  std::string m_other = m_clinic.addPerson(test::transtibialRight());
  PhoneCaller m_caller{test::idOf(900), m_person};
  std::uint64_t m_sequence = 0;
};

TEST_F(IntakeRule, eachDeliveryAfterTheFirstIsKnown) {
  const auto envelope = practice(1);
  EXPECT_EQ(offerOne(envelope).outcome(), v1::OUTCOME_KEPT);
  for (int i = 0; i < 4; ++i) EXPECT_EQ(offerOne(envelope).outcome(), v1::OUTCOME_KNOWN);
  EXPECT_EQ(offer({envelope, envelope}).outcomes(1).outcome(), v1::OUTCOME_KNOWN);
  EXPECT_EQ(m_clinic.desk().practices(m_person)->size(), 1U);
}

TEST_F(IntakeRule, theLastRevisionStandsInAnyOrder) {
  EXPECT_EQ(offerOne(practice(1, 1, "one")).outcome(), v1::OUTCOME_KEPT);
  EXPECT_EQ(offerOne(practice(1, 3, "three")).outcome(), v1::OUTCOME_KEPT);
  EXPECT_EQ(offerOne(practice(1, 2, "two")).outcome(), v1::OUTCOME_OUTDATED);
  EXPECT_EQ(offerOne(practice(1, 1, "one")).outcome(), v1::OUTCOME_KNOWN);
  const auto practices = *m_clinic.desk().practices(m_person);
  ASSERT_EQ(practices.size(), 1U);
  EXPECT_EQ(practices[0].note(), "three");
}

TEST_F(IntakeRule, oneRevisionNeverHasTwoContents) {
  EXPECT_EQ(offerOne(practice(1, 1, "one")).outcome(), v1::OUTCOME_KEPT);
  expectRefused(practice(1, 1, "another"), "revision");
  EXPECT_EQ(m_clinic.desk().practices(m_person)->at(0).note(), "one");
}

TEST_F(IntakeRule, anotherPersonsRecordIsRefusedAndAudited) {
  expectRefused(envelopeOf(v1::RECORD_KIND_PRACTICE, test::samplePractice(test::idOf(5), m_other)),
                "person_id");
  EXPECT_TRUE(m_clinic.desk().practices(m_other)->empty());
}

TEST_F(IntakeRule, anotherPersonsIdCannotBeTakenOver) {
  EXPECT_EQ(offerOne(practice(1)).outcome(), v1::OUTCOME_KEPT);
  m_caller.person_id = m_other;
  const auto outcome =
      offerOne(envelopeOf(v1::RECORD_KIND_PRACTICE, test::samplePractice(test::idOf(1), m_other, 2), 2));
  EXPECT_EQ(outcome.outcome(), v1::OUTCOME_REFUSED);
  EXPECT_TRUE(m_clinic.desk().practices(m_other)->empty());
  EXPECT_EQ(m_clinic.desk().practices(m_person)->at(0).revision(), 1U);
}

TEST_F(IntakeRule, malformedRecordsAreRefusedByTheirField) {
  auto torn = practice(2);
  torn.mutable_content()->resize(torn.content().size() - 3);
  expectRefused(torn, "sha256");
  torn.set_sha256(sha256(torn.content()));
  expectRefused(torn, "content");
  auto wrong_id = practice(2);
  wrong_id.set_id(test::idOf(3));
  expectRefused(wrong_id, "id");
  auto wrong_revision = practice(2);
  wrong_revision.set_revision(2);
  expectRefused(wrong_revision, "revision");
  auto no_revision = practice(2);
  no_revision.set_revision(0);
  expectRefused(no_revision, "revision");
  auto kind = practice(2);
  kind.set_kind(v1::RECORD_KIND_PROGRAMME);
  expectRefused(kind, "kind");
  v1::Practice bad = test::samplePractice(test::idOf(2), m_person);
  bad.mutable_entries(0)->set_pain_after_0_10(11);
  expectRefused(envelopeOf(v1::RECORD_KIND_PRACTICE, bad), "entries[0].pain_after_0_10");
  bad = test::samplePractice(test::idOf(2), m_person);
  bad.set_end(v1::PRACTICE_END_UNSPECIFIED);
  expectRefused(envelopeOf(v1::RECORD_KIND_PRACTICE, bad), "end");
}

TEST_F(IntakeRule, theAuditTrailNamesTheFieldAndNeverTheValue) {
  v1::Practice bad = test::samplePractice(test::idOf(2), m_person);
  bad.mutable_entries(0)->set_pain_after_0_10(11);
  bad.set_note("secret words about a knee");
  offerOne(envelopeOf(v1::RECORD_KIND_PRACTICE, bad));
  EXPECT_EQ(m_clinic.auditActions().back().find("11 "), std::string::npos);
  EXPECT_EQ(m_clinic.auditActions().back().find("knee"), std::string::npos);
}

TEST_F(IntakeRule, aBadRecordDoesNotHoldUpThoseBesideIt) {
  auto torn = practice(2);
  torn.set_sha256("x");
  const auto reply = offer({practice(1), torn, practice(3)});
  EXPECT_EQ(reply.outcomes(0).outcome(), v1::OUTCOME_KEPT);
  EXPECT_EQ(reply.outcomes(1).outcome(), v1::OUTCOME_REFUSED);
  EXPECT_EQ(reply.outcomes(2).outcome(), v1::OUTCOME_KEPT);
}

TEST_F(IntakeRule, oversizeIsPermanent) {
  auto big = practice(2);
  big.set_content(std::string(kMostContentBytes + 1, 'x'));
  big.set_sha256(sha256(big.content()));
  expectRefused(big, "content");
  v1::OfferRequest many;
  for (int i = 0; i < 101; ++i) *many.add_records() = practice(static_cast<std::uint64_t>(i) + 10);
  EXPECT_TRUE(absl::IsInvalidArgument(m_clinic.hub().phones().offer(m_caller, many).status()));
  EXPECT_TRUE(m_clinic.desk().practices(m_person)->empty());
}

TEST_F(IntakeRule, fieldsOfANewerProgramReachTheDesk) {
  v1::Practice record = test::samplePractice(test::idOf(1), m_person);
  const auto* reflection = v1::Practice::GetReflection();
  reflection->MutableUnknownFields(&record)->AddLengthDelimited(4242, "from a newer phone");
  EXPECT_EQ(offerOne(envelopeOf(v1::RECORD_KIND_PRACTICE, record)).outcome(), v1::OUTCOME_KEPT);
  const auto practices = *m_clinic.desk().practices(m_person);
  const auto& unknown = reflection->GetUnknownFields(practices.at(0));
  ASSERT_EQ(unknown.field_count(), 1);
  EXPECT_EQ(unknown.field(0).length_delimited(), "from a newer phone");
}

TEST_F(IntakeRule, receiptsShowHowFarAProgrammeGot) {
  const auto programme = m_clinic.sign(test::transfemoralLeft());
  auto row = m_clinic.desk().caseload()->at(0);
  EXPECT_EQ(row.programme_number(), 1U);
  EXPECT_FALSE(row.programme_arrived());
  auto record = receipt(20, programme.id(), 1);
  EXPECT_EQ(offerOne(envelopeOf(v1::RECORD_KIND_RECEIPT, record)).outcome(), v1::OUTCOME_KEPT);
  row = m_clinic.desk().caseload()->at(0);
  EXPECT_TRUE(row.programme_arrived());
  EXPECT_FALSE(row.programme_seen());
  record.set_id(test::idOf(21));
  record.set_state(v1::RECEIPT_STATE_SEEN);
  offerOne(envelopeOf(v1::RECORD_KIND_RECEIPT, record));
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).programme_seen());
}

TEST_F(IntakeRule, receiptsForAnothersProgrammeAreRefused) {
  const auto programme = m_clinic.sign(test::transtibialRight());
  expectRefused(envelopeOf(v1::RECORD_KIND_RECEIPT, receipt(20, programme.id(), 1)), "ref_id");
  expectRefused(envelopeOf(v1::RECORD_KIND_RECEIPT, receipt(21, test::idOf(77), 100000)), "ref_number");
}

// After a restore the phone may hold numbers that the hub has forgotten; the next one has to be over them.
TEST_F(IntakeRule, numbersThatAPhoneHasSeenAreNeverGivenAgain) {
  const auto first = m_clinic.sign(test::transfemoralLeft());
  EXPECT_EQ(first.number(), 1U);
  offerOne(envelopeOf(v1::RECORD_KIND_RECEIPT, receipt(20, test::idOf(78), 5)));
  EXPECT_EQ(m_clinic.sign(test::transfemoralLeft(), 1).number(), 6U);
}

// The hub came back from a backup, and number 1 was given again before the phone said that it has numbers up
// to 5.
TEST_F(IntakeRule, whatANumberGivenTwiceKeptFromArrivingIsSignedAgainAboveIt) {
  const auto overtaken = m_clinic.sign(test::transfemoralLeft());
  v1::Receipt told = receipt(20, overtaken.id(), 5);
  told.set_of(v1::RECEIPT_OF_OVERTAKEN_PROGRAMME);
  const auto all = [&] { return *m_clinic.desk().programmes(m_person); };
  EXPECT_EQ(offerOne(envelopeOf(v1::RECORD_KIND_RECEIPT, told)).outcome(), v1::OUTCOME_KEPT);
  ASSERT_EQ(all().size(), 2U);
  const v1::Programme again = all().back();
  EXPECT_EQ(again.number(), 6U);
  EXPECT_EQ(again.reissue_of(), overtaken.id());
  v1::Programme same = again;
  same.clear_reissue_of();
  same.set_id(overtaken.id());
  same.set_number(overtaken.number());
  EXPECT_EQ(toBytes(same), toBytes(overtaken)) << "word for word, with who wrote it and when";
  EXPECT_FALSE(m_clinic.desk().caseload()->at(0).programme_arrived()) << "it is still to arrive";
  std::string audit;
  for (const auto& line : m_clinic.auditActions()) audit += line;
  EXPECT_NE(audit.find(R"("a":"programme.reissue")"), std::string::npos);
  // From the other phone as well, and once more: the question has been answered.
  told.set_id(test::idOf(21));
  EXPECT_EQ(offerOne(envelopeOf(v1::RECORD_KIND_RECEIPT, told)).outcome(), v1::OUTCOME_KEPT);
  EXPECT_EQ(all().size(), 2U);
}

TEST_F(IntakeRule, anotherPersonsProgrammeIsNotSignedAgain) {
  const auto others = m_clinic.sign(test::transtibialRight());
  v1::Receipt told = receipt(20, others.id(), 5);
  told.set_of(v1::RECEIPT_OF_OVERTAKEN_PROGRAMME);
  expectRefused(envelopeOf(v1::RECORD_KIND_RECEIPT, told), "ref_id");
  EXPECT_EQ(m_clinic.desk().programmes(others.person_id())->size(), 1U);
}

TEST_F(IntakeRule, aPhoneSpeaksOnlyForItsPerson) {
  v1::Message message;
  message.set_id(test::idOf(30));
  message.set_person_id(m_person);
  message.set_sender(v1::SENDER_PERSON);
  message.mutable_written_at()->set_seconds(1795600000);
  message.set_text("The liner pinches.");
  EXPECT_EQ(offerOne(envelopeOf(v1::RECORD_KIND_MESSAGE, message)).outcome(), v1::OUTCOME_KEPT);
  EXPECT_EQ(m_clinic.desk().caseload()->at(0).unread_messages(), 1U);
  EXPECT_EQ(m_clinic.desk().messages(m_person, true)->size(), 1U);
  EXPECT_EQ(m_clinic.desk().caseload()->at(0).unread_messages(), 0U);
  message.set_id(test::idOf(31));
  message.set_sender(v1::SENDER_CLINIC);
  expectRefused(envelopeOf(v1::RECORD_KIND_MESSAGE, message), "sender");
}

TEST_F(IntakeRule, aRedFlagStaysOpenUntilTheClinicSpeaks) {
  v1::Practice practice = test::samplePractice(test::idOf(1), m_person);
  practice.set_end(v1::PRACTICE_END_RED_FLAG);
  practice.set_stop_reason(v1::STOP_REASON_CHEST_PAIN);
  practice.add_red_flag_rule_ids("stop-chest-pain");
  EXPECT_EQ(offerOne(envelopeOf(v1::RECORD_KIND_PRACTICE, practice)).outcome(), v1::OUTCOME_KEPT);
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).red_flag_open());
  // The clock going back to last year must not hide or reopen anything.
  m_clinic.clock().setWall(m_clinic.clock().wall() - absl::Hours(24 * 300));
  v1::SendMessageRequest message;
  message.set_id(test::idOf(40));
  message.set_person_id(m_person);
  message.set_text("We will call you.");
  EXPECT_TRUE(m_clinic.hub().files().sendMessage(DeskCaller(), message).ok());
  const auto row = m_clinic.hub().store().read([&](HubTransaction& transaction) {
    EXPECT_FALSE(transaction.caseFacts(m_person).red_flag_open);
    return absl::OkStatus();
  });
  EXPECT_EQ(row, absl::OkStatus());
}

}  // namespace
}  // namespace newel
