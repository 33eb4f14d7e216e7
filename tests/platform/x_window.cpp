#include "tests/platform/x_window.h"

#include <X11/Xlib.h>

namespace newel::platform {
namespace {

Window find(Display* display, Window from, const std::string& name) {
  XWindowAttributes attributes;
  char* own = nullptr;
  const bool named = XFetchName(display, from, &own) != 0 && own != nullptr && name == own;
  if (own != nullptr) XFree(own);
  if (named && XGetWindowAttributes(display, from, &attributes) != 0 && attributes.map_state == IsViewable)
    return from;
  Window root = 0;
  Window parent = 0;
  Window* children = nullptr;
  unsigned count = 0;
  Window found = 0;
  if (XQueryTree(display, from, &root, &parent, &children, &count) != 0 && children != nullptr) {
    for (unsigned i = 0; i < count && found == 0; ++i) found = find(display, children[i], name);
    XFree(children);
  }
  return found;
}

}  // namespace

bool closeXWindow(const std::string& display_name, const std::string& name) {
  Display* const display = XOpenDisplay(display_name.c_str());
  if (display == nullptr) return false;
  const Window window = find(display, DefaultRootWindow(display), name);
  if (window != 0) {
    XEvent event = {};
    event.xclient.type = ClientMessage;
    event.xclient.window = window;
    event.xclient.message_type = XInternAtom(display, "WM_PROTOCOLS", False);
    event.xclient.format = 32;
    event.xclient.data.l[0] = static_cast<long>(XInternAtom(display, "WM_DELETE_WINDOW", False));
    event.xclient.data.l[1] = CurrentTime;
    XSendEvent(display, window, False, NoEventMask, &event);
    XSync(display, False);
  }
  XCloseDisplay(display);
  return window != 0;
}

}  // namespace newel::platform
