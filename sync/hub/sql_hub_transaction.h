// HubTransaction in the SQL that both engines understand, written once. `Session` is one connection with
// run() and query() (Database of sync/common, PgSession); each engine's own words are in its migrations and
// in postgres_hub_transaction.h. SQL of the hub is in these files only.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "sync/hub/hub_store.h"

namespace newel {

// Lives inside one open transaction; throws the session's exceptions.
template <typename Session>
class SqlHubTransaction : public HubTransaction {
 public:
  // `last_taken`: the last number of the sequence, where the session has looked already; 0: it has not.
  explicit SqlHubTransaction(Session& session, std::uint64_t last_taken = 0)
      : m_db(session), m_known_taken(last_taken), m_last_taken(last_taken) {}

  // Writes down how far the sequence went, and whose record changed. A body that is kept has to end with
  // this.
  void finish();
  std::uint64_t lastTaken() const { return m_last_taken; }

  std::string setting(const std::string& name) override;
  void putSetting(const std::string& name, const std::string& value) override;
  std::optional<VersionedRow> person(const std::string& id) override;
  void putPerson(const std::string& id, const VersionedRow& row) override;
  std::vector<std::string> personIdsAfter(const std::string& id, std::uint32_t limit) override;
  std::optional<VersionedRow> identity(const std::string& person_id) override;
  void putIdentity(const std::string& person_id, const VersionedRow& row) override;
  CaseFacts caseFacts(const std::string& person_id) override;
  CaseloadPage caseload(const CaseloadQuery& query) override;
  std::vector<DueDigest> dueDigests(std::uint32_t limit) override;
  bool putDigest(const DigestRow& row, std::uint64_t mark) override;
  void markOldDigests(int version, std::int32_t last_day) override;
  void putSnooze(const std::string& person_id, const std::string& content) override;
  bool dropSnooze(const std::string& person_id) override;
  std::uint64_t takeSequence() override;
  void addToFeed(const std::string& person_id, const v1::Envelope& envelope, bool replace) override;
  std::vector<v1::Envelope> feedAfter(const std::string& person_id, std::uint64_t sequence,
                                      std::uint32_t limit) override;
  std::vector<SignedRow> programmes(const std::string& person_id) override;
  std::optional<SignedRow> latestProgramme(const std::string& person_id) override;
  std::optional<SignedRow> programmeById(const std::string& id) override;
  void addProgramme(const SignedRow& row, std::uint64_t sequence) override;
  std::vector<SignedRow> holdOrders(const std::string& person_id) override;
  std::optional<SignedRow> holdOrderById(const std::string& id) override;
  void addHoldOrder(const SignedRow& row, std::uint64_t sequence) override;
  std::vector<VersionedRow> ownExercises() override;
  std::optional<VersionedRow> ownExercise(const std::string& id, std::uint64_t revision) override;
  std::uint64_t latestOwnRevision(const std::string& id) override;
  void addOwnExercise(const std::string& id, const VersionedRow& row) override;
  std::optional<MediaRow> media(const std::string& sha256) override;
  void addMedia(const MediaRow& row, absl::Time at) override;
  std::optional<MediaRow> mediaOf(const std::string& person_id, const std::string& sha256) override;
  void addMediaLink(const std::string& person_id, const std::string& media_id, absl::Time at) override;
  void markMediaNamed(const std::string& person_id, const std::string& media_id) override;
  std::optional<MediaUploadRow> mediaUpload(const std::string& person_id, const std::string& sha256) override;
  void addMediaUpload(const MediaUploadRow& row, absl::Time at) override;
  void addMediaPart(const MediaUploadRow& upload, const std::string& content, absl::Time at) override;
  void dropMediaUpload(const std::string& id) override;
  std::optional<MediaPartRow> mediaPart(const std::string& media_id, std::uint64_t offset) override;
  MediaWaiting mediaWaiting(const std::string& person_id) override;
  void dropStaleMedia(absl::Time upload_by, absl::Time link_by) override;
  std::optional<MessageRow> message(const std::string& id) override;
  std::vector<MessageRow> messages(const std::string& person_id) override;
  void addMessage(const MessageRow& row, std::uint64_t sequence, absl::Time at) override;
  int markMessagesRead(const std::string& person_id, absl::Time at) override;
  std::vector<PracticeKept> practicesKept(const std::vector<PracticeKey>& keys) override;
  void addPractices(const std::vector<PracticeRow>& rows) override;
  std::vector<v1::Envelope> practicesAfter(const std::string& person_id, std::uint64_t sequence,
                                           std::uint32_t limit) override;
  PracticeKept recordKept(v1::RecordKind kind, const PracticeKey& key) override;
  void addRecord(const std::string& person_id, const v1::Envelope& envelope) override;
  std::vector<v1::Envelope> recordsAfter(const std::string& person_id, v1::RecordKind kind,
                                         std::uint64_t sequence, std::uint32_t limit) override;
  std::optional<ReceiptRow> receipt(const std::string& id) override;
  std::vector<ReceiptRow> receipts(const std::string& person_id) override;
  void addReceipt(const ReceiptRow& row, std::uint64_t sequence, absl::Time at) override;
  std::uint64_t highestReceiptNumber(const std::string& person_id, int of) override;
  void addDevice(const DeviceRow& row) override;
  std::optional<DeviceRow> deviceByToken(const std::string& token_sha256) override;
  std::optional<DeviceRow> device(const std::string& id) override;
  std::vector<DeviceRow> devices(const std::string& person_id) override;
  void noteContact(const std::string& device_id, absl::Time at, const PhoneSays& says) override;
  void revokeDevice(const std::string& id) override;
  void addInvitation(const InvitationRow& row) override;
  std::vector<InvitationRow> takeTries(absl::Time now) override;
  void giveBackTries(const std::vector<InvitationRow>& rows) override;
  std::optional<InvitationRow> invitationByQr(const std::string& qr_sha256, absl::Time now) override;
  bool spendInvitation(const std::string& id, absl::Time now) override;
  void dropInvitations(absl::Time expired_by) override;
  std::optional<AccountRow> accountByName(const std::string& user_name) override;
  std::optional<AccountRow> account(const std::string& id) override;
  std::vector<AccountRow> accounts() override;
  bool isAssigned(const std::string& account_id, const std::string& person_id) override;
  void setAssigned(const std::string& account_id, const std::string& person_id, bool assigned) override;
  std::vector<std::string> assignedAccounts(const std::string& person_id) override;
  std::vector<std::string> personIdsOf(const std::string& account_id, absl::Time now,
                                       const std::string& after_id, std::uint32_t limit) override;
  void addOpening(const OpeningRow& row) override;
  std::vector<OpeningRow> openings(const std::string& person_id, absl::Time now) override;
  bool erasePerson(const std::string& id, absl::Time at) override;
  bool wasErased(const std::string& person_id) override;
  bool tokenWasErased(const std::string& token_sha256) override;
  void addAccount(const AccountRow& row) override;
  void putAccount(const AccountRow& row) override;
  std::optional<SecondFactorRow> secondFactor(const std::string& account_id) override;
  void putSecondFactor(const std::string& account_id, const SecondFactorRow& row) override;
  bool dropSecondFactor(const std::string& account_id) override;
  void addSession(const std::string& token_sha256, const SessionRow& row) override;
  std::optional<SessionRow> session(const std::string& token_sha256) override;
  void noteSessionUse(const std::string& token_sha256, absl::Time at) override;
  void setSessionLimited(const std::string& token_sha256, bool limited) override;
  void endSession(const std::string& token_sha256) override;
  std::vector<std::string> endSessionsOf(const std::string& account_id, const std::string& kept) override;
  void dropSessions(absl::Time ended_by) override;
  std::optional<AuditRow> lastAudit() override;
  void addAudit(const AuditRow& row) override;
  std::vector<AuditRow> auditAfter(std::uint64_t n, std::uint32_t limit) override;
  std::vector<AuditRow> auditBefore(std::uint64_t n, std::uint32_t limit) override;

 protected:
  void noteChanged(const std::string& person_id) { m_changed.insert(person_id); }

 private:
  void addProgrammeFacts(const std::string& person_id, CaseFacts& facts);
  void addHoldFacts(const std::string& person_id, CaseFacts& facts);
  void addContactFacts(const std::string& person_id, CaseFacts& facts);
  void markDue();
  void dropMediaOf(const std::string& person_id);
  void dropUnusedMedia();

  // Where the session can, with the next question: nobody looks at the answer.
  template <typename... Values>
  void runSometime(const char* sql, const Values&... values) {
    if constexpr (requires { m_db.later(sql, values...); }) {
      m_db.later(sql, values...);
    } else {
      m_db.run(sql, values...);
    }
  }

  Session& m_db;
  std::set<std::string> m_changed;  // whose record
  std::uint64_t m_known_taken;      // as the table has it; 0: not known
  std::uint64_t m_last_taken;       // 0: none yet
};

}  // namespace newel
