#include "tests/sync/common/test_postgres.h"

#include <fcntl.h>
#include <pwd.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <stdexcept>
#include <string_view>
#include <thread>

#include "sync/common/real_random.h"
#include "sync/common/text_codes.h"
#include "sync/hub/postgres_session.h"

namespace newel::test {
namespace {

namespace fs = std::filesystem;

constexpr char kShared[] = "NEWEL_TEST_POSTGRES";
constexpr char kPrograms[] = "/usr/lib/postgresql";
constexpr int kStartTries = 600;  // of 100 ms: the machine may be busy

// The newest version that is installed, empty for none.
std::string programFolder() {
  std::vector<fs::path> found;
  std::error_code none;
  for (const auto& version : fs::directory_iterator(kPrograms, none)) {
    if (fs::exists(version.path() / "bin/initdb")) found.push_back(version.path() / "bin");
  }
  std::sort(found.begin(), found.end());
  return found.empty() ? "" : found.back().string();
}

// PostgreSQL does not run as root.
const passwd* somebodyElse() {
  const passwd* user = getpwnam("postgres");
  return user != nullptr ? user : getpwnam("nobody");
}

bool endedWell(pid_t child) {
  int status = 0;
  return waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

}  // namespace

TestPostgres& TestPostgres::server() {
  static TestPostgres postgres;
  return postgres;
}

void TestPostgres::serverOfItsOwn() { unsetenv(kShared); }

TestPostgres::TestPostgres() : m_programs(programFolder()), m_user(geteuid()), m_group(getegid()) {
  if (m_programs.empty()) {
    throw std::runtime_error(
        "PostgreSQL is not installed, and these tests need it: apt-get install postgresql "
        "(platform/linux/packages.txt)");
  }
  if (m_user == 0) {
    const passwd* user = somebodyElse();
    if (user == nullptr) throw std::runtime_error("there is no user to run PostgreSQL as");
    m_user = user->pw_uid;
    m_group = user->pw_gid;
  }
  if (const char* shared = std::getenv(kShared); shared != nullptr && *shared != '\0') {
    m_folder = shared;
    m_ours = false;
    return;
  }
  RealRandom random;
  m_folder = (fs::temp_directory_path() / ("newel-pg-" + toHex(randomBytes(random, 6)))).string();
  fs::create_directories(m_folder);
  if (chown(m_folder.c_str(), m_user, m_group) != 0) throw std::runtime_error("chown " + m_folder);
  fs::permissions(m_folder, fs::perms::owner_all);
  if (!endedWell(spawn("initdb", {"-D", m_folder + "/data", "-A", "trust", "-U", "newel", "-E", "UTF8",
                                  "--locale=C.UTF-8", "--no-sync"}))) {
    throw std::runtime_error("initdb failed in " + m_folder);
  }
  start();
}

TestPostgres::~TestPostgres() {
  if (!m_ours) return;
  if (m_server != 0) stop();
  std::error_code error;
  fs::remove_all(m_folder, error);
}

// The child dies with the thread that made it, so that no server outlives a test that was killed.
pid_t TestPostgres::spawn(const std::string& program, const std::vector<std::string>& arguments) const {
  const std::string path = m_programs + "/" + program;
  std::vector<char*> argv = {const_cast<char*>(path.c_str())};
  for (const std::string& argument : arguments) argv.push_back(const_cast<char*>(argument.c_str()));
  argv.push_back(nullptr);
  const std::string log = m_folder + "/log";
  const pid_t child = fork();
  if (child != 0) return child;
  if (geteuid() == 0 && (setgid(m_group) != 0 || setuid(m_user) != 0)) _exit(126);
  prctl(PR_SET_PDEATHSIG, SIGQUIT);
  const int out = open(log.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0600);
  dup2(out, STDOUT_FILENO);
  dup2(out, STDERR_FILENO);
  if (chdir("/") != 0) _exit(126);
  sigset_t none;
  sigemptyset(&none);
  sigprocmask(SIG_SETMASK, &none, nullptr);
  execv(path.c_str(), argv.data());
  _exit(127);
}

void TestPostgres::start() {
  m_server = spawn("postgres", {"-D", m_folder + "/data", "-k", m_folder, "-c", "listen_addresses=", "-c",
                                "max_connections=200"});
  for (int i = 0; i < kStartTries; ++i) {
    if (PgSession::open(address("postgres")).ok()) return;
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
  }
  throw std::runtime_error("PostgreSQL did not start; see " + m_folder + "/log");
}

void TestPostgres::stop() {
  if (!m_ours) throw std::runtime_error("this PostgreSQL is not this program's alone");
  kill(m_server, SIGQUIT);
  endedWell(m_server);
  m_server = 0;
}

std::string TestPostgres::address(const std::string& database) const {
  return "postgres:///" + database + "?user=newel&host=" + m_folder;
}

void TestPostgres::sql(const std::string& database, const char* statements) const {
  if (!m_ours && std::string_view(statements).find("ALTER SYSTEM") != std::string_view::npos) {
    throw std::runtime_error("this PostgreSQL is not this program's alone, and others would feel the change");
  }
  auto session = PgSession::open(address(database));
  if (!session.ok()) throw std::runtime_error(std::string(session.status().message()));
  (*session)->exec(statements);
}

std::string TestPostgres::newDatabase() {
  const std::string name = "clinic_" + std::to_string(getpid()) + "_" + std::to_string(++m_databases);
  sql("postgres", ("CREATE DATABASE " + name).c_str());
  return name;
}

void TestPostgres::dropDatabase(const std::string& name) {
  sql("postgres", ("DROP DATABASE IF EXISTS " + name + " WITH (FORCE)").c_str());
}

bool TestPostgres::run(const std::string& program, std::vector<std::string> arguments) const {
  arguments.insert(arguments.end(), {"-h", m_folder, "-U", "newel"});
  return endedWell(spawn(program, arguments));
}

}  // namespace newel::test
