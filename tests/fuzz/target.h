// One fuzz target: what every program here implements, as libFuzzer calls it. With clang the library drives
// it (NEWEL_LIBFUZZER); with any other compiler driver.cpp does, over the same kept corpus.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

// Whatever `data` is, it returns 0; a crash, a sanitizer's word or abort() is a fault found.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace newel::fuzz {

// The first byte chooses (by remainder), the rest is the input.
struct Input {
  std::size_t choice = 0;
  std::string rest;
};
Input split(const std::uint8_t* data, std::size_t size);

// Ends the program with `what` when a promise does not hold.
void require(bool holds, const char* what);

}  // namespace newel::fuzz
