// A digest that was made on one day says on a later one what the whole record says then.
#include "core/progress/attention_digest.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/progress/digest_weeks.h"
#include "core/progress/progression.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

constexpr char kZone[] = "Europe/Berlin";
const absl::CivilDay kMonday(2026, 11, 2);

absl::TimeZone zone() { return *loadZone(kZone); }
absl::Time at(absl::CivilDay day, int hour = 12) {
  return absl::FromCivil(absl::CivilHour(day) + hour, zone());
}

struct Record {
  std::vector<v1::Programme> programmes;
  std::vector<v1::HoldOrder> holds;
  std::vector<v1::Message> messages;
  std::vector<v1::Receipt> receipts;
  std::vector<v1::Practice> practices;
  std::set<std::string> unread;

  v1::AttentionDigest digest(absl::Time now) const {
    const WholeRecord whole{kZone, programmes, holds, messages, receipts, practices, unread};
    const auto made = digestOf(whole, RuleBook::builtIn(), now);
    EXPECT_TRUE(made.ok()) << made.status();
    return made.ok() ? *made : v1::AttentionDigest();
  }
  AttentionFacts facts(absl::Time made, absl::Time now, std::optional<absl::Time> contact) const {
    return factsAt(digest(made), {"p1", contact, true}, now);
  }
};

v1::Practice practiceOf(int number, absl::CivilDay day, const std::string& entry_id, std::uint32_t done) {
  v1::Practice practice;
  practice.set_id(test::idNumbered(5000 + number));
  practice.set_programme_number(1);
  practice.set_local_day(formatLocalDay(day));
  *practice.mutable_started_at() = toTimestamp(at(day, 10));
  *practice.mutable_ended_at() = toTimestamp(at(day, 11));
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  v1::EntryDone& entry = *practice.add_entries();
  entry.mutable_occasion()->set_entry_id(entry_id);
  entry.mutable_occasion()->set_local_day(formatLocalDay(day));
  entry.mutable_asked()->set_repetitions(16);
  entry.mutable_done()->set_repetitions(done);
  for (std::uint32_t set = 1; set <= 2; ++set) {
    v1::SetDone& one = *entry.add_sets();
    one.set_set(set);
    one.mutable_done()->set_repetitions(done / 2);
  }
  if (done == 0) entry.set_skipped(v1::STOP_REASON_NO_TIME);
  entry.set_pain_before_0_10(1);
  entry.set_pain_after_0_10(2);
  entry.set_effort_0_10(3);
  return practice;
}

v1::ProgressionRule easyRule(bool nothing_missed) {
  v1::ProgressionRule rule;
  rule.set_practices(2);
  rule.set_effort_at_most_0_10(5);
  rule.set_pain_rise_at_most_0_10(2);
  rule.set_nothing_missed(nothing_missed);
  rule.set_step_back_practices(2);
  rule.set_step_back_done_percent(60);
  return rule;
}

class Chance {
 public:
  explicit Chance(unsigned seed) : m_engine(seed) {}
  int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_engine); }
  bool one(int in) { return upTo(in - 1) == 0; }

 private:
  std::mt19937 m_engine;
};

v1::Programme someProgramme(Chance& chance, int number, absl::CivilDay first) {
  v1::Programme programme =
      test::emptyProgramme(formatLocalDay(first), formatLocalDay(first + 40 + chance.upTo(60)), number);
  *programme.mutable_issued_at() = toTimestamp(at(first, 8));
  for (int i = 0; i <= chance.upTo(2); ++i) {
    v1::Entry& entry = test::addEntry(programme, chance.one(3) ? test::timesPerWeek(1 + chance.upTo(4))
                                                               : test::randomWeekdays(chance.upTo(127)));
    if (!chance.one(3)) *entry.mutable_progression() = easyRule(chance.one(2));
    if (chance.one(4)) {
      v1::Pause& pause = *entry.mutable_schedule()->add_pauses();
      pause.set_first_day(formatLocalDay(first + 10));
      pause.set_last_day(formatLocalDay(first + 10 + chance.upTo(9)));
      pause.set_reason("a journey");
    }
  }
  return programme;
}

