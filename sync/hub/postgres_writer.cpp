#include "sync/hub/postgres_writer.h"

#include "sync/hub/postgres_hub_transaction.h"

namespace newel {

// The lock comes before the first look: LOCK TABLE takes no snapshot (PostgreSQL 15, "Explicit Locking" and
// LOCK), so that everything an earlier writer committed is seen and two hubs never clash.
absl::Status PostgresWriter::beginOnce() {
  try {
    m_session->ensure();
    // In one question with the number that every write counts on from.
    auto counter = m_session->ask(
        "BEGIN ISOLATION LEVEL REPEATABLE READ; LOCK TABLE writer IN EXCLUSIVE MODE; "
        "SELECT value FROM counter WHERE one = 1");
    m_last_taken = counter.next() ? std::stoull(counter.text(0)) : 0;
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
      sendWhatWaits();
      m_session->exec("ROLLBACK TO SAVEPOINT body");
    } catch (const PgError& error) {
      noted(error).IgnoreError();
      m_lost = true;
    }
  };
  try {
    if (!alone) m_session->later("SAVEPOINT body");
    PostgresHubTransaction tables(*m_session, m_last_taken);
    verdict = body(tables);
    if (verdict.ok()) {
      tables.finish();
      // What waits is the body's own: it fails here, not in the next one's hands. One that is alone goes with
      // its commit.
      if (!alone) m_session->run("RELEASE SAVEPOINT body");
      m_last_taken = tables.lastTaken();
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

// The savepoint may be among it, and is gone back to.
void PostgresWriter::sendWhatWaits() {
  try {
    m_session->settle();
  } catch (const PgError&) {
    if (!m_session->isOpen()) throw;
  }
}

void PostgresWriter::announce() {
  if (m_news.empty()) return;
  PgArray words = PgArray::ofText();
  for (const StoreNews& news : m_news) words.add(m_name + " " + textOf(news));
  m_session->later("SELECT pg_notify('newel_hub', word) FROM unnest(?::text[]) AS word", words);
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
  m_session->forgetWaiting();
  try {
    if (m_session->isOpen()) m_session->exec("ROLLBACK");
  } catch (const PgError&) {
    // The server rolls back what it hears no more of.
  }
}

}  // namespace newel
