#include "core/figure/svg.h"

#include <cstdio>

namespace newel {
namespace {

// SVG units in a body height: programs that show SVG round small type sizes to nothing.
constexpr double kUnits = 1000;

void number(std::string& out, double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", value);
  std::string digits = text;
  if (digits.back() == '0') digits.resize(digits.size() - 2);
  out += digits == "-0" ? "0" : digits;
}

void colour(std::string& out, Colour c) {
  char text[8];
  std::snprintf(text, sizeof text, "#%02x%02x%02x", c.r, c.g, c.b);
  out += text;
}

void path(std::string& out, const Drawing& drawing, const Op& op) {
  std::uint32_t point = op.first_point;
  const auto put = [&](int count) {
    for (int i = 0; i < count; ++i) {
      if (i > 0) out += ' ';
      number(out, drawing.points[point].x * kUnits);
      out += ' ';
      number(out, drawing.points[point].y * kUnits);
      ++point;
    }
  };
  for (std::uint32_t i = 0; i < op.verb_count; ++i) {
    switch (drawing.verbs[op.first_verb + i]) {
      case Verb::Move:
        out += 'M';
        put(1);
        break;
      case Verb::Line:
        out += 'L';
        put(1);
        break;
      case Verb::Cubic:
        out += 'C';
        put(3);
        break;
      case Verb::Close:
        out += 'Z';
        break;
    }
  }
}

void labelText(std::string& out, const Label& label, Colour ink) {
  out += "<text x=\"";
  number(out, label.at.x * kUnits);
  out += "\" y=\"";
  // Capitals are about 0.72 of the size high: half of that puts their middle on the point.
  number(out, (label.at.y + label.size * 0.36) * kUnits);
  out += "\" font-family=\"Noto Sans, sans-serif\" font-weight=\"700\" text-anchor=\"middle\" font-size=\"";
  number(out, label.size * kUnits);
  out += "\" fill=\"";
  colour(out, ink);
  out += "\">" + svgText(label.text) + "</text>\n";
}

}  // namespace

std::string svgText(const std::string& text) {
  std::string safe;
  for (const char c : text) {
    switch (c) {
      case '&':
        safe += "&amp;";
        break;
      case '<':
        safe += "&lt;";
        break;
      case '>':
        safe += "&gt;";
        break;
      case '"':
        safe += "&quot;";
        break;
      default:
        safe += c;
    }
  }
  return safe;
}

std::string svgViewBox(const Box& frame) {
  std::string out;
  for (const double value : {frame.left, frame.top, frame.width(), frame.height()}) {
    if (!out.empty()) out += ' ';
    number(out, value * kUnits);
  }
  return out;
}

void appendSvg(std::string& out, const Drawing& drawing) {
  for (const Op& op : drawing.ops) {
    if (op.kind == OpKind::Label) {
      labelText(out, drawing.labels[op.label], op.colour);
      continue;
    }
    out += "<path d=\"";
    path(out, drawing, op);
    if (op.kind == OpKind::Fill) {
      out += "\" fill=\"";
      colour(out, op.colour);
    } else {
      out += "\" fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\" stroke=\"";
      colour(out, op.colour);
      out += "\" stroke-width=\"";
      number(out, op.width * kUnits);
    }
    out += "\"/>\n";
  }
}

std::string toSvg(const Drawing& drawing, double width_px, const std::string& title,
                  const std::string& description) {
  const Box& frame = drawing.frame;
  std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"";
  number(out, width_px);
  out += "\" height=\"";
  number(out, width_px * frame.height() / frame.width());
  out += "\" viewBox=\"";
  out += svgViewBox(frame) + "\">\n<title>" + svgText(title) + "</title>\n<desc>" + svgText(description) +
         "</desc>\n";
  appendSvg(out, drawing);
  out += "</svg>\n";
  return out;
}

}  // namespace newel
