#include "core/progress/attention_digest.h"

#include <algorithm>

#include "core/progress/digest_next_steps.h"
#include "core/progress/digest_weeks.h"
#include "core/safety/practice_history.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr int kWeekDays = 7;
// The desk shows eight; behind it a rule of progression may look at ten practices. Ahead it has to last until
// somebody makes it anew. Ours, no source.
constexpr int kWeeksBack = 8;
constexpr int kWeeksBackForRules = 26;
constexpr int kWeeksAhead = 13;
constexpr std::size_t kRatingsKept = 12;
constexpr int kMostStops = 5;

absl::TimeZone zoneNamed(const std::string& name) { return loadZone(name).value_or(absl::UTCTimeZone()); }

struct Reached {
  bool arrived = false;
  bool seen = false;
};

// A receipt SEEN implies arrived.
Reached reachedBy(const WholeRecord& record, v1::ReceiptOf of, const std::string& ref_id) {
  Reached reached;
  for (const auto& receipt : record.receipts) {
    if (receipt.of() != of || receipt.ref_id() != ref_id) continue;
    reached.arrived = true;
    reached.seen = reached.seen || receipt.state() == v1::RECEIPT_STATE_SEEN;
  }
  return reached;
}

void addProgramme(const WholeRecord& record, v1::AttentionDigest& digest) {
  if (record.programmes.empty()) return;
  const v1::Programme& last = record.programmes.back();
  digest.set_programme_number(last.number());
  if (const auto end = parseLocalDay(last.end_day()); end.ok()) digest.set_programme_end(dayNumber(*end));
  if (!reachedBy(record, v1::RECEIPT_OF_PROGRAMME, last.id()).arrived) {
    *digest.mutable_programme_waiting_since() = last.issued_at();
  }
}

void addHolds(const WholeRecord& record, v1::AttentionDigest& digest) {
  if (record.holds.empty()) return;
  const v1::HoldOrder& last = record.holds.back();
  if (!reachedBy(record, v1::RECEIPT_OF_HOLD_ORDER, last.id()).arrived) {
    *digest.mutable_hold_waiting_since() = last.issued_at();
  }
  std::set<std::string> lifted;
  for (const auto& hold : record.holds) lifted.insert(hold.lifts_id());
  for (const auto& hold : record.holds) {
    if (!hold.lifts_id().empty() || lifted.contains(hold.id())) continue;
    *digest.mutable_on_hold_since() = hold.issued_at();
    return;
  }
}

void addStops(const WholeRecord& record, const RuleBook& rules, std::optional<absl::Time> spoke,
              absl::CivilDay today, v1::AttentionDigest& digest) {
  // The latest of each rule, and of all those the latest.
  std::vector<StandingStop> stops = standingStops(rules, record.practices, spoke);
  std::stable_sort(stops.begin(), stops.end(), [](const auto& a, const auto& b) { return a.at > b.at; });
  std::set<std::string> said;
  for (const auto& stop : stops) {
    // A day of slack for who travels westwards.
    if (stop.last_day && *stop.last_day < today - 1) continue;
    if (digest.stops_size() >= kMostStops || !said.insert(stop.rule_id).second) continue;
    const v1::Rule* rule = rules.rule(stop.rule_id);
    v1::StandingStop& kept = *digest.add_stops();
    kept.set_rule_id(stop.rule_id);
    kept.set_red_flag(rule == nullptr || rule->effect() == v1::EFFECT_RED_FLAG);
    *kept.mutable_at() = toTimestamp(stop.at);
    if (stop.last_day) kept.set_last_day(dayNumber(*stop.last_day));
  }
}

void addSign(std::optional<ToldSign> sign, const std::vector<ToldSign>& elsewhere,
             std::optional<absl::Time> spoke, v1::ToldSign* (v1::AttentionDigest::*slot)(),
             v1::AttentionDigest& digest) {
  for (const auto& other : elsewhere) {
    if (!sign || other.at > sign->at) sign = other;
  }
  if (!sign || (spoke && *spoke > sign->at)) return;
  v1::ToldSign& kept = *(digest.*slot)();
  *kept.mutable_at() = toTimestamp(sign->at);
  kept.set_what(sign->what);
}

void addWaiting(const v1::Message& message, google::protobuf::RepeatedPtrField<v1::WaitingWord>& list) {
  auto found = std::find_if(list.begin(), list.end(),
                            [&](const v1::WaitingWord& word) { return word.urgent() == message.urgent(); });
  if (found == list.end()) {
    v1::WaitingWord& word = *list.Add();
    word.set_urgent(message.urgent());
    *word.mutable_written_at() = message.written_at();
    *word.mutable_last_at() = message.written_at();
    word.set_count(1);
    return;
  }
  found->set_count(found->count() + 1);
  const absl::Time at = toTime(message.written_at());
  if (at < toTime(found->written_at())) *found->mutable_written_at() = message.written_at();
  if (at > toTime(found->last_at())) *found->mutable_last_at() = message.written_at();
}

