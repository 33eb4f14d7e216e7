#include "core/figure/palette.h"

namespace newel {
namespace {

constexpr Colour hex(std::uint32_t rgb) {
  return {static_cast<std::uint8_t>(rgb >> 16), static_cast<std::uint8_t>(rgb >> 8),
          static_cast<std::uint8_t>(rgb)};
}

void setPerson(Palette& palette, const v1::Appearance& appearance) {
  switch (appearance.skin()) {
    case v1::SKIN_TONE_1:
      palette.skin = hex(0xEBC2A0);
      palette.hair = hex(0x6B4A2F);
      break;
    case v1::SKIN_TONE_3:
      palette.skin = hex(0x9C6842);
      palette.hair = hex(0x2B211E);
      break;
    case v1::SKIN_TONE_4:
      palette.skin = hex(0x6F4730);
      palette.hair = hex(0x1B1716);
      break;
    default:
      palette.skin = hex(0xC98F68);
      palette.hair = hex(0x3A2B26);
  }
}

}  // namespace

Palette lightPalette(const v1::Appearance& appearance) {
  Palette palette;
  palette.sheet = hex(0xFFFFFF);
  palette.ink = hex(0x1D2B2A);
  palette.soft = hex(0x55635F);
  palette.rail = hex(0x0B5A5E);
  palette.on_rail = hex(0xFFFFFF);
  palette.brass = hex(0x8A5A00);
  palette.pale_brass = hex(0xF3E3BC);
  palette.metal = hex(0xC9CCC6);
  palette.shirt = hex(0x80B2AD);
  palette.shorts = hex(0x2F4A54);
  palette.on_shorts = hex(0xFFFFFF);
  palette.shoe = hex(0x3C4A4C);
  palette.wood = hex(0xD9CDB4);
  palette.pale_wood = hex(0xE9E0CC);
  palette.wood_line = hex(0x7A6F58);
  palette.floor = hex(0xF1EADB);
  palette.floor_line = hex(0xDDD2BA);
  palette.cloth = hex(0x8D6A8A);
  setPerson(palette, appearance);
  return palette;
}

Palette darkPalette(const v1::Appearance& appearance) {
  Palette palette = lightPalette(appearance);
  palette.sheet = hex(0x1C2627);
  palette.ink = hex(0xF2EEE4);
  palette.soft = hex(0xB3BDB9);
  palette.rail = hex(0x6FD0CB);
  palette.on_rail = hex(0x12191A);
  palette.brass = hex(0x8A5A00);
  palette.pale_brass = hex(0xF0D9A0);
  palette.metal = hex(0x8E9792);
  palette.shirt = hex(0x3F7773);
  palette.shorts = hex(0x24404C);
  palette.shoe = hex(0x0F1516);
  palette.wood = hex(0x8A7C60);
  palette.pale_wood = hex(0x6C6250);
  palette.wood_line = hex(0xC9BC9C);
  palette.floor = hex(0x26302F);
  palette.floor_line = hex(0x46524F);
  return palette;
}

}  // namespace newel
