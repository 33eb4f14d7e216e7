#include "sync/hub/demo_clinic.h"

#include <utility>
#include <vector>

#include "core/library/default_entry.h"
#include "core/time/local_day.h"
#include "sync/common/record_id.h"
#include "sync/hub/demo_people.h"
#include "sync/hub/hub.h"

namespace newel {
namespace {

constexpr int kProgrammeDays = 42;
constexpr char kReason[] = "Tried together in the clinic (demo).";

v1::Schedule threeDaysAWeek() {
  v1::Schedule schedule;
  for (const v1::Weekday day : {v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY}) {
    schedule.mutable_weekdays()->add_days(day);
  }
  v1::Window& window = *schedule.add_windows();
  window.set_from_min(8 * 60);
  window.set_to_min(20 * 60);
  return schedule;
}

// The exercise as the catalogue offers it; nothing when the rules block it for this person.
absl::StatusOr<std::optional<v1::Entry>> demoEntry(const std::string& exercise_id, const v1::Person& person,
                                                   const std::string& id) {
  const v1::Exercise* exercise = Catalogue::builtIn().find(exercise_id);
  if (exercise == nullptr) return absl::NotFoundError("exercise: " + exercise_id);
  v1::Entry entry = defaultEntry(*exercise, person);
  entry.set_id(id);
  *entry.mutable_schedule() = threeDaysAWeek();
  const auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
  if (!findings.ok()) return findings.status();
  for (const auto& finding : *findings) {
    if (finding.effect() == v1::EFFECT_BLOCK) return std::optional<v1::Entry>();
    if (finding.effect() != v1::EFFECT_ASK) continue;
    v1::Override& reason = *entry.add_overrides();
    reason.set_rule_id(finding.rule_id());
    reason.set_reason(kReason);
  }
  return std::optional<v1::Entry>(std::move(entry));
}

absl::StatusOr<v1::Programme> demoProgramme(const DemoPerson& who, const Clock& clock, Random& random) {
  const auto zone = loadZone(who.person.zone());
  if (!zone.ok()) return zone.status();
  const absl::CivilDay today = localDayAt(clock.wall(), *zone);
  v1::Programme programme;
  programme.set_id(who.programme_id);
  programme.set_person_id(who.person.id());
  programme.set_effective_day(formatLocalDay(today));
  programme.set_end_day(formatLocalDay(today + kProgrammeDays));
  programme.set_zone(who.person.zone());
  programme.set_advice("Put the phone where you can hear it, and keep a hand free for support.");
  programme.mutable_thresholds()->set_pain_stop_0_10(5);
  programme.mutable_thresholds()->set_pain_rise_0_10(2);
  for (const auto& exercise_id : who.exercise_ids) {
    auto entry = demoEntry(exercise_id, who.person, newRecordId(clock, random));
    if (!entry.ok()) return entry.status();
    if (entry->has_value()) *programme.add_entries() = **std::move(entry);
  }
  return programme;
}

absl::Status addPerson(Hub& hub, const DeskCaller& caller, const DemoPerson& who, const Clock& clock,
                       Random& random) {
  v1::PutPersonRequest put;
  *put.mutable_person() = who.person;
  *put.mutable_identity() = who.identity;
  absl::Status added = hub.files().put(caller, put).status();
  if (absl::IsFailedPrecondition(added)) return absl::OkStatus();  // erased, and stays so
  if (!added.ok() && !absl::IsAlreadyExists(added)) return added;
  const auto programmes = hub.prescriptions().programmes(who.person.id());
  if (!programmes.ok()) return programmes.status();
  if (who.exercise_ids.empty() || programmes->programmes_size() > 0) return absl::OkStatus();
  auto programme = demoProgramme(who, clock, random);
  if (!programme.ok()) return programme.status();
  v1::SignProgrammeRequest sign;
  *sign.mutable_draft() = *std::move(programme);
  return hub.prescriptions().sign(caller, sign).status();
}

absl::StatusOr<DeskCaller> demoTherapist(Hub& hub) {
  DeskCaller caller;
  auto added = hub.accounts().add(kDemoUserName, "Robin Example (demo)", v1::ROLE_LEAD, kDemoPassword);
  if (added.ok()) {
    caller.therapist = *std::move(added);
    return caller;
  }
  if (!absl::IsAlreadyExists(added.status())) return added.status();
  const absl::Status read = hub.store().read([&](HubTransaction& transaction) -> absl::Status {
    const auto row = transaction.accountByName(kDemoUserName);
    if (!row.has_value()) return absl::NotFoundError("the demo account");
    caller.therapist.set_id(row->id);
    caller.therapist.set_user_name(row->user_name);
    caller.therapist.set_display_name(row->display_name);
    caller.therapist.set_role(row->role);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return caller;
}

v1::ClinicCard demoCard() {
  v1::ClinicCard card;
  card.set_name("Harbour Street Limb Clinic (demo)");
  // 555 0100 to 0199 are kept free for invented numbers (from memory: North American Numbering Plan).
  card.set_phone("555 0134 (demo)");
  card.set_hours("Monday to Friday, 8 to 4");
  card.set_emergency_number("112");
  return card;
}

}  // namespace

absl::Status fillDemoClinic(HubStore& store, const Clock& clock, Random& random) {
  absl::Status made = initClinic(store, demoCard(), {}, /*demo=*/true, clock, random);
  if (!made.ok() && !absl::IsAlreadyExists(made)) return made;
  const auto hub = Hub::open(&store, &clock, &random);
  if (!hub.ok()) return hub.status();
  if (!(*hub)->clinic().demo) {
    return absl::FailedPreconditionError("a real clinic is kept here; the demo needs a folder of its own");
  }
  const auto caller = demoTherapist(**hub);
  if (!caller.ok()) return caller.status();
  for (const auto& who : demoPeople()) {
    absl::Status added = addPerson(**hub, *caller, who, clock, random);
    if (!added.ok()) return added;
  }
  return absl::OkStatus();
}

}  // namespace newel
