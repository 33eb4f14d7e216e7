#include "tests/qml/home/pseudo_language.h"

#include <QtCore/QHash>

namespace newel::tests {

PseudoLanguage::PseudoLanguage() {
  if (!m_english.load(QStringLiteral(":/i18n/newel_en"))) qWarning("the English catalogue is missing");
}

QString PseudoLanguage::stretched(const QString& words) {
  static const QHash<QChar, QChar> kAccents = {{u'a', u'á'}, {u'e', u'ë'}, {u'i', u'í'}, {u'o', u'ö'},
                                               {u'u', u'û'}, {u'n', u'ñ'}, {u'c', u'ç'}, {u'y', u'ý'}};
  QString text;
  int letters = 0;
  int more = 0;
  bool value = false;  // within "%L1"
  for (const QChar c : words) {
    if (c == u'%') value = true;
    text += value ? c : kAccents.value(c, c);
    if (value && (c.isDigit() || c == u'n' || c.isSpace())) {
      value = false;
    } else if (!value && c.isLetter()) {
      ++letters;
      // Longer words where they stand, and not a tail that wraps by itself.
      const int wanted = (letters * 2 + 4) / 5;
      if (kAccents.contains(c) && more < wanted) {
        text += kAccents.value(c);
        ++more;
      }
    }
  }
  const int wanted = static_cast<int>((words.size() * 2 + 4) / 5);
  while (text.size() < words.size() + wanted) text += text.size() % 6 == 5 ? u' ' : u'ö';
  return text;
}

QString PseudoLanguage::translate(const char* context, const char* source, const char* disambiguation,
                                  int n) const {
  const QString english = m_english.translate(context, source, disambiguation, n);
  return stretched(english.isEmpty() ? QString::fromUtf8(source) : english);
}

}  // namespace newel::tests
