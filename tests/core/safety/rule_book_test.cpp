#include "core/safety/rule_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/safety/rule_loading.h"
#include "tests/core/safety/safety_fixture.h"

namespace newel {
namespace {

using test::factsNamed;

v1::RuleTest has(const std::string& fact, const std::string& value) {
  v1::RuleTest test;
  test.mutable_has()->set_fact(fact);
  test.mutable_has()->add_values(value);
  return test;
}

v1::RuleTest number(const std::string& fact) {
  v1::RuleTest test;
  test.mutable_number()->set_fact(fact);
  return test;
}

v1::RuleTest negated(const v1::RuleTest& inner) {
  v1::RuleTest test;
  *test.mutable_not_() = inner;
  return test;
}

TEST(Holds, aWordIsLookedForInTheSetOfTheFact) {
  const RuleFacts facts = factsNamed("person.level=transtibial,transfemoral");
  EXPECT_TRUE(holds(has("person.level", "transfemoral"), facts));
  EXPECT_FALSE(holds(has("person.level", "partial-foot"), facts));
  v1::RuleTest either = has("person.level", "partial-foot");
  either.mutable_has()->add_values("transtibial");
  EXPECT_TRUE(holds(either, facts));
}

TEST(Holds, eachBoundIncludesOrLeavesOutItsEnd) {
  const RuleFacts facts = factsNamed("entry.sets#3");
  v1::RuleTest test = number("entry.sets");
  test.mutable_number()->set_at_least(3);
  EXPECT_TRUE(holds(test, facts));
  test.mutable_number()->set_over(3);
  EXPECT_FALSE(holds(test, facts));
  test.mutable_number()->set_over(2);
  EXPECT_TRUE(holds(test, facts));
  test.mutable_number()->set_at_most(3);
  EXPECT_TRUE(holds(test, facts));
  test.mutable_number()->set_at_most(2);
  EXPECT_FALSE(holds(test, facts));
  test.mutable_number()->set_under(3);
  EXPECT_FALSE(holds(test, facts));
  test.mutable_number()->set_under(4);
  EXPECT_TRUE(holds(test, facts));
}

TEST(Holds, aMissingFactHasNoWordAndNoNumber) {
  v1::RuleTest under = number("entry.sets");
  under.mutable_number()->set_under(100);
  EXPECT_FALSE(holds(has("entry.support", "one-hand"), {}));
  EXPECT_FALSE(holds(under, {}));
  EXPECT_FALSE(holds(under, factsNamed("entry.sets=word")));
  EXPECT_TRUE(holds(negated(has("entry.support", "one-hand")), {}));
}

TEST(Holds, allNeedsEveryTestAndAnyNeedsOne) {
  const RuleFacts facts = factsNamed("person.level=transtibial person.ramp=no");
  v1::RuleTest all;
  *all.mutable_all()->add_tests() = has("person.level", "transtibial");
  *all.mutable_all()->add_tests() = has("person.ramp", "yes");
  v1::RuleTest any;
  *any.mutable_any() = v1::AnyOf();
  for (const auto& one : all.all().tests()) *any.mutable_any()->add_tests() = one;
  EXPECT_FALSE(holds(all, facts));
  EXPECT_TRUE(holds(any, facts));
}

TEST(Holds, aTestOfNoKindIsNeverTrue) {
  EXPECT_FALSE(holds(v1::RuleTest(), {}));
  EXPECT_FALSE(holds(number("entry.sets"), factsNamed("entry.sets#3")));
}

TEST(Check, anUnknownExerciseIsNotFound) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Entry entry = test::entryOf("sit-to-stand", person);
  entry.set_exercise_id("sit-to-fly");
  const auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
  EXPECT_EQ(findings.status().code(), absl::StatusCode::kNotFound);
  EXPECT_EQ(std::string(findings.status().message()).rfind("exercise_id:", 0), 0U);
  entry.set_exercise_id("sit-to-stand");
  entry.set_exercise_revision(999);
  EXPECT_EQ(RuleBook::builtIn().check(entry, person, Catalogue::builtIn()).status().code(),
            absl::StatusCode::kNotFound);
}

TEST(Check, blockComesBeforeAskBeforeCautionBeforeNote) {
  v1::Person person = test::personNamed("tf-mechanical-k2");
  const v1::Entry entry = test::entryOf("stairs-step-over-step", person);
  const auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
  ASSERT_TRUE(findings.ok());
  ASSERT_EQ(findings->size(), 3U);
  EXPECT_EQ((*findings)[0].effect(), v1::EFFECT_BLOCK);
  EXPECT_EQ((*findings)[1].effect(), v1::EFFECT_ASK);
  EXPECT_EQ((*findings)[2].effect(), v1::EFFECT_NOTE);
  for (const auto& finding : *findings) EXPECT_EQ(finding.entry_id(), entry.id());
}

TEST(Check, anOverrideAnswersItsAskAndOnlyThat) {
  v1::Person person = test::personNamed("tf-yielding-k3");
  test::change(person, "mobility=k2");
  v1::Entry entry = test::entryOf("stairs-step-over-step", person);
  v1::Override* answer = entry.add_overrides();
  answer->set_rule_id("step-over-step-knee-yields");
  answer->set_reason("Trained in the clinic on three days.");
  auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
  ASSERT_TRUE(findings.ok());
  EXPECT_FALSE(maySign(*findings)) << "the other ask has no reason yet";
  for (const auto& finding : *findings) {
    EXPECT_EQ(finding.overridden_reason().empty(), finding.rule_id() != "step-over-step-knee-yields");
  }
  answer = entry.add_overrides();
  answer->set_rule_id("step-over-step-level-two");
  answer->set_reason("Does it in the clinic.");
  findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
  ASSERT_TRUE(findings.ok());
  EXPECT_TRUE(maySign(*findings));
}

TEST(Check, aBlockIsNeverOverridden) {
  v1::Person person = test::personNamed("tt-k3");
  test::change(person, "rails=none");
  v1::Entry entry = test::entryOf("stairs-one-at-a-time", person);
  v1::Override* answer = entry.add_overrides();
  answer->set_rule_id("stairs-no-rail");
  answer->set_reason("I want it anyway.");
  const auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
  ASSERT_TRUE(findings.ok());
  EXPECT_FALSE(maySign(*findings));
  EXPECT_TRUE(findings->front().overridden_reason().empty());
}

TEST(MaySign, nothingSaidMayBeSigned) { EXPECT_TRUE(maySign({})); }

TEST(MaySign, cautionAndNoteDoNotStandInTheWay) {
  std::vector<v1::Finding> findings(2);
  findings[0].set_effect(v1::EFFECT_CAUTION);
  findings[1].set_effect(v1::EFFECT_NOTE);
  EXPECT_TRUE(maySign(findings));
}

TEST(ShownCaution, isTheFirstCautionOrNone) {
  EXPECT_FALSE(shownCaution({}).has_value());
  std::vector<v1::Finding> findings(3);
  findings[0].set_effect(v1::EFFECT_ASK);
  EXPECT_FALSE(shownCaution(findings).has_value());
  findings[1].set_effect(v1::EFFECT_CAUTION);
  findings[1].set_rule_id("first");
  findings[2].set_effect(v1::EFFECT_CAUTION);
  findings[2].set_rule_id("second");
  EXPECT_EQ(shownCaution(findings)->rule_id(), "first");
}

TEST(LeavesOut, goesByTagOrByTheProsthesisBeingOn) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Entry standing = test::entryOf("weight-shift-side", person);
  const v1::Entry lying = test::entryOf("curl-up-legs-lifted", person);
  v1::Entry lying_on = lying;
  lying_on.set_prosthesis(v1::PROSTHESIS_USE_ON);
  const v1::Exercise& weight_shift = *Catalogue::builtIn().find("weight-shift-side");
  const v1::Exercise& curl_up = *Catalogue::builtIn().find("curl-up-legs-lifted");
  v1::Finding finding;
  finding.set_effect(v1::EFFECT_LEAVE_OUT);
  finding.add_leave_out_tags("standing");
  EXPECT_TRUE(leavesOut(finding, standing, weight_shift));
  EXPECT_FALSE(leavesOut(finding, lying_on, curl_up));
  finding.add_leave_out_tags(kProsthesisOnTag);
  EXPECT_TRUE(leavesOut(finding, lying_on, curl_up));
  EXPECT_FALSE(leavesOut(finding, lying, curl_up));
  finding.set_effect(v1::EFFECT_TELL);
  EXPECT_FALSE(leavesOut(finding, standing, weight_shift));
}

