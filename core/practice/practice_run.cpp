#include "core/practice/practice_run.h"

#include <algorithm>
#include <utility>

#include "core/practice/compile.h"
#include "core/practice/practice_run_impl.h"

namespace newel {

namespace {

// A hold is the clinic's to give, not a reason that a person can.
absl::Status checkReason(v1::StopReason reason) {
  if (reason == v1::STOP_REASON_UNSPECIFIED) return absl::InvalidArgumentError("reason: is missing");
  if (reason == v1::STOP_REASON_HOLD_ORDER) return absl::InvalidArgumentError("reason: not a person's");
  return absl::OkStatus();
}

}  // namespace

PracticeRun::Impl::Impl(RunInput input, const Catalogue& catalogue, const RuleBook& rules, absl::Time wall,
                        absl::Duration now, Keep keep)
    : m_input(std::move(input)),
      m_catalogue(&catalogue),
      m_rules(rules, catalogue),
      m_book(&rules),
      m_keep(std::move(keep)),
      m_origin(now),
      m_now(now),
      m_wall(wall),
      m_wall_offset((wall - absl::UnixEpoch()) - now) {}

absl::Status PracticeRun::Impl::prepare() {
  m_context = {m_input.programme, m_input.person, m_input.language, m_input.history, {}};
  if (m_input.occasions.empty()) return absl::InvalidArgumentError("occasions: is missing");
  for (std::size_t i = 0; i < m_input.occasions.size(); ++i) {
    const std::string path = "occasions[" + std::to_string(i) + "]";
    const auto& entries = m_input.programme.entries();
    const auto entry = std::find_if(entries.begin(), entries.end(), [&](const v1::Entry& each) {
      return each.id() == m_input.occasions[i].entry_id();
    });
    if (entry == entries.end()) return absl::InvalidArgumentError(path + ".entry_id: not in the programme");
    const auto findings = m_book->check(*entry, m_input.person, *m_catalogue);
    const bool blocked =
        findings.ok() && !findings->empty() && findings->front().effect() == v1::EFFECT_BLOCK;
    absl::StatusOr<v1::Timeline> timeline =
        compileTimeline(*entry, m_input.person, *m_catalogue, m_input.language);
    const auto& held = m_input.held_entry_ids;
    const bool out =
        blocked || m_input.held_all || std::find(held.begin(), held.end(), entry->id()) != held.end();
    if (!timeline.ok() && !out)
      return absl::FailedPreconditionError(
          path + ": " + std::string(timeline.status().message().data(), timeline.status().message().size()));
    m_context.entries.push_back(*entry);
    m_blocked.push_back(blocked ? std::optional(findings->front()) : std::nullopt);
    m_cautions.push_back(findings.ok() ? shownCaution(*findings) : std::nullopt);
    m_timelines.push_back(
        std::make_shared<const v1::Timeline>(timeline.ok() ? *std::move(timeline) : v1::Timeline()));
  }
  return absl::OkStatus();
}

absl::Status PracticeRun::Impl::startNew() {
  bool any = false;
  v1::Practice header;
  header.set_id(m_input.practice_id);
  header.set_revision(1);
  header.set_person_id(m_input.person.id());
  header.set_programme_number(m_input.programme.number());
  header.set_zone(m_input.zone);
  header.set_local_day(m_input.local_day);
  header.set_origin(v1::ORIGIN_TIMED_HERE);
  header.set_app_version(m_input.app_version);
  for (std::size_t i = 0; i < m_context.entries.size(); ++i) {
    v1::EntryDone& entry = *header.add_entries();
    *entry.mutable_occasion() = m_input.occasions[i];
    entry.set_exercise_id(m_context.entries[i].exercise_id());
    entry.set_exercise_revision(m_context.entries[i].exercise_revision());
    *entry.mutable_asked() = m_timelines[i]->asked();
    const auto& held = m_input.held_entry_ids;
    any = any || (!m_input.held_all && !m_blocked[i] &&
                  std::find(held.begin(), held.end(), m_context.entries[i].id()) == held.end());
  }
  if (!any) return absl::FailedPreconditionError("occasions: everything is under a hold order or blocked");

  v1::JournalLine begun = line(v1::JOURNAL_KIND_PRACTICE_BEGUN);
  *header.mutable_started_at() = begun.at();
  *begun.mutable_header() = header;
  begun.set_sequence(1);
  absl::StatusOr<Ledger> ledger = Ledger::begin(begun, m_timelines);
  if (!ledger.ok()) return ledger.status();
  if (absl::Status status = m_keep({begun}); !status.ok()) return status;
  m_ledger = *std::move(ledger);
  // The questions depend on what is left after holds and blocks.
  Lines out = dueHolds();
  const Lines blocked = dueBlocked();
  for (const v1::JournalLine& each : blocked) {
    const bool known =
        std::any_of(out.begin(), out.end(), [&](const auto& l) { return l.entry() == each.entry(); });
    if (!known) out.push_back(each);
  }
  return act(
      std::move(out), [this] { m_questions = m_rules.questions(m_context, m_ledger); }, true);
}

absl::Status PracticeRun::Impl::foldOld(const Lines& lines) {
  absl::StatusOr<Ledger> ledger = Ledger::fold(lines, m_timelines);
  if (!ledger.ok()) return ledger.status();
  m_ledger = *std::move(ledger);
  const v1::Practice& header = m_ledger.header();
  if (header.id() != m_input.practice_id || header.programme_number() != m_input.programme.number())
    return absl::DataLossError("journal: is of another practice or programme");
  for (std::size_t i = 0; i < m_context.entries.size(); ++i) {
    if (header.entries(static_cast<int>(i)).occasion().entry_id() != m_context.entries[i].id())
      return absl::DataLossError("journal: entries do not match the occasions");
  }
  m_questions = m_rules.questions(m_context, m_ledger);
  if (m_ledger.closed()) {
    m_step = RunStep::Closed;
    return absl::OkStatus();
  }
  return act(
      {line(v1::JOURNAL_KIND_TAKEN_UP_AGAIN)},
      [this] {
        const auto open = m_ledger.open();
        if (!open) return;
        const EntryProgress& entry = m_ledger.entries()[*open];
        if (entry.next_beat >= entry.done.size()) return;
        m_player =
            Player::takenUp(m_ledger.timeline(*open), entry.next_beat, entry.done, entry.voided_holds, m_now);
      },
      true);
}

PracticeRun::PracticeRun(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
PracticeRun::~PracticeRun() = default;

absl::StatusOr<std::unique_ptr<PracticeRun>> PracticeRun::begin(RunInput input, const Catalogue& catalogue,
                                                                const RuleBook& rules, absl::Time wall,
                                                                absl::Duration now, Keep keep) {
  auto impl = std::make_unique<Impl>(std::move(input), catalogue, rules, wall, now, std::move(keep));
  if (absl::Status status = impl->prepare(); !status.ok()) return status;
  if (absl::Status status = impl->startNew(); !status.ok()) return status;
  return std::unique_ptr<PracticeRun>(new PracticeRun(std::move(impl)));
}

absl::StatusOr<std::unique_ptr<PracticeRun>> PracticeRun::takeUp(RunInput input,
                                                                 const std::vector<v1::JournalLine>& lines,
                                                                 const Catalogue& catalogue,
                                                                 const RuleBook& rules, absl::Time wall,
                                                                 absl::Duration now, Keep keep) {
  if (lines.empty()) return absl::DataLossError("journal: is empty");
  if (input.occasions.empty()) {
    for (const v1::EntryDone& entry : lines.front().header().entries())
      input.occasions.push_back(entry.occasion());
  }
  auto impl = std::make_unique<Impl>(std::move(input), catalogue, rules, wall, now, std::move(keep));
  if (absl::Status status = impl->prepare(); !status.ok()) return status;
  if (absl::Status status = impl->foldOld(lines); !status.ok()) return status;
  return std::unique_ptr<PracticeRun>(new PracticeRun(std::move(impl)));
}

RunStep PracticeRun::step() const { return m_impl->m_step; }

const v1::ReadyQuestion* PracticeRun::question() const {
  return m_impl->m_step == RunStep::Question ? m_impl->nextQuestion() : nullptr;
}

int PracticeRun::questionNumber() const { return std::min(m_impl->answeredCount() + 1, questionCount()); }
int PracticeRun::questionCount() const { return static_cast<int>(m_impl->m_questions.size()); }

const Player* PracticeRun::player() const {
  return m_impl->m_step == RunStep::Playing && m_impl->m_player ? &*m_impl->m_player : nullptr;
}

std::size_t PracticeRun::entryIndex() const { return m_impl->entryIndex(); }
std::size_t PracticeRun::entryCount() const { return m_impl->m_context.entries.size(); }
const v1::Entry& PracticeRun::entry(std::size_t index) const { return m_impl->m_context.entries[index]; }
const v1::Timeline& PracticeRun::timeline(std::size_t index) const { return *m_impl->m_timelines[index]; }

bool PracticeRun::entryLeftOut(std::size_t index) const {
  const EntryProgress& entry = m_impl->m_ledger.entries()[index];
  return entry.left_out || entry.held;
}

std::optional<v1::Finding> PracticeRun::caution(std::size_t index) const { return m_impl->m_cautions[index]; }

const Verdict* PracticeRun::verdict() const { return m_impl->m_verdict ? &*m_impl->m_verdict : nullptr; }

bool PracticeRun::over() const { return m_impl->m_ledger.closed(); }

v1::Practice PracticeRun::practice() const { return m_impl->m_ledger.practice(); }

absl::Status PracticeRun::answer(const std::string& choice_id, absl::Time wall, absl::Duration now) {
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::Question); !status.ok()) return status;
  const v1::ReadyQuestion* asked = m_impl->nextQuestion();
  const auto& choices = asked->choices();
  const bool known = std::any_of(choices.begin(), choices.end(),
                                 [&](const v1::ReadyChoice& choice) { return choice.id() == choice_id; });
  if (!known) return absl::InvalidArgumentError("choice_id: not a choice of " + asked->id());
  v1::JournalLine line = m_impl->line(v1::JOURNAL_KIND_READY_ANSWER);
  line.mutable_answer()->set_question_id(asked->id());
  line.mutable_answer()->set_answer_id(choice_id);
  return m_impl->act({line}, nullptr);
}

