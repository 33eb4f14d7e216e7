// The desk as a whole: which page shows, who is signed in and for how long, what is under way.
// Each page has a view model of its own; this one only leads between them.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QDir>
#include <QtCore/QJsonObject>
#include <QtCore/QObject>
#include <QtCore/QTimer>

#include "qml/desk/access_model.h"
#include "qml/desk/accounts_model.h"
#include "qml/desk/audit_model.h"
#include "qml/desk/caseload_model.h"
#include "qml/desk/clinic_settings_model.h"
#include "qml/desk/desk_content.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/desk_lock.h"
#include "qml/desk/desk_settings.h"
#include "qml/desk/documents_model.h"
#include "qml/desk/done_model.h"
#include "qml/desk/draft_model.h"
#include "qml/desk/entry_media_model.h"
#include "qml/desk/entry_model.h"
#include "qml/desk/find_model.h"
#include "qml/desk/hold_model.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/import_model.h"
#include "qml/desk/many_model.h"
#include "qml/desk/measures_model.h"
#include "qml/desk/next_step_model.h"
#include "qml/desk/own_account_model.h"
#include "qml/desk/own_exercise_model.h"
#include "qml/desk/pairing_model.h"
#include "qml/desk/person_form_model.h"
#include "qml/desk/person_model.h"
#include "qml/desk/preview_model.h"
#include "qml/desk/progress_model.h"
#include "qml/desk/remarks_model.h"
#include "qml/desk/sign_in_model.h"
#include "qml/desk/start_model.h"
#include "qml/desk/timeline_model.h"
#include "qml/desk/wear_draft_model.h"

