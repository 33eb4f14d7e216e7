#include "tests/qml/home/paper_clinic.h"

#include <gtest/gtest.h>

#include "core/library/catalogue.h"
#include "core/library/default_entry.h"
#include "core/records/record_text.h"
#include "core/records/uuid7.h"
#include "sync/common/content_hash.h"

namespace newel::tests {
namespace {

constexpr char kPersonId[] = "019ab000-0000-7000-8000-000000000001";
constexpr char kClinicId[] = "019ab000-0000-7000-8000-000000000002";
constexpr char kTherapistId[] = "019ab000-0000-7000-8000-000000000003";
// 2026-11-25 09:00 UTC.
constexpr std::int64_t kIssued = 1795597200;

}  // namespace

std::string& inventedLanguage() {
  static std::string language = "en";
  return language;
}

v1::Person inventedPerson() {
  v1::Person person;
  const absl::Status read = parseText(R"(
    revision: 1
    limbs { side: SIDE_LEFT level: LIMB_LOSS_LEVEL_TRANSFEMORAL knee: KNEE_KIND_YIELDING
      foot: FOOT_KIND_ENERGY_STORING has_prosthesis: true }
    mobility: MOBILITY_LEVEL_K3 walking_aid: WALKING_AID_ONE_CANE
    home { rails: RAILS_BOTH ramp: ANSWER_YES sturdy_chairs: 2 rolling_chair: ANSWER_YES counter: ANSWER_YES
      floor_space: ANSWER_YES someone_near: ANSWER_YES }
    can_get_up_from_floor: ANSWER_YES senses { low_vision: ANSWER_NO hard_of_hearing: ANSWER_NO }
    language: "en" zone: "Europe/Berlin" height_cm: 172)",
                                      "person", person);
  EXPECT_TRUE(read.ok()) << read;
  person.set_id(kPersonId);
  person.set_language(inventedLanguage());
  return person;
}

v1::Programme inventedProgramme(std::uint32_t number, const std::vector<std::string>& exercises) {
  v1::Programme programme;
  programme.set_id("019ab000-0000-7000-8000-0000000001" + std::to_string(10 + number));
  programme.set_number(number);
  programme.set_person_id(kPersonId);
  programme.set_clinic_id(kClinicId);
  programme.set_signer_id(kTherapistId);
  programme.set_signer_name("Ruth Sample");
  programme.mutable_issued_at()->set_seconds(kIssued + number);
  programme.set_effective_day("2026-11-01");
  programme.set_end_day("2026-11-30");
  programme.set_zone("Europe/Berlin");
  programme.set_changes(number == 1 ? "Your first programme." : "Fewer repetitions.");
  programme.mutable_thresholds()->set_pain_stop_0_10(5);
  programme.mutable_thresholds()->set_pain_rise_0_10(3);
  const v1::Person person = inventedPerson();
  int at = 10;
  for (const std::string& id : exercises) {
    const v1::Exercise* const exercise = Catalogue::builtIn().find(id);
    EXPECT_NE(exercise, nullptr) << id;
    v1::Entry entry = defaultEntry(*exercise, person);
    entry.set_id("019ab000-0000-7000-8000-0000000002" + std::to_string(at++));
    if (entry.dose().has_sets()) {
      v1::SetsDose& dose = *entry.mutable_dose()->mutable_sets();
      dose.set_sets(1);
      dose.set_repetitions(2);
      if (dose.hold_s() > 0) dose.set_hold_s(3);
    }
    if (entry.dose().has_passes()) entry.mutable_dose()->mutable_passes()->set_passes(2);
    for (int day = 1; day <= 7; ++day) {
      entry.mutable_schedule()->mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
    }
    v1::Window& window = *entry.mutable_schedule()->add_windows();
    window.set_from_min(0);
    window.set_to_min(1440);
    *programme.add_entries() = entry;
  }
  return programme;
}

v1::WearPlan inventedWearPlan() {
  v1::WearPlan plan;
  plan.set_id("019ab000-0000-7000-8000-000000000301");
  plan.set_number(1);
  plan.set_person_id(kPersonId);
  plan.set_clinic_id(kClinicId);
  plan.set_signer_id(kTherapistId);
  plan.set_signer_name("Ruth Sample");
  plan.mutable_issued_at()->set_seconds(kIssued);
  plan.set_effective_day("2026-11-01");
  plan.set_zone("Europe/Berlin");
  v1::WearStep& first = *plan.add_steps();
  first.set_days(2);
  first.set_blocks(2);
  first.set_block_min(60);
  first.set_activity("Stand and walk a little indoors.");
  v1::WearStep& last = *plan.add_steps();
  last.set_days(1);
  last.set_all_day(true);
  plan.set_off_min(60);
  plan.set_grace_min(10);
  plan.set_redness_min(10);
  plan.set_redness_action(v1::REDNESS_ACTION_STAY_OFF);
  plan.set_note("Two fresh socks each time.");
  return plan;
}

