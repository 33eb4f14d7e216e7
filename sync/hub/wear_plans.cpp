#include "sync/hub/wear_plans.h"

#include <utility>

#include "core/records/record_text.h"

namespace newel {

v1::WearPlan strippedPlan(v1::WearPlan plan) {
  plan.clear_id();
  plan.clear_number();
  plan.clear_person_id();
  plan.clear_clinic_id();
  plan.clear_signer_id();
  plan.clear_signer_name();
  plan.clear_issued_at();
  plan.clear_zone();
  return plan;
}

void nameWearPlan(v1::Programme& programme, const std::string& new_id) {
  v1::WearPlan& plan = *programme.mutable_wear_plan();
  plan.set_id(new_id);
  plan.set_number(1);
  plan.set_person_id(programme.person_id());
  plan.set_clinic_id(programme.clinic_id());
  plan.set_signer_id(programme.signer_id());
  plan.set_signer_name(programme.signer_name());
  *plan.mutable_issued_at() = programme.issued_at();
  plan.set_zone(programme.zone());
}

absl::Status settleWearPlan(HubTransaction& transaction, v1::Programme& programme) {
  if (!programme.has_wear_plan()) return absl::OkStatus();
  const auto rows = transaction.programmes(programme.person_id());
  for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
    v1::Programme before;
    if (!before.ParseFromString(row->content)) return absl::DataLossError("programme: not to be read");
    if (!before.has_wear_plan()) continue;
    v1::WearPlan& plan = *programme.mutable_wear_plan();
    if (toBytes(strippedPlan(before.wear_plan())) == toBytes(strippedPlan(plan)) &&
        before.wear_plan().zone() == plan.zone()) {
      plan = std::move(*before.mutable_wear_plan());
    } else {
      plan.set_number(before.wear_plan().number() + 1);
    }
    return absl::OkStatus();
  }
  return absl::OkStatus();
}

}  // namespace newel
