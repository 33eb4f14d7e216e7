// SHA-256 (FIPS 180-4) of a record's exact bytes. Not for passwords: sync/hub/password.h.
#pragma once

#include <string>

#include "sync/protocol/wire.pb.h"

namespace newel {

std::string sha256(const std::string& bytes);  // 32 bytes

// An envelope around `content` with its hash; sequence and received_at are the sender's business.
v1::Envelope makeEnvelope(v1::RecordKind kind, const std::string& id, std::uint32_t revision,
                          const std::string& content);

}  // namespace newel
