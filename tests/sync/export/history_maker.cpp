#include "tests/sync/export/history_maker.h"

#include <algorithm>
#include <map>
#include <stdexcept>
#include <utility>

#include "core/library/default_entry.h"
#include "core/practice/compile.h"
#include "core/practice/told_later.h"
#include "core/progress/measure_table.h"
#include "core/safety/facts.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"
#include "tests/sync/export/history_beside.h"

namespace newel::test {
namespace {

const absl::CivilDay kFirst(2026, 9, 7);
constexpr const char* kZones[] = {"Europe/Berlin", "America/New_York", "Australia/Lord_Howe",
                                  "Asia/Kathmandu"};
constexpr const char* kWords[] = {
    "",        "Well done.", "=1+1",     "a,b;c\\d \"e\"\nf", "مرحبا", "\x01 \t", "<b>&amp;</b> 🦿",
    "-3 \r\n", "  ",         "día señal"};

class Maker {
 public:
  explicit Maker(std::uint64_t seed) : m_random(seed), m_number(seed * 100000 + 1) {}

  PersonHistory any() {
    const auto people = samplePeople();
    m_history.person = m_random.chance(50) ? people[m_random.between(0, 7)].person : anyPerson(m_random);
    v1::Person& person = m_history.person;
    person.set_id(id());
    person.set_zone(kZones[m_random.between(0, 3)]);
    m_zone = *loadZone(person.zone());
    const int programmes = static_cast<int>(m_random.between(0, 3));
    absl::CivilDay day = kFirst;
    for (int number = 1; number <= programmes; ++number) day = programme(number, day);
    const absl::CivilDay today = kFirst + static_cast<int>(m_random.between(0, 30));
    m_history.as_of = noonOf(today);
    if (m_random.chance(90))
      m_history.last_contact = noonOf(today - static_cast<int>(m_random.between(0, 9)));
    holds();
    practices(today);
    messages();
    wear();
    measures();
    receipts();
    putInOrder(m_history);
    return std::move(m_history);
  }

  PersonHistory year(int entries) {
    m_always = true;
    m_history.person = transfemoralLeft();
    m_zone = *loadZone(m_history.person.zone());
    v1::Programme programme = programmeOf(m_history.person, {});
    programme.set_effective_day(formatLocalDay(kFirst - 364));
    programme.set_end_day(formatLocalDay(kFirst - 1));
    for (const auto& exercise : Catalogue::builtIn().exercises()) {
      if (programme.entries_size() == entries) break;
      addEntry(exercise, programme);
    }
    m_history.programmes.push_back({programme, std::string(64, 's'), "key", {}});
    m_history.as_of = noonOf(kFirst);
    m_history.last_contact = m_history.as_of;
    practices(kFirst);
    putInOrder(m_history);
    return std::move(m_history);
  }

 private:
  std::string id() { return idOf(m_number++); }
  std::string words() { return kWords[m_random.between(0, std::size(kWords) - 1)]; }
  std::string someWords() { return "x" + words(); }
  absl::Time noonOf(absl::CivilDay day) const { return absl::FromCivil(absl::CivilHour(day) + 12, m_zone); }

  // True when it compiles for this person; its timeline is kept.
  bool addEntry(const v1::Exercise& exercise, v1::Programme& programme) {
    v1::Entry entry = m_always || m_random.chance(70) ? defaultEntry(exercise, m_history.person)
                                                      : anyEntry(exercise, m_random);
    entry.set_id(id());
    schedule(programme, *entry.mutable_schedule());
    auto timeline = compileTimeline(entry, m_history.person, Catalogue::builtIn(), "en");
    if (!timeline.ok()) return false;
    if (!m_always) entry.set_note(words());
    m_timelines[entry.id()] = *std::move(timeline);
    *programme.add_entries() = std::move(entry);
    return true;
  }

