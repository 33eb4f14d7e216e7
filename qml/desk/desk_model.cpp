#include "qml/desk/desk_model.h"

#include <QtCore/QDir>
#include <QtCore/QMetaEnum>
#include <QtCore/QStandardPaths>

#include "core/time/local_day.h"
#include "qml/desk/problem_words.h"
#include "qml/desk/sheets.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr int kCheckSessionMs = 5000;
// Standards ask for 20 s at least; this is time to finish a sentence and sign in again.
constexpr absl::Duration kWarnBefore = absl::Minutes(2);

}  // namespace

DeskModel::DeskModel(DeskContext& context, const DeskSettings& settings, const QString& banner,
                     QObject* parent)
    : QObject(parent),
      m_context(context),
      m_settings(settings),
      m_banner(banner),
      m_sign_in(context),
      m_caseload(context),
      m_person(context),
      m_form(context),
      m_draft(context),
      m_entry(m_draft, context),
      m_media(m_draft, context),
      m_preview(m_draft, context),
      m_pairing(context),
      m_done(context),
      m_hold(context),
      m_content(context),
      m_own(context, m_content),
      m_clinic_settings(context, m_content),
      m_sheets_folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)) {
  m_sign_in.setAddress(settings.address);
  m_sign_in.setFingerprint(settings.fingerprint);
  m_sign_in.setPins(settings.pins);
  m_sign_in.setUserName(settings.user_name);
  m_session_check.setInterval(kCheckSessionMs);
  connect(&m_session_check, &QTimer::timeout, this, &DeskModel::checkSession);
  connect(&m_sign_in, &SignInModel::signedIn, this, &DeskModel::signedInAs);
  connect(&m_caseload, &CaseloadModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_person, &PersonModel::sessionEnded, this, &DeskModel::sessionEnded);
  connect(&m_person, &PersonModel::fileChanged, this, &DeskModel::gotFile);
  connect(&m_person, &PersonModel::sent, this, [this] { say(tr("Message sent.")); });
  connect(&m_form, &PersonFormModel::saved, this, [this](const QString& person_id) {
    openPerson(person_id);
    say(tr("Record saved."));
  });
  connect(&m_draft, &DraftModel::signedAs, this, [this](int number) {
    show(PersonPage);
    m_person.reload();
    say(tr("Programme %1 is signed and on its way to the phone.").arg(number));
  });
  connect(&m_hold, &HoldModel::sent, this, [this] {
    const bool lifted = m_hold.lifting();
    show(PersonPage);
    m_person.reload();
    say(lifted ? tr("The hold is lifted.")
               : tr("The hold order is sent. It counts when it shows as arrived."));
  });
  connect(&m_own, &OwnExerciseModel::saved, this,
          [this](const QString& title) { say(tr("Kept: %1. It is in the catalogue now.").arg(title)); });
  connect(&m_clinic_settings, &ClinicSettingsModel::saved, this,
          [this] { say(tr("Settings saved. Phones get them when they next reach the hub.")); });
  connect(m_context.worker, &HubWorker::busyChanged, this, &DeskModel::busyChanged);
  connect(m_context.worker, &HubWorker::nudged, this, [this](const QString& person_id) {
    if (person_id.isEmpty() && m_signed_in) readLibrary();  // anybody's: it may be the clinic's own
    m_caseload.nudge(person_id.toStdString());
    m_person.nudge(person_id.toStdString());
  });
}

void DeskModel::show(Page page) {
  if (m_page == ProgrammePage || m_page == SignPage) m_draft.keepNow();
  if (m_page == PairingPage && page != PairingPage) m_pairing.end();
  m_news.clear();
  m_sheet_problem.clear();
  emit newsChanged();
  if (m_page == page) return;
  m_page = page;
  emit pageChanged();
}

void DeskModel::say(const QString& words) {
  m_news = words;
  emit newsChanged();
}

QString DeskModel::pageName() const {
  return QString::fromLatin1(QMetaEnum::fromType<Page>().valueToKey(m_page));
}

QString DeskModel::backWords() const {
  if (m_page == PersonPage || m_page == OwnExercisePage || m_page == ClinicSettingsPage ||
      (m_page == PersonEditPage && m_form.isNew()))
    return tr("Caseload");
  return m_page == SignPage ? tr("Programme") : tr("Person");
}

