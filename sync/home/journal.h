// The journal: every step of a practice under way, one line each, on the disk before it is shown. After a
// kill the practice is taken up from here. Functions run inside a transaction of DeviceStore and throw as
// Database does.
#pragma once

#include <absl/status/status.h>
#include <absl/time/time.h>

#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"
#include "sync/common/database.h"

namespace newel {

// kInvalidArgument names the field; kFailedPrecondition when the sequence is not the next one, or the
// practice is closed.
absl::Status appendLine(Database& database, const v1::JournalLine& line);

struct JournalOfPractice {
  std::string practice_id;
  std::vector<v1::JournalLine> lines;  // in order
};
// The oldest practice that was begun and not closed.
std::optional<JournalOfPractice> unfinishedJournal(Database& database);

// Keeps the practice, queues it for the hub and ends its journal. kInvalidArgument names the field;
// kAlreadyExists when this id has that revision or a later one.
absl::Status keepPractice(Database& database, const v1::Practice& practice);

// The last revision of each closed practice, in the order they were closed.
std::vector<v1::Practice> keptPractices(Database& database);
// Of those, the ones whose id (UUIDv7) was made at `since` or later: the rest is not even opened.
std::vector<v1::Practice> keptPracticesSince(Database& database, absl::Time since);
// When the first of them began, by the ids, which are ordered by when they were made: one row is looked at.
std::optional<absl::Time> firstKeptAt(Database& database);

}  // namespace newel
