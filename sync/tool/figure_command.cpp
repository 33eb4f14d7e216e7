#include <fstream>
#include <ostream>

#include "core/figure/figure.h"
#include "core/figure/sheet.h"
#include "core/figure/svg.h"
#include "sync/tool/commands.h"
#include "sync/tool/person_options.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

constexpr double kWidthPx = 640;
constexpr int kPosesOfASheet = 3;

absl::StatusOr<FigureBody> bodyFrom(const FigureOptions& options) {
  const auto person = personFrom(options);
  if (!person.ok()) return person.status();
  const auto use = fromShortName(v1::ProsthesisUse_descriptor(), "--prosthesis", options.prosthesis);
  if (!use.ok()) return use.status();
  v1::Appearance plain;
  return bodyOf(*person, static_cast<v1::ProsthesisUse>(*use), plain);
}

absl::StatusOr<std::string> pictureFrom(const FigureOptions& options) {
  const auto body = bodyFrom(options);
  if (!body.ok()) return body.status();
  newel::FigureOptions style;
  style.dark = options.dark;
  if (options.sheet) {
    return figureSheet(*body, kPosesOfASheet, options.language, {}, v1::PROSTHESIS_USE_ON, style);
  }
  auto figure = Figure::make(options.exercise, *body, style);
  if (!figure.ok()) return figure.status();
  const auto moment = figure->momentOfRun(options.at);
  return toSvg(figure->draw(moment), kWidthPx, options.exercise, figure->describe(moment, options.language));
}

}  // namespace

int runFigure(const FigureOptions& options, Output output) {
  if (options.sheet != options.exercise.empty()) {
    return complain(output.err, absl::InvalidArgumentError("figure: give an exercise, or --sheet"));
  }
  const auto picture = pictureFrom(options);
  if (!picture.ok()) return complain(output.err, picture.status());
  if (options.out.empty()) {
    output.out << *picture;
    return kFine;
  }
  std::ofstream file(options.out, std::ios::binary);
  file << *picture;
  file.close();
  if (!file)
    return complain(output.err, absl::PermissionDeniedError("--out: " + options.out + " cannot be written"));
  output.out << options.out << '\n';
  return kFine;
}

}  // namespace newel::tool
