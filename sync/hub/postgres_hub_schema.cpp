#include "sync/hub/postgres_hub_schema.h"

namespace newel {
namespace {

// The tables of hub_schema.cpp in PostgreSQL's words. Text compares byte by byte, as SQLite's does. `writer`
// holds nothing: a writer locks it before its first look, so that it sees all that was committed before.
constexpr char kFirst[] = R"(
CREATE TABLE writer ();
CREATE TABLE setting (name TEXT COLLATE "C" PRIMARY KEY, value BYTEA NOT NULL);
CREATE TABLE counter (one BIGINT PRIMARY KEY CHECK (one = 1), value BIGINT NOT NULL);
INSERT INTO counter VALUES (1, 0);
CREATE TABLE person (id TEXT COLLATE "C" PRIMARY KEY, revision BIGINT NOT NULL, content BYTEA NOT NULL);
CREATE TABLE identity (person_id TEXT COLLATE "C" PRIMARY KEY REFERENCES person (id), revision BIGINT NOT
  NULL, content BYTEA NOT NULL);
CREATE TABLE feed (sequence BIGINT PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL, kind BIGINT NOT NULL,
  id TEXT COLLATE "C" NOT NULL, revision BIGINT NOT NULL, content BYTEA NOT NULL, sha256 BYTEA NOT NULL,
  at BIGINT NOT NULL);
CREATE INDEX feed_person ON feed (person_id, sequence);
CREATE INDEX feed_record ON feed (kind, id);
CREATE TABLE programme (person_id TEXT COLLATE "C" NOT NULL REFERENCES person (id), number BIGINT NOT
  NULL, id TEXT COLLATE "C" NOT NULL UNIQUE, content BYTEA NOT NULL, signature BYTEA NOT NULL, key_id TEXT
  COLLATE "C" NOT NULL, end_day TEXT COLLATE "C" NOT NULL, sequence BIGINT NOT NULL, PRIMARY KEY
  (person_id, number));
CREATE TABLE hold_order (person_id TEXT COLLATE "C" NOT NULL REFERENCES person (id), number BIGINT NOT
  NULL, id TEXT COLLATE "C" NOT NULL UNIQUE, content BYTEA NOT NULL, signature BYTEA NOT NULL, key_id TEXT
  COLLATE "C" NOT NULL, lifts_id TEXT COLLATE "C" NOT NULL, sequence BIGINT NOT NULL, PRIMARY KEY
  (person_id, number));
CREATE TABLE message (id TEXT COLLATE "C" PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL REFERENCES
  person (id), from_person BIGINT NOT NULL, content BYTEA NOT NULL, sha256 BYTEA NOT NULL, sequence BIGINT
  NOT NULL, at BIGINT NOT NULL, read_at BIGINT);
CREATE INDEX message_person ON message (person_id, sequence);
CREATE TABLE practice (id TEXT COLLATE "C" NOT NULL, revision BIGINT NOT NULL, person_id TEXT COLLATE "C"
  NOT NULL REFERENCES person (id), device_id TEXT COLLATE "C" NOT NULL, content BYTEA NOT NULL, sha256
  BYTEA NOT NULL, sequence BIGINT NOT NULL, at BIGINT NOT NULL, red_flag BIGINT NOT NULL, PRIMARY KEY (id,
  revision));
CREATE INDEX practice_person ON practice (person_id, sequence);
CREATE TABLE receipt (id TEXT COLLATE "C" PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL REFERENCES
  person (id), of BIGINT NOT NULL, ref_id TEXT COLLATE "C" NOT NULL, ref_number BIGINT NOT NULL, state
  BIGINT NOT NULL, content BYTEA NOT NULL, sha256 BYTEA NOT NULL, sequence BIGINT NOT NULL, at BIGINT NOT
  NULL);
CREATE INDEX receipt_ref ON receipt (person_id, of, ref_id, state);
CREATE TABLE device (id TEXT COLLATE "C" PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL REFERENCES
  person (id), name TEXT COLLATE "C" NOT NULL, app_version TEXT COLLATE "C" NOT NULL, token_sha256 BYTEA
  NOT NULL UNIQUE, paired_at BIGINT NOT NULL, last_contact BIGINT, revoked BIGINT NOT NULL DEFAULT 0);
CREATE INDEX device_person ON device (person_id);
CREATE TABLE invitation (id TEXT COLLATE "C" PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL REFERENCES
  person (id), typed_hash TEXT COLLATE "C" NOT NULL, qr_sha256 BYTEA NOT NULL UNIQUE, expires_at BIGINT
  NOT NULL, tries_left BIGINT NOT NULL);
CREATE TABLE account (id TEXT COLLATE "C" PRIMARY KEY, user_name TEXT COLLATE "C" NOT NULL UNIQUE,
  display_name TEXT COLLATE "C" NOT NULL, role BIGINT NOT NULL, password_hash TEXT COLLATE "C" NOT NULL);
CREATE TABLE session (token_sha256 BYTEA PRIMARY KEY, account_id TEXT COLLATE "C" NOT NULL REFERENCES
  account (id), ends_at BIGINT NOT NULL);
CREATE TABLE audit (n BIGINT PRIMARY KEY, entry TEXT COLLATE "C" NOT NULL, hash BYTEA NOT NULL);
CREATE TABLE own_exercise (id TEXT COLLATE "C" NOT NULL, revision BIGINT NOT NULL, content BYTEA NOT NULL,
  PRIMARY KEY (id, revision));
)";

// Second factors, whose persons are whose, and what is left of an erased person: migrations 3 to 5 of
// hub_schema.cpp. Role 1 is the therapist's (identity.proto).
constexpr char kWhoMay[] = R"(
CREATE TABLE second_factor (account_id TEXT COLLATE "C" PRIMARY KEY REFERENCES account (id), secret BYTEA NOT
  NULL, confirmed BIGINT NOT NULL, last_step BIGINT NOT NULL);
CREATE TABLE assignment (account_id TEXT COLLATE "C" NOT NULL, person_id TEXT COLLATE "C" NOT NULL REFERENCES
  person (id), PRIMARY KEY (account_id, person_id));
CREATE INDEX assignment_person ON assignment (person_id);
INSERT INTO assignment SELECT account.id, person.id FROM account, person WHERE account.role = 1;
CREATE TABLE opening (id TEXT COLLATE "C" PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL REFERENCES person
  (id), account_id TEXT COLLATE "C" NOT NULL, reason TEXT COLLATE "C" NOT NULL, at BIGINT NOT NULL, until
  BIGINT NOT NULL);
CREATE INDEX opening_person ON opening (person_id, until);
CREATE INDEX opening_account ON opening (account_id, until);
CREATE TABLE erased_person (id TEXT COLLATE "C" PRIMARY KEY, at BIGINT NOT NULL);
CREATE TABLE erased_token (token_sha256 BYTEA PRIMARY KEY, at BIGINT NOT NULL);
)";

