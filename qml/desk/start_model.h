// Where a draft may begin: nothing, the last programme, a starting template, one of the clinic's own, or
// exercise by exercise from those that nothing speaks against. And keeping the draft as a template of the
// clinic. Not here: what is safe (core/review/start_from.h), the draft (draft_model.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>
#include <string>
#include <vector>

#include "core/records/template.pb.h"
#include "core/review/start_from.h"
#include "qml/desk/draft_model.h"
#include "sync/export/fhir_import.h"

namespace newel::desk {

class StartModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  // {id, name, forWhom, own, fits, titles, minutes, leftOut, sources, written} of each template, those that
  // fit this person first, the clinic's own before the program's.
  Q_PROPERTY(QVariantList choices READ choices NOTIFY choicesChanged)
  Q_PROPERTY(int fitting READ fitting NOTIFY choicesChanged)  // how many of them fit
  // {exerciseId, group, first, title, why, dose} in the order of purposes; `first` of its group.
  Q_PROPERTY(QVariantList suggestions READ suggestions NOTIFY choicesChanged)
  Q_PROPERTY(QStringList taken READ taken NOTIFY draftChanged)  // ids of the exercises that the draft has
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY choicesChanged)  // empty: there is no last programme
  // What became of the beginning: what was taken, and {title, why} of what was not.
  Q_PROPERTY(QString tookWords READ tookWords NOTIFY startedChanged)
  Q_PROPERTY(QVariantList leftOut READ leftOut NOTIFY startedChanged)
  // What a file from elsewhere asks for, for the person that was added with it: {title, details}.
  Q_PROPERTY(QVariantList asks READ asks NOTIFY choicesChanged)
  Q_PROPERTY(
      QString asksWords READ asksWords NOTIFY choicesChanged)  // what can be begun from; empty: nothing
  Q_PROPERTY(bool mayKeep READ mayKeep NOTIFY draftChanged)    // there is something to keep as a template
  Q_PROPERTY(QString asked READ asked NOTIFY askedChanged)     // id of the template about to be withdrawn
  Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)

 public:
  StartModel(DeskContext& context, DraftModel& draft, QObject* parent = nullptr);

  // For the person whose draft is open.
  void begin();
  void take(std::vector<v1::ProgrammeTemplate> own);  // the clinic's, as the hub has them
  // What was read when this person was added; kept until the desk signs out, or another is offered.
  void offer(const std::string& person_id, std::shared_ptr<const FhirImport> import);
  void refresh();  // the catalogue, the rules or the person changed

  QVariantList choices() const { return m_choices; }
  int fitting() const { return m_fitting; }
  QVariantList suggestions() const;
  QStringList taken() const;
  QString lastWords() const;
  QVariantList asks() const;
  QString asksWords() const;
  QString tookWords() const { return m_took; }
  QVariantList leftOut() const { return m_left_out; }
  bool mayKeep() const { return !m_draft.programme().entries().empty(); }
  QString asked() const { return m_asked; }
  QString problem() const { return m_problem; }

  Q_INVOKABLE void startBlank();
  Q_INVOKABLE void startLast();
  Q_INVOKABLE void startFromAsked();  // those of the file that name an exercise of the catalogue
  Q_INVOKABLE void startFrom(const QString& template_id);
  Q_INVOKABLE void keepAs(const QString& name);  // kept() follows, or problem
  Q_INVOKABLE void rename(const QString& template_id, const QString& name);
  Q_INVOKABLE void ask(const QString& template_id);  // empty: not after all
  Q_INVOKABLE void withdraw(const QString& template_id);

 signals:
  void choicesChanged();
  void draftChanged();
  void startedChanged();
  void askedChanged();
  void problemChanged();
  void started();                   // a beginning was taken
  void kept(const QString& words);  // what just went well
  void libraryChanged();            // the hub has something newer than this desk

 private:
  const FhirImport* askedFor() const;  // of the open person; nullptr: nothing
  const v1::ProgrammeTemplate* find(const QString& id) const;
  v1::Programme programmeFrom(const v1::ProgrammeTemplate& from, const Beginning& beginning) const;
  bool bringsWear(const v1::ProgrammeTemplate& from) const;  // to this person
  static QString lengthWords(double minutes, int weeks);
  QVariantMap choiceOf(const v1::ProgrammeTemplate& one) const;
  QVariantMap leftOutRow(const LeftOut& left) const;
  void tell(const QString& took, const QVariantList& left_out);
  void say(const QString& problem);
  void send(v1::ProgrammeTemplate value, std::uint32_t base, const QString& done);
  void hold(const v1::ProgrammeTemplate& value);
  void drop(const std::string& id);
  QString nameOf(const v1::ProgrammeTemplate& one) const;

  DeskContext& m_context;
  DraftModel& m_draft;
  std::vector<v1::ProgrammeTemplate> m_own;
  std::shared_ptr<const FhirImport> m_import;
  std::string m_import_person;
  std::vector<const v1::Exercise*> m_suggested;
  QVariantList m_choices;
  QVariantList m_left_out;
  QString m_took;
  QString m_asked;
  QString m_problem;
  int m_fitting = 0;
};

}  // namespace newel::desk
