#include "sync/home/inbox.h"

#include <optional>
#include <utility>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/signing.h"
#include "sync/home/outbox.h"
#include "sync/home/wear_log.h"

namespace newel {
namespace {

std::string words(const absl::Status& status) { return std::string(status.message()); }

// What is on the disk under this number or id, if anything.
template <typename Key>
std::optional<std::string> contentWith(Database& database, const char* sql, const Key& key) {
  Rows rows = database.query(sql, key);
  if (!rows.next()) return std::nullopt;
  return rows.text(0);
}

}  // namespace

Inbox::Inbox(Database& database, DeviceSettings settings, absl::Time now, std::function<std::string()> new_id)
    : m_database(database), m_settings(std::move(settings)), m_now(now), m_new_id(std::move(new_id)) {
  v1::Person person;
  if (person.ParseFromString(m_settings.person)) m_person_id = person.id();
}

void Inbox::take(const v1::Envelope& envelope) {
  if (sha256(envelope.content()) != envelope.sha256()) {
    refuse(envelope.kind(), envelope.id(), "sha256: does not fit the content");
    return;
  }
  switch (envelope.kind()) {
    case v1::RECORD_KIND_PROGRAMME:
      takeProgramme(envelope);
      break;
    case v1::RECORD_KIND_HOLD_ORDER: {
      v1::SignedHoldOrder signed_order;
      if (signed_order.ParseFromString(envelope.content())) {
        takeHoldOrder(signed_order);
      } else {
        refuse(envelope.kind(), envelope.id(), "content: not to be read");
      }
      break;
    }
    case v1::RECORD_KIND_MESSAGE:
      takeMessage(envelope);
      break;
    case v1::RECORD_KIND_PERSON:
      takePerson(envelope);
      break;
    case v1::RECORD_KIND_CLINIC_CARD:
      takeClinicCard(envelope);
      break;
    case v1::RECORD_KIND_WEAR_BLOCK:
      takeWear(envelope);
      break;
    case v1::RECORD_KIND_MEASURE:
      takeMeasured(envelope);
      break;
    default:
      refuse(envelope.kind(), envelope.id(), "kind: not known to this program");
  }
}

void Inbox::takeProgramme(const v1::Envelope& envelope) {
  v1::SignedProgramme signed_programme;
  if (!signed_programme.ParseFromString(envelope.content())) {
    refuse(v1::RECORD_KIND_PROGRAMME, envelope.id(), "content: not to be read");
    return;
  }
  const auto programme = openProgramme(signed_programme, m_settings.clinic_key);
  if (!programme.ok()) {
    refuse(v1::RECORD_KIND_PROGRAMME, envelope.id(), words(programme.status()));
    return;
  }
  if (programme->person_id() != m_person_id) {
    refuse(v1::RECORD_KIND_PROGRAMME, programme->id(), "person_id: another person");
    return;
  }
  if (isBroken(Broken::AcceptOlderNumber)) {
    m_database.run("DELETE FROM programme WHERE number > ?", programme->number());
  }
  const auto same =
      contentWith(m_database, "SELECT unseal(content, 'programme', number) FROM programme WHERE number = ?",
                  programme->number());
  if (same == signed_programme.content()) return;  // came twice
  std::int64_t highest = 0;
  {
    Rows rows = m_database.query("SELECT COALESCE(MAX(number), 0) FROM programme");
    if (rows.next()) highest = rows.number(0);
  }
  if (static_cast<std::int64_t>(programme->number()) <= highest) {
    refuse(v1::RECORD_KIND_PROGRAMME, programme->id(),
           "number: " + std::to_string(programme->number()) + " is not over " + std::to_string(highest));
    // The hub gives it a number that can count.
    noteArrived(v1::RECEIPT_OF_OVERTAKEN_PROGRAMME, programme->id(), static_cast<std::uint64_t>(highest));
    return;
  }
  const int added = m_database.run(
      "INSERT INTO programme (number, id, content, signature, key_id) "
      "VALUES (?1, ?2, seal(?3, 'programme', ?1), ?4, ?5) "
      "ON CONFLICT DO NOTHING",
      programme->number(), programme->id(), Blob{signed_programme.content()},
      Blob{signed_programme.signature()}, signed_programme.key_id());
  if (added == 0) {
    refuse(v1::RECORD_KIND_PROGRAMME, programme->id(), "id: another programme has it");
    return;
  }
  noteArrived(v1::RECEIPT_OF_PROGRAMME, programme->id(), programme->number());
  m_news.programme = true;
}

void Inbox::takeHoldOrder(const v1::SignedHoldOrder& signed_order) {
  const auto order = openHoldOrder(signed_order, m_settings.clinic_key);
  if (!order.ok()) {
    refuse(v1::RECORD_KIND_HOLD_ORDER, "", words(order.status()));
    return;
  }
  if (order->person_id() != m_person_id) {
    refuse(v1::RECORD_KIND_HOLD_ORDER, order->id(), "person_id: another person");
    return;
  }
  if (isBroken(Broken::CompareDeviceClocks) && toTime(order->issued_at()) > m_now) return;
  // The stream and Fetch may bring two orders in either order, so a smaller number is kept too: which holds
  // stand follows from the numbers, not from when they came. A number that another order has is no reason to
  // refuse either: a restored hub may give it again, and what must stop somebody counts.
  const auto same = contentWith(
      m_database, "SELECT unseal(content, 'hold_order', id) FROM hold_order WHERE id = ?", order->id());
  if (same == signed_order.content()) return;
  if (same.has_value()) {
    refuse(v1::RECORD_KIND_HOLD_ORDER, order->id(), "id: another order has it");
    return;
  }
  m_database.run(
      "INSERT INTO hold_order (id, number, content, signature, key_id) "
      "VALUES (?1, ?2, seal(?3, 'hold_order', ?1), ?4, ?5)",
      order->id(), order->number(), Blob{signed_order.content()}, Blob{signed_order.signature()},
      signed_order.key_id());
  noteArrived(v1::RECEIPT_OF_HOLD_ORDER, order->id(), order->number());
  m_news.hold_orders.push_back(*order);
}

void Inbox::takeMessage(const v1::Envelope& envelope) {
  v1::Message message;
  if (!message.ParseFromString(envelope.content())) {
    refuse(v1::RECORD_KIND_MESSAGE, envelope.id(), "content: not to be read");
    return;
  }
  const absl::Status good = check(message);
  if (!good.ok() || message.person_id() != m_person_id) {
    refuse(v1::RECORD_KIND_MESSAGE, message.id(), good.ok() ? "person_id: another person" : words(good));
    return;
  }
  const int added = m_database.run(
      "INSERT INTO message (id, content) VALUES (?1, seal(?2, 'message', ?1)) ON CONFLICT DO NOTHING",
      message.id(), Blob{envelope.content()});
  if (added == 0 || message.sender() != v1::SENDER_CLINIC) return;
  noteArrived(v1::RECEIPT_OF_MESSAGE, message.id(), 0);
  m_news.messages.push_back(std::move(message));
}

void Inbox::takePerson(const v1::Envelope& envelope) {
  v1::Person person;
  v1::Person known;
  known.ParseFromString(m_settings.person);
  if (!person.ParseFromString(envelope.content())) {
    refuse(v1::RECORD_KIND_PERSON, envelope.id(), "content: not to be read");
    return;
  }
  const absl::Status good = check(person);
  if (!good.ok() || person.id() != m_person_id) {
    refuse(v1::RECORD_KIND_PERSON, person.id(), good.ok() ? "id: another person" : words(good));
    return;
  }
  if (person.revision() <= known.revision()) return;
  m_settings.person = envelope.content();
  saveSetting(m_database, "person", m_settings.person);
  m_news.person = true;
}

void Inbox::takeClinicCard(const v1::Envelope& envelope) {
  v1::ClinicCard card;
  const bool read = card.ParseFromString(envelope.content());
  const absl::Status good = read ? check(card) : absl::InvalidArgumentError("content: not to be read");
  if (!good.ok()) {
    refuse(v1::RECORD_KIND_CLINIC_CARD, envelope.id(), words(good));
    return;
  }
  if (envelope.content() == m_settings.clinic) return;
  m_settings.clinic = envelope.content();
  saveSetting(m_database, "clinic", m_settings.clinic);
  m_news.person = true;
}

void Inbox::takeWear(const v1::Envelope& envelope) {
  v1::WearBlock block;
  const bool read = block.ParseFromString(envelope.content());
  absl::Status good = read ? check(block) : absl::InvalidArgumentError("content: not to be read");
  if (good.ok() && block.person_id() != m_person_id)
    good = absl::InvalidArgumentError("person_id: another person");
  if (!good.ok()) {
    refuse(v1::RECORD_KIND_WEAR_BLOCK, envelope.id(), words(good));
    return;
  }
  m_news.wear = newel::takeWearBlock(m_database, block) || m_news.wear;
}

void Inbox::takeMeasured(const v1::Envelope& envelope) {
  v1::Measure measure;
  const bool read = measure.ParseFromString(envelope.content());
  absl::Status good = read ? check(measure) : absl::InvalidArgumentError("content: not to be read");
  if (good.ok() && measure.person_id() != m_person_id)
    good = absl::InvalidArgumentError("person_id: another person");
  if (!good.ok()) {
    refuse(v1::RECORD_KIND_MEASURE, envelope.id(), words(good));
    return;
  }
  m_news.wear = newel::takeMeasure(m_database, measure) || m_news.wear;
}

void Inbox::refuse(v1::RecordKind kind, const std::string& id, const std::string& reason) {
  m_database.run("INSERT INTO refused (kind, id, reason, at) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING",
                 static_cast<int>(kind), id, reason, absl::ToUnixMicros(m_now));
}

void Inbox::noteArrived(v1::ReceiptOf of, const std::string& ref_id, std::uint64_t ref_number) {
  const v1::Receipt receipt =
      makeReceipt(m_new_id(), m_person_id, of, ref_id, ref_number, v1::RECEIPT_STATE_ARRIVED, m_now);
  if (addReceipt(m_database, receipt)) m_news.receipts = true;
}

std::vector<v1::Programme> keptProgrammes(Database& database) {
  std::vector<v1::Programme> programmes;
  Rows rows = database.query("SELECT unseal(content, 'programme', number) FROM programme ORDER BY number");
  while (rows.next()) {
    v1::Programme programme;
    if (programme.ParseFromString(rows.text(0))) programmes.push_back(std::move(programme));
  }
  return programmes;
}

std::vector<v1::Programme> newestProgrammes(Database& database, int most) {
  std::vector<v1::Programme> programmes;
  Rows rows = database.query(
      "SELECT unseal(content, 'programme', number) FROM programme ORDER BY number DESC LIMIT ?", most);
  while (rows.next()) {
    v1::Programme programme;
    if (programme.ParseFromString(rows.text(0))) programmes.push_back(std::move(programme));
  }
  return programmes;
}

std::vector<v1::HoldOrder> keptHoldOrders(Database& database) {
  std::vector<v1::HoldOrder> orders;
  Rows rows = database.query("SELECT unseal(content, 'hold_order', id) FROM hold_order ORDER BY number, id");
  while (rows.next()) {
    v1::HoldOrder order;
    if (order.ParseFromString(rows.text(0))) orders.push_back(std::move(order));
  }
  return orders;
}

std::vector<v1::Message> keptMessages(Database& database) {
  std::vector<v1::Message> messages;
  Rows rows = database.query("SELECT try_unseal(content, 'message', id) FROM message ORDER BY place");
  while (rows.next()) {
    v1::Message message;
    if (!rows.isNull(0) && message.ParseFromString(rows.text(0))) messages.push_back(std::move(message));
  }
  return messages;
}

std::vector<v1::HoldOrder> activeAmong(const std::vector<v1::HoldOrder>& orders) {
  std::vector<v1::HoldOrder> active;
  for (const auto& order : orders) {
    if (!order.lifts_id().empty()) continue;
    bool lifted = false;
    for (const auto& other : orders) {
      lifted = lifted || (other.lifts_id() == order.id() && other.number() > order.number());
    }
    if (!lifted) active.push_back(order);
  }
  return active;
}

std::vector<RefusedArrival> refusedArrivals(Database& database) {
  std::vector<RefusedArrival> refused;
  Rows rows = database.query("SELECT kind, id, reason FROM refused ORDER BY at");
  while (rows.next()) {
    refused.push_back({static_cast<v1::RecordKind>(rows.number(0)), rows.text(1), rows.text(2)});
  }
  return refused;
}

v1::Receipt makeReceipt(const std::string& id, const std::string& person_id, v1::ReceiptOf of,
                        const std::string& ref_id, std::uint64_t ref_number, v1::ReceiptState state,
                        absl::Time at) {
  v1::Receipt receipt;
  receipt.set_id(id);
  receipt.set_person_id(person_id);
  receipt.set_of(of);
  receipt.set_ref_id(ref_id);
  receipt.set_ref_number(ref_number);
  receipt.set_state(state);
  *receipt.mutable_at() = toTimestamp(at);
  return receipt;
}

}  // namespace newel
