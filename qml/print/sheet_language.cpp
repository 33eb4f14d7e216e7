#include "qml/print/sheet_language.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>

// The compiled catalogues of this library; the macro wants to stand outside every namespace.
static void initSheetWords() { Q_INIT_RESOURCE(newel_print_words); }

namespace newel::print {
namespace {

thread_local SheetLanguage* t_current = nullptr;

constexpr char kEnglish[] = "en";

QString baseOf(const QString& language) { return language.section(QLatin1Char('-'), 0, 0); }

}  // namespace

std::unique_ptr<QTranslator> sheetTranslator(const QString& language) {
  initSheetWords();
  auto words = std::make_unique<QTranslator>();
  if (!words->load(QStringLiteral(":/i18n/print/newel_print_%1.qm").arg(baseOf(language)))) return nullptr;
  return words;
}

SheetLanguage::SheetLanguage(const std::string& language)
    : m_words(sheetTranslator(QString::fromStdString(language))), m_outer(t_current) {
  // English has a catalogue too, for its plurals.
  const bool known = m_words != nullptr;
  if (!known) m_words = sheetTranslator(QLatin1String(kEnglish));
  m_locale = QLocale(known ? baseOf(QString::fromStdString(language)) : QLatin1String(kEnglish));
  t_current = this;
}

SheetLanguage::~SheetLanguage() { t_current = m_outer; }

QStringList SheetLanguage::languages() {
  initSheetWords();
  QStringList all;
  for (const QString& file :
       QDir(QStringLiteral(":/i18n/print")).entryList({QStringLiteral("newel_print_*.qm")}))
    all << file.section(QLatin1Char('_'), 2).section(QLatin1Char('.'), 0, 0);
  return all;
}

QString sheetWords(const char* context, const char* words, const char* comment, int count) {
  if (t_current == nullptr) return QCoreApplication::translate(context, words, comment, count);
  QString said = t_current->m_words->translate(context, words, comment, count);
  if (said.isEmpty()) said = QString::fromUtf8(words);
  if (count >= 0) said.replace(QLatin1String("%n"), QString::number(count));
  return said;
}

QLocale sheetLocale() { return t_current == nullptr ? QLocale() : t_current->m_locale; }

bool sheetReadsRightToLeft() { return sheetLocale().textDirection() == Qt::RightToLeft; }

QString dialled(const QString& number) {
  if (!sheetReadsRightToLeft()) return number;
  constexpr char16_t kLeftToRightIsolate = 0x2066;
  constexpr char16_t kEndOfIsolate = 0x2069;
  return QChar(kLeftToRightIsolate) + number + QChar(kEndOfIsolate);
}

QString plainDigits(QString text) {
  for (QChar& c : text) {
    if (c.isDigit()) c = QLatin1Char(static_cast<char>('0' + c.digitValue()));
  }
  return text;
}

}  // namespace newel::print
