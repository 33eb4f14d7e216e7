// A PulseAudio server of the bench's own with a sink that leads nowhere, and what comes out of that sink.
// The server's clock is the machine's; a loudspeaker's own way after the server is not in it.
#pragma once

#include <sys/types.h>

#include <atomic>
#include <chrono>
#include <filesystem>
#include <string>
#include <thread>
#include <vector>

namespace newel::bench {

class SoundServer {
 public:
  // Sets PULSE_SERVER of this process. `problem()` is not empty where there is no PulseAudio.
  SoundServer();
  ~SoundServer();
  SoundServer(const SoundServer&) = delete;
  SoundServer& operator=(const SoundServer&) = delete;

  const std::string& problem() const { return m_problem; }
  // From now on the next loud sample is waited for.
  void listen() { m_heard_us = 0; }
  // When it came out; the epoch when none has yet.
  std::chrono::steady_clock::time_point heard() const {
    return std::chrono::steady_clock::time_point(std::chrono::microseconds(m_heard_us.load()));
  }
  bool silent() const { return m_silent_samples > kSilence; }

 private:
  static constexpr int kRate = 48000;
  static constexpr long kSilence = kRate / 5;
  bool startServer();
  bool startRecorder();
  void record(int from);

  std::filesystem::path m_folder;
  std::string m_problem;
  std::vector<pid_t> m_processes;
  std::thread m_recorder;
  std::atomic<std::int64_t> m_heard_us = 0;
  std::atomic<long> m_silent_samples = 0;
};

}  // namespace newel::bench
