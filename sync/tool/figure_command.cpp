#include <fstream>
#include <map>
#include <ostream>

#include "core/figure/audit.h"
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

absl::StatusOr<newel::FigureOptions> styleFrom(const FigureOptions& options) {
  newel::FigureOptions style;
  style.dark = options.dark;
  if (options.support.empty()) return style;
  const auto support = fromShortName(v1::Support_descriptor(), "--support", options.support);
  if (!support.ok()) return support.status();
  style.support = static_cast<v1::Support>(*support);
  return style;
}

absl::StatusOr<std::string> pictureFrom(const FigureOptions& options, const ClipBook& clips) {
  const auto body = bodyFrom(options);
  if (!body.ok()) return body.status();
  const auto style = styleFrom(options);
  if (!style.ok()) return style.status();
  const Catalogue& catalogue = Catalogue::builtIn();
  if (options.sheet) {
    std::vector<std::string> ids;
    if (!options.exercise.empty()) ids.push_back(options.exercise);
    return figureSheet(*body, kPosesOfASheet, options.language, ids, v1::PROSTHESIS_USE_ON, *style, catalogue,
                       clips);
  }
  auto figure = Figure::make(options.exercise, *body, *style, catalogue, clips);
  if (!figure.ok()) return figure.status();
  const auto moment = figure->momentOfRun(options.at);
  return toSvg(figure->draw(moment), kWidthPx, options.exercise, figure->describe(moment, options.language));
}

// The same fault on many bodies is one fault: the first body it was met on, and on how many.
void printAudit(const std::string& id, const AuditReport& report, std::ostream& out) {
  out << id << ": " << report.frames << " frames, " << report.findings.size() << " findings\n";
  std::map<std::string, std::pair<const AuditFinding*, int>> faults;
  for (const auto& finding : report.findings) {
    auto& [worst, count] = faults[finding.check + ": " + finding.what];
    if (worst == nullptr || finding.amount > worst->amount) worst = &finding;
    ++count;
  }
  for (const auto& [fault, met] : faults) {
    out << "  " << fault << ", worst " << met.first->amount << " at " << met.first->where << "; on "
        << met.second << (met.second == 1 ? " body\n" : " bodies\n");
  }
}

int runAudit(const FigureOptions& options, const ClipBook& clips, Output output) {
  bool clean = true;
  bool any = false;
  for (const auto& clip : clips.clips()) {
    if (!options.exercise.empty() && clip.exercise_id() != options.exercise) continue;
    const auto report = auditEveryBody(clip, *Catalogue::builtIn().find(clip.exercise_id()));
    printAudit(clip.exercise_id(), report, output.out);
    clean = clean && report.findings.empty();
    any = true;
  }
  if (!any) {
    return complain(output.err, absl::NotFoundError("\"" + options.exercise + "\" has no clip"));
  }
  return clean ? kFine : kSaysNo;
}

}  // namespace

int runFigure(const FigureOptions& options, Output output) {
  if (options.exercise.empty() && !options.sheet && !options.audit) {
    return complain(output.err, absl::InvalidArgumentError("figure: give an exercise, --sheet or --audit"));
  }
  const absl::StatusOr<ClipBook> clips =
      options.folder.empty() ? ClipBook::builtIn() : ClipBook::load(options.folder, Catalogue::builtIn());
  if (!clips.ok()) return complain(output.err, clips.status());
  if (options.audit) return runAudit(options, *clips, output);
  const auto picture = pictureFrom(options, *clips);
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
