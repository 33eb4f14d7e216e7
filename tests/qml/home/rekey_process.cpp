// A phone whose store gets a new key again and again; whoever started this ends it at any moment. Secrets are
// files of a folder, so that they outlive it. With a number it ends itself, by SIGKILL, in the middle of that
// step of its work on the secrets.
#include <csignal>
#include <iostream>
#include <string>

#include "qml/home/store_key.h"
#include "tests/qml/home/folder_secret_store.h"
#include "tests/sync/common/test_clinic.h"

int main(int argc, char** argv) {
  if (argc < 3) return 2;
  newel::test::TestClock clock;
  newel::RealRandom random;
  newel::tests::FolderSecretStore secrets(argv[2]);
  const int die_at = argc > 3 ? std::stoi(argv[3]) : 0;
  newel::HomeEngine::Options options;
  options.folder = argv[1];
  options.clock = &clock;
  options.random = &random;
  options.app_version = "test 1";
  options.device_name = "phone";
  const bool in_file = argc > 4 && std::string(argv[4]) == "file";
  secrets.there = !in_file;
  const auto engine = newel::home::openWithKey(options, secrets, [] { return true; });
  if (!engine.ok()) {
    std::cout << "open " << engine.status() << std::endl;
    return 1;
  }
  secrets.dieAt(die_at);
  while (true) {
    std::cout << "changing" << std::endl;
    const absl::Status changed = newel::home::changeKey(**engine, options.folder, secrets, random);
    if (!changed.ok()) {
      std::cout << "change " << changed << std::endl;
      return 1;
    }
    std::cout << "changed" << std::endl;
  }
}
