#include "qml/desk/attention_words.h"

#include <QtCore/QCoreApplication>

#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

using print::ageWords;
using print::text;

QString ruleWords(const std::string& rule_id, const RuleBook& rules) {
  const std::string words = rules.therapistWords(rule_id);
  return words.empty() ? QCoreApplication::translate("AttentionWords", "A rule this desk does not know: %1.")
                             .arg(text(rule_id))
                       : text(words);
}

QString daysOf(const QString& count) {
  return count == QLatin1String("1") ? QCoreApplication::translate("AttentionWords", "1 day")
                                     : QCoreApplication::translate("AttentionWords", "%1 days").arg(count);
}

QString fallWords(const QString& what) {
  if (what == QLatin1String("not-hurt"))
    return QCoreApplication::translate("AttentionWords", "Told of a fall, not hurt");
  if (what == QLatin1String("hurt"))
    return QCoreApplication::translate("AttentionWords", "Told of a fall, and was hurt");
  if (what == QLatin1String("head"))
    return QCoreApplication::translate("AttentionWords", "Told of a fall, and hit the head");
  return QCoreApplication::translate("AttentionWords", "Told of a fall");
}

QString skinWords(const QString& what) {
  if (what == QLatin1String("wear-harm"))
    return QCoreApplication::translate("AttentionWords",
                                       "Skin hurt when the prosthesis came off: it stays off");
  if (what == QLatin1String("wear-too-red"))
    return QCoreApplication::translate("AttentionWords", "Skin red for too long after wearing");
  if (what == QLatin1String("red-stays"))
    return QCoreApplication::translate("AttentionWords", "Skin: red marks that do not fade");
  if (what == QLatin1String("open"))
    return QCoreApplication::translate("AttentionWords", "Skin: a blister, a cut, or wet");
  if (what == QLatin1String("hot-or-swollen"))
    return QCoreApplication::translate("AttentionWords", "Skin: hot, very red or swollen, or it smells");
  if (what == QLatin1String("leg-swollen"))
    return QCoreApplication::translate("AttentionWords", "The leg is swollen, hot or sore");
  if (what == QLatin1String("foot-sore"))
    return QCoreApplication::translate("AttentionWords", "The foot has a sore or a new colour");
  return QCoreApplication::translate("AttentionWords", "Stopped because of the skin");
}

QString painWords(const QString& points, const QString& slope, const QString& days) {
  QString words =
      QCoreApplication::translate("AttentionWords", "Pain rising: %1 points over the last practices")
          .arg(points);
  if (!slope.isEmpty()) words += QCoreApplication::translate("AttentionWords", " (%1 a week)").arg(slope);
  return words +
         (days == QLatin1String("0")
              ? QCoreApplication::translate("AttentionWords", ", last rated today")
              : QCoreApplication::translate("AttentionWords", ", last rated %1 ago").arg(daysOf(days)));
}

}  // namespace

