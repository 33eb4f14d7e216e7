// What one hub process tells the others on the same database: that something is there, never what it says.
#pragma once

#include <compare>
#include <optional>
#include <string>

namespace newel {

struct StoreNews {
  enum class Kind {
    Hold,       // id: hold order; first, because nothing is more urgent
    Feed,       // id: person, or empty for everybody
    Desks,      // id: person, or empty
    Device,     // id: a device that lost its access
    Session,    // id: SHA-256 of a session that ended, in hexadecimal
    Everything  // the line to the others was down: anything may have happened meanwhile
  };
  Kind kind = Kind::Everything;
  std::string id;
  // clang-tidy takes the compiler's own comparison for a null pointer.
  auto operator<=>(const StoreNews&) const = default;  // NOLINT(modernize-use-nullptr)
};

// "feed 0193..." and back. Everything is never sent.
std::string textOf(const StoreNews& news);
std::optional<StoreNews> newsFrom(const std::string& text);

}  // namespace newel
