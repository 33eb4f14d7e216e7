#include "sync/hub/hub_context.h"

#include <utility>

#include "core/time/local_day.h"

namespace newel {

std::uint64_t commitToFeed(HubTransaction& transaction, const HubContext& hub, const std::string& person_id,
                           v1::Envelope envelope, bool replace) {
  const std::uint64_t sequence = transaction.takeSequence();
  envelope.set_sequence(sequence);
  *envelope.mutable_received_at() = toTimestamp(hub.clock->wall());
  transaction.addToFeed(person_id, envelope, replace);
  return sequence;
}

std::string fieldOf(const absl::Status& status) {
  const std::string message(status.message());
  return message.substr(0, message.find(':'));
}

}  // namespace newel
