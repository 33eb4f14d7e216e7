// The language of this desk's screens: what somebody chose here, else the system's, else English. Words,
// dates and numbers follow it. Not here: what catalogue and rules say (desk_context.h), sheets of paper
// (sheet_language.h).
#pragma once

#include <QtCore/QString>
#include <QtCore/QStringList>
#include <QtCore/QTranslator>
#include <memory>

namespace newel::desk {

// UI thread; one in the program, living as long as its application.
class DeskLanguage {
 public:
  // Those with a catalogue, English first.
  static QStringList offered();
  // "en", "es"; empty: the system's. What has no catalogue is English.
  static QString resolved(const QString& tag);

  ~DeskLanguage();
  // Shows resolved(`tag`) from now on; who has shown something already asks for it anew.
  void use(const QString& tag);
  const QString& shown() const { return m_shown; }

 private:
  void remove();

  QTranslator m_screens;
  std::unique_ptr<QTranslator> m_sheets;  // the words that screens and paper share
  QString m_shown;
};

}  // namespace newel::desk
