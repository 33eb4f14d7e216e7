#include "sync/hub/postgres_writer.h"

#include "sync/hub/postgres_hub_transaction.h"

namespace newel {

// The lock comes before the first look: LOCK TABLE takes no snapshot (PostgreSQL 15, "Explicit Locking" and
// LOCK), so that everything an earlier writer committed is seen and two hubs never clash.
absl::Status PostgresWriter::beginOnce() {
  try {
    m_session->ensure();
    m_session->exec("BEGIN ISOLATION LEVEL REPEATABLE READ; LOCK TABLE writer IN EXCLUSIVE MODE");
    return absl::OkStatus();
  } catch (const PgError& error) {
    absl::Status status = noted(error);
    rollBack();
    return status;
  }
}

absl::Status PostgresWriter::begin() {
  m_news.clear();
  m_lost = m_clashed = false;
  absl::Status begun = beginOnce();
  // A connection that died while nobody used it shows itself here, before anything was done.
  if (!begun.ok() && !m_session->isOpen()) {
    m_lost = m_clashed = false;
    begun = beginOnce();
  }
  return begun;
}

absl::Status PostgresWriter::noted(const PgError& error) {
  m_clashed = m_clashed || newel::mayRunAgain(error);
  m_lost = m_lost || newel::mayRunAgain(error) || !m_session->isOpen();
  return statusOf(error);
}

absl::Status PostgresWriter::run(const WriteBody& body, bool alone) {
  absl::Status verdict;
  const auto takeBack = [&] {
    if (alone || m_lost) return;
    try {
      m_session->exec("ROLLBACK TO SAVEPOINT body");
    } catch (const PgError& error) {
      noted(error).IgnoreError();
      m_lost = true;
    }
  };
  try {
    if (!alone) m_session->exec("SAVEPOINT body");
    PostgresHubTransaction tables(*m_session);
    verdict = body(tables);
    if (verdict.ok()) {
      tables.finish();
      if (!alone) m_session->exec("RELEASE SAVEPOINT body");
      m_news.insert(tables.news().begin(), tables.news().end());
    }
  } catch (const PgError& error) {
    verdict = noted(error);
  } catch (...) {
    takeBack();
    throw;
  }
  if (!verdict.ok()) takeBack();
  return verdict;
}

void PostgresWriter::announce() {
  if (m_news.empty()) return;
  PgArray words = PgArray::ofText();
  for (const StoreNews& news : m_news) words.add(m_name + " " + textOf(news));
  m_session->query("SELECT pg_notify('newel_hub', word) FROM unnest(?::text[]) AS word", words);
}

absl::Status PostgresWriter::commit() {
  try {
    announce();
    m_session->commit();
    return absl::OkStatus();
  } catch (const PgError& error) {
    return noted(error);
  }
}

void PostgresWriter::rollBack() {
  try {
    if (m_session->isOpen()) m_session->exec("ROLLBACK");
  } catch (const PgError&) {
    // The server rolls back what it hears no more of.
  }
}

}  // namespace newel
