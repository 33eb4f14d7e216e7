#include "sync/hub/postgres_listener.h"

#include <chrono>
#include <utility>

namespace newel {
namespace {

constexpr int kWaitMs = 100;  // how soon it sees that it should end
constexpr auto kBackOff = std::chrono::milliseconds(250);

}  // namespace

PostgresListener::PostgresListener(std::unique_ptr<PgSession> session, std::string name,
                                   std::function<void(const StoreNews&)> heard)
    : m_session(std::move(session)), m_name(std::move(name)), m_heard(std::move(heard)) {
  try {
    m_session->exec("LISTEN newel_hub");
  } catch (const PgError&) {
    // work() finds the line down and brings it back.
  }
  m_thread = std::thread([this] { work(); });
}

PostgresListener::~PostgresListener() {
  m_stop = true;
  m_thread.join();
}

void PostgresListener::work() {
  while (!m_stop) {
    if (m_session->isOpen()) {
      hearOnce();
    } else {
      comeBack();
    }
  }
}

void PostgresListener::hearOnce() {
  try {
    for (const PgNotice& notice : m_session->notices(kWaitMs)) {
      if (m_stop) return;
      tell(notice.payload);
    }
  } catch (const PgError&) {
    // isOpen() says so to work().
  }
}

void PostgresListener::comeBack() {
  try {
    m_session->ensure();
    m_session->exec("LISTEN newel_hub");
    m_heard({StoreNews::Kind::Everything, ""});
  } catch (const PgError&) {
    std::this_thread::sleep_for(kBackOff);
  }
}

// "<name of the process> <news>"
void PostgresListener::tell(const std::string& payload) {
  const std::size_t space = payload.find(' ');
  if (space == std::string::npos || payload.compare(0, space, m_name) == 0) return;
  if (const auto news = newsFrom(payload.substr(space + 1))) m_heard(*news);
}

}  // namespace newel
