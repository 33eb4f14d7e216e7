// Where the hub keeps everything, as an interface: SQLite is behind it (sqlite_hub_store.h) or PostgreSQL
// (postgres_hub_store.h), and both keep the same promises. No rule lives here, and no SQL anywhere else in
// the hub.
#pragma once

#include <absl/status/status.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "sync/hub/hub_rows.h"
#include "sync/hub/store_news.h"

namespace newel {

// One transaction. The methods may throw the engine's own exceptions; HubStore turns them into a status.
// Methods that begin with add, put, set, end, drop, note, mark, take, spend or revoke need a write.
class HubTransaction {
 public:
  virtual ~HubTransaction() = default;

  // One-of-a-kind values: keys, certificate, clinic card, generation. Empty: not set.
  virtual std::string setting(const std::string& name) = 0;
  virtual void putSetting(const std::string& name, const std::string& value) = 0;

  virtual std::optional<VersionedRow> person(const std::string& id) = 0;
  virtual void putPerson(const std::string& id, const VersionedRow& row) = 0;
  virtual std::vector<std::string> personIdsAfter(const std::string& id, std::uint32_t limit) = 0;
  // Kept apart from every other table.
  virtual std::optional<VersionedRow> identity(const std::string& person_id) = 0;
  virtual void putIdentity(const std::string& person_id, const VersionedRow& row) = 0;
  virtual CaseFacts caseFacts(const std::string& person_id) = 0;
  virtual CaseloadPage caseload(const CaseloadQuery& query) = 0;

  // Whatever changes a record (person, programmes, hold orders, messages and whether they were read,
  // practices, receipts) makes its digest due, in the same transaction. By id.
  virtual std::vector<DueDigest> dueDigests(std::uint32_t limit) = 0;
  // Nothing is kept, and false, when the record changed after `mark`.
  virtual bool putDigest(const DigestRow& row, std::uint64_t mark) = 0;
  // Makes due what another version made, or what is good for less than up to `last_day`.
  virtual void markOldDigests(int version, std::int32_t last_day) = 0;
  // Whose row can wait: a serialised v1::Snooze.
  virtual void putSnooze(const std::string& person_id, const std::string& content) = 0;
  virtual bool dropSnooze(const std::string& person_id) = 0;  // true when there was one

  // The hub's one sequence, given inside the write transaction: whoever reads up to n has missed nothing
  // below n, with two writers too.
  virtual std::uint64_t takeSequence() = 0;
  // What phones fetch. `person_id` empty: everybody. With `replace`, earlier rows of that kind and id go.
  virtual void addToFeed(const std::string& person_id, const v1::Envelope& envelope, bool replace) = 0;
  virtual std::vector<v1::Envelope> feedAfter(const std::string& person_id, std::uint64_t sequence,
                                              std::uint32_t limit) = 0;

  virtual std::vector<SignedRow> programmes(const std::string& person_id) = 0;  // by number
  virtual std::optional<SignedRow> latestProgramme(const std::string& person_id) = 0;
  virtual std::optional<SignedRow> programmeById(const std::string& id) = 0;
  virtual void addProgramme(const SignedRow& row, std::uint64_t sequence) = 0;
  virtual std::vector<SignedRow> holdOrders(const std::string& person_id) = 0;  // by number
  virtual std::optional<SignedRow> holdOrderById(const std::string& id) = 0;
  virtual void addHoldOrder(const SignedRow& row, std::uint64_t sequence) = 0;

  // Each revision is kept for good.
  virtual std::vector<VersionedRow> ownExercises() = 0;  // by id, then revision
  virtual std::optional<VersionedRow> ownExercise(const std::string& id, std::uint64_t revision) = 0;
  virtual std::uint64_t latestOwnRevision(const std::string& id) = 0;  // 0: none
  virtual void addOwnExercise(const std::string& id, const VersionedRow& row) = 0;

