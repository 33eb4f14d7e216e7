// The language that a sheet of paper is written in, which need not be the program's: a Spanish desk prints an
// Arabic handout. Not here: what exercises and rules say, which comes from the catalogue.
#pragma once

#include <QtCore/QLocale>
#include <QtCore/QString>
#include <QtCore/QTranslator>
#include <memory>
#include <string>

namespace newel::print {

// While it lives, what this thread writes on paper is in this language; its words, dates and the way of
// reading. One inside another is the inner one's until it ends.
class SheetLanguage {
 public:
  // BCP 47; the base language where there is no more, English where there is nothing.
  explicit SheetLanguage(const std::string& language);
  ~SheetLanguage();
  SheetLanguage(const SheetLanguage&) = delete;
  SheetLanguage& operator=(const SheetLanguage&) = delete;

  // Languages with a catalogue of sheets, English among them.
  static QStringList languages();

 private:
  friend QString sheetWords(const char*, const char*, const char*, int);
  friend QLocale sheetLocale();
  friend bool sheetReadsRightToLeft();

  std::unique_ptr<QTranslator> m_words;  // null: English
  QLocale m_locale;
  SheetLanguage* m_outer;
};

// `words` in the sheet's language, or, while no sheet is written, in the program's, as
// QCoreApplication::translate().
QString sheetWords(const char* context, const char* words, const char* comment = nullptr, int count = -1);
// For dates; the program's while no sheet is written.
QLocale sheetLocale();
bool sheetReadsRightToLeft();
// A number to dial, whose groups keep their order in a line that reads from the right: unmarked, "555 0100"
// is read there as "0100 555".
QString dialled(const QString& number);
// Digits are 0 to 9 in every language: they are dialled, and stand beside the catalogue's, which are so too.
QString plainDigits(QString text);

// The sheets' words for the screens of a program in `language`; null when there is no such catalogue.
std::unique_ptr<QTranslator> sheetTranslator(const QString& language);

}  // namespace newel::print