namespace newel::desk {

class DeskModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(Page page READ page NOTIFY pageChanged)
  Q_PROPERTY(QString pageName READ pageName NOTIFY pageChanged)  // of its QML file
  Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY pageChanged)
  Q_PROPERTY(QString backWords READ backWords NOTIFY pageChanged)
  Q_PROPERTY(bool signedIn READ signedIn NOTIFY sessionChanged)
  Q_PROPERTY(QString therapistName READ therapistName NOTIFY sessionChanged)
  Q_PROPERTY(QString clinicName READ clinicName NOTIFY sessionChanged)
  Q_PROPERTY(QString sessionWords READ sessionWords NOTIFY sessionChanged)  // near its end only
  // While somebody else's record is open by a written reason: until when; empty otherwise.
  Q_PROPERTY(QString openedWords READ openedWords NOTIFY openedChanged)
  Q_PROPERTY(bool mayManage READ mayManage NOTIFY sessionChanged)      // accounts and assignments
  Q_PROPERTY(bool maySeeAudit READ maySeeAudit NOTIFY sessionChanged)  // the audit trail
  Q_PROPERTY(bool maySeeRecords READ maySeeRecords NOTIFY sessionChanged)
  Q_PROPERTY(bool mayWrite READ mayWrite NOTIFY sessionChanged)  // in records: not an auditor
  Q_PROPERTY(QString busyWords READ busyWords NOTIFY busyChanged)
  Q_PROPERTY(QString banner READ banner CONSTANT)
  // The other language of this desk by its own name, and itself: one press changes to it. Before signing in
  // only, so that no half of a page stays in the former one.
  Q_PROPERTY(QString otherLanguage READ otherLanguage NOTIFY languageChanged)
  Q_PROPERTY(QString news READ news NOTIFY newsChanged)  // what just went well, until the next page
  Q_PROPERTY(newel::desk::SignInModel* signIn READ signInModel CONSTANT)
  Q_PROPERTY(newel::desk::CaseloadModel* caseload READ caseload CONSTANT)
  Q_PROPERTY(newel::desk::PersonModel* person READ person CONSTANT)
  Q_PROPERTY(newel::desk::PersonFormModel* form READ form CONSTANT)
  Q_PROPERTY(newel::desk::ImportModel* importing READ importing CONSTANT)
  Q_PROPERTY(newel::desk::DraftModel* draft READ draft CONSTANT)
  Q_PROPERTY(newel::desk::StartModel* start READ start CONSTANT)
  Q_PROPERTY(newel::desk::WearDraftModel* wear READ wear CONSTANT)
  Q_PROPERTY(newel::desk::EntryModel* entry READ entry CONSTANT)
  Q_PROPERTY(newel::desk::NextStepModel* nextStep READ nextStep CONSTANT)
  Q_PROPERTY(newel::desk::EntryMediaModel* media READ media CONSTANT)
  Q_PROPERTY(newel::desk::PreviewModel* preview READ preview CONSTANT)
  Q_PROPERTY(newel::desk::PairingModel* pairing READ pairing CONSTANT)
  Q_PROPERTY(newel::desk::DoneModel* done READ done CONSTANT)
  Q_PROPERTY(newel::desk::DocumentsModel* documents READ documents CONSTANT)
  Q_PROPERTY(newel::desk::TimelineModel* timeline READ timeline CONSTANT)
  Q_PROPERTY(newel::desk::MeasuresModel* measures READ measures CONSTANT)
  Q_PROPERTY(newel::desk::ProgressModel* progress READ progress CONSTANT)
  Q_PROPERTY(newel::desk::RemarksModel* remarks READ remarks CONSTANT)
  Q_PROPERTY(newel::desk::HoldModel* hold READ hold CONSTANT)
  Q_PROPERTY(newel::desk::ManyModel* many READ many CONSTANT)
  Q_PROPERTY(newel::desk::OwnExerciseModel* ownExercises READ ownExercises CONSTANT)
  Q_PROPERTY(newel::desk::ClinicSettingsModel* clinicSettings READ clinicSettings CONSTANT)
  Q_PROPERTY(newel::desk::DeskLock* lock READ lock CONSTANT)
  Q_PROPERTY(newel::desk::OwnAccountModel* ownAccount READ ownAccount CONSTANT)
  Q_PROPERTY(newel::desk::AccountsModel* accounts READ accounts CONSTANT)
  Q_PROPERTY(newel::desk::AuditModel* audit READ audit CONSTANT)
  Q_PROPERTY(newel::desk::FindModel* find READ find CONSTANT)
  Q_PROPERTY(newel::desk::AccessModel* access READ access CONSTANT)

 public:
  enum Page {
    SignInPage,
    CaseloadPage,
    PersonPage,
    PersonEditPage,
    ProgrammePage,
    SignPage,
    PairingPage,
    DonePage,
    HoldPage,
    MeasuresPage,
    TimelinePage,
    ProgressPage,
    DocumentsPage,
    ManyPage,
    OwnExercisePage,
    ClinicSettingsPage,
    OwnAccountPage,
    AccountsPage,
    AuditPage,
    FindPage,
    AccessPage
  };
  Q_ENUM(Page)

  DeskModel(DeskContext& context, const DeskSettings& settings, const QString& banner,
            QObject* parent = nullptr);

  Page page() const { return m_page; }
  QString pageName() const;
  bool canGoBack() const;
  QString backWords() const;
  bool signedIn() const { return m_signed_in; }
  QString therapistName() const;
  QString clinicName() const;
  QString sessionWords() const { return m_session_words; }
  QString openedWords() const { return m_opened_words; }
  bool mayManage() const { return m_accounts.mayChange(); }
  bool maySeeAudit() const;
  bool maySeeRecords() const { return m_context.therapist.role() != v1::ROLE_ADMINISTRATOR; }
  bool mayWrite() const;
  QString busyWords() const;
  QString banner() const { return m_banner; }
  QString news() const { return m_news; }
  SignInModel* signInModel() { return &m_sign_in; }
  CaseloadModel* caseload() { return &m_caseload; }
  PersonModel* person() { return &m_person; }
  PersonFormModel* form() { return &m_form; }
  ImportModel* importing() { return &m_import; }
  DraftModel* draft() { return &m_draft; }
  StartModel* start() { return &m_start; }
  WearDraftModel* wear() { return &m_wear; }
  EntryModel* entry() { return &m_entry; }
  NextStepModel* nextStep() { return &m_next_step; }
  EntryMediaModel* media() { return &m_media; }
  PreviewModel* preview() { return &m_preview; }
  PairingModel* pairing() { return &m_pairing; }
  DoneModel* done() { return &m_done; }
  DocumentsModel* documents() { return &m_documents; }
  MeasuresModel* measures() { return &m_measures; }
  TimelineModel* timeline() { return &m_timeline; }
  ProgressModel* progress() { return &m_progress; }
  RemarksModel* remarks() { return &m_remarks; }
  HoldModel* hold() { return &m_hold; }
  ManyModel* many() { return &m_many; }
  OwnExerciseModel* ownExercises() { return &m_own; }
  ClinicSettingsModel* clinicSettings() { return &m_clinic_settings; }
  DeskLock* lock() { return &m_lock; }
  OwnAccountModel* ownAccount() { return &m_own_account; }
  AccountsModel* accounts() { return &m_accounts; }
  AuditModel* audit() { return &m_audit; }
  FindModel* find() { return &m_find; }
  AccessModel* access() { return &m_access; }

  Q_INVOKABLE void openPerson(const QString& person_id);
  Q_INVOKABLE void openNewPerson();
  Q_INVOKABLE void openRecord();
  Q_INVOKABLE void openProgramme();
  Q_INVOKABLE void openSign();
  Q_INVOKABLE void openPairing();
  Q_INVOKABLE void openDone();
  Q_INVOKABLE void openHold();
  Q_INVOKABLE void openMeasures();
  Q_INVOKABLE void openTimeline();
  Q_INVOKABLE void openProgress();
  // The draft of the next programme, with what the rules say is ready or too hard one step further.
  Q_INVOKABLE void draftFromProgress();
  Q_INVOKABLE void openDocuments();
  Q_INVOKABLE void openReport();         // of the weeks that the page of what was done shows
  Q_INVOKABLE void openMany(bool hold);  // to those chosen in the attention list
  Q_INVOKABLE void openWriteTo();        // to the open person, with a photo or a clip
  Q_INVOKABLE void openOwnExercises();
  Q_INVOKABLE void openClinicSettings();
  Q_INVOKABLE void openLift(const QString& hold_id);
  Q_INVOKABLE void openOwnAccount();
  Q_INVOKABLE void openAccounts();
  Q_INVOKABLE void openAudit();        // about everybody
  Q_INVOKABLE void openPersonAudit();  // about the open person
  Q_INVOKABLE void openFind();
  Q_INVOKABLE void openAccess();                               // of the open person
  Q_INVOKABLE void openFoundAccess(const QString& person_id);  // of one that was found
  Q_INVOKABLE void back();
  Q_INVOKABLE void signOut();
  Q_INVOKABLE void lockNow();
  // What the look was changed to.
  Q_INVOKABLE void keepLook(int text_percent, bool dark);

  QString otherLanguage() const;
  Q_INVOKABLE void changeLanguage();

  void setSheetsFolder(const QString& folder) { m_documents.setFolder(QDir(folder).absolutePath()); }
  // For the driver: the page and what the tests wait for.
  QJsonObject facts() const;
  void showForTest(Page page) { show(page); }

 signals:
  void pageChanged();
  void sessionChanged();
  void busyChanged();
  void newsChanged();
  void openedChanged();
  void languageChanged(const QString& language);  // to be shown from now on

 private:
  void connectModels();
  void connectSession();
  void show(Page page);
  void leave(Page page);
  Page home() const;
  void goHome();
  void signedInAs(const v1::SignInReply& reply);
  void takePins(const v1::SignInReply& reply);
  void beginWork();
  void takeSession(const v1::SignInReply& reply);
  void listen();
  void coverDesk(const QString& reason);
  void uncover(const v1::SignInReply& reply);
  void dutiesDone(const QString& words);
  void forgetAll();
  void sessionEnded();
  void checkSession();
  void checkOpening();
  void tellHub();
  void readLibrary();
  void gotFile();
  void say(const QString& words);

  DeskContext& m_context;
  DeskSettings m_settings;
  QString m_banner;
  SignInModel m_sign_in;
  CaseloadModel m_caseload;
  PersonModel m_person;
  PersonFormModel m_form;
  ImportModel m_import;
  DraftModel m_draft;
  StartModel m_start;
  WearDraftModel m_wear;
  EntryModel m_entry;
  NextStepModel m_next_step;
  EntryMediaModel m_media;
  PreviewModel m_preview;
  PairingModel m_pairing;
  DoneModel m_done;
  DocumentsModel m_documents;
  HoldModel m_hold;
  ManyModel m_many;
  MeasuresModel m_measures;
  ProgressModel m_progress;
  RemarksModel m_remarks;
  TimelineModel m_timeline;
  DeskContent m_content;
  OwnExerciseModel m_own;
  ClinicSettingsModel m_clinic_settings;
  DeskLock m_lock;
  OwnAccountModel m_own_account;
  AccountsModel m_accounts;
  AuditModel m_audit;
  FindModel m_find;
  AccessModel m_access;
  Page m_page = SignInPage;
  Page m_access_from = CaseloadPage;  // where back leads from the pages that several lead to
  Page m_audit_from = CaseloadPage;
  Page m_many_from = CaseloadPage;
  bool m_signed_in = false;
  bool m_limited = false;  // until what the hub asks for first is done
  QString m_session_words;
  QString m_opened_words;
  bool m_person_opened = false;
  QString m_news;
  absl::Duration m_session_deadline;  // on the elapsed clock
  QTimer m_session_check;
};

}  // namespace newel::desk
