#include "platform/memory.h"

#include <malloc.h>

namespace newel::platform {

void keepOneHeap() {
#ifdef M_ARENA_MAX  // GNU's malloc
  mallopt(M_ARENA_MAX, 1);
#endif
}

}  // namespace newel::platform
