#include "core/safety/rule_settings.h"

#include <utility>

namespace newel {
namespace {

void fill(std::string* text, const SettingValues& values) { *text = withSettings(std::move(*text), values); }

void fill(v1::RuleNumber& number, const SettingValues& values) {
  const auto found = values.find(settingOf(number));
  if (found == values.end()) return;
  switch (number.bound_case()) {
    case v1::RuleNumber::kAtLeastSetting:
      number.set_at_least(found->second);
      break;
    case v1::RuleNumber::kOverSetting:
      number.set_over(found->second);
      break;
    case v1::RuleNumber::kAtMostSetting:
      number.set_at_most(found->second);
      break;
    case v1::RuleNumber::kUnderSetting:
      number.set_under(found->second);
      break;
    default:
      break;
  }
}

void fill(v1::RuleTest& test, const SettingValues& values) {
  switch (test.kind_case()) {
    case v1::RuleTest::kAll:
      for (auto& one : *test.mutable_all()->mutable_tests()) fill(one, values);
      break;
    case v1::RuleTest::kAny:
      for (auto& one : *test.mutable_any()->mutable_tests()) fill(one, values);
      break;
    case v1::RuleTest::kNot:
      fill(*test.mutable_not_(), values);
      break;
    case v1::RuleTest::kNumber:
      fill(*test.mutable_number(), values);
      break;
    default:
      break;
  }
}

}  // namespace

std::string settingOf(const v1::RuleNumber& number) {
  switch (number.bound_case()) {
    case v1::RuleNumber::kAtLeastSetting:
      return number.at_least_setting();
    case v1::RuleNumber::kOverSetting:
      return number.over_setting();
    case v1::RuleNumber::kAtMostSetting:
      return number.at_most_setting();
    case v1::RuleNumber::kUnderSetting:
      return number.under_setting();
    default:
      return {};
  }
}

RuleSet withValues(RuleSet set, const SettingValues& values) {
  for (auto& rule : *set.rules.mutable_rules()) {
    fill(*rule.mutable_when(), values);
    for (auto& [language, words] : *rule.mutable_words()) {
      fill(words.mutable_therapist(), values);
      fill(words.mutable_person(), values);
    }
  }
  for (auto& question : *set.questions.mutable_questions()) {
    if (question.has_when()) fill(*question.mutable_when(), values);
    for (auto& [language, words] : *question.mutable_words()) {
      fill(words.mutable_question(), values);
      fill(words.mutable_help(), values);
    }
    for (auto& choice : *question.mutable_choices()) {
      for (auto& [language, text] : *choice.mutable_words()) fill(&text, values);
    }
  }
  return set;
}

}  // namespace newel
