#include "qml/desk/evidence_words.h"

#include <QtCore/QCoreApplication>
#include <map>

#include "core/time/local_day.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr char kContext[] = "EvidenceWords";

// Placeholders in braces are the evidence's arguments.
const std::map<std::string, const char*>& templates() {
  static const std::map<std::string, const char*> kWords = {
      {"progress.row", QT_TRANSLATE_NOOP("EvidenceWords", "{good} good practices in a row, {needed} needed")},
      {"progress.no-practice", QT_TRANSLATE_NOOP("EvidenceWords", "No practice under this dose yet")},
      {"progress.missed", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: missed, the row begins anew")},
      {"progress.not-heard", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: not heard of yet")},
      {"progress.red-flag", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: ended by a red flag")},
      {"progress.told-later",
       QT_TRANSLATE_NOOP("EvidenceWords", "{day}: told later, not timed by the phone")},
      {"progress.stopped", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: stopped or skipped")},
      {"progress.sets-missing", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: {done} of {asked} sets")},
      {"progress.last-set",
       QT_TRANSLATE_NOOP("EvidenceWords", "{day}: {done} in the last set; goal {goal} and {over} over")},
      {"progress.goal-out-of-reach",
       QT_TRANSLATE_NOOP("EvidenceWords", "{day}: the rule wants {goal}, the phone leads through {asked}")},
      {"progress.dose-done", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: {done} of {asked} done")},
      {"progress.effort", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: effort {effort}, limit {limit}")},
      {"progress.effort-unknown", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: effort not rated")},
      {"progress.pain",
       QT_TRANSLATE_NOOP("EvidenceWords", "{day}: pain {before} before, {after} after; may rise by {limit}")},
      {"progress.pain-unknown", QT_TRANSLATE_NOOP("EvidenceWords", "{day}: pain not rated before and after")},
      {"progress.pain-too-much",
       QT_TRANSLATE_NOOP("EvidenceWords",
                         "{day}: pain {before} before, {after} after; a rise of {limit} is too hard")},
      {"progress.little-done",
       QT_TRANSLATE_NOOP("EvidenceWords",
                         "{day}: {percent} % of the dose done, under {limit} % is too hard")},
      {"cert.by-clinic", QT_TRANSLATE_NOOP("EvidenceWords", "Stated by the clinic")},
      {"cert.by-design", QT_TRANSLATE_NOOP("EvidenceWords", "True of every programme here")},
      {"cert.equipment", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: equipment stated")},
      {"cert.no-equipment", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: needs none")},
      {"cert.exercise-unknown", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: not in the catalogue")},
      {"cert.words", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: has words and pictures")},
      {"cert.words-missing", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: has no words")},
      {"cert.progression", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: has a rule")},
      {"cert.progression-missing",
       QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: has no rule for its next step")},
      {"cert.dose", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: dose and days stated")},
      {"cert.dose-missing", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: dose or days missing")},
      {"cert.tailoring", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: sides and support chosen")},
      {"cert.tailoring-missing", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: side or support missing")},
      {"cert.advice", QT_TRANSLATE_NOOP("EvidenceWords", "The programme gives advice")},
      {"cert.limb-care", QT_TRANSLATE_NOOP("EvidenceWords", "{exercise}: limb care")},
      {"cert.advice-missing", QT_TRANSLATE_NOOP("EvidenceWords", "No general advice and no limb care")},
      {"cert.first-programme",
       QT_TRANSLATE_NOOP("EvidenceWords", "The first programme: nothing was progressed yet")},
      {"cert.changes", QT_TRANSLATE_NOOP("EvidenceWords", "The programme says what changed")},
      {"cert.changes-missing", QT_TRANSLATE_NOOP("EvidenceWords", "The programme does not say what changed")},
      {"cert.events",
       QT_TRANSLATE_NOOP(
           "EvidenceWords",
           "{practices} practices; with a red flag {red_flags}, a fall {falls}, a stop for pain "
           "{pain}, for skin {skin}, other {other}")},
      {"cert.adherence", QT_TRANSLATE_NOOP("EvidenceWords", "{done} of {due} occasions done")},
      {"cert.no-practice", QT_TRANSLATE_NOOP("EvidenceWords", "No practice known yet")},
      {"cert.setting", QT_TRANSLATE_NOOP("EvidenceWords", "The home is described")},
      {"cert.setting-missing", QT_TRANSLATE_NOOP("EvidenceWords", "The home is not described in the record")},
  };
  return kWords;
}

QString shown(const std::string& name, const std::string& value, const Catalogue& catalogue,
              const std::string& language) {
  if (name == "exercise") return print::titleOf(catalogue, value, language);
  const auto day = name == "day" ? parseLocalDay(value) : absl::InvalidArgumentError("no day");
  return day.ok() ? print::dayWords(*day) : value.empty() ? QStringLiteral("–") : print::text(value);
}

}  // namespace

QString adviceWords(Advice advice) {
  switch (advice) {
    case Advice::Hold:
      return QCoreApplication::translate("EvidenceWords", "By its rule: stay at this step.");
    case Advice::Ready:
      return QCoreApplication::translate("EvidenceWords",
                                         "By its rule: ready for the next step. Yours to decide.");
    case Advice::StepBack:
      return QCoreApplication::translate(
          "EvidenceWords", "By its rule: it was too hard again and again. Look at a step back.");
    case Advice::NoRule:
      break;
  }
  return QCoreApplication::translate("EvidenceWords", "It has no rule, so nothing is said of a next step.");
}

QString evidenceWords(const EvidenceLine& line, const Catalogue& catalogue, const std::string& language) {
  const auto found = templates().find(line.key);
  if (found == templates().end()) return print::text(line.key);
  QString words = QCoreApplication::translate(kContext, found->second);
  for (const auto& [name, value] : line.args)
    words.replace(QLatin1Char('{') + print::text(name) + QLatin1Char('}'),
                  shown(name, value, catalogue, language));
  return words;
}

bool hasEvidenceWords(const std::string& key) { return templates().contains(key); }

QString certLineWords(const std::string& line_id) {
  static const std::map<std::string, const char*> kLines = {
      {"1", QT_TRANSLATE_NOOP("EvidenceWords", "Equipment: what kind, which settings")},
      {"2", QT_TRANSLATE_NOOP("EvidenceWords", "Who instructs: qualification and training")},
      {"3", QT_TRANSLATE_NOOP("EvidenceWords", "Alone or in a group")},
      {"4", QT_TRANSLATE_NOOP("EvidenceWords", "Supervised or not, and how it is delivered")},
      {"5", QT_TRANSLATE_NOOP("EvidenceWords", "How adherence is measured and reported")},
      {"6", QT_TRANSLATE_NOOP("EvidenceWords", "How people are kept motivated")},
      {"7a", QT_TRANSLATE_NOOP("EvidenceWords", "The rule that decides on progression")},
      {"7b", QT_TRANSLATE_NOOP("EvidenceWords", "How it was progressed")},
      {"8", QT_TRANSLATE_NOOP("EvidenceWords", "Each exercise, well enough to repeat it")},
      {"9", QT_TRANSLATE_NOOP("EvidenceWords", "The part done at home")},
      {"10", QT_TRANSLATE_NOOP("EvidenceWords", "Parts that are not exercise, such as education")},
      {"11", QT_TRANSLATE_NOOP("EvidenceWords", "Adverse events: kind and number")},
      {"12", QT_TRANSLATE_NOOP("EvidenceWords", "Setting")},
      {"13",
       QT_TRANSLATE_NOOP("EvidenceWords", "Dose: sets, repetitions, load, length, intensity, frequency")},
      {"14a", QT_TRANSLATE_NOOP("EvidenceWords", "The same for all, or tailored")},
      {"14b", QT_TRANSLATE_NOOP("EvidenceWords", "How it is tailored")},
      {"15", QT_TRANSLATE_NOOP("EvidenceWords", "The rule for the level to start at")},
      {"16a", QT_TRANSLATE_NOOP("EvidenceWords", "How it is judged whether it was done as planned")},
      {"16b", QT_TRANSLATE_NOOP("EvidenceWords", "How far it was done as planned")},
  };
  const auto found = kLines.find(line_id);
  return found == kLines.end() ? QString() : QCoreApplication::translate(kContext, found->second);
}

}  // namespace newel::desk
