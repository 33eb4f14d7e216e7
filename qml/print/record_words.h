// Words for the values of records, as a therapist and a sheet of paper say them: doses, sides, days, reasons.
// Shared by paper and desk. What an exercise says comes from the catalogue, what a rule says from the rule.
// Pure but for the translation that is installed; any thread.
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <QtCore/QString>
#include <QtCore/QStringList>

#include "core/library/catalogue.h"
#include "core/progress/adherence.h"
#include "core/records/identity.pb.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/rule.pb.h"

namespace newel::print {

QString text(const std::string& utf8);
std::string bytes(const QString& text);

// One value each, in lower case unless it is a name. "not given" for UNSPECIFIED and for values of a newer
// program.
QString words(v1::Side side);
QString words(v1::LimbLossLevel level);
QString words(v1::KneeKind knee);
QString words(v1::FootKind foot);
QString words(v1::MobilityLevel mobility);  // "K2"
QString words(v1::Condition condition);
QString words(v1::WalkingAid aid);
QString words(v1::Answer answer);
QString words(v1::Rails rails);
QString words(v1::Support support);
QString words(v1::ProsthesisUse use);  // "prosthesis on"
QString words(v1::SidePolicy policy);
QString words(v1::Weekday day);       // "Monday"
QString shortWords(v1::Weekday day);  // "Mon"
QString words(v1::StopReason reason);
QString words(v1::PracticeEnd end);
QString words(v1::ClockDoubt doubt);
QString words(v1::Effect effect);  // "Block"
QString words(OccasionResult::State state);

// "left, transfemoral", or "left transfemoral and right transtibial".
QString limbsWords(const v1::Person& person);
// "Lena Fisk"; the given name alone where there is no other.
QString fullName(const v1::Identity& identity);
// "2 sets of 8, hold 3 s", "10 minutes", "4 times up and down, 12 steps".
QString doseWords(const v1::Dose& dose);
// Everything about tempo and rest that doseWords() leaves out; may be empty.
QString paceWords(const v1::Dose& dose);
// "Mon, Wed, Fri", "every day", "3 times a week"; with times of day where the day is not whole.
QString scheduleWords(const v1::Schedule& schedule);
// "06:00 to 12:00".
QString windowWords(const v1::Window& window);
// "Stop if pain passes 5 of 10, or rises by 2 or more."
QString thresholdWords(const v1::StopThresholds& thresholds);
// Of holding still, as exact as it is useful: "45 s", "12 min" from two minutes on, "3 h 53 min" from two
// hours on.
QString heldWords(std::int64_t ms);
// What was done of a dose: "16 times, 48 s held".
QString doneWords(const v1::DoseCount& count);

// "Wed 25 Nov 2026".
QString dayWords(absl::CivilDay day);
QString dayWords(const std::string& local_day);  // as it stands when it is no day
// "Wed 25 Nov, 14:05".
QString momentWords(absl::Time instant, absl::TimeZone zone);
// "just now", "20 min", "5 h", "3 days".
QString ageWords(absl::Duration age);
// "83 %", or "nothing due".
QString percentWords(std::optional<double> share);

// Title of an exercise in the language, or English, or its id.
QString titleOf(const Catalogue& catalogue, const std::string& exercise_id, const std::string& language);

// The definition that stands on every report and beside every figure; see core/progress/adherence.h.
QString adherenceDefinition();
// What the whole is for and not for, one sentence a line; on every handout.
QStringList intendedUse();

}  // namespace newel::print
