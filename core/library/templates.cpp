#include "core/library/templates.h"

#include <algorithm>
#include <set>

#include "core/library/default_entry.h"
#include "core/library/wording.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr std::uint32_t kUsualWeeks = 4;  // common practice, no source
constexpr std::uint32_t kMostWeeks = 52;
constexpr int kWeek = 7;
constexpr int kMostMeasures = 10;

v1::DoseKind kindOf(const v1::Dose& dose) {
  if (dose.has_sets()) return v1::DOSE_KIND_SETS;
  if (dose.has_minutes()) return v1::DOSE_KIND_MINUTES;
  return dose.has_passes() ? v1::DOSE_KIND_PASSES : v1::DOSE_KIND_UNSPECIFIED;
}

const v1::Rung* rungOf(const v1::Exercise& exercise, const std::string& id) {
  const auto found = std::find_if(exercise.ladder().begin(), exercise.ladder().end(),
                                  [&id](const v1::Rung& rung) { return rung.id() == id; });
  return found == exercise.ladder().end() ? nullptr : &*found;
}

// The numbers of a dose that make it heavier, in one order for each kind.
std::vector<std::uint32_t> load(const v1::Dose& dose) {
  if (dose.has_sets()) return {dose.sets().sets(), dose.sets().repetitions(), dose.sets().hold_s()};
  if (dose.has_minutes()) return {dose.minutes().minutes(), dose.minutes().bouts()};
  if (dose.has_passes()) {
    return {dose.passes().passes(),
            dose.passes().has_distance_m() ? dose.passes().distance_m() : dose.passes().step_count()};
  }
  return {};
}

bool withinExercise(const v1::Dose& dose, const v1::Exercise& exercise) {
  auto least = load(exercise.default_dose());
  auto most = least;
  for (const v1::Rung& rung : exercise.ladder()) {
    const auto numbers = load(rung.dose());
    for (std::size_t i = 0; i < numbers.size(); ++i) {
      least[i] = std::min(least[i], numbers[i]);
      most[i] = std::max(most[i], numbers[i]);
    }
  }
  const auto numbers = load(dose);
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    if (numbers[i] < least[i] || numbers[i] > most[i]) return false;
  }
  return true;
}

