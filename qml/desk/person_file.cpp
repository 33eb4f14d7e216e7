#include "qml/desk/person_file.h"

#include <algorithm>
#include <set>

#include "core/progress/attention_digest.h"
#include "core/progress/told_beside.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel::desk {
namespace {

template <typename Value>
absl::Status take(absl::StatusOr<Value> from, Value& to) {
  if (!from.ok()) return from.status();
  to = *std::move(from);
  return absl::OkStatus();
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
           [&] { return take(client.remarks(person_id), file.remarks); },
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

std::optional<absl::CivilDay> heardFrom(const PersonFile& file) {
  std::optional<absl::CivilDay> paired;
  for (const auto& device : file.devices) {
    const absl::CivilDay day = localDayAt(toTime(device.paired_at()), zoneOf(file));
    paired = std::min(paired.value_or(day), day);
  }
  if (!paired) return std::nullopt;
  return newel::heardFrom(*paired, file.practices);
}

HeardDays heardDays(const PersonFile& file, absl::CivilDay first) {
  return {heardFrom(file).value_or(absl::CivilDay::min()), heardUntil(file).value_or(first - 1)};
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

absl::StatusOr<Adherence> recentAdherence(const PersonFile& file, absl::Time now, int weeks) {
  const absl::CivilDay today = todayOf(file, now);
  const absl::CivilDay first = mondayOf(today) - absl::civil_diff_t{7} * (weeks - 1);
  return adherenceOf(file.programmes, file.practices, first, mondayOf(today) + 6, today,
                     heardDays(file, first), heldDaysOf(file.holds, zoneOf(file)));
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

absl::StatusOr<AttentionFacts> attentionFactsOf(const PersonFile& file, const RuleBook& rules,
                                                absl::Time now) {
  const std::set<std::string> unread;
  WholeRecord record{file.person.zone(), file.programmes, file.holds, file.messages,
                     file.receipts,      file.practices,  unread};
  record.skin_told_elsewhere = skinSignsWhenWorn(file.programmes, file.wear_blocks);
  if (!file.programmes.empty())
    record.measures_wanted = measuresWanted(file.programmes.back(), file.measures);
  const auto digest = digestOf(record, rules, now);
  if (!digest.ok()) return digest.status();
  return factsAt(*digest, {file.person.id(), lastContact(file), isPaired(file)}, now);
}

}  // namespace newel::desk
