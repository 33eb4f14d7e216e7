#include "sync/hub/postgres_hub_transaction.h"

#include "sync/common/text_codes.h"

namespace newel {

using Common = SqlHubTransaction<PgSession>;
using Kind = StoreNews::Kind;

// The writer's lock lets nobody else of us take any meanwhile, so one look and one note do for a whole batch;
// a stranger who moves the counter in between is a clash, and everything is run again.
std::uint64_t PostgresHubTransaction::takeSequence() {
  if (m_last_taken == 0) {
    auto rows = m_session.query("SELECT value FROM counter WHERE one = 1");
    if (rows.next()) m_last_taken = static_cast<std::uint64_t>(rows.number(0));
  }
  return ++m_last_taken;
}

void PostgresHubTransaction::finish() {
  if (m_last_taken > 0) m_session.run("UPDATE counter SET value = ? WHERE one = 1", m_last_taken);
}

void PostgresHubTransaction::putSetting(const std::string& name, const std::string& value) {
  Common::putSetting(name, value);
  note(Kind::Desks, "");
}

void PostgresHubTransaction::addToFeed(const std::string& person_id, const v1::Envelope& envelope,
                                       bool replace) {
  Common::addToFeed(person_id, envelope, replace);
  note(Kind::Feed, person_id);
}

void PostgresHubTransaction::addHoldOrder(const SignedRow& row, std::uint64_t sequence) {
  Common::addHoldOrder(row, sequence);
  note(Kind::Hold, row.id);
}

void PostgresHubTransaction::addOwnExercise(const std::string& id, const VersionedRow& row) {
  Common::addOwnExercise(id, row);
  note(Kind::Desks, "");
}

int PostgresHubTransaction::markMessagesRead(const std::string& person_id, absl::Time at) {
  const int marked = Common::markMessagesRead(person_id, at);
  if (marked > 0) note(Kind::Desks, person_id);
  return marked;
}

void PostgresHubTransaction::addPractice(const PracticeRow& row) {
  Common::addPractice(row);
  note(Kind::Desks, row.person_id);
}

void PostgresHubTransaction::addReceipt(const ReceiptRow& row, std::uint64_t sequence, absl::Time at) {
  Common::addReceipt(row, sequence, at);
  note(Kind::Desks, row.person_id);
}

void PostgresHubTransaction::addDevice(const DeviceRow& row) {
  Common::addDevice(row);
  note(Kind::Desks, row.person_id);
}

void PostgresHubTransaction::revokeDevice(const std::string& id) {
  Common::revokeDevice(id);
  note(Kind::Device, id);
}

void PostgresHubTransaction::endSession(const std::string& token_sha256) {
  Common::endSession(token_sha256);
  note(Kind::Session, toHex(token_sha256));
}

std::vector<std::string> PostgresHubTransaction::endSessionsOf(const std::string& account_id,
                                                               const std::string& kept) {
  auto ended = Common::endSessionsOf(account_id, kept);
  for (const auto& session : ended) note(Kind::Session, toHex(session));
  return ended;
}

// Whoever lost the person has to look again too, so it is news to every desk.
void PostgresHubTransaction::setAssigned(const std::string& account_id, const std::string& person_id,
                                         bool assigned) {
  Common::setAssigned(account_id, person_id, assigned);
  note(Kind::Desks, "");
}

void PostgresHubTransaction::addOpening(const OpeningRow& row) {
  Common::addOpening(row);
  note(Kind::Desks, row.person_id);
}

}  // namespace newel
