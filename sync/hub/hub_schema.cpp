#include "sync/hub/hub_schema.h"

namespace newel {
namespace {

constexpr char kFirst[] = R"(
CREATE TABLE setting (name TEXT PRIMARY KEY, value BLOB NOT NULL) WITHOUT ROWID;
CREATE TABLE counter (one INTEGER PRIMARY KEY CHECK (one = 1), value INTEGER NOT NULL);
INSERT INTO counter VALUES (1, 0);

CREATE TABLE person (id TEXT PRIMARY KEY, revision INTEGER NOT NULL, content BLOB NOT NULL) WITHOUT ROWID;
CREATE TABLE identity (person_id TEXT PRIMARY KEY REFERENCES person (id), revision INTEGER NOT NULL,
  content BLOB NOT NULL) WITHOUT ROWID;

CREATE TABLE feed (sequence INTEGER PRIMARY KEY, person_id TEXT NOT NULL, kind INTEGER NOT NULL,
  id TEXT NOT NULL, revision INTEGER NOT NULL, content BLOB NOT NULL, sha256 BLOB NOT NULL,
  at INTEGER NOT NULL);
CREATE INDEX feed_person ON feed (person_id, sequence);
CREATE INDEX feed_record ON feed (kind, id);

CREATE TABLE programme (person_id TEXT NOT NULL REFERENCES person (id), number INTEGER NOT NULL,
  id TEXT NOT NULL UNIQUE, content BLOB NOT NULL, signature BLOB NOT NULL, key_id TEXT NOT NULL,
  end_day TEXT NOT NULL, sequence INTEGER NOT NULL, PRIMARY KEY (person_id, number)) WITHOUT ROWID;
CREATE TABLE hold_order (person_id TEXT NOT NULL REFERENCES person (id), number INTEGER NOT NULL,
  id TEXT NOT NULL UNIQUE, content BLOB NOT NULL, signature BLOB NOT NULL, key_id TEXT NOT NULL,
  lifts_id TEXT NOT NULL, sequence INTEGER NOT NULL, PRIMARY KEY (person_id, number)) WITHOUT ROWID;

CREATE TABLE message (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id),
  from_person INTEGER NOT NULL, content BLOB NOT NULL, sha256 BLOB NOT NULL, sequence INTEGER NOT NULL,
  at INTEGER NOT NULL, read_at INTEGER) WITHOUT ROWID;
CREATE INDEX message_person ON message (person_id, sequence);

CREATE TABLE practice (id TEXT NOT NULL, revision INTEGER NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id), device_id TEXT NOT NULL, content BLOB NOT NULL,
  sha256 BLOB NOT NULL, sequence INTEGER NOT NULL, at INTEGER NOT NULL, red_flag INTEGER NOT NULL,
  PRIMARY KEY (id, revision)) WITHOUT ROWID;
CREATE INDEX practice_person ON practice (person_id, sequence);

CREATE TABLE receipt (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id),
  of INTEGER NOT NULL, ref_id TEXT NOT NULL, ref_number INTEGER NOT NULL, state INTEGER NOT NULL,
  content BLOB NOT NULL, sha256 BLOB NOT NULL, sequence INTEGER NOT NULL, at INTEGER NOT NULL) WITHOUT ROWID;
CREATE INDEX receipt_ref ON receipt (person_id, of, ref_id, state);

CREATE TABLE device (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id), name TEXT NOT NULL,
  app_version TEXT NOT NULL, token_sha256 BLOB NOT NULL UNIQUE, paired_at INTEGER NOT NULL,
  last_contact INTEGER, revoked INTEGER NOT NULL DEFAULT 0) WITHOUT ROWID;
CREATE INDEX device_person ON device (person_id);
CREATE TABLE invitation (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id),
  typed_hash TEXT NOT NULL, qr_sha256 BLOB NOT NULL UNIQUE, expires_at INTEGER NOT NULL,
  tries_left INTEGER NOT NULL) WITHOUT ROWID;

CREATE TABLE account (id TEXT PRIMARY KEY, user_name TEXT NOT NULL UNIQUE, display_name TEXT NOT NULL,
  role INTEGER NOT NULL, password_hash TEXT NOT NULL) WITHOUT ROWID;
CREATE TABLE session (token_sha256 BLOB PRIMARY KEY, account_id TEXT NOT NULL REFERENCES account (id),
  ends_at INTEGER NOT NULL) WITHOUT ROWID;

CREATE TABLE audit (n INTEGER PRIMARY KEY, entry TEXT NOT NULL, hash BLOB NOT NULL);
)";

constexpr char kOwnExercises[] = R"(
CREATE TABLE own_exercise (id TEXT NOT NULL, revision INTEGER NOT NULL, content BLOB NOT NULL,
  PRIMARY KEY (id, revision)) WITHOUT ROWID;
)";

constexpr char kSecondFactors[] = R"(
CREATE TABLE second_factor (account_id TEXT PRIMARY KEY REFERENCES account (id), secret BLOB NOT NULL,
  confirmed INTEGER NOT NULL, last_step INTEGER NOT NULL) WITHOUT ROWID;
)";

// Until this step every therapist saw every person: they go on to, so that an update shuts nobody out. Role 1
// is the therapist's (identity.proto).
constexpr char kAssignments[] = R"(
CREATE TABLE assignment (account_id TEXT NOT NULL, person_id TEXT NOT NULL REFERENCES person (id),
  PRIMARY KEY (account_id, person_id)) WITHOUT ROWID;
