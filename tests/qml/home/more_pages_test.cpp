// The pages beside the practice: the first run, how it goes, help, writing, and what Today says when
// something is wrong. Judged as home_pages_test.cpp judges.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/time/local_day.h"
#include "tests/qml/home/page_walk.h"
#include "tests/qml/home/past_practices.h"

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;

class MorePages : public PageWalk, public testing::WithParamInterface<const char*> {
 protected:
  MorePages() { begin(GetParam()); }
};

TEST_P(MorePages, firstRunHoldsTogether) {
  check(Page::Language);
  program().first_run->next();
  check(Page::TextSize);
  program().first_run->next();
  check(Page::SoundCheck);
  click(QCoreApplication::translate("SoundCheckPage", "Play a tone and the voice"));
  click(QCoreApplication::translate("SoundCheckPage", "No, nothing"));
  check(Page::SoundCheck, "-nothing");
  program().first_run->next();
  check(Page::Pair, "-first");
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
  program().pair->pairTyped("clinic.example:7443", "abcd-2345");
  while (program().pair->busy()) settle(10);
  program().app->back();
  m_world.sync();
  check(Page::AskReminders);
  program().reminder_model->setOn(true);
  check(Page::AskReminders, "-yes");
  program().first_run->next();
  check(Page::Calls);
  program().first_run->next();
  check(Page::About);
  program().first_run->next();
  EXPECT_EQ(m_world.page(), Page::Today);
}

TEST_P(MorePages, howItGoesHoldsTogether) {
  pair();
  program().app->show(Page::HowItGoes);
  check(Page::HowItGoes, "-none");
  program().app->back();
  program().settings->setKnownFrom("");  // as if it had not been opened yet
  keepPastPractices(m_world, 40);
  program().app->show(Page::HowItGoes);
  check(Page::HowItGoes);
  scroll(560);
  check(Page::HowItGoes, "-scrolled");
  scroll(2000);
  check(Page::HowItGoes, "-end");
}

TEST_P(MorePages, helpAndWritingHoldTogether) {
  pair();
  program().app->show(Page::Help);
  check(Page::Help, "-paired");
  program().app->show(Page::Write);
  check(Page::Write);
  EXPECT_TRUE(program().messages->write("The socket pinches since Monday."));
  m_world.clinic().put(m_world.clinic().message("Come by on Thursday at ten.", false));
  m_world.sync();
  check(Page::Write, "-written");
}

TEST_P(MorePages, whatIsWrongIsSaidOnToday) {
  pair();
  m_world.clinic().setReachable(false);
  m_world.clock().advance(absl::Hours(24 * 4));
  m_world.sync();
  check(Page::Today, "-no-network");
  m_world.clinic().setReachable(true);
  m_world.clinic().revoke();
  m_world.sync();
  check(Page::Today, "-revoked");
  program().app->show(Page::Pair);
  check(Page::Pair, "-again");
}

INSTANTIATE_TEST_SUITE_P(Languages, MorePages, testing::ValuesIn(kWalkLanguages),
                         [](const auto& info) { return std::string(info.param); });

}  // namespace
}  // namespace newel::tests
