// A language that nobody speaks: every English word of the screens with other letters and two fifths longer,
// so that a page with no room for a longer language shows it before there is one.
#pragma once

#include <QtCore/QTranslator>

namespace newel::tests {

class PseudoLanguage : public QTranslator {
 public:
  PseudoLanguage();
  QString translate(const char* context, const char* source, const char* disambiguation,
                    int n) const override;
  bool isEmpty() const override { return false; }

  // `words` with accents, at least 1.4 times as long; what stands for a value ("%1", "%Ln") stays.
  static QString stretched(const QString& words);

 private:
  QTranslator m_english;  // for its plurals
};

}  // namespace newel::tests
