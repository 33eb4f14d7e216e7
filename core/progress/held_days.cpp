#include "core/progress/held_days.h"

#include <algorithm>

#include "core/time/local_day.h"

namespace newel {

std::vector<HeldDays> heldDaysOf(const std::vector<v1::HoldOrder>& orders, absl::TimeZone zone) {
  std::vector<HeldDays> held;
  for (const auto& order : orders) {
    if (!order.lifts_id().empty()) continue;
    HeldDays days{localDayAt(toTime(order.issued_at()), zone),
                  absl::CivilDay::max(),
                  {order.entry_ids().begin(), order.entry_ids().end()}};
    for (const auto& lift : orders) {
      if (lift.lifts_id() != order.id()) continue;
      days.last = std::min(days.last, localDayAt(toTime(lift.issued_at()), zone));
    }
    held.push_back(std::move(days));
  }
  return held;
}

bool isHeld(const std::vector<HeldDays>& held, const std::string& entry_id, absl::CivilDay day) {
  return std::any_of(held.begin(), held.end(), [&](const HeldDays& days) {
    if (day < days.first || day > days.last) return false;
    return days.entry_ids.empty() ||
           std::find(days.entry_ids.begin(), days.entry_ids.end(), entry_id) != days.entry_ids.end();
  });
}

}  // namespace newel
