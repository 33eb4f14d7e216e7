// For programs of the build: proves a folder of data and writes it into one C++ file, so that the programs
// people run carry it inside. Bad data ends the build with "<file>:<line>: <reason>".
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <string>

namespace newel {

// The main of such a program: arguments are FOLDER and OUTPUT.cpp. `load` returns the bytes to embed, or what
// is wrong. Written are "const unsigned char <symbol>[]" and "const std::size_t <symbol>Size" in
// newel::embedded. Returns the exit code.
int embedMain(int argc, char** argv, const std::string& symbol,
              const std::function<absl::StatusOr<std::string>(const std::string& folder)>& load);

}  // namespace newel
