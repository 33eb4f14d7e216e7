#include "sync/tool/everyone.h"

#include <algorithm>
#include <set>

#include "core/library/default_entry.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "sync/tool/person_options.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

constexpr std::size_t kMostProblems = 50;
constexpr char kEntryId[] = "00000000-0000-7000-8000-000000000002";

struct LevelAndKnee {
  v1::LimbLossLevel level;
  v1::KneeKind knee;
};

std::vector<LevelAndKnee> levelsAndKnees() {
  std::vector<LevelAndKnee> all = {{v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT, v1::KNEE_KIND_OWN_KNEE},
                                   {v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION, v1::KNEE_KIND_OWN_KNEE},
                                   {v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, v1::KNEE_KIND_OWN_KNEE}};
  for (const auto level : {v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL,
                           v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION}) {
    for (const auto knee : {v1::KNEE_KIND_LOCKED, v1::KNEE_KIND_MECHANICAL, v1::KNEE_KIND_YIELDING,
                            v1::KNEE_KIND_NO_PROSTHESIS})
      all.push_back({level, knee});
  }
  return all;
}

// left, right, both with the left the stronger, both with the right the stronger
constexpr std::size_t kSides = 4;

v1::Person personWith(const LevelAndKnee& lost, std::size_t sides) {
  PersonOptions options;
  options.level = shortName(v1::LimbLossLevel_descriptor(), lost.level);
  options.knee = shortName(v1::KneeKind_descriptor(), lost.knee);
  options.side = sides % 2 == 0 ? "left" : "right";
  options.both = sides >= 2;
  v1::Person person = *personFrom(options);
  for (auto& limb : *person.mutable_limbs()) {
    limb.set_has_prosthesis(lost.knee != v1::KNEE_KIND_NO_PROSTHESIS);
    if (!limb.has_prosthesis()) limb.set_foot(v1::FOOT_KIND_NO_PROSTHESIS);
  }
  return person;
}

struct Case {
  const v1::Entry& entry;
  const v1::Person& person;
};

class Everyone {
 public:
  Everyone(const Catalogue& catalogue, const RuleBook& rules)
      : m_catalogue(catalogue), m_rules(rules), m_languages(catalogue.languages()) {}

  EveryoneReport run() {
    checkPairs();
    checkProducts();
    return m_report;
  }

 private:
  void checkPairs() {
    const auto lost = levelsAndKnees();
    const std::size_t conditions = v1::Condition_MAX + 1;
    const std::vector<std::size_t> values = {m_catalogue.exercises().size(),
                                             lost.size(),
                                             kSides,
                                             v1::MobilityLevel_MAX,
                                             v1::Rails_MAX,
                                             v1::WalkingAid_MAX,
                                             3,  // chairs
                                             v1::Answer_MAX,
                                             v1::Answer_MAX,
                                             v1::Answer_MAX,
                                             conditions,
                                             2,  // prosthesis
                                             v1::Support_MAX,
                                             m_languages.size()};
    for (const auto& row : everyPair(values)) {
      v1::Person person = personWith(lost[row[1]], row[2]);
      person.set_mobility(static_cast<v1::MobilityLevel>(row[3] + 1));
      auto& home = *person.mutable_home();
      home.set_rails(static_cast<v1::Rails>(row[4] + 1));
      person.set_walking_aid(static_cast<v1::WalkingAid>(row[5] + 1));
      home.set_sturdy_chairs(static_cast<std::uint32_t>(row[6]));
      home.set_someone_near(static_cast<v1::Answer>(row[7] + 1));
      person.set_can_get_up_from_floor(static_cast<v1::Answer>(row[8] + 1));
      home.set_floor_space(static_cast<v1::Answer>(row[9] + 1));
      if (row[10] > 0) person.add_conditions(static_cast<v1::Condition>(row[10]));
      person.set_language(m_languages[row[13]]);
      const v1::Exercise& exercise = m_catalogue.exercises()[row[0]];
      v1::Entry entry = entryOf(exercise, person);
      entry.set_prosthesis(row[11] == 0 ? v1::PROSTHESIS_USE_ON : v1::PROSTHESIS_USE_OFF);
      entry.set_support(static_cast<v1::Support>(row[12] + 1));
      ++m_report.pairs;
      checkCase({entry, person}, true);
    }
  }

  void checkProducts() {
    for (const auto& lost : levelsAndKnees()) {
      for (std::size_t sides = 0; sides < kSides; ++sides) {
        v1::Person person = personWith(lost, sides);
        for (int mobility = 1; mobility <= v1::MobilityLevel_MAX; ++mobility) {
          for (int rails = 1; rails <= v1::Rails_MAX; ++rails) {
            person.set_mobility(static_cast<v1::MobilityLevel>(mobility));
            person.mutable_home()->set_rails(static_cast<v1::Rails>(rails));
            // What is led does not hang on mobility and rails.
            checkCatalogue(person, mobility == 1 && rails == 1);
          }
        }
      }
    }
  }

