// The words of the phone's own screens in a person's language, for the phone beside the programme: the very
// catalogue that the phone has. Not here: the desk's words (desk_language.h), what exercises say (the
// catalogue).
#pragma once

#include <QtCore/QLocale>
#include <QtCore/QString>
#include <QtCore/QTranslator>
#include <string>

namespace newel::desk {

class PhoneWords {
 public:
  // BCP 47; its base language where there is no more, English where there is nothing.
  void use(const std::string& language);
  // As tr() on the phone; `count` fills %Ln. What no catalogue has is its English.
  QString say(const char* context, const char* words, int count = -1) const;
  bool rightToLeft() const { return m_locale.textDirection() == Qt::RightToLeft; }

 private:
  std::string m_language = "?";
  QTranslator m_words;
  bool m_known = false;
  QLocale m_locale;
};

}  // namespace newel::desk