QString reasonWords(const AttentionReason& reason, const RuleBook& rules) {
  const auto arg = [&reason](const char* name) {
    const auto found = reason.args.find(name);
    return found == reason.args.end() ? QString() : text(found->second);
  };
  // Behind "for" and before "ago", where "just now" would be no sentence.
  const absl::Duration how_long = reason.age.value_or(absl::ZeroDuration());
  const QString age = how_long < absl::Minutes(1)
                          ? QCoreApplication::translate("AttentionWords", "less than a minute")
                          : ageWords(how_long);
  const auto noData = [&arg]() -> QString {
    return arg("no_data") == QLatin1String("0")
               ? QString()
               : QCoreApplication::translate("AttentionWords", ", no data yet for %1").arg(arg("no_data"));
  };
  const std::string& key = reason.key;
  if (key == "attention.red-flag")
    return QCoreApplication::translate("AttentionWords", "%1 Phone them.")
        .arg(ruleWords(arg("rule").toStdString(), rules));
  if (key == "attention.stopped") return ruleWords(arg("rule").toStdString(), rules);
  if (key == "attention.hold-not-arrived")
    return QCoreApplication::translate("AttentionWords", "Hold order not arrived for %1. Phone them.")
        .arg(age);
  if (key == "attention.on-hold")
    return QCoreApplication::translate("AttentionWords", "On hold for %1, until you lift it").arg(age);
  if (key == "attention.urgent-unseen")
    return QCoreApplication::translate("AttentionWords", "Urgent message not seen for %1. Phone them.")
        .arg(age);
  const QString count = arg("count");
  if (key == "attention.message-unread") {
    return count == QLatin1String("1")
               ? QCoreApplication::translate("AttentionWords", "Message from them not read for %1").arg(age)
               : QCoreApplication::translate("AttentionWords",
                                             "%1 messages from them not read, the first for %2")
                     .arg(count, age);
  }
  if (key == "attention.message-unseen") {
    return count == QLatin1String("1")
               ? QCoreApplication::translate("AttentionWords", "Your message not seen for %1").arg(age)
               : QCoreApplication::translate("AttentionWords",
                                             "%1 of your messages not seen, the first for %2")
                     .arg(count, age);
  }
  if (key == "attention.fall")
    return QCoreApplication::translate("AttentionWords", "%1, %2 ago. Ask how it happened.")
        .arg(fallWords(arg("what")), age);
  if (key == "attention.skin")
    return QCoreApplication::translate("AttentionWords", "%1, %2 ago").arg(skinWords(arg("what")), age);
  if (key == "attention.silent")
    return QCoreApplication::translate("AttentionWords", "Phone not heard from for %1. Call them.")
        .arg(daysOf(arg("days")));
  if (key == "attention.stale")
    return QCoreApplication::translate("AttentionWords", "Phone not heard from for %1")
        .arg(daysOf(arg("days")));
  if (key == "attention.never-heard")
    return QCoreApplication::translate("AttentionWords", "Paired, but the phone was never heard from");
  if (key == "attention.not-paired") return QCoreApplication::translate("AttentionWords", "No phone paired");
  if (key == "attention.programme-waiting")
    return QCoreApplication::translate("AttentionWords", "Programme %1 not arrived for %2")
        .arg(arg("number"), age);
  if (key == "attention.programme-ended")
    return QCoreApplication::translate("AttentionWords", "Programme ended %1 ago").arg(daysOf(arg("days")));
  if (key == "attention.programme-ending") {
    return arg("days") == QLatin1String("0")
               ? QCoreApplication::translate("AttentionWords", "Programme ends today")
               : QCoreApplication::translate("AttentionWords", "Programme ends in %1")
                     .arg(daysOf(arg("days")));
  }
  if (key == "attention.no-programme")
    return QCoreApplication::translate("AttentionWords", "No programme yet");
  if (key == "attention.pain-rising") return painWords(arg("points"), arg("slope"), arg("days"));
  if (key == "attention.little-done") {
    return QCoreApplication::translate("AttentionWords",
                                       "Doing less than agreed: %1 of %2 due in three weeks")
               .arg(arg("done"), arg("due")) +
           noData();
  }
  if (key == "attention.nothing-done") {
    return QCoreApplication::translate("AttentionWords", "Nothing done for %1, and %2 due since")
               .arg(daysOf(arg("days")), arg("missed")) +
           noData();
  }
  if (key == "attention.never-done") {
    return QCoreApplication::translate("AttentionWords", "Nothing done yet: %1 were due in three weeks")
               .arg(arg("missed")) +
           noData();
  }
  if (key == "attention.ready") {
    return count == QLatin1String("1")
               ? QCoreApplication::translate("AttentionWords",
                                             "Ready to progress: 1 exercise, by its rule on effort and pain")
               : QCoreApplication::translate(
                     "AttentionWords", "Ready to progress: %1 exercises, by their rules on effort and pain")
                     .arg(count);
  }
  if (key == "attention.too-hard") {
    return count == QLatin1String("1")
               ? QCoreApplication::translate("AttentionWords", "Too hard by its rule: 1 exercise")
               : QCoreApplication::translate("AttentionWords", "Too hard by their rules: %1 exercises")
                     .arg(count);
  }
  if (key == "attention.measure-due") {
    return arg("days") == QLatin1String("0")
               ? QCoreApplication::translate("AttentionWords", "A measure is due today")
               : QCoreApplication::translate("AttentionWords", "A measure has been due for %1")
                     .arg(daysOf(arg("days")));
  }
  if (key == "attention.some-done")
    return QCoreApplication::translate("AttentionWords", "Done %1 of %2 due").arg(arg("done"), arg("due"));
  if (key == "attention.all-done")
    return QCoreApplication::translate("AttentionWords", "All done: %1 of %2 due")
        .arg(arg("done"), arg("due"));
  if (key == "attention.nothing-due")
    return QCoreApplication::translate("AttentionWords", "Nothing was due yet");
  if (key == "attention.no-data") {
    return arg("due") == QLatin1String("0")
               ? QCoreApplication::translate("AttentionWords", "No data yet for %1 due").arg(arg("no_data"))
               : QCoreApplication::translate("AttentionWords", "Done %1 of %2 due, no data yet for %3")
                     .arg(arg("done"), arg("due"), arg("no_data"));
  }
  return text(key);
}

QString urgencyWords(Urgency urgency) {
  switch (urgency) {
    case Urgency::Now:
      return QCoreApplication::translate("AttentionWords", "Now");
    case Urgency::Today:
      return QCoreApplication::translate("AttentionWords", "Today");
    case Urgency::Soon:
      return QCoreApplication::translate("AttentionWords", "Soon");
    case Urgency::None:
      break;
  }
  return QCoreApplication::translate("AttentionWords", "All well");
}

QString figuresWords(const AttentionRow& row) {
  return row.figures_age ? ageWords(*row.figures_age)
                         : QCoreApplication::translate("AttentionWords", "never heard from");
}

}  // namespace newel::desk
