// One practice of an entry held against the entry's progression rule. For core/progress alone.
#pragma once

#include <vector>

#include "core/records/evidence.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

struct JudgedPractice {
  bool good = false;
  bool too_hard = false;
  bool red_flag = false;
  std::vector<EvidenceLine> lines;
};

// `done` is of `entry` and in `practice`; the rule is the entry's own.
JudgedPractice judgePractice(const v1::Entry& entry, const v1::Practice& practice, const v1::EntryDone& done);

}  // namespace newel
