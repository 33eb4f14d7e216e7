// What the therapists do at their desks.
#include <algorithm>
#include <set>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "tests/core/people/sample_people.h"
#include "tests/sim/sim_hub.h"

namespace newel::sim {
namespace {

v1::Programme draftFor(const v1::Person& person, const std::string& id) {
  const v1::Programme sample = test::programmeOf(person, {test::entryOf("sit-to-stand", person, 300)});
  v1::Programme draft;
  draft.set_id(id);
  draft.set_person_id(person.id());
  draft.set_effective_day(sample.effective_day());
  draft.set_end_day(sample.end_day());
  draft.set_zone(sample.zone());
  *draft.mutable_entries() = sample.entries();
  *draft.mutable_thresholds() = sample.thresholds();
  draft.set_advice(canaryOf(person.id()));
  return draft;
}

constexpr std::size_t kPhotoBytes = 600;

// A PNG whose pixels are these words: nobody here unpacks them.
std::string photoWith(const std::string& words) {
  const auto big = [](std::size_t value) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8)
      bytes += static_cast<char>(value >> static_cast<unsigned>(shift));
    return bytes;
  };
  const auto chunk = [&](const std::string& type, const std::string& data) {
    return big(data.size()) + type + data + big(0);
  };
  return "\x89PNG\r\n\x1A\n" + chunk("IHDR", big(8) + big(8) + std::string("\x08\x02\0\0\0", 5)) +
         chunk("IDAT", words) + chunk("IEND", "");
}

}  // namespace

void SimHub::deskAction() {
  if (!isUp() || m_stage->calm) return;
  const auto& person = m_people[m_stage->random.between(0, static_cast<std::uint32_t>(m_people.size()) - 1)];
  const std::uint32_t which = m_stage->random.between(1, 100);
  if (which <= 25) {
    signProgramme(person);
  } else if (which <= 45) {
    issueHold(person);
  } else if (which <= 65) {
    liftHold(person);
  } else if (which <= 85) {
    sendMessage(person);
  } else if (which <= 92) {
    changePerson(person);
  } else if (which <= 95) {
    sendUnknown(person);
  } else {
    revokeOne(person);
  }
  afterwards();
}

void SimHub::signProgramme(const v1::Person& person) {
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = draftFor(person, newId());
  request.set_base_number(latestProgrammeNumber(person.id()));
  m_ledger->sent.insert(request.draft().id());
  // Half of them come with a photo; one that does not get to the hub is left out.
  if (m_stage->chance(500)) addPhoto(person, *request.mutable_draft()->mutable_entries(0));
  if (!isUp()) return;
  std::uint64_t told = 0;
  for (const auto& receipt : receipts(person.id())) {
    if (receipt.of() == v1::RECEIPT_OF_PROGRAMME) told = std::max(told, receipt.ref_number());
  }
  const std::uint64_t faults = m_disk.faults();
  const auto reply = m_hub->prescriptions().sign(therapist(), request);
  m_stage->say("desk", reply.ok() ? "signs programme " + reply->programme().id() + " " +
                                        std::to_string(reply->programme().number()) + " for " + person.id()
                                  : "cannot sign: " + reply.status().ToString());
  if (!reply.ok() && m_disk.faults() == faults)
    m_stage->violated("desk: cannot sign: " + reply.status().ToString());
  if (reply.ok() && reply->programme().number() <= told)
    m_stage->violated("desk: signs under a number that a phone said it has");
}

// In parts, as a desk does; what is only theirs is in it, so that it shows where it must not be.
void SimHub::addPhoto(const v1::Person& person, v1::Entry& entry) {
  std::string words;
  while (words.size() < kPhotoBytes) words += canaryOf(person.id()) + newId() + " ";
  const std::string photo = photoWith(words);
  v1::PutMediaRequest request;
  request.set_person_id(person.id());
  request.set_sha256(sha256(photo));
  request.set_size_bytes(photo.size());
  while (true) {
    request.set_content(photo.substr(request.offset(), kPhotoBytes / 2));
    const auto reply = m_hub->media().put(therapist(), request);
    if (!reply.ok() || !isUp()) return;
    if (reply->whole()) break;
    request.set_offset(reply->offset());
  }
  entry.mutable_photo()->set_sha256(request.sha256());
  entry.mutable_photo()->set_type(v1::MEDIA_TYPE_PNG);
  entry.mutable_photo()->set_size_bytes(photo.size());
  entry.mutable_photo()->set_words("How you stand. " + canaryOf(person.id()));
}

