// What is offered answers the finding, for everybody and every exercise, and makes nothing worse.
#include "core/review/fixes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/library/default_entry.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

const Catalogue& catalogue() { return Catalogue::builtIn(); }
const RuleBook& rules() { return RuleBook::builtIn(); }

std::set<std::string> rulesThat(const v1::Entry& entry, const v1::Person& person, bool must_be_answered) {
  std::set<std::string> ids;
  const auto findings = rules().check(entry, person, catalogue());
  EXPECT_TRUE(findings.ok()) << findings.status();
  for (const auto& finding : *findings) {
    const bool stands = finding.effect() == v1::EFFECT_BLOCK || finding.effect() == v1::EFFECT_ASK;
    if (stands || !must_be_answered) ids.insert(finding.rule_id());
  }
  return ids;
}

// In how many things two entries differ; support and dose that come with a rung are one.
int differences(const v1::Entry& a, const v1::Entry& b) {
  const bool rung = a.rung_id() != b.rung_id();
  return (rung ? 1 : static_cast<int>(a.support() != b.support())) +
         static_cast<int>(a.prosthesis() != b.prosthesis()) +
         static_cast<int>(a.side_policy() != b.side_policy());
}

TEST(Fixes, moreSupportAnswersThatThereIsTooLittle) {
  v1::Person person = test::transfemoralLeft();
  person.set_mobility(v1::MOBILITY_LEVEL_K1);
  v1::Entry entry = test::entryOf("sit-to-stand", person);
  entry.set_support(v1::SUPPORT_NO_HANDS);
  const auto before = rulesThat(entry, person, true);
  ASSERT_FALSE(before.empty());
  for (const auto& rule : before) {
    const auto fixes = fixesFor(entry, rule, person, catalogue(), rules());
    ASSERT_FALSE(fixes.empty()) << rule;
    EXPECT_EQ(fixes.front().kind, Fix::Kind::Support);
    EXPECT_EQ(fixes.front().entry.support(), v1::SUPPORT_TWO_HANDS);
    EXPECT_FALSE(rulesThat(fixes.front().entry, person, false).contains(rule));
  }
}

TEST(Fixes, aRuleThatIsSilentAndAnUnknownExerciseHaveNone) {
  const v1::Person person = test::transtibialRight();
  v1::Entry entry = test::entryOf("sit-to-stand", person);
  EXPECT_TRUE(fixesFor(entry, "there-is-no-such-rule", person, catalogue(), rules()).empty());
  entry.set_exercise_id("there-is-no-such-exercise");
  EXPECT_TRUE(fixesFor(entry, "standing-no-hands", person, catalogue(), rules()).empty());
}

// Every exercise with every support it has, for everybody: whatever any rule says of it.
TEST(FixesProperties, eachAnswersItsFindingAndStandsInTheWayOfNothingNew) {
  int offered = 0;
  int found = 0;
  for (const auto& [name, person] : test::samplePeople()) {
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      for (const int support : exercise.supports()) {
        v1::Entry entry = test::entryOf(exercise.id(), person);
        entry.set_support(static_cast<v1::Support>(support));
        entry.set_note("Mind the heel.");
        const auto stood = rulesThat(entry, person, true);
        for (const auto& rule : rulesThat(entry, person, false)) {
          ++found;
          const auto fixes = fixesFor(entry, rule, person, catalogue(), rules());
          ASSERT_LE(fixes.size(), kMostFixes);
          for (const Fix& fix : fixes) {
            ++offered;
            SCOPED_TRACE(name + " " + exercise.id() + " " + rule);
            EXPECT_FALSE(rulesThat(fix.entry, person, false).contains(rule));
            for (const auto& stands : rulesThat(fix.entry, person, true)) EXPECT_TRUE(stood.contains(stands));
            EXPECT_EQ(differences(entry, fix.entry), 1);
            EXPECT_EQ(check(fix.entry), absl::OkStatus());
            EXPECT_TRUE(compileTimeline(fix.entry, person, catalogue(), "en").ok());
            EXPECT_EQ(fix.entry.id(), entry.id());
            EXPECT_EQ(fix.entry.note(), entry.note());
            if (fix.entry.prosthesis() == v1::PROSTHESIS_USE_ON &&
                entry.prosthesis() != v1::PROSTHESIS_USE_ON) {
              EXPECT_TRUE(ownsProsthesis(person)) << "nobody puts on what they do not own";
            }
          }
        }
      }
    }
  }
  EXPECT_GT(found, 100);
  EXPECT_GT(offered, 20) << "of " << found;
}

}  // namespace
}  // namespace newel