absl::Status PracticeRun::painBefore(std::uint32_t pain_0_10, absl::Time wall, absl::Duration now) {
  if (pain_0_10 > 10) return absl::InvalidArgumentError("pain_before_0_10: is over 10");
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::PainBefore); !status.ok()) return status;
  v1::JournalLine line = m_impl->line(v1::JOURNAL_KIND_RATING, m_impl->entryIndex());
  line.set_pain_before_0_10(pain_0_10);
  return m_impl->act({line}, nullptr);
}

absl::Status PracticeRun::confirmSupport(absl::Time wall, absl::Duration now) {
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::Support); !status.ok()) return status;
  m_impl->m_confirmed = m_impl->entryIndex();
  m_impl->m_step = m_impl->derive();
  return absl::OkStatus();
}

absl::Status PracticeRun::startEntry(absl::Time wall, absl::Duration now) {
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::Ready); !status.ok()) return status;
  const std::size_t entry = m_impl->entryIndex();
  auto player = std::make_shared<Player>(m_impl->m_timelines[entry], 0);
  std::vector<v1::JournalLine> lines = {m_impl->line(v1::JOURNAL_KIND_ENTRY_BEGUN, entry)};
  for (v1::JournalLine& line : m_impl->linesOf(player->start(m_impl->m_now), entry))
    lines.push_back(std::move(line));
  Impl* impl = m_impl.get();
  return impl->act(std::move(lines), [impl, player] { impl->m_player = *player; });
}

