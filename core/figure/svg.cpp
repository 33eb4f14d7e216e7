#include "core/figure/svg.h"

#include <cmath>
#include <cstdio>

namespace newel {
namespace {

// Four digits after the point are a fifth of a millimetre on a person.
void number(std::string& out, double value) {
  char text[32];
  double rounded = std::round(value * 10000) / 10000;
  if (rounded == 0) rounded = 0;
  std::snprintf(text, sizeof text, "%.4f", rounded + 0.0);
  std::string digits = text;
  while (digits.back() == '0') digits.pop_back();
  if (digits.back() == '.') digits.pop_back();
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
      number(out, drawing.points[point].x);
      out += ' ';
      number(out, drawing.points[point].y);
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
  number(out, label.at.x);
  out += "\" y=\"";
  // Capitals are about 0.72 of the size high: half of that puts their middle on the point.
  number(out, label.at.y + label.size * 0.36);
  out += "\" font-family=\"Noto Sans, sans-serif\" font-weight=\"700\" text-anchor=\"middle\" font-size=\"";
  number(out, label.size);
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
      number(out, op.width);
    }
    out += "\"/>\n";
  }
}

std::string toSvg(const Drawing& drawing, double width_px, const std::string& title, const std::string& description) {
  const Box& frame = drawing.frame;
  std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"";
  number(out, width_px);
  out += "\" height=\"";
  number(out, width_px * frame.height() / frame.width());
  out += "\" viewBox=\"";
  for (const double value : {frame.left, frame.top, frame.width(), frame.height()}) {
    number(out, value);
    out += ' ';
  }
  out.back() = '"';
  out += ">\n<title>" + svgText(title) + "</title>\n<desc>" + svgText(description) + "</desc>\n";
  appendSvg(out, drawing);
  out += "</svg>\n";
  return out;
}

}  // namespace newel