// Weeks of somebody who does some of what is asked, more at times, and tells of falls and skin.
Record someRecord(unsigned seed) {
  Chance chance(seed);
  Record record;
  record.programmes.push_back(someProgramme(chance, 1, kMonday));
  if (chance.one(2)) record.programmes.push_back(someProgramme(chance, 2, kMonday + 20 + chance.upTo(15)));
  int number = 0;
  for (absl::CivilDay day = kMonday; day < kMonday + 45; ++day) {
    const auto& programme =
        record.programmes.size() > 1 && formatLocalDay(day) >= record.programmes[1].effective_day()
            ? record.programmes[1]
            : record.programmes[0];
    for (const auto& entry : programme.entries()) {
      if (chance.one(3)) continue;
      const std::uint32_t done = chance.one(6) ? 0 : chance.one(4) ? 6 : 16;
      v1::Practice practice = practiceOf(++number, day, entry.id(), done);
      practice.set_programme_number(programme.number());
      practice.mutable_entries(0)->set_pain_after_0_10(static_cast<std::uint32_t>(chance.upTo(6)));
      if (chance.one(25)) practice.mutable_entries(0)->set_skipped(v1::STOP_REASON_SKIN);
      if (chance.one(40)) practice.add_red_flag_rule_ids("stop-fall");
      if (chance.one(40)) practice.add_red_flag_rule_ids("ready-fall-not-hurt");
      record.practices.push_back(practice);
    }
  }
  if (chance.one(2)) {
    v1::HoldOrder hold;
    hold.set_id(test::idNumbered(900));
    hold.set_number(1);
    *hold.mutable_issued_at() = toTimestamp(at(kMonday + 25 + chance.upTo(20)));
    if (chance.one(2)) hold.add_entry_ids(record.programmes.back().entries(0).id());
    record.holds.push_back(hold);
    if (chance.one(2)) {
      v1::HoldOrder lift;
      lift.set_id(test::idNumbered(901));
      lift.set_number(2);
      lift.set_lifts_id(hold.id());
      *lift.mutable_issued_at() = toTimestamp(toTime(hold.issued_at()) + absl::Hours(24 * 4));
      record.holds.push_back(lift);
    }
  }
  std::shuffle(record.practices.begin(), record.practices.end(), std::mt19937(seed));
  return record;
}

Adherence directly(const Record& record, absl::CivilDay first, absl::CivilDay last, absl::CivilDay today,
                   absl::CivilDay heard_until) {
  const auto adherence = adherenceOf(record.programmes, record.practices, first, last, today, heard_until,
                                     heldDaysOf(record.holds, zone()));
  EXPECT_TRUE(adherence.ok()) << adherence.status();
  return *adherence;
}

void expectSharesAreThoseOfAdherence(const Record& record, const v1::AttentionDigest& digest, absl::Time now,
                                     absl::Time contact) {
  const absl::CivilDay today = localDayAt(now, zone());
  const absl::CivilDay heard = localDayAt(contact, zone());
  const AttentionFacts facts = factsAt(digest, {"p1", contact, true}, now);
  const absl::CivilDay monday = mondayOf(today);
  const Adherence direct = directly(record, monday - 14, monday + 6, today, heard);
  EXPECT_EQ(facts.share.due, direct.all.due);
  EXPECT_EQ(facts.share.done, direct.all.done);
  EXPECT_EQ(facts.share.counted, direct.all.counted);
  EXPECT_NEAR(facts.share.dose, direct.all.dose, 1e-9);
  const auto no_data = std::count_if(direct.occasions.begin(), direct.occasions.end(), [](const auto& one) {
    return one.state == OccasionResult::State::NoData;
  });
  EXPECT_EQ(facts.no_data, no_data);
  const auto weeks = weekSharesAt(digest, {"p1", contact, true}, now, 5);
  for (int back = 0; back < 5; ++back) {
    const absl::CivilDay week = monday - 7 * back;
    EXPECT_EQ(weeks[static_cast<std::size_t>(4 - back)],
              directly(record, week, week + 6, today, heard).all.capped());
  }
}

void expectReadyAreThoseOfTheRules(const Record& record, const AttentionFacts& facts, absl::CivilDay today) {
  const Adherence direct =
      directly(record, kMonday - 70, mondayOf(today) + 6, today, absl::CivilDay(2100, 1, 1));
  std::vector<std::string> ready;
  std::vector<std::string> too_hard;
  for (const auto& entry : record.programmes.back().entries()) {
    const auto advice = adviseProgression(record.programmes, entry.id(), record.practices, direct.occasions);
    ASSERT_TRUE(advice.ok()) << advice.status();
    if (advice->advice == Advice::Ready) ready.push_back(entry.exercise_id());
    if (advice->advice == Advice::StepBack) too_hard.push_back(entry.exercise_id());
  }
  EXPECT_EQ(facts.ready, ready);
  EXPECT_EQ(facts.too_hard, too_hard);
}