template <typename List>
bool has(const List& list, int value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

class TemplateCheck {
 public:
  TemplateCheck(const Catalogue& catalogue, bool within) : m_catalogue(catalogue), m_within(within) {}

  std::vector<CatalogueProblem> problems(const v1::ProgrammeTemplate& value) {
    for (int i = 0; i < value.entries_size(); ++i)
      entry("entries[" + std::to_string(i) + "].", value.entries(i));
    for (int i = 0; i < value.cards_size(); ++i) {
      if (m_catalogue.card(value.cards(i).card_id()) == nullptr)
        say("cards[" + std::to_string(i) + "].card_id", "there is no such card");
    }
    return m_found;
  }

 private:
  void say(const std::string& path, const std::string& reason) { m_found.push_back({path, reason}); }

  void entry(const std::string& path, const v1::TemplateEntry& entry) {
    const v1::Exercise* exercise = m_catalogue.find(entry.exercise_id());
    if (exercise == nullptr) return say(path + "exercise_id", "there is no such exercise");
    if (!entry.rung_id().empty() && rungOf(*exercise, entry.rung_id()) == nullptr)
      say(path + "rung_id", "the exercise has no such rung");
    if (entry.has_dose()) {
      if (kindOf(entry.dose()) != exercise->dose_kind()) {
        say(path + "dose", "is not of the exercise's kind");
      } else if (m_within && !withinExercise(entry.dose(), *exercise)) {
        say(path + "dose", "is outside what the exercise's dose and ladder span");
      }
    }
    if (entry.support() != v1::SUPPORT_UNSPECIFIED && !has(exercise->supports(), entry.support()))
      say(path + "support", "the exercise does not have it");
    if (entry.side_policy() != v1::SIDE_POLICY_UNSPECIFIED &&
        !has(exercise->side_policies(), entry.side_policy()))
      say(path + "side_policy", "the exercise does not have it");
    if (entry.prosthesis() != v1::PROSTHESIS_USE_UNSPECIFIED &&
        exercise->prosthesis() != v1::PROSTHESIS_USE_EITHER && exercise->prosthesis() != entry.prosthesis())
      say(path + "prosthesis", "the exercise says otherwise");
  }

  const Catalogue& m_catalogue;
  bool m_within;
  std::vector<CatalogueProblem> m_found;
};

bool needsSoundLimb(v1::SidePolicy policy) {
  return policy == v1::SIDE_POLICY_PROSTHETIC || policy == v1::SIDE_POLICY_SOUND;
}

v1::SidePolicy forAnybody(v1::SidePolicy policy, const v1::Person& person) {
  if (policy != v1::SIDE_POLICY_LEFT && policy != v1::SIDE_POLICY_RIGHT) return policy;
  if (person.limbs_size() != 1) return v1::SIDE_POLICY_UNSPECIFIED;
  const v1::Side side = policy == v1::SIDE_POLICY_LEFT ? v1::SIDE_LEFT : v1::SIDE_RIGHT;
  return person.limbs(0).side() == side ? v1::SIDE_POLICY_PROSTHETIC : v1::SIDE_POLICY_SOUND;
}

v1::TemplateEntry entryLeft(const v1::Entry& entry, const v1::Person& person) {
  v1::TemplateEntry left;
  left.set_exercise_id(entry.exercise_id());
  left.set_rung_id(entry.rung_id());
  *left.mutable_dose() = entry.dose();
  left.set_support(entry.support());
  left.set_side_policy(forAnybody(entry.side_policy(), person));
  left.set_prosthesis(entry.prosthesis());
  *left.mutable_schedule() = entry.schedule();
  left.mutable_schedule()->clear_pauses();
  if (entry.has_progression()) *left.mutable_progression() = entry.progression();
  left.set_pacing(entry.pacing());
  return left;
}

// Rounded to whole weeks: a measure belongs to a visit, not to a day.
std::uint32_t weeksBetween(const std::string& from, const std::string& to) {
  const auto first = parseLocalDay(from);
  const auto last = parseLocalDay(to);
  if (!first.ok() || !last.ok() || *last <= *first) return 1;
  const auto weeks = static_cast<std::uint32_t>((*last - *first + kWeek / 2) / kWeek);
  return std::clamp(weeks, 1U, kMostWeeks);
}

v1::WearPlan wearLeft(const v1::WearPlan& plan) {
  v1::WearPlan left;
  *left.mutable_steps() = plan.steps();
  left.set_off_min(plan.off_min());
  left.set_grace_min(plan.grace_min());
  left.set_redness_min(plan.redness_min());
  left.set_redness_action(plan.redness_action());
  return left;
}

std::uint32_t weeksOf(const v1::Programme& draft) {
  const auto first = parseLocalDay(draft.effective_day());
  const auto last = parseLocalDay(draft.end_day());
  if (!first.ok() || !last.ok() || *last < *first) return kUsualWeeks;
  const auto weeks = static_cast<std::uint32_t>((*last - *first + kWeek) / kWeek);
  return std::clamp(weeks, 1U, kMostWeeks);
}

}  // namespace

std::vector<CatalogueProblem> problemsOfTemplate(const v1::ProgrammeTemplate& programme_template,
                                                 const Catalogue& catalogue) {
  return TemplateCheck(catalogue, /*within=*/true).problems(programme_template);
}

absl::Status fitsCatalogue(const v1::ProgrammeTemplate& programme_template, const Catalogue& catalogue) {
  const auto found = TemplateCheck(catalogue, /*within=*/false).problems(programme_template);
  if (found.empty()) return absl::OkStatus();
  return absl::InvalidArgumentError(found.front().path + ": " + found.front().reason);
}

