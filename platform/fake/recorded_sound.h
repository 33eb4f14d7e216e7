// A voice and tones that make no sound and remember what they were asked for, for tests and for machines
// without sound. Not thread-safe.
#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "platform/speech.h"
#include "platform/stay_awake.h"
#include "platform/system_wishes.h"
#include "platform/tones.h"
#include "platform/vibration.h"

namespace newel::platform {

class RecordedSpeech : public Speech {
 public:
  std::vector<std::string> languages() const override {
    return m_why_not.empty() ? std::vector<std::string>{"en"} : std::vector<std::string>{};
  }
  std::string whyNot(const std::string& language) const override {
    if (!m_why_not.empty()) return m_why_not;
    return language.substr(0, 2) == "en" ? "" : "speech.no-voice";
  }
  void say(const std::string& text, const std::string& language) override {
    if (whyNot(language).empty()) m_said.push_back(text);
  }
  void stop() override { ++m_stops; }

  void breakWith(const std::string& why_not) { m_why_not = why_not; }
  const std::vector<std::string>& said() const { return m_said; }
  int stops() const { return m_stops; }
  void forget() { m_said.clear(); }

 private:
  std::string m_why_not;
  std::vector<std::string> m_said;
  int m_stops = 0;
};

class RecordedTones : public Tones {
 public:
  std::string whyNot() const override { return m_why_not; }
  void warm(bool on) override { m_warm = on; }
  void play(Tone tone) override {
    if (m_why_not.empty()) m_played.push_back(tone);
  }

  void breakWith(const std::string& why_not) { m_why_not = why_not; }
  bool isWarm() const { return m_warm; }
  const std::vector<Tone>& played() const { return m_played; }
  void forget() { m_played.clear(); }

 private:
  std::string m_why_not;
  std::vector<Tone> m_played;
  bool m_warm = false;
};

class RecordedVibration : public Vibration {
 public:
  void ask(std::function<void()> known) override { known(); }
  bool works() const override { return m_works; }
  void play(Tone tone) override {
    if (m_works) m_played.push_back(tone);
  }
  void stop() override { ++m_stops; }

  void haveMotor(bool works) { m_works = works; }
  const std::vector<Tone>& played() const { return m_played; }
  int stops() const { return m_stops; }

 private:
  bool m_works = false;
  std::vector<Tone> m_played;
  int m_stops = 0;
};

class FixedWishes : public SystemWishes {
 public:
  bool lessMotion() const override { return m_less_motion; }
  bool moreContrast() const override { return m_more_contrast; }
  void onChange(std::function<void()> changed) override { m_changed = std::move(changed); }

  void wish(bool less_motion, bool more_contrast) {
    m_less_motion = less_motion;
    m_more_contrast = more_contrast;
    if (m_changed) m_changed();
  }

 private:
  bool m_less_motion = false;
  bool m_more_contrast = false;
  std::function<void()> m_changed;
};

class RecordedStayAwake : public StayAwake {
 public:
  void keepOn(bool on) override { m_on = on; }
  bool on() const { return m_on; }

 private:
  bool m_on = false;
};

}  // namespace newel::platform
