// A hub in a folder of its own for fuzzing requests: everything but the network. The folder is gone at the
// end.
#pragma once

#include <filesystem>
#include <memory>
#include <string>

#include "core/time/clock.h"
#include "sync/common/real_random.h"
#include "sync/hub/hub.h"

namespace newel::fuzz {

class FuzzFolder {
 public:
  FuzzFolder();
  ~FuzzFolder();
  FuzzFolder(const FuzzFolder&) = delete;
  FuzzFolder& operator=(const FuzzFolder&) = delete;
  std::string file(const std::string& name) const { return (m_path / name).string(); }

 private:
  std::filesystem::path m_path;
};

class StillClock : public Clock {
 public:
  absl::Time wall() const override { return absl::FromUnixSeconds(1795600000); }
  absl::Duration elapsed() const override { return absl::Hours(1); }
};

// One person with a phone and a lead; ids are always the same, so that a kept request stays good.
class FuzzHub {
 public:
  FuzzHub();
  Hub& hub() { return *m_hub; }
  const PhoneCaller& phone() const { return m_phone; }
  const DeskCaller& desk() const { return m_desk; }

 private:
  FuzzFolder m_folder;
  StillClock m_clock;
  RealRandom m_random;
  std::unique_ptr<HubStore> m_store;
  std::unique_ptr<Hub> m_hub;
  PhoneCaller m_phone;
  DeskCaller m_desk;
};

}  // namespace newel::fuzz
