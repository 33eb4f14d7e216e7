#include "tests/bench/bench_program.h"

#include <fcntl.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace newel::bench {
namespace {

constexpr std::size_t kRead = 4096;

// The number behind `key` in a file of "Key: number" lines; 0: not there.
long numberIn(const std::filesystem::path& file, const std::string& key) {
  std::ifstream stream(file);
  for (std::string line; std::getline(stream, line);) {
    if (line.rfind(key + ":", 0) == 0) return std::stol(line.substr(key.size() + 1));
  }
  return 0;
}

}  // namespace

BenchProgram::BenchProgram(std::vector<std::string> arguments) {
  std::array<int, 2> in{};
  std::array<int, 2> out{};
  if (pipe2(in.data(), O_CLOEXEC) != 0 || pipe2(out.data(), O_CLOEXEC) != 0) throw std::runtime_error("pipe");
  std::vector<char*> argv;
  argv.reserve(arguments.size() + 1);
  for (std::string& argument : arguments) argv.push_back(argument.data());
  argv.push_back(nullptr);
  m_pid = fork();
  if (m_pid == 0) {
    dup2(in[0], STDIN_FILENO);
    dup2(out[1], STDOUT_FILENO);
    const int nowhere = open("/dev/null", O_WRONLY);
    dup2(nowhere, STDERR_FILENO);
    execv(argv[0], argv.data());
    _exit(127);
  }
  close(in[0]);
  close(out[1]);
  m_in = in[1];
  m_out = out[0];
  if (m_pid < 0) throw std::runtime_error("fork");
}

BenchProgram::~BenchProgram() {
  close(m_in);
  int status = 0;
  waitpid(m_pid, &status, 0);
  close(m_out);
}

void BenchProgram::write(const std::string& line) {
  const std::string text = line + "\n";
  if (::write(m_in, text.data(), text.size()) != static_cast<ssize_t>(text.size())) {
    throw std::runtime_error("the program does not listen");
  }
}

std::string BenchProgram::read() {
  std::array<char, kRead> some{};
  while (m_rest.find('\n') == std::string::npos) {
    const ssize_t count = ::read(m_out, some.data(), some.size());
    if (count <= 0) throw std::runtime_error("the program ended");
    m_rest.append(some.data(), static_cast<std::size_t>(count));
  }
  const std::size_t end = m_rest.find('\n');
  std::string line = m_rest.substr(0, end);
  m_rest.erase(0, end + 1);
  return line;
}

double BenchProgram::memoryMb() const {
  return static_cast<double>(numberIn("/proc/" + std::to_string(m_pid) + "/smaps_rollup", "Pss")) / 1024;
}

long BenchProgram::wakeUps() const {
  long count = 0;
  for (const auto& task : std::filesystem::directory_iterator("/proc/" + std::to_string(m_pid) + "/task")) {
    count += numberIn(task.path() / "status", "voluntary_ctxt_switches");
  }
  return count;
}

double BenchProgram::processorSeconds() const {
  std::ifstream stream("/proc/" + std::to_string(m_pid) + "/stat");
  std::string field;
  std::getline(stream, field, ')');  // the name may hold spaces
  long user = 0;
  long system = 0;
  for (int i = 3; i <= 13; ++i) stream >> field;
  stream >> user >> system;
  return static_cast<double>(user + system) / static_cast<double>(sysconf(_SC_CLK_TCK));
}

}  // namespace newel::bench
