#include "qml/desk/attention_words.h"

#include <QtCore/QCoreApplication>

#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

using print::ageWords;
using print::text;

QString say(const char* words) { return QCoreApplication::translate("AttentionWords", words); }

QString ruleWords(const std::string& rule_id, const RuleBook& rules) {
  const v1::Rule* rule = rules.rule(rule_id);
  if (rule == nullptr || !rule->words().contains("en"))
    return say("A rule this desk does not know: %1.").arg(text(rule_id));
  return text(rule->words().at("en").therapist());
}

QString daysOf(const QString& count) {
  return count == QLatin1String("1") ? say("1 day") : say("%1 days").arg(count);
}

QString fallWords(const QString& what) {
  if (what == QLatin1String("not-hurt")) return say("Told of a fall, not hurt");
  if (what == QLatin1String("hurt")) return say("Told of a fall, and was hurt");
  if (what == QLatin1String("head")) return say("Told of a fall, and hit the head");
  return say("Told of a fall");
}

QString skinWords(const QString& what) {
  if (what == QLatin1String("wear-harm")) return say("Skin hurt when the prosthesis came off: it stays off");
  if (what == QLatin1String("wear-too-red")) return say("Skin red for too long after wearing");
  if (what == QLatin1String("red-stays")) return say("Skin: red marks that do not fade");
  if (what == QLatin1String("open")) return say("Skin: a blister, a cut, or wet");
  if (what == QLatin1String("hot-or-swollen")) return say("Skin: hot, very red or swollen, or it smells");
  if (what == QLatin1String("leg-swollen")) return say("The leg is swollen, hot or sore");
  if (what == QLatin1String("foot-sore")) return say("The foot has a sore or a new colour");
  return say("Stopped because of the skin");
}

QString painWords(const QString& points, const QString& slope, const QString& days) {
  QString words = say("Pain rising: %1 points over the last practices").arg(points);
  if (!slope.isEmpty()) words += say(" (%1 a week)").arg(slope);
  return words + (days == QLatin1String("0") ? say(", last rated today")
                                             : say(", last rated %1 ago").arg(daysOf(days)));
}

}  // namespace

QString reasonWords(const AttentionReason& reason, const RuleBook& rules) {
  const auto arg = [&reason](const char* name) {
    const auto found = reason.args.find(name);
    return found == reason.args.end() ? QString() : text(found->second);
  };
  // Behind "for" and before "ago", where "just now" would be no sentence.
  const absl::Duration how_long = reason.age.value_or(absl::ZeroDuration());
  const QString age = how_long < absl::Minutes(1) ? say("less than a minute") : ageWords(how_long);
  const auto noData = [&arg]() -> QString {
    return arg("no_data") == QLatin1String("0") ? QString() : say(", no data yet for %1").arg(arg("no_data"));
  };
  const std::string& key = reason.key;
  if (key == "attention.red-flag")
    return say("%1 Phone them.").arg(ruleWords(arg("rule").toStdString(), rules));
  if (key == "attention.stopped") return ruleWords(arg("rule").toStdString(), rules);
  if (key == "attention.hold-not-arrived") return say("Hold order not arrived for %1. Phone them.").arg(age);
  if (key == "attention.on-hold") return say("On hold for %1, until you lift it").arg(age);
  if (key == "attention.urgent-unseen") return say("Urgent message not seen for %1. Phone them.").arg(age);
  const QString count = arg("count");
  if (key == "attention.message-unread") {
    return count == QLatin1String("1")
               ? say("Message from them not read for %1").arg(age)
               : say("%1 messages from them not read, the first for %2").arg(count, age);
  }
  if (key == "attention.message-unseen") {
    return count == QLatin1String("1")
               ? say("Your message not seen for %1").arg(age)
               : say("%1 of your messages not seen, the first for %2").arg(count, age);
  }
  if (key == "attention.fall")
    return say("%1, %2 ago. Ask how it happened.").arg(fallWords(arg("what")), age);
  if (key == "attention.skin") return say("%1, %2 ago").arg(skinWords(arg("what")), age);
  if (key == "attention.silent")
    return say("Phone not heard from for %1. Call them.").arg(daysOf(arg("days")));
  if (key == "attention.stale") return say("Phone not heard from for %1").arg(daysOf(arg("days")));
  if (key == "attention.never-heard") return say("Paired, but the phone was never heard from");
  if (key == "attention.not-paired") return say("No phone paired");
  if (key == "attention.programme-waiting")
    return say("Programme %1 not arrived for %2").arg(arg("number"), age);
  if (key == "attention.programme-ended") return say("Programme ended %1 ago").arg(daysOf(arg("days")));
  if (key == "attention.programme-ending") {
    return arg("days") == QLatin1String("0") ? say("Programme ends today")
                                             : say("Programme ends in %1").arg(daysOf(arg("days")));
  }
  if (key == "attention.no-programme") return say("No programme yet");
  if (key == "attention.pain-rising") return painWords(arg("points"), arg("slope"), arg("days"));
  if (key == "attention.little-done") {
    return say("Doing less than agreed: %1 of %2 due in three weeks").arg(arg("done"), arg("due")) + noData();
  }
  if (key == "attention.nothing-done") {
    return say("Nothing done for %1, and %2 due since").arg(daysOf(arg("days")), arg("missed")) + noData();
  }
  if (key == "attention.never-done") {
    return say("Nothing done yet: %1 were due in three weeks").arg(arg("missed")) + noData();
  }
  if (key == "attention.ready") {
    return count == QLatin1String("1")
               ? say("Ready to progress: 1 exercise, by its rule on effort and pain")
               : say("Ready to progress: %1 exercises, by their rules on effort and pain").arg(count);
  }
  if (key == "attention.too-hard") {
    return count == QLatin1String("1") ? say("Too hard by its rule: 1 exercise")
                                       : say("Too hard by their rules: %1 exercises").arg(count);
  }
  if (key == "attention.measure-due") {
    return arg("days") == QLatin1String("0") ? say("A measure is due today")
                                             : say("A measure has been due for %1").arg(daysOf(arg("days")));
  }
  if (key == "attention.some-done") return say("Done %1 of %2 due").arg(arg("done"), arg("due"));
  if (key == "attention.all-done") return say("All done: %1 of %2 due").arg(arg("done"), arg("due"));
  if (key == "attention.nothing-due") return say("Nothing was due yet");
  if (key == "attention.no-data") {
    return arg("due") == QLatin1String("0")
               ? say("No data yet for %1 due").arg(arg("no_data"))
               : say("Done %1 of %2 due, no data yet for %3").arg(arg("done"), arg("due"), arg("no_data"));
  }
  return text(key);
}

QString urgencyWords(Urgency urgency) {
  switch (urgency) {
    case Urgency::Now:
      return say("Now");
    case Urgency::Today:
      return say("Today");
    case Urgency::Soon:
      return say("Soon");
    case Urgency::None:
      break;
  }
  return say("All well");
}

QString figuresWords(const AttentionRow& row) {
  return row.figures_age ? ageWords(*row.figures_age) : say("never heard from");
}

}  // namespace newel::desk
