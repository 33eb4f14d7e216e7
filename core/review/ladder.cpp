#include "core/review/ladder.h"

#include <google/protobuf/util/message_differencer.h>

#include <utility>

#include "core/library/default_entry.h"

namespace newel {
namespace {

using google::protobuf::util::MessageDifferencer;

bool isRung(const v1::Entry& entry, const v1::Rung& rung) {
  return entry.support() == rung.support() && MessageDifferencer::Equals(entry.dose(), rung.dose());
}

std::string blockedBy(const v1::Entry& entry, const v1::Person& person, const Catalogue& catalogue,
                      const RuleBook& rules) {
  const auto findings = rules.check(entry, person, catalogue);
  // What cannot be judged is not offered.
  if (!findings.ok()) return std::string(findings.status().message());
  const bool blocked = !findings->empty() && findings->front().effect() == v1::EFFECT_BLOCK;
  return blocked ? findings->front().therapist() : std::string();
}

}  // namespace

int rungAt(const v1::Entry& entry, const v1::Exercise& exercise) {
  for (int i = 0; i < exercise.ladder_size(); ++i) {
    if (!entry.rung_id().empty() && exercise.ladder(i).id() == entry.rung_id()) return i;
  }
  for (int i = 0; i < exercise.ladder_size(); ++i) {
    if (isRung(entry, exercise.ladder(i))) return i;
  }
  return -1;
}

LadderStep stepOnLadder(const v1::Entry& entry, bool up, const v1::Person& person, const Catalogue& catalogue,
                        const RuleBook& rules) {
  LadderStep step;
  step.entry = entry;
  const v1::Exercise* const exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr || exercise->ladder().empty()) return step;
  const int at = rungAt(entry, *exercise);
  step.what = LadderStep::What::OffLadder;
  // A rung is named while the dose is still its own; what was written over it is the therapist's.
  if (at < 0 || !isRung(entry, exercise->ladder(at))) return step;
  step.what = LadderStep::What::AtItsEnd;
  const int next = up ? at + 1 : at - 1;
  if (next < 0 || next >= exercise->ladder_size()) return step;
  v1::Entry moved = entry;
  standOn(moved, exercise->ladder(next));
  step.words = blockedBy(moved, person, catalogue, rules);
  step.what = step.words.empty() ? LadderStep::What::Taken : LadderStep::What::Blocked;
  if (step.words.empty()) step.entry = std::move(moved);
  return step;
}

}  // namespace newel
