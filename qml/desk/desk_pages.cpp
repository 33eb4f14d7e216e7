// DeskModel: which page follows which.
#include <algorithm>

#include "qml/desk/desk_model.h"

namespace newel::desk {

// Pages that nothing lies before: where a role begins, and what has to be done first.
bool DeskModel::canGoBack() const {
  if (m_page == OwnAccountPage) return !m_own_account.hasDuties();
  return m_page != SignInPage && m_page != home();
}

QString DeskModel::backWords() const {
  const Page from = m_page == AccessPage ? m_access_from : m_page == AuditPage ? m_audit_from : m_page;
  switch (from) {
    case PersonEditPage:
      return m_form.isNew() ? tr("Caseload") : tr("Person");
    case SignPage:
      return tr("Programme");
    case ProgrammePage:
    case PairingPage:
    case DonePage:
    case HoldPage:
    case MeasuresPage:
    case TimelinePage:
    case ProgressPage:
    case DocumentsPage:
      return tr("Person");
    case ManyPage:
      return m_many_from == PersonPage ? tr("Person") : tr("Caseload");
    case FindPage:
      if (m_page == AccessPage) return tr("Find a person");
      [[fallthrough]];
    default:
      if (m_page == AccessPage || (m_page == AuditPage && m_audit_from == PersonPage)) return tr("Person");
      return maySeeRecords() ? tr("Caseload") : tr("Accounts");
  }
}

void DeskModel::openPerson(const QString& person_id) {
  show(PersonPage);
  m_person.open(person_id.toStdString());
}

void DeskModel::openNewPerson() {
  m_form.beginNew();
  m_import.forget();
  show(PersonEditPage);
}

void DeskModel::openRecord() {
  if (!m_person.loaded()) return;
  m_form.beginChange(*m_person.file());
  m_import.forget();
  show(PersonEditPage);
}

void DeskModel::openProgramme() {
  if (!m_person.loaded()) return;
  m_draft.begin(m_person.file());
  m_start.begin();
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
  m_remarks.show(m_person.file());
  show(DonePage);
}

void DeskModel::openHold() {
  if (!m_person.loaded()) return;
  m_hold.beginHold(m_person.file());
  show(HoldPage);
}

void DeskModel::openMeasures() {
  if (!m_person.loaded()) return;
  m_measures.begin(m_person.file());
  show(MeasuresPage);
}

void DeskModel::openTimeline() {
  if (!m_person.loaded()) return;
  m_timeline.show(m_person.file());
  show(TimelinePage);
}

void DeskModel::openDocuments() {
  if (!m_person.loaded()) return;
  m_documents.begin(m_person.file());
  show(DocumentsPage);
}

void DeskModel::openReport() {
  if (!m_person.loaded()) return;
  m_done.show(m_person.file());
  m_documents.beginReport(m_person.file(), m_done.first(),
                          std::min(m_done.last(), todayOf(*m_person.file(), m_context.now())));
  show(DocumentsPage);
}

void DeskModel::openMany(bool hold) {
  if (!m_signed_in || !mayWrite()) return;
  const auto people = m_caseload.chosen();
  if (people.empty()) return;
  m_many.begin(people, hold);
  m_many_from = CaseloadPage;
  show(ManyPage);
}

void DeskModel::openWriteTo() {
  if (!m_person.loaded() || !mayWrite()) return;
  m_many.begin({{m_person.id(), m_person.name(), m_person.limbs()}}, false);
  m_many_from = PersonPage;
  show(ManyPage);
}

void DeskModel::openProgress() {
  if (!m_person.loaded()) return;
  m_progress.show(m_person.file());
  show(ProgressPage);
}

void DeskModel::draftFromProgress() {
  if (!m_person.loaded() || !mayWrite()) return;
  m_draft.begin(m_person.file());
  m_draft.beginWith(m_progress.follow(m_draft.startingPoint()));
  m_start.begin();
  show(ProgrammePage);
}

void DeskModel::openOwnExercises() {
  if (!m_signed_in) return;
  m_own.begin();
  show(OwnExercisePage);
}

void DeskModel::openClinicSettings() {
  if (!m_signed_in) return;
  m_clinic_settings.begin();
  m_clinic_settings.readBackup();
  show(ClinicSettingsPage);
}

void DeskModel::goHome() {
  if (!canGoBack()) return;
  if (home() == AccountsPage) m_accounts.begin();
  show(home());
}

void DeskModel::openOwnAccount() {
  if (m_signed_in && m_page != OwnAccountPage) show(OwnAccountPage);
}

void DeskModel::openAccounts() {
  if (!m_signed_in || m_page == AccountsPage) return;
  show(AccountsPage);
  m_accounts.begin();
}

void DeskModel::openAudit() {
  if (!m_signed_in || m_page == AuditPage) return;
  m_audit_from = home();
  show(AuditPage);
  m_audit.begin("", QString());
}

void DeskModel::openPersonAudit() {
  if (!m_person.loaded()) return;
  m_audit_from = PersonPage;
  show(AuditPage);
  m_audit.begin(m_person.id(), m_person.name());
}

void DeskModel::openFind() {
  if (!m_signed_in) return;
  m_find.begin();
  show(FindPage);
}

void DeskModel::openAccess() {
  if (!m_person.loaded()) return;
  m_access_from = PersonPage;
  show(AccessPage);
  m_access.begin(m_person.id(), m_person.name());
}

void DeskModel::openFoundAccess(const QString& person_id) {
  if (m_page != FindPage) return;
  m_access_from = FindPage;
  show(AccessPage);
  m_access.begin(person_id.toStdString(), m_find.nameOf(person_id));
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
      checkOpening();
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
    case MeasuresPage:
    case TimelinePage:
    case ProgressPage:
    case DocumentsPage:
      show(PersonPage);
      break;
    case OwnExercisePage:
      if (m_own.writing()) {
        m_own.close();
      } else {
        show(CaseloadPage);
      }
      break;
    case ManyPage:
      if (m_many.begun()) m_caseload.setChoosing(false);  // it is sent: the next choice begins anew
      show(m_many_from);
      if (m_many_from == PersonPage) m_person.reload();
      break;
    case ClinicSettingsPage:
    case OwnAccountPage:
    case FindPage:
      goHome();
      break;
    case AccountsPage:
      if (m_accounts.writing()) {
        m_accounts.close();
      } else if (canGoBack()) {
        goHome();
      }
      break;
    case AuditPage:
      show(m_audit_from);
      break;
    case AccessPage:
      show(m_access_from);
      break;
    case SignInPage:
    case CaseloadPage:
      break;
  }
}

}  // namespace newel::desk
