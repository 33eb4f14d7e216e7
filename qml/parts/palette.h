// The colours, by role, and WCAG's formula for telling whether two of them may meet.
// Plain data, so that the theme, the painters and the tests read the same table. Not here: sizes (theme.h).
#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

namespace newel::parts {

// 0xRRGGBB, from design.md, "The look". `groove` is the empty rail: decoration that carries no meaning alone.
struct Palette {
  std::uint32_t paper, sheet, ink, soft, rail, brass, stop, good, groove;
};

inline constexpr Palette kLight = {0xFAF6EE, 0xFFFFFF, 0x1D2B2A, 0x55635F, 0x0B5A5E,
                                   0x8A5A00, 0xA3200D, 0x2B642B, 0xD9CFBB};
inline constexpr Palette kDark = {0x12191A, 0x1C2627, 0xF2EEE4, 0xB3BDB9, 0x6FD0CB,
                                  0xF0B95A, 0xFF8A73, 0x8FD28B, 0x3C4A4B};
// For who asks for more contrast: every text pair reaches 7 (WCAG 2.2 SC 1.4.6), and the groove 3.
inline constexpr Palette kLightStrong = {0xFFFFFF, 0xF1F1F1, 0x000000, 0x2C3835, 0x00454A,
                                         0x5A3800, 0x7A1200, 0x124A14, 0x7A7A7A};
inline constexpr Palette kDarkStrong = {0x000000, 0x181A1A, 0xFFFFFF, 0xD8DEDB, 0x8DEFEA,
                                        0xFFD480, 0xFFB5A6, 0xB6F2B0, 0x8C8C8C};

// WCAG 2.2, "relative luminance" and "contrast ratio" (1 to 21).
inline double luminance(std::uint32_t rgb) {
  const auto part = [rgb](int shift) {
    const double c = static_cast<double>((rgb >> shift) & 0xFFU) / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * part(16) + 0.7152 * part(8) + 0.0722 * part(0);
}
inline double contrast(std::uint32_t a, std::uint32_t b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::fmax(la, lb) + 0.05) / (std::fmin(la, lb) + 0.05);
}

// Every pair the theme allows for text: words in the first on the second. All reach 4.5, in the strong
// palettes 7.
struct Pair {
  const char* name;
  std::uint32_t text, ground;
};
inline std::vector<Pair> textPairs(const Palette& p) {
  return {{"ink on paper", p.ink, p.paper},     {"ink on sheet", p.ink, p.sheet},
          {"soft on paper", p.soft, p.paper},   {"soft on sheet", p.soft, p.sheet},
          {"rail on paper", p.rail, p.paper},   {"rail on sheet", p.rail, p.sheet},
          {"brass on paper", p.brass, p.paper}, {"brass on sheet", p.brass, p.sheet},
          {"stop on paper", p.stop, p.paper},   {"stop on sheet", p.stop, p.sheet},
          {"good on paper", p.good, p.paper},   {"good on sheet", p.good, p.sheet},
          {"paper on rail", p.paper, p.rail},   {"paper on stop", p.paper, p.stop},
          {"paper on brass", p.paper, p.brass}, {"paper on good", p.paper, p.good},
          {"paper on ink", p.paper, p.ink}};
}

}  // namespace newel::parts
