// Certificates as an attacker, or a clinic years later, would have them: signed by an authority, of any
// dates. Not by sync/common/certificate.cpp, so that what is tested does not test itself.
#pragma once

#include <string>

#include "sync/common/certificate.h"

namespace newel::test {

// For localhost and 127.0.0.1, EC P-256. Valid from `from_days` to `to_days` from now; signed by `issuer`, or
// by itself when that is nullptr (then an authority too).
Certificate madeCertificate(int from_days, int to_days, const Certificate* issuer = nullptr);

}  // namespace newel::test