// Counted from 1970-01-01, before it and long after it too.
TEST(DigestDays, numbersAndDaysAreEachOthersInverse) {
  for (std::int32_t number = -40000; number <= 80000; number += 7) {
    EXPECT_EQ(dayOfNumber(number), absl::CivilDay(1970, 1, 1) + number);
    EXPECT_EQ(dayNumber(dayOfNumber(number)), number);
  }
}

// The whole promise: made on one day, asked on any later one of the weeks it is good for.
TEST(AttentionDigestProperties, saysOnAnyLaterDayWhatTheRecordSaysThen) {
  int with_ready = 0;
  int with_no_data = 0;
  for (unsigned seed = 1; seed <= 150; ++seed) {
    SCOPED_TRACE(seed);
    const Record record = someRecord(seed);
    Chance chance(seed * 7919);
    const absl::CivilDay made = kMonday + 45 + chance.upTo(10);
    const v1::AttentionDigest digest = record.digest(at(made));
    for (int step = 0; step < 6; ++step) {
      const absl::CivilDay today = made + chance.upTo(60);
      SCOPED_TRACE(formatLocalDay(today));
      const absl::Time now = at(today, chance.upTo(23));
      const absl::Time contact = at(today - chance.upTo(9), 3);
      ASSERT_TRUE(digestLasts(digest, now));
      expectSharesAreThoseOfAdherence(record, digest, now, contact);
      const AttentionFacts facts = factsAt(digest, {"p1", contact, true}, now);
      expectReadyAreThoseOfTheRules(record, facts, today);
      // Made anew it is the same.
      const AttentionRow kept = attentionRow(facts, now, today, 7);
      const AttentionRow anew = attentionRow(record.facts(now, now, contact), now, today, 7);
      ASSERT_EQ(kept.reasons.size(), anew.reasons.size());
      for (std::size_t i = 0; i < kept.reasons.size(); ++i) {
        EXPECT_EQ(kept.reasons[i].key, anew.reasons[i].key);
        EXPECT_EQ(kept.reasons[i].args, anew.reasons[i].args);
      }
      with_ready += facts.ready.empty() ? 0 : 1;
      with_no_data += facts.no_data > 0 ? 1 : 0;
    }
    if (testing::Test::HasFailure()) return;
  }
  EXPECT_GT(with_ready, 20);
  EXPECT_GT(with_no_data, 100);
}

Record daily(absl::CivilDay until) {
  Record record;
  v1::Programme programme = test::emptyProgramme("2026-11-02", "2027-01-31");
  *programme.mutable_issued_at() = toTimestamp(at(kMonday, 8));
  test::addEntry(programme, test::everyDay());
  record.programmes.push_back(programme);
  v1::Receipt& receipt = record.receipts.emplace_back();
  receipt.set_of(v1::RECEIPT_OF_PROGRAMME);
  receipt.set_ref_id(programme.id());
  receipt.set_state(v1::RECEIPT_STATE_ARRIVED);
  for (absl::CivilDay day = kMonday; day <= until; ++day) {
    record.practices.push_back(
        practiceOf(static_cast<int>(day - kMonday), day, programme.entries(0).id(), 16));
  }
  return record;
}

TEST(AttentionDigest, theSameDigestTurnsFromDoneToMissedOrUnknownAsDaysPass) {
  const Record record = daily(kMonday + 13);
  const absl::Time made = at(kMonday + 13);
  EXPECT_EQ(record.facts(made, made, made).share.counted, 14);
  const absl::Time later = at(kMonday + 20);
  const AttentionFacts heard = record.facts(made, later, later);
  EXPECT_EQ(heard.missed_since_done, 6) << "the days between; today is not over";
  EXPECT_EQ(heard.no_data, 0);
  EXPECT_EQ(heard.last_done, kMonday + 13);
  const AttentionFacts silent = record.facts(made, later, made);
  EXPECT_EQ(silent.missed_since_done, 0);
  EXPECT_EQ(silent.no_data, 6);
  EXPECT_EQ(attentionRow(heard, later, kMonday + 20, 7).reasons.front().key, "attention.nothing-done");
  EXPECT_EQ(attentionRow(silent, later, kMonday + 20, 7).reasons.front().key, "attention.stale");
}

