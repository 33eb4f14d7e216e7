// Catalogues of translated words (Qt's .ts files) as tests read them: the screens of both programs and the
// sheets.
#pragma once

#include <QtCore/QString>
#include <QtCore/QStringList>
#include <vector>

namespace newel::test {

struct CatalogueWord {
  QString context;
  QString source;
  QStringList forms;  // of the translation; more than one where it counts
  bool counted = false;
  bool finished = true;
};

// Reports, as a failure of the present test, what cannot be read.
std::vector<CatalogueWord> wordsIn(const QString& ts_file);

// Expects of each: finished, so many forms where it counts, none empty, the marks of English (%1, %L2; %Ln
// may be left out of a form that says the number in words), and a space at either end where English has one,
// since it joins the word to what stands beside it.
void expectWhole(const std::vector<CatalogueWord>& words, int plurals);

// Expects that nothing was marked in `sources` since the catalogue was last brought up to date: Qt's lupdate
// looks, on a copy, with `options` beside the usual ones. False, and nothing expected, where there is no
// lupdate.
bool expectEveryWord(const QString& ts_file, const QStringList& sources, const QStringList& options = {});

}  // namespace newel::test