  // Photos and clips. Content lies there once, by its hash; a link says whose it is to see. Parts have the id
  // of an upload, or of the media row that came of it.
  virtual std::optional<MediaRow> media(const std::string& sha256) = 0;  // named: always false
  virtual void addMedia(const MediaRow& row, absl::Time at) = 0;
  virtual std::optional<MediaRow> mediaOf(const std::string& person_id, const std::string& sha256) = 0;
  virtual void addMediaLink(const std::string& person_id, const std::string& media_id, absl::Time at) = 0;
  virtual void markMediaNamed(const std::string& person_id, const std::string& media_id) = 0;
  virtual std::optional<MediaUploadRow> mediaUpload(const std::string& person_id,
                                                    const std::string& sha256) = 0;
  virtual void addMediaUpload(const MediaUploadRow& row, absl::Time at) = 0;
  // Behind what the upload has.
  virtual void addMediaPart(const MediaUploadRow& upload, const std::string& content, absl::Time at) = 0;
  // With its parts, unless a media row has taken them over.
  virtual void dropMediaUpload(const std::string& id) = 0;
  // The part that `offset` lies in.
  virtual std::optional<MediaPartRow> mediaPart(const std::string& media_id, std::uint64_t offset) = 0;
  virtual MediaWaiting mediaWaiting(const std::string& person_id) = 0;
  // Uploads that nothing came of since `upload_by`, what no signed programme has named since `link_by`, and
  // content that is nobody's any more.
  virtual void dropStaleMedia(absl::Time upload_by, absl::Time link_by) = 0;

  virtual std::optional<MessageRow> message(const std::string& id) = 0;
  virtual std::vector<MessageRow> messages(const std::string& person_id) = 0;  // as they came
  virtual void addMessage(const MessageRow& row, std::uint64_t sequence, absl::Time at) = 0;
  virtual int markMessagesRead(const std::string& person_id, absl::Time at) = 0;  // how many were unread

  // For each of `keys`, in their order. Many at once, as phones send them: a database on another machine is
  // asked once.
  virtual std::vector<PracticeKept> practicesKept(const std::vector<PracticeKey>& keys) = 0;
  virtual void addPractices(const std::vector<PracticeRow>& rows) = 0;
  virtual std::vector<v1::Envelope> practicesAfter(const std::string& person_id, std::uint64_t sequence,
                                                   std::uint32_t limit) = 0;

  // Records of a kind without a table of its own: measures, wearing time. As practicesKept() for one key.
  virtual PracticeKept recordKept(v1::RecordKind kind, const PracticeKey& key) = 0;
  virtual void addRecord(const std::string& person_id, const v1::Envelope& envelope) = 0;
  // The last revision of each, as they came.
  virtual std::vector<v1::Envelope> recordsAfter(const std::string& person_id, v1::RecordKind kind,
                                                 std::uint64_t sequence, std::uint32_t limit) = 0;

  virtual std::optional<ReceiptRow> receipt(const std::string& id) = 0;
  virtual std::vector<ReceiptRow> receipts(const std::string& person_id) = 0;  // as they came
  virtual void addReceipt(const ReceiptRow& row, std::uint64_t sequence, absl::Time at) = 0;
  // The highest number that a phone said it has, 0 for none. After a restore it may be over our own.
  virtual std::uint64_t highestReceiptNumber(const std::string& person_id, int of) = 0;

  virtual void addDevice(const DeviceRow& row) = 0;
  virtual std::optional<DeviceRow> deviceByToken(const std::string& token_sha256) = 0;
  virtual std::optional<DeviceRow> device(const std::string& id) = 0;
  virtual std::vector<DeviceRow> devices(const std::string& person_id) = 0;
  virtual void noteContact(const std::string& device_id, absl::Time at, const PhoneSays& says) = 0;
  virtual void revokeDevice(const std::string& id) = 0;

  virtual void addInvitation(const InvitationRow& row) = 0;  // replaces the person's earlier ones
  // Takes one try from every invitation that is open at `now`, and returns them as they were before.
  virtual std::vector<InvitationRow> takeTries(absl::Time now) = 0;
  virtual void giveBackTries(const std::vector<InvitationRow>& rows) = 0;
  virtual std::optional<InvitationRow> invitationByQr(const std::string& qr_sha256, absl::Time now) = 0;
  // True for the one caller who spends it; it is gone afterwards.
  virtual bool spendInvitation(const std::string& id, absl::Time now) = 0;
  virtual void dropInvitations(absl::Time expired_by) = 0;

  virtual std::optional<AccountRow> accountByName(const std::string& user_name) = 0;
  virtual std::optional<AccountRow> account(const std::string& id) = 0;
  virtual std::vector<AccountRow> accounts() = 0;  // by display name

