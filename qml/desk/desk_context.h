// What every view model of the desk works with; made once in the composition root. Pointers outlive their
// users. UI thread, but for the catalogue, the rules and the clock, which any thread may read.
#pragma once

#include <absl/time/time.h>

#include <QtCore/QString>

#include "core/library/catalogue.h"
#include "core/library/settings.h"
#include "core/records/identity.pb.h"
#include "core/records/random.h"
#include "core/safety/rule_book.h"
#include "core/time/clock.h"

namespace newel::desk {

class HubWorker;

struct DeskContext {
  const Clock* clock = nullptr;
  Random* random = nullptr;
  const Catalogue* catalogue = nullptr;
  const RuleBook* rules = nullptr;
  SettingValues settings;       // the clinic's, or the usual ones
  std::string language = "en";  // of this desk: of titles, phrases and what rules say to the therapist
  HubWorker* worker = nullptr;
  QString data_folder;
  absl::TimeZone zone;    // where this desk is
  std::string zone_name;  // the same as an IANA name

  // From signing in.
  v1::Therapist therapist;
  v1::ClinicCard clinic;
  absl::Duration hub_ahead;  // the hub's wall clock less ours

  absl::Time now() const { return clock->wall(); }
};

// The clinic's setting for the attention list.
inline int silentDays(const DeskContext& context) {
  return static_cast<int>(context.settings.at("silent-days"));
}

}  // namespace newel::desk