// Whether a phone of this person would be given it.
bool SimHub::hasMedia(const std::string& person_id, const std::string& hash) {
  bool named = false;
  const absl::Status read = m_store->read([&](HubTransaction& transaction) {
    const auto media = transaction.mediaOf(person_id, hash);
    named = media.has_value() && media->named;
    return absl::OkStatus();
  });
  return read.ok() && named;
}

void SimHub::issueHold(const v1::Person& person) {
  v1::IssueHoldRequest request;
  request.set_person_id(person.id());
  request.set_reason("Please stop. " + canaryOf(person.id()));
  const auto reply = m_hub->prescriptions().issueHold(therapist(), request);
  m_stage->say("desk", reply.ok() ? "holds " + person.id() + " by " + std::to_string(reply->order().number())
                                  : "cannot hold: " + reply.status().ToString());
  if (reply.ok()) m_ledger->sent.insert(reply->order().id());
}

void SimHub::holdNow(const std::string& person_id) {
  if (!isUp() || m_stage->calm) return;
  for (const auto& person : m_people) {
    if (person.id() == person_id && isUp()) issueHold(person);
  }
  afterwards();
}

void SimHub::liftHold(const v1::Person& person) {
  std::set<std::string> lifted;
  const auto orders = holds(person.id());
  for (const auto& order : orders) lifted.insert(order.lifts_id());
  for (const auto& order : orders) {
    if (!order.lifts_id().empty() || lifted.contains(order.id())) continue;
    v1::IssueHoldRequest request;
    request.set_person_id(person.id());
    request.set_lifts_id(order.id());
    m_ledger->lifted.insert(order.id());
    request.set_reason("Go on. " + canaryOf(person.id()));
    const auto reply = m_hub->prescriptions().issueHold(therapist(), request);
    m_stage->say("desk", reply.ok() ? "lifts hold " + std::to_string(order.number()) + " of " + person.id()
                                    : "cannot lift: " + reply.status().ToString());
    if (reply.ok()) m_ledger->sent.insert(reply->order().id());
    if (!isUp()) return;
  }
}

void SimHub::sendMessage(const v1::Person& person) {
  v1::SendMessageRequest request;
  request.set_id(newId());
  request.set_person_id(person.id());
  request.set_text("How is it going? " + canaryOf(person.id()));
  request.set_urgent(m_stage->chance(300));
  m_ledger->sent.insert(request.id());
  const auto reply = m_hub->files().sendMessage(therapist(), request);
  m_stage->say("desk", "writes to " + person.id() + ": " + reply.status().ToString());
}

void SimHub::changePerson(const v1::Person& person) {
  const auto known = m_hub->files().get(person.id());
  if (!known.ok()) return;
  v1::PutPersonRequest request;
  *request.mutable_person() = known->person();
  *request.mutable_identity() = known->identity();
  request.set_base_revision(known->person().revision());
  request.mutable_person()->set_height_cm(known->person().height_cm() == 172 ? 173 : 172);
  m_stage->say(
      "desk", "changes " + person.id() + ": " + m_hub->files().put(therapist(), request).status().ToString());
}

// A kind of record that this program does not know, as a newer hub may have.
void SimHub::sendUnknown(const v1::Person& person) {
  const absl::Status sent = m_store->write([&](HubTransaction& transaction) {
    v1::Envelope envelope = makeEnvelope(v1::RECORD_KIND_MEASURE, newId(), 1, canaryOf(person.id()));
    envelope.set_sequence(transaction.takeSequence());
    *envelope.mutable_received_at() = toTimestamp(m_clock.wall());
    transaction.addToFeed(person.id(), envelope, false);
    return absl::OkStatus();
  });
  m_stage->say("desk", "sends what no phone knows: " + sent.ToString());
}

void SimHub::revokeOne(const v1::Person& person) {
  const auto devices = m_hub->files().devices(person.id());
  if (!devices.ok() || devices->devices_size() == 0) return;
  const auto which = m_stage->random.between(0, static_cast<std::uint32_t>(devices->devices_size()) - 1);
  const absl::Status done =
      m_hub->files().revokeDevice(therapist(), devices->devices(static_cast<int>(which)).id());
  m_stage->say("desk", "ends the access of " + devices->devices(static_cast<int>(which)).name() + ": " +
                           done.ToString());
}

}  // namespace newel::sim
