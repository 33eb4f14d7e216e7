// Checks a record at the door: everything that came from disk, network or a person passes here before
// any other code sees it. Not here: whether an exercise is safe for a person (core/safety).
#pragma once

#include <absl/status/status.h>

#include <string>

#include "core/records/advice.pb.h"
#include "core/records/cert.pb.h"
#include "core/records/exercise.pb.h"
#include "core/records/identity.pb.h"
#include "core/records/measure.pb.h"
#include "core/records/measure_kind.pb.h"
#include "core/records/message.pb.h"
#include "core/records/own_exercise.pb.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/progression.pb.h"
#include "core/records/remark.pb.h"
#include "core/records/reminder.pb.h"
#include "core/records/rule.pb.h"
#include "core/records/setting.pb.h"
#include "core/records/template.pb.h"
#include "core/records/wear.pb.h"

namespace newel {

// Each returns OK, or kInvalidArgument whose message begins with the path of the first bad field, for
// example "entries[2].dose.sets.hold_s: 400 is over 120". An UNSPECIFIED enumeration where a value is
// required, an unknown enumeration value, an id that is not a UUID, a day that is not YYYY-MM-DD, an
// unknown zone name's form, a number out of the range the .proto states: all are refused.
// Unknown fields are NOT an error: a newer program may have written them, and they are kept.
absl::Status check(const v1::Person& person);
absl::Status check(const v1::Identity& identity);
absl::Status check(const v1::ClinicCard& card);
absl::Status check(const v1::Exercise& exercise);
absl::Status check(const v1::ExerciseWords& words);
absl::Status check(const v1::Dose& dose);
absl::Status check(const v1::Schedule& schedule);
absl::Status check(const v1::Entry& entry);
absl::Status check(const v1::Programme& programme);
absl::Status check(const v1::HoldOrder& order);
absl::Status check(const v1::Practice& practice);
absl::Status check(const v1::JournalLine& line);
absl::Status check(const v1::Message& message);
absl::Status check(const v1::Receipt& receipt);
absl::Status check(const v1::Measure& measure);
absl::Status check(const v1::Remark& remark);
absl::Status check(const v1::ReminderBook& book);
absl::Status check(const v1::Rule& rule);
absl::Status check(const v1::ReadyQuestion& question);
absl::Status check(const v1::SafetyWordFile& file);
absl::Status check(const v1::MeasureKind& kind);
absl::Status check(const v1::ProgressionPreset& preset);
absl::Status check(const v1::WearPlan& plan);
absl::Status check(const v1::WearBlock& block);
absl::Status check(const v1::WearLog& log);
absl::Status check(const v1::WearFile& file);
absl::Status check(const v1::CertTable& table);
absl::Status check(const v1::CertStatements& statements);
absl::Status check(const v1::AdviceCard& card);
absl::Status check(const v1::AdviceWords& words);
absl::Status check(const v1::SettingKind& kind);
// The form alone; whether a value is in its setting's range: fitsSettings() in core/library/settings.h.
absl::Status check(const v1::ClinicSettings& settings);
absl::Status check(const v1::Movement& movement);
// The form alone; that words and exercise fit together: core/library/own_exercises.h.
absl::Status check(const v1::OwnExercise& own);
// The form alone, of a starting template or a clinic's own (isOwnTemplate()); that exercises, rungs and doses
// exist: core/library/templates.h.
absl::Status check(const v1::ProgrammeTemplate& programme_template);

// A clinic's own has a UUID, a starting template a name for its id.
bool isOwnTemplate(const v1::ProgrammeTemplate& programme_template);

// True for an exercise that a clinic wrote: such ids begin with "own-", the catalogue's never do.
bool isOwnExerciseId(const std::string& id);

}  // namespace newel
