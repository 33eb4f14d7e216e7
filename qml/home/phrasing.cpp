#include "qml/home/phrasing.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDateTime>
#include <QtCore/QLocale>
#include <QtCore/QStringList>

#include "core/safety/facts.h"
#include "core/time/local_day.h"

namespace newel::home {
namespace {

// Translation context of everything here.
struct Phrasing {
  Q_DECLARE_TR_FUNCTIONS(Phrasing)
};

QString secondsWords(std::uint32_t seconds) {
  return Phrasing::tr("%Ln second(s)", nullptr, static_cast<int>(seconds));
}

QString setsWords(const v1::SetsDose& dose) {
  const int sets = static_cast<int>(dose.sets());
  const int times = static_cast<int>(dose.repetitions());
  QString words = sets == 1 ? Phrasing::tr("%Ln time(s)", nullptr, times)
                            : Phrasing::tr("%Ln set(s) of %L1", nullptr, sets).arg(times);
  if (dose.hold_s() > 0) words += Phrasing::tr(", hold %1").arg(secondsWords(dose.hold_s()));
  return words;
}

QString passesWords(const v1::PassesDose& dose) {
  const int passes = static_cast<int>(dose.passes());
  if (dose.has_step_count()) {
    return Phrasing::tr("%Ln time(s) up and down", nullptr, passes) + Phrasing::tr(", ") +
           Phrasing::tr("%Ln step(s)", nullptr, static_cast<int>(dose.step_count()));
  }
  return Phrasing::tr("%Ln time(s) there and back", nullptr, passes) + Phrasing::tr(", ") +
         Phrasing::tr("%Ln metre(s)", nullptr, static_cast<int>(dose.distance_m()));
}

QDate dateOf(absl::CivilDay day) { return QDate(static_cast<int>(day.year()), day.month(), day.day()); }

}  // namespace

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString doseWords(const v1::Dose& dose) {
  if (dose.has_sets()) return setsWords(dose.sets());
  if (dose.has_passes()) return passesWords(dose.passes());
  const int minutes = static_cast<int>(dose.minutes().minutes());
  const int bouts = static_cast<int>(dose.minutes().bouts());
  if (bouts == 1) return minutesWords(minutes);
  return Phrasing::tr("%Ln time(s) %1", nullptr, bouts).arg(minutesWords(minutes));
}

QString supportWords(const Catalogue& catalogue, v1::Support support, const std::string& language) {
  static const std::map<v1::Support, std::string> kKeys = {
      {v1::SUPPORT_TWO_HANDS, "support.two-hands"},   {v1::SUPPORT_ONE_HAND, "support.one-hand"},
      {v1::SUPPORT_FINGERTIPS, "support.fingertips"}, {v1::SUPPORT_NO_HANDS, "support.no-hands"},
      {v1::SUPPORT_LYING, "support.lying"},           {v1::SUPPORT_SEATED, "support.seated"}};
  const auto key = kKeys.find(support);
  if (key == kKeys.end()) return QString();
  const std::string own = catalogue.phrase(key->second, language);
  return text(own.empty() ? catalogue.phrase(key->second, "en") : own);
}

QStringList equipmentWords(const Catalogue& catalogue, const v1::Entry& entry, const std::string& language) {
  QStringList list;
  const v1::Exercise* const exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr) return list;
  for (const int thing : exercise->equipment()) {
    const std::string key = "equipment." + wordOf(*v1::Equipment_descriptor(), thing);
    const std::string own = catalogue.phrase(key, language);
    const QString words = text(own.empty() ? catalogue.phrase(key, "en") : own);
    if (!words.isEmpty()) list << words;
  }
  return list;
}

QString prosthesisWords(v1::ProsthesisUse use) {
  return use == v1::PROSTHESIS_USE_OFF ? Phrasing::tr("prosthesis off") : Phrasing::tr("prosthesis on");
}

