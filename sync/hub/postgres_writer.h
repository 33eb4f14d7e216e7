// The one writing connection of a PostgreSQL store, as GroupCommit drives it.
#pragma once

#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include "sync/hub/group_commit.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/store_news.h"

namespace newel {

class PostgresWriter : public CommitEngine {
 public:
  // `name` marks what this process announces, so that it does not listen to itself.
  PostgresWriter(std::unique_ptr<PgSession> session, std::string name)
      : m_session(std::move(session)), m_name(std::move(name)) {}

  absl::Status begin() override;
  absl::Status run(const WriteBody& body, bool alone) override;
  bool isLost() override { return m_lost; }
  absl::Status commit() override;
  void rollBack() override;
  bool mayRunAgain() override { return m_clashed; }

 private:
  absl::Status beginOnce();
  absl::Status noted(const PgError& error);
  void announce();
  void sendWhatWaits();

  std::unique_ptr<PgSession> m_session;
  const std::string m_name;
  std::set<StoreNews> m_news;
  std::uint64_t m_last_taken = 0;  // of the hub's one sequence
  bool m_lost = false;
  bool m_clashed = false;
};

}  // namespace newel
