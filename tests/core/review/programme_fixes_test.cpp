// What is offered for a finding over a whole programme answers it, brings nothing worse, and never asks for
// more.
#include "core/review/programme_fixes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <set>

#include "core/records/check.h"
#include "core/review/fixes.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

using Kind = ProgrammeFix::Kind;

const Catalogue& catalogue() { return Catalogue::builtIn(); }
const RuleBook& rules() { return RuleBook::builtIn(); }

v1::Programme programmeOf(const v1::Person& person, const std::vector<std::string>& exercises,
                          const v1::Schedule& schedule) {
  v1::Programme draft;
  draft.set_effective_day("2026-11-30");
  draft.set_end_day("2026-12-27");
  draft.set_zone("Europe/Berlin");
  draft.set_advice("Rest when you need to.");
  draft.mutable_thresholds()->set_pain_stop_0_10(5);
  draft.mutable_thresholds()->set_pain_rise_0_10(2);
  for (const std::string& exercise : exercises) {
    v1::Entry& entry = *draft.add_entries();
    entry = test::entryOf(exercise, person);
    entry.set_id(test::idNumbered(100 + draft.entries_size()));
    *entry.mutable_schedule() = schedule;
  }
  return draft;
}

Review reviewOf(const v1::Programme& draft, const v1::Person& person, const v1::Programme* last) {
  auto review = reviewProgramme(draft, person, last, catalogue(), rules(), "en");
  EXPECT_TRUE(review.ok()) << review.status();
  return review.ok() ? *std::move(review) : Review();
}

std::vector<ProgrammeFix> fixes(const v1::Programme& draft, const std::string& rule, const v1::Person& person,
                                const v1::Programme* last = nullptr) {
  return programmeFixesFor(draft, reviewOf(draft, person, last), rule, person, last, catalogue(), rules());
}

std::set<std::string> rulesThat(const Review& review, bool must_be_answered) {
  std::set<std::string> ids;
  for (const auto& finding : review.programme_findings) {
    const bool stands = finding.effect() == v1::EFFECT_BLOCK || finding.effect() == v1::EFFECT_ASK;
    if (stands || !must_be_answered) ids.insert(finding.rule_id());
  }
  return ids;
}

double minutesOf(const Review& review) {
  return std::accumulate(review.minutes_by_weekday.begin(), review.minutes_by_weekday.end(), 0.0);
}

TEST(ProgrammeFixes, aHighLimitOfPainIsLoweredByAsLittleAsAnswersIt) {
  const v1::Person person = test::transtibialRight();
  v1::Programme draft = programmeOf(person, {"sit-to-stand"}, test::everyDay());
  draft.mutable_thresholds()->set_pain_stop_0_10(8);
  const auto offered = fixes(draft, "programme-pain-stop-high", person);
  ASSERT_EQ(offered.size(), 1U);
  EXPECT_EQ(offered.front().kind, Kind::PainStop);
  EXPECT_EQ(offered.front().programme.thresholds().pain_stop_0_10(), 5U);
}

TEST(ProgrammeFixes, aLongRunEndsEarlier) {
  const v1::Person person = test::transtibialRight();
  v1::Programme draft = programmeOf(person, {"sit-to-stand"}, test::everyDay());
  draft.set_end_day("2027-05-30");
  const auto offered = fixes(draft, "programme-long-run", person);
  ASSERT_EQ(offered.size(), 1U);
  EXPECT_EQ(offered.front().kind, Kind::EndDay);
  EXPECT_EQ(offered.front().programme.end_day(), "2027-02-21") << "twelve weeks from a Monday, to a Sunday";
}

TEST(ProgrammeFixes, strengthOnEveryDayIsSpread) {
  const v1::Person person = test::transtibialRight();
  const v1::Programme draft = programmeOf(person, {"adduction-squeeze"}, test::everyDay());
  const auto offered = fixes(draft, "programme-same-muscles-close", person);
  ASSERT_FALSE(offered.empty());
  EXPECT_EQ(offered.front().kind, Kind::Days);
  EXPECT_EQ(offered.front().entry_id, draft.entries(0).id());
  EXPECT_EQ(offered.front().programme.entries(0).schedule().weekdays().days_size(), 3);
}

TEST(ProgrammeFixes, aSilentRuleAndOneThatIsAboutThePersonHaveNone) {
  v1::Person person = test::transtibialRight();
  const v1::Programme draft = programmeOf(person, {"sit-to-stand"}, test::everyDay());
  EXPECT_TRUE(fixes(draft, "there-is-no-such-rule", person).empty());
  person.add_conditions(v1::CONDITION_INSULIN);
  ASSERT_TRUE(rulesThat(reviewOf(draft, person, nullptr), false).contains("programme-insulin"));
  EXPECT_TRUE(fixes(draft, "programme-insulin", person).empty());
}

// Programmes from one exercise to all twenty, short and long, beside a last one of half of it, for everybody.
TEST(ProgrammeFixesProperties, eachAnswersItsFindingAndStandsInTheWayOfNothingNew) {
  int found = 0;
  std::set<Kind> offered;
  for (const auto& [name, person] : test::samplePeople()) {
    std::vector<std::string> chosen;
    for (const v1::Exercise& exercise : catalogue().exercises()) {
      if (chosen.size() < 20) chosen.push_back(exercise.id());
    }
    for (const std::size_t count : {1U, 2U, 5U, 12U, 20U}) {
      v1::Programme draft = programmeOf(
          person, {chosen.begin(), chosen.begin() + static_cast<std::ptrdiff_t>(count)}, test::everyDay());
      if (count % 2 == 0) *draft.mutable_entries(0)->mutable_schedule() = test::timesPerWeek(6);
      if (count > 5) draft.set_end_day("2027-06-30");
      if (count > 12) draft.mutable_thresholds()->set_pain_stop_0_10(9);
      v1::Programme last = draft;
      if (count > 1) last.mutable_entries()->DeleteSubrange(0, static_cast<int>(count / 2));
      const Review before = reviewOf(draft, person, &last);
      for (const std::string& rule : rulesThat(before, false)) {
        ++found;
        const auto all = programmeFixesFor(draft, before, rule, person, &last, catalogue(), rules());
        ASSERT_LE(all.size(), kMostFixes);
        for (const ProgrammeFix& fix : all) {
          SCOPED_TRACE(name + " " + std::to_string(count) + " " + rule);
          offered.insert(fix.kind);
          const Review after = reviewOf(fix.programme, person, &last);
          EXPECT_FALSE(rulesThat(after, false).contains(rule));
          const auto stood = rulesThat(before, true);
          for (const auto& stands : rulesThat(after, true)) EXPECT_TRUE(stood.contains(stands)) << stands;
          EXPECT_LE(minutesOf(after), minutesOf(before) + 1e-9);
          EXPECT_LE(fix.programme.end_day(), draft.end_day());
          EXPECT_LE(fix.programme.thresholds().pain_stop_0_10(), draft.thresholds().pain_stop_0_10());
          EXPECT_EQ(fix.programme.advice(), draft.advice());
          EXPECT_FALSE(fix.programme.entries().empty());
          for (const v1::Entry& entry : fix.programme.entries()) EXPECT_EQ(check(entry), absl::OkStatus());
        }
      }
    }
  }
  EXPECT_GT(found, 50);
  EXPECT_EQ(offered.size(), 5U) << "every kind of change is of use to somebody";
}

}  // namespace
}  // namespace newel
