#include "sync/hub/person_measures.h"

#include <limits>
#include <utility>

#include "core/progress/measure_table.h"
#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"

namespace newel {
namespace {

constexpr std::uint32_t kMostInAPage = 500;
// Nobody is measured more often than this in a lifetime; a list is one reply.
constexpr std::uint32_t kMostMeasures = 20000;

absl::Status nobody() { return absl::NotFoundError("person_id: nobody has it"); }

}  // namespace

absl::StatusOr<v1::PutMeasureReply> PersonMeasures::put(const DeskCaller& caller,
                                                        const v1::PutMeasureRequest& request) {
  if (request.base_revision() == std::numeric_limits<std::uint32_t>::max())
    return absl::InvalidArgumentError("base_revision: is out of all bounds");
  v1::PutMeasureReply reply;
  v1::Measure& measure = *reply.mutable_measure();
  measure = request.measure();
  measure.set_revision(request.base_revision() + 1);
  measure.set_taken_by(caller.therapist.id());
  absl::Status good = check(measure);
  if (good.ok()) good = checkMeasure(measure, MeasureTable::builtIn());
  if (!good.ok()) return good;
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) {
    return keep(transaction, caller, request.base_revision(), measure);
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgePerson(measure.person_id());
  m_hub->board->nudgeDesks(measure.person_id());
  return reply;
}

absl::Status PersonMeasures::keep(HubTransaction& transaction, const DeskCaller& caller,
                                  std::uint32_t base_revision, v1::Measure& measure) {
  if (!transaction.person(measure.person_id()).has_value()) return nobody();
  v1::Envelope envelope =
      makeEnvelope(v1::RECORD_KIND_MEASURE, measure.id(), measure.revision(), toBytes(measure));
  const PracticeKept kept =
      transaction.recordKept(v1::RECORD_KIND_MEASURE, {measure.id(), measure.revision()});
  if (!kept.person_id.empty() && kept.person_id != measure.person_id())
    return absl::AlreadyExistsError("measure.id: is taken");
  if (!kept.sha256.empty() && kept.sha256 == envelope.sha256()) return absl::OkStatus();
  if (kept.revision != base_revision) {
    return absl::AbortedError("base_revision: revision " + std::to_string(kept.revision) + " is the latest");
  }
  const std::uint64_t sequence =
      commitToFeed(transaction, *m_hub, measure.person_id(), envelope, /*replace=*/true);
  envelope.set_sequence(sequence);
  *envelope.mutable_received_at() = toTimestamp(m_hub->clock->wall());
  transaction.addRecord(measure.person_id(), envelope);
  m_hub->audit->add(transaction, {.action = measure.withdrawn() ? "measure.withdraw" : "measure.put",
                                  .who = caller.therapist.id(),
                                  .person = measure.person_id(),
                                  .record = measure.id()});
  return absl::OkStatus();
}

absl::StatusOr<v1::ListMeasuresReply> PersonMeasures::list(const std::string& person_id) {
  v1::ListMeasuresReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    reply.clear_measures();
    for (const auto& envelope :
         transaction.recordsAfter(person_id, v1::RECORD_KIND_MEASURE, 0, kMostMeasures)) {
      if (!reply.add_measures()->ParseFromString(envelope.content()))
        return absl::DataLossError("measure: not to be read");
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::ListWearBlocksReply> PersonMeasures::wearBlocks(const v1::ListWearBlocksRequest& request) {
  if (request.limit() < 1 || request.limit() > kMostInAPage)
    return absl::InvalidArgumentError("limit: 1 to 500");
  v1::ListWearBlocksReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(request.person_id()).has_value()) return nobody();
    reply.Clear();
    std::size_t bytes = 0;
    for (auto& envelope : transaction.recordsAfter(request.person_id(), v1::RECORD_KIND_WEAR_BLOCK,
                                                   request.after_sequence(), request.limit() + 1)) {
      bytes += envelope.content().size();
      const bool full = reply.blocks_size() > 0 && bytes > kMostOfferBytes;
      if (full || static_cast<std::uint32_t>(reply.blocks_size()) == request.limit()) {
        reply.set_more(true);
        break;
      }
      *reply.add_blocks() = std::move(envelope);
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

}  // namespace newel