  // Whose persons are whose. Accounts need not exist.
  virtual bool isAssigned(const std::string& account_id, const std::string& person_id) = 0;
  virtual void setAssigned(const std::string& account_id, const std::string& person_id, bool assigned) = 0;
  virtual std::vector<std::string> assignedAccounts(const std::string& person_id) = 0;
  // Assigned to the account, or opened by it and not over at `now`; by id, each once.
  virtual std::vector<std::string> personIdsOf(const std::string& account_id, absl::Time now,
                                               const std::string& after_id, std::uint32_t limit) = 0;
  virtual void addOpening(const OpeningRow& row) = 0;
  // Those that end after `now`, the latest first.
  virtual std::vector<OpeningRow> openings(const std::string& person_id, absl::Time now) = 0;

  // Deletes every row about the person and leaves two marks: that this id was erased, and, for each phone,
  // that its token belonged to somebody erased. The audit trail stays as it is. False: nobody has the id.
  virtual bool erasePerson(const std::string& id, absl::Time at) = 0;
  virtual bool wasErased(const std::string& person_id) = 0;
  virtual bool tokenWasErased(const std::string& token_sha256) = 0;

  virtual void addAccount(const AccountRow& row) = 0;
  virtual void putAccount(const AccountRow& row) = 0;  // replaces all but its id and user name
  // One row for each account that has begun to enrol; put replaces it whole.
  virtual std::optional<SecondFactorRow> secondFactor(const std::string& account_id) = 0;
  virtual void putSecondFactor(const std::string& account_id, const SecondFactorRow& row) = 0;
  virtual bool dropSecondFactor(const std::string& account_id) = 0;  // true when there was one
  virtual void addSession(const std::string& token_sha256, const SessionRow& row) = 0;
  virtual std::optional<SessionRow> session(const std::string& token_sha256) = 0;
  virtual void noteSessionUse(const std::string& token_sha256, absl::Time at) = 0;
  virtual void setSessionLimited(const std::string& token_sha256, bool limited) = 0;
  virtual void endSession(const std::string& token_sha256) = 0;
  // Every session of the account but `kept` (empty: all); their hashes.
  virtual std::vector<std::string> endSessionsOf(const std::string& account_id, const std::string& kept) = 0;
  virtual void dropSessions(absl::Time ended_by) = 0;

  virtual std::optional<AuditRow> lastAudit() = 0;
  virtual void addAudit(const AuditRow& row) = 0;
  virtual std::vector<AuditRow> auditAfter(std::uint64_t n, std::uint32_t limit) = 0;
  virtual std::vector<AuditRow> auditBefore(std::uint64_t n, std::uint32_t limit) = 0;  // the latest first
};

// Thread-safe.
class HubStore {
 public:
  virtual ~HubStore() = default;
  // Committed, and on the disk, when `body` returned OK and so does this; nothing changed otherwise.
  // kResourceExhausted disk full, kUnavailable busy: try again. kDataLoss, kInternal: a person has to look.
  // A database on another machine may have kept it although the answer was lost (kUnavailable): what is sent
  // again has to be known by its id.
  // `body` may run on another thread, beside those of other callers, and again from its beginning after a
  // clash: it waits for nothing that its caller holds, and sets what it hands out rather than adding to it.
  virtual absl::Status write(const std::function<absl::Status(HubTransaction&)>& body) = 0;
  // As write(), ahead of everybody who waits: for a hold order, which must not stand behind the uploads of a
  // whole clinic. What is under way is committed first.
  virtual absl::Status writeFirst(const std::function<absl::Status(HubTransaction&)>& body) = 0;
  // How many writers wait for their turn just now.
  virtual std::size_t writersWaiting() = 0;
  // One consistent view.
  virtual absl::Status read(const std::function<absl::Status(HubTransaction&)>& body) = 0;
  // Tells `heard`, from a thread of the store, what other processes on the same database committed; a store
  // that has no others never calls it. An empty function ends it, after the last call has returned.
  virtual absl::Status watch(const std::function<void(const StoreNews&)>& /*heard*/) {
    return absl::OkStatus();
  }
  // True where a copy is made with the database's own tools, so that the hub hears of one only when told.
  virtual bool copiedByDatabase() const { return false; }
};

}  // namespace newel
