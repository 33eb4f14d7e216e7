#include "qml/print/record_words.h"

#include <QtCore/QDateTime>
#include <QtCore/QLocale>
#include <algorithm>
#include <cmath>

#include "core/library/wording.h"
#include "core/time/local_day.h"
#include "qml/print/sheet_html.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

QString seconds(std::uint32_t count) { return sheetWords("RecordWords", "%1 s").arg(count); }

QString timesOf(int count) {
  return count == 1 ? sheetWords("RecordWords", "1 time") : sheetWords("RecordWords", "%1 times").arg(count);
}

QString setsWords(const v1::SetsDose& dose) {
  QString words = dose.sets() == 1
                      ? sheetWords("RecordWords", "1 set of %1").arg(dose.repetitions())
                      : sheetWords("RecordWords", "%1 sets of %2").arg(dose.sets()).arg(dose.repetitions());
  if (dose.hold_s() > 0) words += sheetWords("RecordWords", ", hold %1").arg(seconds(dose.hold_s()));
  return words;
}

QString passesWords(const v1::PassesDose& dose) {
  if (dose.length_case() == v1::PassesDose::kStepCount) {
    return sheetWords("RecordWords", "%1 up and down, %2 steps")
        .arg(timesOf(static_cast<int>(dose.passes())))
        .arg(dose.step_count());
  }
  return sheetWords("RecordWords", "%1 there and back, %2 m")
      .arg(timesOf(static_cast<int>(dose.passes())))
      .arg(dose.distance_m());
}

QString minutesWords(const v1::MinutesDose& dose) {
  const QString minutes = dose.minutes() == 1 ? sheetWords("RecordWords", "1 minute")
                                              : sheetWords("RecordWords", "%1 minutes").arg(dose.minutes());
  return dose.bouts() <= 1 ? minutes
                           : sheetWords("RecordWords", "%1 times %2").arg(dose.bouts()).arg(minutes);
}

QString clockTime(std::uint32_t minutes) {
  return QStringLiteral("%1:%2")
      .arg(minutes / 60, 2, 10, QLatin1Char('0'))
      .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

}  // namespace

QString text(const std::string& utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}
std::string bytes(const QString& text) { return text.toStdString(); }

QString limbsWords(const v1::Person& person) {
  if (person.limbs_size() == 1) {
    return sheetWords("RecordWords", "%1, %2")
        .arg(words(person.limbs(0).side()), words(person.limbs(0).level()));
  }
  QStringList limbs;
  for (const auto& limb : person.limbs())
    limbs << words(limb.side()) + QLatin1Char(' ') + words(limb.level());
  return limbs.join(sheetWords("RecordWords", " and "));
}

QString fullName(const v1::Identity& identity) {
  return (text(identity.given_name()) + QLatin1Char(' ') + text(identity.family_name())).trimmed();
}

QString doseWords(const v1::Dose& dose) {
  switch (dose.kind_case()) {
    case v1::Dose::kSets:
      return setsWords(dose.sets());
    case v1::Dose::kMinutes:
      return minutesWords(dose.minutes());
    case v1::Dose::kPasses:
      return passesWords(dose.passes());
    case v1::Dose::KIND_NOT_SET:
      break;
  }
  return sheetWords("RecordWords", "no dose");
}

QString paceWords(const v1::Dose& dose) {
  QStringList parts;
  if (dose.has_sets()) {
    const auto& sets = dose.sets();
    parts
        << sheetWords("RecordWords", "%1 out, %2 back").arg(seconds(sets.move_s()), seconds(sets.return_s()));
    if (sets.repetition_rest_s() > 0)
      parts << sheetWords("RecordWords", "%1 between").arg(seconds(sets.repetition_rest_s()));
    if (sets.sets() > 1)
      parts << sheetWords("RecordWords", "rest %1 between sets").arg(seconds(sets.rest_s()));
  } else if (dose.has_minutes() && dose.minutes().bouts() > 1) {
    parts << sheetWords("RecordWords", "rest %1 between").arg(seconds(dose.minutes().rest_s()));
  } else if (dose.has_passes()) {
    parts << sheetWords("RecordWords", "%1 a step").arg(seconds(dose.passes().step_s()));
    if (dose.passes().passes() > 1)
      parts << sheetWords("RecordWords", "rest %1 between").arg(seconds(dose.passes().rest_s()));
  }
  return joined(parts);
}

QString windowWords(const v1::Window& window) {
  return sheetWords("RecordWords", "%1 to %2").arg(clockTime(window.from_min()), clockTime(window.to_min()));
}