QString DeskModel::therapistName() const { return print::text(m_context.therapist.display_name()); }
QString DeskModel::clinicName() const { return print::text(m_context.clinic.name()); }

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
  m_context.therapist = reply.therapist();
  m_context.clinic = reply.clinic();
  m_context.hub_ahead = toTime(reply.hub_time()) - m_context.now();
  m_session_deadline = m_context.clock->elapsed() + (toTime(reply.ends_at()) - toTime(reply.hub_time()));
  m_signed_in = true;
  m_session_words.clear();
  m_session_check.start();
  m_settings.address = m_sign_in.address().trimmed();
  m_settings.fingerprint = m_sign_in.fingerprint().trimmed();
  takePins(reply);
  m_settings.user_name = m_sign_in.userName().trimmed();
  saveSettings(m_context.data_folder, m_settings);
  m_context.worker->run(
      this, tr("Listening to the hub"),
      [worker = m_context.worker](DeskClient*) {
        worker->watch();
        return true;
      },
      [](bool) {});
  m_content.takeSettings(reply.clinic().settings());
  readLibrary();
  m_sign_in.say(QString());
  m_caseload.reload();
  show(CaseloadPage);
  emit sessionChanged();
}

// What the clinic has written and set. A desk that could not read it works with what it had.
void DeskModel::readLibrary() {
  struct Library {
    absl::StatusOr<std::vector<v1::OwnExercise>> own;
    absl::StatusOr<v1::ClinicCard> clinic;
  };
  m_context.worker->run(
      this, tr("Reading the clinic's exercises"),
      [](DeskClient* client) -> Library {
        const absl::Status none = absl::UnauthenticatedError("not signed in");
        if (client == nullptr) return {none, none};
        return {client->ownExercises(), client->clinic()};
      },
      [this](const Library& library) {
        if (library.own.ok()) m_content.takeOwn(*library.own);
        if (library.clinic.ok()) {
          m_context.clinic = *library.clinic;
          m_content.takeSettings(library.clinic->settings());
        }
        emit m_own.changed();
        if (m_page != ClinicSettingsPage) m_clinic_settings.begin();
      },
      HubWorker::Turn::Later);
}

void DeskModel::sessionEnded() {
  if (!m_signed_in) return;
  m_signed_in = false;
  m_session_check.stop();
  m_session_words.clear();
  m_context.worker->dropLater();
  show(SignInPage);
  m_caseload.clear();
  m_person.close();
  m_context.therapist.Clear();
  m_content.forget();
  m_sign_in.say(tr("Your sign-in has ended. Sign in again; drafts are kept on this desk."));
  emit sessionChanged();
}

void DeskModel::checkSession() {
  const absl::Duration left = m_session_deadline - m_context.clock->elapsed();
  if (left <= absl::ZeroDuration()) {
    sessionEnded();
    return;
  }
  const QString words =
      left > kWarnBefore ? QString()
                         : tr("Your sign-in ends in %1 s. Sign out and in again to go on; drafts are kept.")
                               .arg(absl::ToInt64Seconds(left));
  if (words == m_session_words) return;
  m_session_words = words;
  emit sessionChanged();
}

void DeskModel::signOut() {
  m_context.worker->dropLater();
  show(SignInPage);
  m_signed_in = false;
  m_session_check.stop();
  m_session_words.clear();
  m_caseload.clear();
  m_person.close();
  m_context.therapist.Clear();
  m_content.forget();
  m_context.worker->run(
      this, tr("Signing out"),
      [worker = m_context.worker](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::OkStatus();
        client->stopWatching();
        absl::Status status = client->signOut();
        worker->useClient(nullptr);
        return status;
      },
      [this](const absl::Status& status) {
        m_sign_in.say(status.ok()
                          ? tr("You are signed out.")
                          : tr("You are signed out here; the hub was not reached and ends it by itself."));
      });
  emit sessionChanged();
}

void DeskModel::gotFile() {
  const auto file = m_person.file();
  if (m_page == PairingPage) m_pairing.follow(*file);
  if (m_page == DonePage) m_done.show(file);
  if (m_page == ProgrammePage || m_page == SignPage) m_draft.follow(file);
}

void DeskModel::openPerson(const QString& person_id) {
  show(PersonPage);
  m_person.open(person_id.toStdString());
}

void DeskModel::openNewPerson() {
  m_form.beginNew();
  show(PersonEditPage);
}

void DeskModel::openRecord() {
  if (!m_person.loaded()) return;
  m_form.beginChange(*m_person.file());
  show(PersonEditPage);
}

void DeskModel::openProgramme() {
  if (!m_person.loaded()) return;
  m_draft.begin(m_person.file());
  show(ProgrammePage);
}

void DeskModel::openSign() {
  if (m_page == ProgrammePage) show(SignPage);
}

