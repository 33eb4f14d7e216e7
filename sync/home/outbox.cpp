#include "sync/home/outbox.h"

#include <map>

#include "core/records/record_text.h"
#include "sync/common/broken_variant.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"

namespace newel {
namespace {

// An envelope's own fields beside its content, rounded up generously.
constexpr std::size_t kEnvelopeBytes = 256;

bool isQueued(Database& database, v1::RecordKind kind, const std::string& id, std::uint32_t revision) {
  Rows rows = database.query("SELECT 1 FROM outbox WHERE kind = ? AND id = ? AND revision = ?",
                             static_cast<int>(kind), id, revision);
  return rows.next();
}

std::uint64_t count(Database& database, bool set_aside) {
  Rows rows = database.query("SELECT COUNT(*) FROM outbox WHERE set_aside = ?", set_aside ? 1 : 0);
  return rows.next() ? static_cast<std::uint64_t>(rows.number(0)) : 0;
}

std::vector<v1::Envelope> everything(Database& database) {
  std::vector<v1::Envelope> envelopes;
  {
    Rows rows = database.query(
        isBroken(Broken::OfferFirstRevision)
            ? "SELECT id, revision, try_unseal(content, 'practice', id, revision) FROM practice "
              "WHERE revision = 1 ORDER BY kept"
            : "SELECT id, revision, try_unseal(content, 'practice', id, revision) FROM practice AS p "
              "WHERE revision = (SELECT MAX(revision) FROM practice WHERE id = p.id) ORDER BY kept");
    while (rows.next()) {
      if (rows.isNull(2)) continue;
      envelopes.push_back(makeEnvelope(v1::RECORD_KIND_PRACTICE, rows.text(0),
                                       static_cast<std::uint32_t>(rows.number(1)), rows.text(2)));
    }
  }
  {
    Rows rows = database.query(
        "SELECT id, revision, try_unseal(content, 'wear_block', id, revision) FROM wear_block AS w "
        "WHERE revision = (SELECT MAX(revision) FROM wear_block WHERE id = w.id) ORDER BY id");
    while (rows.next()) {
      if (rows.isNull(2)) continue;
      envelopes.push_back(makeEnvelope(v1::RECORD_KIND_WEAR_BLOCK, rows.text(0),
                                       static_cast<std::uint32_t>(rows.number(1)), rows.text(2)));
    }
  }
  {
    Rows rows = database.query(
        "SELECT id, try_unseal(content, 'receipt', of, ref_id, state) FROM receipt ORDER BY state, id");
    while (rows.next())
      if (!rows.isNull(1))
        envelopes.push_back(makeEnvelope(v1::RECORD_KIND_RECEIPT, rows.text(0), 1, rows.text(1)));
  }
  Rows rows = database.query("SELECT id, try_unseal(content, 'message', id) FROM message ORDER BY place");
  while (rows.next()) {
    v1::Message message;
    if (rows.isNull(1) || !message.ParseFromString(rows.text(1)) || message.sender() != v1::SENDER_PERSON)
      continue;
    envelopes.push_back(makeEnvelope(v1::RECORD_KIND_MESSAGE, rows.text(0), 1, rows.text(1)));
  }
  return envelopes;
}

}  // namespace

void queueRecord(Database& database, const v1::Envelope& envelope) {
  database.run(
      "INSERT INTO outbox (kind, id, revision, content, sha256) VALUES (?1, ?2, ?3, "
      "seal(?4, 'outbox', ?1, ?2, ?3), seal(?5, 'outbox.sha256', ?1, ?2, ?3))",
      static_cast<int>(envelope.kind()), envelope.id(), envelope.revision(), Blob{envelope.content()},
      Blob{envelope.sha256()});
}

std::vector<v1::Envelope> nextPage(Database& database, std::uint64_t after_sequence) {
  std::vector<v1::Envelope> page;
  std::size_t bytes = 0;
  Rows rows = database.query(
      "SELECT sequence, kind, id, revision, try_unseal(content, 'outbox', kind, id, revision), "
      "try_unseal(sha256, 'outbox.sha256', kind, id, revision) FROM outbox "
      "WHERE set_aside = 0 AND sequence > ? ORDER BY sequence LIMIT ?",
      after_sequence, kMostRecordsACall);
  // What cannot be opened any more goes out empty: the hub refuses it, and so it is set aside and shown.
  while (rows.next()) {
    v1::Envelope envelope;
    envelope.set_sequence(static_cast<std::uint64_t>(rows.number(0)));
    envelope.set_kind(static_cast<v1::RecordKind>(rows.number(1)));
    envelope.set_id(rows.text(2));
    envelope.set_revision(static_cast<std::uint32_t>(rows.number(3)));
    envelope.set_content(rows.text(4));
    envelope.set_sha256(rows.text(5));
    bytes += envelope.content().size() + kEnvelopeBytes;
    if (!page.empty() && bytes > kMostOfferBytes) break;
    page.push_back(std::move(envelope));
  }
  return page;
}

PageResult applyOutcomes(Database& database, const std::vector<v1::Envelope>& sent,
                         const v1::OfferReply& reply) {
  std::map<std::uint64_t, const v1::OutcomeOf*> outcomes;
  for (const auto& outcome : reply.outcomes()) outcomes[outcome.sequence()] = &outcome;
  PageResult result;
  for (const auto& envelope : sent) {
    const auto found = outcomes.find(envelope.sequence());
    const bool fits = found != outcomes.end() && found->second->id() == envelope.id() &&
                      found->second->revision() == envelope.revision();
    switch (fits ? found->second->outcome() : v1::OUTCOME_LATER) {
      case v1::OUTCOME_KEPT:
      case v1::OUTCOME_KNOWN:
      case v1::OUTCOME_OUTDATED:
        if (isBroken(Broken::AcknowledgeById)) {
          database.run("DELETE FROM outbox WHERE id = ?", envelope.id());
        }
        database.run("DELETE FROM outbox WHERE sequence = ?", envelope.sequence());
        ++result.gone;
        break;
      case v1::OUTCOME_REFUSED:
        database.run("UPDATE outbox SET set_aside = 1, reason = ? WHERE sequence = ?",
                     found->second->reason(), envelope.sequence());
        ++result.set_aside;
        break;
      default:
        if (isBroken(Broken::ClearWholePage)) {
          database.run("DELETE FROM outbox WHERE sequence = ?", envelope.sequence());
        }
        ++result.later;
    }
  }
  return result;
}

std::uint64_t queuedCount(Database& database) { return count(database, false); }
std::uint64_t setAsideCount(Database& database) { return count(database, true); }

Delivery deliveryOf(Database& database, const std::string& id) {
  Rows rows = database.query("SELECT MIN(set_aside) FROM outbox WHERE id = ?", id);
  if (!rows.next() || rows.isNull(0)) return Delivery::Arrived;
  return rows.number(0) == 0 ? Delivery::Waiting : Delivery::SetAside;
}

std::vector<SetAside> setAsideRecords(Database& database) {
  std::vector<SetAside> records;
  Rows rows = database.query(
      "SELECT kind, try_unseal(content, 'outbox', kind, id, revision), reason FROM outbox "
      "WHERE set_aside = 1 ORDER BY sequence");
  while (rows.next()) {
    records.push_back({static_cast<v1::RecordKind>(rows.number(0)), rows.text(1), rows.text(2)});
  }
  return records;
}

void queueEverythingAgain(Database& database) {
  // Receipts that wait go behind again: nothing is seen before it has arrived, whichever page is the last to
  // go.
  database.run("DELETE FROM outbox WHERE set_aside = 0 AND kind = ?",
               static_cast<int>(v1::RECORD_KIND_RECEIPT));
  for (const auto& envelope : everything(database)) {
    if (!isQueued(database, envelope.kind(), envelope.id(), envelope.revision()))
      queueRecord(database, envelope);
  }
}

bool hasReceipt(Database& database, v1::ReceiptOf of, const std::string& ref_id, v1::ReceiptState state) {
  Rows rows = database.query("SELECT 1 FROM receipt WHERE of = ? AND ref_id = ? AND state = ?",
                             static_cast<int>(of), ref_id, static_cast<int>(state));
  return rows.next();
}

bool addReceipt(Database& database, const v1::Receipt& receipt) {
  if (hasReceipt(database, receipt.of(), receipt.ref_id(), receipt.state())) return false;
  const std::string bytes = toBytes(receipt);
  database.run(
      "INSERT INTO receipt (of, ref_id, state, id, content) "
      "VALUES (?1, ?2, ?3, ?4, seal(?5, 'receipt', ?1, ?2, ?3))",
      static_cast<int>(receipt.of()), receipt.ref_id(), static_cast<int>(receipt.state()), receipt.id(),
      Blob{bytes});
  queueRecord(database, makeEnvelope(v1::RECORD_KIND_RECEIPT, receipt.id(), 1, bytes));
  return true;
}

}  // namespace newel
