// The cards of advice: those that are for today, and the one that is open. What is written down on a card
// goes to the clinic as a message, in the person's own words. Not here: the cards' text (core/library/cards).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>

#include "core/records/programme.pb.h"
#include "qml/home/engine_bridge.h"
#include "qml/home/home_parts.h"

namespace newel::home {

class AdviceModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  // {id, title} of each card, in the programme's order.
  Q_PROPERTY(QVariantList today READ today NOTIFY changed)
  Q_PROPERTY(QVariantList all READ all NOTIFY changed)  // that the programme has
  Q_PROPERTY(
      QVariantList besidesFall READ besidesFall NOTIFY changed)  // Help has a button of its own for a fall
  // The open card.
  Q_PROPERTY(QString title READ title NOTIFY opened)
  Q_PROPERTY(QString why READ why NOTIFY opened)
  Q_PROPERTY(QStringList steps READ steps NOTIFY opened)
  Q_PROPERTY(QStringList callIf READ callIf NOTIFY opened)
  Q_PROPERTY(QString note READ note NOTIFY opened)          // the therapist's
  Q_PROPERTY(QString question READ question NOTIFY opened)  // empty: nothing to write down
  Q_PROPERTY(bool otherLanguage READ otherLanguage NOTIFY opened)
  Q_PROPERTY(QString sent READ sent NOTIFY opened)  // what became of the words that were written down
  Q_PROPERTY(QString error READ error NOTIFY opened)

 public:
  AdviceModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent = nullptr);

  QVariantList today() const;
  QVariantList all() const;
  QVariantList besidesFall() const;
  QString title() const;
  QString why() const;
  QStringList steps() const;
  QStringList callIf() const;
  QString note() const;
  QString question() const;
  bool otherLanguage() const;
  QString sent() const { return m_sent; }
  QString error() const { return m_error; }

  Q_INVOKABLE void open(const QString& card_id);
  Q_INVOKABLE void write(const QString& words);

 signals:
  void changed();
  void opened();

 private:
  std::string language() const;
  const v1::AdviceWords* words() const;
  QString filled(const std::string& words_of) const;
  QVariantList rows(bool today_only) const;

  const HomeParts& m_parts;
  std::string m_card;
  QString m_sent;
  QString m_error;
};

}  // namespace newel::home
