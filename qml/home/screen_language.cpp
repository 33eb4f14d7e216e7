#include "qml/home/screen_language.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QLocale>
#include <QtGui/QGuiApplication>

namespace newel::home {
namespace {

// A machine without a language set shows times like "10:00:00"; nobody reads that.
QLocale localeFor(const QString& language) {
  const QLocale system = QLocale::system();
  if (system.language() != QLocale::C && system.name().startsWith(language)) return system;
  return language == QLatin1String("en") ? QLocale(QLocale::English, QLocale::UnitedKingdom)
                                         : QLocale(language);
}

}  // namespace

QStringList ScreenLanguage::offered() {
  QStringList languages;
  // No name filter: Qt makes a regular expression of it, and its engine costs the start half a megabyte.
  for (const QString& file : QDir(QStringLiteral(":/i18n")).entryList(QDir::Files, QDir::Name)) {
    if (!file.startsWith(QLatin1String("newel_")) || !file.endsWith(QLatin1String(".qm"))) continue;
    languages << file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
  }
  languages.removeAll(QStringLiteral("en"));
  languages.prepend(QStringLiteral("en"));
  return languages;
}

bool ScreenLanguage::load(const QString& language) {
  return m_translator.load(QStringLiteral(":/i18n/newel_%1").arg(language));
}

void ScreenLanguage::use(const std::string& tag) {
  QString language = QString::fromStdString(tag).section(QLatin1Char('-'), 0, 0);
  if (language.isEmpty()) language = QLocale::system().name().section(QLatin1Char('_'), 0, 0);
  QCoreApplication::removeTranslator(&m_translator);
  if (!load(language)) {
    language = QStringLiteral("en");
    load(language);  // English has a catalogue too, for its plurals
  }
  QCoreApplication::installTranslator(&m_translator);
  if (language == m_shown) return;
  m_shown = language;
  const QLocale locale = localeFor(language);
  QLocale::setDefault(locale);
  QGuiApplication::setLayoutDirection(locale.textDirection());
  emit changed();
}

}  // namespace newel::home
