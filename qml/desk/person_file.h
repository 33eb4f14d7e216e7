// Everything the hub holds about one person, fetched together, and what follows from it for the desk's pages.
// Pure but for fetchPerson(). Judgement is in core/progress and core/safety; this only gathers facts for
// them.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <optional>
#include <string>
#include <vector>

#include "core/progress/attention.h"
#include "core/safety/rule_book.h"
#include "sync/desk/desk_client.h"

namespace newel::desk {

struct PersonFile {
  v1::Person person;
  v1::Identity identity;
  std::vector<v1::Programme> programmes;  // oldest first
  std::vector<v1::HoldOrder> holds;       // oldest first, lifts included
  std::vector<v1::Message> messages;
  std::vector<v1::Receipt> receipts;
  std::vector<v1::Practice> practices;
  std::vector<v1::WearBlock> wear_blocks;  // last revisions, by when they were put on
  std::vector<v1::Measure> measures;       // last revisions, withdrawn ones too
  std::vector<v1::Remark> remarks;         // last revisions, withdrawn ones too
  std::vector<v1::Device> devices;
  std::vector<v1::Opening> openings;  // by a written reason, in the last week, newest first
};

// Blocks: eleven calls. `mark_read`: a therapist looks at the messages now. The first error ends it.
absl::StatusOr<PersonFile> fetchPerson(DeskClient& client, const std::string& person_id, bool mark_read);

// Until when the record is open to this account by a written reason; nullopt: it is not at `now`, the hub's.
std::optional<absl::Time> openedUntil(const PersonFile& file, const std::string& account_id, absl::Time now);

// The person's zone; UTC when this machine does not know its name.
absl::TimeZone zoneOf(const PersonFile& file);
absl::CivilDay todayOf(const PersonFile& file, absl::Time now);
// The last call of a phone of this person that is not revoked, and its local day; nullopt: never.
std::optional<absl::Time> lastContact(const PersonFile& file);
std::optional<absl::CivilDay> heardUntil(const PersonFile& file);
// From the first phone's pairing, or from what is told of before; nullopt: no phone.
std::optional<absl::CivilDay> heardFrom(const PersonFile& file);
// Both, for counting from `first` on.
HeardDays heardDays(const PersonFile& file, absl::CivilDay first);
bool isPaired(const PersonFile& file);

struct Reached {
  std::optional<absl::Time> arrived;
  std::optional<absl::Time> seen;
};
// How far a programme, hold order or message got. A receipt SEEN implies arrived.
Reached reachedBy(const PersonFile& file, v1::ReceiptOf of, const std::string& ref_id);

// Orders that hold something and were not lifted.
std::vector<const v1::HoldOrder*> activeHolds(const PersonFile& file);
const v1::Programme* lastProgramme(const PersonFile& file);  // nullptr: none
// The entry's title; ids of programmes long gone give their exercise too.
const v1::Entry* entryOf(const PersonFile& file, const std::string& entry_id);
// Adherence from the Monday `weeks` - 1 weeks ago to the end of this week.
absl::StatusOr<Adherence> recentAdherence(const PersonFile& file, absl::Time now, int weeks);
// Weeks that progression rules look back over. Ours: longer ago says little about the next step.
inline constexpr int kJudgedWeeks = 12;
// One share a week, oldest first; nullopt: no data or nothing due.
std::vector<std::optional<double>> weekShares(const PersonFile& file, absl::Time now, int weeks);

// Facts for the attention list; whoever looks at the file has opened its messages. Errors: digestOf().
absl::StatusOr<AttentionFacts> attentionFactsOf(const PersonFile& file, const RuleBook& rules,
                                                absl::Time now);

}  // namespace newel::desk
