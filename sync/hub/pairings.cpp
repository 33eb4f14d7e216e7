#include "sync/hub/pairings.h"

#include <utility>

#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/pairing_ticket.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/password.h"

namespace newel {
namespace {

constexpr std::size_t kTypedLength = 8;
constexpr std::size_t kQrLength = 26;  // 130 bits
constexpr std::size_t kTokenBytes = 32;

Throttle::Limits typedLimits() {
  Throttle::Limits limits;
  limits.free_failures = kInvitationTries;
  limits.first_wait = kInvitationLife;
  limits.longest_wait = kInvitationLife;
  limits.forget_after = kInvitationLife;
  return limits;
}

absl::Status noSuchCode() { return absl::NotFoundError("code: wrong, used up or too old"); }

}  // namespace

Pairings::Pairings(const HubContext* hub) : m_hub(hub), m_throttle(hub->clock, typedLimits()) {}

void Pairings::setPhoneAddress(const std::string& host, int port) {
  const std::lock_guard lock(m_mutex);
  m_host = host;
  m_port = port;
}

absl::StatusOr<v1::CreatePairingReply> Pairings::invite(const DeskCaller& caller,
                                                        const std::string& person_id) {
  const std::string typed = randomCrockford(*m_hub->random, kTypedLength);
  PairingTicket ticket;
  {
    const std::lock_guard lock(m_mutex);
    ticket.host = m_host;
    ticket.port = m_port;
  }
  ticket.code = randomCrockford(*m_hub->random, kQrLength);
  ticket.certificate_sha256 = m_hub->clinic->certificate_sha256;
  const auto typed_hash = hashCode(typed);
  if (!typed_hash.ok()) return typed_hash.status();
  const absl::Time now = m_hub->clock->wall();
  InvitationRow row;
  row.id = newRecordId(*m_hub->clock, *m_hub->random);
  row.person_id = person_id;
  row.typed_hash = *typed_hash;
  row.qr_sha256 = sha256(ticket.code);
  row.expires_at = now + kInvitationLife;
  row.tries_left = kInvitationTries;
  const absl::Status added = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return absl::NotFoundError("person_id: nobody has it");
    transaction.dropInvitations(now);
    transaction.addInvitation(row);
    ticket.backup_sha256 = otherPin(transaction, ticket.certificate_sha256);
    m_hub->audit->add(transaction,
                      {.action = "pairing.invite", .who = caller.therapist.id(), .person = person_id});
    return absl::OkStatus();
  });
  if (!added.ok()) return added;
  v1::CreatePairingReply reply;
  reply.set_typed_code(typed.substr(0, 4) + "-" + typed.substr(4));
  reply.set_qr_text(formatTicket(ticket));
  reply.set_typed_address(addressOf(ticket));
  *reply.mutable_expires_at() = toTimestamp(row.expires_at);
  return reply;
}

absl::StatusOr<v1::PairReply> Pairings::pair(const v1::PairRequest& request, const std::string& peer) {
  if (request.code().empty() || request.code().size() > 64)
    return absl::InvalidArgumentError("code: is missing");
  if (request.device_name().size() > 200) return absl::InvalidArgumentError("device_name: over 200 bytes");
  if (request.app_version().size() > 60) return absl::InvalidArgumentError("app_version: over 60 bytes");
  const auto typed = tidyTypedCode(request.code());
  auto invitation = typed.ok() ? byTypedCode(*typed, peer) : byQrCode(request.code());
  if (!invitation.ok()) return invitation.status();
  return admit(*invitation, request);
}

absl::StatusOr<InvitationRow> Pairings::byTypedCode(const std::string& code, const std::string& peer) {
  if (m_throttle.waitFor(peer) > absl::ZeroDuration()) {
    m_hub->audit->refusal(*m_hub->store, {.action = "pairing.too_many"});
    return absl::ResourceExhaustedError("code: too many tries; wait ten minutes or use the picture code");
  }
  // The try is taken before the code is looked at, so that many at once get no more of them.
  std::vector<InvitationRow> open;
  const absl::Status taken = m_hub->store->write([&](HubTransaction& transaction) {
    open = transaction.takeTries(m_hub->clock->wall());
    return absl::OkStatus();
  });
  if (!taken.ok()) return taken;
  for (const auto& invitation : open) {
    if (!passwordFits(invitation.typed_hash, code)) continue;
    const absl::Status given_back = m_hub->store->write([&](HubTransaction& transaction) {
      transaction.giveBackTries(open);
      return absl::OkStatus();
    });
    if (!given_back.ok()) return given_back;
    return invitation;
  }
  m_throttle.failed(peer);
  return refuse();
}

absl::StatusOr<InvitationRow> Pairings::byQrCode(const std::string& code) {
  std::optional<InvitationRow> found;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    found = transaction.invitationByQr(sha256(code), m_hub->clock->wall());
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!found.has_value()) return refuse();
  return *found;
}

absl::Status Pairings::refuse() {
  m_hub->audit->refusal(*m_hub->store, {.action = "pairing.refused", .field = "code"});
  return noSuchCode();
}

absl::StatusOr<v1::PairReply> Pairings::admit(const InvitationRow& invitation,
                                              const v1::PairRequest& request) {
  const absl::Time now = m_hub->clock->wall();
  const std::string token = toBase64Url(randomBytes(*m_hub->random, kTokenBytes));
  DeviceRow device;
  device.id = newRecordId(*m_hub->clock, *m_hub->random);
  device.person_id = invitation.person_id;
  device.name = request.device_name();
  device.app_version = request.app_version();
  device.token_sha256 = sha256(token);
  device.paired_at = now;
  v1::PairReply reply;
  v1::Identity identity;
  const absl::Status added = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.spendInvitation(invitation.id, now)) return noSuchCode();
    transaction.addDevice(device);
    const auto person = transaction.person(device.person_id);
    const auto known = transaction.identity(device.person_id);
    if (!person.has_value() || !reply.mutable_person()->ParseFromString(person->content)) {
      return absl::DataLossError("person: not to be read");
    }
    if (known.has_value()) identity.ParseFromString(known->content);
    auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    *reply.mutable_clinic() = *std::move(card);
    *reply.mutable_pins() = signedPins(transaction);
    m_hub->audit->add(transaction, {.action = "pairing.done", .who = device.id, .person = device.person_id});
    return absl::OkStatus();
  });
  if (!added.ok()) return added;
  m_hub->board->nudgeDesks(device.person_id);
  reply.set_device_id(device.id);
  reply.set_token(token);
  reply.set_greeting_name(identity.given_name());
  reply.set_clinic_key(m_hub->clinic->key.public_key);
  reply.set_clinic_key_id(m_hub->clinic->key.id);
  reply.set_generation(m_hub->clinic->generation);
  *reply.mutable_hub_time() = toTimestamp(now);
  return reply;
}

}  // namespace newel
