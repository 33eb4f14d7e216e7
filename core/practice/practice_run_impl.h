// The inside of PracticeRun. The ledger holds what is kept; every act first keeps its lines, then the ledger
// says what follows (dueLines), and only then the visible step changes. Taking up after a kill is the same:
// fold the lines, keep what is due, derive the step. For core/practice alone.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/practice/ledger.h"
#include "core/practice/practice_run.h"
#include "core/practice/run_rules.h"

namespace newel {

class PracticeRun::Impl {
 public:
  using Lines = std::vector<v1::JournalLine>;

  Impl(RunInput input, const Catalogue& catalogue, const RuleBook& rules, absl::Time wall, absl::Duration now,
       Keep keep);

  absl::Status prepare();  // entries, timelines, what the rules block
  absl::Status startNew();
  absl::Status foldOld(const Lines& lines);

  // Before every act. `choice`: a person's choice, not carried out when older lines had to be kept first.
  absl::Status ready(bool choice, absl::Time wall, absl::Duration now);
  // For what must not be forgotten: carried out now, or as soon as older lines can be kept.
  absl::Status insist(absl::Time wall, absl::Duration now, const std::function<absl::Status()>& call);
  absl::Status flush();
  absl::Status expect(RunStep step) const;

  // Keeps `lines`, then runs `then`, keeps what is due, and derives the step. `must`: stays asked for when
  // the first line cannot be kept.
  absl::Status act(Lines lines, std::function<void()> then, bool must = false);
  absl::Status drain();
  Lines dueLines();
  RunStep derive() const;

  v1::JournalLine line(v1::JournalKind kind, std::size_t entry = 0) const;
  Lines linesOf(const std::vector<PlayerEvent>& events, std::size_t entry) const;
  v1::JournalLine closeLine(v1::PracticeEnd end, v1::StopReason reason) const;

  // A player call on a copy, its events kept, then the copy shown.
  absl::Status playerAct(bool choice, absl::Time wall, absl::Duration now,
                         const std::function<std::vector<PlayerEvent>(Player&)>& call);
  absl::Status stopPressed();
  absl::Status stopReason(v1::StopReason reason);
  absl::Status skipEntry(v1::StopReason reason, const std::string& words);
  absl::Status holdOrder(const v1::HoldOrder& order);
  absl::Status close(bool interrupted);

  const v1::ReadyQuestion* nextQuestion() const;
  int answeredCount() const;
  std::size_t entryIndex() const;
  bool needsSupport(std::size_t entry) const;

  RunInput m_input;
  const Catalogue* m_catalogue;
  RunRules m_rules;
  const RuleBook* m_book;
  Keep m_keep;
  RunContext m_context;
  std::vector<TimelinePtr> m_timelines;
  std::vector<std::optional<v1::Finding>> m_blocked;  // by a rule, before the practice began
  std::vector<std::optional<v1::Finding>> m_cautions;
  std::vector<const v1::ReadyQuestion*> m_questions;

  Ledger m_ledger;
  std::optional<Player> m_player;
  std::optional<std::size_t> m_confirmed;  // entry whose support was confirmed
  std::optional<Verdict> m_verdict;
  bool m_unread = false;  // the verdict waits for acknowledge()
  std::uint32_t m_judged = 0;
  RunStep m_step = RunStep::Closed;

  absl::Duration m_origin;  // elapsed instant that lines count from
  absl::Duration m_now;
  absl::Time m_wall;
  absl::Duration m_wall_offset;  // wall minus elapsed when last believed

  Lines m_queue;  // asked for and not kept yet
  std::function<void()> m_then;
  bool m_droppable = false;
  std::vector<std::function<absl::Status()>> m_insisted;

 private:
  Lines dueHolds();
  Lines dueBlocked();
  Lines dueJudgement();
  Lines endingLines(const std::vector<v1::Finding>& findings) const;
  Lines leavingOutLines(const std::vector<v1::Finding>& findings) const;
  v1::JournalLine leftOutLine(std::size_t entry, const v1::Finding& why) const;
  Lines dueAfterStop();
  Lines dueEnd();
};

}  // namespace newel
