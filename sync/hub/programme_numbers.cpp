#include "sync/hub/programme_numbers.h"

#include <algorithm>
#include <string>

#include "core/records/record_text.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/signing.h"

namespace newel {

SignedRow keepUnderNextNumber(HubTransaction& transaction, const HubContext& hub, v1::Programme& programme,
                              std::uint64_t told) {
  const std::string& person_id = programme.person_id();
  const auto last = transaction.latestProgramme(person_id);
  const std::uint64_t latest = last.has_value() ? last->number : 0;
  const std::uint64_t seen = isBroken(Broken::NumbersIgnorePhones)
                                 ? 0
                                 : transaction.highestReceiptNumber(person_id, v1::RECEIPT_OF_PROGRAMME);
  programme.set_number(static_cast<std::uint32_t>(std::max({latest, seen, told}) + 1));
  const v1::SignedProgramme signed_programme = signProgramme(toBytes(programme), hub.clinic->key);
  SignedRow row = {person_id,
                   programme.number(),
                   programme.id(),
                   signed_programme.content(),
                   signed_programme.signature(),
                   signed_programme.key_id(),
                   "",
                   programme.end_day()};
  const std::uint64_t sequence =
      commitToFeed(transaction, hub, person_id,
                   makeEnvelope(v1::RECORD_KIND_PROGRAMME, programme.id(), 1, toBytes(signed_programme)),
                   /*replace=*/false);
  transaction.addProgramme(row, sequence);
  return row;
}

absl::Status reissueOvertaken(HubTransaction& transaction, const HubContext& hub, const ReceiptRow& told) {
  if (isBroken(Broken::LeaveTheClash)) return absl::OkStatus();
  const auto last = transaction.latestProgramme(told.person_id);
  if (!last.has_value() || last->id != told.ref_id) return absl::OkStatus();
  v1::Programme programme;
  if (!programme.ParseFromString(last->content)) return absl::DataLossError("programme: not to be read");
  programme.set_reissue_of(programme.id());
  programme.set_id(newRecordId(*hub.clock, *hub.random));
  keepUnderNextNumber(transaction, hub, programme, told.ref_number);
  hub.audit->add(transaction, {.action = "programme.reissue",
                               .who = programme.signer_id(),
                               .person = told.person_id,
                               .record = programme.id()});
  return absl::OkStatus();
}

}  // namespace newel