QString scheduleWords(const v1::Schedule& schedule) {
  QString words;
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    const auto times = static_cast<int>(schedule.times_per_week());
    words = sheetWords("RecordWords", "%n time(s) a week", nullptr, times);
  } else if (schedule.weekdays().days_size() == 7) {
    words = sheetWords("RecordWords", "every day");
  } else {
    std::vector<int> days(schedule.weekdays().days().begin(), schedule.weekdays().days().end());
    std::sort(days.begin(), days.end());
    QStringList names;
    for (const int day : days) names << shortWords(static_cast<v1::Weekday>(day));
    words = names.isEmpty() ? sheetWords("RecordWords", "no days") : joined(names);
  }
  QStringList windows;
  for (const auto& window : schedule.windows()) {
    if (window.from_min() > 0 || window.to_min() < 1440) windows << windowWords(window);
  }
  return windows.isEmpty()
             ? words
             : words + sheetWords("RecordWords", ", ") + windows.join(sheetWords("RecordWords", " and "));
}

QString thresholdWords(const v1::StopThresholds& thresholds) {
  return sheetWords("RecordWords", "Stop if pain passes %1 of 10, or rises by %2 or more.")
      .arg(thresholds.pain_stop_0_10())
      .arg(thresholds.pain_rise_0_10());
}

QString heldWords(std::int64_t ms) {
  const std::int64_t seconds = ms / 1000;
  if (seconds < 120) return sheetWords("RecordWords", "%1 s").arg(seconds);
  const std::int64_t minutes = (seconds + 30) / 60;
  if (minutes < 120) return sheetWords("RecordWords", "%1 min").arg(minutes);
  return sheetWords("RecordWords", "%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
}

QString doneWords(const v1::DoseCount& count) {
  QStringList parts;
  parts << timesOf(static_cast<int>(count.repetitions()));
  if (count.hold_ms() > 0) parts << sheetWords("RecordWords", "%1 held").arg(heldWords(count.hold_ms()));
  return joined(parts);
}

QString dayWords(absl::CivilDay day) {
  const QDate date(static_cast<int>(day.year()), day.month(), day.day());
  return plainDigits(sheetLocale().toString(date, QStringLiteral("ddd d MMM yyyy")));
}

QString dayWords(const std::string& local_day) {
  const auto day = parseLocalDay(local_day);
  return day.ok() ? dayWords(*day) : text(local_day);
}

QString momentWords(absl::Time instant, absl::TimeZone zone) {
  const absl::CivilMinute at = absl::ToCivilMinute(instant, zone);
  const QDate date(static_cast<int>(at.year()), at.month(), at.day());
  return plainDigits(sheetLocale().toString(date, QStringLiteral("ddd d MMM"))) + QStringLiteral(", ") +
         clockTime(static_cast<std::uint32_t>(at.hour() * 60 + at.minute()));
}

QString ageWords(absl::Duration age) {
  if (age < absl::Minutes(1)) return sheetWords("RecordWords", "just now");
  if (age < absl::Hours(1)) return sheetWords("RecordWords", "%1 min").arg(age / absl::Minutes(1));
  if (age < absl::Hours(24)) return sheetWords("RecordWords", "%1 h").arg(age / absl::Hours(1));
  const auto days = age / absl::Hours(24);
  return days == 1 ? sheetWords("RecordWords", "1 day") : sheetWords("RecordWords", "%1 days").arg(days);
}

QString percentWords(std::optional<double> share) {
  if (!share) return sheetWords("RecordWords", "nothing due");
  // The number and its sign stay on one line.
  return sheetWords("RecordWords", "%1 %")
      .replace(QLatin1Char(' '), QChar(QChar::Nbsp))
      .arg(std::lround(*share * 100));
}

QString titleOf(const Catalogue& catalogue, const std::string& exercise_id, const std::string& language) {
  const v1::ExerciseWords* words = wordsOrEnglish(catalogue, exercise_id, language);
  return text(words == nullptr ? exercise_id : words->title());
}

QString adherenceDefinition() {
  return sheetWords(
      "RecordWords",
      "Adherence is the number of occasions done out of the occasions due. An occasion is one exercise on "
      "one day and time of day. Part of the dose counts as done; the dose is shown apart. Excused days (a "
      "pause, a hold order), days to come and days with no data count in neither number. Extra practice in "
      "one week repairs no other week.");
}

QStringList intendedUse() {
  return {
      sheetWords(
          "RecordWords",
          "This programme is for you alone. Your therapist examined you, taught you these exercises and "
          "signed it."),
      sheetWords("RecordWords", "Stop if something feels wrong, and follow your therapist over this sheet."),
      sheetWords("RecordWords",
                 "This is not an emergency service. In an emergency call the local emergency number."),
      sheetWords("RecordWords", "Nobody at the clinic reads messages at once. If you are worried, phone.")};
}

}  // namespace newel::print