// Migration 7 of hub_schema.cpp. Parts are pictures and clips, which no longer shrink: stored as they are.
constexpr char kMedia[] = R"(
CREATE TABLE media (id TEXT COLLATE "C" PRIMARY KEY, sha256 BYTEA NOT NULL UNIQUE, type BIGINT NOT NULL,
  size BIGINT NOT NULL, at BIGINT NOT NULL);
CREATE TABLE media_part (media_id TEXT COLLATE "C" NOT NULL, at_byte BIGINT NOT NULL, content BYTEA NOT NULL,
  PRIMARY KEY (media_id, at_byte));
ALTER TABLE media_part ALTER COLUMN content SET STORAGE EXTERNAL;
CREATE TABLE media_link (person_id TEXT COLLATE "C" NOT NULL REFERENCES person (id), media_id TEXT COLLATE "C"
  NOT NULL REFERENCES media (id), named BIGINT NOT NULL, at BIGINT NOT NULL, PRIMARY KEY (person_id, media_id));
CREATE INDEX media_link_media ON media_link (media_id);
CREATE TABLE media_upload (id TEXT COLLATE "C" PRIMARY KEY, person_id TEXT COLLATE "C" NOT NULL REFERENCES
  person (id), sha256 BYTEA NOT NULL, size BIGINT NOT NULL, have BIGINT NOT NULL, at BIGINT NOT NULL,
  UNIQUE (person_id, sha256));
)";

// Migration 8 of hub_schema.cpp.
constexpr char kAccountStates[] = R"(
ALTER TABLE account ADD COLUMN disabled BIGINT NOT NULL DEFAULT 0;
ALTER TABLE account ADD COLUMN first_until BIGINT NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN last_used BIGINT NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN limited BIGINT NOT NULL DEFAULT 0;
)";

// Migration 9 of hub_schema.cpp.
constexpr char kMoreRecords[] = R"(
CREATE TABLE record (sequence BIGINT PRIMARY KEY, kind BIGINT NOT NULL, id TEXT COLLATE "C" NOT NULL,
  revision BIGINT NOT NULL, person_id TEXT COLLATE "C" NOT NULL REFERENCES person (id), content BYTEA NOT NULL,
  sha256 BYTEA NOT NULL, at BIGINT NOT NULL, UNIQUE (kind, id, revision));
CREATE INDEX record_person ON record (person_id, kind, sequence);
)";

// Migration 10 of hub_schema.cpp.
constexpr char kAttention[] = R"(
CREATE TABLE digest (person_id TEXT COLLATE "C" PRIMARY KEY REFERENCES person (id), version BIGINT NOT NULL,
  last_day BIGINT NOT NULL, content BYTEA NOT NULL);
CREATE TABLE digest_mark (person_id TEXT COLLATE "C" PRIMARY KEY REFERENCES person (id), changed BIGINT NOT NULL,
  made BIGINT NOT NULL);
CREATE INDEX digest_mark_due ON digest_mark (person_id) WHERE changed <> made;
INSERT INTO digest_mark SELECT id, 1, 0 FROM person;
CREATE TABLE snooze (person_id TEXT COLLATE "C" PRIMARY KEY REFERENCES person (id), content BYTEA NOT NULL);
)";

// Migration 11 of hub_schema.cpp.
constexpr char kTextSizes[] = "ALTER TABLE device ADD COLUMN text_percent BIGINT NOT NULL DEFAULT 0;";

}  // namespace

const std::vector<Migration>& postgresHubMigrations() {
  static const std::vector<Migration> kMigrations = {{1, kFirst},         {2, kWhoMay},      {3, kMedia},
                                                     {4, kAccountStates}, {5, kMoreRecords}, {6, kAttention},
                                                     {7, kTextSizes}};
  return kMigrations;
}

}  // namespace newel
