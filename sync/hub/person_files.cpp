#include "sync/hub/person_files.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/hub/digest_keeper.h"
#include "sync/hub/media_shelf.h"
#include "sync/hub/person_access.h"

namespace newel {
namespace {

constexpr std::uint32_t kMostRows = 500;  // desk_service.proto

absl::Status nobody() { return absl::NotFoundError("person_id: nobody has it"); }
absl::Status unreadable(const std::string& what) { return absl::DataLossError(what + ": not to be read"); }

absl::Status checkLimit(std::uint32_t limit) {
  return limit >= 1 && limit <= kMostRows ? absl::OkStatus() : absl::InvalidArgumentError("limit: 1 to 500");
}

bool parse(std::string_view bytes, google::protobuf::Message& record) {
  return record.ParseFromArray(bytes.data(), static_cast<int>(bytes.size()));
}

absl::Status fillRow(HubTransaction& transaction, const HubContext& hub, const CaseloadRow& kept,
                     absl::Time now, v1::CaseRow& row) {
  if (kept.has_digest && !kept.due && lasts(kept.digest_age, now)) {
    if (!parse(kept.digest, row)) return unreadable("digest");
  } else {
    auto anew = digestRowOf(transaction, *hub.rules, std::string(kept.person_id), now);
    if (!anew.ok()) return anew.status();
    if (!row.ParseFromString(anew->content)) return unreadable("digest");
  }
  if (!parse(kept.person, *row.mutable_person())) return unreadable("person");
  if (!kept.identity.empty() && !parse(kept.identity, *row.mutable_identity())) {
    return unreadable("identity");
  }
  if (!kept.snooze.empty() && !parse(kept.snooze, *row.mutable_snooze())) return unreadable("snooze");
  if (kept.last_contact.has_value()) *row.mutable_last_contact() = toTimestamp(*kept.last_contact);
  row.set_paired(kept.paired);
  row.set_mine(kept.mine);
  if (kept.opened) addOpenings(transaction, std::string(kept.person_id), now, *row.mutable_openings());
  return absl::OkStatus();
}

}  // namespace

absl::StatusOr<v1::ListCaseloadReply> PersonFiles::caseload(const DeskCaller& caller,
                                                            const v1::ListCaseloadRequest& request) {
  const absl::Status good = checkLimit(request.limit());
  if (!good.ok()) return good;
  v1::ListCaseloadReply reply;
  const absl::Time now = m_hub->clock->wall();
  const CaseloadQuery query{.account_id = caller.therapist.id(),
                            .only_own = seesOnlyOwn(caller.therapist.role()),
                            .now = now,
                            .after_id = request.after_person_id(),
                            .person_id = request.person_id(),
                            .limit = request.limit() + 1};
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    CaseloadPage page = transaction.caseload(query);
    auto& rows = page.rows;
    if (rows.size() > request.limit()) {
      rows.resize(request.limit());
      reply.set_more(true);
    }
    reply.mutable_rows()->Reserve(static_cast<int>(rows.size()));
    for (const auto& kept : rows) {
      absl::Status filled = fillRow(transaction, *m_hub, kept, now, *reply.add_rows());
      if (!filled.ok()) return filled;
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  *reply.mutable_hub_time() = toTimestamp(m_hub->clock->wall());
  return reply;
}

absl::StatusOr<v1::GetPersonReply> PersonFiles::get(const std::string& person_id) {
  v1::GetPersonReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    const auto person = transaction.person(person_id);
    if (!person.has_value()) return nobody();
    if (!reply.mutable_person()->ParseFromString(person->content)) return unreadable("person");
    const auto identity = transaction.identity(person_id);
    if (identity.has_value() && !reply.mutable_identity()->ParseFromString(identity->content)) {
      return unreadable("identity");
    }
    addOpenings(transaction, person_id, m_hub->clock->wall(), *reply.mutable_openings());
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::PutPersonReply> PersonFiles::put(const DeskCaller& caller,
                                                    const v1::PutPersonRequest& request) {
  v1::Person person = request.person();
  v1::Identity identity = request.identity();
  const std::uint64_t revision = request.base_revision() + 1;
  person.set_revision(revision);
  identity.set_revision(revision);
  absl::Status good = check(person);
  if (!good.ok()) return good;
  good = check(identity);
  if (!good.ok()) return good;
  if (identity.person_id() != person.id())
    return absl::InvalidArgumentError("identity.person_id: another person");
  const std::string bytes = toBytes(person);
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const auto known = transaction.person(person.id());
    if (request.base_revision() == 0 && known.has_value())
      return absl::AlreadyExistsError("person.id: is taken");
    if (request.base_revision() != 0 && !known.has_value()) return nobody();
    if (transaction.wasErased(person.id())) return absl::FailedPreconditionError("person.id: was erased");
    if (known.has_value() && known->revision != request.base_revision()) {
      return absl::AbortedError("base_revision: " + std::to_string(known->revision) + " is the latest");
    }
    transaction.putPerson(person.id(), {revision, bytes});
    transaction.putIdentity(person.id(), {revision, toBytes(identity)});
    if (!known.has_value()) transaction.setAssigned(caller.therapist.id(), person.id(), true);
    commitToFeed(
        transaction, *m_hub, person.id(),
        makeEnvelope(v1::RECORD_KIND_PERSON, person.id(), static_cast<std::uint32_t>(revision), bytes),
        /*replace=*/true);
    m_hub->audit->add(transaction, {.action = known.has_value() ? "person.change" : "person.add",
                                    .who = caller.therapist.id(),
                                    .person = person.id()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgePerson(person.id());
  m_hub->board->nudgeDesks(person.id());
  v1::PutPersonReply reply;
  reply.set_revision(revision);
  return reply;
}

absl::StatusOr<v1::SendMessageReply> PersonFiles::sendMessage(const DeskCaller& caller,
                                                              const v1::SendMessageRequest& request) {
  v1::SendMessageReply reply;
  v1::Message& message = *reply.mutable_message();
  message.set_id(request.id());
  message.set_person_id(request.person_id());
  message.set_sender(v1::SENDER_CLINIC);
  message.set_sender_name(caller.therapist.display_name());
  *message.mutable_written_at() = toTimestamp(m_hub->clock->wall());
  message.set_text(request.text());
  message.set_urgent(request.urgent());
  if (request.has_photo()) *message.mutable_photo() = request.photo();
  if (request.has_clip()) *message.mutable_clip() = request.clip();
  const absl::Status good = check(message);
  if (!good.ok()) return good;
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(request.person_id()).has_value()) return nobody();
    if (const auto known = transaction.message(request.id())) {
      v1::Message before;
      if (!before.ParseFromString(known->content)) return unreadable("message");
      if (before.person_id() != request.person_id() || before.sender() != v1::SENDER_CLINIC ||
          before.text() != request.text() || before.urgent() != request.urgent() ||
          before.photo().sha256() != request.photo().sha256() ||
          before.clip().sha256() != request.clip().sha256()) {
        return absl::AlreadyExistsError("id: was sent with other words");
      }
      message = std::move(before);
      return absl::OkStatus();
    }
    if (absl::Status named = nameMediaOf(transaction, message); !named.ok()) return named;
    const std::string bytes = toBytes(message);
    v1::Envelope envelope = makeEnvelope(v1::RECORD_KIND_MESSAGE, message.id(), 1, bytes);
    const MessageRow row{message.id(), message.person_id(), false, bytes, envelope.sha256()};
    const std::uint64_t sequence =
        commitToFeed(transaction, *m_hub, message.person_id(), std::move(envelope), /*replace=*/false);
    transaction.addMessage(row, sequence, m_hub->clock->wall());
    m_hub->audit->add(transaction, {.action = "message.send",
                                    .who = caller.therapist.id(),
                                    .person = message.person_id(),
                                    .record = message.id()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgePerson(request.person_id());
  m_hub->board->nudgeDesks(request.person_id());
  return reply;
}

absl::StatusOr<v1::NoteExportReply> PersonFiles::noteExport(const DeskCaller& caller,
                                                            const v1::NoteExportRequest& request) {
  constexpr std::array<std::string_view, 6> kFormats = {"fhir", "ical", "csv", "handout", "report", "card"};
  if (std::find(kFormats.begin(), kFormats.end(), request.format()) == kFormats.end())
    return absl::InvalidArgumentError("format: fhir, ical, csv, handout, report or card");
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    // Erased since: what is gone is not to leave any more.
    if (!transaction.person(request.person_id()).has_value()) return nobody();
    m_hub->audit->add(transaction, {.action = "person.export",
                                    .who = caller.therapist.id(),
                                    .person = request.person_id(),
                                    .field = request.format()});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  return v1::NoteExportReply();
}

absl::StatusOr<v1::ListMessagesReply> PersonFiles::messages(const v1::ListMessagesRequest& request) {
  v1::ListMessagesReply reply;
  int marked = 0;
  const auto list = [&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(request.person_id()).has_value()) return nobody();
    reply.clear_messages();
    for (const auto& row : transaction.messages(request.person_id())) {
      if (!reply.add_messages()->ParseFromString(row.content)) return unreadable("message");
    }
    if (request.mark_read()) marked = transaction.markMessagesRead(request.person_id(), m_hub->clock->wall());
    return absl::OkStatus();
  };
  const absl::Status done = request.mark_read() ? m_hub->store->write(list) : m_hub->store->read(list);
  if (!done.ok()) return done;
  if (marked > 0) m_hub->board->nudgeDesks(request.person_id());
  return reply;
}

absl::StatusOr<v1::ListPracticesReply> PersonFiles::practices(const v1::ListPracticesRequest& request) {
  const absl::Status good = checkLimit(request.limit());
  if (!good.ok()) return good;
  v1::ListPracticesReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(request.person_id()).has_value()) return nobody();
    std::size_t bytes = 0;
    auto rows =
        transaction.practicesAfter(request.person_id(), request.after_sequence(), request.limit() + 1);
    for (auto& envelope : rows) {
      bytes += envelope.content().size();
      const bool full = reply.practices_size() > 0 && bytes > kMostOfferBytes;
      if (full || static_cast<std::uint32_t>(reply.practices_size()) == request.limit()) {
        reply.set_more(true);
        break;
      }
      *reply.add_practices() = std::move(envelope);
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::ListReceiptsReply> PersonFiles::receipts(const std::string& person_id) {
  v1::ListReceiptsReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    for (const auto& row : transaction.receipts(person_id)) {
      if (!reply.add_receipts()->ParseFromString(row.content)) return unreadable("receipt");
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::ListDevicesReply> PersonFiles::devices(const std::string& person_id) {
  v1::ListDevicesReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    if (!transaction.person(person_id).has_value()) return nobody();
    for (const auto& row : transaction.devices(person_id)) {
      v1::Device& device = *reply.add_devices();
      device.set_id(row.id);
      device.set_name(row.name);
      device.set_app_version(row.app_version);
      device.set_text_percent(row.text_percent);
      device.set_revoked(row.revoked);
      *device.mutable_paired_at() = toTimestamp(row.paired_at);
      if (row.last_contact.has_value()) *device.mutable_last_contact() = toTimestamp(*row.last_contact);
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<std::string> PersonFiles::ownerOf(const std::string& device_id) {
  std::string person_id;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    const auto device = transaction.device(device_id);
    if (device.has_value()) person_id = device->person_id;
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return person_id;
}

absl::Status PersonFiles::revokeDevice(const DeskCaller& caller, const std::string& device_id) {
  std::string person_id;
  absl::Status done = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const auto device = transaction.device(device_id);
    if (!device.has_value()) return absl::NotFoundError("device_id: no such device");
    person_id = device->person_id;
    if (device->revoked) return absl::OkStatus();
    transaction.revokeDevice(device_id);
    m_hub->audit->add(
        transaction,
        {.action = "device.revoke", .who = caller.therapist.id(), .person = person_id, .record = device_id});
    return absl::OkStatus();
  });
  if (!done.ok()) return done;
  m_hub->board->closeDevice(device_id);
  m_hub->board->nudgeDesks(person_id);
  return absl::OkStatus();
}

}  // namespace newel
