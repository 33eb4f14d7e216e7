// The rows of the attention list with all that the screen wants of them, made off the UI thread: thousands at
// a time. The order and the reasons are core/progress's.
#pragma once

#include <QtCore/QList>
#include <QtCore/QString>
#include <optional>
#include <vector>

#include "core/progress/attention.h"
#include "core/safety/rule_book.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel::desk {

// What a row is judged by, the same for all.
struct ListMoment {
  absl::Time now;
  absl::TimeZone zone;  // of this desk
  int silent_after_days = 0;
};

struct CaseloadEntry {
  v1::CaseRow row;
  AttentionFacts facts;
  AttentionRow attention;
  std::vector<std::optional<double>> weeks;
  QString name;
  QString limbs;
  QString search;      // what a search looks through, in lower case
  unsigned kinds = 0;  // of its reasons: bits of ReasonKind
  bool known = false;  // the record could be read as a whole
};

// What a therapist may ask for: people with a reason of one kind.
enum class ReasonKind { Safety, PainAndSkin, Messages, Contact, Doing, NextStep, Programme };
inline constexpr int kReasonKinds = 7;
QString kindWords(ReasonKind kind);
std::optional<ReasonKind> kindOf(const std::string& key);  // nullopt: a state, no reason to act

// Any thread.
CaseloadEntry caseloadEntry(v1::CaseRow row, const ListMoment& moment, const RuleBook& rules);
// Days have passed, or time alone.
void judgeAgain(CaseloadEntry& entry, const ListMoment& moment, const RuleBook& rules);

}  // namespace newel::desk
