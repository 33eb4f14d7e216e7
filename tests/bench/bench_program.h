// A program of ours as its own process, told what to do by lines and watched from outside.
#pragma once

#include <sys/types.h>

#include <string>
#include <vector>

namespace newel::bench {

class BenchProgram {
 public:
  // Throws std::runtime_error when it cannot be started.
  explicit BenchProgram(std::vector<std::string> arguments);
  ~BenchProgram();  // closes its input and waits
  BenchProgram(const BenchProgram&) = delete;
  BenchProgram& operator=(const BenchProgram&) = delete;

  void write(const std::string& line);
  // The next line; throws when the program ended.
  std::string read();
  std::string ask(const std::string& line) {
    write(line);
    return read();
  }

  // Memory of its own and its share of what it shares, /proc/PID/smaps_rollup "Pss".
  double memoryMb() const;
  // How often its threads have been woken up so far: voluntary context switches.
  long wakeUps() const;
  double processorSeconds() const;

 private:
  pid_t m_pid = 0;
  int m_in = -1;
  int m_out = -1;
  std::string m_rest;
};

}  // namespace newel::bench
