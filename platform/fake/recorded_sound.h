// A voice and tones that make no sound and remember what they were asked for, for tests and for machines
// without sound. Not thread-safe.
#pragma once

#include <string>
#include <vector>

#include "platform/speech.h"
#include "platform/stay_awake.h"
#include "platform/tones.h"

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

class RecordedStayAwake : public StayAwake {
 public:
  void keepOn(bool on) override { m_on = on; }
  bool on() const { return m_on; }

 private:
  bool m_on = false;
};

}  // namespace newel::platform
