#include "tests/sync/hub/hub_program.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <thread>

#include "tests/sync/common/test_clinic.h"

extern char** environ;

namespace newel::test {
namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;

std::vector<std::string> words(const std::string& place, const std::vector<std::string>& command,
                               const std::vector<std::string>& options) {
  std::vector<std::string> all = {std::string(NEWEL_BINARY_DIR) + "/bin/newel-hub"};
  all.insert(all.end(), command.begin(), command.end());
  all.emplace_back(place.find("://") == std::string::npos ? "--data" : "--store");
  all.push_back(place);
  all.insert(all.end(), options.begin(), options.end());
  return all;
}

std::vector<std::string> environmentWith(const Environment& more) {
  std::vector<std::string> all;
  for (char** one = environ; *one != nullptr; ++one) all.emplace_back(*one);
  for (const auto& [name, value] : more) all.push_back(name + "=" + value);
  return all;
}

std::vector<char*> pointers(std::vector<std::string>& texts) {
  std::vector<char*> all;
  for (auto& text : texts) all.push_back(text.data());
  all.push_back(nullptr);
  return all;
}

pid_t start(std::vector<std::string> arguments, const Environment& more, const std::string& out,
            const std::string& err) {
  std::vector<std::string> environment = environmentWith(more);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
  posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
  posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
  pid_t child = 0;
  EXPECT_EQ(posix_spawn(&child, arguments[0].c_str(), &actions, nullptr, pointers(arguments).data(),
                        pointers(environment).data()),
            0);
  posix_spawn_file_actions_destroy(&actions);
  return child;
}

int codeOf(int status) { return WIFSIGNALED(status) ? 128 + WTERMSIG(status) : WEXITSTATUS(status); }

}  // namespace

std::string fileText(const std::string& path) {
  std::ifstream stream(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

Ended runHub(const std::string& place, const std::vector<std::string>& command,
             const std::vector<std::string>& options, const Environment& environment) {
  const TempFolder folder;
  const pid_t child =
      start(words(place, command, options), environment, folder.path("out"), folder.path("err"));
  int status = 0;
  waitpid(child, &status, 0);
  return {codeOf(status), fileText(folder.path("out")), fileText(folder.path("err"))};
}

ServedHub::ServedHub(const std::string& place, const std::string& folder,
                     const std::vector<std::string>& options, const Environment& environment)
    : m_folder(folder) {
  const std::string port_file = folder + "/port";
  fs::remove(port_file);
  std::vector<std::string> all = {"--port-file", port_file};
  all.insert(all.end(), options.begin(), options.end());
  m_pid = start(words(place, {"serve"}, all), environment, folder + "/out", folder + "/err");
  for (int i = 0; i < 1000 && m_pid != 0 && !fs::exists(port_file); ++i) {
    if (waitpid(m_pid, nullptr, WNOHANG) == m_pid) m_pid = 0;
    std::this_thread::sleep_for(milliseconds(10));
  }
  std::ifstream(port_file) >> m_port;
  EXPECT_GT(m_port, 0) << said() << logged();
}

ServedHub::~ServedHub() {
  if (m_pid == 0) return;
  kill(m_pid, SIGKILL);
  waitpid(m_pid, nullptr, 0);
}

void ServedHub::tell(int signal) const { kill(m_pid, signal); }

int ServedHub::wait(std::chrono::seconds most) {
  const auto until = std::chrono::steady_clock::now() + most;
  while (std::chrono::steady_clock::now() < until) {
    int status = 0;
    if (waitpid(m_pid, &status, WNOHANG) == m_pid) {
      m_pid = 0;
      return codeOf(status);
    }
    std::this_thread::sleep_for(milliseconds(10));
  }
  return -1;
}

int ServedHub::stop() {
  tell(SIGTERM);
  return wait(std::chrono::seconds(20));
}

std::string ServedHub::said() const { return fileText(m_folder + "/out"); }
std::string ServedHub::logged() const { return fileText(m_folder + "/err"); }

}  // namespace newel::test
