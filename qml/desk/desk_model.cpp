#include "qml/desk/desk_model.h"

#include <QtCore/QMetaEnum>
#include <QtCore/QStandardPaths>

#include "core/time/local_day.h"
#include "qml/print/record_words.h"

namespace newel::desk {

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
      m_import(context),
      m_draft(context),
      m_start(context, m_draft),
      m_wear(context, m_draft),
      m_entry(m_draft, context),
      m_next_step(m_draft, context),
      m_media(m_draft, context),
      m_preview(m_draft, context),
      m_pairing(context),
      m_done(context),
      m_documents(context),
      m_hold(context),
      m_many(context),
      m_measures(context),
      m_progress(context),
      m_remarks(context),
      m_timeline(context),
      m_content(context),
      m_own(context, m_content),
      m_clinic_settings(context, m_content),
      m_lock(context),
      m_own_account(context),
      m_accounts(context),
      m_audit(context),
      m_find(context),
      m_access(context) {
  m_documents.setFolder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
  m_sign_in.setAddress(settings.address);
  m_sign_in.setFingerprint(settings.fingerprint);
  m_sign_in.setPins(settings.pins);
  m_sign_in.setUserName(settings.user_name);
  connectModels();
  connectSession();
}

void DeskModel::connectModels() {
  connect(&m_person, &PersonModel::fileChanged, this, &DeskModel::gotFile);
  connect(&m_person, &PersonModel::sent, this, [this] { say(tr("Message sent.")); });
  connect(&m_import, &ImportModel::read, this, [this] {
    if (m_page == PersonEditPage && m_form.isNew())
      m_form.take(m_import.import()->identity, m_import.import()->person);
  });
  connect(&m_form, &PersonFormModel::saved, this, [this](const QString& person_id) {
    if (m_import.import() != nullptr) {
      m_start.offer(person_id.toStdString(), m_import.import());
      m_remarks.keepAsked(person_id.toStdString(), *m_import.import());
    }
    m_import.forget();
    openPerson(person_id);
    say(tr("Record saved."));
  });
  connect(&m_draft, &DraftModel::signedAs, this, [this](int number) {
    show(PersonPage);
    m_person.reload();
    say(tr("Programme %1 is signed and on its way to the phone.").arg(number));
  });
  connect(&m_start, &StartModel::kept, this, &DeskModel::say);
  connect(&m_start, &StartModel::libraryChanged, this, &DeskModel::readLibrary);
  connect(&m_measures, &MeasuresModel::saved, &m_person, &PersonModel::reload);
  connect(&m_remarks, &RemarksModel::saved, &m_person, &PersonModel::reload);
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
  connect(&m_accounts, &AccountsModel::saved, this, &DeskModel::say);
  connect(&m_access, &AccessModel::revoked, this,
          [this](const QString& phone) { say(tr("%1 has no access any more.").arg(phone)); });
  connect(&m_find, &FindModel::opened, this, [this](const QString& person_id) {
    if (m_page == FindPage) openPerson(person_id);
  });
  connect(&m_documents, &DocumentsModel::saved, this, &DeskModel::say);
  connect(&m_documents, &DocumentsModel::workChanged, this, &DeskModel::busyChanged);
  connect(m_context.worker, &HubWorker::busyChanged, this, &DeskModel::busyChanged);
  connect(m_context.worker, &HubWorker::nudged, this, [this](const QString& person_id) {
    if (!m_signed_in || m_lock.locked()) return;
    if (person_id.isEmpty()) readLibrary();  // anybody's: it may be the clinic's own
    if (maySeeRecords()) m_caseload.nudge(person_id.toStdString());
    m_person.nudge(person_id.toStdString());
    m_access.nudge(person_id.toStdString());
    m_many.nudge(person_id.toStdString());
  });
}

// What a page does not keep when it is left.
void DeskModel::leave(Page page) {
  if (page == ProgrammePage || page == SignPage) m_draft.keepNow();
  if (page == PairingPage) m_pairing.end();
  if (page == OwnAccountPage) m_own_account.leave();
  if (page == AccountsPage) m_accounts.leave();
  if (page == AuditPage) m_audit.leave();
  if (page == AccessPage) m_access.end();
}

void DeskModel::show(Page page) {
  if (m_page != page) leave(m_page);
  m_news.clear();
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

QString DeskModel::therapistName() const { return print::text(m_context.therapist.display_name()); }
QString DeskModel::clinicName() const { return print::text(m_context.clinic.name()); }

void DeskModel::gotFile() {
  const auto file = m_person.file();
  checkOpening();
  if (m_page == PairingPage) m_pairing.follow(*file);
  if (m_page == DonePage) {
    m_done.show(file);
    m_remarks.show(file);
  }
  if (m_page == MeasuresPage) m_measures.follow(file);
  if (m_page == TimelinePage) m_timeline.show(file);
  if (m_page == ProgressPage) m_progress.show(file);
  if (m_page == DocumentsPage) m_documents.follow(file);
  if (m_page == ProgrammePage || m_page == SignPage) m_draft.follow(file);
}

// What the hub is asked for comes first: it is what somebody waits for.
QString DeskModel::busyWords() const {
  const QString words = m_context.worker->busyWords();
  return words.isEmpty() ? m_documents.makingWords() : words;
}

void DeskModel::keepLook(int text_percent, bool dark) {
  m_settings.text_percent = text_percent;
  m_settings.dark = dark;
  m_settings.look_chosen = true;
  saveSettings(m_context.data_folder, m_settings);
}

QString DeskModel::otherLanguage() const {
  return m_context.language == "es" ? QStringLiteral("English") : QStringLiteral("Español");
}

void DeskModel::changeLanguage() {
  if (m_signed_in || m_page != SignInPage) return;
  m_settings.language = m_context.language == "es" ? QStringLiteral("en") : QStringLiteral("es");
  m_context.language = m_settings.language.toStdString();
  saveSettings(m_context.data_folder, m_settings);
  m_content.forget();
  emit languageChanged(m_settings.language);
}

QJsonObject DeskModel::facts() const {
  return {{QStringLiteral("page"), pageName()},
          {QStringLiteral("signed_in"), m_signed_in},
          {QStringLiteral("locked"), m_lock.locked()},
          {QStringLiteral("opened"), m_opened_words},
          {QStringLiteral("asks_code"), m_sign_in.asksCode() || m_lock.asksCode()},
          {QStringLiteral("first_password"), m_accounts.firstPassword()},
          {QStringLiteral("secret"), m_own_account.secretText()},
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
