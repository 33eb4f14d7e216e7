#include "qml/desk/person_file.h"

#include <algorithm>
#include <set>

#include "core/safety/practice_history.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel::desk {
namespace {

constexpr int kAttentionWeeks = 3;  // this week and the two before it

template <typename Value>
absl::Status take(absl::StatusOr<Value> from, Value& to) {
  if (!from.ok()) return from.status();
  to = *std::move(from);
  return absl::OkStatus();
}

double highestPain(const v1::Practice& practice, bool& rated) {
  double highest = 0;
  for (const auto& entry : practice.entries()) {
    for (const auto& pain :
         {entry.has_pain_before_0_10() ? std::optional(entry.pain_before_0_10()) : std::nullopt,
          entry.has_pain_after_0_10() ? std::optional(entry.pain_after_0_10()) : std::nullopt}) {
      if (!pain) continue;
      rated = true;
      highest = std::max(highest, static_cast<double>(*pain));
    }
  }
  return highest;
}

void addFlags(const PersonFile& file, const RuleBook& rules, absl::Time now, AttentionFacts& facts) {
  const auto stop = openStop(rules, file.practices, todayOf(file, now), clinicSpokeAt(file));
  if (!stop) return;
  OpenFlag flag;
  flag.rule_id = stop->rule_id;
  const v1::Rule* rule = rules.rule(stop->rule_id);
  flag.red_flag = rule == nullptr || rule->effect() == v1::EFFECT_RED_FLAG;
  flag.at = now;
  for (const auto& practice : file.practices) {
    if (practice.id() == stop->practice_id) flag.at = toTime(practice.ended_at());
  }
  facts.flags.push_back(flag);
}

void addMessages(const PersonFile& file, std::uint32_t unread, AttentionFacts& facts) {
  for (auto message = file.messages.rbegin(); message != file.messages.rend(); ++message) {
    const WaitingMessage waiting{toTime(message->written_at()), message->urgent()};
    if (message->sender() == v1::SENDER_PERSON) {
      if (facts.unread_by_clinic.size() < unread) facts.unread_by_clinic.push_back(waiting);
    } else if (!reachedBy(file, v1::RECEIPT_OF_MESSAGE, message->id()).seen) {
      facts.unseen_by_person.push_back(waiting);
    }
  }
}

void addProgramme(const PersonFile& file, AttentionFacts& facts) {
  const v1::Programme* last = lastProgramme(file);
  if (last == nullptr) return;
  facts.programme_number = last->number();
  const auto end = parseLocalDay(last->end_day());
  if (end.ok()) facts.programme_end = *end;
  if (!reachedBy(file, v1::RECEIPT_OF_PROGRAMME, last->id()).arrived) {
    facts.programme_waiting_since = toTime(last->issued_at());
  }
}

}  // namespace

absl::StatusOr<PersonFile> fetchPerson(DeskClient& client, const std::string& person_id, bool mark_read) {
  PersonFile file;
  auto reply = client.person(person_id);
  if (!reply.ok()) return reply.status();
  file.person = std::move(*reply->mutable_person());
  file.identity = std::move(*reply->mutable_identity());
  file.openings.assign(reply->openings().begin(), reply->openings().end());
  for (const auto& step : std::initializer_list<std::function<absl::Status()>>{
           [&] { return take(client.programmes(person_id), file.programmes); },
           [&] { return take(client.holds(person_id), file.holds); },
           [&] { return take(client.messages(person_id, mark_read), file.messages); },
           [&] { return take(client.receipts(person_id), file.receipts); },
           [&] { return take(client.practices(person_id), file.practices); },
           [&] { return take(client.wearBlocks(person_id), file.wear_blocks); },
           [&] { return take(client.measures(person_id), file.measures); },
           [&] { return take(client.devices(person_id), file.devices); }}) {
    const absl::Status status = step();
    if (!status.ok()) return status;
  }
  std::sort(file.practices.begin(), file.practices.end(),
            [](const v1::Practice& left, const v1::Practice& right) {
              return toTime(left.started_at()) < toTime(right.started_at());
            });
  std::sort(file.wear_blocks.begin(), file.wear_blocks.end(),
            [](const v1::WearBlock& left, const v1::WearBlock& right) {
              return toTime(left.put_on_at()) < toTime(right.put_on_at());
            });
  return file;
}

std::optional<absl::Time> openedUntil(const PersonFile& file, const std::string& account_id, absl::Time now) {
  std::optional<absl::Time> until;
  for (const auto& opening : file.openings) {
    const absl::Time end = toTime(opening.until());
    if (opening.therapist_id() == account_id && end > now && (!until || end > *until)) until = end;
  }
  return until;
}

absl::TimeZone zoneOf(const PersonFile& file) {
  return loadZone(file.person.zone()).value_or(absl::UTCTimeZone());
}

absl::CivilDay todayOf(const PersonFile& file, absl::Time now) { return localDayAt(now, zoneOf(file)); }

std::optional<absl::Time> lastContact(const PersonFile& file) {
  std::optional<absl::Time> last;
  for (const auto& device : file.devices) {
    if (device.revoked() || !device.has_last_contact()) continue;
    const absl::Time at = toTime(device.last_contact());
    if (!last || at > *last) last = at;
  }
  return last;
}

