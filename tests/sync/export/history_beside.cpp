#include "tests/sync/export/history_beside.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/progress/measure_table.h"
#include "core/time/local_day.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"

namespace newel::test {
namespace {

constexpr std::uint64_t kIds = 900'000'000'000;  // far from those of the history's own records
constexpr const char* kActions[] = {"programme.sign", "person.see",    "practices.see", "hold.issue",
                                    "message.send",   "person.export", "phone.refused", "pairing.done",
                                    "device.revoke",  "any.thing"};

class Beside {
 public:
  Beside(std::uint64_t seed, PersonHistory& history)
      : m_random(seed ^ 0x6e6577656cU), m_number(kIds + seed * 1000), m_history(history) {}

  void add() {
    for (auto& kept : m_history.programmes) {
      wearPlan(kept.programme);
      for (auto& entry : *kept.programme.mutable_entries()) {
        if (m_random.chance(40)) progression(entry);
      }
      measures(kept.programme);
    }
    phones();
    trail();
  }

 private:
  std::string id() { return idOf(m_number++); }

  // The one before is carried on, or followed, or there is none.
  void wearPlan(v1::Programme& programme) {
    if (m_random.chance(40)) return;
    if (m_plan.number() == 0 || m_random.chance(50)) {
      const std::uint32_t number = m_plan.number() + 1;
      m_plan.Clear();
      m_plan.set_id(id());
      m_plan.set_number(number);
      m_plan.set_person_id(programme.person_id());
      m_plan.set_clinic_id(programme.clinic_id());
      m_plan.set_signer_id(programme.signer_id());
      m_plan.set_signer_name("Invented Therapist");
      *m_plan.mutable_issued_at() = programme.issued_at();
      m_plan.set_effective_day(programme.effective_day());
      m_plan.set_zone(programme.zone());
      steps();
      m_plan.set_first_step(m_random.between(0, static_cast<std::uint32_t>(m_plan.steps_size()) - 1));
      m_plan.set_off_min(m_random.between(0, 60));
      m_plan.set_grace_min(m_random.between(0, 30));
      m_plan.set_redness_min(m_random.between(5, 60));
      m_plan.set_redness_action(m_random.chance(50) ? v1::REDNESS_ACTION_STAY_OFF
                                                    : v1::REDNESS_ACTION_SAME_STEP);
      m_plan.set_note(m_random.chance(50) ? "With care, <slowly>." : "");
    }
    if (programme.effective_day() == m_plan.effective_day() && m_random.chance(60)) wearAsPlanned(m_plan);
    *programme.mutable_wear_plan() = m_plan;
  }

  void steps() {
    const std::uint32_t count = m_random.between(1, 4);
    for (std::uint32_t i = 0; i < count; ++i) {
      v1::WearStep& step = *m_plan.add_steps();
      step.set_days(m_random.between(1, 3));
      step.set_activity(m_random.chance(30) ? "Sitting" : "");
      if (i + 1 == count && m_random.chance(40)) {
        step.set_all_day(true);
        continue;
      }
      step.set_blocks(m_random.between(1, 4));
      step.set_block_min(m_random.between(5, 120));
    }
  }

  // As the first of its steps says, for some days from its beginning; other blocks may lie between.
  void wearAsPlanned(const v1::WearPlan& plan) {
    const v1::WearStep& step = plan.steps(static_cast<int>(plan.first_step()));
    const auto zone = loadZone(plan.zone());
    absl::CivilDay day = *parseLocalDay(plan.effective_day());
    const absl::CivilDay today = *parseLocalDay(localDayOf(m_history, m_history.as_of));
    for (std::uint32_t left = m_random.between(1, 12); left > 0 && day < today; --left, ++day) {
      absl::Time on = absl::FromCivil(absl::CivilHour(day) + 7, *zone);
      for (std::uint32_t i = 0; i < std::max(1U, step.blocks()); ++i) {
        v1::WearBlock& block = m_history.wear_blocks.emplace_back();
        block.set_id(id());
        block.set_revision(1);
        block.set_person_id(plan.person_id());
        block.set_local_day(formatLocalDay(day));
        block.set_zone(plan.zone());
        *block.mutable_put_on_at() = toTimestamp(on);
        on += absl::Minutes(std::max(5U, step.block_min()));
        *block.mutable_taken_off_at() = toTimestamp(on);
        on += absl::Minutes(plan.off_min());
        block.mutable_check()->add_signs(v1::SKIN_SIGN_CLEAR);
        block.set_origin(v1::ORIGIN_TIMED_HERE);
      }
    }
  }

