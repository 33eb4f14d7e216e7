// All that one person's file holds, as plain data: what every export writer takes. The hub gathers it from
// its store, `newel` from files. Pseudonymous: who the person is (records/identity.proto) has no place in it.
// Not here: any format (csv_tables.h, calendar.h, fhir_bundle.h), and where the records come from.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/progress/adherence.h"
#include "core/records/measure.pb.h"
#include "core/records/message.pb.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/wear.pb.h"

namespace newel {

// How far something from the clinic got. "Seen" implies "arrived".
struct Receipts {
  std::optional<absl::Time> arrived_at;  // verified and kept on the phone
  std::optional<absl::Time> seen_at;     // shown to the person
};

// The signature is empty where the record came from a file that has none.
struct KeptProgramme {
  v1::Programme programme;
  std::string signature;  // Ed25519, 64 bytes
  std::string key_id;
  Receipts receipts;
};
struct KeptHold {
  v1::HoldOrder order;
  std::string signature;
  std::string key_id;
  Receipts receipts;
};
struct KeptMessage {
  v1::Message message;
  Receipts receipts;
};

// A phone that is or was the person's. Nothing else is known of it.
struct PairedPhone {
  std::string id;
  std::string name;  // as it calls itself; its owner's name may stand in it
  std::string app_version;
  absl::Time paired_at;
  std::optional<absl::Time> last_contact;
  bool revoked = false;
};

// One line of the hub's audit trail about this person: who did what, by ids and names of fields alone.
struct AuditLine {
  enum class Who { Nobody, Account, Phone, Unknown };  // Unknown: neither is there any more
  std::uint64_t n = 0;                                 // its number in the trail
  absl::Time at;
  std::string action;  // "programme.sign", "person.see" ...
  Who who_is = Who::Nobody;
  std::string who;     // id of an account or a phone
  std::string record;  // id; empty: none
  std::string field;   // of a refusal; empty: none
};

struct PersonHistory {
  v1::Person person;
  std::vector<KeptProgramme> programmes;   // by number
  std::vector<KeptHold> holds;             // by number, lifts included
  std::vector<KeptMessage> messages;       // as they were written
  std::vector<v1::Practice> practices;     // as they began
  std::vector<v1::WearBlock> wear_blocks;  // as they were put on
  std::vector<v1::Measure> measures;       // as they were taken, the withdrawn ones too
  std::vector<PairedPhone> phones;         // as they were paired; empty where the hub is not asked
  std::vector<AuditLine> audit;            // as they were written; empty where the hub is not asked
  absl::Time as_of;                        // when this was gathered: what is due later is still to come
  std::optional<absl::Time> last_contact;  // when the phone was last heard from; nullopt: never
  std::string first_day = "0000-00-00";    // YYYY-MM-DD, both ends included: the days to tell of
  std::string last_day = "9999-99-99";
};

// Puts everything into the order above, and keeps the last revision alone of each practice, block and
// measure.
void putInOrder(PersonHistory& history);

// Notes how far programmes, hold orders and messages got.
void addReceipts(const std::vector<v1::Receipt>& receipts, PersonHistory& history);

// OK, or kInvalidArgument that names the first bad field, "practices[3].entries[0].exercise_id: ...": a
// record that does not pass check(), or that is another person's.
absl::Status checkHistory(const PersonHistory& history);

// Whether the export tells of that local day (YYYY-MM-DD): practices, occasions, wear blocks, measures and
// messages of other days are left out of every format; programmes and hold orders never are, because what
// counted on a day is only clear from all of them.
bool tellsOf(const PersonHistory& history, const std::string& local_day);
// The local day of an instant in the person's zone.
std::string localDayOf(const PersonHistory& history, absl::Time at);

// Where one programme stands at `as_of`, by the days of its own zone.
enum class ProgrammeState {
  NotBegun,   // its first day is to come
  Active,     // it counts
  Replaced,   // a later number took over before its last day
  Completed,  // its last day is over
};
// `index` into history.programmes, which are in order and pass check().
ProgrammeState programmeState(const PersonHistory& history, std::size_t index);
// The last local day on which it counts: its own, or the day before the next number's first.
absl::CivilDay lastCountingDay(const PersonHistory& history, std::size_t index);

// A hold order that holds something at `as_of`; false for one that lifts.
bool standsNow(const PersonHistory& history, const KeptHold& hold);
// When the order was lifted; nullopt: it stands.
std::optional<absl::Time> liftedAt(const PersonHistory& history, const KeptHold& hold);

// Every occasion of every programme while it counts, with what became of it by `as_of`; those of days that
// are not told of are left out of the list, and are in the shares. Errors as adherenceOf().
absl::StatusOr<Adherence> adherenceIn(const PersonHistory& history);

// The programme that counts on that local day; nullptr: none.
const KeptProgramme* programmeOn(const PersonHistory& history, const std::string& local_day);
// The entry of that id in the programme of that number, or in the latest that has it; nullptr: none.
const v1::Entry* entryIn(const PersonHistory& history, std::uint32_t programme_number,
                         const std::string& entry_id);

// Long work: called now and then with how much is done, 0 to 100; false ends it with kCancelled. Empty:
// nobody asks.
using ExportProgress = std::function<bool(int percent)>;
absl::Status askProgress(const ExportProgress& progress, int percent);

}  // namespace newel
