// Threads for the part of a call that waits: for the disk, for the database, for its turn. gRPC's own threads
// are few, carry every stream and every handshake, and must never stand still.
#pragma once

#include <condition_variable>
#include <cstddef>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

namespace newel {

// Thread-safe.
class CallPool {
 public:
  struct Limits {
    int threads = 1;
    std::size_t most_waiting = 0;        // jobs beside those under way
    std::size_t most_waiting_bytes = 0;  // of their requests together
  };
  explicit CallPool(const Limits& limits);
  ~CallPool();  // runs what waits, then ends
  CallPool(const CallPool&) = delete;
  CallPool& operator=(const CallPool&) = delete;

  // False when too much waits already: nothing is done with `job` then. First come, first served.
  bool post(std::function<void()> job, std::size_t bytes = 0);
  // Returns when nothing waits and nothing is under way.
  void drain();

 private:
  struct Job {
    std::function<void()> run;
    std::size_t bytes = 0;
  };
  void work();

  const Limits m_limits;
  std::mutex m_mutex;
  std::condition_variable m_something;
  std::condition_variable m_nothing;
  std::deque<Job> m_waiting;
  std::size_t m_bytes = 0;
  int m_under_way = 0;
  bool m_stop = false;
  std::vector<std::thread> m_threads;
};

}  // namespace newel
