#include "sync/hub/intake.h"

#include <algorithm>
#include <utility>

#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/hub/programme_numbers.h"

namespace newel {
namespace {

// A phone may know of a number that a restored hub does not; one far beyond is a mistake or worse.
constexpr std::uint64_t kFarthestNumber = 1000;

absl::Status refused(const std::string& reason) { return absl::InvalidArgumentError(reason); }

template <typename Record>
absl::StatusOr<Record> readFor(const PhoneCaller& caller, const v1::Envelope& envelope) {
  Record record;
  if (!record.ParseFromString(envelope.content())) return refused("content: not to be read");
  const absl::Status good = check(record);
  if (!good.ok()) return good;
  if (record.id() != envelope.id()) return refused("id: the record has another one");
  if (record.person_id() != caller.person_id) return refused("person_id: another person");
  return record;
}

absl::Status checkEnvelope(const v1::Envelope& envelope) {
  if (envelope.content().size() > kMostContentBytes) return refused("content: over 1 MiB");
  if (envelope.revision() == 0) return refused("revision: is missing");
  if (sha256(envelope.content()) != envelope.sha256()) return refused("sha256: does not fit the content");
  return absl::OkStatus();
}

// A rule that only says "not today" is recorded with the practice too, and is no emergency. One that this hub
// does not know comes from a newer phone and is taken for the worst.
bool hasRedFlag(const v1::Practice& practice, const RuleBook& rules) {
  if (practice.red_flag_rule_ids().empty()) return practice.end() == v1::PRACTICE_END_RED_FLAG;
  return std::any_of(practice.red_flag_rule_ids().begin(), practice.red_flag_rule_ids().end(),
                     [&](const std::string& id) {
                       const v1::Rule* rule = rules.rule(id);
                       return rule == nullptr || rule->effect() == v1::EFFECT_RED_FLAG;
                     });
}

v1::OutcomeOf outcomeOf(const v1::Envelope& envelope, v1::Outcome what, const std::string& reason) {
  v1::OutcomeOf outcome;
  outcome.set_id(envelope.id());
  outcome.set_revision(envelope.revision());
  outcome.set_sequence(envelope.sequence());
  outcome.set_outcome(what);
  outcome.set_reason(reason);
  return outcome;
}

}  // namespace

absl::StatusOr<v1::OfferReply> Intake::offer(const PhoneCaller& caller, const v1::OfferRequest& request) {
  std::size_t bytes = 0;
  std::vector<const v1::Envelope*> records;
  for (const auto& envelope : request.records()) {
    bytes += envelope.content().size();
    records.push_back(&envelope);
  }
  // A single record over its own limit is refused by itself below; the phone's rule of "one at least" holds.
  if (request.records_size() > kMostRecordsACall || (bytes > kMostOfferBytes && request.records_size() > 1)) {
    m_hub->audit->refusal(
        *m_hub->store,
        {.action = "offer.refused", .who = caller.device_id, .person = caller.person_id, .field = "records"});
    return refused("records: at most 100 and 3 MiB a call");
  }
  std::vector<v1::OutcomeOf> outcomes;
  absl::Status kept = takeAll(caller, records, outcomes);
  if (!kept.ok() && isBroken(Broken::AcknowledgeBeforeCommit)) {
    outcomes.clear();
    for (const v1::Envelope* envelope : records)
      outcomes.push_back(outcomeOf(*envelope, v1::OUTCOME_KEPT, ""));
    kept = absl::OkStatus();
  }
  if (!kept.ok()) {
    // All together failed, perhaps through one of them: one at a time, so that none holds up the others.
    outcomes.clear();
    for (const v1::Envelope* envelope : records) {
      std::vector<v1::OutcomeOf> one;
      kept = takeAll(caller, {envelope}, one);
      outcomes.push_back(kept.ok() ? std::move(one.front())
                                   : outcomeOf(*envelope, v1::OUTCOME_LATER, "store"));
    }
  }
  v1::OfferReply reply;
  bool any = false;
  for (auto& outcome : outcomes) {
    any = any || outcome.outcome() == v1::OUTCOME_KEPT;
    *reply.add_outcomes() = std::move(outcome);
  }
  reply.set_generation(m_hub->clinic->generation);
  *reply.mutable_hub_time() = toTimestamp(m_hub->clock->wall());
  if (any) m_hub->board->nudgeDesks(caller.person_id);
  return reply;
}

absl::Status Intake::takeAll(const PhoneCaller& caller, const std::vector<const v1::Envelope*>& records,
                             std::vector<v1::OutcomeOf>& outcomes) {
  return m_hub->store->write([&](HubTransaction& transaction) {
    outcomes.clear();
    for (const v1::Envelope* envelope : records) outcomes.push_back(take(transaction, caller, *envelope));
    return absl::OkStatus();
  });
}

absl::StatusOr<v1::Outcome> Intake::takeByKind(HubTransaction& transaction, const PhoneCaller& caller,
                                               const v1::Envelope& envelope) {
  const absl::Status good = checkEnvelope(envelope);
  if (!good.ok()) return good;
  switch (envelope.kind()) {
    case v1::RECORD_KIND_PRACTICE:
      return takePractice(transaction, caller, envelope);
    case v1::RECORD_KIND_RECEIPT:
      return takeReceipt(transaction, caller, envelope);
    case v1::RECORD_KIND_MESSAGE:
      return takeMessage(transaction, caller, envelope);
    default:
      return refused("kind: not from a phone");
  }
}

v1::OutcomeOf Intake::take(HubTransaction& transaction, const PhoneCaller& caller,
                           const v1::Envelope& envelope) {
  const absl::StatusOr<v1::Outcome> outcome = takeByKind(transaction, caller, envelope);
  if (outcome.ok()) return outcomeOf(envelope, *outcome, "");
  m_hub->audit->add(transaction, {.action = "offer.refused",
                                  .who = caller.device_id,
                                  .person = caller.person_id,
                                  .field = fieldOf(outcome.status())});
  return outcomeOf(envelope, v1::OUTCOME_REFUSED, std::string(outcome.status().message()));
}

absl::StatusOr<v1::Outcome> Intake::takePractice(HubTransaction& transaction, const PhoneCaller& caller,
                                                 const v1::Envelope& envelope) {
  const auto practice = readFor<v1::Practice>(caller, envelope);
  if (!practice.ok()) return practice.status();
  if (practice->revision() != envelope.revision()) return refused("revision: the record has another one");
  const auto head = transaction.practiceHead(envelope.id());
  if (head.has_value() && !isBroken(Broken::DropDedupe)) {
    if (head->person_id != caller.person_id) return refused("id: is taken");
    const std::string hash = transaction.practiceHash(envelope.id(), envelope.revision());
    if (!hash.empty() && hash != envelope.sha256()) return refused("revision: was kept with other content");
    if (!hash.empty()) return v1::OUTCOME_KNOWN;
    if (head->revision > envelope.revision()) return v1::OUTCOME_OUTDATED;
  }
  PracticeRow row;
  row.person_id = caller.person_id;
  row.device_id = caller.device_id;
  row.envelope = envelope;
  row.envelope.set_sequence(transaction.takeSequence());
  *row.envelope.mutable_received_at() = toTimestamp(m_hub->clock->wall());
  row.red_flag = hasRedFlag(*practice, *m_hub->rules);
  transaction.addPractice(row);
  return v1::OUTCOME_KEPT;
}

absl::Status Intake::checkReference(HubTransaction& transaction, const v1::Receipt& receipt) {
  // What is not here any more, after a restore, may be said to have arrived; what is another's may not.
  std::string owner;
  std::uint64_t highest = 0;
  if (receipt.of() == v1::RECEIPT_OF_PROGRAMME || receipt.of() == v1::RECEIPT_OF_OVERTAKEN_PROGRAMME) {
    if (const auto row = transaction.programmeById(receipt.ref_id())) owner = row->person_id;
    if (const auto last = transaction.latestProgramme(receipt.person_id())) highest = last->number;
  } else if (receipt.of() == v1::RECEIPT_OF_HOLD_ORDER) {
    if (const auto row = transaction.holdOrderById(receipt.ref_id())) owner = row->person_id;
    const auto orders = transaction.holdOrders(receipt.person_id());
    if (!orders.empty()) highest = orders.back().number;
  } else if (const auto row = transaction.message(receipt.ref_id())) {
    owner = row->person_id;
  }
  if (!owner.empty() && owner != receipt.person_id()) return refused("ref_id: another person's");
  if (receipt.ref_number() > highest + kFarthestNumber) return refused("ref_number: far beyond any given");
  return absl::OkStatus();
}

absl::StatusOr<v1::Outcome> Intake::takeReceipt(HubTransaction& transaction, const PhoneCaller& caller,
                                                const v1::Envelope& envelope) {
  const auto receipt = readFor<v1::Receipt>(caller, envelope);
  if (!receipt.ok()) return receipt.status();
  if (const auto known = transaction.receipt(envelope.id())) {
    if (known->sha256 == envelope.sha256()) return v1::OUTCOME_KNOWN;
    return refused("id: was kept with other content");
  }
  const absl::Status good = checkReference(transaction, *receipt);
  if (!good.ok()) return good;
  // Asks for something, and is answered by the next number; said again, it changes nothing.
  if (receipt->of() == v1::RECEIPT_OF_OVERTAKEN_PROGRAMME) {
    const absl::Status answered = reissueOvertaken(transaction, *m_hub, *receipt);
    if (!answered.ok()) return answered;
    return v1::OUTCOME_KEPT;
  }
  ReceiptRow row;
  row.id = receipt->id();
  row.person_id = receipt->person_id();
  row.of = receipt->of();
  row.ref_id = receipt->ref_id();
  row.ref_number = receipt->ref_number();
  row.state = receipt->state();
  row.content = envelope.content();
  row.sha256 = envelope.sha256();
  transaction.addReceipt(row, transaction.takeSequence(), m_hub->clock->wall());
  return v1::OUTCOME_KEPT;
}

absl::StatusOr<v1::Outcome> Intake::takeMessage(HubTransaction& transaction, const PhoneCaller& caller,
                                                const v1::Envelope& envelope) {
  const auto message = readFor<v1::Message>(caller, envelope);
  if (!message.ok()) return message.status();
  if (message->sender() != v1::SENDER_PERSON) return refused("sender: a phone writes for its person only");
  if (message->urgent()) return refused("urgent: is the clinic's word");
  if (const auto known = transaction.message(envelope.id())) {
    if (known->sha256 == envelope.sha256()) return v1::OUTCOME_KNOWN;
    return refused("id: was kept with other content");
  }
  MessageRow row{message->id(), message->person_id(), true, envelope.content(), envelope.sha256()};
  // Into the feed too: the person's other phone shows it, and a new phone has it again.
  v1::Envelope copy = envelope;
  const std::uint64_t sequence = commitToFeed(transaction, *m_hub, caller.person_id, std::move(copy), false);
  transaction.addMessage(row, sequence, m_hub->clock->wall());
  return v1::OUTCOME_KEPT;
}

}  // namespace newel