absl::Status PracticeRun::tick(absl::Time wall, absl::Duration now) {
  if (absl::Status status = m_impl->ready(false, wall, now); !status.ok()) return status;
  if (m_impl->m_step != RunStep::Playing) return absl::OkStatus();
  return m_impl->playerAct(false, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.tick(impl->m_now); });
}

absl::Status PracticeRun::pause(absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(false, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.pause(impl->m_now); });
}

absl::Status PracticeRun::resume(absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(true, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.resume(impl->m_now); });
}

absl::Status PracticeRun::tapDone(absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(true, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.tapDone(impl->m_now); });
}

absl::Status PracticeRun::repeatBeat(absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(true, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.repeatBeat(impl->m_now); });
}

absl::Status PracticeRun::skipBeat(absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(true, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.skipBeat(impl->m_now); });
}

absl::Status PracticeRun::lengthenRest(absl::Duration by, absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(true, wall, now,
                           [impl = m_impl.get(), by](Player& p) { return p.lengthenRest(impl->m_now, by); });
}

absl::Status PracticeRun::slower(absl::Time wall, absl::Duration now) {
  return m_impl->playerAct(true, wall, now,
                           [impl = m_impl.get()](Player& p) { return p.slower(impl->m_now); });
}

absl::Status PracticeRun::stopPressed(absl::Time wall, absl::Duration now) {
  return m_impl->insist(wall, now, [impl = m_impl.get()] { return impl->stopPressed(); });
}

