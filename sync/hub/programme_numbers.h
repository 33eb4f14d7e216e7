// Which number a programme gets, and what happens when a phone has that number already.
#pragma once

#include "core/records/programme.pb.h"
#include "sync/hub/hub_context.h"

namespace newel {

// Gives `programme` the next number over the hub's, over what the phones of this person said they have and
// over `told`; signs it, keeps it and puts it into the person's feed. The rest of the record is the caller's,
// checked before.
SignedRow keepUnderNextNumber(HubTransaction& transaction, const HubContext& hub, v1::Programme& programme,
                              std::uint64_t told = 0);

// A hub that went back to a backup does not know what it signed after it. Before a phone has told it, it may
// sign another programme under a number that this phone has: the phone keeps what it has, since numbers only
// grow, and what the therapist wrote last would never arrive. When a phone says so, and nothing newer was
// written meanwhile, that programme is signed once more, word for word, under a number that can count.
// kDataLoss: it cannot be read.
absl::Status reissueOvertaken(HubTransaction& transaction, const HubContext& hub, const ReceiptRow& told);

}  // namespace newel
