// The certificates that the phone believes: those of the picture code at first, then the clinic's latest
// signed set.
#pragma once

#include <string>
#include <vector>

#include "sync/common/database.h"
#include "sync/home/hub_link.h"

namespace newel {

// As one value of the store: 32 bytes each, one after the other.
std::string joinPins(const std::vector<std::string>& pins);
std::vector<std::string> splitPins(const std::string& bytes);

// Whether the certificate that was shown last is still one of them. A store of an earlier version knows no
// others.
bool isPinned(const HubAddress& hub);

// Inside a transaction; they throw as Database does.
void savePins(Database& database, const v1::HubPins& pins);
// A set that the clinic's key did not sign, or that is not over the present number, changes nothing.
void takePins(Database& database, const v1::SignedHubPins& signed_pins);

}  // namespace newel
