#include "sync/hub/prescriptions.h"

#include <algorithm>
#include <utility>

#include "core/library/settings.h"
#include "core/progress/measure_table.h"
#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/review/review.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/signing.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/media_shelf.h"
#include "sync/hub/programme_numbers.h"
#include "sync/hub/wear_plans.h"

namespace newel {
namespace {

template <typename Signed>
Signed signedFrom(const SignedRow& row) {
  Signed record;
  record.set_content(row.content);
  record.set_signature(row.signature);
  record.set_key_id(row.key_id);
  return record;
}

bool stands(const v1::Finding& finding) {
  return finding.effect() == v1::EFFECT_BLOCK ||
         (finding.effect() == v1::EFFECT_ASK && finding.overridden_reason().empty());
}

// Why a draft cannot be signed, in the rules' words.
std::string standingWords(const Review& review) {
  std::string words;
  const auto add = [&](const std::vector<v1::Finding>& findings) {
    for (const auto& finding : findings) {
      if (!stands(finding)) continue;
      const char* kind = finding.effect() == v1::EFFECT_BLOCK ? "block" : "ask, no reason written";
      words += (words.empty() ? "" : "; ") + finding.rule_id() + " (" + kind + "): " + finding.therapist();
    }
  };
  for (const auto& entry : review.entries) {
    add(entry.findings);
    if (!entry.problem.empty()) words += (words.empty() ? "" : "; ") + entry.problem;
  }
  add(review.programme_findings);
  return words;
}

// A draft as it will be kept, without what only the hub may say.
v1::Programme stripped(v1::Programme draft) {
  draft.clear_number();
  draft.clear_clinic_id();
  draft.clear_signer_id();
  draft.clear_signer_name();
  draft.clear_issued_at();
  draft.clear_own_exercises();
  draft.clear_reissue_of();
  if (draft.has_wear_plan()) *draft.mutable_wear_plan() = strippedPlan(draft.wear_plan());
  return draft;
}

absl::Status checkCards(const v1::Programme& programme, const Catalogue& catalogue) {
  for (int i = 0; i < programme.cards_size(); ++i) {
    if (catalogue.card(programme.cards(i).card_id()) == nullptr)
      return absl::InvalidArgumentError("cards[" + std::to_string(i) + "].card_id: there is no such card");
  }
  return absl::OkStatus();
}

absl::Status checkAsked(const v1::Programme& programme) {
  for (int i = 0; i < programme.measures_size(); ++i) {
    if (MeasureTable::builtIn().find(programme.measures(i).kind()) == nullptr)
      return absl::InvalidArgumentError("measures[" + std::to_string(i) + "].kind: there is no such measure");
  }
  return absl::OkStatus();
}

absl::Status nobody() { return absl::NotFoundError("person_id: nobody has it"); }

// The order that is there under this id, when it is the same one sent again.
absl::Status sameHold(SignedRow known, v1::HoldOrder& order, SignedRow& row) {
  v1::HoldOrder before;
  if (!before.ParseFromString(known.content)) return absl::DataLossError("hold order: not to be read");
  v1::HoldOrder sent = order;
  sent.set_number(before.number());
  sent.set_signer_id(before.signer_id());
  sent.set_signer_name(before.signer_name());
  *sent.mutable_issued_at() = before.issued_at();
  if (toBytes(sent) != toBytes(before)) return absl::AlreadyExistsError("id: another hold order has it");
  order = std::move(before);
  row = std::move(known);
  return absl::OkStatus();
}

}  // namespace

absl::StatusOr<Prescriptions::Basis> Prescriptions::basisFor(const v1::Programme& draft) {
  const std::string& person_id = draft.person_id();
  Basis basis;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    const auto person = transaction.person(person_id);
    if (!person.has_value()) return nobody();
    if (!basis.person.ParseFromString(person->content)) return absl::DataLossError("person: not to be read");
    auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    basis.settings = std::move(*card->mutable_settings());
    auto own = ownExercisesOf(transaction, draft);
    if (!own.ok()) return own.status();
    basis.own = *std::move(own);
    const auto last = transaction.latestProgramme(person_id);
    if (!last.has_value()) return absl::OkStatus();
    basis.last.emplace();
    if (!basis.last->ParseFromString(last->content)) return absl::DataLossError("programme: not to be read");
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return basis;
}

// What the draft and the programme before it name of the clinic's own.
std::vector<v1::OwnExercise> Prescriptions::withLast(const Basis& basis) {
  std::vector<v1::OwnExercise> own = basis.own;
  if (basis.last.has_value())
    own.insert(own.end(), basis.last->own_exercises().begin(), basis.last->own_exercises().end());
  return own;
}

absl::StatusOr<std::vector<v1::Finding>> Prescriptions::findings(const v1::Programme& draft,
                                                                 const Basis& basis) const {
  const Catalogue catalogue = m_hub->catalogue->with(withLast(basis));
  const RuleBook rules = m_hub->rules->with(settingValues(basis.settings, catalogue));
  const auto review = reviewProgramme(draft, basis.person, basis.last.has_value() ? &*basis.last : nullptr,
                                      catalogue, rules, basis.person.language());
  if (!review.ok()) return review.status();
  if (!review->may_sign) {
    std::string words = standingWords(*review);
    return absl::FailedPreconditionError(words.empty() ? "this draft may not be signed" : words);
  }
  std::vector<v1::Finding> all;
  for (const auto& entry : review->entries) {
    all.insert(all.end(), entry.findings.begin(), entry.findings.end());
  }
  all.insert(all.end(), review->programme_findings.begin(), review->programme_findings.end());
  return all;
}

absl::StatusOr<std::optional<v1::Programme>> Prescriptions::signedBefore(
    const v1::SignProgrammeRequest& request, SignedRow& row) {
  std::optional<SignedRow> found;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    found = transaction.programmeById(request.draft().id());
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!found.has_value()) return std::optional<v1::Programme>();
  v1::Programme programme;
  if (!programme.ParseFromString(found->content)) return absl::DataLossError("programme: not to be read");
  if (toBytes(stripped(programme)) != toBytes(stripped(request.draft()))) {
    return absl::AlreadyExistsError("draft.id: another programme has it");
  }
  row = *found;
  return std::optional<v1::Programme>(std::move(programme));
}

