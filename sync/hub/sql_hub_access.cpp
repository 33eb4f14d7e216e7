// The tables of who may come in: devices, invitations, accounts, sessions; and the audit trail.
#include <utility>

#include "sync/common/database.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

std::int64_t micros(absl::Time time) { return absl::ToUnixMicros(time); }

template <typename Found>
std::vector<DeviceRow> deviceRows(Found rows) {
  std::vector<DeviceRow> list;
  while (rows.next()) {
    DeviceRow row;
    row.id = rows.text(0);
    row.person_id = rows.text(1);
    row.name = rows.text(2);
    row.app_version = rows.text(3);
    row.paired_at = absl::FromUnixMicros(rows.number(4));
    if (!rows.isNull(5)) row.last_contact = absl::FromUnixMicros(rows.number(5));
    row.revoked = rows.number(6) != 0;
    row.text_percent = static_cast<std::uint32_t>(rows.number(7));
    list.push_back(std::move(row));
  }
  return list;
}

std::optional<DeviceRow> firstOf(std::vector<DeviceRow> rows) {
  if (rows.empty()) return std::nullopt;
  return std::move(rows.front());
}

template <typename Found>
std::vector<InvitationRow> invitationRows(Found rows) {
  std::vector<InvitationRow> list;
  while (rows.next()) {
    list.push_back({rows.text(0), rows.text(1), rows.text(2), rows.text(3),
                    absl::FromUnixMicros(rows.number(4)), static_cast<int>(rows.number(5))});
  }
  return list;
}

template <typename Found>
AccountRow accountAt(const Found& rows) {
  AccountRow row{rows.text(0), rows.text(1),       rows.text(2), static_cast<v1::Role>(rows.number(3)),
                 rows.text(4), rows.number(5) != 0};
  if (rows.number(6) != 0) row.first_until = absl::FromUnixMicros(rows.number(6));
  return row;
}

template <typename Found>
std::vector<AuditRow> auditRows(Found rows) {
  std::vector<AuditRow> list;
  while (rows.next())
    list.push_back({static_cast<std::uint64_t>(rows.number(0)), rows.text(1), rows.text(2)});
  return list;
}

template <typename Found>
std::optional<AccountRow> accountRow(Found rows) {
  if (!rows.next()) return std::nullopt;
  return accountAt(rows);
}

}  // namespace

template <typename Session>
void SqlHubTransaction<Session>::addDevice(const DeviceRow& row) {
  m_db.run(
      "INSERT INTO device (id, person_id, name, app_version, token_sha256, paired_at, last_contact) "
      "VALUES (?, ?, ?, ?, ?, ?, ?)",
      row.id, row.person_id, row.name, row.app_version, Blob{row.token_sha256}, micros(row.paired_at),
      micros(row.last_contact.value_or(row.paired_at)));
}

template <typename Session>
std::optional<DeviceRow> SqlHubTransaction<Session>::deviceByToken(const std::string& token_sha256) {
  return firstOf(deviceRows(m_db.query(
      "SELECT id, person_id, name, app_version, paired_at, last_contact, revoked, text_percent FROM device "
      "WHERE token_sha256 = ?",
      Blob{token_sha256})));
}

template <typename Session>
std::optional<DeviceRow> SqlHubTransaction<Session>::device(const std::string& id) {
  return firstOf(
      deviceRows(m_db.query("SELECT id, person_id, name, app_version, paired_at, last_contact, revoked, "
                            "text_percent FROM device WHERE id = ?",
                            id)));
}

template <typename Session>
std::vector<DeviceRow> SqlHubTransaction<Session>::devices(const std::string& person_id) {
  return deviceRows(m_db.query(
      "SELECT id, person_id, name, app_version, paired_at, last_contact, revoked, text_percent FROM device "
      "WHERE person_id = ? ORDER BY paired_at, id",
      person_id));
}

template <typename Session>
void SqlHubTransaction<Session>::noteContact(const std::string& device_id, absl::Time at,
                                             const PhoneSays& says) {
  runSometime(
      "UPDATE device SET last_contact = ?2, app_version = CASE WHEN ?3 = '' THEN app_version ELSE ?3 END, "
      "text_percent = CASE WHEN ?4 = 0 THEN text_percent ELSE ?4 END WHERE id = ?1",
      device_id, micros(at), says.app_version, static_cast<std::int64_t>(says.text_percent));
}

template <typename Session>
void SqlHubTransaction<Session>::revokeDevice(const std::string& id) {
  m_db.run("UPDATE device SET revoked = 1 WHERE id = ?", id);
}

