// Counts what reaches a phone, and waits for it.
#pragma once

#include <chrono>
#include <condition_variable>
#include <mutex>

#include "sync/home/home_engine.h"

namespace newel::test {

class Ears : public HomeEngine::Listener {
 public:
  void stateChanged() override {}
  void programmeChanged() override { count(m_programmes); }
  void holdOrderArrived(const v1::HoldOrder&) override { count(m_holds); }
  void messageArrived(const v1::Message&) override { count(m_messages); }
  // False when it did not come to `at_least` within ten seconds.
  bool holds(int at_least) { return waitFor(m_holds, at_least); }
  bool programmes(int at_least) { return waitFor(m_programmes, at_least); }
  bool messages(int at_least) { return waitFor(m_messages, at_least); }

 private:
  void count(int& what) {
    const std::lock_guard lock(m_mutex);
    ++what;
    m_changed.notify_all();
  }
  bool waitFor(const int& what, int at_least) {
    std::unique_lock lock(m_mutex);
    return m_changed.wait_for(lock, std::chrono::seconds(10), [&] { return what >= at_least; });
  }
  std::mutex m_mutex;
  std::condition_variable m_changed;
  int m_holds = 0;
  int m_programmes = 0;
  int m_messages = 0;
};

}  // namespace newel::test
