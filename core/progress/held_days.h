// The days on which a clinic's hold orders forbade practice: what was not done on them was excused by the
// clinic, whoever reads the figures later. Not here: the hold itself (core/practice), and its receipts.
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <string>
#include <vector>

#include "core/records/programme.pb.h"

namespace newel {

// Both ends included; `last` is absl::CivilDay::max() while the order stands.
struct HeldDays {
  absl::CivilDay first;
  absl::CivilDay last;
  std::vector<std::string> entry_ids;  // empty: everything
};

// `orders`: all of one person, lifts included, in any order. `zone`: the person's. The day an order is given
// and the day it is lifted count as held: part of them was.
std::vector<HeldDays> heldDaysOf(const std::vector<v1::HoldOrder>& orders, absl::TimeZone zone);

bool isHeld(const std::vector<HeldDays>& held, const std::string& entry_id, absl::CivilDay day);

}  // namespace newel
