// Outcome measures that desks enter, and wearing time that phones tell. Not here: what either means
// (core/progress, core/schedule).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Thread-safe. Every call: kNotFound when nobody has the person id; kInvalidArgument names the field.
class PersonMeasures {
 public:
  explicit PersonMeasures(const HubContext* hub) : m_hub(hub) {}

  // Kept, and on its way to the person's phones. kAborted: base_revision is not the latest. What was put
  // already, said again, is answered as it was.
  absl::StatusOr<v1::PutMeasureReply> put(const DeskCaller& caller, const v1::PutMeasureRequest& request);
  absl::StatusOr<v1::ListMeasuresReply> list(const std::string& person_id);
  absl::StatusOr<v1::ListWearBlocksReply> wearBlocks(const v1::ListWearBlocksRequest& request);

 private:
  absl::Status keep(HubTransaction& transaction, const DeskCaller& caller, std::uint32_t base_revision,
                    v1::Measure& measure);

  const HubContext* m_hub;
};

}  // namespace newel
