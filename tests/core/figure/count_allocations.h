// Counts what this test program takes from the heap.
#pragma once

namespace newel {

long allocationsSoFar();

}  // namespace newel