void DeskModel::openPairing() {
  if (!m_person.loaded()) return;
  m_pairing.begin(*m_person.file());
  show(PairingPage);
}

void DeskModel::openDone() {
  if (!m_person.loaded()) return;
  m_done.show(m_person.file());
  show(DonePage);
}

void DeskModel::openHold() {
  if (!m_person.loaded()) return;
  m_hold.beginHold(m_person.file());
  show(HoldPage);
}

void DeskModel::openOwnExercises() {
  if (!m_signed_in) return;
  m_own.begin();
  show(OwnExercisePage);
}

void DeskModel::openClinicSettings() {
  if (!m_signed_in) return;
  m_clinic_settings.begin();
  show(ClinicSettingsPage);
}

void DeskModel::openLift(const QString& hold_id) {
  if (!m_person.loaded()) return;
  m_hold.beginLift(m_person.file(), hold_id.toStdString());
  show(HoldPage);
}

void DeskModel::back() {
  switch (m_page) {
    case PersonPage:
      show(CaseloadPage);
      m_person.close();
      m_caseload.reload();
      break;
    case PersonEditPage:
      show(m_form.isNew() ? CaseloadPage : PersonPage);
      break;
    case SignPage:
      show(ProgrammePage);
      break;
    case ProgrammePage:
    case PairingPage:
    case DonePage:
    case HoldPage:
      show(PersonPage);
      break;
    case OwnExercisePage:
      if (m_own.writing()) {
        m_own.close();
      } else {
        show(CaseloadPage);
      }
      break;
    case ClinicSettingsPage:
      show(CaseloadPage);
      break;
    case SignInPage:
    case CaseloadPage:
      break;
  }
}

QString DeskModel::sheetFile(const QString& kind) {
  QDir().mkpath(m_sheets_folder);
  QString name = m_person.name();
  for (QChar& c : name) c = c.isLetterOrNumber() ? c.toLower() : QLatin1Char('-');
  return QDir(m_sheets_folder).filePath(QStringLiteral("newel-%1-%2.pdf").arg(kind, name));
}

void DeskModel::saveHandout(bool large_print) {
  if (!m_person.loaded()) return;
  const QString file = sheetFile(large_print ? QStringLiteral("handout-large") : QStringLiteral("handout"));
  const auto pages = saveHandoutSheet(*m_person.file(), m_context, large_print, file);
  m_sheet_problem = problemWords(pages.status(), tr("make the handout"));
  m_news = pages.ok() ? tr("Handout of %1 pages saved: %2").arg(*pages).arg(file) : QString();
  emit newsChanged();
}

void DeskModel::saveReport() {
  if (!m_person.loaded()) return;
  m_done.show(m_person.file());
  const QString file = sheetFile(QStringLiteral("report"));
  const auto pages =
      saveReportSheet(*m_person.file(), m_context, m_done.first(),
                      std::min(m_done.last(), todayOf(*m_person.file(), m_context.now())), file);
  m_sheet_problem = problemWords(pages.status(), tr("make the report"));
  m_news = pages.ok() ? tr("Report of %1 pages saved: %2").arg(*pages).arg(file) : QString();
  emit newsChanged();
}

void DeskModel::keepLook(int text_percent, bool dark) {
  m_settings.text_percent = text_percent;
  m_settings.dark = dark;
  m_settings.look_chosen = true;
  saveSettings(m_context.data_folder, m_settings);
}

QJsonObject DeskModel::facts() const {
  return {{QStringLiteral("page"), pageName()},
          {QStringLiteral("signed_in"), m_signed_in},
          {QStringLiteral("idle"), m_context.worker->idle()},
          {QStringLiteral("loading"), m_caseload.loading()},
          {QStringLiteral("people"), m_caseload.total()},
          {QStringLiteral("person"), m_person.loaded() ? m_person.name() : QString()},
          {QStringLiteral("person_id"),
           m_person.loaded() ? QString::fromStdString(m_person.file()->person.id()) : QString()},
          {QStringLiteral("programmes"), m_person.programmes().size()},
          {QStringLiteral("practices"),
           m_person.loaded() ? static_cast<int>(m_person.file()->practices.size()) : 0},
          {QStringLiteral("may_sign"), m_draft.file() != nullptr && m_draft.maySign()},
          {QStringLiteral("entries"), m_draft.programme().entries_size()},
          {QStringLiteral("typed_code"), m_pairing.typedCode()},
          {QStringLiteral("pairing_address"), m_pairing.address()},
          {QStringLiteral("qr_text"), m_pairing.qrText()},
          {QStringLiteral("news"), m_news}};
}

}  // namespace newel::desk