  void schedule(const v1::Programme& programme, v1::Schedule& schedule) {
    if (m_always || m_random.chance(70)) {
      for (int day = 1; day <= 7; ++day) {
        if (m_always ? day == 1 || day == 3 || day == 5 : m_random.chance(45))
          schedule.mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
      }
      if (!schedule.has_weekdays()) schedule.mutable_weekdays()->add_days(v1::WEEKDAY_TUESDAY);
    } else {
      schedule.set_times_per_week(m_random.between(1, 7));
    }
    const std::uint32_t windows = m_always ? 1 : m_random.between(1, 2);
    for (std::uint32_t i = 0; i < windows; ++i) {
      v1::Window& window = *schedule.add_windows();
      window.set_from_min(480 + i * 480);
      window.set_to_min(i == 1 ? 1440 : 720);
    }
    if (m_always || !m_random.chance(25)) return;
    v1::Pause& pause = *schedule.add_pauses();
    const absl::CivilDay from =
        *parseLocalDay(programme.effective_day()) + static_cast<int>(m_random.between(0, 9));
    pause.set_first_day(formatLocalDay(from));
    pause.set_last_day(formatLocalDay(from + static_cast<int>(m_random.between(0, 20))));
    pause.set_reason("away");
  }

  // The day after it was due to be followed.
  absl::CivilDay programme(int number, absl::CivilDay first) {
    v1::Programme programme = programmeOf(m_history.person, {});
    programme.set_id(id());
    programme.set_number(static_cast<std::uint32_t>(number));
    programme.set_zone(m_history.person.zone());
    programme.set_effective_day(formatLocalDay(first));
    programme.set_end_day(formatLocalDay(first + static_cast<int>(m_random.between(0, 20))));
    *programme.mutable_issued_at() = toTimestamp(noonOf(first - 1));
    programme.set_advice(words());
    programme.set_changes(words());
    const auto& exercises = Catalogue::builtIn().exercises();
    const int wanted = static_cast<int>(m_random.between(1, 4));
    while (programme.entries_size() < wanted)
      addEntry(exercises[m_random.between(0, static_cast<std::uint32_t>(exercises.size()) - 1)], programme);
    if (m_random.chance(30)) {
      v1::Override& given = *programme.mutable_entries(0)->add_overrides();
      given.set_rule_id(RuleBook::builtIn().rules()[m_random.between(0, 9)].id());
      given.set_reason("Tried together. " + words());
    }
    m_history.programmes.push_back({programme, m_random.chance(90) ? std::string(64, 's') : "", "key-1", {}});
    return first + static_cast<int>(m_random.between(1, 18));
  }

  void holds() {
    if (m_history.programmes.empty() || !m_random.chance(40)) return;
    v1::HoldOrder order;
    order.set_id(id());
    order.set_number(1);
    order.set_person_id(m_history.person.id());
    order.set_clinic_id(idOf(2));
    order.set_signer_id(idOf(3));
    order.set_signer_name("Invented Therapist");
    *order.mutable_issued_at() = toTimestamp(noonOf(kFirst + static_cast<int>(m_random.between(0, 20))));
    order.set_reason(someWords());
    if (m_random.chance(50)) order.add_entry_ids(m_history.programmes[0].programme.entries(0).id());
    m_history.holds.push_back({order, "signature", "key-1", {}});
    if (!m_random.chance(60)) return;
    v1::HoldOrder lift = order;
    lift.set_id(id());
    lift.set_number(2);
    lift.clear_entry_ids();
    lift.set_lifts_id(order.id());
    *lift.mutable_issued_at() = toTimestamp(toTime(order.issued_at()) + absl::Hours(m_random.between(1, 90)));
    m_history.holds.push_back({lift, "signature", "key-1", {}});
  }

