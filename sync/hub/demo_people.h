// The people of the demo clinic. None of them exists.
#pragma once

#include <string>
#include <vector>

#include "core/records/identity.pb.h"
#include "core/records/person.pb.h"

namespace newel {

struct DemoPerson {
  v1::Person person;
  v1::Identity identity;
  std::string programme_id;
  std::vector<std::string> exercise_ids;  // of their first programme; empty: none yet
};

// Always the same ids, so that a second demo finds them.
const std::vector<DemoPerson>& demoPeople();

}  // namespace newel
