// Closes a window of another program on an X server, as the cross in its corner does.
#pragma once

#include <string>

namespace newel::platform {

// Sends WM_DELETE_WINDOW (ICCCM 4.2.8.1) to the visible window of that name. False: there is none, or no
// server.
bool closeXWindow(const std::string& display, const std::string& name);

}  // namespace newel::platform
