#include "qml/desk/caseload_rows.h"

#include <QtCore/QCoreApplication>
#include <array>
#include <utility>

#include "core/progress/attention_digest.h"
#include "core/time/local_day.h"
#include "qml/desk/attention_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr int kWeeks = 8;

struct Kind {
  const char* key;
  ReasonKind kind;
};
constexpr std::array<Kind, 24> kKinds = {{
    {"attention.red-flag", ReasonKind::Safety},
    {"attention.fall", ReasonKind::Safety},
    {"attention.stopped", ReasonKind::Safety},
    {"attention.hold-not-arrived", ReasonKind::Safety},
    {"attention.on-hold", ReasonKind::Safety},
    {"attention.pain-rising", ReasonKind::PainAndSkin},
    {"attention.skin", ReasonKind::PainAndSkin},
    {"attention.urgent-unseen", ReasonKind::Messages},
    {"attention.message-unread", ReasonKind::Messages},
    {"attention.message-unseen", ReasonKind::Messages},
    {"attention.silent", ReasonKind::Contact},
    {"attention.stale", ReasonKind::Contact},
    {"attention.never-heard", ReasonKind::Contact},
    {"attention.not-paired", ReasonKind::Contact},
    {"attention.nothing-done", ReasonKind::Doing},
    {"attention.never-done", ReasonKind::Doing},
    {"attention.little-done", ReasonKind::Doing},
    {"attention.too-hard", ReasonKind::Doing},
    {"attention.ready", ReasonKind::NextStep},
    {"attention.measure-due", ReasonKind::NextStep},
    {"attention.programme-waiting", ReasonKind::Programme},
    {"attention.programme-ended", ReasonKind::Programme},
    {"attention.programme-ending", ReasonKind::Programme},
    {"attention.no-programme", ReasonKind::Programme},
}};

std::optional<Snooze> snoozeOf(const v1::CaseRow& row) {
  if (!row.has_snooze()) return std::nullopt;
  const auto until = parseLocalDay(row.snooze().until_day());
  if (!until.ok()) return std::nullopt;
  Snooze snooze{
      toTime(row.snooze().at()), *until, row.snooze().urgency() == 1 ? Urgency::Today : Urgency::Soon, {}};
  snooze.keys.insert(row.snooze().keys().begin(), row.snooze().keys().end());
  return snooze;
}

}  // namespace

QString kindWords(ReasonKind kind) {
  switch (kind) {
    case ReasonKind::Safety:
      return QCoreApplication::translate("CaseloadRows", "Safety");
    case ReasonKind::PainAndSkin:
      return QCoreApplication::translate("CaseloadRows", "Pain and skin");
    case ReasonKind::Messages:
      return QCoreApplication::translate("CaseloadRows", "Messages");
    case ReasonKind::Contact:
      return QCoreApplication::translate("CaseloadRows", "No contact");
    case ReasonKind::Doing:
      return QCoreApplication::translate("CaseloadRows", "Doing less");
    case ReasonKind::NextStep:
      return QCoreApplication::translate("CaseloadRows", "Next step");
    case ReasonKind::Programme:
      break;
  }
  return QCoreApplication::translate("CaseloadRows", "Programme");
}

std::optional<ReasonKind> kindOf(const std::string& key) {
  for (const Kind& kind : kKinds) {
    if (key == kind.key) return kind.kind;
  }
  return std::nullopt;
}

CaseloadEntry caseloadEntry(v1::CaseRow row, const ListMoment& moment, const RuleBook& rules) {
  CaseloadEntry entry;
  entry.row = std::move(row);
  entry.name = print::fullName(entry.row.identity());
  entry.limbs = QStringLiteral("%1 · %2").arg(print::limbsWords(entry.row.person()),
                                              print::words(entry.row.person().mobility()));
  judgeAgain(entry, moment, rules);
  return entry;
}

void judgeAgain(CaseloadEntry& entry, const ListMoment& moment, const RuleBook& rules) {
  const v1::CaseRow& row = entry.row;
  ContactFacts contact{row.person().id(), std::nullopt, row.paired()};
  if (row.has_last_contact()) contact.last_contact = toTime(row.last_contact());
  v1::AttentionDigest digest;
  entry.known = !row.digest().empty() && digest.ParseFromString(row.digest());
  if (!entry.known) digest.Clear();
  entry.facts = factsAt(digest, contact, moment.now);
  entry.facts.snooze = snoozeOf(row);
  entry.weeks = weekSharesAt(digest, contact, moment.now, kWeeks);
  const absl::CivilDay today = localDayAt(moment.now, moment.zone);
  entry.attention = attentionRow(entry.facts, moment.now, today, moment.silent_after_days);
  entry.kinds = 0;
  for (const auto& reason : entry.attention.reasons) {
    if (const auto kind = kindOf(reason.key)) entry.kinds |= 1U << static_cast<unsigned>(*kind);
  }
  const QString first = entry.known ? reasonWords(entry.attention.reasons.front(), rules) : QString();
  entry.search = (entry.name + QLatin1Char(' ') + entry.limbs + QLatin1Char(' ') +
                  urgencyWords(entry.attention.urgency) + QLatin1Char(' ') + first)
                     .toLower();
}

}  // namespace newel::desk