absl::Status PracticeRun::stopReason(v1::StopReason reason, absl::Time wall, absl::Duration now) {
  if (absl::Status status = checkReason(reason); !status.ok()) return status;
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::WhatHappened); !status.ok()) return status;
  return m_impl->stopReason(reason);
}

absl::Status PracticeRun::skipEntry(v1::StopReason reason, const std::string& words, absl::Time wall,
                                    absl::Duration now) {
  if (absl::Status status = checkReason(reason); !status.ok()) return status;
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  const RunStep step = m_impl->m_step;
  if (step != RunStep::Support && step != RunStep::Ready && step != RunStep::Playing)
    return m_impl->expect(RunStep::Ready);
  return m_impl->skipEntry(reason, words);
}

absl::Status PracticeRun::rate(std::uint32_t pain_0_10, std::uint32_t effort_0_10, absl::Time wall,
                               absl::Duration now) {
  if (pain_0_10 > 10) return absl::InvalidArgumentError("pain_after_0_10: is over 10");
  if (effort_0_10 > 10) return absl::InvalidArgumentError("effort_0_10: is over 10");
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::Rating); !status.ok()) return status;
  v1::JournalLine line = m_impl->line(v1::JOURNAL_KIND_RATING, m_impl->entryIndex());
  line.set_pain_after_0_10(pain_0_10);
  line.set_effort_0_10(effort_0_10);
  return m_impl->act({line}, nullptr);
}

absl::Status PracticeRun::acknowledge(absl::Time wall, absl::Duration now) {
  if (absl::Status status = m_impl->ready(true, wall, now); !status.ok()) return status;
  if (absl::Status status = m_impl->expect(RunStep::Verdict); !status.ok()) return status;
  m_impl->m_unread = false;
  m_impl->m_step = m_impl->derive();
  return absl::OkStatus();
}

absl::Status PracticeRun::holdOrder(const v1::HoldOrder& order, absl::Time wall, absl::Duration now) {
  return m_impl->insist(wall, now, [impl = m_impl.get(), order] { return impl->holdOrder(order); });
}

absl::Status PracticeRun::zoneChanged(const std::string& zone, absl::Time wall, absl::Duration now) {
  if (absl::Status status = m_impl->ready(false, wall, now); !status.ok()) return status;
  if (m_impl->m_ledger.closed() || zone == m_impl->m_ledger.header().zone()) return absl::OkStatus();
  v1::JournalLine line = m_impl->line(v1::JOURNAL_KIND_DOUBT);
  line.set_doubt(v1::CLOCK_DOUBT_ZONE_CHANGED);
  line.set_words(zone);
  return m_impl->act({line}, nullptr);
}

absl::Status PracticeRun::close(bool interrupted, absl::Time wall, absl::Duration now) {
  return m_impl->insist(wall, now, [impl = m_impl.get(), interrupted] { return impl->close(interrupted); });
}

absl::StatusOr<v1::Practice> practiceFromJournal(const std::vector<v1::JournalLine>& lines,
                                                 const std::vector<v1::Timeline>& timelines) {
  std::vector<TimelinePtr> shared;
  shared.reserve(timelines.size());
  for (const v1::Timeline& timeline : timelines)
    shared.push_back(std::make_shared<const v1::Timeline>(timeline));
  const absl::StatusOr<Ledger> ledger = Ledger::fold(lines, std::move(shared));
  if (!ledger.ok()) return ledger.status();
  return ledger->practice();
}

}  // namespace newel