std::optional<absl::CivilDay> heardUntil(const PersonFile& file) {
  const auto last = lastContact(file);
  if (!last) return std::nullopt;
  return localDayAt(*last, zoneOf(file));
}

bool isPaired(const PersonFile& file) {
  return std::any_of(file.devices.begin(), file.devices.end(),
                     [](const v1::Device& device) { return !device.revoked(); });
}

Reached reachedBy(const PersonFile& file, v1::ReceiptOf of, const std::string& ref_id) {
  Reached reached;
  for (const auto& receipt : file.receipts) {
    if (receipt.of() != of || receipt.ref_id() != ref_id) continue;
    const absl::Time at = toTime(receipt.at());
    if (!reached.arrived || at < *reached.arrived) reached.arrived = at;
    if (receipt.state() == v1::RECEIPT_STATE_SEEN && (!reached.seen || at < *reached.seen)) reached.seen = at;
  }
  return reached;
}

std::vector<const v1::HoldOrder*> activeHolds(const PersonFile& file) {
  std::set<std::string> lifted;
  for (const auto& hold : file.holds) lifted.insert(hold.lifts_id());
  std::vector<const v1::HoldOrder*> active;
  for (const auto& hold : file.holds) {
    if (hold.lifts_id().empty() && !lifted.contains(hold.id())) active.push_back(&hold);
  }
  return active;
}

const v1::Programme* lastProgramme(const PersonFile& file) {
  return file.programmes.empty() ? nullptr : &file.programmes.back();
}

const v1::Entry* entryOf(const PersonFile& file, const std::string& entry_id) {
  for (auto programme = file.programmes.rbegin(); programme != file.programmes.rend(); ++programme) {
    for (const auto& entry : programme->entries()) {
      if (entry.id() == entry_id) return &entry;
    }
  }
  return nullptr;
}

std::optional<absl::Time> clinicSpokeAt(const PersonFile& file) {
  std::optional<absl::Time> last;
  const auto note = [&last](const google::protobuf::Timestamp& at) {
    const absl::Time time = toTime(at);
    if (!last || time > *last) last = time;
  };
  for (const auto& programme : file.programmes) note(programme.issued_at());
  for (const auto& hold : file.holds) {
    if (!hold.lifts_id().empty()) note(hold.issued_at());
  }
  for (const auto& message : file.messages) {
    if (message.sender() == v1::SENDER_CLINIC) note(message.written_at());
  }
  return last;
}

absl::StatusOr<Adherence> recentAdherence(const PersonFile& file, absl::Time now, int weeks) {
  const absl::CivilDay today = todayOf(file, now);
  const absl::CivilDay first = mondayOf(today) - absl::civil_diff_t{7} * (weeks - 1);
  return adherenceOf(file.programmes, file.practices, first, mondayOf(today) + 6, today,
                     heardUntil(file).value_or(first - 1), heldDaysOf(file.holds, zoneOf(file)));
}

std::vector<std::optional<double>> weekShares(const PersonFile& file, absl::Time now, int weeks) {
  std::vector<std::optional<double>> shares(static_cast<std::size_t>(weeks));
  const auto adherence = recentAdherence(file, now, weeks);
  if (!adherence.ok()) return shares;
  const absl::CivilDay first = mondayOf(todayOf(file, now)) - absl::civil_diff_t{7} * (weeks - 1);
  for (const auto& [monday, share] : adherence->by_week) {
    const auto day = parseLocalDay(monday);
    if (!day.ok() || *day < first) continue;
    const auto at = static_cast<std::size_t>((*day - first) / 7);
    if (at < shares.size()) shares[at] = share.capped();
  }
  return shares;
}

AttentionFacts attentionFactsOf(const PersonFile& file, const RuleBook& rules, absl::Time now,
                                std::uint32_t unread) {
  AttentionFacts facts;
  facts.person_id = file.person.id();
  facts.last_contact = lastContact(file);
  facts.paired = isPaired(file);
  addProgramme(file, facts);
  if (!file.holds.empty() && !reachedBy(file, v1::RECEIPT_OF_HOLD_ORDER, file.holds.back().id()).arrived) {
    facts.hold_waiting_since = toTime(file.holds.back().issued_at());
  }
  const auto holds = activeHolds(file);
  if (!holds.empty()) facts.on_hold_since = toTime(holds.front()->issued_at());
  addFlags(file, rules, now, facts);
  addMessages(file, unread, facts);
  const auto adherence = recentAdherence(file, now, kAttentionWeeks);
  if (adherence.ok()) {
    facts.share = adherence->all;
    facts.no_data = static_cast<int>(std::count_if(
        adherence->occasions.begin(), adherence->occasions.end(),
        [](const OccasionResult& occasion) { return occasion.state == OccasionResult::State::NoData; }));
  }
  for (const auto& practice : file.practices) {
    bool rated = false;
    const double pain = highestPain(practice, rated);
    if (rated) facts.pain_ratings.push_back(pain);
  }
  return facts;
}

}  // namespace newel::desk
