// A Drawing as an SVG file: text, no other library. Not here: how a drawing comes about (figure.h).
#pragma once

#include <string>

#include "core/figure/drawing.h"

namespace newel {

// A whole SVG 1.1 document, `width_px` wide, as high as the frame asks. `title` becomes its accessible name
// and `description` its accessible description (both may be empty).
std::string toSvg(const Drawing& drawing, double width_px, const std::string& title,
                  const std::string& description);

// Only the drawing's elements, for a larger document, to be put in an <svg> with this viewBox.
void appendSvg(std::string& out, const Drawing& drawing);
std::string svgViewBox(const Box& frame);

// `text` safe inside an element or an attribute.
std::string svgText(const std::string& text);

}  // namespace newel