absl::StatusOr<v1::SignProgrammeReply> Prescriptions::sign(const DeskCaller& caller,
                                                           const v1::SignProgrammeRequest& request) {
  v1::Programme programme = stripped(request.draft());
  const auto basis = basisFor(programme);
  if (!basis.ok()) return basis.status();
  for (const auto& own : basis->own) *programme.add_own_exercises() = own;
  if (programme.id().empty()) programme.set_id(newRecordId(*m_hub->clock, *m_hub->random));
  programme.set_number(request.base_number() + 1);
  programme.set_clinic_id(m_hub->clinic->card.clinic_id());
  programme.set_signer_id(caller.therapist.id());
  programme.set_signer_name(caller.therapist.display_name());
  *programme.mutable_issued_at() = toTimestamp(m_hub->clock->wall());
  if (programme.has_wear_plan()) nameWearPlan(programme, newRecordId(*m_hub->clock, *m_hub->random));
  SignedRow row;
  auto before = signedBefore(request, row);
  if (!before.ok()) return before.status();
  v1::SignProgrammeReply reply;
  if (!before->has_value()) {
    absl::Status good = check(programme);
    if (good.ok()) good = checkCards(programme, *m_hub->catalogue);
    if (good.ok()) good = checkAsked(programme);
    if (!good.ok()) return good;
    auto found = findings(programme, *basis);
    if (!found.ok()) {
      m_hub->audit->refusal(
          *m_hub->store,
          {.action = "programme.refused", .who = caller.therapist.id(), .person = programme.person_id()});
      return found.status();
    }
    for (auto& finding : *found) *reply.add_findings() = std::move(finding);
    const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) {
      return keepProgramme(transaction, caller, request.base_number(), programme, row);
    });
    if (!kept.ok()) return kept;
    m_hub->board->nudgePerson(programme.person_id());
    m_hub->board->nudgeDesks(programme.person_id());
  } else {
    programme = **std::move(before);
  }
  *reply.mutable_signed_programme() = signedFrom<v1::SignedProgramme>(row);
  *reply.mutable_programme() = std::move(programme);
  return reply;
}

// Numbering, signing and keeping in one transaction: two desks that sign at once get one number each, and the
// second is told that its base is old.
absl::Status Prescriptions::keepProgramme(HubTransaction& transaction, const DeskCaller& caller,
                                          std::uint32_t base_number, v1::Programme& programme,
                                          SignedRow& row) {
  const std::string& person_id = programme.person_id();
  const auto last = transaction.latestProgramme(person_id);
  const std::uint64_t latest = last.has_value() ? last->number : 0;
  if (latest != base_number) {
    return absl::AbortedError("base_number: programme " + std::to_string(latest) + " is the latest");
  }
  if (absl::Status named = nameMediaOf(transaction, programme); !named.ok()) return named;
  if (absl::Status settled = settleWearPlan(transaction, programme); !settled.ok()) return settled;
  row = keepUnderNextNumber(transaction, *m_hub, programme);
  m_hub->audit->add(transaction, {.action = "programme.sign",
                                  .who = caller.therapist.id(),
                                  .person = person_id,
                                  .record = programme.id()});
  return absl::OkStatus();
}

