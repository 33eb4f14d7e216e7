// newel-hub itself, as its own process, over the store of the test (test_store.h).
#pragma once

#include <sys/types.h>

#include <chrono>
#include <map>
#include <string>
#include <vector>

namespace newel::test {

struct Ended {
  int code = -1;  // exit code; 128 and the signal's number when a signal ended it
  std::string out;
  std::string err;
};

using Environment = std::map<std::string, std::string>;  // beside the test's own

// `place`: TestStore::address(). The words before its option, then those after: {"audit", "verify"}, place,
// {...}.
Ended runHub(const std::string& place, const std::vector<std::string>& command,
             const std::vector<std::string>& options = {}, const Environment& environment = {});

// `newel-hub serve`; ended (SIGKILL) with this unless it was before.
class ServedHub {
 public:
  // `folder`: the test's own, for the port and what the program says. Fails the test when nothing is served
  // within ten seconds.
  ServedHub(const std::string& place, const std::string& folder, const std::vector<std::string>& options = {},
            const Environment& environment = {});
  ~ServedHub();
  ServedHub(const ServedHub&) = delete;
  ServedHub& operator=(const ServedHub&) = delete;

  int port() const { return m_port; }
  std::string address() const { return "127.0.0.1:" + std::to_string(m_port); }
  pid_t pid() const { return m_pid; }
  void tell(int signal) const;  // and goes on
  // Waits for its end, at most `most`; the exit code as in Ended, -1 when it runs on.
  int wait(std::chrono::seconds most);
  // SIGTERM and wait(): the exit code.
  int stop();
  std::string said() const;    // standard output so far
  std::string logged() const;  // standard error so far

 private:
  std::string m_folder;
  int m_port = 0;
  pid_t m_pid = 0;
};

std::string fileText(const std::string& path);

}  // namespace newel::test
