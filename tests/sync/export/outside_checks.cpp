#include "tests/sync/export/outside_checks.h"

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>

namespace newel::test {
namespace {

namespace fs = std::filesystem;

const fs::path kChecks = fs::path(NEWEL_SOURCE_DIR) / "tests/sync/export/checks";

struct Said {
  int code = -1;
  std::string text;
};

Said run(const std::string& command) {
  Said said;
  const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), [](FILE*) { return 0; });
  if (!pipe) return said;
  std::array<char, 65536> part{};
  while (const std::size_t size = fread(part.data(), 1, part.size(), pipe.get()))
    said.text.append(part.data(), size);
  const int status = pclose(pipe.get());
  said.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  return said;
}

}  // namespace

std::string whyNoOutsideChecks() {
  if (!fs::exists(kChecks / "node_modules/.package-lock.json"))
    return "the npm packages of tests/sync/export/checks are not installed: platform/linux/test does it";
  return run("node --version 2>&1").code == 0 ? "" : "there is no node on this machine";
}

std::vector<nlohmann::json> outsideCheck(const std::string& script, const std::vector<std::string>& lines) {
  const fs::path file =
      fs::temp_directory_path() / ("newel-checks-" + std::to_string(getpid()) + "-" +
                                   testing::UnitTest::GetInstance()->current_test_info()->name());
  {
    std::ofstream stream(file, std::ios::binary);
    for (const auto& line : lines) stream << line << '\n';
  }
  const std::string interpreter = script.ends_with(".py") ? "python3" : "node";
  const Said said = run(interpreter + " '" + (kChecks / script).string() + "' '" + file.string() + "'");
  fs::remove(file);
  EXPECT_EQ(said.code, 0) << said.text.substr(0, 2000);
  std::vector<nlohmann::json> found;
  std::istringstream stream(said.text);
  for (std::string line; std::getline(stream, line);)
    found.push_back(nlohmann::json::parse(line, nullptr, false));
  EXPECT_EQ(found.size(), lines.size());
  found.resize(lines.size());
  return found;
}

}  // namespace newel::test
