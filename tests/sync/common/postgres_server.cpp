// One PostgreSQL server for all test programs of a run: starts it, prints its folder, and ends it when the
// input ends.
#include <iostream>
#include <string>

#include "tests/sync/common/test_postgres.h"

int main() {
  try {
    std::cout << newel::test::TestPostgres::server().folder() << std::endl;
    for (std::string line; std::getline(std::cin, line);) {
    }
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
  }
  return 0;
}
