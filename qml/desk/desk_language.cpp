#include "qml/desk/desk_language.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QLocale>

#include "qml/print/sheet_language.h"

// The macro wants to stand outside every namespace.
static void initDeskWords() { Q_INIT_RESOURCE(newel_desk_words); }

namespace newel::desk {
namespace {

constexpr char kEnglish[] = "en";

QString fileOf(const QString& language) {
  return QStringLiteral(":/i18n/desk/newel_desk_%1.qm").arg(language);
}

// A machine without a language set shows times like "10:00:00"; nobody reads that.
QLocale localeFor(const QString& language) {
  const QLocale system = QLocale::system();
  if (system.language() != QLocale::C && system.name().startsWith(language)) return system;
  return language == QLatin1String(kEnglish) ? QLocale(QLocale::English, QLocale::UnitedKingdom)
                                             : QLocale(language);
}

}  // namespace

QStringList DeskLanguage::offered() { return {QLatin1String(kEnglish), QStringLiteral("es")}; }

QString DeskLanguage::resolved(const QString& tag) {
  const QString wanted = (tag.isEmpty() ? QLocale::system().name() : tag).left(2).toLower();
  return offered().contains(wanted) ? wanted : QLatin1String(kEnglish);
}

DeskLanguage::~DeskLanguage() { remove(); }

void DeskLanguage::remove() {
  QCoreApplication::removeTranslator(&m_screens);
  if (m_sheets) QCoreApplication::removeTranslator(m_sheets.get());
}

void DeskLanguage::use(const QString& tag) {
  const QString language = resolved(tag);
  if (language == m_shown) return;
  initDeskWords();
  remove();
  m_shown = language;
  // English is what stands in the source; its plurals are the sheets'.
  if (m_screens.load(fileOf(language))) QCoreApplication::installTranslator(&m_screens);
  m_sheets = print::sheetTranslator(language);
  if (m_sheets) QCoreApplication::installTranslator(m_sheets.get());
  QLocale::setDefault(localeFor(language));
}

}  // namespace newel::desk
