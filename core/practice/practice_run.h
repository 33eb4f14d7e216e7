// One practice from the ready check to its close: order of entries, answers, ratings, stops, red flags, and
// taking up again after a kill. The player leads within an entry; this leads between them.
// Pure: time comes in, journal lines come out; whoever calls keeps them (sync/home) BEFORE showing anything.
// A red flag, a NOT_TODAY or a hold order closes the journal in the same breath as it is recorded: from then
// on over() is true and no call can lead to a beat.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>
#include <absl/types/span.h>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/practice/player.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

enum class RunStep {
  Question,      // question() says which
  PainBefore,    // one number before the first entry
  Support,       // support of the coming entry must be confirmed before it starts
  Ready,         // the coming entry may start
  Playing,       // player() leads
  Rating,        // pain and effort of the entry just ended
  WhatHappened,  // Stop was pressed: which reason
  Verdict,       // a rule spoke: verdict() says what; the only way on is acknowledge()
  Closed,
};

inline constexpr char kHoldOrderRule[] = "hold-order";

// What the person is told when a rule or a hold order ends or thins the practice. Of a hold order the finding
// has the rule id kHoldOrderRule, the order's reason as its words, and NOT_TODAY as its effect.
struct Verdict {
  std::vector<v1::Finding> findings;  // highest first
  bool ends_practice = false;
};

struct RunInput {
  std::string practice_id;  // UUIDv7
  v1::Programme programme;
  v1::Person person;
  std::vector<v1::OccasionRef> occasions;  // in the order to do them
  std::string zone;                        // where the person is now
  std::string local_day;
  std::string language;
  std::string app_version;
  std::vector<std::string> held_entry_ids;  // under a hold order: left out
  bool held_all = false;
  RuleFacts history;  // facts about the past the rules may look at (core/safety/facts.h)
};

class PracticeRun {
 public:
  // Where lines go, called before the state that they record is visible: all of them, or none. One call per
  // change of state, so that a beat's end and the next one's beginning cost one write to the disk. An error
  // stops the step: the state stays as it was and the error is returned to whoever called. What follows from
  // kept lines (a flag after an answer) is kept by a call of its own; where that fails, it is kept at the
  // start of the next call, whichever it is; a call that is a person's choice is then not carried out but
  // answered with kAborted ("look again"). A stop, a hold order or a close that could not be kept stays asked
  // for: nothing else happens until it is kept.
  using Keep = std::function<absl::Status(absl::Span<const v1::JournalLine>)>;

  // Compiles every entry. Entries under a hold order, and those that a rule now blocks for this person (the
  // same rules as at the desk), are left out and recorded so. kFailedPrecondition when nothing is left or an
  // entry cannot be compiled, kInvalidArgument when an occasion names no entry of the programme.
  static absl::StatusOr<std::unique_ptr<PracticeRun>> begin(RunInput input, const Catalogue& catalogue,
                                                            const RuleBook& rules, absl::Time wall,
                                                            absl::Duration now, Keep keep);
  // From the lines of an unfinished practice: all that was done counts, the beat under way is void, and the
  // run waits Paused before it. Holds in `input` that are new take effect at once. Confirmations of support
  // are asked again. kDataLoss when the lines are not a prefix some begin() could have written.
  static absl::StatusOr<std::unique_ptr<PracticeRun>> takeUp(RunInput input,
                                                             const std::vector<v1::JournalLine>& lines,
                                                             const Catalogue& catalogue,
                                                             const RuleBook& rules, absl::Time wall,
                                                             absl::Duration now, Keep keep);

  RunStep step() const;
  const v1::ReadyQuestion* question() const;  // at Question
  int questionNumber() const;                 // from 1
  int questionCount() const;
  const Player* player() const;    // at Playing, else nullptr
  std::size_t entryIndex() const;  // the coming or present entry
  std::size_t entryCount() const;
  const v1::Entry& entry(std::size_t index) const;
  const v1::Timeline& timeline(std::size_t index) const;
  bool entryLeftOut(std::size_t index) const;
  std::optional<v1::Finding> caution(std::size_t index) const;  // the highest one, at most one is shown
  const Verdict* verdict() const;

  // Every call: elapsed instant and wall time now. kFailedPrecondition when the step does not take it.
  absl::Status answer(const std::string& choice_id, absl::Time wall, absl::Duration now);
  absl::Status painBefore(std::uint32_t pain_0_10, absl::Time wall, absl::Duration now);
  absl::Status confirmSupport(absl::Time wall, absl::Duration now);
  absl::Status startEntry(absl::Time wall, absl::Duration now);
  absl::Status tick(absl::Time wall, absl::Duration now);
  absl::Status pause(absl::Time wall, absl::Duration now);
  absl::Status resume(absl::Time wall, absl::Duration now);
  absl::Status tapDone(absl::Time wall, absl::Duration now);
  absl::Status repeatBeat(absl::Time wall, absl::Duration now);
  absl::Status skipBeat(absl::Time wall, absl::Duration now);
  absl::Status lengthenRest(absl::Duration by, absl::Time wall, absl::Duration now);
  // Movements of this entry take longer from now on (player.h); no line is kept of it.
  absl::Status slower(absl::Time wall, absl::Duration now);
  // Stop acts at once (the player is Stopped); stopReason() then says why, and the rules decide what follows.
  // Outside an entry it asks the same; a reason that no rule ends the practice for skips the coming entry.
  absl::Status stopPressed(absl::Time wall, absl::Duration now);
  absl::Status stopReason(v1::StopReason reason, absl::Time wall, absl::Duration now);
  absl::Status skipEntry(v1::StopReason reason, const std::string& words, absl::Time wall,
                         absl::Duration now);
  absl::Status rate(std::uint32_t pain_0_10, std::uint32_t effort_0_10, absl::Time wall, absl::Duration now);
  absl::Status acknowledge(absl::Time wall, absl::Duration now);
  // A hold order arrived. Ends the practice (everything) or the entries it names, at once, in any step.
  absl::Status holdOrder(const v1::HoldOrder& order, absl::Time wall, absl::Duration now);
  absl::Status zoneChanged(const std::string& zone, absl::Time wall, absl::Duration now);
  // Ends it here: FINISHED when nothing is left, else STOPPED (or INTERRUPTED when `interrupted`). Needed
  // only to leave early: a practice closes itself after its last rating. Once over() it is OK and changes
  // nothing.
  absl::Status close(bool interrupted, absl::Time wall, absl::Duration now);

  bool closed() const { return step() == RunStep::Closed; }
  // The journal is closed and practice() complete, though a verdict may still have to be read: the record can
  // be sent now. No call changes it any more.
  bool over() const;
  // The record, complete once Closed; before that what could be closed now.
  v1::Practice practice() const;

  ~PracticeRun();

 private:
  class Impl;
  explicit PracticeRun(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> m_impl;
};

// The record that the lines amount to; the same that PracticeRun::practice() gives. kDataLoss as in takeUp().
absl::StatusOr<v1::Practice> practiceFromJournal(const std::vector<v1::JournalLine>& lines,
                                                 const std::vector<v1::Timeline>& timelines);

}  // namespace newel
