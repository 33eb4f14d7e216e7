// What a hub's word to desks says in place of a person's id when anybody's record may have changed. An empty
// id means only that the hub is still there. An older desk takes it for a person whom it does not know, and
// reads its list again.
#pragma once

namespace newel {

inline constexpr char kEverybody[] = "*";

}  // namespace newel
