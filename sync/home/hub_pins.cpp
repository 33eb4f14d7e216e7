#include "sync/home/hub_pins.h"

#include <algorithm>

#include "sync/common/signing.h"
#include "sync/home/device_store.h"

namespace newel {
namespace {

constexpr std::size_t kPinBytes = 32;

}  // namespace

std::string joinPins(const std::vector<std::string>& pins) {
  std::string bytes;
  for (const auto& pin : pins) bytes += pin;
  return bytes;
}

std::vector<std::string> splitPins(const std::string& bytes) {
  std::vector<std::string> pins;
  for (std::size_t at = 0; at + kPinBytes <= bytes.size(); at += kPinBytes)
    pins.push_back(bytes.substr(at, kPinBytes));
  return pins;
}

bool isPinned(const HubAddress& hub) {
  return hub.pins.empty() ||
         std::find(hub.pins.begin(), hub.pins.end(), hub.certificate_sha256) != hub.pins.end();
}

void savePins(Database& database, const v1::HubPins& pins) {
  saveSetting(database, "pins",
              joinPins({pins.certificate_sha256().begin(), pins.certificate_sha256().end()}));
  saveSetting(database, "pins_number", std::to_string(pins.number()));
}

void takePins(Database& database, const v1::SignedHubPins& signed_pins) {
  const DeviceSettings settings = loadSettings(database);
  const auto pins = openPins(signed_pins, settings.clinic_key);
  if (pins.ok() && pins->number() > settings.pins_number) savePins(database, *pins);
}

}  // namespace newel