  void progression(v1::Entry& entry) {
    v1::ProgressionRule& rule = *entry.mutable_progression();
    rule.set_practices(m_random.between(1, 5));
    if (entry.dose().has_sets()) {
      rule.set_goal_repetitions(m_random.chance(50) ? m_random.between(1, 30) : 0);
      rule.set_repetitions_over_goal(m_random.between(0, 3));
    }
    rule.set_effort_at_most_0_10(m_random.between(1, 10));
    rule.set_pain_rise_at_most_0_10(m_random.between(0, 3));
    rule.set_nothing_missed(m_random.chance(30));
    if (m_random.chance(50)) return;
    rule.set_step_back_practices(m_random.between(1, 3));
    rule.set_step_back_pain_rise_0_10(m_random.between(4, 10));
    rule.set_step_back_done_percent(m_random.between(1, 100));
  }

  void measures(v1::Programme& programme) {
    const auto& kinds = MeasureTable::builtIn().kinds();
    std::vector<std::string> taken;
    for (std::uint32_t left = m_random.between(0, 2); left > 0; --left) {
      const std::string kind = kinds[m_random.between(0, static_cast<std::uint32_t>(kinds.size()) - 1)].id();
      if (std::find(taken.begin(), taken.end(), kind) != taken.end()) continue;
      taken.push_back(kind);
      v1::AskedMeasure& asked = *programme.add_measures();
      asked.set_kind(kind);
      asked.set_by_day(programme.end_day());
    }
  }

  void phones() {
    for (std::uint32_t left = m_random.between(0, 2); left > 0; --left) {
      PairedPhone phone;
      phone.id = id();
      phone.name = m_random.chance(50) ? "Phone of Invented Person" : "";
      phone.app_version = m_random.chance(80) ? "test 1" : "";
      phone.paired_at = m_history.as_of - absl::Hours(24 * 30 + m_random.between(0, 48));
      if (m_random.chance(80)) phone.last_contact = m_history.as_of - absl::Hours(m_random.between(0, 72));
      phone.revoked = m_random.chance(30);
      m_history.phones.push_back(std::move(phone));
    }
  }

  void trail() {
    std::uint64_t n = m_random.between(1, 1000);
    for (std::uint32_t left = m_random.between(0, 6); left > 0; --left) {
      AuditLine line;
      line.n = n;
      n += m_random.between(1, 50);
      line.at = m_history.as_of - absl::Hours(left * 20);
      line.action = kActions[m_random.between(0, std::size(kActions) - 1)];
      line.who_is = static_cast<AuditLine::Who>(m_random.between(0, 3));
      if (line.who_is == AuditLine::Who::Phone && !m_history.phones.empty() && m_random.chance(70)) {
        line.who = m_history.phones[0].id;
      } else if (line.who_is != AuditLine::Who::Nobody) {
        line.who = id();
      }
      if (m_random.chance(50)) line.record = id();
      if (line.action == "phone.refused") line.field = "token";
      m_history.audit.push_back(std::move(line));
    }
  }

  SampleRandom m_random;
  std::uint64_t m_number;
  PersonHistory& m_history;
  v1::WearPlan m_plan;
};

}  // namespace

void addBeside(std::uint64_t seed, PersonHistory& history) { Beside(seed, history).add(); }

}  // namespace newel::test
