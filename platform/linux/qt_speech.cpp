#include <QtCore/QLocale>
#include <QtMultimedia/QAudioDevice>
#include <QtMultimedia/QMediaDevices>
#include <QtTextToSpeech/QTextToSpeech>
#include <algorithm>

#include "platform/sound.h"

namespace newel::platform {
namespace {

std::string primarySubtag(const QLocale& locale) { return locale.name().section(u'_', 0, 0).toStdString(); }

class QtSpeech : public Speech {
 public:
  std::vector<std::string> languages() const override {
    std::vector<std::string> found;
    open();
    if (!usable()) return found;
    for (const QLocale& locale : m_engine->availableLocales()) {
      const std::string tag = primarySubtag(locale);
      if (std::find(found.begin(), found.end(), tag) == found.end()) found.push_back(tag);
    }
    return found;
  }

  std::string whyNot(const std::string& language) const override {
    open();
    if (QMediaDevices::defaultAudioOutput().isNull()) return "speech.no-sound-device";
    if (m_engine == nullptr) return "speech.no-voice";
    if (!usable()) return "speech.broken";
    const std::string wanted = language.substr(0, language.find('-'));
    const std::vector<std::string> found = languages();
    return std::find(found.begin(), found.end(), wanted) != found.end() ? "" : "speech.no-voice";
  }

  void say(const std::string& text, const std::string& language) override {
    if (!whyNot(language).empty()) return;
    if (language != m_language) {
      m_engine->setLocale(QLocale(QString::fromStdString(language)));
      m_language = language;
    }
    m_engine->stop();
    m_engine->say(QString::fromStdString(text));
  }

  void stop() override {
    if (usable()) m_engine->stop();
  }

 private:
  // On the first question about the voice, not with the program: most days begin and end without it.
  void open() const {
    if (m_opened) return;
    m_opened = true;
    // Without a sound device the engines only report errors, or never answer.
    if (QMediaDevices::defaultAudioOutput().isNull()) return;
    // flite speaks in-process; the other engine needs a daemon and is silent for good without one.
    const QStringList engines = QTextToSpeech::availableEngines();
    const QString flite = QStringLiteral("flite");
    if (engines.contains(flite)) m_engine = std::make_unique<QTextToSpeech>(flite);
  }
  bool usable() const { return m_engine != nullptr && m_engine->state() != QTextToSpeech::Error; }

  mutable bool m_opened = false;
  mutable std::unique_ptr<QTextToSpeech> m_engine;
  std::string m_language;
};

}  // namespace

std::unique_ptr<Speech> makeSpeech() { return std::make_unique<QtSpeech>(); }

}  // namespace newel::platform