  void practices(absl::CivilDay today) {
    for (std::size_t i = 0; i < m_history.programmes.size(); ++i) {
      const v1::Programme programme = m_history.programmes[i].programme;
      const absl::CivilDay last = std::min(lastCountingDay(m_history, i), today);
      const auto occasions = occasionsOf(programme, *parseLocalDay(programme.effective_day()), last);
      std::map<std::string, std::vector<v1::OccasionRef>> days;
      for (const auto& occasion : occasions.value()) {
        if (occasion.state == OccasionState::Due) days[occasion.ref.local_day()].push_back(occasion.ref);
      }
      for (const auto& [day, refs] : days) {
        if (m_always || m_random.chance(60)) practice(programme, day, refs);
      }
    }
  }

  const v1::Entry& entryOfRef(const v1::Programme& programme, const v1::OccasionRef& ref) const {
    for (const auto& entry : programme.entries()) {
      if (entry.id() == ref.entry_id()) return entry;
    }
    throw std::logic_error("no such entry");
  }

  void practice(const v1::Programme& programme, const std::string& day,
                const std::vector<v1::OccasionRef>& refs) {
    if (!m_always && m_random.chance(10)) return told(programme, refs.front());
    v1::Practice practice;
    practice.set_id(id());
    practice.set_revision(1);
    practice.set_person_id(m_history.person.id());
    practice.set_programme_number(programme.number());
    practice.set_zone(m_history.person.zone());
    practice.set_local_day(day);
    const absl::Time at = absl::FromCivil(absl::CivilMinute(*parseLocalDay(day)) + 485, m_zone);
    *practice.mutable_started_at() = toTimestamp(at);
    practice.set_origin(v1::ORIGIN_TIMED_HERE);
    practice.set_app_version("test 1");
    practice.set_end(v1::PRACTICE_END_FINISHED);
    if (!m_always) {
      practice.set_note(words());
      if (m_random.chance(5)) practice.add_doubts(v1::CLOCK_DOUBT_WALL_MOVED);
    }
    readyCheck(practice);
    std::int64_t elapsed = 0;
    for (const auto& ref : refs) {
      *practice.add_entries() = done(practice, entryOfRef(programme, ref), ref);
      elapsed += practice.entries(practice.entries_size() - 1).elapsed_ms();
    }
    practice.set_elapsed_ms(elapsed);
    // One in fifty with a clock that was set back.
    const absl::Duration ran =
        !m_always && m_random.chance(2) ? -absl::Hours(1) : absl::Milliseconds(elapsed);
    *practice.mutable_ended_at() = toTimestamp(at + ran);
    m_history.practices.push_back(std::move(practice));
  }

  void readyCheck(v1::Practice& practice) {
    const RuleBook& rules = RuleBook::builtIn();
    const RuleFacts facts = factsOf(m_history.person);
    for (const auto* question : rules.readyQuestions(facts)) {
      v1::ReadyAnswer& answer = *practice.add_ready_answers();
      answer.set_question_id(question->id());
      const auto choices = static_cast<std::uint32_t>(question->choices_size());
      const bool fine = m_always || m_random.chance(94);
      const std::uint32_t chosen = fine ? 0 : m_random.between(0, choices - 1);
      answer.set_answer_id(question->choices(static_cast<int>(chosen)).id());
    }
    const std::vector<v1::ReadyAnswer> answers(practice.ready_answers().begin(),
                                               practice.ready_answers().end());
    for (const auto& finding : rules.readyFindings(merged({facts, answerFacts(answers)}))) {
      if (!endsPractice(finding)) continue;
      practice.set_end(finding.effect() == v1::EFFECT_RED_FLAG ? v1::PRACTICE_END_RED_FLAG
                                                               : v1::PRACTICE_END_REFUSED);
      practice.add_red_flag_rule_ids(finding.rule_id());
      return;
    }
  }

