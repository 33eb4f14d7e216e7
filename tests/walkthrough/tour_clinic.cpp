// A clinic for the tour of the phone: a real hub over TLS on loopback, one invented person in each language
// with a programme, a wear plan, measures, a card of advice and a message. Prints "wall <seconds>" and, for
// each language, "<language> <text of the QR code>"; then "ready". Lives until its standard input ends.
#include <iostream>
#include <string>

#include "core/library/default_entry.h"
#include "sync/common/record_id.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::test {
namespace {

void everyDay(v1::Entry& entry) {
  entry.mutable_schedule()->clear_windows();
  v1::Window& window = *entry.mutable_schedule()->add_windows();
  window.set_from_min(0);
  window.set_to_min(1440);
  entry.mutable_schedule()->mutable_weekdays()->clear_days();
  for (int day = 1; day <= 7; ++day)
    entry.mutable_schedule()->mutable_weekdays()->add_days(static_cast<v1::Weekday>(day));
  if (!entry.dose().has_sets()) return;
  entry.mutable_dose()->mutable_sets()->set_sets(1);
  entry.mutable_dose()->mutable_sets()->set_repetitions(2);
}

v1::Programme draftFor(const TestClinic& clinic, const v1::Person& person) {
  v1::Programme draft = clinic.draft(person);
  draft.clear_entries();
  std::uint64_t number = 300;
  for (const char* id : {"sit-to-stand", "weight-shift-side", "stairs-one-at-a-time"}) {
    v1::Entry entry = entryOf(id, person, number++);
    everyDay(entry);
    *draft.add_entries() = entry;
  }
  *draft.mutable_wear_plan() = sampleWearPlan(person.id());
  v1::AdviceEntry& card = *draft.add_cards();
  card.set_card_id(Catalogue::builtIn().cards().front().id());
  card.set_card_revision(Catalogue::builtIn().cards().front().revision());
  for (int day = 1; day <= 7; ++day) card.mutable_days()->add_days(static_cast<v1::Weekday>(day));
  v1::AskedMeasure& asked = *draft.add_measures();
  asked.set_kind("two-minute-walk");
  asked.set_by_day("2026-12-04");
  return draft;
}

bool addOne(TestClinic& clinic, const std::string& language, std::uint64_t number) {
  v1::Person person = transfemoralLeft();
  person.set_id(idOf(9000 + number));
  person.set_language(language);
  clinic.addPerson(person, "Joan");
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = draftFor(clinic, person);
  request.mutable_draft()->set_id(newRecordId(clinic.clock(), clinic.random()));
  const auto signed_one = clinic.desk().signProgramme(request);
  if (!signed_one.ok()) {
    std::cout << "sign " << signed_one.status() << std::endl;
    return false;
  }
  double seconds = 16.4;
  for (const char* day : {"2026-11-03", "2026-11-20"}) {
    v1::PutMeasureRequest put;
    *put.mutable_measure() = timedWalk(newRecordId(clinic.clock(), clinic.random()), person.id(), seconds);
    put.mutable_measure()->set_local_day(day);
    if (!clinic.desk().putMeasure(put).ok()) return false;
    seconds -= 3.9;
  }
  v1::SendMessageRequest message;
  message.set_person_id(person.id());
  message.set_text("555 0100");
  message.set_urgent(true);
  message.set_id(newRecordId(clinic.clock(), clinic.random()));
  if (!clinic.desk().sendMessage(message).ok()) return false;
  std::cout << language << " " << formatTicket(clinic.ticketFor(person.id())) << std::endl;
  return true;
}

}  // namespace
}  // namespace newel::test

int main() {
  newel::test::TestClinic clinic;
  std::cout << "wall " << absl::ToUnixSeconds(clinic.clock().wall()) << std::endl;
  std::uint64_t number = 0;
  for (const char* language : {"en", "es", "ar"}) {
    if (!newel::test::addOne(clinic, language, number++)) return 1;
  }
  std::cout << "ready" << std::endl;
  std::string line;
  while (std::getline(std::cin, line)) {
  }
  return 0;
}
