#include "qml/home/square_reader.h"

#include <ZXing/ReadBarcode.h>
#include <ZXing/TextUtfEncoding.h>

namespace newel::home {

std::optional<std::string> readSquare(const platform::GreyPicture& picture) {
  if (picture.width <= 0 || picture.height <= 0) return std::nullopt;
  if (picture.pixels.size() !=
      static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height)) {
    return std::nullopt;
  }
  ZXing::DecodeHints hints;
  hints.setFormats(ZXing::BarcodeFormat::QRCode);
  const ZXing::Result result = ZXing::ReadBarcode(
      {picture.pixels.data(), picture.width, picture.height, ZXing::ImageFormat::Lum}, hints);
  if (!result.isValid()) return std::nullopt;
  return ZXing::TextUtfEncoding::ToUtf8(result.text());
}

}  // namespace newel::home