CREATE INDEX assignment_person ON assignment (person_id);
INSERT INTO assignment SELECT account.id, person.id FROM account, person WHERE account.role = 1;
CREATE TABLE opening (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id),
  account_id TEXT NOT NULL, reason TEXT NOT NULL, at INTEGER NOT NULL, until INTEGER NOT NULL) WITHOUT ROWID;
CREATE INDEX opening_person ON opening (person_id, until);
CREATE INDEX opening_account ON opening (account_id, until);
)";

constexpr char kErasure[] = R"(
CREATE TABLE erased_person (id TEXT PRIMARY KEY, at INTEGER NOT NULL) WITHOUT ROWID;
CREATE TABLE erased_token (token_sha256 BLOB PRIMARY KEY, at INTEGER NOT NULL) WITHOUT ROWID;
)";

// Practices in the order in which they came. A row is longer than a page of a table without rowids holds (a
// quarter of the page), and took a page of its own for the rest: more than twice the bytes to the disk.
constexpr char kPracticesAsTheyCame[] = R"(
CREATE TABLE practice_as_it_came (sequence INTEGER PRIMARY KEY, id TEXT NOT NULL, revision INTEGER NOT NULL,
  person_id TEXT NOT NULL REFERENCES person (id), device_id TEXT NOT NULL, content BLOB NOT NULL,
  sha256 BLOB NOT NULL, at INTEGER NOT NULL, red_flag INTEGER NOT NULL, UNIQUE (id, revision));
INSERT INTO practice_as_it_came SELECT sequence, id, revision, person_id, device_id, content, sha256, at,
  red_flag FROM practice ORDER BY sequence;
DROP TABLE practice;
ALTER TABLE practice_as_it_came RENAME TO practice;
CREATE INDEX practice_person ON practice (person_id);
)";

// In the database and not in files beside it: one backup, one transaction with the programme that names it,
// and the same for several hubs on one database. In parts as they came, so that none is read whole to give
// some.
constexpr char kMedia[] = R"(
CREATE TABLE media (id TEXT PRIMARY KEY, sha256 BLOB NOT NULL UNIQUE, type INTEGER NOT NULL,
  size INTEGER NOT NULL, at INTEGER NOT NULL) WITHOUT ROWID;
CREATE TABLE media_part (media_id TEXT NOT NULL, at_byte INTEGER NOT NULL, content BLOB NOT NULL,
  PRIMARY KEY (media_id, at_byte));
CREATE TABLE media_link (person_id TEXT NOT NULL REFERENCES person (id),
  media_id TEXT NOT NULL REFERENCES media (id), named INTEGER NOT NULL, at INTEGER NOT NULL,
  PRIMARY KEY (person_id, media_id)) WITHOUT ROWID;
CREATE INDEX media_link_media ON media_link (media_id);
CREATE TABLE media_upload (id TEXT PRIMARY KEY, person_id TEXT NOT NULL REFERENCES person (id),
  sha256 BLOB NOT NULL, size INTEGER NOT NULL, have INTEGER NOT NULL, at INTEGER NOT NULL,
  UNIQUE (person_id, sha256)) WITHOUT ROWID;
)";

// Switched-off accounts and first passwords; when a session was last used. Whoever is signed in while this
// step is taken signs in once more.
constexpr char kAccountStates[] = R"(
ALTER TABLE account ADD COLUMN disabled INTEGER NOT NULL DEFAULT 0;
ALTER TABLE account ADD COLUMN first_until INTEGER NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN last_used INTEGER NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN limited INTEGER NOT NULL DEFAULT 0;
)";

// Measures from desks and wearing time from phones, each revision for good. A further kind of record about a
// person needs no table of its own.
constexpr char kMoreRecords[] = R"(
CREATE TABLE record (sequence INTEGER PRIMARY KEY, kind INTEGER NOT NULL, id TEXT NOT NULL,
  revision INTEGER NOT NULL, person_id TEXT NOT NULL REFERENCES person (id), content BLOB NOT NULL,
  sha256 BLOB NOT NULL, at INTEGER NOT NULL, UNIQUE (kind, id, revision));
CREATE INDEX record_person ON record (person_id, kind, sequence);
)";

// What the attention list needs of each person, made anew in the background for whoever is due: everybody at
// first. And whose row can wait.
constexpr char kAttention[] = R"(
CREATE TABLE digest (person_id TEXT PRIMARY KEY REFERENCES person (id), version INTEGER NOT NULL,
  last_day INTEGER NOT NULL, content BLOB NOT NULL) WITHOUT ROWID;
CREATE TABLE digest_mark (person_id TEXT PRIMARY KEY REFERENCES person (id), changed INTEGER NOT NULL,
  made INTEGER NOT NULL) WITHOUT ROWID;
CREATE INDEX digest_mark_due ON digest_mark (person_id) WHERE changed <> made;
INSERT INTO digest_mark SELECT id, 1, 0 FROM person;
CREATE TABLE snooze (person_id TEXT PRIMARY KEY REFERENCES person (id), content BLOB NOT NULL) WITHOUT ROWID;
)";

// How large the text is that a person reads: the phone beside the programme at the desk shows it so.
constexpr char kTextSizes[] = "ALTER TABLE device ADD COLUMN text_percent INTEGER NOT NULL DEFAULT 0;";

}  // namespace

const std::vector<Migration>& hubMigrations() {
  static const std::vector<Migration> kMigrations = {
      {1, kFirst},       {2, kOwnExercises},        {3, kSecondFactors}, {4, kAssignments},
      {5, kErasure},     {6, kPracticesAsTheyCame}, {7, kMedia},         {8, kAccountStates},
      {9, kMoreRecords}, {10, kAttention},          {11, kTextSizes}};
  return kMigrations;
}

}  // namespace newel