v1::Measure inventedMeasure(int day, double seconds) {
  v1::Measure measure;
  measure.set_id("019ab000-0000-7000-8000-0000000004" + std::to_string(10 + day));
  measure.set_revision(1);
  measure.set_person_id(kPersonId);
  measure.set_kind("timed-up-and-go");
  measure.set_value(seconds);
  measure.set_unit("s");
  measure.mutable_taken_at()->set_seconds(kIssued - (25 - day) * 86400);
  measure.set_local_day("2026-11-" + std::string(day < 10 ? "0" : "") + std::to_string(day));
  return measure;
}

// Answers from the counter's list; the cursor is how far down it one has read.
class PaperLink : public HubLink {
 public:
  explicit PaperLink(PaperClinic& clinic) : m_clinic(clinic) {}

  absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) override {
    const std::lock_guard lock(m_clinic.m_mutex);
    if (!m_clinic.m_reachable) return absl::UnavailableError("nobody there");
    if (m_clinic.m_revoked) return absl::PermissionDeniedError("this phone has no access any more");
    v1::OfferReply reply;
    reply.set_generation("paper");
    reply.mutable_hub_time()->set_seconds(kIssued);
    for (const v1::Envelope& record : request.records()) {
      m_clinic.m_arrived.push_back(record);
      v1::OutcomeOf& outcome = *reply.add_outcomes();
      outcome.set_id(record.id());
      outcome.set_revision(record.revision());
      outcome.set_sequence(record.sequence());
      outcome.set_outcome(v1::OUTCOME_KEPT);
    }
    return reply;
  }

  absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) override {
    const std::lock_guard lock(m_clinic.m_mutex);
    if (!m_clinic.m_reachable) return absl::UnavailableError("nobody there");
    if (m_clinic.m_revoked) return absl::PermissionDeniedError("this phone has no access any more");
    v1::FetchReply reply;
    reply.set_generation("paper");
    reply.mutable_hub_time()->set_seconds(kIssued);
    for (std::size_t i = request.cursor(); i < m_clinic.m_counter.size(); ++i) {
      *reply.add_records() = m_clinic.m_counter[i];
    }
    reply.set_cursor(m_clinic.m_counter.size());
    return reply;
  }

  absl::StatusOr<v1::MediaPart> fetchMedia(const v1::FetchMediaRequest& request) override {
    const std::lock_guard lock(m_clinic.m_mutex);
    if (!m_clinic.m_reachable) return absl::UnavailableError("nobody there");
    if (m_clinic.m_revoked) return absl::PermissionDeniedError("this phone has no access any more");
    const auto found = m_clinic.m_media.find(request.sha256());
    if (found == m_clinic.m_media.end()) return absl::NotFoundError("sha256: not there");
    v1::MediaPart part;
    part.set_offset(request.offset());
    part.set_size_bytes(found->second.size());
    part.set_content(found->second.substr(request.offset(), request.most_bytes()));
    return part;
  }

  void listen(const v1::ListenRequest&, NudgeSink*) override {}
  void cancel() override {}

 private:
  PaperClinic& m_clinic;
};

namespace {
v1::ClinicCard inventedClinic() {
  v1::ClinicCard card;
  card.set_clinic_id(kClinicId);
  card.set_name("Harbour Limb Clinic");
  card.set_phone("555 0142");
  card.set_hours("Monday to Friday, 8 to 16");
  card.set_emergency_number("112");
  return card;
}
}  // namespace

PaperClinic::PaperClinic() : m_key(makeClinicKey(m_random)) {}

std::string PaperClinic::newId() {
  std::array<std::uint8_t, 10> bytes{};
  m_random.fill(bytes.data(), bytes.size());
  return makeUuid7(kIssued * 1000, bytes);
}

absl::StatusOr<PairedHub> PaperClinic::pair(const PairingTicket& ticket, const v1::PairRequest&) {
  const std::lock_guard lock(m_mutex);
  if (!m_reachable) return absl::UnavailableError("nobody there");
  if (ticket.code != kCode) return absl::NotFoundError("code: not known");
  m_revoked = false;
  PairedHub paired;
  paired.hub.address = addressOf(ticket);
  paired.hub.token = "a token";
  paired.hub.certificate_sha256 = std::string(32, '\x5a');
  v1::PairReply& reply = paired.reply;
  reply.set_device_id(newId());
  reply.set_token("a token");
  *reply.mutable_person() = inventedPerson();
  reply.set_greeting_name("Joan");
  *reply.mutable_clinic() = inventedClinic();
  reply.set_clinic_key(m_key.public_key);
  reply.set_clinic_key_id(m_key.id);
  reply.set_generation("paper");
  return paired;
}

std::unique_ptr<HubLink> PaperClinic::connect(const HubAddress&) {
  return std::make_unique<PaperLink>(*this);
}

