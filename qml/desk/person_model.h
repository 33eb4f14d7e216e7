// One person's page: the record in rows, programmes and how far each got, holds, messages, phones.
// Holds the person's file for the pages that build on it (draft, what was done, hold).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class PersonModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool loaded READ loaded NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString givenName READ givenName NOTIFY changed)
  Q_PROPERTY(QString limbs READ limbs NOTIFY changed)
  Q_PROPERTY(QString mobility READ mobility NOTIFY changed)
  // {label, value, missing}: missing where nobody asked or nobody knows.
  Q_PROPERTY(QVariantList record READ record NOTIFY changed)
  Q_PROPERTY(int missing READ missing NOTIFY changed)
  // Newest first: {number, days, signer, sent, arrived, seen, current, entries}; empty words: not yet.
  Q_PROPERTY(QVariantList programmes READ programmes NOTIFY changed)
  // Active ones: {id, what, reason, by, sent, arrived, seen}.
  Q_PROPERTY(QVariantList holds READ holds NOTIFY changed)
  // Oldest first: {mine, from, text, media, when, urgent, state}.
  Q_PROPERTY(QVariantList messages READ messages NOTIFY changed)
  // {id, name, paired, contact, revoked, version}.
  Q_PROPERTY(QVariantList devices READ devices NOTIFY changed)
  Q_PROPERTY(QString contact READ contact NOTIFY changed)
  Q_PROPERTY(QString adherence READ adherence NOTIFY changed)
  Q_PROPERTY(QVariantList weeks READ weeks NOTIFY changed)
  Q_PROPERTY(QString weeksWords READ weeksWords NOTIFY changed)
  // Openings by a written reason in the last week, newest first, in words.
  Q_PROPERTY(QStringList openings READ openings NOTIFY changed)
  // Reasons of the attention list for this person: {urgency, words}.
  Q_PROPERTY(QVariantList attention READ attention NOTIFY changed)
  Q_PROPERTY(bool hasProgramme READ hasProgramme NOTIFY changed)
  Q_PROPERTY(bool sending READ sending NOTIFY sendingChanged)
  Q_PROPERTY(QString sendProblem READ sendProblem NOTIFY sendingChanged)

 public:
  explicit PersonModel(DeskContext& context, QObject* parent = nullptr);

  bool loaded() const { return m_file != nullptr; }
  QString problem() const { return m_problem; }
  QString name() const;
  QString givenName() const;
  QString limbs() const;
  QString mobility() const;
  QVariantList record() const { return m_record; }
  int missing() const;
  QVariantList programmes() const;
  QVariantList holds() const;
  QVariantList messages() const;
  QVariantList devices() const;
  QString contact() const;
  QString adherence() const;
  QVariantList weeks() const;
  QString weeksWords() const;
  QStringList openings() const;
  QVariantList attention() const;
  bool hasProgramme() const;
  bool sending() const { return m_sending; }
  QString sendProblem() const { return m_send_problem; }

  // Empties the page and reads the person; `changed` follows.
  void open(const std::string& person_id);
  Q_INVOKABLE void reload();
  // Something of this person changed at the hub.
  void nudge(const std::string& person_id);
  void close();
  // sent() follows, or sendProblem. The id is made once, so trying again sends once.
  Q_INVOKABLE void send(const QString& text, bool urgent);

  const std::string& id() const { return m_id; }
  // nullptr until loaded. Shared: a page may hold on to the one it began with.
  std::shared_ptr<const PersonFile> file() const { return m_file; }

 signals:
  void changed();
  void fileChanged();
  void sendingChanged();
  void sent();
  void sessionEnded(const absl::Status& status);
  void closedToUs();  // the record was open to this account and is not any more

 private:
  static QString mediaWordsOf(const v1::Message& message);
  void got(absl::StatusOr<PersonFile> file);
  QString moment(absl::Time at) const;
  QString moment(const std::optional<absl::Time>& at) const;

  DeskContext& m_context;
  std::string m_id;
  std::shared_ptr<const PersonFile> m_file;
  QVariantList m_record;
  QString m_problem;
  bool m_sending = false;
  QString m_send_problem;
  std::string m_message_id;  // of the message being written; made at its first try
  QString m_message_text;
  bool m_reading = false;
  bool m_read_again = false;
};

// The record in rows, and what of it nobody knows yet. {label, value, missing}.
QVariantList recordRows(const v1::Person& person, const v1::Identity& identity);

}  // namespace newel::desk
