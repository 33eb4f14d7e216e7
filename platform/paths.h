// Where this machine keeps a program's files.
#pragma once

#include <string>

namespace newel::platform {

// The folder for `program`'s own data, for example ~/.local/share/<program>; not made here.
std::string dataFolder(const std::string& program);

}  // namespace newel::platform
