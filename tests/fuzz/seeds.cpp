// Writes the seeds of the corpus: one good input for each kind, from the invented people of the tests. Run it
// when a kind is added: fuzz_seeds tests/fuzz/corpus. Inputs that found something are added by hand beside
// them.
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/pairing_ticket.h"
#include "sync/export/fhir_bundle.h"
#include "sync/protocol/desk_service.pb.h"
#include "sync/protocol/home_service.pb.h"
#include "tests/core/people/sample_people.h"
#include "tests/fuzz/records.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"
#include "tests/sync/export/history_maker.h"

namespace newel::fuzz {
namespace {

namespace fs = std::filesystem;

void put(const fs::path& folder, const std::string& name, const std::string& bytes) {
  fs::create_directories(folder);
  std::ofstream(folder / name, std::ios::binary) << bytes;
}

std::string chosen(std::size_t choice, const std::string& rest) {
  return std::string(1, static_cast<char>(choice)) + rest;
}

v1::Message message(const v1::Person& person) {
  v1::Message message;
  message.set_id(test::idOf(30));
  message.set_person_id(person.id());
  message.set_sender(v1::SENDER_PERSON);
  message.mutable_written_at()->set_seconds(1795600000);
  message.set_text("The liner pinches.");
  return message;
}

v1::Receipt receipt(const v1::Person& person) {
  v1::Receipt receipt;
  receipt.set_id(test::idOf(31));
  receipt.set_person_id(person.id());
  receipt.set_of(v1::RECEIPT_OF_PROGRAMME);
  receipt.set_ref_id(test::idOf(32));
  receipt.set_ref_number(1);
  receipt.set_state(v1::RECEIPT_STATE_SEEN);
  receipt.mutable_at()->set_seconds(1795600000);
  return receipt;
}

v1::Identity identity(const v1::Person& person) {
  v1::Identity identity;
  identity.set_person_id(person.id());
  identity.set_given_name("Sample");
  identity.set_family_name("Invented");
  return identity;
}

v1::ReminderBook reminders() {
  v1::ReminderBook book;
  book.mutable_settings()->set_wanted(v1::REMINDERS_WANTED_YES);
  book.mutable_settings()->set_quiet_from_min(1260);
  book.mutable_settings()->set_quiet_to_min(480);
  book.mutable_settings()->set_snooze_min(30);
  v1::ReminderTime& time = *book.mutable_settings()->add_times();
  time.mutable_window()->set_from_min(540);
  time.mutable_window()->set_to_min(720);
  time.set_at_min(600);
  v1::ReminderShown& shown = *book.add_shown();
  shown.set_id("2026-11-25/0540-0720");
  shown.set_local_day("2026-11-25");
  shown.mutable_at()->set_seconds(1795597200);
  shown.set_answer(v1::REMINDER_ANSWER_LATER);
  shown.mutable_answered_at()->set_seconds(1795597260);
  return book;
}

// By the numbers of records.cpp.
std::vector<std::pair<std::size_t, std::string>> records(
    const std::function<std::string(const google::protobuf::Message&)>& written) {
  const v1::Person person = test::transfemoralLeft();
  const v1::Programme programme = test::programmeOf(person, {test::entryOf("sit-to-stand", person, 300)});
  const Catalogue& catalogue = Catalogue::builtIn();
  return {{0, written(person)},
          {1, written(identity(person))},
          {3, written(programme)},
          {5, written(test::samplePractice(test::idOf(20), person.id()))},
          {6, written(test::sampleLine(test::idOf(20), person.id(), 1))},
          {7, written(message(person))},
          {8, written(receipt(person))},
          {10, written(*catalogue.find("sit-to-stand"))},
          {16, written(reminders())},
          {9, written(test::timedWalk(test::idOf(60), person.id(), 12.5))},
          {17, written(test::sampleWearPlan(person.id()))},
          {18, written(test::sampleWearBlock(test::idOf(61), person.id()))},
          {19, written(catalogue.templates().front())}};
}

void writeRecords(const fs::path& corpus) {
  for (const auto& [choice, text] : records([](const auto& record) { return toJson(record); })) {
    put(corpus / "record_text", "seed-" + std::to_string(choice), chosen(choice, text));
  }
  for (const auto& [choice, bytes] : records([](const auto& record) { return toBytes(record); })) {
    put(corpus / "record_bytes", "seed-" + std::to_string(choice), chosen(choice, bytes));
  }
}

void writeHome(const fs::path& corpus) {
  const v1::Person person = test::transfemoralLeft();
  v1::OfferRequest offer;
  *offer.add_records() = makeEnvelope(v1::RECORD_KIND_PRACTICE, test::idOf(20), 1,
                                      toBytes(test::samplePractice(test::idOf(20), person.id())));
  *offer.add_records() = makeEnvelope(v1::RECORD_KIND_MESSAGE, test::idOf(30), 1, toBytes(message(person)));
  *offer.add_records() = makeEnvelope(v1::RECORD_KIND_RECEIPT, test::idOf(31), 1, toBytes(receipt(person)));
  *offer.add_records() = makeEnvelope(v1::RECORD_KIND_WEAR_BLOCK, test::idOf(61), 1,
                                      toBytes(test::sampleWearBlock(test::idOf(61), person.id())));
  for (int i = 0; i < offer.records_size(); ++i) offer.mutable_records(i)->set_sequence(i + 1);
  put(corpus / "home_requests", "offer", chosen(0, toBytes(offer)));
  v1::FetchRequest fetch;
  fetch.set_limit(10);
  put(corpus / "home_requests", "fetch", chosen(1, toBytes(fetch)));
  v1::PairRequest pair;
  pair.set_code("ABCD-EFGH");
  pair.set_device_name("phone");
  put(corpus / "home_requests", "pair", chosen(2, toBytes(pair)));
  put(corpus / "home_requests", "token", chosen(3, std::string(43, 'a')));
  v1::FetchMediaRequest media;
  media.set_sha256(sha256("a photo"));
  media.set_most_bytes(1000);
  put(corpus / "home_requests", "media", chosen(4, toBytes(media)));
}

// By the numbers of desk_requests.cpp.
void writeDesk(const fs::path& corpus) {
  const fs::path folder = corpus / "desk_requests";
  const v1::Person person = test::transfemoralLeft();
  v1::PutPersonRequest put_person;
  *put_person.mutable_person() = person;
  *put_person.mutable_identity() = identity(person);
  put_person.set_base_revision(1);
  put(folder, "put_person", chosen(0, toBytes(put_person)));
  v1::SignProgrammeRequest sign;
  *sign.mutable_draft() = test::programmeOf(person, {test::entryOf("sit-to-stand", person, 300)});
  sign.mutable_draft()->clear_id();
  put(folder, "sign", chosen(1, toBytes(sign)));
  v1::IssueHoldRequest hold;
  hold.set_person_id(person.id());
  hold.set_reason("Wait for my call.");
  put(folder, "hold", chosen(2, toBytes(hold)));
  v1::SendMessageRequest send;
  send.set_person_id(person.id());
  send.set_text("See you on Monday.");
  send.set_id(test::idOf(40));
  put(folder, "send", chosen(3, toBytes(send)));
  v1::ListPracticesRequest practices;
  practices.set_person_id(person.id());
  practices.set_limit(10);
  put(folder, "practices", chosen(5, toBytes(practices)));
  v1::PutSettingsRequest settings;
  (*settings.mutable_values())["any"] = 1;
  put(folder, "settings", chosen(8, toBytes(settings)));
  v1::BreakGlassRequest open;
  open.set_person_id(person.id());
  open.set_reason("Their therapist is ill today.");
  put(folder, "break_glass", chosen(11, toBytes(open)));
  put(folder, "session", chosen(13, std::string(43, 'a')));
  v1::ChangeAccountRequest change;
  change.set_account_id(test::idOf(50));
  change.set_display_name("Changed (invented)");
  change.set_role(v1::ROLE_LEAD);
  put(folder, "change_account", chosen(14, toBytes(change)));
  v1::TakeSecondFactorRequest take;
  take.set_account_id(test::idOf(50));
  put(folder, "take_factor", chosen(15, toBytes(take)));
  v1::ListAuditRequest trail;
  trail.set_person_id(person.id());
  trail.mutable_from()->set_seconds(1795600000);
  trail.set_limit(100);
  put(folder, "audit", chosen(16, toBytes(trail)));
  v1::AddAccountRequest add;
  add.set_user_name("n.new");
  add.set_display_name("New (invented)");
  add.set_role(v1::ROLE_THERAPIST);
  put(folder, "add_account", chosen(17, toBytes(add)));
  v1::ChangePasswordRequest password;
  password.set_old_password("7k2m-xq4t 9zrb-3hno");
  password.set_new_password("a long enough phrase");
  put(folder, "password", chosen(18, toBytes(password)));
  const std::string photo = test::photoOfColour(3);
  put(folder, "put_media", chosen(19, toBytes(mediaPartOf(person.id(), photo, sha256(photo), 0))));
  v1::GetMediaRequest get;
  get.set_person_id(person.id());
  get.set_sha256(sha256(photo));
  get.set_most_bytes(1000);
  put(folder, "get_media", chosen(20, toBytes(get)));
  v1::PutMeasureRequest measure;
  *measure.mutable_measure() = test::timedWalk(test::idOf(60), person.id(), 12.5);
  put(folder, "put_measure", chosen(21, toBytes(measure)));
  v1::ListWearBlocksRequest worn;
  worn.set_person_id(person.id());
  worn.set_limit(10);
  put(folder, "wear_blocks", chosen(22, toBytes(worn)));
  v1::PutSnoozeRequest snooze;
  snooze.set_person_id(person.id());
  snooze.set_reason("Their first visit is on Monday.");
  snooze.set_until_day("2026-12-01");
  put(folder, "put_snooze", chosen(23, toBytes(snooze)));
  v1::PutTemplateRequest keep;
  *keep.mutable_programme_template() = Catalogue::builtIn().templates().front();
  keep.mutable_programme_template()->set_id(test::idOf(70));
  put(folder, "put_template", chosen(24, toBytes(keep)));
  v1::WithdrawTemplateRequest back;
  back.set_template_id(test::idOf(70));
  back.set_base_revision(1);
  put(folder, "withdraw_template", chosen(25, toBytes(back)));
  v1::NoteExportRequest leaving;
  leaving.set_person_id(person.id());
  leaving.set_format("fhir");
  put(folder, "note_export", chosen(26, toBytes(leaving)));
  v1::PutRemarkRequest remark;
  *remark.mutable_remark() = test::sampleRemark(test::idOf(61), person.id());
  put(folder, "put_remark", chosen(27, toBytes(remark)));
}

void writeOthers(const fs::path& corpus) {
  for (const char* name :
       {"tagged.jpg", "tagged.png", "tagged.mp4", "tagged.mov", "fragmented.mp4", "tagged.webm", "live.webm"})
    put(corpus / "media_header", name, test::mediaFile(name));
  put(corpus / "fhir_import", "patient",
      R"({"resourceType":"Patient","id":"p","name":[{"use":"official","family":"Specimen","given":["Dora"]}],)"
      R"("telecom":[{"system":"phone","value":"555 0142"}],"birthDate":"1958-03-09",)"
      R"("communication":[{"language":{"coding":[{"code":"es"}]},"preferred":true}]})");
  PersonHistory asked = test::yearOfHistory(1);
  asked.practices.clear();
  asked.last_contact.reset();
  asked.as_of = toTime(asked.programmes[0].programme.issued_at());
  put(corpus / "fhir_import", "programme", *fhirBundle(asked, {}));
  PairingTicket ticket;
  ticket.host = "hub.example";
  ticket.port = 7443;
  ticket.certificate_sha256 = std::string(32, '\x5a');
  ticket.code = std::string(26, 'A');
  put(corpus / "pairing_text", "ticket", formatTicket(ticket));
  ticket.backup_sha256 = std::string(32, '\xa5');
  put(corpus / "pairing_text", "ticket_with_backup", formatTicket(ticket));
  put(corpus / "pairing_text", "code", "abcd-efgh");
  put(corpus / "pairing_text", "typed", "hub.example:7443\nABCD-EFGH");
  put(corpus / "pairing_text", "pin", std::string(64, 'a'));
  put(corpus / "store_file", "as-it-is", std::string(1, '\0'));
  put(corpus / "store_file", "header", std::string("\0\0\0\x12\x7f\0\0\x60\xff", 9));
  put(corpus / "store_file", "no-store", "\xffSQLite format 3");
}

}  // namespace
}  // namespace newel::fuzz

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fprintf(stderr, "where is the corpus?\n");
    return 2;
  }
  const std::filesystem::path corpus = argv[1];
  newel::fuzz::writeRecords(corpus);
  newel::fuzz::writeHome(corpus);
  newel::fuzz::writeDesk(corpus);
  newel::fuzz::writeOthers(corpus);
  return 0;
}
