#include "tests/core/practice/timeline_text.h"

#include <algorithm>
#include <iomanip>
#include <sstream>

namespace newel::test {
namespace {

std::string lower(std::string name, const std::string& prefix) {
  name.erase(0, prefix.size());
  std::transform(name.begin(), name.end(), name.begin(), [](char c) {
    return c == '_' ? ' ' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  });
  return name;
}

std::string seconds(std::int64_t ms) {
  std::ostringstream out;
  out << ms / 1000;
  if (ms % 1000 != 0) out << "." << std::setw(3) << std::setfill('0') << ms % 1000;
  return out.str();
}

std::string legOf(const v1::Beat& beat) {
  if (beat.side() == v1::SIDE_UNSPECIFIED) return "-";
  return lower(v1::Side_Name(beat.side()), "SIDE_") + " " +
         lower(v1::LimbRole_Name(beat.role()), "LIMB_ROLE_");
}

std::string placeOf(const v1::Beat& beat) {
  std::string place = std::to_string(beat.set()) + "." + std::to_string(beat.repetition());
  if (beat.step() > 0) place += " step " + std::to_string(beat.step());
  return place;
}

}  // namespace

std::string timelineText(const v1::Timeline& timeline) {
  std::ostringstream out;
  out << timeline.title() << "\n"
      << timeline.support_words() << "\n"
      << "prosthesis " << lower(v1::ProsthesisUse_Name(timeline.prosthesis()), "PROSTHESIS_USE_")
      << (timeline.by_person() ? ", moves by tap" : "") << "\n"
      << "total " << seconds(timeline.total_ms()) << " s; asked: " << timeline.asked().repetitions()
      << " repetitions, " << seconds(timeline.asked().hold_ms()) << " s held, "
      << seconds(timeline.asked().active_ms()) << " s of work, in " << timeline.sets() << "\n\n";
  for (const v1::Beat& beat : timeline.beats()) {
    out << std::right << std::setw(5) << seconds(beat.start_ms()) << std::setw(4) << seconds(beat.length_ms())
        << "  " << std::left << std::setw(12) << lower(v1::BeatKind_Name(beat.kind()), "BEAT_KIND_")
        << std::setw(12) << placeOf(beat) << std::setw(17) << legOf(beat) << beat.spoken();
    if (beat.screen() != beat.spoken()) out << " | " << beat.screen();
    if (beat.last_of_set()) out << " <last one>";
    if (beat.ends_repetition()) out << " <counts>";
    out << "\n";
  }
  return out.str();
}

}  // namespace newel::test
