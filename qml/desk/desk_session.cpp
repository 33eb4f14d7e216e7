// DeskModel: signing in and out, the session's end, the idle lock, a record that is open for a time.
#include "core/time/local_day.h"
#include "qml/desk/desk_model.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/pairing_ticket.h"

namespace newel::desk {
namespace {

constexpr int kCheckSessionMs = 5000;
// Standards ask for 20 s at least; this is time to finish a sentence and sign in again.
constexpr absl::Duration kWarnBefore = absl::Minutes(2);

}  // namespace

void DeskModel::connectSession() {
  m_session_check.setInterval(kCheckSessionMs);
  connect(&m_session_check, &QTimer::timeout, this, &DeskModel::checkSession);
  connect(&m_sign_in, &SignInModel::signedIn, this, &DeskModel::signedInAs);
  connect(&m_caseload, &CaseloadModel::changed, this, &DeskModel::checkOpening);
  connect(&m_caseload, &CaseloadModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_person, &PersonModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_person, &PersonModel::closedToUs, this, [this] {
    if (!m_signed_in || m_page == SignInPage) return;
    show(home());
    m_person.close();
    checkOpening();
    m_caseload.reload();
    say(tr("That record is not open to you any more. Drafts are kept on this desk."));
  });
  connect(&m_accounts, &AccountsModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_audit, &AuditModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_find, &FindModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_access, &AccessModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_own_account, &OwnAccountModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_own_account, &OwnAccountModel::factorSet, this,
          [this] { dutiesDone(tr("The second factor is in use from the next sign-in on.")); });
  connect(&m_own_account, &OwnAccountModel::passwordSet, this,
          [this] { dutiesDone(tr("The password is changed.")); });
  connect(&m_lock, &DeskLock::due, this, [this] { coverDesk(tr("Nobody touched this desk for a while.")); });
  connect(&m_lock, &DeskLock::stillUsed, this, &DeskModel::tellHub);
  connect(&m_lock, &DeskLock::unlocked, this, &DeskModel::uncover);
  connect(&m_lock, &DeskLock::givenUp, this, [this] {
    const QString nobody;
    signOut();
    m_sign_in.setUserName(nobody);
  });
}

bool DeskModel::maySeeAudit() const {
  const v1::Role role = m_context.therapist.role();
  return role == v1::ROLE_LEAD || role == v1::ROLE_AUDITOR;
}

bool DeskModel::mayWrite() const {
  const v1::Role role = m_context.therapist.role();
  return role == v1::ROLE_LEAD || role == v1::ROLE_THERAPIST;
}

DeskModel::Page DeskModel::home() const {
  if (m_own_account.hasDuties()) return OwnAccountPage;
  return maySeeRecords() ? CaseloadPage : AccountsPage;
}

void DeskModel::takeSession(const v1::SignInReply& reply) {
  m_context.therapist = reply.therapist();
  m_context.clinic = reply.clinic();
  m_context.hub_ahead = toTime(reply.hub_time()) - m_context.now();
  m_session_deadline = m_context.clock->elapsed() + (toTime(reply.ends_at()) - toTime(reply.hub_time()));
  m_session_words.clear();
  m_session_check.start();
  m_content.takeSettings(reply.clinic().settings());
  m_own_account.signedInAs(reply);
  m_lock.watch(m_sign_in.connection());
}

// The hub may show another of its certificates tomorrow: this desk then knows it.
void DeskModel::takePins(const v1::SignInReply& reply) {
  v1::HubPins pins;
  if (!pins.ParseFromString(reply.pins().content()) || pins.certificate_sha256().empty()) return;
  m_settings.pins.clear();
  for (const auto& pin : pins.certificate_sha256())
    m_settings.pins << QString::fromLatin1(QByteArray::fromStdString(pin).toHex());
  m_sign_in.setPins(m_settings.pins);
}

void DeskModel::signedInAs(const v1::SignInReply& reply) {
  m_signed_in = true;
  takeSession(reply);
  m_settings.address = m_sign_in.address().trimmed();
  m_settings.fingerprint = m_sign_in.fingerprint().trimmed();
  takePins(reply);
  m_settings.user_name = m_sign_in.userName().trimmed();
  saveSettings(m_context.data_folder, m_settings);
  m_sign_in.say(QString());
  emit sessionChanged();
  m_limited = m_own_account.hasDuties();
  if (m_limited) {
    show(OwnAccountPage);
  } else {
    beginWork();
  }
}

// From here on the session is good for more than the account's own calls.
void DeskModel::beginWork() {
  listen();
  readLibrary();
  if (maySeeRecords()) {
    m_caseload.reload();
  } else {
    m_accounts.begin();
  }
  show(home());
}

void DeskModel::listen() {
  if (!maySeeRecords()) return;  // what the hub tells is about records
  m_context.worker->run(
      this, tr("Listening to the hub"),
      [worker = m_context.worker](DeskClient*) {
        worker->watch();
        return true;
      },
      [](bool) {});
}

void DeskModel::dutiesDone(const QString& words) {
  if (m_limited && !m_own_account.hasDuties()) {
    m_limited = false;
    beginWork();
  } else {
    emit pageChanged();  // the way back may be open now
  }
  say(words);
}

// What the clinic has written and set. A desk that could not read it works with what it had.
void DeskModel::readLibrary() {
  struct Library {
    absl::StatusOr<std::vector<v1::OwnExercise>> own;
    absl::StatusOr<std::vector<v1::ProgrammeTemplate>> templates;
    absl::StatusOr<v1::ClinicCard> clinic;
  };
  m_context.worker->run(
      this, tr("Reading the clinic's exercises"),
      [records = maySeeRecords()](DeskClient* client) -> Library {
        const absl::Status none = absl::UnauthenticatedError("not signed in");
        if (client == nullptr) return {none, none, none};
        Library library{none, none, client->clinic()};
        if (records) library.own = client->ownExercises();
        if (records) library.templates = client->templates();
        return library;
      },
      [this](const Library& library) {
        if (library.own.ok()) m_content.takeOwn(*library.own);
        if (library.clinic.ok()) {
          m_context.clinic = *library.clinic;
          m_content.takeSettings(library.clinic->settings());
          m_lock.takeSettings();
        }
        // Last, since it looks at the rest; what was there stays where the hub did not answer.
        if (library.templates.ok()) {
          m_start.take(*library.templates);
        } else {
          m_start.refresh();
        }
        emit m_own.changed();
        if (m_page != ClinicSettingsPage) m_clinic_settings.begin();
      },
      HubWorker::Turn::Later);
}

// A session ends at the hub half an hour after the last call; somebody who writes for longer is not gone.
void DeskModel::tellHub() {
  m_context.worker->run(
      this, tr("Staying signed in"),
      [](DeskClient* client) -> absl::Status {
        return client == nullptr ? absl::OkStatus() : client->clinic().status();
      },
      [this](const absl::Status& status) {
        if (absl::IsUnauthenticated(status)) sessionEnded();
      },
      HubWorker::Turn::Later);
}

void DeskModel::lockNow() {
  if (m_signed_in) coverDesk(tr("It was locked with the button or Ctrl and L."));
}

// 1 the draft is on the disk, 2 everything is covered, 3 the session ends at the hub. A crash after any of
// them leaves nothing open: the next start asks for the password.
void DeskModel::coverDesk(const QString& reason) {
  if (!m_signed_in || m_lock.locked()) return;
  if (m_page == ProgrammePage || m_page == SignPage) m_draft.keepNow();
  m_session_check.stop();
  m_session_words.clear();
  m_lock.cover(reason);
  m_caseload.rest();
  m_context.worker->dropLater();
  m_context.worker->run(
      this, tr("Locking"),
      [](DeskClient* client) {
        if (client == nullptr) return false;
        client->stopWatching();
        // Without the hub it ends there by itself, half an hour after its last use.
        client->signOut().IgnoreError();
        return true;
      },
      [](bool) {});
  emit sessionChanged();
}

void DeskModel::uncover(const v1::SignInReply& reply) {
  const bool same = reply.therapist().id() == m_context.therapist.id() &&
                    reply.therapist().role() == m_context.therapist.role() && !reply.must_change_password() &&
                    !reply.must_enrol();
  if (!same) {
    // Another role or somebody else: nothing of what was seen stays.
    forgetAll();
    signedInAs(reply);
    return;
  }
  takeSession(reply);
  listen();
  readLibrary();
  if (maySeeRecords()) m_caseload.reload();
  m_person.reload();
  m_access.nudge("");
  emit sessionChanged();
}

void DeskModel::forgetAll() {
  m_lock.end();
  m_session_check.stop();
  m_session_words.clear();
  m_context.worker->dropLater();
  show(SignInPage);
  m_signed_in = false;
  m_caseload.clear();
  m_person.close();
  m_documents.forget();
  m_many.forget();
  m_find.begin();
  m_own_account.forget();
  m_context.therapist.Clear();
  m_content.forget();
  m_start.take({});
  m_start.offer("", nullptr);
  m_import.forget();
  checkOpening();
}

void DeskModel::sessionEnded() {
  if (!m_signed_in || m_lock.locked()) return;
  coverDesk(tr("Your sign-in has ended at the hub. Sign in again to go on where you were."));
}

void DeskModel::checkSession() {
  checkOpening();
  const absl::Duration left = m_session_deadline - m_context.clock->elapsed();
  if (left <= absl::ZeroDuration()) {
    sessionEnded();
    return;
  }
  const QString words =
      left > kWarnBefore
          ? QString()
          : tr("Your sign-in ends in %1 s; then this desk locks. Nothing you have written is lost.")
                .arg(absl::ToInt64Seconds(left));
  if (words == m_session_words) return;
  m_session_words = words;
  emit sessionChanged();
}

// The bar of records that are open by a written reason, and their end.
void DeskModel::checkOpening() {
  const auto file = m_person.file();
  const absl::Time now = m_context.now() + m_context.hub_ahead;
  const std::string& me = m_context.therapist.id();
  const auto until = file == nullptr ? std::nullopt : openedUntil(*file, me, now);
  const bool over = m_person_opened && file != nullptr && !until;
  m_person_opened = until.has_value();
  QString words;
  if (until) {
    words =
        tr("Opened by your written reason until %1. This is written into the audit trail, and whoever looks "
           "after %2 reads your reason.")
            .arg(print::momentWords(*until, m_context.zone), m_person.name());
  } else if (m_signed_in) {
    const QStringList others = m_caseload.openedWords(me, now);
    if (!others.isEmpty())
      words = tr("Open by your written reason: %1").arg(others.join(QStringLiteral("; ")));
  }
  if (words != m_opened_words) {
    m_opened_words = words;
    emit openedChanged();
  }
  if (over) m_person.reload();  // the hub says whether it is still open to us
}

void DeskModel::signOut() {
  forgetAll();
  m_context.worker->run(
      this, tr("Signing out"),
      [worker = m_context.worker](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::OkStatus();
        client->stopWatching();
        absl::Status status = client->signOut();
        worker->useClient(nullptr);
        // A locked desk has ended its session already.
        return absl::IsUnauthenticated(status) ? absl::OkStatus() : status;
      },
      [this](const absl::Status& status) {
        m_sign_in.say(status.ok()
                          ? tr("You are signed out.")
                          : tr("You are signed out here; the hub was not reached and ends it by itself."));
      });
  emit sessionChanged();
}

}  // namespace newel::desk