QString sideWords(const Catalogue& catalogue, const v1::Beat& beat, const v1::Timeline& timeline) {
  if (beat.side() == v1::SIDE_UNSPECIFIED) return QString();
  const std::string key = beat.side() == v1::SIDE_LEFT ? "leg.left" : "leg.right";
  const std::string own = catalogue.phrase(key, timeline.language());
  const QString leg = text(own.empty() ? catalogue.phrase(key, "en") : own);
  if (beat.role() == v1::LIMB_ROLE_SOUND) return Phrasing::tr("%1, sound limb").arg(leg);
  return timeline.prosthesis() == v1::PROSTHESIS_USE_ON ? Phrasing::tr("%1, prosthesis").arg(leg)
                                                        : Phrasing::tr("%1, residual limb").arg(leg);
}

QString reasonWords(v1::StopReason reason) {
  switch (reason) {
    case v1::STOP_REASON_PAIN:
      return Phrasing::tr("Pain");
    case v1::STOP_REASON_DIZZY:
      return Phrasing::tr("Dizzy");
    case v1::STOP_REASON_UNSTEADY:
      return Phrasing::tr("Unsteady");
    case v1::STOP_REASON_PROSTHESIS:
      return Phrasing::tr("The prosthesis");
    case v1::STOP_REASON_TIRED:
      return Phrasing::tr("Tired");
    case v1::STOP_REASON_INTERRUPTED:
      return Phrasing::tr("Interrupted");
    case v1::STOP_REASON_CHEST_PAIN:
      return Phrasing::tr("Chest pain");
    case v1::STOP_REASON_BREATHLESS:
      return Phrasing::tr("Short of breath");
    case v1::STOP_REASON_FALL:
      return Phrasing::tr("I fell");
    case v1::STOP_REASON_SKIN:
      return Phrasing::tr("My skin");
    case v1::STOP_REASON_HOLD_ORDER:
      return Phrasing::tr("The clinic said stop");
    case v1::STOP_REASON_WEAKNESS_OR_SPEECH:
      return Phrasing::tr("Sudden weakness, or trouble with speech");
    case v1::STOP_REASON_LIMB_SWELLING:
      return Phrasing::tr("Swollen limb");
    case v1::STOP_REASON_NO_TIME:
      return Phrasing::tr("No time");
    case v1::STOP_REASON_FELT_UNWELL:
      return Phrasing::tr("I feel ill");
    default:
      return Phrasing::tr("Something else");
  }
}

QVariantList reasonRows(const std::vector<v1::StopReason>& reasons) {
  QVariantList rows;
  for (const v1::StopReason reason : reasons) {
    rows << QVariantMap{{"id", static_cast<int>(reason)}, {"words", reasonWords(reason)}};
  }
  return rows;
}

QVariantList happenedReasons() {
  return reasonRows({v1::STOP_REASON_PAIN, v1::STOP_REASON_DIZZY, v1::STOP_REASON_UNSTEADY,
                     v1::STOP_REASON_FALL, v1::STOP_REASON_CHEST_PAIN, v1::STOP_REASON_BREATHLESS,
                     v1::STOP_REASON_PROSTHESIS, v1::STOP_REASON_SKIN, v1::STOP_REASON_TIRED,
                     v1::STOP_REASON_FELT_UNWELL, v1::STOP_REASON_LIMB_SWELLING, v1::STOP_REASON_INTERRUPTED,
                     v1::STOP_REASON_WEAKNESS_OR_SPEECH, v1::STOP_REASON_OTHER});
}

QString rhythmWords(const v1::Schedule& schedule) {
  if (!schedule.has_weekdays()) {
    return Phrasing::tr("%Ln time(s) a week", nullptr, static_cast<int>(schedule.times_per_week()));
  }
  if (schedule.weekdays().days_size() == 7) return Phrasing::tr("every day");
  QStringList days;
  for (const int day : schedule.weekdays().days()) days << QLocale().dayName(day);
  return days.join(Phrasing::tr(", "));
}