template <typename Session>
void SqlHubTransaction<Session>::addInvitation(const InvitationRow& row) {
  m_db.run("DELETE FROM invitation WHERE person_id = ?", row.person_id);
  m_db.run(
      "INSERT INTO invitation (id, person_id, typed_hash, qr_sha256, expires_at, tries_left) "
      "VALUES (?, ?, ?, ?, ?, ?)",
      row.id, row.person_id, row.typed_hash, Blob{row.qr_sha256}, micros(row.expires_at), row.tries_left);
}

template <typename Session>
std::vector<InvitationRow> SqlHubTransaction<Session>::takeTries(absl::Time now) {
  auto open = invitationRows(
      m_db.query("SELECT id, person_id, typed_hash, qr_sha256, expires_at, tries_left FROM invitation "
                 "WHERE expires_at > ? AND tries_left > 0 ORDER BY id",
                 micros(now)));
  m_db.run("UPDATE invitation SET tries_left = tries_left - 1 WHERE expires_at > ? AND tries_left > 0",
           micros(now));
  return open;
}

template <typename Session>
void SqlHubTransaction<Session>::giveBackTries(const std::vector<InvitationRow>& rows) {
  for (const auto& row : rows) {
    m_db.run("UPDATE invitation SET tries_left = tries_left + 1 WHERE id = ?", row.id);
  }
}

template <typename Session>
std::optional<InvitationRow> SqlHubTransaction<Session>::invitationByQr(const std::string& qr_sha256,
                                                                        absl::Time now) {
  auto rows = invitationRows(
      m_db.query("SELECT id, person_id, typed_hash, qr_sha256, expires_at, tries_left FROM invitation "
                 "WHERE qr_sha256 = ? AND expires_at > ?",
                 Blob{qr_sha256}, micros(now)));
  if (rows.empty()) return std::nullopt;
  return std::move(rows.front());
}

template <typename Session>
bool SqlHubTransaction<Session>::spendInvitation(const std::string& id, absl::Time now) {
  return m_db.run("DELETE FROM invitation WHERE id = ? AND expires_at > ?", id, micros(now)) == 1;
}

template <typename Session>
void SqlHubTransaction<Session>::dropInvitations(absl::Time expired_by) {
  m_db.run("DELETE FROM invitation WHERE expires_at <= ?", micros(expired_by));
}

template <typename Session>
std::optional<AccountRow> SqlHubTransaction<Session>::accountByName(const std::string& user_name) {
  return accountRow(m_db.query(
      "SELECT id, user_name, display_name, role, password_hash, disabled, first_until FROM account "
      "WHERE user_name = ?",
      user_name));
}

template <typename Session>
std::optional<AccountRow> SqlHubTransaction<Session>::account(const std::string& id) {
  return accountRow(m_db.query(
      "SELECT id, user_name, display_name, role, password_hash, disabled, first_until FROM account "
      "WHERE id = ?",
      id));
}

template <typename Session>
std::vector<AccountRow> SqlHubTransaction<Session>::accounts() {
  std::vector<AccountRow> list;
  auto rows = m_db.query(
      "SELECT id, user_name, display_name, role, password_hash, disabled, first_until FROM account "
      "ORDER BY display_name, id");
  while (rows.next()) list.push_back(accountAt(rows));
  return list;
}

template <typename Session>
void SqlHubTransaction<Session>::addAccount(const AccountRow& row) {
  m_db.run("INSERT INTO account (id, user_name, display_name, role, password_hash) VALUES (?, ?, ?, ?, ?)",
           row.id, row.user_name, row.display_name, static_cast<int>(row.role), row.password_hash);
  if (row.disabled || row.first_until.has_value()) putAccount(row);
}

template <typename Session>
void SqlHubTransaction<Session>::putAccount(const AccountRow& row) {
  m_db.run(
      "UPDATE account SET display_name = ?2, role = ?3, password_hash = ?4, disabled = ?5, "
      "first_until = ?6 WHERE id = ?1",
      row.id, row.display_name, static_cast<int>(row.role), row.password_hash, row.disabled ? 1 : 0,
      row.first_until.has_value() ? micros(*row.first_until) : 0);
}

template <typename Session>
std::optional<SecondFactorRow> SqlHubTransaction<Session>::secondFactor(const std::string& account_id) {
  auto rows =
      m_db.query("SELECT secret, confirmed, last_step FROM second_factor WHERE account_id = ?", account_id);
  if (!rows.next()) return std::nullopt;
  return SecondFactorRow{rows.text(0), rows.number(1) != 0, static_cast<std::uint64_t>(rows.number(2))};
}

