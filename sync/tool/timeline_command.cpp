#include <functional>
#include <ostream>
#include <vector>

#include "core/library/catalogue.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "sync/tool/commands.h"
#include "sync/tool/person_options.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

// Of an entry that exists only on the command line.
constexpr char kEntryId[] = "00000000-0000-7000-8000-000000000002";

absl::Status setEnum(const google::protobuf::EnumDescriptor* type, const std::string& option,
                     const std::string& name, const std::function<void(int)>& set) {
  if (name.empty()) return absl::OkStatus();
  const auto value = fromShortName(type, option, name);
  if (!value.ok()) return value.status();
  set(*value);
  return absl::OkStatus();
}

// An option that was given replaces the dose's number; one that this kind of dose does not have is an error.
absl::Status applyDose(const TimelineOptions& options, v1::Dose& dose) {
  struct Option {
    const char* name;
    std::int64_t value;
    v1::Dose::KindCase kind;
    std::function<void(std::uint32_t)> set;
  };
  auto* sets = dose.has_sets() ? dose.mutable_sets() : nullptr;
  auto* minutes = dose.has_minutes() ? dose.mutable_minutes() : nullptr;
  auto* passes = dose.has_passes() ? dose.mutable_passes() : nullptr;
  const std::vector<Option> all = {
      {"--sets", options.sets, v1::Dose::kSets, [=](auto v) { sets->set_sets(v); }},
      {"--repetitions", options.repetitions, v1::Dose::kSets, [=](auto v) { sets->set_repetitions(v); }},
      {"--hold", options.hold_s, v1::Dose::kSets, [=](auto v) { sets->set_hold_s(v); }},
      {"--move", options.move_s, v1::Dose::kSets, [=](auto v) { sets->set_move_s(v); }},
      {"--return", options.return_s, v1::Dose::kSets, [=](auto v) { sets->set_return_s(v); }},
      {"--repetition-rest", options.repetition_rest_s, v1::Dose::kSets,
       [=](auto v) { sets->set_repetition_rest_s(v); }},
      {"--minutes", options.minutes, v1::Dose::kMinutes, [=](auto v) { minutes->set_minutes(v); }},
      {"--bouts", options.bouts, v1::Dose::kMinutes, [=](auto v) { minutes->set_bouts(v); }},
      {"--passes", options.passes, v1::Dose::kPasses, [=](auto v) { passes->set_passes(v); }},
      {"--distance", options.distance_m, v1::Dose::kPasses, [=](auto v) { passes->set_distance_m(v); }},
      {"--steps", options.step_count, v1::Dose::kPasses, [=](auto v) { passes->set_step_count(v); }},
      {"--step-seconds", options.step_s, v1::Dose::kPasses, [=](auto v) { passes->set_step_s(v); }},
  };
  for (const auto& option : all) {
    if (option.value < 0) continue;
    if (dose.kind_case() != option.kind) {
      return absl::InvalidArgumentError(std::string(option.name) + ": this exercise is not dosed that way");
    }
    option.set(static_cast<std::uint32_t>(option.value));
  }
  if (options.rest_s >= 0) {
    const auto rest = static_cast<std::uint32_t>(options.rest_s);
    if (sets != nullptr) sets->set_rest_s(rest);
    if (minutes != nullptr) minutes->set_rest_s(rest);
    if (passes != nullptr) passes->set_rest_s(rest);
  }
  return absl::OkStatus();
}

absl::Status applyRung(const v1::Exercise& exercise, const std::string& rung_id, v1::Entry& entry) {
  if (rung_id.empty()) return absl::OkStatus();
  std::string choices;
  for (const auto& rung : exercise.ladder()) {
    if (rung.id() == rung_id) {
      *entry.mutable_dose() = rung.dose();
      entry.set_support(rung.support());
      entry.set_rung_id(rung_id);
      return absl::OkStatus();
    }
    choices += (choices.empty() ? "" : ", ") + rung.id();
  }
  return absl::InvalidArgumentError("--rung: \"" + rung_id + "\" is none of " + choices);
}

