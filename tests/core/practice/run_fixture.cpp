#include "tests/core/practice/run_fixture.h"

#include <utility>

#include "core/practice/compile.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/practice/steady_person.h"

namespace newel::test {
namespace {

v1::OccasionRef occasionOf(const v1::Entry& entry) {
  v1::OccasionRef ref;
  ref.set_entry_id(entry.id());
  ref.set_local_day("2026-11-25");
  ref.set_window(0);
  return ref;
}

}  // namespace

RunInput shortInput() {
  RunInput input;
  input.person = transfemoralLeft();
  v1::Entry sit = entryOf("sit-to-stand", input.person, 101);
  sit.mutable_dose()->mutable_sets()->set_sets(2);
  sit.mutable_dose()->mutable_sets()->set_repetitions(2);
  v1::Entry reach = entryOf("opposite-arm-and-leg", input.person, 102);
  reach.mutable_dose()->mutable_sets()->set_sets(1);
  reach.mutable_dose()->mutable_sets()->set_repetitions(1);
  v1::Entry stairs = entryOf("stairs-one-at-a-time", input.person, 103);
  stairs.mutable_dose()->mutable_passes()->set_step_count(2);
  input.programme = programmeOf(input.person, {sit, reach, stairs});
  input.practice_id = idOf(500);
  for (const v1::Entry& entry : input.programme.entries()) input.occasions.push_back(occasionOf(entry));
  input.zone = "Europe/Berlin";
  input.local_day = "2026-11-25";
  input.language = "en";
  input.app_version = "test";
  return input;
}

v1::HoldOrder holdOrder(const std::vector<std::string>& entry_ids) {
  v1::HoldOrder order;
  order.set_id(idOf(900));
  order.set_number(1);
  order.set_reason("Please stop until we have talked.");
  for (const std::string& id : entry_ids) order.add_entry_ids(id);
  return order;
}

RunFixture::RunFixture(RunInput input)
    : m_input(std::move(input)), m_clock(absl::FromUnixSeconds(1795600800)) {  // 2026-11-25 10:00 UTC
  m_clock.advance(absl::Seconds(5000));
}

PracticeRun::Keep RunFixture::keep() {
  return [this](absl::Span<const v1::JournalLine> lines) -> absl::Status {
    if (m_until_failure == 0) return absl::ResourceExhaustedError("disk full");
    if (m_until_failure > 0) --m_until_failure;
    ++m_writes;
    m_journal.insert(m_journal.end(), lines.begin(), lines.end());
    return absl::OkStatus();
  };
}

absl::Status RunFixture::begin() {
  auto run = PracticeRun::begin(m_input, Catalogue::builtIn(), RuleBook::builtIn(), wall(), now(), keep());
  if (!run.ok()) return run.status();
  m_run = *std::move(run);
  return absl::OkStatus();
}

absl::Status RunFixture::takeUp(std::size_t lines) {
  std::vector<v1::JournalLine> prefix = m_journal;
  prefix.resize(lines);
  return takeUpFrom(std::move(prefix));
}

absl::Status RunFixture::takeUpFrom(std::vector<v1::JournalLine> lines) {
  m_run = nullptr;
  m_journal = std::move(lines);
  const absl::Time later = wall() + absl::Minutes(7);
  m_clock = SimulatedClock(later);
  m_clock.advance(absl::Seconds(40));
  auto run = PracticeRun::takeUp(m_input, m_journal, Catalogue::builtIn(), RuleBook::builtIn(), wall(), now(),
                                 keep());
  if (!run.ok()) return run.status();
  m_run = *std::move(run);
  return absl::OkStatus();
}

std::vector<v1::Timeline> RunFixture::timelines() const {
  std::vector<v1::Timeline> timelines;
  for (const v1::OccasionRef& ref : m_input.occasions) {
    for (const v1::Entry& entry : m_input.programme.entries()) {
      if (entry.id() != ref.entry_id()) continue;
      timelines.push_back(*compileTimeline(entry, m_input.person, Catalogue::builtIn(), m_input.language));
    }
  }
  return timelines;
}

absl::Status RunFixture::advance(absl::Duration by) {
  const absl::Duration end = now() + by;
  while (now() < end) {
    m_clock.advance(std::min(absl::Milliseconds(100), end - now()));
    if (absl::Status status = m_run->tick(wall(), now()); !status.ok()) return status;
  }
  return absl::OkStatus();
}

absl::Status RunFixture::goOn() {
  const bool led = m_run->step() == RunStep::Playing && m_run->player()->state() != PlayerState::Paused;
  if (led) return advance(absl::Seconds(1));
  return test::goOn(*m_run, {.pain_after = 2, .effort = 4}, wall(), now());
}

absl::Status RunFixture::passReadyCheck(std::uint32_t pain) {
  while (m_run->step() == RunStep::Question) {
    if (absl::Status status = goOn(); !status.ok()) return status;
  }
  return m_run->painBefore(pain, wall(), now());
}

absl::Status RunFixture::startEntry() {
  while (m_run->step() == RunStep::Support || m_run->step() == RunStep::Ready) {
    if (absl::Status status = goOn(); !status.ok()) return status;
  }
  return absl::OkStatus();
}

absl::Status RunFixture::playOut() {
  while (m_run->step() == RunStep::Playing) {
    if (absl::Status status = goOn(); !status.ok()) return status;
  }
  return absl::OkStatus();
}

absl::Status RunFixture::finish() {
  for (int i = 0; i < 10000 && m_run->step() != RunStep::Closed; ++i) {
    if (absl::Status status = goOn(); !status.ok()) return status;
  }
  return m_run->step() == RunStep::Closed ? absl::OkStatus() : absl::InternalError("does not end");
}

}  // namespace newel::test
