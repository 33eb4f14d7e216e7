#include "core/figure/sheet.h"

#include <algorithm>
#include <cstdio>

#include "core/figure/svg.h"
#include "core/library/wording.h"

namespace newel {
namespace {

constexpr double kCell = 300;
constexpr double kPicture = 284;
constexpr double kCaption = 34;

std::string format(const char* pattern, double a, double b, double c, double d) {
  char text[256];
  std::snprintf(text, sizeof text, pattern, a, b, c, d);
  return text;
}

// The drawing, as large as fits the cell, standing on its floor.
void place(std::string& out, const Drawing& drawing, double x, double y, bool dark) {
  const Box& frame = drawing.frame;
  const double scale = std::min(kPicture / frame.width(), kPicture / frame.height());
  // What surrounds the body goes on to the cell's edge.
  const auto half = static_cast<float>((kCell - 8) / 2 / scale);
  const float middle_x = (frame.left + frame.right) / 2;
  const float middle_y = (frame.top + frame.bottom) / 2;
  const Box seen{middle_x - half, middle_y - half, middle_x + half, middle_y + half};
  out += format("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"6\"", x + 4, y + 4,
                kCell - 8, kCell - 8);
  out += dark ? " fill=\"#1c2627\"/>\n" : " fill=\"#ffffff\"/>\n";
  out += format("<svg x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" ", x + 4, y + 4, kCell - 8,
                kCell - 8);
  out += "viewBox=\"" + svgViewBox(seen) + "\">\n";
  appendSvg(out, drawing);
  out += "</svg>\n";
}

FigureBody dressed(FigureBody body, v1::ProsthesisUse asked, v1::ProsthesisUse either) {
  const v1::ProsthesisUse use = asked == v1::PROSTHESIS_USE_EITHER ? either : asked;
  for (LimbState* limb : {&body.left, &body.right}) {
    limb->prosthesis_on = limb->lost() && use != v1::PROSTHESIS_USE_OFF;
  }
  return body;
}

}  // namespace

absl::StatusOr<std::string> figureSheet(const FigureBody& body, int poses, const std::string& language,
                                        const std::vector<std::string>& exercise_ids,
                                        v1::ProsthesisUse either, const FigureOptions& options,
                                        const Catalogue& catalogue, const ClipBook& clips) {
  std::vector<std::string> ids = exercise_ids;
  if (ids.empty()) {
    for (const v1::Clip& clip : clips.clips()) ids.push_back(clip.exercise_id());
  }
  const int columns = std::clamp(poses, 1, 6);
  const double width = columns * kCell;
  const double height = static_cast<double>(ids.size()) * (kCell + kCaption);
  std::string out = format(
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.0f %.0f\">\n",
      width, height, width, height);
  out += format("<rect x=\"0\" y=\"0\" width=\"%.0f\" height=\"%.0f\" fill=\"#faf6ee\"/>\n", width, height, 0,
                0);
  for (std::size_t row = 0; row < ids.size(); ++row) {
    const v1::Exercise* exercise = catalogue.find(ids[row]);
    if (exercise == nullptr)
      return absl::NotFoundError("exercise_id: there is no exercise \"" + ids[row] + "\"");
    absl::StatusOr<Figure> figure =
        Figure::make(ids[row], dressed(body, exercise->prosthesis(), either), options, catalogue, clips);
    if (!figure.ok()) return figure.status();
    const double y = static_cast<double>(row) * (kCell + kCaption);
    const std::vector<Moment> moments = figure->keyMoments(columns);
    for (std::size_t i = 0; i < moments.size(); ++i) {
      out += "<g role=\"img\" aria-label=\"" + svgText(figure->describe(moments[i], language)) + "\">\n";
      place(out, figure->draw(moments[i]), static_cast<double>(i) * kCell, y, options.dark);
      out += "</g>\n";
    }
    const v1::ExerciseWords* words = wordsOrEnglish(catalogue, ids[row], language);
    out += format(
        "<text x=\"%.0f\" y=\"%.0f\" font-family=\"Noto Sans, sans-serif\" font-size=\"%.0f\" "
        "fill=\"#1d2b2a\">",
        12, y + kCell + 18, 17, 0);
    out += svgText(words == nullptr ? ids[row] : words->title()) + "</text>\n";
  }
  return out + "</svg>\n";
}

}  // namespace newel
