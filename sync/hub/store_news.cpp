#include "sync/hub/store_news.h"

#include <array>
#include <utility>

namespace newel {
namespace {

constexpr std::array<std::pair<StoreNews::Kind, const char*>, 5> kWords = {
    {{StoreNews::Kind::Hold, "hold"},
     {StoreNews::Kind::Feed, "feed"},
     {StoreNews::Kind::Desks, "desks"},
     {StoreNews::Kind::Device, "device"},
     {StoreNews::Kind::Session, "session"}}};

}  // namespace

std::string textOf(const StoreNews& news) {
  for (const auto& [kind, word] : kWords) {
    if (kind == news.kind) return std::string(word) + " " + news.id;
  }
  return "";
}

std::optional<StoreNews> newsFrom(const std::string& text) {
  const std::size_t space = text.find(' ');
  if (space == std::string::npos) return std::nullopt;
  for (const auto& [kind, word] : kWords) {
    if (text.compare(0, space, word) == 0) return StoreNews{kind, text.substr(space + 1)};
  }
  return std::nullopt;
}

}  // namespace newel
