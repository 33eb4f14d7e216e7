#include "tests/bench/sound_server.h"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdint>
#include <cstdlib>

extern char** environ;

namespace newel::bench {
namespace {

constexpr int kLoud = 500;  // of 32767; a tone's first samples rise from nothing
constexpr std::chrono::seconds kPatience(8);

pid_t run(std::vector<std::string> arguments, int out) {
  std::vector<char*> argv;
  for (std::string& argument : arguments) argv.push_back(argument.data());
  argv.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  if (out >= 0) posix_spawn_file_actions_adddup2(&actions, out, STDOUT_FILENO);
  posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t pid = 0;
  const int failed = posix_spawnp(&pid, argv[0], &actions, nullptr, argv.data(), environ);
  posix_spawn_file_actions_destroy(&actions);
  return failed == 0 ? pid : 0;
}

}  // namespace

SoundServer::SoundServer() {
  m_folder = std::filesystem::temp_directory_path() / ("newel-sound-" + std::to_string(getpid()));
  std::filesystem::create_directories(m_folder);
  setenv("PULSE_SERVER", ("unix:" + (m_folder / "socket").string()).c_str(), 1);
  setenv("PULSE_RUNTIME_PATH", m_folder.c_str(), 1);
  if (!startServer() || !startRecorder()) m_problem = "no PulseAudio (pulseaudio, pulseaudio-utils)";
}

SoundServer::~SoundServer() {
  for (const pid_t pid : m_processes) {
    kill(pid, SIGKILL);
    waitpid(pid, nullptr, 0);
  }
  if (m_recorder.joinable()) m_recorder.join();
  std::error_code ignored;
  std::filesystem::remove_all(m_folder, ignored);
}

bool SoundServer::startServer() {
  const pid_t server = run(
      {"pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--disable-shm=true", "--use-pid-file=no",
       "-L", "module-native-protocol-unix auth-anonymous=1 socket=" + (m_folder / "socket").string(), "-L",
       "module-null-sink sink_name=nowhere"},
      -1);
  if (server == 0) return false;
  m_processes.push_back(server);
  const auto end = std::chrono::steady_clock::now() + kPatience;
  while (!std::filesystem::exists(m_folder / "socket")) {
    if (std::chrono::steady_clock::now() > end) return false;
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
  }
  return true;
}

bool SoundServer::startRecorder() {
  std::array<int, 2> pipe_ends{};
  if (pipe2(pipe_ends.data(), O_CLOEXEC) != 0) return false;
  const pid_t recorder = run({"parec", "--device=nowhere.monitor", "--format=s16le", "--channels=1",
                              "--rate=" + std::to_string(kRate), "--latency-msec=5", "--raw"},
                             pipe_ends[1]);
  close(pipe_ends[1]);
  if (recorder == 0) return false;
  m_processes.push_back(recorder);
  m_recorder = std::thread([this, from = pipe_ends[0]] { record(from); });
  return true;
}

// What was read last came out last: the first loud sample is dated back by what stands behind it.
void SoundServer::record(int from) {
  std::array<std::int16_t, 4096> samples{};
  for (;;) {
    const ssize_t bytes = read(from, samples.data(), sizeof(samples));
    if (bytes <= 0) break;
    const auto now = std::chrono::steady_clock::now().time_since_epoch();
    const auto count = static_cast<std::size_t>(bytes) / sizeof(std::int16_t);
    for (std::size_t i = 0; i < count; ++i) {
      if (std::abs(samples[i]) < kLoud) {
        ++m_silent_samples;
        continue;
      }
      m_silent_samples = 0;
      const auto behind = std::chrono::microseconds((count - i) * 1000000 / kRate);
      const auto at = std::chrono::duration_cast<std::chrono::microseconds>(now) - behind;
      std::int64_t none = 0;
      m_heard_us.compare_exchange_strong(none, at.count());
    }
  }
  close(from);
}

}  // namespace newel::bench
