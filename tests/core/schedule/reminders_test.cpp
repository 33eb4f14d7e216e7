// Which reminders stand ready. Facts about zones: tzdata 2025b through Python zoneinfo (Europe/Berlin skips
// 02:00 to 03:00 on 2026-03-29 and repeats it on 2026-10-25; America/Havana skips 00:00 to 01:00 on
// 2026-03-08; Africa/Cairo on 2026-04-24; Australia/Lord_Howe repeats 01:30 to 02:00 on 2026-04-05;
// Pacific/Apia has no 2011-12-30). What local times in gaps and doubled hours mean: RFC 5545 section 3.3.5.
#include "core/schedule/reminders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/records/check.h"
#include "core/schedule/occasions.h"
#include "core/schedule/reminder_book.h"
#include "core/time/local_day.h"
#include "tests/core/schedule/reminder_phone.h"

namespace newel {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

using test::daily;
using test::Phone;
using test::window;

TEST(Reminders, oneForEachWindowRatherThanForEachEntry) {
  Phone phone(daily({window(540, 720), window(1020, 1200)}));
  test::addEntry(phone.m_programme, daily({window(540, 720)}));
  test::addEntry(phone.m_programme, daily({window(540, 720)}));
  phone.at(2026, 11, 25, 7, 0);
  const auto list = phone.armed();
  ASSERT_GE(list.size(), 3U);
  EXPECT_EQ(list[0].id, "2026-11-25/0540-0720");
  EXPECT_EQ(list[0].kind, ReminderKind::Window);
  const auto local = phone.local();
  EXPECT_THAT(std::vector<std::string>(local.begin(), local.begin() + 3),
              ElementsAre("11-25 09:00", "11-25 17:00", "11-26 09:00"));
}

TEST(Reminders, windowsThatBeginTogetherComeAsOne) {
  Phone phone(daily({window(540, 720), window(1020, 1200)}));
  test::addEntry(phone.m_programme, daily({window(560, 700)}));
  phone.at(2026, 11, 25, 7, 0);
  EXPECT_EQ(phone.local()[0], "11-25 09:00");
  EXPECT_EQ(phone.local()[1], "11-25 17:00");
  // The second alone, once the first is done.
  phone.done("2026-11-25", 0, 0);
  EXPECT_EQ(phone.local()[0], "11-25 09:20");
}

TEST(Reminders, noneUnlessThePersonSaidYes) {
  Phone phone(daily({window(540, 720)}));
  phone.at(2026, 11, 25, 7, 0);
  EXPECT_FALSE(phone.armed().empty());
  phone.m_input.book.mutable_settings()->set_wanted(v1::REMINDERS_WANTED_NO);
  EXPECT_THAT(phone.armed(), IsEmpty());
  phone.m_input.book.mutable_settings()->set_wanted(v1::REMINDERS_WANTED_UNSPECIFIED);
  EXPECT_THAT(phone.armed(), IsEmpty()) << "not asked yet is no yes";
}

TEST(Reminders, whatIsDoneExcusedOnHoldOrStoppedIsNotRemindedOf) {
  Phone phone(daily({window(540, 720)}));
  phone.at(2026, 11, 25, 7, 0);
  phone.done("2026-11-25");
  EXPECT_EQ(phone.local()[0], "11-26 09:00") << "done";
  v1::Pause& pause = *phone.m_programme.mutable_entries(0)->mutable_schedule()->add_pauses();
  pause.set_first_day("2026-11-26");
  pause.set_last_day("2026-11-27");
  EXPECT_EQ(phone.local()[0], "11-28 09:00") << "excused";
  phone.m_input.practice_from = absl::CivilDay(2026, 11, 29);
  EXPECT_EQ(phone.local()[0], "11-29 09:00") << "a stop until that day";
  phone.m_input.held_entry_ids = {phone.m_programme.entries(0).id()};
  EXPECT_THAT(phone.armed(), IsEmpty()) << "its only entry is on hold";
  phone.m_input.held_entry_ids = {test::idNumbered(999)};
  EXPECT_FALSE(phone.armed().empty()) << "another one is";
  phone.m_input.held_all = true;
  EXPECT_THAT(phone.armed(), IsEmpty());
  phone.m_input.held_all = false;
  phone.m_input.stopped = true;
  EXPECT_THAT(phone.armed(), IsEmpty());
  phone.m_input.stopped = false;
  phone.m_input.programme = nullptr;
  EXPECT_THAT(phone.armed(), IsEmpty());
}

TEST(Reminders, theWindowOfASecondEntryStaysWhenTheFirstIsOnHold) {
  Phone phone(daily({window(540, 720)}));
  test::addEntry(phone.m_programme, daily({window(540, 720)}));
  phone.at(2026, 11, 25, 7, 0);
  phone.m_input.held_entry_ids = {phone.m_programme.entries(0).id()};
  EXPECT_EQ(phone.local()[0], "11-25 09:00");
}

TEST(Reminders, comeAtTheTimeChosenForTheirWindow) {
  Phone phone(daily({window(540, 720)}));
  phone.at(2026, 11, 25, 7, 0);
  chooseTime(*phone.m_input.book.mutable_settings(), window(540, 720), 630);
  EXPECT_EQ(phone.local()[0], "11-25 10:30");
  chooseTime(*phone.m_input.book.mutable_settings(), window(540, 720), 1300);
  EXPECT_EQ(phone.local()[0], "11-25 11:59") << "a time outside the window is brought into it";
  EXPECT_EQ(phone.m_input.book.settings().times_size(), 1) << "one time for one window";
  EXPECT_EQ(check(phone.m_input.book), absl::OkStatus());
}

TEST(Reminders, quietHoursMoveThemToTheirEndWithinTheWindowOrDropThem) {
  Phone phone(daily({window(0, 1440)}));  // all day: begins at midnight
  phone.at(2026, 11, 25, 7, 0);
  EXPECT_EQ(phone.local()[0], "11-25 08:00") << "quiet until eight";
  phone.m_input.book.mutable_settings()->set_quiet_to_min(450);
  EXPECT_EQ(phone.local()[0], "11-25 07:30");
  Phone evening(daily({window(1290, 1380)}));
  evening.at(2026, 11, 25, 7, 0);
  EXPECT_THAT(evening.armed(), IsEmpty()) << "the whole window is quiet";
  EXPECT_FALSE(reminderMinute(evening.m_input.book.settings(), window(1290, 1380)).has_value());
  evening.noQuietHours();
  EXPECT_EQ(evening.local()[0], "11-25 21:30");
  Phone noon(daily({window(720, 900)}));
  noon.m_input.book.mutable_settings()->set_quiet_from_min(700);
  noon.m_input.book.mutable_settings()->set_quiet_to_min(780);
  noon.at(2026, 11, 25, 7, 0);
  EXPECT_EQ(noon.local()[0], "11-25 13:00") << "quiet hours of the day move it too";
  EXPECT_EQ(reminderMinute(noon.m_input.book.settings(), window(720, 900)), 780);
}

TEST(Reminders, quietHoursAreThoseOfTheClockOnTheWall) {
  const v1::ReminderSettings usual = usualReminderSettings();
  EXPECT_TRUE(isQuiet(usual, 21 * 60));
  EXPECT_TRUE(isQuiet(usual, 0));
  EXPECT_TRUE(isQuiet(usual, 8 * 60 - 1));
  EXPECT_FALSE(isQuiet(usual, 8 * 60));
  EXPECT_FALSE(isQuiet(usual, 21 * 60 - 1));
}

TEST(Reminders, inAGapShowLaterOnTheClockAndNeverTheDayBefore) {
  Phone berlin(daily({window(150, 300)}));
  berlin.noQuietHours();
  berlin.at(2026, 3, 28, 12, 0);
  EXPECT_EQ(berlin.local()[0], "03-29 03:30");
  EXPECT_EQ(berlin.local()[1], "03-30 02:30");
  for (const auto& [zone, month, day] :
       {std::tuple("America/Havana", 3, 8), std::tuple("Africa/Cairo", 4, 24)}) {
    Phone midnight(daily({window(0, 300)}), zone);
    midnight.noQuietHours();
    midnight.at(2026, month, day - 1, 12, 0);
    const auto list = midnight.armed();
    EXPECT_EQ(absl::FormatTime("%H:%M", list[0].at, midnight.m_input.zone), "01:00") << zone;
    EXPECT_EQ(localDayAt(list[0].at, midnight.m_input.zone), absl::CivilDay(2026, month, day)) << zone;
  }
}

TEST(Reminders, inADoubledHourAreTheFirstPassAndComeOnce) {
  Phone berlin(daily({window(150, 300)}));
  berlin.noQuietHours();
  berlin.at(2026, 10, 25, 0, 30);
  const auto list = berlin.armed();
  EXPECT_EQ(absl::FormatTime("%Y-%m-%dT%H:%MZ", list[0].at, absl::UTCTimeZone()), "2026-10-25T00:30Z");
  EXPECT_EQ(absl::FormatTime("%Y-%m-%dT%H:%MZ", list[1].at, absl::UTCTimeZone()), "2026-10-26T01:30Z");
  berlin.showNext();
  berlin.m_input.now += absl::Hours(1);  // 02:30 once more
  EXPECT_EQ(berlin.armed()[0].day, absl::CivilDay(2026, 10, 26));
  Phone lord_howe(daily({window(100, 300)}), "Australia/Lord_Howe");
  lord_howe.noQuietHours();
  lord_howe.at(2026, 4, 4, 12, 0);
  EXPECT_EQ(absl::FormatTime("%Y-%m-%dT%H:%MZ", lord_howe.armed()[0].at, absl::UTCTimeZone()),
            "2026-04-04T14:40Z");
}

TEST(Reminders, aDayThatTheZoneLeavesOutHasNone) {
  Phone apia(daily({window(540, 720)}), "Pacific/Apia");
  apia.at(2011, 12, 28, 12, 0);
  std::vector<std::string> days;
  for (const auto& each : apia.armed()) days.push_back(formatLocalDay(each.day));
  EXPECT_THAT(std::vector<std::string>(days.begin(), days.begin() + 3),
              ElementsAre("2011-12-29", "2011-12-31", "2012-01-01"));
}

TEST(Reminders, followThePersonToAnotherZone) {
  Phone phone(daily({window(1080, 1200)}));
  phone.at(2026, 11, 25, 10, 0);
  EXPECT_EQ(phone.local()[0], "11-25 18:00");
  phone.setZone("Asia/Tokyo");  // 18:00 there, to the minute
  EXPECT_EQ(phone.local()[0], "11-25 18:00");
  EXPECT_EQ(phone.armed()[0].at, phone.m_input.now);
}

// West over the date line a day comes twice; east one is left out.
TEST(Reminders, overTheDateLineADayIsRemindedOfOnce) {
  Phone phone(daily({window(540, 720)}), "Pacific/Auckland");
  phone.at(2026, 11, 10, 8, 0);
  EXPECT_EQ(phone.showNext().id, "2026-11-10/0540-0720");
  phone.setZone("Pacific/Honolulu");
  phone.at(2026, 11, 10, 8, 0);  // the 10th once more
  EXPECT_EQ(phone.armed()[0].id, "2026-11-11/0540-0720");
}

TEST(Reminders, whatWasMissedComesLateWhileItsWindowIsOpenAndOnce) {
  Phone phone(daily({window(540, 720)}));
  test::addEntry(phone.m_programme, daily({window(600, 800)}));
  phone.at(2026, 11, 25, 11, 0);  // the machine was off until now
  EXPECT_EQ(phone.local()[0], "11-25 11:00");
  EXPECT_EQ(phone.local()[1], "11-26 09:00") << "two that were missed come as one";
  phone.at(2026, 11, 25, 14, 0);
  EXPECT_EQ(phone.local()[0], "11-26 09:00") << "its window is over";
  phone.at(2026, 11, 25, 11, 0);
  *phone.m_input.book.mutable_opened_at() = toTimestamp(phone.m_input.now - absl::Minutes(30));
  EXPECT_EQ(phone.local()[0], "11-26 09:00") << "Newel was opened since";
}

TEST(Reminders, aClockThatIsSetBackShowsNothingTwice) {
  Phone phone(daily({window(540, 720)}));
  phone.at(2026, 11, 25, 8, 30);
  phone.showNext();
  phone.m_input.now -= absl::Hours(2);
  EXPECT_EQ(phone.local()[0], "11-26 09:00");
}

TEST(Reminders, aClockThatWasDaysAheadTakesNoReminderAway) {
  Phone phone(daily({window(540, 720)}));
  phone.at(2026, 12, 2, 9, 30);
  EXPECT_EQ(phone.showNext().id, "2026-12-02/0540-0720") << "late, by the wrong clock";
  phone.at(2026, 11, 28, 9, 30);
  noteOpened(phone.m_input.book, phone.m_input.now);
  bool there = false;
  for (const auto& each : phone.armed()) there = there || each.id == "2026-12-02/0540-0720";
  EXPECT_TRUE(there);
}

TEST(Reminders, laterComesAfterTheSnoozeOnThatDayAndOutsideQuietHours) {
  Phone phone(daily({window(540, 720)}));
  phone.at(2026, 11, 25, 8, 30);
  const ArmedReminder first = phone.showNext();
  phone.m_input.now += absl::Minutes(5);
  ASSERT_TRUE(noteAnswer(phone.m_input.book, first.id, v1::REMINDER_ANSWER_LATER, phone.m_input.now));
  EXPECT_EQ(phone.armed()[0].kind, ReminderKind::Later);
  EXPECT_EQ(phone.armed()[0].id, first.id + "+");
  EXPECT_EQ(phone.local()[0], "11-25 09:35");
  const ArmedReminder second = phone.showNext();
  ASSERT_TRUE(noteAnswer(phone.m_input.book, second.id, v1::REMINDER_ANSWER_LATER, phone.m_input.now));
  EXPECT_EQ(phone.local()[0], "11-25 10:05") << "as often as the person asks";
  phone.done("2026-11-25");
  EXPECT_EQ(phone.local()[0], "11-26 09:00") << "done meanwhile";

  Phone late(daily({window(1230, 1440)}));
  late.at(2026, 11, 25, 20, 0);
  const ArmedReminder evening = late.showNext();
  late.m_input.now += absl::Minutes(10);
  noteAnswer(late.m_input.book, evening.id, v1::REMINDER_ANSWER_LATER, late.m_input.now);
  EXPECT_EQ(late.local()[0], "11-26 20:30") << "21:10 is quiet";
}

// The list takes it that nobody answers: three come as they are due, then one a day.
TEST(Reminders, threeUnansweredInARowBecomeOneADay) {
  Phone phone(daily({window(540, 660), window(720, 840), window(1020, 1140)}));
  phone.at(2026, 11, 25, 7, 0);
  EXPECT_THAT(phone.local(),
              ElementsAre("11-25 09:00", "11-25 12:00", "11-25 17:00", "11-26 09:00", "11-27 09:00",
                          "11-28 09:00", "11-29 09:00", "11-30 09:00", "12-01 09:00"));
  EXPECT_EQ(phone.armed()[2].kind, ReminderKind::Window);
  EXPECT_EQ(phone.armed()[3].kind, ReminderKind::Daily);
  for (int i = 0; i < 3; ++i) phone.showNext();
  EXPECT_EQ(unansweredInARow(phone.m_input.book), 3);
  EXPECT_EQ(phone.local()[0], "11-26 09:00");
  phone.showNext();
  EXPECT_EQ(phone.local()[0], "11-27 09:00") << "one that day";
  ASSERT_TRUE(noteOpened(phone.m_input.book, phone.m_input.now)) << "the person comes by themselves";
  EXPECT_EQ(unansweredInARow(phone.m_input.book), 0);
  EXPECT_EQ(phone.local()[0], "11-26 12:00") << "as before";
}

TEST(Reminders, anAnswerInBetweenBeginsTheCountAnew) {
  for (const auto answer :
       {v1::REMINDER_ANSWER_OPENED, v1::REMINDER_ANSWER_LATER, v1::REMINDER_ANSWER_DISMISSED}) {
    Phone phone(daily({window(540, 660), window(720, 840), window(1020, 1140)}));
    phone.at(2026, 11, 25, 7, 0);
    phone.showNext();
    const ArmedReminder second = phone.showNext();
    EXPECT_EQ(unansweredInARow(phone.m_input.book), 2);
    ASSERT_TRUE(noteAnswer(phone.m_input.book, second.id, answer, phone.m_input.now));
    EXPECT_FALSE(noteAnswer(phone.m_input.book, second.id, v1::REMINDER_ANSWER_OPENED, phone.m_input.now))
        << "the first answer counts";
    EXPECT_EQ(unansweredInARow(phone.m_input.book), 0);
  }
}

TEST(Reminders, thereAreSixADayAtMostHoweverManyAreAnswered) {
  Phone phone(daily({window(540, 570), window(600, 630), window(660, 690), window(720, 750)}));
  test::addEntry(phone.m_programme,
                 daily({window(780, 810), window(840, 870), window(900, 930), window(960, 990)}));
  phone.at(2026, 11, 25, 8, 30);
  for (int i = 0; i < kMostRemindersADay; ++i) {
    const ArmedReminder shown = phone.showNext();
    EXPECT_EQ(shown.day, absl::CivilDay(2026, 11, 25));
    noteAnswer(phone.m_input.book, shown.id, v1::REMINDER_ANSWER_DISMISSED, phone.m_input.now);
  }
  EXPECT_EQ(phone.local()[0], "11-26 09:00");
}

TEST(Reminders, theListHasFortyAtMost) {
  Phone phone(daily({window(0, 1440)}));
  phone.at(2026, 11, 25, 10, 0);
  for (int i = 0; i < 55; ++i) {
    const std::string id = "2026-11-25/" + std::to_string(1000 + i) + "-1440";
    noteShown(phone.m_input.book, id, absl::CivilDay(2026, 11, 25), phone.m_input.now);
    noteAnswer(phone.m_input.book, id, v1::REMINDER_ANSWER_LATER, phone.m_input.now);
  }
  EXPECT_EQ(phone.armed().size(), static_cast<std::size_t>(kMostReminders));
}

TEST(Reminders, aTimesAWeekEntryIsRemindedOnItsSpreadDaysAndWhenNoSpareDayIsLeft) {
  v1::Schedule twice = test::timesPerWeek(2);  // spread: Monday and Thursday
  Phone phone(twice);
  phone.at(2026, 11, 23, 7, 0);  // a Monday
  const auto local = phone.local();
  EXPECT_THAT(std::vector<std::string>(local.begin(), local.begin() + 4),
              ElementsAre("11-23 09:00", "11-26 09:00", "11-28 09:00", "11-29 09:00"))
      << "nothing done: both weekend days are needed";
  phone.done("2026-11-24");
  phone.done("2026-11-25");
  phone.at(2026, 11, 25, 12, 0);
  EXPECT_EQ(phone.local()[0], "11-30 09:00") << "the week's share is done";
}

TEST(Reminders, onesOfAWindowThatIsDoneAreTakenOffTheScreen) {
  Phone phone(daily({window(540, 720), window(1020, 1200)}));
  phone.at(2026, 11, 25, 8, 0);
  const ArmedReminder first = phone.showNext();
  EXPECT_THAT(remindersToClear(phone.m_input), IsEmpty());
  phone.done("2026-11-25", 0);
  EXPECT_THAT(remindersToClear(phone.m_input), ElementsAre(first.id)) << "though the evening is still due";
  phone.m_input.done.clear();
  phone.m_input.held_all = true;
  EXPECT_THAT(remindersToClear(phone.m_input), ElementsAre(first.id));
  phone.m_input.held_all = false;
  phone.m_input.now += absl::Hours(24);
  EXPECT_THAT(remindersToClear(phone.m_input), ElementsAre(first.id)) << "of yesterday";
}

TEST(ReminderBook, keepsSixtyAndStaysARecordThatPasses) {
  v1::ReminderBook book;
  *book.mutable_settings() = usualReminderSettings();
  EXPECT_EQ(check(book), absl::OkStatus());
  for (int i = 0; i < 200; ++i) {
    const absl::CivilDay day = absl::CivilDay(2026, 1, 1) + i;
    noteShown(book, formatLocalDay(day) + "/0540-0720", day, absl::FromUnixSeconds(1770000000 + i));
    chooseTime(*book.mutable_settings(), window(static_cast<std::uint32_t>(i), 1440), i);
  }
  EXPECT_EQ(book.shown_size(), 60);
  EXPECT_EQ(book.shown(59).local_day(), "2026-07-19");
  EXPECT_EQ(book.settings().times_size(), 60);
  EXPECT_EQ(check(book), absl::OkStatus());
  noteShown(book, book.shown(3).id(), absl::CivilDay(2026, 8, 1), absl::FromUnixSeconds(1780000000));
  EXPECT_EQ(book.shown_size(), 60) << "the same once more is no second one";
}

TEST(ReminderBook, refusesWhatTheRecordForbids) {
  v1::ReminderBook good;
  *good.mutable_settings() = usualReminderSettings();
  const auto reasonAfter = [&good](const std::function<void(v1::ReminderBook&)>& change) {
    v1::ReminderBook book = good;
    change(book);
    return std::string(check(book).message());
  };
  EXPECT_EQ(reasonAfter([](auto& b) { b.clear_settings(); }), "settings: is missing");
  EXPECT_THAT(reasonAfter([](auto& b) { b.mutable_settings()->set_quiet_from_min(1440); }),
              testing::StartsWith("settings.quiet_from_min"));
  EXPECT_THAT(reasonAfter([](auto& b) { b.mutable_settings()->set_snooze_min(0); }),
              testing::StartsWith("settings.snooze_min"));
  EXPECT_THAT(reasonAfter([](auto& b) {
                auto& time = *b.mutable_settings()->add_times();
                *time.mutable_window() = window(540, 720);
                time.set_at_min(720);
              }),
              testing::StartsWith("settings.times[0].at_min"));
  EXPECT_THAT(
      reasonAfter([](auto& b) { *b.mutable_settings()->add_times()->mutable_window() = window(5, 5); }),
      testing::StartsWith("settings.times[0].window.to_min"));
  EXPECT_THAT(reasonAfter([](auto& b) {
                for (int i = 0; i < 2; ++i) {
                  auto& time = *b.mutable_settings()->add_times();
                  *time.mutable_window() = window(540, 720);
                  time.set_at_min(600);
                }
              }),
              testing::HasSubstr("given twice"));
  EXPECT_THAT(reasonAfter([](auto& b) { b.add_shown()->set_id("x"); }),
              testing::StartsWith("shown[0].local_day"));
  EXPECT_THAT(reasonAfter([](auto& b) {
                noteShown(b, "x", absl::CivilDay(2026, 1, 1), absl::UnixEpoch());
                b.mutable_shown(0)->set_answer(v1::REMINDER_ANSWER_LATER);
              }),
              testing::HasSubstr("goes with an answer"));
}

}  // namespace
}  // namespace newel
