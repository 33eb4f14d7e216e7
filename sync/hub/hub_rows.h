// What the hub's store hands out: plain rows. The records inside are kept as the exact bytes that came.
#pragma once

#include <absl/time/time.h>

#include <cstring>
#include <memory>
#include <memory_resource>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/records/identity.pb.h"
#include "sync/protocol/wire.pb.h"

namespace newel {

// `content` is a serialised v1::Person or v1::Identity.
struct VersionedRow {
  std::uint64_t revision = 0;
  std::string content;
};

// A programme or hold order as signed.
struct SignedRow {
  std::string person_id;
  std::uint64_t number = 0;
  std::string id;
  std::string content;
  std::string signature;
  std::string key_id;
  std::string lifts_id;  // hold orders
  std::string end_day;   // programmes
};

struct MessageRow {
  std::string id;
  std::string person_id;
  bool from_person = false;
  std::string content;
  std::string sha256;
  bool unread = false;  // from the person, and not opened at a desk yet; set by messages() alone
};

struct PracticeRow {
  std::string person_id;
  std::string device_id;
  v1::Envelope envelope;  // sequence and received_at set by the store
  bool red_flag = false;
};

struct PracticeKey {
  std::string id;
  std::uint32_t revision = 0;
};

// What is kept of one practice, or of another record with revisions.
struct PracticeKept {
  std::string person_id;       // decides who may add a revision; empty: nothing is kept of this id
  std::uint32_t revision = 0;  // the last one kept
  std::string sha256;          // of the revision that was asked for; empty: that one is not kept
};

struct ReceiptRow {
  std::string id;
  std::string person_id;
  int of = 0;
  std::string ref_id;
  std::uint64_t ref_number = 0;
  int state = 0;
  std::string content;
  std::string sha256;
};

// A photo or clip that is whole and checked. It lies there once, whoever uses it.
struct MediaRow {
  std::string id;  // says nothing of the content; what the audit trail names
  std::string sha256;
  int type = 0;  // v1::MediaType
  std::uint64_t size = 0;
  bool named = false;  // by a signed programme of the person it was asked for
};

// One that is on its way from a desk.
struct MediaUploadRow {
  std::string id;
  std::string person_id;
  std::string sha256;
  std::uint64_t size = 0;
  std::uint64_t have = 0;  // bytes
};

struct MediaPartRow {
  std::uint64_t offset = 0;
  std::string content;
};

// What waits for a signature, of one person.
struct MediaWaiting {
  std::uint64_t uploads = 0;
  std::uint64_t bytes = 0;
};

// What a phone tells of itself beside its records. Empty or 0: it did not say, and what was known stays.
struct PhoneSays {
  std::string app_version{};
  std::uint32_t text_percent = 0;
};

struct DeviceRow {
  std::string id;
  std::string person_id;
  std::string name;
  std::string app_version;
  std::string token_sha256;
  absl::Time paired_at;
  std::optional<absl::Time> last_contact;
  bool revoked = false;
  std::uint32_t text_percent = 0;  // 0: it has not said
};

struct InvitationRow {
  std::string id;
  std::string person_id;
  std::string typed_hash;  // Argon2id, with its salt
  std::string qr_sha256;
  absl::Time expires_at;
  int tries_left = 0;
};

struct AccountRow {
  std::string id;
  std::string user_name;
  std::string display_name;
  v1::Role role = v1::ROLE_UNSPECIFIED;
  std::string password_hash;
  bool disabled = false;
  // A first password, made by the hub, is good until then and has to be changed; none: it is their own.
  std::optional<absl::Time> first_until = {};
};

// A second factor by time-based codes (totp.h). Until it is confirmed it asks nobody for anything.
struct SecondFactorRow {
  std::string secret;  // 20 bytes, as made
  bool confirmed = false;
  std::uint64_t last_step = 0;  // the last time step that a code was taken for; 0: none yet
};

struct SessionRow {
  std::string account_id;
  absl::Time ends_at;
  absl::Time last_used;
  bool limited = false;  // good for the account's own calls only
};

// Somebody else's person, opened by a written reason until `until`.
struct OpeningRow {
  std::string id;
  std::string person_id;
  std::string account_id;
  std::string reason;
  absl::Time at;
  absl::Time until;
};

struct AuditRow {
  std::uint64_t n = 0;
  std::string entry;  // canonical JSON
  std::string hash;   // 32 bytes
};

// What the attention list needs of one person's record (digest_keeper.h). A cache: it can be made again.
struct DigestAge {
  int version = 0;            // of what made it
  std::int32_t last_day = 0;  // what it is good for, counted from 1970-01-01
};
struct DigestRow {
  std::string person_id;
  DigestAge age;
  std::string content;
};

// A record changed, and its digest has to be made anew. The mark grows with each change.
struct DueDigest {
  std::string person_id;
  std::uint64_t mark = 0;
};

// Whose rows of the caseload: by id, from after `after_id`, or `person_id` alone.
struct CaseloadQuery {
  std::string account_id;
  bool only_own = false;  // assigned to the account, or opened by it and not over at `now`
  absl::Time now;
  std::string after_id;
  std::string person_id;
  std::uint32_t limit = 0;
};

// What it points at lies in its page.
struct CaseloadRow {
  std::string_view person_id;
  std::string_view person;    // a serialised v1::Person
  std::string_view identity;  // a serialised v1::Identity; empty: none
  bool has_digest = false;
  DigestAge digest_age;
  std::string_view digest;                 // its content
  bool due = false;                        // the digest is older than the record
  std::string_view snooze;                 // a serialised v1::Snooze; empty: none
  std::optional<absl::Time> last_contact;  // of a phone that is not revoked
  bool paired = false;
  bool mine = false;    // assigned to the account
  bool opened = false;  // by anybody's written reason, within the last week
};

// By id. Small strings by the thousand, made and dropped, would be a quarter of a large caseload's time: they
// lie in blocks that go together.
class CaseloadPage {
 public:
  std::string_view keep(std::string_view bytes) {
    if (bytes.empty()) return {};
    char* kept = static_cast<char*>(m_blocks->allocate(bytes.size(), 1));
    std::memcpy(kept, bytes.data(), bytes.size());
    return {kept, bytes.size()};
  }
  std::vector<CaseloadRow> rows{};

 private:
  std::unique_ptr<std::pmr::monotonic_buffer_resource> m_blocks =
      std::make_unique<std::pmr::monotonic_buffer_resource>();
};

// Facts for one row of the caseload; desk_service.proto says what each means.
struct CaseFacts {
  std::uint32_t programme_number = 0;
  std::string programme_end_day;
  std::optional<absl::Time> last_contact;
  std::optional<absl::Time> last_practice;
  std::uint32_t unread_messages = 0;
  bool hold_active = false;
  bool hold_arrived = false;
  bool red_flag_open = false;
  bool programme_arrived = false;
  bool programme_seen = false;
  bool paired = false;
};

}  // namespace newel
