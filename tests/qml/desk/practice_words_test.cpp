// What the desk says of a practice: timed and told later are never taken for each other.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/practice/told_later.h"
#include "qml/desk/done_model.h"
#include "tests/core/people/sample_people.h"

namespace newel::tests {
namespace {

using testing::HasSubstr;
using testing::Not;

v1::Practice toldLater() {
  ToldInput input;
  input.practice_id = test::idOf(900);
  input.person = test::transfemoralLeft();
  input.programme = test::programmeOf(input.person, {test::entryOf("sit-to-stand", input.person)});
  input.occasion.set_entry_id(input.programme.entries(0).id());
  input.occasion.set_local_day("2026-11-23");
  input.pain_after_0_10 = 2;
  input.effort_0_10 = 4;
  input.zone = "Europe/Berlin";
  input.today = absl::CivilDay(2026, 11, 25);
  input.told_at = absl::FromUnixSeconds(1795597200);
  input.language = "en";
  input.app_version = "0.1.0";
  auto told = tellLater(input, Catalogue::builtIn(), RuleBook::builtIn());
  EXPECT_TRUE(told.ok()) << told.status();
  return told->practice;
}

TEST(PracticeWords, whatWasToldLaterHasItsDayAndNoTimes) {
  desk::DeskContext context;
  context.catalogue = &Catalogue::builtIn();
  context.rules = &RuleBook::builtIn();
  desk::PersonFile file;
  file.person = test::transfemoralLeft();
  v1::Practice practice = toldLater();
  const QVariantMap told = desk::practiceMap(practice, file, context);
  EXPECT_THAT(told["day"].toString().toStdString(), HasSubstr("23 Nov"));
  const std::string known = told["known"].toString().toStdString();
  EXPECT_THAT(known, HasSubstr("Told later, on"));
  EXPECT_THAT(known, HasSubstr("25 Nov"));
  EXPECT_THAT(known, HasSubstr("not timed"));
  EXPECT_THAT(known, Not(HasSubstr("min")));
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_elapsed_ms(61000);
  const std::string timed = desk::practiceMap(practice, file, context)["known"].toString().toStdString();
  EXPECT_THAT(timed, HasSubstr("2 min, timed by the phone"));
  EXPECT_THAT(timed, Not(HasSubstr("old later")));
}

}  // namespace
}  // namespace newel::tests