template <typename Session>
void SqlHubTransaction<Session>::putSecondFactor(const std::string& account_id, const SecondFactorRow& row) {
  m_db.run(
      "INSERT INTO second_factor (account_id, secret, confirmed, last_step) VALUES (?, ?, ?, ?) "
      "ON CONFLICT (account_id) DO UPDATE SET secret = excluded.secret, confirmed = excluded.confirmed, "
      "last_step = excluded.last_step",
      account_id, Blob{row.secret}, row.confirmed ? 1 : 0, row.last_step);
}

template <typename Session>
bool SqlHubTransaction<Session>::dropSecondFactor(const std::string& account_id) {
  return m_db.run("DELETE FROM second_factor WHERE account_id = ?", account_id) == 1;
}

template <typename Session>
void SqlHubTransaction<Session>::addSession(const std::string& token_sha256, const SessionRow& row) {
  m_db.run(
      "INSERT INTO session (token_sha256, account_id, ends_at, last_used, limited) VALUES (?, ?, ?, ?, ?)",
      Blob{token_sha256}, row.account_id, micros(row.ends_at), micros(row.last_used), row.limited ? 1 : 0);
}

template <typename Session>
std::optional<SessionRow> SqlHubTransaction<Session>::session(const std::string& token_sha256) {
  auto rows = m_db.query("SELECT account_id, ends_at, last_used, limited FROM session WHERE token_sha256 = ?",
                         Blob{token_sha256});
  if (!rows.next()) return std::nullopt;
  return SessionRow{rows.text(0), absl::FromUnixMicros(rows.number(1)), absl::FromUnixMicros(rows.number(2)),
                    rows.number(3) != 0};
}

template <typename Session>
void SqlHubTransaction<Session>::noteSessionUse(const std::string& token_sha256, absl::Time at) {
  m_db.run("UPDATE session SET last_used = ?2 WHERE token_sha256 = ?1", Blob{token_sha256}, micros(at));
}

template <typename Session>
void SqlHubTransaction<Session>::setSessionLimited(const std::string& token_sha256, bool limited) {
  m_db.run("UPDATE session SET limited = ?2 WHERE token_sha256 = ?1", Blob{token_sha256}, limited ? 1 : 0);
}

template <typename Session>
void SqlHubTransaction<Session>::endSession(const std::string& token_sha256) {
  m_db.run("DELETE FROM session WHERE token_sha256 = ?", Blob{token_sha256});
}

template <typename Session>
std::vector<std::string> SqlHubTransaction<Session>::endSessionsOf(const std::string& account_id,
                                                                   const std::string& kept) {
  std::vector<std::string> ended;
  {
    auto rows = m_db.query("SELECT token_sha256 FROM session WHERE account_id = ? AND token_sha256 <> ?",
                           account_id, Blob{kept});
    while (rows.next()) ended.push_back(rows.text(0));
  }
  m_db.run("DELETE FROM session WHERE account_id = ? AND token_sha256 <> ?", account_id, Blob{kept});
  return ended;
}

template <typename Session>
void SqlHubTransaction<Session>::dropSessions(absl::Time ended_by) {
  m_db.run("DELETE FROM session WHERE ends_at <= ?", micros(ended_by));
}

template <typename Session>
std::optional<AuditRow> SqlHubTransaction<Session>::lastAudit() {
  auto rows = m_db.query("SELECT n, entry, hash FROM audit ORDER BY n DESC LIMIT 1");
  if (!rows.next()) return std::nullopt;
  return AuditRow{static_cast<std::uint64_t>(rows.number(0)), rows.text(1), rows.text(2)};
}

template <typename Session>
void SqlHubTransaction<Session>::addAudit(const AuditRow& row) {
  m_db.run("INSERT INTO audit (n, entry, hash) VALUES (?, ?, ?)", row.n, row.entry, Blob{row.hash});
}

template <typename Session>
std::vector<AuditRow> SqlHubTransaction<Session>::auditAfter(std::uint64_t n, std::uint32_t limit) {
  return auditRows(m_db.query("SELECT n, entry, hash FROM audit WHERE n > ? ORDER BY n LIMIT ?", n, limit));
}

template <typename Session>
std::vector<AuditRow> SqlHubTransaction<Session>::auditBefore(std::uint64_t n, std::uint32_t limit) {
  return auditRows(
      m_db.query("SELECT n, entry, hash FROM audit WHERE n < ? ORDER BY n DESC LIMIT ?", n, limit));
}

// The members of this file, for both engines.
template class SqlHubTransaction<Database>;
template class SqlHubTransaction<PgSession>;

}  // namespace newel
