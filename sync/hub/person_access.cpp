#include "sync/hub/person_access.h"

#include <algorithm>
#include <set>
#include <utility>

#include "core/time/local_day.h"
#include "sync/common/record_id.h"

namespace newel {
namespace {

constexpr std::size_t kLeastReason = 10;  // bytes; ours: "because" alone is none
constexpr std::size_t kMostReason = 500;
constexpr std::size_t kLeastName = 2;
constexpr int kMostFound = 20;
constexpr std::uint32_t kPage = 500;

absl::Status nobody() { return absl::NotFoundError("person_id: nobody has it"); }

// Letters of ASCII only: what is left is compared as it is.
std::string lowered(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return text;
}

bool isOpened(HubTransaction& transaction, const std::string& account_id, const std::string& person_id,
              absl::Time now) {
  const auto openings = transaction.openings(person_id, now);
  return std::any_of(openings.begin(), openings.end(),
                     [&](const OpeningRow& row) { return row.account_id == account_id; });
}

void addFound(HubTransaction& transaction, const v1::Therapist& who, const v1::Identity& identity,
              absl::Time now, v1::FindPersonsReply& reply) {
  v1::FoundPerson& found = *reply.add_persons();
  found.set_person_id(identity.person_id());
  found.set_given_name(identity.given_name());
  found.set_family_name(identity.family_name());
  found.set_birth_date(identity.birth_date());
  found.set_open(mayOpen(transaction, who, identity.person_id(), now));
}

}  // namespace

bool seesOnlyOwn(v1::Role role) { return role == v1::ROLE_THERAPIST; }

bool mayOpen(HubTransaction& transaction, const v1::Therapist& therapist, const std::string& person_id,
             absl::Time now) {
  return !seesOnlyOwn(therapist.role()) || transaction.isAssigned(therapist.id(), person_id) ||
         isOpened(transaction, therapist.id(), person_id, now);
}

absl::Status PersonAccess::check(const DeskCaller& caller, const std::string& person_id) {
  if (person_id.empty() || !seesOnlyOwn(caller.therapist.role())) return absl::OkStatus();
  bool may = false;
  absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    may = mayOpen(transaction, caller.therapist, person_id, m_hub->clock->wall()) ||
          !transaction.person(person_id).has_value();
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (may) return absl::OkStatus();
  m_hub->audit->refusal(
      *m_hub->store,
      {.action = "desk.refused", .who = caller.therapist.id(), .person = person_id, .field = "assigned"});
  return absl::PermissionDeniedError("person_id: is not assigned to this account");
}

bool PersonAccess::mayHear(const v1::Therapist& therapist, const std::string& person_id) {
  if (person_id.empty() || !seesOnlyOwn(therapist.role())) return true;
  bool may = false;
  absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    may = mayOpen(transaction, therapist, person_id, m_hub->clock->wall());
    return absl::OkStatus();
  });
  return read.ok() && may;
}

absl::StatusOr<v1::ListAssignmentsReply> PersonAccess::assignments(const std::string& person_id) {
  v1::ListAssignmentsReply reply;
  absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    const auto assigned = transaction.assignedAccounts(person_id);
    const std::set<std::string> ids(assigned.begin(), assigned.end());
    for (const auto& account : transaction.accounts()) {
      if (!seesOnlyOwn(account.role) && !ids.contains(account.id)) continue;
      v1::Assignment& assignment = *reply.add_assignments();
      assignment.set_therapist_id(account.id);
      assignment.set_display_name(account.display_name);
      assignment.set_assigned(ids.contains(account.id));
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::PutAssignmentReply> PersonAccess::assign(const DeskCaller& caller,
                                                            const v1::PutAssignmentRequest& request) {
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(request.person_id()).has_value()) return nobody();
    if (!transaction.account(request.therapist_id()).has_value()) {
      return absl::NotFoundError("therapist_id: there is no such account");
    }
    if (transaction.isAssigned(request.therapist_id(), request.person_id()) == request.assigned()) {
      return absl::OkStatus();
    }
    transaction.setAssigned(request.therapist_id(), request.person_id(), request.assigned());
    m_hub->audit->add(transaction, {.action = request.assigned() ? "person.assign" : "person.unassign",
                                    .who = caller.therapist.id(),
                                    .person = request.person_id(),
                                    .record = request.therapist_id()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks("");  // whoever lost the person has to look again too
  return v1::PutAssignmentReply();
}

absl::StatusOr<v1::FindPersonsReply> PersonAccess::find(const DeskCaller& caller,
                                                        const v1::FindPersonsRequest& request) {
  if (request.family_name().size() < kLeastName) {
    return absl::InvalidArgumentError("family_name: the whole name, two letters or more");
  }
  const std::string wanted = lowered(request.family_name());
  const absl::Time now = m_hub->clock->wall();
  v1::FindPersonsReply reply;
  // A written line each time: names are looked for one by one, and who looks for many is seen.
  const absl::Status done = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    std::string last;
    for (auto ids = transaction.personIdsAfter(last, kPage);
         !ids.empty() && reply.persons_size() < kMostFound; ids = transaction.personIdsAfter(last, kPage)) {
      last = ids.back();
      for (const auto& id : ids) {
        const auto row = transaction.identity(id);
        v1::Identity identity;
        if (!row.has_value() || !identity.ParseFromString(row->content)) continue;
        if (lowered(identity.family_name()) != wanted || reply.persons_size() >= kMostFound) continue;
        addFound(transaction, caller.therapist, identity, now, reply);
      }
    }
    m_hub->audit->add(transaction, {.action = "person.find", .who = caller.therapist.id()});
    return absl::OkStatus();
  });
  if (!done.ok()) return done;
  return reply;
}

absl::StatusOr<v1::BreakGlassReply> PersonAccess::breakGlass(const DeskCaller& caller,
                                                             const v1::BreakGlassRequest& request) {
  const std::string& reason = request.reason();
  if (reason.size() < kLeastReason || reason.size() > kMostReason ||
      reason.find_first_not_of(" \t\n") == std::string::npos) {
    return absl::InvalidArgumentError("reason: why it cannot wait, 10 to 500 bytes");
  }
  const absl::Time now = m_hub->clock->wall();
  const OpeningRow row{newRecordId(*m_hub->clock, *m_hub->random),
                       request.person_id(),
                       caller.therapist.id(),
                       reason,
                       now,
                       now + kOpeningLife};
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(row.person_id).has_value()) return nobody();
    if (mayOpen(transaction, caller.therapist, row.person_id, now)) {
      return absl::FailedPreconditionError("person_id: is open to this account already");
    }
    transaction.addOpening(row);
    // The reason stays in its table, which goes with the person: the trail names no content.
    m_hub->audit->add(
        transaction,
        {.action = "person.break_glass", .who = row.account_id, .person = row.person_id, .record = row.id});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks(row.person_id);
  v1::BreakGlassReply reply;
  *reply.mutable_until() = toTimestamp(row.until);
  return reply;
}

void addOpenings(HubTransaction& transaction, const std::string& person_id, absl::Time now,
                 google::protobuf::RepeatedPtrField<v1::Opening>& list) {
  for (const auto& opening : transaction.openings(person_id, now - kOpeningShown)) {
    v1::Opening& shown = *list.Add();
    shown.set_therapist_id(opening.account_id);
    const auto account = transaction.account(opening.account_id);
    if (account.has_value()) shown.set_display_name(account->display_name);
    shown.set_reason(opening.reason);
    *shown.mutable_at() = toTimestamp(opening.at);
    *shown.mutable_until() = toTimestamp(opening.until);
  }
}

}  // namespace newel