TEST(EndsPractice, redFlagAndNotTodayDoAndNothingElse) {
  v1::Finding finding;
  for (int effect = v1::EFFECT_BLOCK; effect <= v1::EFFECT_TELL; ++effect) {
    finding.set_effect(static_cast<v1::Effect>(effect));
    EXPECT_EQ(endsPractice(finding), effect == v1::EFFECT_RED_FLAG || effect == v1::EFFECT_NOT_TODAY);
  }
}

TEST(BuiltIn, isTheSameAsTheFilesInTheSource) {
  const auto loaded = RuleBook::load(std::string(NEWEL_SOURCE_DIR) + "/core/safety");
  ASSERT_TRUE(loaded.ok()) << loaded.status();
  const RuleBook& built_in = RuleBook::builtIn();
  ASSERT_EQ(loaded->rules().size(), built_in.rules().size());
  for (std::size_t i = 0; i < built_in.rules().size(); ++i) {
    EXPECT_EQ(loaded->rules()[i].id(), built_in.rules()[i].id());
    EXPECT_EQ(loaded->rules()[i].DebugString(), built_in.rules()[i].DebugString());
  }
  EXPECT_EQ(loaded->questions().size(), built_in.questions().size());
}

TEST(BuiltIn, rulesAndQuestionsAreFoundByIdAndNullWhenThereAreNone) {
  const RuleBook& book = RuleBook::builtIn();
  ASSERT_NE(book.rule("stairs-no-rail"), nullptr);
  EXPECT_EQ(book.rule("stairs-no-rail")->effect(), v1::EFFECT_BLOCK);
  EXPECT_EQ(book.rule("no-such-rule"), nullptr);
  ASSERT_NE(book.question("feeling"), nullptr);
  EXPECT_EQ(book.question("no-such-question"), nullptr);
}