absl::StatusOr<v1::Entry> entryFrom(const TimelineOptions& options, const Catalogue& catalogue) {
  if (!options.entry_file.empty()) return readRecord<v1::Entry>(options.entry_file);
  const v1::Exercise* exercise = catalogue.find(options.exercise);
  if (exercise == nullptr) return absl::NotFoundError("\"" + options.exercise + "\" is not in the catalogue");
  v1::Entry entry;
  entry.set_id(kEntryId);
  entry.set_exercise_id(exercise->id());
  entry.set_exercise_revision(exercise->revision());
  entry.set_side_policy(exercise->side_policies(0));
  *entry.mutable_dose() = exercise->default_dose();
  entry.set_support(exercise->supports(0));
  entry.set_prosthesis(exercise->prosthesis() == v1::PROSTHESIS_USE_OFF ? v1::PROSTHESIS_USE_OFF
                                                                        : v1::PROSTHESIS_USE_ON);
  entry.set_pacing(v1::PACING_TIMED);
  entry.mutable_schedule()->set_times_per_week(7);
  auto* window = entry.mutable_schedule()->add_windows();
  window->set_from_min(0);
  window->set_to_min(1440);
  if (auto status = applyRung(*exercise, options.rung, entry); !status.ok()) return status;
  if (auto status = applyDose(options, *entry.mutable_dose()); !status.ok()) return status;
  for (const auto& status :
       {setEnum(v1::Support_descriptor(), "--support", options.support,
                [&](int v) { entry.set_support(static_cast<v1::Support>(v)); }),
        setEnum(v1::SidePolicy_descriptor(), "--sides", options.policy,
                [&](int v) { entry.set_side_policy(static_cast<v1::SidePolicy>(v)); }),
        setEnum(v1::ProsthesisUse_descriptor(), "--prosthesis", options.prosthesis,
                [&](int v) { entry.set_prosthesis(static_cast<v1::ProsthesisUse>(v)); })}) {
    if (!status.ok()) return status;
  }
  return entry;
}

void printTable(const v1::Timeline& timeline, std::ostream& out) {
  out << timeline.title() << " (" << timeline.exercise_id() << "), words in " << timeline.language()
      << (timeline.fell_back() ? ", the asked language is incomplete" : "") << '\n'
      << "support: " << timeline.support_words() << '\n'
      << "prosthesis: " << shortName(v1::ProsthesisUse_descriptor(), timeline.prosthesis()) << '\n';
  Table table({"start", "length", "beat", "set", "rep", "step", "side", "limb", "screen", "voice"});
  for (const auto& beat : timeline.beats()) {
    table.row({clockText(beat.start_ms()), clockText(beat.length_ms()),
               shortName(v1::BeatKind_descriptor(), beat.kind()), std::to_string(beat.set()),
               beat.repetition() == 0 ? "-" : std::to_string(beat.repetition()),
               beat.step() == 0 ? "-" : std::to_string(beat.step()),
               shortName(v1::Side_descriptor(), beat.side()),
               shortName(v1::LimbRole_descriptor(), beat.role()), beat.screen(), beat.spoken()});
  }
  table.print(out);
  out << "total " << clockText(timeline.total_ms()) << ", " << timeline.asked().repetitions()
      << " repetitions, " << clockText(timeline.asked().hold_ms()) << " under hold, "
      << clockText(timeline.asked().active_ms()) << " active\n";
}

}  // namespace

int runTimeline(const TimelineOptions& options, Output output) {
  const auto person = personFrom(options);
  if (!person.ok()) return complain(output.err, person.status());
  const auto entry = entryFrom(options, Catalogue::builtIn());
  if (!entry.ok()) return complain(output.err, entry.status());
  const auto timeline = compileTimeline(*entry, *person, Catalogue::builtIn(), options.language);
  if (!timeline.ok()) return complain(output.err, timeline.status());
  if (output.json) {
    output.out << toJson(*timeline);
  } else {
    printTable(*timeline, output.out);
  }
  return kFine;
}

}  // namespace newel::tool
