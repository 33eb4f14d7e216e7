// Hears what other hub processes commit to the same database, on a connection and a thread of its own.
#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <string>
#include <thread>

#include "sync/hub/postgres_session.h"
#include "sync/hub/store_news.h"

namespace newel {

class PostgresListener {
 public:
  // From here on `heard` is called from this object's thread. `name`: whose own words are left out. After the
  // line was down, Everything is told once it is back.
  PostgresListener(std::unique_ptr<PgSession> session, std::string name,
                   std::function<void(const StoreNews&)> heard);
  ~PostgresListener();  // waits for a call under way
  PostgresListener(const PostgresListener&) = delete;
  PostgresListener& operator=(const PostgresListener&) = delete;

 private:
  void work();
  void hearOnce();
  void comeBack();
  void tell(const std::string& payload);

  std::unique_ptr<PgSession> m_session;
  const std::string m_name;
  const std::function<void(const StoreNews&)> m_heard;
  std::atomic<bool> m_stop{false};
  std::thread m_thread;
};

}  // namespace newel