void PaperClinic::put(v1::RecordKind kind, const std::string& id, std::uint32_t revision,
                      const std::string& content) {
  const std::lock_guard lock(m_mutex);
  v1::Envelope envelope = makeEnvelope(kind, id, revision, content);
  envelope.set_sequence(m_counter.size() + 1);
  m_counter.push_back(envelope);
}

void PaperClinic::put(const v1::Programme& programme) {
  put(v1::RECORD_KIND_PROGRAMME, programme.id(), 1, toBytes(signProgramme(toBytes(programme), m_key)));
}

void PaperClinic::putMedia(const std::string& content) {
  const std::lock_guard lock(m_mutex);
  m_media[sha256(content)] = content;
}

void PaperClinic::put(const v1::HoldOrder& order) {
  put(v1::RECORD_KIND_HOLD_ORDER, order.id(), 1, toBytes(signHoldOrder(toBytes(order), m_key)));
}

void PaperClinic::put(const v1::Message& message) {
  put(v1::RECORD_KIND_MESSAGE, message.id(), 1, toBytes(message));
}

void PaperClinic::put(const v1::Measure& measure) {
  put(v1::RECORD_KIND_MEASURE, measure.id(), measure.revision(), toBytes(measure));
}

void PaperClinic::putSetting(const std::string& id, std::uint32_t value) {
  v1::ClinicCard card = inventedClinic();
  card.mutable_settings()->set_clinic_id(kClinicId);
  card.mutable_settings()->set_revision(1);
  (*card.mutable_settings()->mutable_values())[id] = value;
  put(v1::RECORD_KIND_CLINIC_CARD, card.clinic_id(), 2, toBytes(card));
}

v1::HoldOrder PaperClinic::holdOrder(const std::string& reason, const std::vector<std::string>& entry_ids) {
  v1::HoldOrder order;
  order.set_id(newId());
  order.set_number(++m_number);
  order.set_person_id(kPersonId);
  order.set_clinic_id(kClinicId);
  order.set_signer_id(kTherapistId);
  order.set_signer_name("Ruth Sample");
  order.mutable_issued_at()->set_seconds(kIssued);
  order.set_reason(reason);
  for (const std::string& id : entry_ids) order.add_entry_ids(id);
  return order;
}

v1::Message PaperClinic::message(const std::string& text, bool urgent) {
  v1::Message message;
  message.set_id(newId());
  message.set_person_id(kPersonId);
  message.set_sender(v1::SENDER_CLINIC);
  message.set_sender_name("Ruth Sample");
  message.mutable_written_at()->set_seconds(kIssued);
  message.set_text(text);
  message.set_urgent(urgent);
  return message;
}

std::vector<v1::Practice> PaperClinic::practices() const {
  const std::lock_guard lock(m_mutex);
  std::vector<v1::Practice> practices;
  for (const v1::Envelope& envelope : m_arrived) {
    v1::Practice practice;
    if (envelope.kind() != v1::RECORD_KIND_PRACTICE) continue;
    EXPECT_TRUE(practice.ParseFromString(envelope.content()));
    practices.push_back(practice);
  }
  return practices;
}

std::vector<v1::Receipt> PaperClinic::receipts() const {
  const std::lock_guard lock(m_mutex);
  std::vector<v1::Receipt> receipts;
  for (const v1::Envelope& envelope : m_arrived) {
    v1::Receipt receipt;
    if (envelope.kind() != v1::RECORD_KIND_RECEIPT) continue;
    EXPECT_TRUE(receipt.ParseFromString(envelope.content()));
    receipts.push_back(receipt);
  }
  return receipts;
}

std::vector<v1::WearBlock> PaperClinic::wearBlocks() const {
  const std::lock_guard lock(m_mutex);
  std::vector<v1::WearBlock> blocks;
  for (const v1::Envelope& envelope : m_arrived) {
    v1::WearBlock block;
    if (envelope.kind() != v1::RECORD_KIND_WEAR_BLOCK) continue;
    EXPECT_TRUE(block.ParseFromString(envelope.content()));
    blocks.push_back(block);
  }
  return blocks;
}

std::vector<v1::Message> PaperClinic::messages() const {
  const std::lock_guard lock(m_mutex);
  std::vector<v1::Message> messages;
  for (const v1::Envelope& envelope : m_arrived) {
    v1::Message message;
    if (envelope.kind() != v1::RECORD_KIND_MESSAGE) continue;
    EXPECT_TRUE(message.ParseFromString(envelope.content()));
    messages.push_back(message);
  }
  return messages;
}

void PaperClinic::setReachable(bool reachable) {
  const std::lock_guard lock(m_mutex);
  m_reachable = reachable;
}

void PaperClinic::revoke() {
  const std::lock_guard lock(m_mutex);
  m_revoked = true;
}

}  // namespace newel::tests
