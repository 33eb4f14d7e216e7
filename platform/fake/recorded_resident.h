// A program that is always the only one, and remembers what was to be started after log-in.
#pragma once

#include <utility>

#include "platform/resident.h"

namespace newel::platform {

class RecordedResident : public Resident {
 public:
  bool takePlace() override { return true; }
  void onCalled(std::function<void()> called) override { m_called = std::move(called); }
  bool startAtLogin(bool on, const std::vector<std::string>& command) override {
    if (!m_writable) return false;
    m_command = on ? command : std::vector<std::string>();
    return true;
  }

  void breakWriting() { m_writable = false; }
  const std::vector<std::string>& command() const { return m_command; }  // empty: nothing is started

 private:
  std::function<void()> m_called;
  std::vector<std::string> m_command;
  bool m_writable = true;
};

}  // namespace newel::platform