  void checkCatalogue(const v1::Person& person, bool lead) {
    for (const auto& exercise : m_catalogue.exercises()) {
      ++m_report.products;
      checkCase({entryOf(exercise, person), person}, lead);
    }
  }

  static v1::Entry entryOf(const v1::Exercise& exercise, const v1::Person& person) {
    v1::Entry entry = defaultEntry(exercise, person);
    entry.set_id(kEntryId);
    entry.mutable_schedule()->set_times_per_week(7);
    entry.mutable_schedule()->add_windows()->set_to_min(1440);
    return entry;
  }

  void checkCase(const Case& at, bool lead) {
    if (const auto status = check(at.person); !status.ok()) return problem(at, std::string(status.message()));
    const auto findings = m_rules.check(at.entry, at.person, m_catalogue);
    if (!findings.ok()) return problem(at, std::string(findings.status().message()));
    checkFindings(at, *findings);
    if (lead) checkLed(at, *findings);
  }

  void checkFindings(const Case& at, const std::vector<v1::Finding>& findings) {
    std::set<std::string> seen;
    bool blocks = false;
    for (const auto& finding : findings) {
      if (!seen.insert(finding.rule_id()).second) problem(at, finding.rule_id() + " twice");
      if (finding.therapist().empty() || finding.person().empty())
        problem(at, finding.rule_id() + ": no words");
      if ((finding.therapist() + finding.person()).find_first_of("{}") != std::string::npos)
        problem(at, finding.rule_id() + ": words that were not filled in");
      blocks = blocks || finding.effect() == v1::EFFECT_BLOCK;
    }
    if (blocks && maySign(findings)) problem(at, "blocked, and may be signed");
    const auto shown = shownCaution(findings);
    const auto cautions = std::count_if(findings.begin(), findings.end(), [](const auto& finding) {
      return finding.effect() == v1::EFFECT_CAUTION;
    });
    if (shown.has_value() != (cautions > 0)) problem(at, "a caution is not shown");
    if (shown.has_value() && shown->effect() != v1::EFFECT_CAUTION) problem(at, "shows what is no caution");
  }

  // What is not blocked can be led, with words in every beat, all of one language.
  void checkLed(const Case& at, const std::vector<v1::Finding>& findings) {
    if (std::any_of(findings.begin(), findings.end(),
                    [](const auto& finding) { return finding.effect() == v1::EFFECT_BLOCK; }))
      return;
    const auto timeline = compileTimeline(at.entry, at.person, m_catalogue, at.person.language());
    if (!timeline.ok()) return problem(at, "cannot be led: " + std::string(timeline.status().message()));
    ++m_report.led;
    const auto* words = wordsOrEnglish(m_catalogue, at.entry.exercise_id(), at.person.language());
    if (words == nullptr || timeline->language() != words->language()) problem(at, "is led in two languages");
    for (const auto& beat : timeline->beats()) {
      if (beat.screen().empty()) problem(at, "a beat without words: " + beat.phase_id());
      if ((beat.screen() + beat.spoken()).find_first_of("{}") != std::string::npos)
        problem(at, "words that were not filled in: " + beat.screen());
    }
  }

  void problem(const Case& at, const std::string& what) {
    if (m_report.problems.size() >= kMostProblems) return;
    std::string line = at.entry.exercise_id() + " " + shortName(v1::Support_descriptor(), at.entry.support());
    for (const auto& limb : at.person.limbs()) {
      line += " " + shortName(v1::Side_descriptor(), limb.side()) + " " +
              shortName(v1::LimbLossLevel_descriptor(), limb.level()) + " " +
              shortName(v1::KneeKind_descriptor(), limb.knee());
    }
    line += " " + shortName(v1::MobilityLevel_descriptor(), at.person.mobility()) + " " +
            shortName(v1::Rails_descriptor(), at.person.home().rails()) + " " + at.person.language();
    for (const int condition : at.person.conditions())
      line += " " + shortName(v1::Condition_descriptor(), condition);
    m_report.problems.push_back(line + ": " + what);
  }

  const Catalogue& m_catalogue;
  const RuleBook& m_rules;
  const std::vector<std::string> m_languages;
  EveryoneReport m_report;
};

}  // namespace

EveryoneReport checkEveryone(const Catalogue& catalogue, const RuleBook& rules) {
  return Everyone(catalogue, rules).run();
}

}  // namespace newel::tool
