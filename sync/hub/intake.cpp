#include "sync/hub/intake.h"

#include <utility>

#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/limits.h"
#include "sync/hub/programme_numbers.h"

namespace newel {
namespace {

// A phone may know of a number that a restored hub does not; one far beyond is a mistake or worse.
constexpr std::uint64_t kFarthestNumber = 1000;

absl::Status refused(const std::string& reason) { return absl::InvalidArgumentError(reason); }

v1::OutcomeOf outcomeOf(const v1::Envelope& envelope, v1::Outcome what, const std::string& reason) {
  v1::OutcomeOf outcome;
  outcome.set_id(envelope.id());
  outcome.set_revision(envelope.revision());
  outcome.set_sequence(envelope.sequence());
  outcome.set_outcome(what);
  outcome.set_reason(reason);
  return outcome;
}

// What becomes of a record with revisions, beside what is kept of its id already. KEPT: it is new.
absl::StatusOr<v1::Outcome> outcomeBeside(const PracticeKept& kept, const PhoneCaller& caller,
                                          const v1::Envelope& envelope) {
  if (kept.person_id.empty() || isBroken(Broken::DropDedupe)) return v1::OUTCOME_KEPT;
  if (kept.person_id != caller.person_id) return refused("id: is taken");
  if (!kept.sha256.empty() && kept.sha256 != envelope.sha256()) {
    return refused("revision: was kept with other content");
  }
  if (!kept.sha256.empty()) return v1::OUTCOME_KNOWN;
  return kept.revision > envelope.revision() ? v1::OUTCOME_OUTDATED : v1::OUTCOME_KEPT;
}

}  // namespace

absl::StatusOr<v1::OfferReply> Intake::offer(const PhoneCaller& caller, const v1::OfferRequest& request) {
  std::size_t bytes = 0;
  for (const auto& envelope : request.records()) bytes += envelope.content().size();
  // A single record over its own limit is refused by itself below; the phone's rule of "one at least" holds.
  if (request.records_size() > kMostRecordsACall || (bytes > kMostOfferBytes && request.records_size() > 1)) {
    m_hub->audit->refusal(
        *m_hub->store,
        {.action = "offer.refused", .who = caller.device_id, .person = caller.person_id, .field = "records"});
    return refused("records: at most 100 and 3 MiB a call");
  }
  v1::OfferReply reply;
  bool any = false;
  for (auto& outcome : outcomesOf(caller, lookAtAll(caller, request, *m_hub->rules))) {
    any = any || outcome.outcome() == v1::OUTCOME_KEPT;
    *reply.add_outcomes() = std::move(outcome);
  }
  reply.set_generation(m_hub->clinic->generation);
  *reply.mutable_hub_time() = toTimestamp(m_hub->clock->wall());
  if (any) m_hub->board->nudgeDesks(caller.person_id);
  return reply;
}

std::vector<v1::OutcomeOf> Intake::outcomesOf(const PhoneCaller& caller,
                                              const std::vector<LookedAt>& records) {
  std::vector<v1::OutcomeOf> outcomes;
  const absl::Status kept = takeAll(caller, records, outcomes);
  if (kept.ok()) return outcomes;
  outcomes.clear();
  if (isBroken(Broken::AcknowledgeBeforeCommit)) {
    for (const auto& looked : records) outcomes.push_back(outcomeOf(*looked.envelope, v1::OUTCOME_KEPT, ""));
    return outcomes;
  }
  // All together failed, perhaps through one of them: one at a time, so that none holds up the others.
  for (const auto& looked : records) {
    std::vector<v1::OutcomeOf> one;
    outcomes.push_back(takeAll(caller, {looked}, one).ok()
                           ? std::move(one.front())
                           : outcomeOf(*looked.envelope, v1::OUTCOME_LATER, "store"));
  }
  return outcomes;
}

absl::Status Intake::takeAll(const PhoneCaller& caller, const std::vector<LookedAt>& records,
                             std::vector<v1::OutcomeOf>& outcomes) {
  return m_hub->store->write([&](HubTransaction& transaction) {
    if (caller.contact.has_value()) {
      transaction.noteContact(caller.device_id, caller.contact->at, caller.contact->says);
    }
    outcomes.clear();
    takeEach(transaction, caller, records, outcomes);
    return absl::OkStatus();
  });
}

void Intake::takeEach(HubTransaction& transaction, const PhoneCaller& caller,
                      const std::vector<LookedAt>& records, std::vector<v1::OutcomeOf>& outcomes) {
  PracticeBatch batch(transaction, records);
  for (std::size_t i = 0; i < records.size(); ++i) {
    outcomes.push_back(
        judged(transaction, caller, records[i], takeOne(transaction, caller, records[i], i, batch)));
  }
  batch.finish();
}

absl::StatusOr<v1::Outcome> Intake::takeOne(HubTransaction& transaction, const PhoneCaller& caller,
                                            const LookedAt& looked, std::size_t place, PracticeBatch& batch) {
  if (!looked.good.ok()) return looked.good;
  if (looked.receipt.has_value()) return takeReceipt(transaction, *looked.receipt);
  if (looked.message.has_value()) return takeMessage(transaction, looked);
  if (looked.wear_block) return takeWearBlock(transaction, caller, *looked.envelope);
  return takePractice(transaction, caller, looked, place, batch);
}

v1::OutcomeOf Intake::judged(HubTransaction& transaction, const PhoneCaller& caller, const LookedAt& looked,
                             const absl::StatusOr<v1::Outcome>& outcome) {
  if (outcome.ok()) return outcomeOf(*looked.envelope, *outcome, "");
  m_hub->audit->add(transaction, {.action = "offer.refused",
                                  .who = caller.device_id,
                                  .person = caller.person_id,
                                  .field = fieldOf(outcome.status())});
  return outcomeOf(*looked.envelope, v1::OUTCOME_REFUSED, std::string(outcome.status().message()));
}

absl::StatusOr<v1::Outcome> Intake::takePractice(HubTransaction& transaction, const PhoneCaller& caller,
                                                 const LookedAt& looked, std::size_t place,
                                                 PracticeBatch& batch) {
  const v1::Envelope& envelope = *looked.envelope;
  auto known = outcomeBeside(batch.keptOf(place), caller, envelope);
  if (!known.ok() || *known != v1::OUTCOME_KEPT) return known;
  PracticeRow row;
  row.person_id = caller.person_id;
  row.device_id = caller.device_id;
  row.envelope = envelope;
  row.envelope.set_sequence(transaction.takeSequence());
  *row.envelope.mutable_received_at() = toTimestamp(m_hub->clock->wall());
  row.red_flag = looked.red_flag;
  batch.keep(std::move(row));
  return v1::OUTCOME_KEPT;
}

absl::StatusOr<v1::Outcome> Intake::takeWearBlock(HubTransaction& transaction, const PhoneCaller& caller,
                                                  const v1::Envelope& envelope) {
  auto known =
      outcomeBeside(transaction.recordKept(v1::RECORD_KIND_WEAR_BLOCK, {envelope.id(), envelope.revision()}),
                    caller, envelope);
  if (!known.ok() || *known != v1::OUTCOME_KEPT) return known;
  // Into the feed too: a new phone has to know what the skin said, or it would allow what was stopped.
  v1::Envelope kept = envelope;
  kept.set_sequence(commitToFeed(transaction, *m_hub, caller.person_id, envelope, /*replace=*/true));
  *kept.mutable_received_at() = toTimestamp(m_hub->clock->wall());
  transaction.addRecord(caller.person_id, kept);
  return v1::OUTCOME_KEPT;
}

absl::Status Intake::checkReference(HubTransaction& transaction, const ReceiptRow& receipt) {
  // What is not here any more, after a restore, may be said to have arrived; what is another's may not.
  std::string owner;
  std::uint64_t highest = 0;
  if (receipt.of == v1::RECEIPT_OF_PROGRAMME || receipt.of == v1::RECEIPT_OF_OVERTAKEN_PROGRAMME) {
    if (const auto row = transaction.programmeById(receipt.ref_id)) owner = row->person_id;
    if (const auto last = transaction.latestProgramme(receipt.person_id)) highest = last->number;
  } else if (receipt.of == v1::RECEIPT_OF_HOLD_ORDER) {
    if (const auto row = transaction.holdOrderById(receipt.ref_id)) owner = row->person_id;
    const auto orders = transaction.holdOrders(receipt.person_id);
    if (!orders.empty()) highest = orders.back().number;
  } else if (const auto row = transaction.message(receipt.ref_id)) {
    owner = row->person_id;
  }
  if (!owner.empty() && owner != receipt.person_id) return refused("ref_id: another person's");
  if (receipt.ref_number > highest + kFarthestNumber) return refused("ref_number: far beyond any given");
  return absl::OkStatus();
}

absl::StatusOr<v1::Outcome> Intake::takeReceipt(HubTransaction& transaction, const ReceiptRow& row) {
  if (const auto known = transaction.receipt(row.id)) {
    if (known->sha256 == row.sha256) return v1::OUTCOME_KNOWN;
    return refused("id: was kept with other content");
  }
  const absl::Status good = checkReference(transaction, row);
  if (!good.ok()) return good;
  // Asks for something, and is answered by the next number; said again, it changes nothing.
  if (row.of == v1::RECEIPT_OF_OVERTAKEN_PROGRAMME) {
    const absl::Status answered = reissueOvertaken(transaction, *m_hub, row);
    if (!answered.ok()) return answered;
    return v1::OUTCOME_KEPT;
  }
  transaction.addReceipt(row, transaction.takeSequence(), m_hub->clock->wall());
  return v1::OUTCOME_KEPT;
}

absl::StatusOr<v1::Outcome> Intake::takeMessage(HubTransaction& transaction, const LookedAt& looked) {
  const MessageRow& row = *looked.message;
  if (const auto known = transaction.message(row.id)) {
    if (known->sha256 == row.sha256) return v1::OUTCOME_KNOWN;
    return refused("id: was kept with other content");
  }
  // Into the feed too: the person's other phone shows it, and a new phone has it again.
  const std::uint64_t sequence =
      commitToFeed(transaction, *m_hub, row.person_id, *looked.envelope, /*replace=*/false);
  transaction.addMessage(row, sequence, m_hub->clock->wall());
  return v1::OUTCOME_KEPT;
}

}  // namespace newel