// There is no effect that could raise a dose; if one is ever added, this list must be thought about.
TEST(BuiltIn, noEffectAddsLoad) {
  const std::set<std::string> harmless = {"block",     "ask",       "caution",   "note", "red-flag",
                                          "not-today", "leave-out", "end-entry", "tell"};
  const auto& type = *v1::Effect_descriptor();
  for (int i = 1; i < type.value_count(); ++i) {
    EXPECT_TRUE(harmless.contains(wordOf(type, type.value(i)->number()))) << type.value(i)->name();
  }
  const auto& finding = *v1::Finding::descriptor();
  for (int i = 0; i < finding.field_count(); ++i) {
    const std::string& name = finding.field(i)->name();
    EXPECT_EQ(name.find("dose"), std::string::npos) << name;
    EXPECT_NE(finding.field(i)->cpp_type(), google::protobuf::FieldDescriptor::CPPTYPE_DOUBLE) << name;
  }
}

TEST(BuiltIn, everyExerciseTagIsOneThatRulesKnow) {
  for (const auto& exercise : Catalogue::builtIn().exercises()) {
    for (const auto& tag : exercise.tags()) {
      EXPECT_TRUE(isTag(tag, Catalogue::builtIn())) << exercise.id() << ": " << tag;
    }
  }
}

void collectExerciseIds(const v1::RuleTest& test, std::set<std::string>& ids) {
  for (const auto& inner : test.all().tests()) collectExerciseIds(inner, ids);
  for (const auto& inner : test.any().tests()) collectExerciseIds(inner, ids);
  if (test.has_not_()) collectExerciseIds(test.not_(), ids);
  if (test.has().fact() == "exercise.id") ids.insert(test.has().values().begin(), test.has().values().end());
}

TEST(BuiltIn, everyExerciseThatARuleNamesIsInTheCatalogue) {
  std::set<std::string> ids;
  for (const auto& rule : RuleBook::builtIn().rules()) collectExerciseIds(rule.when(), ids);
  EXPECT_FALSE(ids.empty());
  for (const auto& id : ids) EXPECT_NE(Catalogue::builtIn().find(id), nullptr) << id;
}

// Hazards H01 to H29 of the hazard log.
TEST(BuiltIn, everyHazardNamedIsOneOfTheLog) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    if (rule.hazard().empty()) continue;
    ASSERT_EQ(rule.hazard().size(), 3U) << rule.id();
    EXPECT_EQ(rule.hazard()[0], 'H');
    const int number = std::stoi(rule.hazard().substr(1));
    EXPECT_GE(number, 1);
    EXPECT_LE(number, 29) << rule.id();
  }
}

}  // namespace
}  // namespace newel
