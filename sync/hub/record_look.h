// What can be judged about a phone's record without the store: its size, its hash, its form, whose it is.
// Done before the write begins, on the caller's own thread, so that nobody waits for it but that caller.
#pragma once

#include <absl/status/status.h>

#include <optional>
#include <vector>

#include "core/safety/rule_book.h"
#include "sync/hub/hub_context.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

struct LookedAt {
  const v1::Envelope* envelope = nullptr;  // of the request, which outlives this
  absl::Status good;                       // kInvalidArgument naming the field: it is refused
  // Of the one kind that it is:
  bool red_flag = false;  // a practice
  std::optional<ReceiptRow> receipt;
  std::optional<MessageRow> message;
  bool wear_block = false;
};

// In the order of the records.
std::vector<LookedAt> lookAtAll(const PhoneCaller& caller, const v1::OfferRequest& request,
                                const RuleBook& rules);

}  // namespace newel
