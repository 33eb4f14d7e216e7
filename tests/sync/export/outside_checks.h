// Runs a script of tests/sync/export/checks, which holds validators and readers that we did not write (npm).
#pragma once

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace newel::test {

// Node and what package-lock.json names are there; else why not, for GTEST_SKIP.
std::string whyNoOutsideChecks();

// `lines` into a file, `script` over it; one JSON value for each line that it says. Fails the test when it
// says less than one for each, or ends badly.
std::vector<nlohmann::json> outsideCheck(const std::string& script, const std::vector<std::string>& lines);

}  // namespace newel::test

// NOLINTNEXTLINE(cppcoreguidelines-macro-usage): GTEST_SKIP has to stand in the test itself.
#define NEWEL_NEEDS_OUTSIDE_CHECKS()                                               \
  do {                                                                             \
    if (const std::string why = newel::test::whyNoOutsideChecks(); !why.empty()) { \
      GTEST_SKIP() << why;                                                         \
    }                                                                              \
  } while (false)