bool fitsPerson(const v1::ProgrammeTemplate& programme_template, const v1::Person& person) {
  if (!programme_template.has_fit()) return true;
  const v1::TemplateFit& fit = programme_template.fit();
  if (fit.both_lost() != (person.limbs_size() > 1)) return false;
  for (const v1::LimbLoss& limb : person.limbs()) {
    if (!has(fit.levels(), limb.level())) return false;
  }
  if (person.mobility() < fit.least_mobility() || person.mobility() > fit.most_mobility()) return false;
  return (fit.phase() == v1::TEMPLATE_PHASE_BEFORE_PROSTHESIS) != ownsProsthesis(person);
}

v1::Entry entryFrom(const v1::TemplateEntry& from, const v1::Exercise& exercise, const v1::Person& person) {
  v1::Entry entry = defaultEntry(exercise, person);
  if (const v1::Rung* rung = rungOf(exercise, from.rung_id())) standOn(entry, *rung);
  if (from.has_dose()) *entry.mutable_dose() = from.dose();
  if (from.support() != v1::SUPPORT_UNSPECIFIED) entry.set_support(from.support());
  const bool meant = from.side_policy() != v1::SIDE_POLICY_UNSPECIFIED &&
                     (person.limbs_size() < 2 || !needsSoundLimb(from.side_policy()));
  if (meant) entry.set_side_policy(from.side_policy());
  // Nobody takes off or puts on what they do not own: then defaultEntry() and the rules say what follows.
  if (from.prosthesis() != v1::PROSTHESIS_USE_UNSPECIFIED && ownsProsthesis(person))
    entry.set_prosthesis(from.prosthesis());
  *entry.mutable_schedule() = from.schedule();
  if (from.has_progression()) *entry.mutable_progression() = from.progression();
  if (from.pacing() != v1::PACING_UNSPECIFIED) entry.set_pacing(from.pacing());
  return entry;
}

v1::WearPlan wearFor(const v1::ProgrammeTemplate& from, const v1::Programme& programme) {
  v1::WearPlan plan = from.wear_plan();
  plan.set_person_id(programme.person_id());
  plan.set_effective_day(programme.effective_day());
  plan.set_zone(programme.zone());
  return plan;
}

void askMeasures(const v1::ProgrammeTemplate& from, v1::Programme& programme) {
  const auto first = parseLocalDay(programme.effective_day());
  std::set<std::string> asked;
  for (const auto& measure : programme.measures()) asked.insert(measure.kind());
  for (const auto& measure : from.measures()) {
    if (!first.ok() || programme.measures_size() >= kMostMeasures || !asked.insert(measure.kind()).second)
      continue;
    v1::AskedMeasure& added = *programme.add_measures();
    added.set_kind(measure.kind());
    added.set_by_day(formatLocalDay(*first + absl::civil_diff_t{kWeek} * measure.after_weeks()));
  }
}

v1::ProgrammeTemplate templateOf(const v1::Programme& draft, const v1::Person& person,
                                 const std::string& name, const std::string& language) {
  v1::ProgrammeTemplate left;
  (*left.mutable_words())[language].set_name(name);
  std::set<std::string> taken;
  for (const v1::Entry& entry : draft.entries()) {
    if (taken.insert(entry.exercise_id()).second) *left.add_entries() = entryLeft(entry, person);
  }
  *left.mutable_cards() = draft.cards();
  for (v1::AdviceEntry& card : *left.mutable_cards()) card.clear_note();
  left.set_weeks(weeksOf(draft));
  for (const v1::AskedMeasure& asked : draft.measures()) {
    v1::TemplateMeasure& measure = *left.add_measures();
    measure.set_kind(asked.kind());
    measure.set_after_weeks(weeksBetween(draft.effective_day(), asked.by_day()));
  }
  if (draft.has_wear_plan()) *left.mutable_wear_plan() = wearLeft(draft.wear_plan());
  return left;
}

const v1::TemplateWords* wordsOf(const v1::ProgrammeTemplate& programme_template,
                                 const std::string& language) {
  const auto& words = programme_template.words();
  for (const std::string& wanted : {language, language.substr(0, language.find('-')), std::string("en")}) {
    const auto found = words.find(wanted);
    if (found != words.end()) return &found->second;
  }
  return words.empty() ? nullptr : &words.begin()->second;
}

}  // namespace newel
