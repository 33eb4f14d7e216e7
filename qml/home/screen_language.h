// The language of the screens: the person's, from the record; before pairing the system's. English where
// there is no catalogue. Sets words, dates and the way the screens read. UI thread only.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QTranslator>
#include <string>

namespace newel::home {

class ScreenLanguage : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // `tag`: "es", "ar-EG"; empty: the system's. The same again changes nothing.
  void use(const std::string& tag);
  // Every language that has a catalogue, English first, the others by their code.
  static QStringList offered();
  // Of the catalogue in use, "en" where there is none for what was asked.
  const QString& shown() const { return m_shown; }

 signals:
  void changed();

 private:
  bool load(const QString& language);

  QTranslator m_translator;
  QString m_shown;
};

}  // namespace newel::home
