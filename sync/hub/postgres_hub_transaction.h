// HubTransaction over one PostgreSQL connection: the common SQL, and a note of what other processes have to
// hear of once it is committed.
#pragma once

#include <set>
#include <string>

#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"
#include "sync/hub/store_news.h"

namespace newel {

class PostgresHubTransaction : public SqlHubTransaction<PgSession> {
 public:
  explicit PostgresHubTransaction(PgSession& session, std::uint64_t last_taken = 0)
      : SqlHubTransaction(session, last_taken), m_session(session) {}

  const std::set<StoreNews>& news() const { return m_news; }
  void putSetting(const std::string& name, const std::string& value) override;
  void addToFeed(const std::string& person_id, const v1::Envelope& envelope, bool replace) override;
  void addHoldOrder(const SignedRow& row, std::uint64_t sequence) override;
  void addOwnExercise(const std::string& id, const VersionedRow& row) override;
  int markMessagesRead(const std::string& person_id, absl::Time at) override;
  std::vector<PracticeKept> practicesKept(const std::vector<PracticeKey>& keys) override;
  void addPractices(const std::vector<PracticeRow>& rows) override;
  void addReceipt(const ReceiptRow& row, std::uint64_t sequence, absl::Time at) override;
  void addDevice(const DeviceRow& row) override;
  void revokeDevice(const std::string& id) override;
  void endSession(const std::string& token_sha256) override;
  std::vector<std::string> endSessionsOf(const std::string& account_id, const std::string& kept) override;
  void setAssigned(const std::string& account_id, const std::string& person_id, bool assigned) override;
  void addOpening(const OpeningRow& row) override;
  void putSnooze(const std::string& person_id, const std::string& content) override;
  bool dropSnooze(const std::string& person_id) override;

 private:
  void note(StoreNews::Kind kind, const std::string& id) { m_news.insert({kind, id}); }

  PgSession& m_session;
  std::set<StoreNews> m_news;
};

}  // namespace newel
