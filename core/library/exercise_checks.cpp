#include "core/library/exercise_checks.h"

#include <google/protobuf/descriptor.h>

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <set>

#include "core/library/plain_words.h"
#include "core/library/rest_split.h"
#include "core/library/wording.h"

namespace newel {
namespace {

using Found = std::vector<CatalogueProblem>;

std::string indexed(const std::string& field, int index) { return field + "[" + std::to_string(index) + "]"; }

bool hasWorkingSide(v1::SidePolicy policy) { return policy != v1::SIDE_POLICY_WHOLE_BODY; }

bool allPolicies(const v1::Exercise& exercise, bool (*test)(v1::SidePolicy)) {
  return std::all_of(exercise.side_policies().begin(), exercise.side_policies().end(),
                     [&](int policy) { return test(static_cast<v1::SidePolicy>(policy)); });
}

// Such a policy needs a sound leg.
bool needsOneSound(v1::SidePolicy policy) {
  return policy == v1::SIDE_POLICY_PROSTHETIC || policy == v1::SIDE_POLICY_SOUND;
}

void checkRole(Found& found, const v1::Exercise& exercise, v1::LimbRole role, const std::string& path) {
  const bool of_side = role == v1::LIMB_ROLE_WORKING || role == v1::LIMB_ROLE_OTHER;
  if (of_side && !allPolicies(exercise, hasWorkingSide))
    found.push_back({path, "no side works under SIDE_POLICY_WHOLE_BODY"});
  const bool one_sound = role == v1::LIMB_ROLE_PROSTHETIC || role == v1::LIMB_ROLE_SOUND;
  if (one_sound && exercise.both_sides() != v1::BOTH_SIDES_REFUSED)
    found.push_back({path, "has no answer when both limbs are lost; use STRONGER or WEAKER, or refuse"});
}

void checkPhase(Found& found, const v1::Exercise& exercise, const v1::Phase& phase, const std::string& path) {
  static const std::map<v1::PhaseLength, v1::PhaseKind> kinds = {
      {v1::PHASE_LENGTH_MOVE, v1::PHASE_KIND_MOVE},     {v1::PHASE_LENGTH_HOLD, v1::PHASE_KIND_HOLD},
      {v1::PHASE_LENGTH_RETURN, v1::PHASE_KIND_RETURN}, {v1::PHASE_LENGTH_BOUT, v1::PHASE_KIND_HOLD},
      {v1::PHASE_LENGTH_STEP, v1::PHASE_KIND_MOVE},
  };
  const auto kind = kinds.find(phase.length());
  if (kind != kinds.end() && kind->second != phase.kind())
    found.push_back({path + ".kind", "does not go with this length"});
  checkRole(found, exercise, phase.moves(), path + ".moves");
}

void checkParts(Found& found, const v1::Exercise& exercise) {
  std::set<std::string> ids;
  bool has_beat = false;
  for (int p = 0; p < exercise.parts_size(); ++p) {
    const v1::Part& part = exercise.parts(p);
    const std::string path = indexed("parts", p);
    if (!ids.insert(part.id()).second) found.push_back({path + ".id", "is given twice"});
    const bool per_step = part.repeat() == v1::PART_REPEAT_PER_STEP;
    if (per_step && exercise.dose_kind() != v1::DOSE_KIND_PASSES)
      found.push_back({path + ".repeat", "PER_STEP needs a dose in passes"});
    if (part.one_phase_a_step() && !per_step)
      found.push_back({path + ".one_phase_a_step", "goes with PART_REPEAT_PER_STEP only"});
    for (int i = 0; i < part.phases_size(); ++i) {
      checkPhase(found, exercise, part.phases(i), path + "." + indexed("phases", i));
      has_beat = has_beat || part.phases(i).length() != v1::PHASE_LENGTH_HOLD;
    }
  }
  if (!has_beat && exercise.parts_size() > 0)
    found.push_back({"parts[0]", "with hold_s 0 nothing would be left of a repetition"});
}

void checkLadder(Found& found, const v1::Exercise& exercise) {
  std::set<std::string> ids;
  for (int i = 0; i < exercise.ladder_size(); ++i) {
    const v1::Rung& rung = exercise.ladder(i);
    if (!ids.insert(rung.id()).second) found.push_back({indexed("ladder", i) + ".id", "is given twice"});
    if (std::find(exercise.supports().begin(), exercise.supports().end(), rung.support()) ==
        exercise.supports().end())
      found.push_back({indexed("ladder", i) + ".support", "is not in supports"});
  }
}

void checkSides(Found& found, const v1::Exercise& exercise) {
  const bool changes = std::find(exercise.side_policies().begin(), exercise.side_policies().end(),
                                 v1::SIDE_POLICY_ONE_THEN_OTHER) != exercise.side_policies().end();
  if (changes && exercise.change_side_s() == 0)
    found.push_back({"change_side_s", "is 0, yet one side follows the other"});
  if (exercise.both_sides() != v1::BOTH_SIDES_REFUSED && allPolicies(exercise, needsOneSound))
    found.push_back({"side_policies", "none of them has a meaning when both limbs are lost"});
}

// Phase lengths are known once a dose is: the shortest beat that a cue is spoken over.
std::uint32_t phaseSeconds(const v1::Phase& phase, const v1::Dose& dose) {
  switch (phase.length()) {
    case v1::PHASE_LENGTH_MOVE:
      return dose.sets().move_s();
    case v1::PHASE_LENGTH_HOLD:
      return dose.sets().hold_s();
    case v1::PHASE_LENGTH_RETURN:
      return dose.sets().return_s();
    case v1::PHASE_LENGTH_FIXED:
      return phase.fixed_s();
    case v1::PHASE_LENGTH_STEP:
      return dose.passes().step_s();
    case v1::PHASE_LENGTH_BOUT:
      return dose.minutes().minutes() * 60;
    default:
      return 0;
  }
}

using Shortest = std::map<std::string, std::uint32_t>;

void keepShortest(Shortest& shortest, const std::string& key, std::uint32_t seconds) {
  if (seconds == 0) return;  // such a beat is left out
  const auto [at, is_new] = shortest.emplace(key, seconds);
  if (!is_new) at->second = std::min(at->second, seconds);
}

Shortest shortestBeats(const v1::Exercise& exercise) {
  std::vector<const v1::Dose*> doses = {&exercise.default_dose()};
  for (const v1::Rung& rung : exercise.ladder()) doses.push_back(&rung.dose());
  Shortest shortest;
  keepShortest(shortest, "get_ready", exercise.get_ready_s());
  keepShortest(shortest, "change_side", exercise.change_side_s());
  for (const v1::Dose* dose : doses) {
    const std::uint32_t rest_s =
        std::max({dose->sets().rest_s(), dose->minutes().rest_s(), dose->passes().rest_s()});
    keepShortest(shortest, "rest", plainRestSeconds(rest_s, exercise.get_ready_s()));
    keepShortest(shortest, "repetition_rest", dose->sets().repetition_rest_s());
    for (const v1::Part& part : exercise.parts()) {
      for (const v1::Phase& phase : part.phases()) {
        keepShortest(shortest, phase.id(), phaseSeconds(phase, *dose));
      }
    }
  }
  return shortest;
}

v1::Person samplePerson(bool both_lost) {
  v1::Person person;
  person.add_limbs()->set_side(v1::SIDE_LEFT);
  person.mutable_limbs(0)->set_level(v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  if (both_lost) {
    person.add_limbs()->set_side(v1::SIDE_RIGHT);
    person.mutable_limbs(1)->set_level(v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
    person.set_strong_side(v1::SIDE_RIGHT);
  }
  return person;
}

class WordsCheck {
 public:
  WordsCheck(const v1::ExerciseWords& words, const v1::Exercise& exercise, const Catalogue& catalogue)
      : m_words(words), m_exercise(exercise), m_catalogue(catalogue), m_shortest(shortestBeats(exercise)) {}

  Found run() {
    m_own_words = m_exercise.both_sides() == v1::BOTH_SIDES_OWN_WORDS;
    checkKeys();
    for (const auto& [key, cue] : m_words.cues()) checkCue(key, cue);
    checkPlainTexts();
    return m_found;
  }

 private:
  std::set<std::string> requiredKeys() const {
    std::set<std::string> keys = {"get_ready", "rest"};
    if (m_exercise.change_side_s() > 0) keys.insert("change_side");
    for (const v1::Part& part : m_exercise.parts()) {
      for (const v1::Phase& phase : part.phases()) keys.insert(phase.id());
    }
    if (!m_own_words) return keys;
    std::set<std::string> both = keys;
    for (const std::string& key : keys) both.insert(key + ".both");
    return both;
  }

  void checkKeys() {
    const std::set<std::string> required = requiredKeys();
    for (const std::string& key : required) {
      if (m_words.cues().count(key) == 0) m_found.push_back({"", "no cue \"" + key + "\""});
    }
    for (const auto& [key, cue] : m_words.cues()) {
      const bool extra = key == "repetition_rest" || (m_own_words && key == "repetition_rest.both");
      if (!extra && required.count(key) == 0)
        m_found.push_back({"cues[" + key + "]", "the exercise has no beat for this cue"});
    }
  }

  // The people and sides that a text is said to.
  std::vector<WordingContext> contextsFor(bool both_lost, bool of_side) const {
    static const v1::Person kOneSide = samplePerson(false);
    static const v1::Person kBothSides = samplePerson(true);
    static const v1::Entry kEntry = [] {
      v1::Entry entry;
      entry.set_support(v1::SUPPORT_TWO_HANDS);
      return entry;
    }();
    std::vector<WordingContext> contexts;
    WordingContext context{&m_catalogue, both_lost ? &kBothSides : &kOneSide, &kEntry, m_words.language()};
    if (of_side && allPolicies(m_exercise, hasWorkingSide)) context.working = v1::SIDE_LEFT;
    contexts.push_back(context);
    return contexts;
  }

  void checkText(const std::string& path, const std::string& text, bool one_lost, bool both_lost,
                 bool of_side) {
    for (const bool both : {false, true}) {
      if (both ? !both_lost : !one_lost) continue;
      for (const WordingContext& context : contextsFor(both, of_side)) {
        const absl::StatusOr<std::string> resolved = resolveWords(text, context);
        if (resolved.ok()) continue;
        const std::string reason(resolved.status().message().data(), resolved.status().message().size());
        m_found.push_back({path, reason + (both ? " when both limbs are lost" : "")});
        return;
      }
    }
  }

  bool refused() const { return m_exercise.both_sides() == v1::BOTH_SIDES_REFUSED; }

  void checkCue(const std::string& key, const v1::Cue& cue) {
    const std::size_t dot = key.find(".both");
    const bool for_both = dot != std::string::npos;
    const std::string path = "cues[" + key + "]";
    for (const std::string* text : {&cue.screen(), &cue.spoken()})
      checkText(path, *text, !for_both, for_both || (!m_own_words && !refused()), true);
    checkSpoken(path, key.substr(0, dot), cue, for_both);
  }

  void checkSpoken(const std::string& path, const std::string& key, const v1::Cue& cue, bool for_both) {
    const auto shortest = m_shortest.find(key);
    if (shortest == m_shortest.end()) return;
    for (const WordingContext& context : contextsFor(for_both, true)) {
      const absl::StatusOr<std::string> text = resolveWords(cue.spoken(), context);
      if (!text.ok() || spokenSeconds(*text) <= shortest->second) continue;
      m_found.push_back(
          {path, "spoken takes longer than its beat of " + std::to_string(shortest->second) + " s"});
    }
  }

  void checkPlainTexts() {
    const auto check = [this](const std::string& path, const std::string& text) {
      checkText(path, text, true, !refused(), false);
    };
    check("title", m_words.title());
    check("purpose", m_words.purpose());
    check("start", m_words.start());
    check("breathing", m_words.breathing());
    check("support", m_words.support());
    for (int i = 0; i < m_words.good_size(); ++i) check(indexed("good", i), m_words.good(i));
    for (int i = 0; i < m_words.stop_if_size(); ++i) check(indexed("stop_if", i), m_words.stop_if(i));
    for (int i = 0; i < m_words.cautions_size(); ++i) check(indexed("cautions", i), m_words.cautions(i));
    for (int i = 0; i < m_words.faults_size(); ++i) {
      check(indexed("faults", i), m_words.faults(i).seen());
      check(indexed("faults", i), m_words.faults(i).mend());
    }
  }

  const v1::ExerciseWords& m_words;
  const v1::Exercise& m_exercise;
  const Catalogue& m_catalogue;
  const Shortest m_shortest;
  bool m_own_words = false;
  Found m_found;
};

void requireNames(Found& found, const v1::PhraseFile& file, const std::string& group,
                  const google::protobuf::EnumDescriptor* type, const std::string& prefix) {
  for (int i = 0; i < type->value_count(); ++i) {
    if (type->value(i)->number() == 0) continue;
    const std::string key = phraseKey(group, type->value(i)->name(), prefix);
    if (file.phrases().count(key) == 0) found.push_back({"", "no phrase \"" + key + "\""});
  }
}

}  // namespace

std::vector<CatalogueProblem> problemsOf(const v1::Exercise& exercise, const Catalogue& catalogue) {
  Found found;
  checkParts(found, exercise);
  checkLadder(found, exercise);
  checkSides(found, exercise);
  for (int i = 0; i < exercise.muscles_size(); ++i) {
    if (catalogue.phrase("muscle." + exercise.muscles(i), "en").empty())
      found.push_back({indexed("muscles", i), "no phrase \"muscle." + exercise.muscles(i) + "\""});
  }
  // A tag that nobody knows would be a safety rule that never speaks.
  for (int i = 0; i < exercise.tags_size(); ++i) {
    if (catalogue.phrase("tag." + exercise.tags(i), "en").empty())
      found.push_back({indexed("tags", i), "no phrase \"tag." + exercise.tags(i) + "\""});
  }
  return found;
}

std::vector<CatalogueProblem> problemsOf(const v1::ExerciseWords& words, const v1::Exercise& exercise,
                                         const Catalogue& catalogue) {
  return WordsCheck(words, exercise, catalogue).run();
}

std::vector<CatalogueProblem> problemsOf(const v1::PhraseFile& phrases) {
  Found found;
  for (const char* key : {"leg.left", "leg.right", "arm.left", "arm.right", "side.left", "side.right",
                          "beat.short-rest", "beat.half-way", "beat.last-minute"}) {
    if (phrases.phrases().count(key) == 0) found.push_back({"", std::string("no phrase \"") + key + "\""});
  }
  requireNames(found, phrases, "support", v1::Support_descriptor(), "SUPPORT_");
  requireNames(found, phrases, "equipment", v1::Equipment_descriptor(), "EQUIPMENT_");
  requireNames(found, phrases, "position", v1::Position_descriptor(), "POSITION_");
  requireNames(found, phrases, "purpose", v1::Purpose_descriptor(), "PURPOSE_");
  requireNames(found, phrases, "side-policy", v1::SidePolicy_descriptor(), "SIDE_POLICY_");
  requireNames(found, phrases, "level", v1::LimbLossLevel_descriptor(), "LIMB_LOSS_LEVEL_");
  for (const auto& [key, text] : phrases.phrases()) {
    if (text.empty()) found.push_back({"phrases[" + key + "]", "is empty"});
  }
  return found;
}

}  // namespace newel
