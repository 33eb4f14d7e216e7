// The figure's colours. Ink, rail, brass and the papers are the project's own roles; the rest is the
// figure's.
#pragma once

#include <cmath>

#include "core/figure/drawing.h"
#include "core/records/clip.pb.h"

namespace newel {

// `share` of `other` in `colour`, 0 to 1.
inline Colour mixed(Colour colour, Colour other, double share) {
  const auto part = [share](std::uint8_t a, std::uint8_t b) {
    return static_cast<std::uint8_t>(std::lround(a + (b - a) * share));
  };
  return {part(colour.r, other.r), part(colour.g, other.g), part(colour.b, other.b)};
}

struct Palette {
  Colour sheet;       // what the figure stands on; far limbs are mixed toward it
  Colour ink;         // outlines
  Colour soft;        // letters, thin lines
  Colour rail;        // marks, rails
  Colour on_rail;     // letters on a mark
  Colour brass;       // hatching of a socket
  Colour pale_brass;  // the socket itself
  Colour metal;       // pylon, ankle
  Colour shirt;
  Colour shorts;
  Colour on_shorts;  // letters on the shorts
  Colour shoe;
  Colour wood;
  Colour pale_wood;
  Colour wood_line;
  Colour floor;
  Colour floor_line;
  Colour cloth;  // scarf, towel
  Colour skin;
  Colour hair;
};

Palette lightPalette(const v1::Appearance& appearance);
Palette darkPalette(const v1::Appearance& appearance);

}  // namespace newel