void addMessages(const WholeRecord& record, v1::AttentionDigest& digest) {
  for (const auto& message : record.messages) {
    if (message.sender() == v1::SENDER_PERSON) {
      if (record.unread_ids.contains(message.id())) addWaiting(message, *digest.mutable_unread_by_clinic());
    } else if (!reachedBy(record, v1::RECEIPT_OF_MESSAGE, message.id()).seen) {
      addWaiting(message, *digest.mutable_unseen_by_person());
    }
  }
}

void addPain(const WholeRecord& record, v1::AttentionDigest& digest) {
  const std::vector<PainRating> ratings = painRatings(record.practices, "");
  const std::size_t first = ratings.size() > kRatingsKept ? ratings.size() - kRatingsKept : 0;
  for (std::size_t i = first; i < ratings.size(); ++i) {
    digest.add_pain_days(dayNumber(ratings[i].day));
    digest.add_pain_0_10(static_cast<std::uint32_t>(ratings[i].pain_0_10));
  }
}

bool hasRuleOnMissed(const std::vector<v1::Programme>& programmes) {
  return !programmes.empty() &&
         std::any_of(programmes.back().entries().begin(), programmes.back().entries().end(),
                     [](const v1::Entry& entry) { return entry.progression().nothing_missed(); });
}

absl::Status addPractice(const WholeRecord& record, absl::CivilDay today, v1::AttentionDigest& digest) {
  const absl::CivilDay monday = mondayOf(today);
  const absl::civil_diff_t back = hasRuleOnMissed(record.programmes) ? kWeeksBackForRules : kWeeksBack;
  const absl::CivilDay last = monday + kWeekDays * absl::civil_diff_t{kWeeksAhead} - 1;
  const auto facts = occasionFacts(record.programmes, record.practices, monday - kWeekDays * back, last,
                                   heldDaysOf(record.holds, zoneNamed(record.zone)));
  if (!facts.ok()) return facts.status();
  tallyWeeks(*facts, monday - kWeekDays * absl::civil_diff_t{kWeeksBack}, last, digest);
  if (const auto done = lastDoneDay(record.practices)) digest.set_last_done(dayNumber(*done));
  return addNextSteps(record.programmes, record.practices, *facts, today, digest);
}

WaitingMessage waitingOf(const v1::WaitingWord& word) {
  return {toTime(word.written_at()), word.urgent(), static_cast<int>(word.count()), toTime(word.last_at())};
}

std::optional<ToldSign> signOf(bool there, const v1::ToldSign& sign) {
  if (!there) return std::nullopt;
  return ToldSign{toTime(sign.at()), sign.what()};
}

std::optional<absl::Time> timeOf(bool there, const google::protobuf::Timestamp& at) {
  if (!there) return std::nullopt;
  return toTime(at);
}

// The days on which a digest is looked at.
struct Days {
  absl::CivilDay today;
  absl::CivilDay heard_until;
};

Days daysAt(const v1::AttentionDigest& digest, const ContactFacts& contact, absl::Time now) {
  const absl::TimeZone zone = zoneNamed(digest.zone());
  return {localDayAt(now, zone),
          contact.last_contact ? localDayAt(*contact.last_contact, zone) : absl::CivilDay::min()};
}

void addShares(const v1::AttentionDigest& digest, const Days& days, AttentionFacts& facts) {
  if (digest.has_last_done()) facts.last_done = std::min(dayOfNumber(digest.last_done()), days.today);
  const absl::CivilDay first = mondayOf(days.today) - kWeekDays * absl::civil_diff_t{kAttentionWeeks - 1};
  const WeekFigures figures = figuresOf(digest, first, kAttentionWeeks, days.today, days.heard_until,
                                        facts.last_done.value_or(absl::CivilDay::min()));
  facts.share = figures.share;
  facts.no_data = figures.no_data;
  facts.missed_since_done = figures.missed;
}

}  // namespace

