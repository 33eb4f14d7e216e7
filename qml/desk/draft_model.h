// The programme page: the draft, the review that follows every change, undo, signing. Rules and sums are
// core/review's; this shows them and carries changes in.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QTimer>
#include <QtCore/QVariantList>
#include <functional>
#include <memory>

#include "core/review/cert.h"
#include "core/review/programme_fixes.h"
#include "core/review/review.h"
#include "qml/desk/catalogue_list_model.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/entry_list_model.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/person_file.h"
#include "qml/desk/programme_draft.h"

namespace newel::desk {

class DraftModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(newel::desk::EntryListModel* entries READ entries CONSTANT)
  Q_PROPERTY(newel::desk::CatalogueListModel* catalogue READ catalogue CONSTANT)
  Q_PROPERTY(int selected READ selected WRITE select NOTIFY selectedChanged)  // -1: none
  Q_PROPERTY(int number READ number NOTIFY changed)                           // that it will have
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString givenName READ givenName NOTIFY changed)
  Q_PROPERTY(QString limbs READ limbs NOTIFY changed)
  Q_PROPERTY(QString basis READ basis NOTIFY changed)
  Q_PROPERTY(QString notice READ notice NOTIFY changed)  // a draft found again, or one that was overtaken
  Q_PROPERTY(QString effectiveDay READ effectiveDay NOTIFY changed)
  Q_PROPERTY(QString endDay READ endDay NOTIFY changed)
  Q_PROPERTY(QString firstDayWords READ firstDayWords NOTIFY changed)  // "Sat 28 Nov 2026"
  Q_PROPERTY(QString lastDayWords READ lastDayWords NOTIFY changed)
  Q_PROPERTY(QString effectiveDayProblem READ effectiveDayProblem NOTIFY changed)
  Q_PROPERTY(QString endDayProblem READ endDayProblem NOTIFY changed)
  Q_PROPERTY(QString advice READ advice NOTIFY changed)
  // {id, title, why, sent, days, note} of every card of advice there is.
  Q_PROPERTY(QVariantList cards READ cards NOTIFY changed)
  Q_PROPERTY(int painStop READ painStop NOTIFY changed)
  Q_PROPERTY(int painRise READ painRise NOTIFY changed)
  Q_PROPERTY(QVariantList minutes READ minutes NOTIFY changed)  // Monday first
  Q_PROPERTY(QString minutesWords READ minutesWords NOTIFY changed)
  Q_PROPERTY(
      QVariantList findings READ findings NOTIFY changed)  // of the whole, findingList() and "fixes": {text}
  Q_PROPERTY(QVariantMap reasons READ reasons NOTIFY changed)  // rule id: written reason
  Q_PROPERTY(QStringList changes READ changes NOTIFY changed)
  Q_PROPERTY(QString changesBrief READ changesBrief NOTIFY changed)  // the first of them, a line each
  // Effort x minutes of the last weeks, as the person rated them; empty: nothing was practised.
  Q_PROPERTY(QString loadWords READ loadWords NOTIFY changed)
  // What a report of this programme would lack (CERT): {words, lacks, row}; row: of the entry, -1: of the
  // whole.
  Q_PROPERTY(QVariantList reportLacks READ reportLacks NOTIFY changed)
  Q_PROPERTY(QString reportWords READ reportWords NOTIFY changed)
  Q_PROPERTY(QString changesForPerson READ changesForPerson NOTIFY changed)
  Q_PROPERTY(bool maySign READ maySign NOTIFY changed)
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)  // empty when it may be signed
  Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
  Q_PROPERTY(bool canRedo READ canRedo NOTIFY changed)
  Q_PROPERTY(bool signing READ signing NOTIFY changed)
  Q_PROPERTY(QString signProblem READ signProblem NOTIFY changed)
  Q_PROPERTY(QString saveProblem READ saveProblem NOTIFY changed)

 public:
  explicit DraftModel(DeskContext& context, QObject* parent = nullptr);
  ~DraftModel() override;

  // Takes up the draft kept for this person, or begins one from the last programme.
  void begin(std::shared_ptr<const PersonFile> file);
  // The hub knows something newer; the draft stays, its basis follows.
  void follow(std::shared_ptr<const PersonFile> file);
  void keepNow();  // writes what waits to be written

  EntryListModel* entries() { return &m_entries; }
  CatalogueListModel* catalogue() { return &m_catalogue; }
  int selected() const { return m_selected; }
  void select(int row);
  int number() const { return static_cast<int>(m_draft.baseNumber()) + 1; }
  QString name() const;
  QString givenName() const;
  QString limbs() const;
  QString basis() const;
  QString notice() const { return m_notice; }
  QString effectiveDay() const { return m_effective_typed; }
  QString endDay() const { return m_end_typed; }
  QString firstDayWords() const;
  QString lastDayWords() const;
  QString effectiveDayProblem() const;
  QString endDayProblem() const;
  QString advice() const;
  QVariantList cards() const;
  int painStop() const;
  int painRise() const;
  QVariantList minutes() const;
  QString minutesWords() const;
  QVariantList findings() const;
  QVariantMap reasons() const;
  QStringList changes() const;
  QString changesBrief() const;
  QString loadWords() const;
  QVariantList reportLacks() const;
  QString reportWords() const;
  QString changesForPerson() const;
  bool maySign() const;
  QString whyNot() const;
  bool canUndo() const { return m_draft.canUndo(); }
  bool canRedo() const { return m_draft.canRedo(); }
  bool signing() const { return m_signing; }
  QString signProblem() const { return m_sign_problem; }
  QString saveProblem() const { return m_save_problem; }

  Q_INVOKABLE void add(const QString& exercise_id);
  Q_INVOKABLE void removeSelected();
  Q_INVOKABLE void moveSelected(int by);
  Q_INVOKABLE void setEffectiveDay(const QString& day);
  Q_INVOKABLE void setEndDay(const QString& day);
  Q_INVOKABLE void setWeeks(int weeks);  // end day from the first day
  Q_INVOKABLE void setAdvice(const QString& advice);
  Q_INVOKABLE void toggleCard(const QString& card_id);
  Q_INVOKABLE void toggleCardDay(const QString& card_id, int weekday);
  Q_INVOKABLE void setCardNote(const QString& card_id, const QString& note);
  Q_INVOKABLE void setPainStop(int value);
  Q_INVOKABLE void setPainRise(int value);
  Q_INVOKABLE void setReason(const QString& rule_id, const QString& reason);  // of a finding on the whole
  // One of the changes that findings offers under "fixes", as one step that can be undone.
  Q_INVOKABLE void applyFix(const QString& rule_id, int index);
  Q_INVOKABLE void setChangesForPerson(const QString& words);
  Q_INVOKABLE void undo();
  Q_INVOKABLE void redo();
  Q_INVOKABLE void startAgain();  // from the last programme; can be undone
  Q_INVOKABLE void sign();        // signedAs() follows, or signProblem

  // For the entry's editor and the phone beside it.
  const v1::Entry* selectedEntry() const;
  QString selectedTitle() const { return m_entries.titleAt(m_selected); }
  const EntryReview* selectedReview() const;
  void editSelected(const std::string& key, const std::function<void(v1::Entry&)>& edit);
  // The same for one that need not be selected; nothing happens when it is gone.
  void editEntry(const std::string& entry_id, const std::string& key,
                 const std::function<void(v1::Entry&)>& edit);
  // The whole programme, as one change that can be undone.
  void editProgramme(const std::string& key, const std::function<void(v1::Programme&)>& edit) {
    change(key, edit);
  }
  // Another beginning, as one change that can be undone: its entries get their ids here, one that the last
  // programme has of the same exercise where there is one, so that what was done of it is told as one.
  void beginWith(v1::Programme fresh);
  // The last programme's, or an empty one; what every beginning goes on from.
  v1::Programme startingPoint() const;
  // The same rhythm and windows for every entry; each keeps its own pauses.
  void scheduleForAll(const v1::Schedule& schedule);
  const PersonFile* file() const { return m_file.get(); }
  const v1::Programme& programme() const { return m_draft.value(); }

 signals:
  void changed();
  void selectedChanged();
  void signedAs(int number);
  void steppedBack();  // undo

 private:
  void change(const std::string& key, const std::function<void(v1::Programme&)>& edit);
  void refresh();
  void takeDays();
  void scheduleKeep();
  void gotSigned(const absl::StatusOr<v1::SignProgrammeReply>& reply);
  QString draftFolder() const;
  QString whyNotEntry() const;
  std::vector<CertResult> reportLines() const;
  std::vector<ProgrammeFix> fixesOf(const std::string& rule_id) const;
  QString fixWords(const ProgrammeFix& fix) const;

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  ProgrammeDraft m_draft;
  EntryListModel m_entries;
  CatalogueListModel m_catalogue;
  absl::StatusOr<Review> m_review;
  double m_minutes_before = -1;
  int m_selected = -1;
  QString m_effective_typed;
  QString m_end_typed;
  QString m_notice;
  QString m_sign_problem;
  QString m_save_problem;
  bool m_signing = false;
  QTimer m_keep;
};

// {ruleId, effect, effectWords, words, source, asks}; with `fixes_of`, the words of what would answer a
// rule's finding, also "fixes": {text}.
QVariantList findingList(const std::vector<v1::Finding>& findings,
                         const std::function<QStringList(const std::string& rule_id)>& fixes_of = {});

}  // namespace newel::desk