  v1::EntryDone done(v1::Practice& practice, const v1::Entry& entry, const v1::OccasionRef& ref) {
    v1::EntryDone done;
    *done.mutable_occasion() = ref;
    done.set_exercise_id(entry.exercise_id());
    done.set_exercise_revision(entry.exercise_revision());
    const v1::Timeline& timeline = m_timelines.at(entry.id());
    *done.mutable_asked() = timeline.asked();
    const auto beats = static_cast<std::size_t>(timeline.beats_size());
    std::size_t kept = beats;
    if (practice.end() != v1::PRACTICE_END_FINISHED) {
      kept = 0;
    } else if (!m_always && m_random.chance(20)) {
      kept = m_random.between(0, static_cast<std::uint32_t>(beats) - 1);
      done.set_skipped(static_cast<v1::StopReason>(m_random.between(1, 16)));
      done.set_skipped_words(words());
      if (m_random.chance(40)) {
        practice.set_end(v1::PRACTICE_END_STOPPED);
        practice.set_stop_reason(done.skipped());
      }
    }
    std::vector<bool> mask(beats, false);
    std::fill_n(mask.begin(), kept, true);
    *done.mutable_done() = countDose(timeline, mask);
    for (auto& set : countSets(timeline, mask)) *done.add_sets() = std::move(set);
    for (std::size_t i = 0; i < kept; ++i)
      done.set_elapsed_ms(done.elapsed_ms() + timeline.beats(static_cast<int>(i)).length_ms());
    if (kept == 0) return done;
    if (m_always || m_random.chance(50)) done.set_pain_before_0_10(m_random.between(0, 10));
    if (m_always || m_random.chance(80)) done.set_pain_after_0_10(m_random.between(0, 10));
    if (m_always || m_random.chance(80)) done.set_effort_0_10(m_random.between(0, 10));
    return done;
  }

  void told(const v1::Programme& programme, const v1::OccasionRef& ref) {
    ToldInput input;
    input.practice_id = id();
    input.programme = programme;
    input.person = m_history.person;
    input.occasion = ref;
    input.done_percent = m_random.between(1, 100);
    input.pain_after_0_10 = m_random.between(0, 10);
    input.effort_0_10 = m_random.between(0, 10);
    input.happened = m_random.chance(20) ? v1::STOP_REASON_FALL : v1::STOP_REASON_UNSPECIFIED;
    input.zone = m_history.person.zone();
    input.today = *parseLocalDay(ref.local_day()) + 1;
    input.told_at = noonOf(input.today);
    input.language = "en";
    input.app_version = "test 1";
    auto result = tellLater(input, Catalogue::builtIn(), RuleBook::builtIn());
    if (result.ok()) m_history.practices.push_back(std::move(result->practice));
  }

  void messages() {
    for (std::uint32_t left = m_random.between(0, 3); left > 0; --left) {
      v1::Message message;
      message.set_id(id());
      message.set_person_id(m_history.person.id());
      message.set_sender(m_random.chance(50) ? v1::SENDER_CLINIC : v1::SENDER_PERSON);
      if (message.sender() == v1::SENDER_CLINIC) message.set_sender_name("Invented Therapist");
      *message.mutable_written_at() = toTimestamp(noonOf(kFirst + static_cast<int>(left) * 5));
      message.set_text(someWords());
      message.set_urgent(m_random.chance(30));
      m_history.messages.push_back({message, {}});
    }
  }

  void wear() {
    for (std::uint32_t left = m_random.between(0, 4); left > 0; --left) {
      v1::WearBlock block;
      block.set_id(id());
      block.set_revision(1);
      block.set_person_id(m_history.person.id());
      const absl::CivilDay day = kFirst + static_cast<int>(left);
      block.set_local_day(formatLocalDay(day));
      block.set_zone(m_history.person.zone());
      *block.mutable_put_on_at() = toTimestamp(noonOf(day));
      block.set_socks(m_random.chance(50) ? "3+1" : "");
      block.set_note(words());
      block.set_origin(v1::ORIGIN_TIMED_HERE);
      if (m_random.chance(80)) {
        *block.mutable_taken_off_at() = toTimestamp(noonOf(day) + absl::Minutes(m_random.between(0, 600)));
        skin(block);
      }
      m_history.wear_blocks.push_back(std::move(block));
    }
  }