absl::StatusOr<v1::AttentionDigest> digestOf(const WholeRecord& record, const RuleBook& rules,
                                             absl::Time now) {
  v1::AttentionDigest digest;
  digest.set_zone(record.zone);
  const absl::CivilDay today = localDayAt(now, zoneNamed(record.zone));
  const auto spoke = clinicSpokeAt(record.programmes, record.holds, record.messages);
  addProgramme(record, digest);
  addHolds(record, digest);
  addStops(record, rules, spoke, today, digest);
  addSign(lastFall(record.practices), record.falls_told_elsewhere, spoke, &v1::AttentionDigest::mutable_fall,
          digest);
  addSign(lastSkinSign(record.practices), record.skin_told_elsewhere, spoke,
          &v1::AttentionDigest::mutable_skin, digest);
  for (const MeasureDue& wanted : record.measures_wanted) {
    v1::WantedMeasure& measure = *digest.add_measures();
    measure.set_kind(wanted.kind_id);
    measure.set_by_day(dayNumber(wanted.due));
  }
  addMessages(record, digest);
  addPain(record, digest);
  const absl::Status added = addPractice(record, today, digest);
  if (!added.ok()) return added;
  return digest;
}

bool digestLasts(const v1::AttentionDigest& digest, absl::Time now) {
  return localDayAt(now, zoneNamed(digest.zone())) + kWeekDays <= dayOfNumber(digest.last_day());
}

AttentionFacts factsAt(const v1::AttentionDigest& digest, const ContactFacts& contact, absl::Time now) {
  const Days days = daysAt(digest, contact, now);
  AttentionFacts facts;
  facts.person_id = contact.person_id;
  facts.last_contact = contact.last_contact;
  facts.paired = contact.paired;
  if (digest.programme_number() > 0) {
    facts.programme_number = digest.programme_number();
    facts.programme_end = dayOfNumber(digest.programme_end());
  }
  facts.programme_waiting_since =
      timeOf(digest.has_programme_waiting_since(), digest.programme_waiting_since());
  facts.hold_waiting_since = timeOf(digest.has_hold_waiting_since(), digest.hold_waiting_since());
  facts.on_hold_since = timeOf(digest.has_on_hold_since(), digest.on_hold_since());
  for (const auto& stop : digest.stops()) {
    if (stop.has_last_day() && days.today > dayOfNumber(stop.last_day())) continue;
    facts.flags.push_back({stop.rule_id(), stop.red_flag(), toTime(stop.at())});
  }
  facts.fall = signOf(digest.has_fall(), digest.fall());
  facts.skin = signOf(digest.has_skin(), digest.skin());
  for (const auto& word : digest.unseen_by_person()) facts.unseen_by_person.push_back(waitingOf(word));
  for (const auto& word : digest.unread_by_clinic()) facts.unread_by_clinic.push_back(waitingOf(word));
  const int ratings = std::min(digest.pain_days_size(), digest.pain_0_10_size());
  facts.pain_ratings.reserve(static_cast<std::size_t>(ratings));
  for (int i = 0; i < ratings; ++i) {
    facts.pain_ratings.push_back(
        {dayOfNumber(digest.pain_days(i)), static_cast<double>(digest.pain_0_10(i))});
  }
  addShares(digest, days, facts);
  for (const auto& ready : digest.ready()) {
    if (ready.has_last_day() && days.today > dayOfNumber(ready.last_day())) continue;
    facts.ready.push_back(ready.exercise_id());
  }
  facts.too_hard.assign(digest.too_hard().begin(), digest.too_hard().end());
  for (const auto& measure : digest.measures()) {
    const absl::CivilDay due = dayOfNumber(measure.by_day());
    if (!facts.measure_due || due < facts.measure_due->due)
      facts.measure_due = MeasureDue{measure.kind(), due};
  }
  return facts;
}

std::vector<std::optional<double>> weekSharesAt(const v1::AttentionDigest& digest,
                                                const ContactFacts& contact, absl::Time now, int weeks) {
  const Days days = daysAt(digest, contact, now);
  std::vector<std::optional<double>> shares;
  shares.reserve(static_cast<std::size_t>(weeks));
  for (absl::civil_diff_t back = weeks - 1; back >= 0; --back) {
    const absl::CivilDay monday = mondayOf(days.today) - kWeekDays * back;
    shares.push_back(figuresOf(digest, monday, 1, days.today, days.heard_until).share.capped());
  }
  return shares;
}

std::optional<absl::Time> clinicSpokeAt(const std::vector<v1::Programme>& programmes,
                                        const std::vector<v1::HoldOrder>& holds,
                                        const std::vector<v1::Message>& messages) {
  std::optional<absl::Time> last;
  const auto note = [&last](const google::protobuf::Timestamp& at) {
    const absl::Time time = toTime(at);
    if (!last || time > *last) last = time;
  };
  for (const auto& programme : programmes) note(programme.issued_at());
  for (const auto& hold : holds) {
    if (!hold.lifts_id().empty()) note(hold.issued_at());
  }
  for (const auto& message : messages) {
    if (message.sender() == v1::SENDER_CLINIC) note(message.written_at());
  }
  return last;
}

}  // namespace newel
