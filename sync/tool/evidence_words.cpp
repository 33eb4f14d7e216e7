#include "sync/tool/evidence_words.h"

#include <map>

namespace newel::tool {
namespace {

const std::map<std::string, std::string>& templates() {
  static const std::map<std::string, std::string> kWords = {
      {"progress.row", "{good} good in a row of {needed} needed"},
      {"progress.no-practice", "no practice under this dose yet"},
      {"progress.missed", "{day}: missed, the row begins anew"},
      {"progress.not-heard", "{day}: not heard of yet"},
      {"progress.red-flag", "{day}: ended by a red flag"},
      {"progress.told-later", "{day}: told later, not timed by the phone"},
      {"progress.stopped", "{day}: stopped or skipped: {reason}"},
      {"progress.sets-missing", "{day}: {done} of {asked} sets"},
      {"progress.last-set", "{day}: {done} in the last set, goal {goal} and {over} over"},
      {"progress.goal-out-of-reach", "{day}: the rule wants {goal}, the phone leads through {asked}"},
      {"progress.dose-done", "{day}: {done} of {asked} done"},
      {"progress.effort", "{day}: effort {effort}, limit {limit}"},
      {"progress.effort-unknown", "{day}: effort not rated"},
      {"progress.pain", "{day}: pain {before} before, {after} after; may rise by {limit}"},
      {"progress.pain-unknown", "{day}: pain not rated before and after"},
      {"progress.pain-too-much", "{day}: pain {before} before, {after} after; a rise of {limit} is too hard"},
      {"progress.little-done", "{day}: {percent} % of the dose done, under {limit} % is too hard"},

      {"wear.not-begun", "the plan begins on {day}"},
      {"wear.step", "step {step} of {of}, {good} of {needed} good days"},
      {"wear.good-day", "{day}: a good day"},
      {"wear.not-worn", "{day}: not worn"},
      {"wear.still-on", "{day}: put on, and no end in the log"},
      {"wear.not-looked", "{day}: the skin was not looked at"},
      {"wear.block-too-long", "{day}: {worn} min at once, planned {planned}"},
      {"wear.too-much", "{day}: {worn} min worn, planned {planned}"},
      {"wear.too-little", "{day}: {worn} min worn, planned {planned}"},
      {"wear.short-break", "{day}: {off} min off between blocks, planned {planned}"},
      {"wear.too-red", "{day}: red after {minutes} min: no increase, call the clinic"},
      {"wear.harm", "{day}: a sign of harm: leave it off, call the clinic"},
      {"wear.look-first", "{day}: look at the skin before the next block"},
      {"wear.done-today", "{day}: all of today is worn"},

      {"cert.by-clinic", "stated by the clinic"},
      {"cert.by-design", "true of every programme here"},
      {"cert.equipment", "{exercise}: {equipment}"},
      {"cert.no-equipment", "{exercise}: none"},
      {"cert.exercise-unknown", "{exercise}: not in the catalogue"},
      {"cert.words", "{exercise}: words in {language}"},
      {"cert.words-missing", "{exercise}: no words"},
      {"cert.progression", "{exercise}: has a rule"},
      {"cert.progression-missing", "{exercise}: no rule"},
      {"cert.dose", "{exercise}: dose and days stated"},
      {"cert.dose-missing", "{exercise}: dose or days missing"},
      {"cert.tailoring",
       "{exercise}: sides {sides}, support {support}, rung {rung}, reasons written {reasons}"},
      {"cert.tailoring-missing", "{exercise}: side or support missing"},
      {"cert.advice", "the programme gives advice"},
      {"cert.limb-care", "{exercise}: limb care"},
      {"cert.advice-missing", "no advice and no limb care"},
      {"cert.first-programme", "the first programme: nothing was progressed yet"},
      {"cert.changes", "programme {number} says what changed"},
      {"cert.changes-missing", "programme {number} does not say what changed"},
      {"cert.events",
       "{practices} practices; with a red flag {red_flags}, a fall {falls}, a stop for pain {pain}, for skin "
       "{skin}, other {other}"},
      {"cert.adherence", "{done} of {due} occasions done"},
      {"cert.no-practice", "no practice known yet"},
      {"cert.setting", "home: rails {rails}, sturdy chairs {chairs}, someone near {someone_near}"},
      {"cert.setting-missing", "the home is not described"},
  };
  return kWords;
}

void fill(std::string& text, const std::string& name, const std::string& value) {
  const std::string placeholder = "{" + name + "}";
  for (auto at = text.find(placeholder); at != std::string::npos; at = text.find(placeholder, at)) {
    text.replace(at, placeholder.size(), value.empty() ? "-" : value);
  }
}

}  // namespace

std::string evidenceText(const EvidenceLine& line) {
  const auto found = templates().find(line.key);
  std::string text = found == templates().end() ? line.key : found->second;
  for (const auto& [name, value] : line.args) {
    if (found == templates().end()) text.append(" ").append(name).append("=").append(value);
    fill(text, name, value);
  }
  return text;
}

bool hasEvidenceWords(const std::string& key) { return templates().contains(key); }

}  // namespace newel::tool
