// Counts what this test program takes from the heap.
#pragma once

namespace newel {

// -1 where a sanitizer keeps the heap for itself and nothing is counted.
long allocationsSoFar();

}  // namespace newel
