// Words on the home screens for values of records: doses, supports, sides, contact, dates. What an exercise
// says comes from the catalogue; what a rule says from the rule; this is the rest.
// Pure but for the translation that is installed; UI thread.
#pragma once

#include <absl/status/status.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <QtCore/QString>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/timeline.pb.h"
#include "sync/home/home_engine.h"

namespace newel::home {

// "2 sets of 8, hold 3 seconds", "10 minutes", "4 times up and down, 12 steps".
QString doseWords(const v1::Dose& dose);
// "both hands hold on"; from the catalogue.
QString supportWords(const Catalogue& catalogue, v1::Support support, const std::string& language);
// What an entry needs beside the body, to be fetched before.
QStringList equipmentWords(const Catalogue& catalogue, const v1::Entry& entry, const std::string& language);
// "prosthesis on" or "prosthesis off".
QString prosthesisWords(v1::ProsthesisUse use);
// "left leg, prosthesis"; empty where the beat has no one side.
QString sideWords(const Catalogue& catalogue, const v1::Beat& beat, const v1::Timeline& timeline);
// Short words for a reason, as on its button.
QString reasonWords(v1::StopReason reason);
// What may have happened, to be chosen from: maps "id" (number), "words".
QVariantList reasonRows(const std::vector<v1::StopReason>& reasons);
QVariantList happenedReasons();
// When an entry is due: "every day", "Monday, Wednesday, Friday", "3 times a week".
QString rhythmWords(const v1::Schedule& schedule);

// "from 08:00 to 12:00", or "at any time of day".
QString windowWords(const v1::Window& window);
// Minutes after midnight as the place writes a time: "18:30".
QString clockWords(int minute_of_day);

// Whole minutes, rounded up, at least 1 where there is anything to do.
int minutesOf(std::int64_t milliseconds);
QString minutesWords(int minutes);
// A local day in the way of the place: "Wednesday, 25 November 2026".
QString dayWords(absl::CivilDay day);
QString timeWords(absl::Time instant, absl::TimeZone zone);
// "today at 14:05" or the day and the time.
QString momentWords(absl::Time instant, absl::TimeZone zone, absl::CivilDay today);

// What became of what is to be sent: "Everything has reached the clinic.", "2 records are kept on this phone
// and will be sent." and the like; with the reason where contact failed.
QString contactWords(const HomeState& state, absl::TimeZone zone, absl::CivilDay today);
QString problemWords(const std::string& key);
// An error in words for the person: what happened and what to do.
QString errorWords(const absl::Status& status);

QString text(const std::string& utf8);

}  // namespace newel::home
