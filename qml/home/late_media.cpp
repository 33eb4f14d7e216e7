#include "qml/home/late_media.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QLibrary>
#include <QtCore/QtDebug>
#include <utility>

namespace newel::home {
namespace {

// Beside the program as it is built, or where a system keeps the libraries of one program.
constexpr const char* kPlaces[] = {"newel_media.so", "../lib/newel/newel_media.so"};

MediaMakers loaded() {
  MediaMakers makers;
  const QDir here(QCoreApplication::applicationDirPath());
  for (const char* place : kPlaces) {
    const QString path = here.filePath(QString::fromLatin1(place));
    if (!QFile::exists(path)) continue;
    QLibrary module(path);
    module.setLoadHints(QLibrary::PreventUnloadHint);  // what it made may outlive main()
    const auto fill = reinterpret_cast<void (*)(MediaMakers*)>(module.resolve(kMediaEntry));
    if (fill != nullptr) {
      fill(&makers);
      return makers;
    }
    qWarning("sound, camera and clips cannot be used: %s", qPrintable(module.errorString()));
  }
  qWarning("sound, camera and clips cannot be used: %s is missing", kPlaces[0]);
  return makers;
}

const MediaMakers& makers() {
  static const MediaMakers kMakers = loaded();
  return kMakers;
}

// One of the module's, made when first asked for.
template <typename Thing>
class Late {
 public:
  explicit Late(std::unique_ptr<Thing> (*MediaMakers::*maker)()) : m_maker(maker) {}

  Thing* get() const {
    if (!std::exchange(m_asked, true) && makers().*m_maker != nullptr) m_thing = (makers().*m_maker)();
    return m_thing.get();
  }
  Thing* ifThere() const { return m_thing.get(); }

 private:
  std::unique_ptr<Thing> (*MediaMakers::*m_maker)();
  mutable bool m_asked = false;
  mutable std::unique_ptr<Thing> m_thing;
};

class LateSpeech : public platform::Speech {
 public:
  std::vector<std::string> languages() const override {
    const platform::Speech* const real = m_real.get();
    return real != nullptr ? real->languages() : std::vector<std::string>();
  }
  std::string whyNot(const std::string& language) const override {
    const platform::Speech* const real = m_real.get();
    return real != nullptr ? real->whyNot(language) : "speech.broken";
  }
  void say(const std::string& text, const std::string& language) override {
    if (platform::Speech* const real = m_real.get()) real->say(text, language);
  }
  void stop() override {
    if (platform::Speech* const real = m_real.ifThere()) real->stop();
  }

 private:
  Late<platform::Speech> m_real{&MediaMakers::speech};
};

class LateTones : public platform::Tones {
 public:
  std::string whyNot() const override {
    const platform::Tones* const real = m_real.get();
    return real != nullptr ? real->whyNot() : "sound.no-device";
  }
  void warm(bool on) override {
    platform::Tones* const real = on ? m_real.get() : m_real.ifThere();
    if (real != nullptr) real->warm(on);
  }
  void play(platform::Tone tone) override {
    if (platform::Tones* const real = m_real.get()) real->play(tone);
  }

 private:
  Late<platform::Tones> m_real{&MediaMakers::tones};
};

class LateSoundRoute : public platform::SoundRoute {
 public:
  void whenLost(std::function<void()> lost) override {
    if (platform::SoundRoute* const real = m_real.get()) real->whenLost(std::move(lost));
  }

 private:
  Late<platform::SoundRoute> m_real{&MediaMakers::sound_route};
};

class LateCamera : public platform::Camera {
 public:
  std::string whyNot() const override {
    const platform::Camera* const real = m_real.get();
    return real != nullptr ? real->whyNot() : "camera.broken";
  }
  void watch(std::function<void(const platform::GreyPicture&)> seen, std::function<void()> changed) override {
    if (platform::Camera* const real = m_real.get()) real->watch(std::move(seen), std::move(changed));
  }
  void stop() override {
    if (platform::Camera* const real = m_real.ifThere()) real->stop();
  }

 private:
  Late<platform::Camera> m_real{&MediaMakers::camera};
};

}  // namespace

std::unique_ptr<platform::Speech> makeLateSpeech() { return std::make_unique<LateSpeech>(); }
std::unique_ptr<platform::Tones> makeLateTones() { return std::make_unique<LateTones>(); }
std::unique_ptr<platform::SoundRoute> makeLateSoundRoute() { return std::make_unique<LateSoundRoute>(); }
std::unique_ptr<platform::Camera> makeLateCamera() { return std::make_unique<LateCamera>(); }
std::unique_ptr<parts::ClipReader> makeLateClipReader() {
  return makers().clip_reader != nullptr ? makers().clip_reader() : nullptr;
}
std::optional<std::string> readSquareLate(const platform::GreyPicture& picture) {
  return makers().read_square != nullptr ? makers().read_square(picture) : std::nullopt;
}

}  // namespace newel::home
