#include "sync/hub/person_remarks.h"

#include <limits>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"

namespace newel {
namespace {

// More than a lifetime of practices: a list is one reply.
constexpr std::uint32_t kMostRemarks = 20000;

absl::Status nobody() { return absl::NotFoundError("person_id: nobody has it"); }

// Whose the kept one is; it changes hands with no revision.
bool isOf(HubTransaction& transaction, const v1::Remark& remark, const std::string& therapist_id) {
  for (const auto& envelope :
       transaction.recordsAfter(remark.person_id(), v1::RECORD_KIND_REMARK, 0, kMostRemarks)) {
    v1::Remark kept;
    if (envelope.id() == remark.id() && kept.ParseFromString(envelope.content()))
      return kept.written_by() == therapist_id;
  }
  return true;
}

}  // namespace

absl::StatusOr<v1::PutRemarkReply> PersonRemarks::put(const DeskCaller& caller,
                                                      const v1::PutRemarkRequest& request) {
  if (request.base_revision() == std::numeric_limits<std::uint32_t>::max())
    return absl::InvalidArgumentError("base_revision: is out of all bounds");
  v1::PutRemarkReply reply;
  v1::Remark& remark = *reply.mutable_remark();
  remark = request.remark();
  remark.set_revision(request.base_revision() + 1);
  remark.set_written_by(caller.therapist.id());
  remark.set_writer_name(caller.therapist.display_name());
  if (absl::Status good = check(remark); !good.ok()) return good;
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) {
    return keep(transaction, caller, request.base_revision(), remark);
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks(remark.person_id());
  return reply;
}

absl::Status PersonRemarks::keep(HubTransaction& transaction, const DeskCaller& caller,
                                 std::uint32_t base_revision, const v1::Remark& remark) {
  if (!transaction.person(remark.person_id()).has_value()) return nobody();
  v1::Envelope envelope =
      makeEnvelope(v1::RECORD_KIND_REMARK, remark.id(), remark.revision(), toBytes(remark));
  const PracticeKept kept = transaction.recordKept(v1::RECORD_KIND_REMARK, {remark.id(), remark.revision()});
  if (!kept.person_id.empty() && kept.person_id != remark.person_id())
    return absl::AlreadyExistsError("remark.id: is taken");
  if (!kept.person_id.empty() && !isOf(transaction, remark, caller.therapist.id()))
    return absl::PermissionDeniedError("remark: another therapist wrote it");
  if (!kept.sha256.empty() && kept.sha256 == envelope.sha256()) return absl::OkStatus();
  if (kept.revision != base_revision) {
    return absl::AbortedError("base_revision: revision " + std::to_string(kept.revision) + " is the latest");
  }
  envelope.set_sequence(transaction.takeSequence());
  *envelope.mutable_received_at() = toTimestamp(m_hub->clock->wall());
  transaction.addRecord(remark.person_id(), envelope);
  m_hub->audit->add(transaction, {.action = remark.withdrawn() ? "remark.withdraw" : "remark.put",
                                  .who = caller.therapist.id(),
                                  .person = remark.person_id(),
                                  .record = remark.id()});
  return absl::OkStatus();
}

absl::StatusOr<v1::ListRemarksReply> PersonRemarks::list(const std::string& person_id) {
  v1::ListRemarksReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    reply.clear_remarks();
    for (const auto& envelope :
         transaction.recordsAfter(person_id, v1::RECORD_KIND_REMARK, 0, kMostRemarks)) {
      if (!reply.add_remarks()->ParseFromString(envelope.content()))
        return absl::DataLossError("remark: not to be read");
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

}  // namespace newel
