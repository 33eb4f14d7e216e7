#include "qml/desk/phone_words.h"

// The macro wants to stand outside every namespace.
static void initPhoneWords() { Q_INIT_RESOURCE(newel_phone_words); }

namespace newel::desk {

void PhoneWords::use(const std::string& language) {
  if (language == m_language) return;
  m_language = language;
  initPhoneWords();
  const auto load = [this](const std::string& tag) {
    return m_words.load(QStringLiteral(":/i18n/phone/newel_%1.qm").arg(QString::fromStdString(tag)));
  };
  const std::string base = language.substr(0, language.find('-'));
  m_known = load(language) || load(base);
  m_locale = m_known ? QLocale(QString::fromStdString(language)) : QLocale(QLocale::English);
  // English has a file for its plurals alone.
  if (!m_known) m_known = load("en");
}

QString PhoneWords::say(const char* context, const char* words, int count) const {
  QString said = m_known ? m_words.translate(context, words, nullptr, count) : QString();
  if (said.isEmpty()) said = QString::fromUtf8(words);
  if (count >= 0) said.replace(QLatin1String("%Ln"), m_locale.toString(count));
  return said;
}

}  // namespace newel::desk