QString clockWords(int minute_of_day) {
  return QLocale().toString(QTime(minute_of_day / 60 % 24, minute_of_day % 60), QLocale::ShortFormat);
}

QString windowWords(const v1::Window& window) {
  if (window.from_min() == 0 && window.to_min() == 24 * 60) return Phrasing::tr("at any time of day");
  return Phrasing::tr("from %1 to %2")
      .arg(clockWords(static_cast<int>(window.from_min())), clockWords(static_cast<int>(window.to_min())));
}

int minutesOf(std::int64_t milliseconds) { return static_cast<int>((milliseconds + 59'999) / 60'000); }

QString minutesWords(int minutes) { return Phrasing::tr("%Ln minute(s)", nullptr, minutes); }

QString dayWords(absl::CivilDay day) { return QLocale().toString(dateOf(day), QLocale::LongFormat); }

QString timeWords(absl::Time instant, absl::TimeZone zone) {
  const absl::CivilSecond local = absl::ToCivilSecond(instant, zone);
  return QLocale().toString(QTime(local.hour(), local.minute()), QLocale::ShortFormat);
}

QString momentWords(absl::Time instant, absl::TimeZone zone, absl::CivilDay today) {
  const absl::CivilDay day = localDayAt(instant, zone);
  if (day == today) return Phrasing::tr("today at %1").arg(timeWords(instant, zone));
  return Phrasing::tr("%1 at %2")
      .arg(QLocale().toString(dateOf(day), QLocale::ShortFormat), timeWords(instant, zone));
}

QString problemWords(const std::string& key) {
  if (key.empty()) return QString();
  if (key == "sync.no-network") return Phrasing::tr("The clinic cannot be reached at the moment.");
  if (key == "sync.wrong-date") return Phrasing::tr("The date on this phone seems wrong. Please set it.");
  if (key == "sync.revoked") return Phrasing::tr("The clinic ended this phone's access. Call the clinic.");
  if (key == "sync.certificate")
    return Phrasing::tr("The clinic's computer could not be trusted. Call the clinic.");
  if (key == "sync.disk-full") return Phrasing::tr("This phone's memory is full. Please make room.");
  return Phrasing::tr("Contact with the clinic failed. The phone tries again by itself.");
}

QString contactWords(const HomeState& state, absl::TimeZone zone, absl::CivilDay today) {
  QStringList lines;
  if (state.queued > 0) {
    lines << Phrasing::tr("%Ln record(s) kept on this phone, will be sent.", nullptr,
                          static_cast<int>(state.queued));
  } else if (state.last_contact.has_value()) {
    lines << Phrasing::tr("All has reached the clinic. Last contact %1.")
                 .arg(momentWords(*state.last_contact, zone, today));
  } else {
    lines << Phrasing::tr("No contact with the clinic yet.");
  }
  if (state.set_aside > 0) {
    lines << Phrasing::tr(
        "%Ln record(s) could not be taken by the clinic and stay on this phone. Call the clinic.", nullptr,
        static_cast<int>(state.set_aside));
  }
  const QString problem = problemWords(state.last_problem);
  if (!problem.isEmpty()) lines << problem;
  return lines.join(QStringLiteral(" "));
}

QString errorWords(const absl::Status& status) {
  if (status.ok()) return QString();
  switch (status.code()) {
    case absl::StatusCode::kResourceExhausted:
      return Phrasing::tr(
          "This phone's memory is full, so nothing can be kept. Please make room, then try again.");
    case absl::StatusCode::kDataLoss:
      return Phrasing::tr(
          "A record on this phone cannot be read. Call the clinic, and do not erase the phone.");
    default:
      return Phrasing::
          tr("Something went wrong and nothing was changed. Try again; if it stays, call the clinic. (%1)")
              .arg(text(std::string(status.message())));
  }
}

}  // namespace newel::home