  void skin(v1::WearBlock& block) {
    if (m_random.chance(20)) return;
    if (m_random.chance(50)) {
      block.mutable_check()->add_signs(v1::SKIN_SIGN_CLEAR);
      return;
    }
    for (int sign = v1::SKIN_SIGN_RED; sign <= v1::SKIN_SIGN_NUMB_OR_COLD; ++sign) {
      if (m_random.chance(25)) block.mutable_check()->add_signs(static_cast<v1::SkinSign>(sign));
    }
    if (block.check().signs().empty()) block.mutable_check()->add_signs(v1::SKIN_SIGN_RED);
    if (block.check().signs(0) != v1::SKIN_SIGN_RED || m_random.chance(30)) return;
    block.mutable_check()->mutable_redness()->set_watched_min(m_random.between(0, 60));
    block.mutable_check()->mutable_redness()->set_gone(m_random.chance(50));
  }

  void measures() {
    const auto& kinds = MeasureTable::builtIn().kinds();
    for (std::uint32_t left = m_random.between(0, 4); left > 0; --left) {
      const v1::MeasureKind& kind = kinds[m_random.between(0, static_cast<std::uint32_t>(kinds.size()) - 1)];
      v1::Measure measure;
      measure.set_id(id());
      measure.set_revision(1);
      measure.set_person_id(m_history.person.id());
      measure.set_kind(kind.id());
      measure.set_value(kind.least() + (kind.most() - kind.least()) * m_random.between(0, 1000) / 1000.0);
      measure.set_unit(kind.unit());
      const absl::CivilDay day = kFirst + static_cast<int>(left) * 3;
      *measure.mutable_taken_at() = toTimestamp(noonOf(day));
      measure.set_local_day(formatLocalDay(day));
      measure.set_taken_by(idOf(3));
      if (kind.aid_recorded()) measure.set_walking_aid("one cane");
      if (kind.per_side()) measure.set_side(v1::SIDE_LEFT);
      measure.set_note(words());
      measure.set_withdrawn(m_random.chance(15));
      m_history.measures.push_back(std::move(measure));
    }
  }

  void receipt(v1::ReceiptOf of, const std::string& ref_id, absl::Time at, std::vector<v1::Receipt>& all) {
    for (const auto state : {v1::RECEIPT_STATE_ARRIVED, v1::RECEIPT_STATE_SEEN}) {
      if (!m_random.chance(70)) return;
      at += absl::Minutes(m_random.between(1, 500));
      v1::Receipt receipt;
      receipt.set_of(of);
      receipt.set_ref_id(ref_id);
      receipt.set_state(state);
      *receipt.mutable_at() = toTimestamp(at);
      all.push_back(std::move(receipt));
    }
  }

  void receipts() {
    std::vector<v1::Receipt> all;
    for (const auto& kept : m_history.programmes)
      receipt(v1::RECEIPT_OF_PROGRAMME, kept.programme.id(), toTime(kept.programme.issued_at()), all);
    for (const auto& kept : m_history.holds)
      receipt(v1::RECEIPT_OF_HOLD_ORDER, kept.order.id(), toTime(kept.order.issued_at()), all);
    for (const auto& kept : m_history.messages) {
      if (kept.message.sender() == v1::SENDER_CLINIC)
        receipt(v1::RECEIPT_OF_MESSAGE, kept.message.id(), toTime(kept.message.written_at()), all);
    }
    addReceipts(all, m_history);
  }

  SampleRandom m_random;
  std::uint64_t m_number;
  bool m_always = false;
  absl::TimeZone m_zone;
  PersonHistory m_history;
  std::map<std::string, v1::Timeline> m_timelines;  // by entry id
};

}  // namespace

PersonHistory anyHistory(std::uint64_t seed) {
  PersonHistory history = Maker(seed).any();
  addBeside(seed, history);
  putInOrder(history);
  return history;
}

PersonHistory yearOfHistory(int entries) { return Maker(1).year(entries); }

}  // namespace newel::test
