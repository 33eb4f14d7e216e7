#include <cstdio>
#include <ostream>

#include "core/records/check.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "sync/tool/commands.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

std::string minuteText(std::uint32_t minute) {
  char text[16];
  std::snprintf(text, sizeof text, "%02u:%02u", minute / 60, minute % 60);
  return text;
}

std::string exerciseOf(const v1::Programme& programme, const std::string& entry_id) {
  for (const auto& entry : programme.entries()) {
    if (entry.id() == entry_id) return entry.exercise_id();
  }
  return "-";
}

}  // namespace

int runOccasions(const std::string& programme_file, const std::string& from, const std::string& to,
                 Output output) {
  const auto programme = readRecord<v1::Programme>(programme_file);
  if (!programme.ok()) return complain(output.err, programme.status());
  const auto first = parseLocalDay(from);
  if (!first.ok())
    return complain(output.err,
                    absl::InvalidArgumentError("--from: " + std::string(first.status().message())));
  const auto last = parseLocalDay(to);
  if (!last.ok())
    return complain(output.err, absl::InvalidArgumentError("--to: " + std::string(last.status().message())));
  const auto occasions = occasionsOf(*programme, *first, *last);
  if (!occasions.ok()) return complain(output.err, occasions.status());
  if (output.json) {
    output.out << '[';
    for (std::size_t i = 0; i < occasions->size(); ++i) {
      const auto& occasion = (*occasions)[i];
      output.out << (i == 0 ? "\n" : ",\n") << "{\"local_day\": \"" << occasion.ref.local_day()
                 << "\", \"window\": " << occasion.ref.window() << ", \"entry_id\": \""
                 << occasion.ref.entry_id() << "\", \"exercise_id\": \""
                 << exerciseOf(*programme, occasion.ref.entry_id())
                 << "\", \"from_min\": " << occasion.window.from_min()
                 << ", \"to_min\": " << occasion.window.to_min()
                 << ", \"any_day_of_week\": " << (occasion.any_day_of_week ? "true" : "false")
                 << ", \"excused\": " << (occasion.state == OccasionState::Excused ? "true" : "false") << '}';
    }
    output.out << "]\n";
    return kFine;
  }
  Table table({"day", "weekday", "window", "exercise", "state"});
  for (const auto& occasion : *occasions) {
    const auto day = parseLocalDay(occasion.ref.local_day());
    table.row({occasion.ref.local_day(), shortName(v1::Weekday_descriptor(), weekdayOf(*day)),
               minuteText(occasion.window.from_min()) + "-" + minuteText(occasion.window.to_min()),
               exerciseOf(*programme, occasion.ref.entry_id()),
               occasion.state == OccasionState::Excused ? "excused"
               : occasion.any_day_of_week               ? "due, any day of the week"
                                                        : "due"});
  }
  table.print(output.out);
  output.out << occasions->size() << " occasions\n";
  return kFine;
}

}  // namespace newel::tool
