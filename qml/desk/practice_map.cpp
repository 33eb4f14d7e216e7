// One practice in words: what was done of what was asked, set by set, ratings, stops, doubts.
#include <QtCore/QCoreApplication>

#include "core/time/local_day.h"
#include "qml/desk/done_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

using print::words;

QString painWords(const v1::EntryDone& entry) {
  if (entry.has_pain_before_0_10() && entry.has_pain_after_0_10()) {
    return QCoreApplication::translate("PracticeMap", "pain %1 before, %2 after")
        .arg(entry.pain_before_0_10())
        .arg(entry.pain_after_0_10());
  }
  if (entry.has_pain_after_0_10())
    return QCoreApplication::translate("PracticeMap", "pain %1 after").arg(entry.pain_after_0_10());
  if (entry.has_pain_before_0_10())
    return QCoreApplication::translate("PracticeMap", "pain %1 before, not rated after")
        .arg(entry.pain_before_0_10());
  return QCoreApplication::translate("PracticeMap", "pain not rated");
}

QString setsWords(const v1::EntryDone& entry) {
  QStringList sets;
  for (const auto& set : entry.sets()) {
    QString one =
        set.side() == v1::SIDE_UNSPECIFIED
            ? QCoreApplication::translate("PracticeMap", "set %1: ").arg(set.set())
            : QCoreApplication::translate("PracticeMap", "set %1 %2: ").arg(set.set()).arg(words(set.side()));
    sets << one + print::doneWords(set.done());
  }
  return sets.join(QStringLiteral("; "));
}

QVariantMap entryMap(const v1::EntryDone& entry, const DeskContext& context) {
  QString skipped;
  if (entry.skipped() != v1::STOP_REASON_UNSPECIFIED) {
    skipped =
        QCoreApplication::translate("PracticeMap", "left out or stopped: %1").arg(words(entry.skipped()));
    if (!entry.skipped_words().empty())
      skipped +=
          QCoreApplication::translate("PracticeMap", " (\"%1\")").arg(print::text(entry.skipped_words()));
  }
  QString dose = QCoreApplication::translate("PracticeMap", "%1 of %2 times")
                     .arg(entry.done().repetitions())
                     .arg(entry.asked().repetitions());
  if (entry.asked().hold_ms() > 0) {
    dose += QCoreApplication::translate("PracticeMap", ", held %1 of %2 s")
                .arg(entry.done().hold_ms() / 1000)
                .arg(entry.asked().hold_ms() / 1000);
  }
  if (entry.voided_holds() > 0)
    dose += QCoreApplication::translate("PracticeMap", ", %1 holds begun again").arg(entry.voided_holds());
  return {
      {QStringLiteral("title"), print::titleOf(*context.catalogue, entry.exercise_id(), context.language)},
      {QStringLiteral("dose"), dose},
      {QStringLiteral("sets"), setsWords(entry)},
      {QStringLiteral("pain"), painWords(entry)},
      {QStringLiteral("effort"),
       entry.has_effort_0_10()
           ? QCoreApplication::translate("PracticeMap", "effort %1 of 10").arg(entry.effort_0_10())
           : QCoreApplication::translate("PracticeMap", "effort not rated")},
      {QStringLiteral("skipped"), skipped}};
}

QString endWords(const v1::Practice& practice) {
  QString end = words(practice.end());
  if (practice.stop_reason() != v1::STOP_REASON_UNSPECIFIED)
    end += QCoreApplication::translate("PracticeMap", ": %1").arg(words(practice.stop_reason()));
  if (practice.resumed() == 1)
    end += QCoreApplication::translate("PracticeMap", ", interrupted and taken up again once");
  if (practice.resumed() > 1)
    end += QCoreApplication::translate("PracticeMap", ", interrupted and taken up again %1 times")
               .arg(practice.resumed());
  return end;
}

// How the clinic knows of it. What was told later has neither a beginning nor a length that anybody measured.
QString knownWords(const v1::Practice& practice, absl::TimeZone zone) {
  const QString at = print::momentWords(toTime(practice.started_at()), zone);
  if (practice.origin() == v1::ORIGIN_TOLD_LATER) {
    return QCoreApplication::translate("PracticeMap", "Told later, on %1, and not timed; programme %2")
        .arg(at)
        .arg(practice.programme_number());
  }
  return QCoreApplication::translate("PracticeMap", "Begun %1, %2 min, timed by the phone, programme %3")
      .arg(at)
      .arg((practice.elapsed_ms() + 59999) / 60000)
      .arg(practice.programme_number());
}

}  // namespace

QVariantMap practiceMap(const v1::Practice& practice, const PersonFile& file, const DeskContext& context) {
  const absl::TimeZone zone = loadZone(practice.zone()).value_or(zoneOf(file));
  QVariantList entries;
  for (const auto& entry : practice.entries()) entries << entryMap(entry, context);
  QStringList doubts;
  for (const int doubt : practice.doubts()) doubts << words(static_cast<v1::ClockDoubt>(doubt));
  QStringList flags;
  for (const auto& id : practice.red_flag_rule_ids()) {
    const std::string words = context.rules->therapistWords(id);
    flags << print::text(words.empty() ? id : words);
  }
  const bool bad = practice.end() != v1::PRACTICE_END_FINISHED;
  return {{QStringLiteral("id"), print::text(practice.id())},
          {QStringLiteral("day"), print::dayWords(practice.local_day())},
          {QStringLiteral("localDay"), print::text(practice.local_day())},
          {QStringLiteral("known"), knownWords(practice, zone)},
          {QStringLiteral("end"), endWords(practice)},
          {QStringLiteral("stopped"), bad},
          {QStringLiteral("redFlag"), practice.end() == v1::PRACTICE_END_RED_FLAG},
          {QStringLiteral("flags"), flags.join(QLatin1Char(' '))},
          {QStringLiteral("note"), print::text(practice.note())},
          {QStringLiteral("doubts"), doubts.join(QStringLiteral(", "))},
          {QStringLiteral("entries"), entries}};
}

}  // namespace newel::desk