// Midnight is the person's: 23:30 on Sunday in Berlin is still Sunday there, whatever day it is elsewhere.
TEST(AttentionDigest, daysAreThePersons) {
  const Record record = daily(kMonday + 13);
  const v1::AttentionDigest digest = record.digest(at(kMonday + 13));
  const absl::Time before = at(kMonday + 14, 23) + absl::Minutes(30);
  EXPECT_EQ(factsAt(digest, {"p1", before, true}, before).missed_since_done, 0);
  const absl::Time after = before + absl::Hours(1);
  EXPECT_EQ(factsAt(digest, {"p1", after, true}, after).missed_since_done, 1);
}

TEST(AttentionDigest, aStopUntilTheNextDayEndsWithItAndOneOfTheClinicWhenItSpeaks) {
  Record record = daily(kMonday + 3);
  record.practices.back().add_red_flag_rule_ids("ready-fall-not-hurt");
  record.practices.back().add_red_flag_rule_ids("no-such-rule");
  const absl::Time made = at(kMonday + 3);
  const auto flags = record.facts(made, made, made).flags;
  ASSERT_FALSE(flags.empty());
  EXPECT_EQ(flags.front().at, at(kMonday + 3, 11));
  v1::Message& word = record.messages.emplace_back();
  word.set_id(test::idNumbered(70));
  word.set_sender(v1::SENDER_CLINIC);
  *word.mutable_written_at() = toTimestamp(made);
  for (const auto& flag : record.facts(made, at(kMonday + 9), made).flags) {
    EXPECT_NE(flag.rule_id, "no-such-rule") << "the clinic has spoken";
  }
}

TEST(AttentionDigest, messagesOfOneKindAreOneWithTheOldestAndTheNewest) {
  Record record = daily(kMonday);
  for (int i = 0; i < 3; ++i) {
    v1::Message& word = record.messages.emplace_back();
    word.set_id(test::idNumbered(70 + i));
    word.set_sender(v1::SENDER_PERSON);
    *word.mutable_written_at() = toTimestamp(at(kMonday, 9 + i));
    record.unread.insert(word.id());
  }
  record.unread.erase(test::idNumbered(71));
  const auto facts = record.facts(at(kMonday), at(kMonday), at(kMonday));
  ASSERT_EQ(facts.unread_by_clinic.size(), 1U);
  EXPECT_EQ(facts.unread_by_clinic[0].count, 2);
  EXPECT_EQ(facts.unread_by_clinic[0].written_at, at(kMonday, 9));
  EXPECT_EQ(facts.unread_by_clinic[0].last_at, at(kMonday, 11));
}

TEST(AttentionDigest, aFallStandsUntilTheClinicHasSpokenAndElsewhereCountsToo) {
  Record record = daily(kMonday + 3);
  v1::ReadyAnswer& answer = *record.practices[1].add_ready_answers();
  answer.set_question_id("fall");
  answer.set_answer_id("not-hurt");
  const absl::Time now = at(kMonday + 3);
  ASSERT_TRUE(record.facts(now, now, now).fall.has_value());
  EXPECT_EQ(record.facts(now, now, now).fall->what, "not-hurt");
  const WholeRecord whole{kZone,           record.programmes, record.holds,  record.messages,
                          record.receipts, record.practices,  record.unread, {{now, "open"}}};
  const auto digest = digestOf(whole, RuleBook::builtIn(), now);
  ASSERT_TRUE(digest.ok());
  EXPECT_EQ(factsAt(*digest, {"p1", now, true}, now).skin->what, "open");
  v1::Message& word = record.messages.emplace_back();
  word.set_sender(v1::SENDER_CLINIC);
  *word.mutable_written_at() = toTimestamp(now);
  EXPECT_FALSE(record.facts(now, now, now).fall.has_value());
}

// Thousands are read at a time: a year of practice fits into little.
TEST(AttentionDigest, isSmallHoweverLongTheRecord) {
  Record record = daily(kMonday + 80);
  const v1::AttentionDigest digest = record.digest(at(kMonday + 80));
  EXPECT_LT(digest.ByteSizeLong(), 500U);
  EXPECT_TRUE(digestLasts(digest, at(kMonday + 80)));
  EXPECT_FALSE(digestLasts(digest, at(kMonday + 80 + 7 * 13)));
}

}  // namespace
}  // namespace newel
