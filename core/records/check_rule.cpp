#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

constexpr int kDeepest = 12;

void checkTest(const FieldCheck& check, const v1::RuleTest& test, int depth) {
  check.that(depth < kDeepest, "when", "is nested too deep");
  if (!check.ok()) return;
  switch (test.kind_case()) {
    case v1::RuleTest::kAll:
      check.that(!test.all().tests().empty(), "all.tests", "is missing");
      for (int i = 0; i < test.all().tests_size(); ++i)
        checkTest(check.at("all.tests", i), test.all().tests(i), depth + 1);
      break;
    case v1::RuleTest::kAny:
      check.that(!test.any().tests().empty(), "any.tests", "is missing");
      for (int i = 0; i < test.any().tests_size(); ++i)
        checkTest(check.at("any.tests", i), test.any().tests(i), depth + 1);
      break;
    case v1::RuleTest::kNot:
      checkTest(check.at("not"), test.not_(), depth + 1);
      break;
    case v1::RuleTest::kHas:
      check.text("has.fact", test.has().fact(), 1, 80);
      check.that(!test.has().values().empty(), "has.values", "is missing");
      break;
    case v1::RuleTest::kNumber:
      check.text("number.fact", test.number().fact(), 1, 80);
      check.that(test.number().bound_case() != v1::RuleNumber::BOUND_NOT_SET, "number.bound", "is missing");
      break;
    case v1::RuleTest::KIND_NOT_SET:
      check.that(false, "kind", "is missing: all, any, not, has or number");
  }
}

bool fits(v1::Stage stage, v1::Effect effect) {
  const bool prescribing = effect >= v1::EFFECT_BLOCK && effect <= v1::EFFECT_NOTE;
  return prescribing == (stage == v1::STAGE_PRESCRIBE || stage == v1::STAGE_PROGRAMME);
}

}  // namespace

absl::Status check(const v1::Rule& rule) {
  FieldCheck check;
  check.key("id", rule.id());
  check.enums(rule);
  check.that(rule.has_when(), "when", "is missing");
  checkTest(check.at("when"), rule.when(), 0);
  check.that(fits(rule.stage(), rule.effect()), "effect", "is not an effect of this stage");
  check.that(rule.words().contains("en"), "words[en]", "is missing");
  for (const auto& [language, words] : rule.words()) {
    check.at("words[" + language + "]").text("therapist", words.therapist(), 1, 600);
    check.at("words[" + language + "]").text("person", words.person(), 1, 600);
  }
  checkSources(check, rule.sources());
  const bool ends = rule.effect() == v1::EFFECT_RED_FLAG || rule.effect() == v1::EFFECT_NOT_TODAY;
  check.that(
      ends == (rule.until() != v1::UNTIL_UNSPECIFIED), "until",
      ends ? "is missing: what must be true before a new practice" : "goes with RED_FLAG and NOT_TODAY only");
  check.that((rule.effect() == v1::EFFECT_LEAVE_OUT) == !rule.leave_out_tags().empty(), "leave_out_tags",
             "goes with LEAVE_OUT, and only with it");
  return check.status();
}

absl::Status check(const v1::SafetyWordFile& file) {
  FieldCheck check;
  check.language("language", file.language());
  for (const auto& [id, words] : file.rules()) {
    check.at("rules[" + id + "]").text("therapist", words.therapist(), 1, 600);
    check.at("rules[" + id + "]").text("person", words.person(), 1, 600);
  }
  for (const auto& [id, words] : file.questions()) {
    FieldCheck at = check.at("questions[" + id + "]");
    at.text("question", words.question(), 1, 300);
    at.text("help", words.help(), 0, 300);
    for (const auto& [choice, text] : words.choices()) at.text("choices[" + choice + "]", text, 1, 200);
  }
  return check.status();
}

absl::Status check(const v1::ReadyQuestion& question) {
  FieldCheck check;
  check.key("id", question.id());
  if (question.has_when()) checkTest(check.at("when"), question.when(), 0);
  check.that(question.words().contains("en"), "words[en]", "is missing");
  for (const auto& [language, words] : question.words()) {
    check.at("words[" + language + "]").text("question", words.question(), 1, 300);
  }
  check.that(question.choices_size() >= 2, "choices", "needs at least two");
  std::set<std::string> ids;
  bool fine = false;
  for (int i = 0; i < question.choices_size(); ++i) {
    FieldCheck choice = check.at("choices", i);
    choice.key("id", question.choices(i).id());
    choice.that(ids.insert(question.choices(i).id()).second, "id", "is given twice");
    choice.that(question.choices(i).words().contains("en"), "words[en]", "is missing");
    fine = fine || question.choices(i).fine();
  }
  check.that(fine, "choices", "none of them lets the practice go on");
  checkSources(check, question.sources());
  return check.status();
}

}  // namespace newel