absl::StatusOr<v1::ListProgrammesReply> Prescriptions::programmes(const std::string& person_id) {
  v1::ListProgrammesReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    for (const auto& row : transaction.programmes(person_id)) {
      *reply.add_programmes() = signedFrom<v1::SignedProgramme>(row);
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::IssueHoldReply> Prescriptions::issueHold(const DeskCaller& caller,
                                                            const v1::IssueHoldRequest& request) {
  v1::HoldOrder order;
  order.set_id(request.id().empty() ? newRecordId(*m_hub->clock, *m_hub->random) : request.id());
  order.set_number(1);
  order.set_person_id(request.person_id());
  order.set_clinic_id(m_hub->clinic->card.clinic_id());
  order.set_signer_id(caller.therapist.id());
  order.set_signer_name(caller.therapist.display_name());
  *order.mutable_issued_at() = toTimestamp(m_hub->clock->wall());
  *order.mutable_entry_ids() = request.entry_ids();
  order.set_reason(request.reason());
  order.set_lifts_id(request.lifts_id());
  const absl::Status good = check(order);
  if (!good.ok()) return good;
  SignedRow row;
  const absl::Status kept = m_hub->store->writeFirst(
      [&](HubTransaction& transaction) { return keepHold(transaction, caller, order, row); });
  if (!kept.ok()) return kept;
  m_hub->board->pushHold(order.person_id(), signedFrom<v1::SignedHoldOrder>(row));
  m_hub->board->nudgeDesks(order.person_id());
  v1::IssueHoldReply reply;
  *reply.mutable_order() = std::move(order);
  return reply;
}

absl::Status Prescriptions::keepHold(HubTransaction& transaction, const DeskCaller& caller,
                                     v1::HoldOrder& order, SignedRow& row) {
  const std::string person_id = order.person_id();
  if (!transaction.person(person_id).has_value()) return nobody();
  if (auto known = transaction.holdOrderById(order.id())) return sameHold(*std::move(known), order, row);
  const auto orders = transaction.holdOrders(person_id);
  if (!order.lifts_id().empty()) {
    const auto target = std::find_if(orders.begin(), orders.end(),
                                     [&](const SignedRow& other) { return other.id == order.lifts_id(); });
    if (target == orders.end()) return absl::NotFoundError("lifts_id: no such order");
    if (!target->lifts_id.empty()) return absl::FailedPreconditionError("lifts_id: that order holds nothing");
    const bool lifted = std::any_of(orders.begin(), orders.end(), [&](const SignedRow& other) {
      return other.lifts_id == order.lifts_id();
    });
    if (lifted) return absl::FailedPreconditionError("lifts_id: it is lifted already");
  }
  const std::uint64_t latest = orders.empty() ? 0 : orders.back().number;
  const std::uint64_t seen = transaction.highestReceiptNumber(person_id, v1::RECEIPT_OF_HOLD_ORDER);
  order.set_number(std::max(latest, seen) + 1);
  const v1::SignedHoldOrder signed_order = signHoldOrder(toBytes(order), m_hub->clinic->key);
  row = {person_id,
         order.number(),
         order.id(),
         signed_order.content(),
         signed_order.signature(),
         signed_order.key_id(),
         order.lifts_id(),
         ""};
  const std::uint64_t sequence =
      commitToFeed(transaction, *m_hub, person_id,
                   makeEnvelope(v1::RECORD_KIND_HOLD_ORDER, order.id(), 1, toBytes(signed_order)),
                   /*replace=*/false);
  transaction.addHoldOrder(row, sequence);
  m_hub->audit->add(transaction, {.action = order.lifts_id().empty() ? "hold.issue" : "hold.lift",
                                  .who = caller.therapist.id(),
                                  .person = person_id,
                                  .record = order.id()});
  return absl::OkStatus();
}

absl::StatusOr<v1::ListHoldsReply> Prescriptions::holds(const std::string& person_id) {
  v1::ListHoldsReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    for (const auto& row : transaction.holdOrders(person_id)) {
      if (!reply.add_orders()->ParseFromString(row.content))
        return absl::DataLossError("hold order: not to be read");
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

}  // namespace newel
